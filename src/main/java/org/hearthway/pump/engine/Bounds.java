package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/**
 * What a typed amount must keep to. One that was typed in the wrong unit is a thousand times off and lies outside.
 *
 * @param field name of the field in a refusal
 */
record Bounds(String field, BigDecimal least, BigDecimal most, int places, Unit unit) {

    static Bounds of(String field, String least, String most, int places, Unit unit) {
        return new Bounds(field, new BigDecimal(least), new BigDecimal(most), places, unit);
    }

    boolean hold(BigDecimal amount) {
        return hold(Exact.of(amount)) && amount.stripTrailingZeros().scale() <= places;
    }

    private boolean hold(BigFraction amount) {
        return amount.compareTo(Exact.of(least)) >= 0 && amount.compareTo(Exact.of(most)) <= 0;
    }

    /**
     * The amount, exactly.
     *
     * @throws Invalid naming field and bounds
     */
    BigFraction typed(BigDecimal amount) {
        if (!hold(amount)) {
            throw refused();
        }
        return Exact.of(amount);
    }

    /**
     * A computed amount, which may have any number of places.
     *
     * @throws Invalid naming field and bounds
     */
    BigFraction computed(BigFraction amount) {
        if (!hold(amount)) {
            throw refused();
        }
        return amount;
    }

    private Invalid refused() {
        return new Invalid(Problem.at(field, "pump.problem.outside", least, most, places, unit.name()));
    }

    /**
     * A whole number between two bounds.
     *
     * @throws Invalid naming field and bounds
     */
    static int whole(String field, int number, int least, int most, Unit unit) {
        if (number < least || number > most) {
            throw of(field, String.valueOf(least), String.valueOf(most), 0, unit)
                    .refused();
        }
        return number;
    }
}
