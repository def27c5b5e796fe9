package org.hearthway.path.engine.network;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** One change, small as can be, after which a schedule exists. */
public sealed interface WayOut {

    /** The rule that changes. */
    String rule();

    /** What it costs, in days. */
    long days();

    /** A date that people gave moves to the nearest day that works. */
    record Move(String rule, String point, LocalDate from, LocalDate to) implements WayOut {

        @Override
        public long days() {
            return Math.abs(ChronoUnit.DAYS.between(from, to));
        }
    }

    /**
     * A rule gives way for this once.
     *
     * @param side which side of it
     * @param days by how many days
     */
    record Give(String rule, Side side, long days) implements WayOut {}

    /** The side on which a rule gives way. */
    enum Side {
        /** A smallest gap, or the days between two that lie apart, gets shorter. */
        SHORTER,
        /** A largest gap gets longer. */
        LONGER
    }
}
