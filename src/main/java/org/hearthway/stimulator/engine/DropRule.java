package org.hearthway.stimulator.engine;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * When a battery fell suddenly between its two newest readings: by more than so many times what it usually falls in
 * such a time, and by no less than a least fall. Common practice, no source.
 *
 * @param times of the usual fall
 * @param leastPercent least fall in per cent
 * @param leastVolts least fall in volts
 */
public record DropRule(int times, BigDecimal leastPercent, BigDecimal leastVolts) {

    /** Two earlier readings are the fewest that show what is usual. */
    private static final int EARLIER = 2;

    /**
     * A sudden fall.
     *
     * @param from the day of the reading before
     * @param to the day of the newest
     * @param fall by how much
     * @param usual what it usually falls in so many days, 0 when it did not fall before
     */
    public record Drop(LocalDate from, LocalDate to, BigDecimal fall, double usual) {}

    /**
     * Looks at the newest reading. What is usual is the median of the slopes of all pairs of earlier readings; with
     * fewer than two of them nothing is usual yet, and nothing is said.
     *
     * @param readings of one unit, in ascending order, no day twice
     */
    public Optional<Drop> in(List<Level> readings) {
        if (readings.size() <= EARLIER) {
            return Optional.empty();
        }
        var newest = readings.get(readings.size() - 1);
        var earlier = readings.subList(0, readings.size() - 1);
        var before = earlier.get(earlier.size() - 1);
        var fall = before.level().subtract(newest.level());
        var usual = Math.max(0, -usualSlope(earlier)) * ChronoUnit.DAYS.between(before.day(), newest.day());
        var least = newest.unit() == BatteryUnit.PERCENT ? leastPercent : leastVolts;
        return fall.compareTo(least) >= 0 && fall.doubleValue() > times * usual
                ? Optional.of(new Drop(before.day(), newest.day(), fall, usual))
                : Optional.empty();
    }

    private static double usualSlope(List<Level> earlier) {
        return RobustLine.median(RobustLine.slopes(earlier));
    }
}
