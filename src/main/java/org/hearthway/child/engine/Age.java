package org.hearthway.child.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;

/**
 * A child's age on a day, by the calendar and corrected for preterm birth.
 *
 * <p>A scale that asks for it counts from the due day while a preterm child is under two years by the calendar (common
 * practice, no source); from the second birthday on both are the same.
 *
 * @param byCalendar since birth
 * @param corrected since the due day, while that is what counts; zero before the due day; empty otherwise
 */
public record Age(Period byCalendar, Optional<Period> corrected) {

    private static final int CORRECTED_UNTIL_YEARS = 2;

    /**
     * The age on a day.
     *
     * @param born birth date
     * @param gestation if recorded
     * @param day not before the birth
     * @throws IllegalArgumentException when the day lies before the birth
     */
    public static Age on(LocalDate born, Optional<Gestation> gestation, LocalDate day) {
        if (day.isBefore(born)) {
            throw new IllegalArgumentException("the day lies before the birth");
        }
        var corrected = gestation
                .filter(Gestation::isPreterm)
                .filter(early -> day.isBefore(born.plusYears(CORRECTED_UNTIL_YEARS)))
                .map(early -> since(early.dueDay(born), day));
        return new Age(Period.between(born, day), corrected);
    }

    private static Period since(LocalDate due, LocalDate day) {
        return day.isBefore(due) ? Period.ZERO : Period.between(due, day);
    }

    /** The age that a scale uses which asks for the corrected one. */
    public Period forScale() {
        return corrected.orElse(byCalendar);
    }
}
