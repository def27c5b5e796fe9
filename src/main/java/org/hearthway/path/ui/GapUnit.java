package org.hearthway.path.ui;

import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** What a gap is counted in, after a day or before it. */
enum GapUnit {
    DAYS(0, 1),
    WEEKS(0, 7),
    MONTHS(1, 0),
    YEARS(12, 0),
    DAYS_BEFORE(0, -1),
    WEEKS_BEFORE(0, -7),
    MONTHS_BEFORE(-1, 0);

    private final int months;
    private final int days;

    GapUnit(int months, int days) {
        this.months = months;
        this.days = days;
    }

    boolean isBefore() {
        return months < 0 || days < 0;
    }

    boolean isOfMonths() {
        return months != 0;
    }

    /** So many of this unit. */
    Period gap(int number) {
        return this == YEARS ? Period.ofYears(number) : Period.of(0, months * number, days * number);
    }

    /** How many of this unit make up the gap; empty when it does not come out even. */
    Optional<Integer> of(Period gap) {
        if (isBefore() != gap.isNegative()) {
            return Optional.empty();
        }
        return months == 0 ? ofDays(gap) : ofMonths(gap);
    }

    private Optional<Integer> ofMonths(Period gap) {
        int total = (int) gap.toTotalMonths();
        return gap.equals(gap.withDays(0)) && total != 0 && total % months == 0
                ? Optional.of(total / months)
                : Optional.empty();
    }

    private Optional<Integer> ofDays(Period gap) {
        int total = (int) ChronoUnit.DAYS.between(LocalDate.EPOCH, LocalDate.EPOCH.plus(gap));
        return gap.toTotalMonths() == 0 && total % days == 0 && (total != 0 || days == 1)
                ? Optional.of(total / days)
                : Optional.empty();
    }
}
