package org.hearthway.clinic.engine;

import java.time.LocalDate;

/** Easter Sunday of the Gregorian calendar. */
public final class Easter {

    private Easter() {}

    /**
     * Easter Sunday of a year from 1583 on, by the anonymous Gregorian algorithm (Meeus, Astronomical Algorithms,
     * chapter 8; from memory).
     */
    public static LocalDate sunday(int year) {
        int golden = year % 19;
        int century = year / 100;
        int inCentury = year % 100;
        int moonShift = (8 * century + 13) / 25;
        int moon = (19 * golden + century - century / 4 - moonShift + 15) % 30;
        int late = (golden + 11 * moon) / 319;
        int weekday = (2 * (century % 4) + 2 * (inCentury / 4) - inCentury % 4 - moon + late + 32) % 7;
        int sum = moon - late + weekday;
        int month = (sum + 90) / 25;
        int day = (sum + month + 19) % 32;
        return LocalDate.of(year, month, day);
    }
}
