package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/** A plain number of a result: a percentage, a ratio, a count of days. */
public record Amount(BigFraction exact, Unit unit) implements Quantity, Comparable<Amount> {

    /** A decimal with a unit. */
    public static Amount of(BigDecimal number, Unit unit) {
        return new Amount(Exact.of(number), unit);
    }

    /** A percentage; 15 is fifteen of a hundred. */
    public static Amount percent(BigFraction exact) {
        return new Amount(exact, Unit.PERCENT);
    }

    /** A ratio; 1 is as planned. */
    public static Amount ratio(BigFraction exact) {
        return new Amount(exact, Unit.ONE);
    }

    /** A whole number of something. */
    public static Amount count(long number, Unit unit) {
        return new Amount(BigFraction.of(number), unit);
    }

    /** By size; both have the same unit. */
    @Override
    public int compareTo(Amount other) {
        if (unit != other.unit) {
            throw new IllegalArgumentException("different units: " + unit + " and " + other.unit);
        }
        return exact.compareTo(other.exact);
    }
}
