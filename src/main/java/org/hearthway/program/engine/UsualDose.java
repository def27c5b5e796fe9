package org.hearthway.program.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much of an exercise is usual for children of some ages. It bounds nothing: a dose outside of it is asked for a
 * reason. What is not said of a number is not looked at.
 *
 * @param ages in whole years
 * @param sets rounds
 * @param repetitions times in a round; empty when the usual dose is in minutes
 * @param holdSeconds seconds of each hold
 * @param minutes minutes at a time; empty when the usual dose is in repetitions
 * @param timesADay how often on one day
 * @param days days a week
 * @param source where the figures come from
 */
public record UsualDose(
        Span ages,
        Optional<Span> sets,
        Optional<Span> repetitions,
        Optional<Span> holdSeconds,
        Optional<Span> minutes,
        Optional<Span> timesADay,
        Optional<Span> days,
        String source) {

    /** A number of a dose, with its name in problems and forms. */
    public enum Amount {
        SETS("sets"),
        REPETITIONS("repetitions"),
        HOLD_SECONDS("holdSeconds"),
        MINUTES("minutes"),
        TIMES_A_DAY("timesADay"),
        DAYS("days");

        private final String field;

        Amount(String field) {
            this.field = field;
        }

        /** Its name in problems and forms. */
        public String field() {
            return field;
        }
    }

    /** A number outside what is usual. */
    public record Outside(Amount amount, int is, Span usual) {}

    /**
     * What of a dose lies outside, in the order of its numbers. A dose in minutes is not held against repetitions, nor
     * the other way round, but rounds, times and days are.
     *
     * @param daysAWeek on how many days of a week it is done
     */
    public List<Outside> outside(Dose dose, int daysAWeek) {
        var found = new ArrayList<>(outside(dose));
        compare(Amount.DAYS, daysAWeek, days, found);
        return List.copyOf(found);
    }

    /** The same without the days of a week. */
    public List<Outside> outside(Dose dose) {
        var found = new ArrayList<Outside>();
        compare(Amount.SETS, dose.sets(), sets, found);
        if (dose.minutes() > 0) {
            compare(Amount.MINUTES, dose.minutes(), minutes, found);
        } else {
            compare(Amount.REPETITIONS, dose.repetitions(), repetitions, found);
            compare(Amount.HOLD_SECONDS, dose.holdSeconds(), holdSeconds, found);
        }
        compare(Amount.TIMES_A_DAY, dose.timesADay(), timesADay, found);
        return List.copyOf(found);
    }

    private static void compare(Amount amount, int is, Optional<Span> usual, List<Outside> found) {
        usual.filter(span -> !span.holds(is)).ifPresent(span -> found.add(new Outside(amount, is, span)));
    }
}
