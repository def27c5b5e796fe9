package org.hearthway.path.engine;

import java.time.LocalDate;
import java.util.List;

/**
 * Rules that cannot all be kept, while any all but one of them can.
 *
 * @param stage the stage that gets no day by its rules
 * @param causes the rules, in the order of the path
 * @param ways single changes that help, the cheapest first: the days that a date moves, then the days that a rule
 *     gives way
 */
public record Clash(Template.Stage stage, List<Cause> causes, List<Way> ways) {

    public Clash {
        causes = List.copyOf(causes);
        ways = List.copyOf(ways);
    }

    /** A change that helps. */
    public sealed interface Way {

        /** A stage's date moves. */
        record Move(Template.Stage stage, LocalDate from, LocalDate to) implements Way {}

        /**
         * A stage begins later, or earlier, after another than its rule says.
         *
         * @param rule the rule as it would be for this child
         * @param days by how many days it gives way
         */
        record Give(Template.Stage stage, int at, Template.After rule, long days) implements Way {}
    }
}
