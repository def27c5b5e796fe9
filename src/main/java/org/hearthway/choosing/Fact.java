package org.hearthway.choosing;

import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;

/**
 * A fact about a child that may matter when a path is chosen. It may always be left unknown.
 *
 * @param id identifier
 * @param origin where it comes from
 * @param many whether several choices may hold at once
 * @param name in trade terms
 * @param family in family words, as it stands after "We do not know yet:"
 * @param choices at least two
 */
public record Fact(String id, Origin origin, boolean many, Bilingual name, Bilingual family, List<Choice> choices) {

    public Fact {
        choices = List.copyOf(choices);
    }

    /** Where a fact comes from. */
    public enum Origin {
        /** Entered here. */
        ASKED,
        /** The GMFCS level in the child's data; its choices are 1 to 5. */
        LEVEL
    }

    /** One answer to choose. */
    public record Choice(String id, Bilingual name) {}

    /** Facts that stand together. */
    public record Group(String id, Bilingual name, List<Fact> facts) {

        public Group {
            facts = List.copyOf(facts);
        }
    }

    /** The choice with this identifier, if there is one. */
    public Optional<Choice> choice(String choice) {
        return choices.stream().filter(each -> each.id().equals(choice)).findFirst();
    }
}
