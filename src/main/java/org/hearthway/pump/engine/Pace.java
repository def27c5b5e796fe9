package org.hearthway.pump.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/**
 * What a pump gives at each second of its own clock: pieces of one rate each that come again after a day or a week.
 * Seconds are counted from 1970-01-01T00:00 of that clock.
 */
public final class Pace {

    /** Days from 1970-01-01, a Thursday, to the first Monday after it. */
    static final int MONDAY = 4;

    private static final int SECONDS_A_MINUTE = 60;

    /**
     * One rate.
     *
     * @param start seconds since the period began
     * @param perSecond micrograms
     * @param before micrograms given from the beginning of the period to the start
     */
    private record Piece(BigFraction start, BigFraction perSecond, BigFraction before) {}

    private final BigFraction period;
    private final BigFraction offset;
    private final List<Piece> pieces;
    private final BigFraction total;

    private Pace(BigFraction[] perDayInEachMinute, BigFraction offset) {
        this.period = BigFraction.of(perDayInEachMinute.length).multiply(SECONDS_A_MINUTE);
        this.offset = offset;
        this.pieces = new ArrayList<>();
        var given = BigFraction.ZERO;
        var begin = 0;
        for (var minute = 1; minute <= perDayInEachMinute.length; minute++) {
            var same =
                    minute < perDayInEachMinute.length && perDayInEachMinute[minute].equals(perDayInEachMinute[begin]);
            if (!same) {
                var perSecond = perDayInEachMinute[begin].divide(Exact.SECONDS_A_DAY);
                pieces.add(new Piece(BigFraction.of(begin).multiply(SECONDS_A_MINUTE), perSecond, given));
                given = given.add(perSecond.multiply(minute - begin).multiply(SECONDS_A_MINUTE));
                begin = minute;
            }
        }
        this.total = given;
    }

    static Pace even(DrugRate rate) {
        return new Pace(new BigFraction[] {rate.exact()}, BigFraction.ZERO);
    }

    /**
     * Days that follow each other: one, or the seven of a week from Monday on.
     *
     * @throws Invalid when boluses overlap, naming the time
     */
    static Pace of(List<DayPattern> days) {
        var steps = days.stream().flatMap(day -> Arrays.stream(day.basal())).toArray(BigFraction[]::new);
        var rates = steps.clone();
        var taken = new boolean[steps.length];
        for (var day = 0; day < days.size(); day++) {
            var adds = days.get(day).mode() == BolusMode.ADDS_TO_BASAL;
            for (var bolus : days.get(day).boluses()) {
                var rate = bolus.rate().exact();
                for (var i = 0; i < bolus.minutes(); i++) {
                    var minute = (day * Minutes.A_DAY + bolus.start() + i) % steps.length;
                    if (taken[minute]) {
                        throw overlap(minute % Minutes.A_DAY);
                    }
                    taken[minute] = true;
                    // what a bolus does to the steps is said by the day on which it begins
                    rates[minute] = adds ? steps[minute].add(rate) : rate;
                }
            }
        }
        return new Pace(rates, days.size() == 1 ? BigFraction.ZERO : Exact.SECONDS_A_DAY.multiply(MONDAY));
    }

    private static Invalid overlap(int minute) {
        return new Invalid(Problem.at("boluses", "pump.problem.boluses.overlap", Minutes.clock(minute)));
    }

    /** The mean of its days. */
    DrugRate mean() {
        return new DrugRate(total.multiply(Exact.SECONDS_A_DAY).divide(period));
    }

    /** The rate at a second; a piece begins with its first second. */
    DrugRate at(BigFraction second) {
        var since = second.subtract(offset);
        return new DrugRate(
                piece(since.subtract(whole(since).multiply(period))).perSecond().multiply(Exact.SECONDS_A_DAY));
    }

    /** All of its rates, each once. */
    List<DrugRate> rates() {
        return pieces.stream()
                .map(piece -> new DrugRate(piece.perSecond().multiply(Exact.SECONDS_A_DAY)))
                .distinct()
                .toList();
    }

    /** What is given between two seconds, the first not later than the second. */
    Mass given(BigFraction from, BigFraction to) {
        return new Mass(upTo(to).subtract(upTo(from)));
    }

    /** Seconds from one on until a mass is given for the first time; empty when it never is. */
    Optional<BigFraction> until(BigFraction from, Mass mass) {
        if (mass.exact().signum() == 0) {
            return Optional.of(BigFraction.ZERO);
        }
        if (total.signum() == 0) {
            return Optional.empty();
        }
        var target = upTo(from).add(mass.exact());
        var periods = BigFraction.of(Exact.floor(target.divide(total)));
        var rest = target.subtract(periods.multiply(total));
        if (rest.signum() == 0) {
            // reached at the end of what the period before gives, not after the pause that may follow
            periods = periods.subtract(1);
            rest = total;
        }
        var within = reached(rest);
        return Optional.of(periods.multiply(period).add(within).add(offset).subtract(from));
    }

    private BigFraction reached(BigFraction rest) {
        var last = pieces.get(0);
        for (var piece : pieces) {
            if (piece.before().compareTo(rest) >= 0) {
                break;
            }
            if (piece.perSecond().signum() > 0) {
                last = piece;
            }
        }
        return last.start().add(rest.subtract(last.before()).divide(last.perSecond()));
    }

    private BigFraction upTo(BigFraction second) {
        var since = second.subtract(offset);
        var periods = whole(since);
        var rest = since.subtract(periods.multiply(period));
        var piece = piece(rest);
        return periods.multiply(total)
                .add(piece.before())
                .add(rest.subtract(piece.start()).multiply(piece.perSecond()));
    }

    private BigFraction whole(BigFraction since) {
        return BigFraction.of(Exact.floor(since.divide(period)));
    }

    private Piece piece(BigFraction rest) {
        var found = pieces.get(0);
        for (var piece : pieces) {
            if (piece.start().compareTo(rest) > 0) {
                break;
            }
            found = piece;
        }
        return found;
    }
}
