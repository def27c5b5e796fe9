package org.hearthway.pump.engine;

import java.math.BigDecimal;

/**
 * Strength of the drug in a pump. Two are equal when they are the same amount, however many zeros were typed.
 *
 * @param microgramsPerMillilitre {@value #LEAST} to {@value #MOST}, at most 3 places after the point
 */
public record Concentration(BigDecimal microgramsPerMillilitre) {

    /** The weakest: the strength of the test dose (public US drug-listing records: 50, 500, 1000, 2000). */
    public static final int LEAST = 50;

    /** The strongest that is taken; compounded strengths lie above the marketed ones. Common practice, no source. */
    public static final int MOST = 5000;

    /** @throws IllegalArgumentException outside its bounds */
    public Concentration {
        microgramsPerMillilitre = Bounds.within(microgramsPerMillilitre, LEAST, MOST);
    }

    /** Whether an amount can be a strength. */
    public static boolean isPossible(BigDecimal amount) {
        return Bounds.holds(amount, LEAST, MOST);
    }
}
