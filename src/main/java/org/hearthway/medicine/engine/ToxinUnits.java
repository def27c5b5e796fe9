package org.hearthway.medicine.engine;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Units of one preparation. Units of two preparations are not the same thing: there is no way here to add them or to
 * make one of the other.
 *
 * @param amount more than 0, at most {@value #MOST} when typed, at most 2 places after the point
 */
public record ToxinUnits(BigDecimal amount, Preparation preparation) {

    /** The largest amount at one place: a guard against slips, far above any dose. Common practice, no source. */
    public static final int MOST = 2_000;

    private static final int PLACES = 2;

    /** @throws IllegalArgumentException unless more than 0 with at most 2 places */
    public ToxinUnits {
        if (amount.signum() <= 0 || amount.stripTrailingZeros().scale() > PLACES) {
            throw new IllegalArgumentException("units that cannot be");
        }
        var plain = amount.stripTrailingZeros();
        amount = plain.scale() < 0 ? plain.setScale(0) : plain;
    }

    /** Whether an amount can be given at one place. */
    public static boolean isPossible(BigDecimal amount) {
        return amount.signum() > 0
                && amount.compareTo(BigDecimal.valueOf(MOST)) <= 0
                && amount.stripTrailingZeros().scale() <= PLACES;
    }

    /**
     * Both together.
     *
     * @throws IllegalArgumentException when the other's are units of another preparation
     */
    public ToxinUnits plus(ToxinUnits other) {
        if (!preparation.equals(other.preparation)) {
            throw new IllegalArgumentException("units of two preparations do not add up");
        }
        return new ToxinUnits(amount.add(other.amount), preparation);
    }

    /** A total for each preparation, in the order of their first appearance. */
    public static List<ToxinUnits> totals(Collection<ToxinUnits> all) {
        Map<Preparation, ToxinUnits> totals = new LinkedHashMap<>();
        all.forEach(units -> totals.merge(units.preparation(), units, ToxinUnits::plus));
        return List.copyOf(totals.values());
    }
}
