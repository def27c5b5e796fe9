package org.hearthway.family;

import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Optional;
import org.hearthway.parts.Tags;

/** What goes on alongside the path, a section each; reached from Path and Dates. */
@Route("my/:child/alongside")
@PermitAll
class AlongsideView extends FamilyPage {

    private final transient Alongside alongside;

    AlongsideView(Readers readers, Alongside alongside) {
        super(readers);
        this.alongside = alongside;
    }

    @Override
    Place place() {
        return Place.PATH;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.alongside.title", reader.name());
    }

    @Override
    Optional<String> below() {
        return Optional.of(title(reader()));
    }

    @Override
    void draw(Reader reader) {
        add(Bits.hero(reader.say("family.alongside.over"), title(reader)));
        var sections = alongside.draw(reader);
        if (sections.isEmpty()) {
            add(Tags.p("u-lead", reader.say("family.alongside.none", reader.name())));
        }
        var stack = Tags.div("hw-stack loose");
        sections.forEach(stack::add);
        add(stack);
    }
}
