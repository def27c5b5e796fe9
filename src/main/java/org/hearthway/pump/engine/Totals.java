package org.hearthway.pump.engine;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What schedules come to in a day, held to what a daily dose may be. */
final class Totals {

    private static final int DAYS_A_WEEK = 7;

    private Totals() {}

    /** @throws org.hearthway.base.Invalid when it is none */
    static DailyDose dose(DrugRate rate) {
        return new DailyDose(rate.exact());
    }

    /** @throws org.hearthway.base.Invalid when one of the days is none */
    static List<DailyDose> ofDays(Pace week) {
        return IntStream.range(0, DAYS_A_WEEK)
                .mapToObj(day -> dose(new DrugRate(
                        week.given(midnight(day), midnight(day + 1)).exact())))
                .toList();
    }

    private static BigFraction midnight(int day) {
        return Exact.SECONDS_A_DAY.multiply(day + Pace.MONDAY);
    }
}
