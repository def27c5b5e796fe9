package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.springframework.beans.factory.ObjectProvider;

/** What goes on alongside the path, and the way there from the pages that are places. */
@org.springframework.stereotype.Component
class Alongside {

    /** Where the page stands below a child's address. */
    static final String ADDRESS = "alongside";

    private final ObjectProvider<AlongsideSection> sections;

    Alongside(ObjectProvider<AlongsideSection> sections) {
        this.sections = sections;
    }

    /** All sections that have something to show. */
    List<Component> draw(Reader reader) {
        return sections.orderedStream()
                .flatMap(section -> section.draw(reader).stream())
                .toList();
    }

    /** A row that leads to the page; empty while it has nothing to show. */
    Optional<Component> link(Reader reader) {
        if (sections.orderedStream().allMatch(section -> section.draw(reader).isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(Tags.link(
                "hw-sheet hw-along",
                reader.address(ADDRESS),
                Tags.span(
                        "",
                        Bits.el("b", "hw-b u-block", reader.say("family.alongside.title", reader.name())),
                        Bits.el("small", "hw-s hw-quiet", reader.say("family.alongside.holds"))),
                Icon.NEXT.draw()));
    }
}
