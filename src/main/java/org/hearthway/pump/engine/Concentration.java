package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Strength of the drug in a pump. Two are equal when they are the same amount, however many zeros were typed.
 *
 * @param exact micrograms per millilitre, {@value #LEAST} to {@value #MOST}; a mixture may have any number of places
 */
public record Concentration(BigFraction exact) implements Quantity, Comparable<Concentration> {

    /** The weakest: the strength of the test dose (public US drug-listing records: 50, 500, 1000, 2000). */
    public static final int LEAST = 50;

    /** The strongest that is taken; compounded strengths lie above the marketed ones. Common practice, no source. */
    public static final int MOST = 5000;

    private static final Bounds BOUNDS = new Bounds(
            "strength", BigDecimal.valueOf(LEAST), BigDecimal.valueOf(MOST), 3, Unit.MICROGRAMS_PER_MILLILITRE);

    /** @throws org.hearthway.base.Invalid outside its bounds */
    public Concentration {
        BOUNDS.computed(exact);
    }

    /**
     * A strength that a person typed.
     *
     * @param microgramsPerMillilitre at most 3 places after the point
     * @throws org.hearthway.base.Invalid outside its bounds
     */
    public Concentration(BigDecimal microgramsPerMillilitre) {
        this(BOUNDS.typed(microgramsPerMillilitre));
    }

    /** The same from a decimal in writing, such as {@code "500"}. */
    public static Concentration microgramsPerMillilitre(String amount) {
        return new Concentration(new BigDecimal(amount));
    }

    /** Whether an amount can be a strength. */
    public static boolean isPossible(BigDecimal amount) {
        return BOUNDS.hold(amount);
    }

    /** As typed, without zeros at its end; a mixture is rounded to 3 places. */
    public BigDecimal microgramsPerMillilitre() {
        return rounded(3);
    }

    @Override
    public Unit unit() {
        return Unit.MICROGRAMS_PER_MILLILITRE;
    }

    @Override
    public int compareTo(Concentration other) {
        return exact.compareTo(other.exact);
    }
}
