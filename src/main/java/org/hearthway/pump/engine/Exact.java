package org.hearthway.pump.engine;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.time.Instant;
import org.apache.commons.numbers.fraction.BigFraction;

/** Between decimals, instants and exact fractions. */
final class Exact {

    static final BigFraction SECONDS_A_DAY = BigFraction.of(86_400);
    static final BigFraction SECONDS_AN_HOUR = BigFraction.of(3_600);
    static final BigFraction HOURS_A_DAY = BigFraction.of(24);
    static final BigFraction HUNDRED = BigFraction.of(100);

    private static final BigInteger NANOS_A_SECOND = BigInteger.valueOf(1_000_000_000);

    private Exact() {}

    static BigFraction of(BigDecimal decimal) {
        return decimal.scale() <= 0
                ? BigFraction.of(decimal.toBigIntegerExact())
                : BigFraction.of(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }

    static BigInteger floor(BigFraction number) {
        var parts = number.getNumerator().divideAndRemainder(number.getDenominator());
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    /** The decimal, half up; without zeros at its end. */
    static BigDecimal decimal(BigFraction number, int places) {
        var rounded = number.bigDecimalValue(places, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    static BigFraction seconds(Instant instant) {
        return BigFraction.of(instant.getEpochSecond())
                .add(BigFraction.of(BigInteger.valueOf(instant.getNano()), NANOS_A_SECOND));
    }

    /** The last whole nanosecond that is not later, so that nothing is told later than it is. */
    static Instant instant(BigFraction seconds) {
        var whole = floor(seconds);
        var rest = floor(seconds.subtract(whole).multiply(NANOS_A_SECOND));
        return Instant.ofEpochSecond(whole.longValueExact(), rest.longValueExact());
    }

    static BigFraction least(BigFraction one, BigFraction other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    static BigFraction most(BigFraction one, BigFraction other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}
