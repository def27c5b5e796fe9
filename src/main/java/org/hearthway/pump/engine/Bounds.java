package org.hearthway.pump.engine;

import java.math.BigDecimal;

/** Bounds of an amount, and its one way of being written. */
final class Bounds {

    private static final int PLACES = 3;

    private Bounds() {}

    static boolean holds(BigDecimal amount, int least, int most) {
        return amount.compareTo(BigDecimal.valueOf(least)) >= 0
                && amount.compareTo(BigDecimal.valueOf(most)) <= 0
                && amount.stripTrailingZeros().scale() <= PLACES;
    }

    static BigDecimal within(BigDecimal amount, int least, int most) {
        if (!holds(amount, least, most)) {
            throw new IllegalArgumentException("an amount outside " + least + " to " + most + " or too finely given");
        }
        var plain = amount.stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }
}
