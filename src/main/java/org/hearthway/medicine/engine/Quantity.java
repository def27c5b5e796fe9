package org.hearthway.medicine.engine;

import java.math.BigDecimal;

/**
 * An amount of one dose with its unit, as typed. Two are equal when amount and unit are the same, however many zeros
 * were typed. Nothing adds, divides or converts one.
 *
 * @param amount more than 0, at most {@value #MOST}, at most 3 places after the point
 */
public record Quantity(BigDecimal amount, Unit unit) {

    /** The largest amount that is taken, whatever the unit: a guard against slips. Common practice, no source. */
    public static final int MOST = 10_000;

    private static final int PLACES = 3;

    /** What an amount is counted in. Toxin units are none of these: they belong to a preparation. */
    public enum Unit {
        MICROGRAM,
        MILLIGRAM,
        GRAM,
        MILLILITRE,
        DROP,
        TABLET,
        PUFF,
        PATCH
    }

    /** @throws IllegalArgumentException outside its bounds */
    public Quantity {
        if (!isPossible(amount)) {
            throw new IllegalArgumentException("an amount outside its bounds");
        }
        var plain = amount.stripTrailingZeros();
        amount = plain.scale() < 0 ? plain.setScale(0) : plain;
    }

    /** Whether an amount can be one. */
    public static boolean isPossible(BigDecimal amount) {
        return amount.signum() > 0
                && amount.compareTo(BigDecimal.valueOf(MOST)) <= 0
                && amount.stripTrailingZeros().scale() <= PLACES;
    }
}
