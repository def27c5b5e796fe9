package org.hearthway.pump.engine;

import java.time.LocalDate;

/** When a clinic begins to plan that a pump is replaced. The rules do not give the same day; a clinic picks one. */
public sealed interface ReplacementRule {

    /** Calendar days before its end, 30 to 730. */
    record DaysBefore(int days) implements ReplacementRule {
        private static final int LEAST = 30;
        private static final int MOST = 730;

        /** @throws org.hearthway.base.Invalid naming the bound that is broken */
        public DaysBefore {
            Bounds.whole("days", days, LEAST, MOST, Unit.DAYS);
        }

        @Override
        public LocalDate planFrom(LocalDate implanted, LocalDate end) {
            return end.minusDays(days);
        }

        @Override
        public Amount span() {
            return Amount.count(days, Unit.DAYS);
        }
    }

    /** Calendar months before its end, 1 to 24. */
    record MonthsBefore(int months) implements ReplacementRule {
        private static final int MOST = 24;

        /** @throws org.hearthway.base.Invalid naming the bound that is broken */
        public MonthsBefore {
            Bounds.whole("months", months, 1, MOST, Unit.MONTHS);
        }

        @Override
        public LocalDate planFrom(LocalDate implanted, LocalDate end) {
            return end.minusMonths(months);
        }

        @Override
        public Amount span() {
            return Amount.count(months, Unit.MONTHS);
        }
    }

    /** Calendar years after the implant, 1 to 15. */
    record YearsAfter(int years) implements ReplacementRule {
        private static final int MOST = 15;

        /** @throws org.hearthway.base.Invalid naming the bound that is broken */
        public YearsAfter {
            Bounds.whole("years", years, 1, MOST, Unit.YEARS);
        }

        @Override
        public LocalDate planFrom(LocalDate implanted, LocalDate end) {
            return implanted.plusYears(years);
        }

        @Override
        public Amount span() {
            return Amount.count(years, Unit.YEARS);
        }
    }

    /** The day from which on it is planned. */
    LocalDate planFrom(LocalDate implanted, LocalDate end);

    /** How long before the end, or after the implant. */
    Amount span();
}
