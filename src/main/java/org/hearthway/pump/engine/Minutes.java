package org.hearthway.pump.engine;

import java.time.LocalTime;
import org.apache.commons.numbers.fraction.BigFraction;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/** The minutes of a pump's day. */
final class Minutes {

    static final int A_DAY = 1440;

    private static final int AN_HOUR = 60;

    private Minutes() {}

    /** @throws Invalid when the time is not a whole minute */
    static int of(String field, LocalTime time) {
        if (time.getSecond() != 0 || time.getNano() != 0) {
            throw new Invalid(Problem.at(field, "pump.problem.whole-minutes"));
        }
        return time.getHour() * AN_HOUR + time.getMinute();
    }

    static LocalTime clock(int minute) {
        return LocalTime.MIDNIGHT.plusMinutes(minute);
    }

    static Elapsed elapsed(int minutes) {
        return Elapsed.hours(BigFraction.of(minutes, AN_HOUR));
    }
}
