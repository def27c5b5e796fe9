package org.hearthway.pump.engine;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Schedules, programmings and histories of every kind, at any minute, through the weeks in which clocks change. */
class AnyDosing extends DomainContextBase {

    /** Programmings in order, the first one at the fill. */
    record History(ZoneId zone, List<Program> programs) {

        Instant filled() {
            return programs.get(0).from();
        }

        Reservoir reservoir(PumpModel pump) {
            var reservoir = Reservoir.filled(pump, Filling.of(filled(), pump.reservoir()), programs.get(0));
            for (var program : programs.subList(1, programs.size())) {
                reservoir = reservoir.then(program);
            }
            return reservoir;
        }
    }

    private static final List<String> STRENGTHS = List.of("50", "500", "1000", "1500", "2000", "333.3");

    @Provide
    Arbitrary<ZoneId> zones() {
        return Arbitraries.of(
                        "America/New_York",
                        "Europe/Madrid",
                        "Australia/Sydney",
                        "Australia/Lord_Howe",
                        "Pacific/Kiritimati",
                        "Pacific/Apia",
                        "Etc/GMT+12",
                        "Asia/Kathmandu",
                        "Africa/Casablanca",
                        "America/Phoenix")
                .map(ZoneId::of);
    }

    @Provide
    Arbitrary<DayPattern> days() {
        var cuts = Arbitraries.integers().between(0, 1439).set().ofMinSize(1).ofMaxSize(6);
        var rates = Arbitraries.integers().between(1, 4000).list().ofSize(6);
        var boluses = Arbitraries.integers().between(0, 239).list().ofMaxSize(3);
        return Combinators.combine(
                        cuts,
                        rates,
                        boluses,
                        Arbitraries.of(BolusMode.class),
                        Arbitraries.integers().between(0, 1))
                .as((at, hundredths, starts, mode, late) -> {
                    var steps = new ArrayList<Step>();
                    var sorted = new ArrayList<>(new TreeSet<>(at));
                    for (var i = 0; i < sorted.size(); i++) {
                        var to = sorted.get((i + 1) % sorted.size());
                        var rate = DrugRate.microgramsPerHour(
                                BigDecimal.valueOf(hundredths.get(i), 2).add(BigDecimal.ONE));
                        steps.add(new Step(time(sorted.get(i)), time(to), rate));
                    }
                    var given = new ArrayList<Bolus>();
                    for (var i = 0; i < starts.size(); i++) {
                        // three windows of eight hours; the last one runs through midnight
                        var begin = 239 + 480 * i + starts.get(i);
                        given.add(new Bolus(time(begin), Mass.micrograms(String.valueOf(3 + i)), 1 + starts.get(i)));
                    }
                    return new DayPattern(steps, given, mode);
                });
    }

    private static LocalTime time(int minute) {
        return LocalTime.MIDNIGHT.plusMinutes(minute);
    }

    @Provide
    Arbitrary<Dosing> dosings() {
        var week = days().list().ofSize(7).map(seven -> {
            var days = new EnumMap<DayOfWeek, DayPattern>(DayOfWeek.class);
            for (var day : DayOfWeek.values()) {
                days.put(day, seven.get(day.ordinal()));
            }
            return Dosing.week(days);
        });
        return Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(3, doses().map(Dosing::constant)),
                net.jqwik.api.Tuple.of(4, days().map(Dosing::cycle)),
                net.jqwik.api.Tuple.of(2, week),
                net.jqwik.api.Tuple.of(1, Arbitraries.just(Dosing.stopped())));
    }

    @Provide
    Arbitrary<DailyDose> doses() {
        return Arbitraries.integers()
                .between(5_000, 800_000)
                .map(thousandths -> new DailyDose(BigDecimal.valueOf(thousandths, 3)));
    }

    @Provide
    Arbitrary<Instant> minutes() {
        var first = Instant.parse("2026-01-01T00:00:00Z").getEpochSecond() / 60;
        return Arbitraries.longs()
                .between(0, 60L * 24 * 900)
                .map(minute -> Instant.ofEpochSecond(60 * (first + minute)));
    }

    @Provide
    Arbitrary<History> histories() {
        var gaps = Arbitraries.oneOf(Arbitraries.just(0), Arbitraries.integers().between(1, 60 * 24 * 15));
        return Combinators.combine(
                        zones(),
                        minutes(),
                        dosings().list().ofMinSize(1).ofMaxSize(4),
                        gaps.list().ofSize(4),
                        Arbitraries.of(STRENGTHS).list().ofSize(4))
                .as((zone, filled, dosings, minutes, strengths) -> {
                    var programs = new ArrayList<Program>();
                    var at = filled;
                    for (var i = 0; i < dosings.size(); i++) {
                        programs.add(Program.set(
                                at, zone, Concentration.microgramsPerMillilitre(strengths.get(i)), dosings.get(i)));
                        at = at.plusSeconds(60L * minutes.get(i));
                    }
                    return new History(zone, List.copyOf(programs));
                });
    }
}
