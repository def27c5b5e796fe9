package org.hearthway.pump.engine;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Time that passes on the pump's own clock, which knows no daylight saving: a day of it is 24 hours.
 *
 * @param exact hours
 */
public record Elapsed(BigFraction exact) implements Quantity, Comparable<Elapsed> {

    /** No time. */
    public static final Elapsed NONE = new Elapsed(BigFraction.ZERO);

    private static final Bounds TYPED = Bounds.of("hours", "0", "10000", 4, Unit.HOURS);

    static Elapsed hours(BigFraction hours) {
        return new Elapsed(hours);
    }

    static Elapsed seconds(BigFraction seconds) {
        return new Elapsed(seconds.divide(Exact.SECONDS_AN_HOUR));
    }

    /**
     * Hours that a person typed, such as {@code "9.5"}.
     *
     * @param hours 0 to 10000, at most 4 places after the point
     * @throws org.hearthway.base.Invalid naming the bounds
     */
    public static Elapsed hours(String hours) {
        return hours(TYPED.typed(new BigDecimal(hours)));
    }

    /** The time of a duration. */
    public static Elapsed of(Duration duration) {
        return between(Instant.EPOCH, Instant.EPOCH.plus(duration));
    }

    /** From one moment to another; negative when the other is earlier. */
    public static Elapsed between(Instant from, Instant to) {
        return seconds(Exact.seconds(to).subtract(Exact.seconds(from)));
    }

    /** In days of 24 hours. */
    public BigFraction days() {
        return exact.divide(Exact.HOURS_A_DAY);
    }

    /** In days of 24 hours, as a result. */
    public Amount inDays() {
        return new Amount(days(), Unit.DAYS);
    }

    /** Days of 24 hours that are over. */
    public long wholeDays() {
        return Exact.floor(days()).longValueExact();
    }

    /** The last nanosecond that is not later than this time after a moment. */
    public Instant after(Instant from) {
        return Exact.instant(Exact.seconds(from).add(exact.multiply(Exact.SECONDS_AN_HOUR)));
    }

    @Override
    public Unit unit() {
        return Unit.HOURS;
    }

    @Override
    public int compareTo(Elapsed other) {
        return exact.compareTo(other.exact);
    }
}
