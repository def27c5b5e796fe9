package org.hearthway.stimulator.engine;

import java.math.BigDecimal;

/** In what a generator tells its battery. The two are never turned into each other. */
public enum BatteryUnit {
    /** Per cent of charge or of life, as the device gives it: 0 to 100, at most one place after the point. */
    PERCENT(BigDecimal.ZERO, BigDecimal.valueOf(100), 1),
    /** Volts: 1 to 5, at most three places after the point. Common practice, no source. */
    VOLT(BigDecimal.ONE, BigDecimal.valueOf(5), 3);

    private final BigDecimal least;
    private final BigDecimal most;
    private final int places;

    BatteryUnit(BigDecimal least, BigDecimal most, int places) {
        this.least = least;
        this.most = most;
        this.places = places;
    }

    /** The least that such a reading can be. */
    public BigDecimal least() {
        return least;
    }

    /** The most that such a reading can be. */
    public BigDecimal most() {
        return most;
    }

    /** Places after the point at most. */
    public int places() {
        return places;
    }

    /** Whether a device can show this. */
    public boolean holds(BigDecimal level) {
        return level.compareTo(least) >= 0
                && level.compareTo(most) <= 0
                && level.stripTrailingZeros().scale() <= places;
    }
}
