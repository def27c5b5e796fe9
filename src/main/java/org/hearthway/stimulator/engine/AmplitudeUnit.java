package org.hearthway.stimulator.engine;

import java.math.BigDecimal;

/** In what the strength of stimulation is given. The usual bounds are from memory; the device's manual decides. */
public enum AmplitudeUnit {
    /** Milliampere. */
    MILLIAMPERE(new BigDecimal("25.5")),
    /** Volts. */
    VOLT(new BigDecimal("10.5"));

    /** The least of a side that is stimulated. */
    public static final BigDecimal LEAST = new BigDecimal("0.1");

    private static final int PLACES = 2;

    private final BigDecimal most;

    AmplitudeUnit(BigDecimal most) {
        this.most = most;
    }

    /** The most that is usual. */
    public BigDecimal most() {
        return most;
    }

    /** Whether such a strength is usual. */
    public boolean isUsual(BigDecimal amplitude) {
        return amplitude.compareTo(LEAST) >= 0
                && amplitude.compareTo(most) <= 0
                && amplitude.stripTrailingZeros().scale() <= PLACES;
    }
}
