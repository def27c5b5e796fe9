package org.hearthway.stimulator.engine;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * What the battery showed on a day.
 *
 * @param day the day of the reading
 * @param level in the unit, within its bounds
 * @param unit per cent or volts
 */
public record Level(LocalDate day, BigDecimal level, BatteryUnit unit) {

    public Level {
        if (!unit.holds(level)) {
            throw new IllegalArgumentException("a battery outside " + unit.least() + " to " + unit.most());
        }
    }
}
