package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.MidpointIntegrator;
import org.hearthway.pump.engine.AnyDosing.History;

/** What holds for every history of a fill; other ways to the same numbers. */
@Domain(AnyDosing.class)
@Domain(net.jqwik.api.domains.DomainContext.Global.class)
class ReservoirProperties {

    private static final PumpModel PUMP = Sample.pump("20", "2");

    private static final int FIFTY_DAYS = 60 * 24 * 50;

    /** Another way: minute by minute, in binary numbers. */
    @Property(tries = 25)
    void theVolumeIsThatOfAPumpWatchedMinuteByMinute(
            @ForAll History history, @ForAll @IntRange(max = FIFTY_DAYS) int minutes) {
        var simulated = Simulated.left(20, history.programs(), history.filled(), minutes);
        var volume = history.reservoir(PUMP).at(history.filled().plusSeconds(60L * minutes));
        assertThat(volume.forPlot()).isCloseTo(simulated, within(1e-6));
    }

    /** Another way: the alarm sounds within the minute in which a watched pump reaches it. */
    @Property(tries = 25)
    void theAlarmIsThatOfAPumpWatchedMinuteByMinute(@ForAll History history) {
        var minute = Simulated.minutesTo(2, 20, history.programs(), history.filled(), FIFTY_DAYS);
        var alarm = history.reservoir(PUMP).alarm();
        var begin = history.filled().plusSeconds(60L * minute);
        if (minute == FIFTY_DAYS) {
            assertThat(alarm.map(Reservoir.Reached::at)
                            .filter(at -> at.isBefore(begin))
                            .isEmpty())
                    .isTrue();
        } else {
            assertThat(alarm.orElseThrow().at()).isBetween(begin.minusSeconds(1), begin.plusSeconds(61));
        }
    }

    /** Another way: the midpoint rule of commons-math3 over steps of a minute, a week long. */
    @Property(tries = 25)
    void theVolumeIsThatOfAnIntegrator(@ForAll History history, @ForAll @IntRange(min = 1, max = 10_080) int minutes) {
        var flow = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public void computeDerivatives(double minute, double[] used, double[] derivative) {
                var at = history.filled().plusMillis(Math.round(minute * 60_000));
                derivative[0] = Simulated.millilitresPerMinute(Simulated.running(history.programs(), at), at);
            }
        };
        var used = new double[] {0};
        new MidpointIntegrator(1).integrate(flow, 0, used, minutes, used);
        var volume = history.reservoir(PUMP).at(history.filled().plusSeconds(60L * minutes));
        assertThat(volume.forPlot()).isCloseTo(Math.max(0, 20 - used[0]), within(1e-6));
    }

    @Property(tries = 60)
    void theVolumeNeverRisesBetweenFills(
            @ForAll History history,
            @ForAll @IntRange(max = 20_000_000) int second,
            @ForAll @IntRange(max = 20_000_000) int later) {
        var reservoir = history.reservoir(PUMP);
        var first = history.filled().plusSeconds(second);
        assertThat(reservoir.at(first.plusSeconds(later))).isLessThanOrEqualTo(reservoir.at(first));
    }

    @Property(tries = 60)
    void theForecastIsTheSameFromEveryNodeAndEveryMomentBeforeTheAlarm(
            @ForAll History history, @ForAll @IntRange(max = 3_000_000) int second) {
        var reservoir = history.reservoir(PUMP);
        var moments = new ArrayList<>(
                reservoir.nodes().stream().map(Reservoir.Node::at).toList());
        moments.add(history.filled().plusSeconds(second));
        for (var moment : moments) {
            if (reservoir.at(moment).compareTo(PUMP.alarm()) > 0) {
                assertThat(reservoir.seenFrom(moment).alarm()).isEqualTo(reservoir.alarm());
                assertThat(reservoir.seenFrom(moment).empty()).isEqualTo(reservoir.empty());
            }
        }
    }

    @Property(tries = 60)
    void whatIsTakenInTwoPartsIsTheSame(
            @ForAll History history,
            @ForAll @IntRange(max = 5_000_000) int first,
            @ForAll @IntRange(max = 5_000_000) int second) {
        var program = history.programs().get(0);
        var from = history.filled();
        var middle = from.plusSeconds(first);
        var to = middle.plusSeconds(second);
        assertThat(program.given(from, middle).plus(program.given(middle, to))).isEqualTo(program.given(from, to));
    }

    @Property(tries = 60)
    void atTheMomentOfTheAlarmTheAlarmVolumeIsLeft(@ForAll History history) {
        var reservoir = history.reservoir(PUMP);
        reservoir.alarm().ifPresent(alarm -> {
            // the moment is cut to the nanosecond before
            assertThat(reservoir.at(alarm.at())).isGreaterThanOrEqualTo(PUMP.alarm());
            assertThat(reservoir.at(alarm.at().plusNanos(1))).isLessThanOrEqualTo(PUMP.alarm());
        });
    }

    @Property(tries = 100)
    void moreDoseNeverDelaysTheRefill(@ForAll DailyDose one, @ForAll DailyDose other) {
        var at = Sample.newYork("2026-02-20T10:17");
        var less = Sample.filled(PUMP, at, "500", Dosing.constant(one.compareTo(other) <= 0 ? one : other));
        var more = Sample.filled(PUMP, at, "500", Dosing.constant(one.compareTo(other) <= 0 ? other : one));
        var rules = RefillRules.usual();
        assertThat(RefillForecast.of(more, rules, Sample.NEW_YORK, day -> true).latest())
                .isBeforeOrEqualTo(RefillForecast.of(less, rules, Sample.NEW_YORK, day -> true)
                        .latest());
        assertThat(more.alarm().orElseThrow().sinceFill())
                .isLessThanOrEqualTo(less.alarm().orElseThrow().sinceFill());
    }

    @Property(tries = 60)
    void aConstantDoseInStepsOfTheSameTotalChangesNothingAtWholeDays(
            @ForAll @IntRange(min = 2, max = 30) int perHour,
            @ForAll @IntRange(max = 1438) int cut,
            @ForAll @IntRange(max = 1) int less,
            @ForAll @IntRange(max = 100) int days) {
        // two halves of the day, one an hour less and the other more
        var half = LocalTime.MIDNIGHT.plusMinutes(cut);
        var other = half.plusHours(12);
        var steps = Dosing.cycle(
                new Step(half, other, DrugRate.microgramsPerHour(String.valueOf(perHour - less))),
                new Step(other, half, DrugRate.microgramsPerHour(String.valueOf(perHour + less))));
        var at = Sample.newYork("2026-02-20T10:17");
        var constant = Sample.filled(PUMP, at, "500", Dosing.constant(String.valueOf(24 * perHour)));
        var stepped = Sample.filled(PUMP, at, "500", steps);
        var later = at.plus(Duration.ofDays(days));
        assertThat(stepped.at(later)).isEqualTo(constant.at(later));
        assertThat(stepped.alarm().orElseThrow().sinceFill().wholeDays())
                .isEqualTo(constant.alarm().orElseThrow().sinceFill().wholeDays());
    }
}
