package org.hearthway.pump.engine;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/**
 * What a pump gives from one midnight of its own clock to the next: steps that fill 24 hours, and boluses.
 *
 * @param steps in any order; together they fill the day, without gap or overlap; a step through midnight is both the
 *     first and the last of this day
 * @param boluses in any order
 * @param mode what a bolus does to the steps
 */
public record DayPattern(List<Step> steps, List<Bolus> boluses, BolusMode mode) {

    private static final int MOST = 48;

    /**
     * @throws Invalid when the steps leave a gap or overlap, naming the time, or there are more than 48 steps or
     *     boluses
     */
    public DayPattern {
        steps = List.copyOf(steps);
        boluses = List.copyOf(boluses);
        Bounds.whole("steps", steps.size(), 1, MOST, Unit.ONE);
        Bounds.whole("boluses", boluses.size(), 0, MOST, Unit.ONE);
        fillTheDay(steps);
    }

    /** Steps alone. */
    public static DayPattern of(Step... steps) {
        return new DayPattern(List.of(steps), List.of(), BolusMode.REPLACES_BASAL);
    }

    /** A daily dose spread evenly, for boluses to be put upon. */
    public static DayPattern even(DailyDose dose) {
        return of(new Step(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT, dose.rate()));
    }

    /** The same steps with these boluses. */
    public DayPattern with(BolusMode how, Bolus... more) {
        return new DayPattern(steps, List.of(more), how);
    }

    private static void fillTheDay(List<Step> steps) {
        var times = new int[Minutes.A_DAY];
        for (var step : steps) {
            for (var i = 0; i < step.minutes(); i++) {
                times[(step.start() + i) % Minutes.A_DAY]++;
            }
        }
        var problems = new ArrayList<Problem>();
        for (var minute = 0; minute < times.length && problems.isEmpty(); minute++) {
            if (times[minute] != 1) {
                problems.add(Problem.at(
                        "steps",
                        times[minute] == 0 ? "pump.problem.steps.gap" : "pump.problem.steps.overlap",
                        Minutes.clock(minute)));
            }
        }
        Invalid.ifAny(problems);
    }

    /** The rate of the steps in each minute of the day. */
    BigFraction[] basal() {
        var rates = new BigFraction[Minutes.A_DAY];
        for (var step : steps) {
            for (var i = 0; i < step.minutes(); i++) {
                rates[(step.start() + i) % Minutes.A_DAY] = step.rate().exact();
            }
        }
        return rates;
    }
}
