package org.hearthway.pump.engine;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a pump is set to give in 24 hours. Two are equal when they are the same amount, however many zeros were typed.
 *
 * @param exact micrograms per day, {@value #LEAST} to {@value #MOST}; the total of a schedule may have any number of
 *     places
 */
public record DailyDose(BigFraction exact) implements Quantity, Comparable<DailyDose> {

    /** The smallest that is taken. Common practice, no source. */
    public static final int LEAST = 5;

    /** The largest that is taken; the US label gives 22 to 1400 as the range of its trials (from memory). */
    public static final int MOST = 2000;

    private static final Bounds BOUNDS =
            new Bounds("dose", BigDecimal.valueOf(LEAST), BigDecimal.valueOf(MOST), 3, Unit.MICROGRAMS_PER_DAY);

    /** @throws org.hearthway.base.Invalid outside its bounds */
    public DailyDose {
        BOUNDS.computed(exact);
    }

    /**
     * A dose that a person typed.
     *
     * @param microgramsPerDay at most 3 places after the point
     * @throws org.hearthway.base.Invalid outside its bounds
     */
    public DailyDose(BigDecimal microgramsPerDay) {
        this(BOUNDS.typed(microgramsPerDay));
    }

    /** The same from a decimal in writing, such as {@code "110"}. */
    public static DailyDose microgramsPerDay(String amount) {
        return new DailyDose(new BigDecimal(amount));
    }

    /** Whether an amount can be a daily dose. */
    public static boolean isPossible(BigDecimal amount) {
        return BOUNDS.hold(amount);
    }

    /** As typed, without zeros at its end; the total of a schedule is rounded to 3 places. */
    public BigDecimal microgramsPerDay() {
        return rounded(3);
    }

    /** The rate that gives it evenly. */
    public DrugRate rate() {
        return new DrugRate(exact);
    }

    @Override
    public Unit unit() {
        return Unit.MICROGRAMS_PER_DAY;
    }

    @Override
    public int compareTo(DailyDose other) {
        return exact.compareTo(other.exact);
    }
}
