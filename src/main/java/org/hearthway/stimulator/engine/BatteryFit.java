package org.hearthway.stimulator.engine;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * What the readings of a battery say about its end, or why they say nothing. A generator's readings run flat for long
 * and then fall, so a line through all of them sees the fall late. Two lines are drawn: through all readings since the
 * implant, and through the newest ones that reach back {@link #RECENT_DAYS} days and are at least four. The steeper of
 * the two slopes counts, for the likely day as for the bound, and it is counted on from the lower of the newest reading
 * and the line. Days round down.
 *
 * @param whole through all readings
 * @param recent through the newest
 * @param from the level that is counted on from, on the day of the newest reading
 * @param end the level taken as the end
 * @param slope the steeper slope, per day; negative
 * @param steepest the steeper lower bound, per day; negative and not above the slope
 * @param likely the day on which the slope reaches the end
 * @param earliest the day on which the lower bound reaches it
 */
public record BatteryFit(
        RobustLine whole,
        RobustLine recent,
        double from,
        double end,
        double slope,
        double steepest,
        LocalDate likely,
        LocalDate earliest) {

    /** How far back the recent readings reach at least. */
    public static final int RECENT_DAYS = 90;

    /** Nothing is said beyond 25 years: such a line is flat. */
    private static final long MOST_DAYS = 9_131;

    /** Why nothing is said. */
    public enum Silence {
        /** Fewer than four readings in the unit of the newest. */
        TOO_FEW,
        /** Volts, and nobody entered the voltage at which this generator is to be replaced. */
        NO_END,
        /** The readings do not fall. */
        NOT_FALLING
    }

    /**
     * What there is to say.
     *
     * @param readings of one unit that were used
     * @param fit empty when nothing can be said
     * @param silence why not
     */
    public record Answer(int readings, Optional<BatteryFit> fit, Optional<Silence> silence) {}

    /**
     * Fits.
     *
     * @param readings since the implant, of one unit, in ascending order, no day twice
     * @param end the level taken as the end, in the same unit; empty when it is not known
     */
    public static Answer of(List<Level> readings, Optional<Double> end) {
        if (readings.size() < RobustLine.FEWEST) {
            return silent(readings, Silence.TOO_FEW);
        }
        if (end.isEmpty()) {
            return silent(readings, Silence.NO_END);
        }
        var whole = RobustLine.through(readings);
        var recent = RobustLine.through(recent(readings));
        var slope = Math.min(whole.slope(), recent.slope());
        if (slope >= 0) {
            return silent(readings, Silence.NOT_FALLING);
        }
        var steepest = Math.min(whole.steepest(), recent.steepest());
        var newest = readings.get(readings.size() - 1);
        var from = Math.min(newest.level().doubleValue(), Math.min(whole.level(), recent.level()));
        return new Answer(
                readings.size(),
                Optional.of(new BatteryFit(
                        whole,
                        recent,
                        from,
                        end.get(),
                        slope,
                        steepest,
                        reaches(newest.day(), from - end.get(), slope),
                        reaches(newest.day(), from - end.get(), steepest))),
                Optional.empty());
    }

    private static Answer silent(List<Level> readings, Silence why) {
        return new Answer(readings.size(), Optional.empty(), Optional.of(why));
    }

    private static LocalDate reaches(LocalDate day, double left, double slope) {
        // a hair more than the quotient: 90 / 0.3 is 300 days, though the machine makes 299.99… of it
        var days = left <= 0 ? 0 : Math.floor(left / -slope + 1e-6);
        return day.plusDays((long) Math.min(MOST_DAYS, days));
    }

    private static List<Level> recent(List<Level> readings) {
        var newest = readings.get(readings.size() - 1).day();
        var from = readings.size() - RobustLine.FEWEST;
        while (from > 0 && ChronoUnit.DAYS.between(readings.get(from).day(), newest) < RECENT_DAYS) {
            from--;
        }
        return readings.subList(from, readings.size());
    }
}
