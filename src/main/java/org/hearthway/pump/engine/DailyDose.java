package org.hearthway.pump.engine;

import java.math.BigDecimal;

/**
 * What a pump gives in 24 hours. Two are equal when they are the same amount, however many zeros were typed.
 *
 * @param microgramsPerDay {@value #LEAST} to {@value #MOST}, at most 3 places after the point
 */
public record DailyDose(BigDecimal microgramsPerDay) {

    /** The smallest that is taken. Common practice, no source. */
    public static final int LEAST = 5;

    /** The largest that is taken; the US label gives 22 to 1400 as the range of its trials (from memory). */
    public static final int MOST = 2000;

    /** @throws IllegalArgumentException outside its bounds */
    public DailyDose {
        microgramsPerDay = Bounds.within(microgramsPerDay, LEAST, MOST);
    }

    /** Whether an amount can be a daily dose. */
    public static boolean isPossible(BigDecimal amount) {
        return Bounds.holds(amount, LEAST, MOST);
    }
}
