package org.hearthway.pump.internal;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.pump.engine.Bolus;
import org.hearthway.pump.engine.BolusMode;
import org.hearthway.pump.engine.DayPattern;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.DrugRate;
import org.hearthway.pump.engine.Mass;
import org.hearthway.pump.engine.Step;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps the steps and boluses of schedules. */
@Repository
class DosingRows {

    /** In place of a day of the week. */
    private static final int EVERY_DAY = 0;

    private static final int RATE_PLACES = 4;
    private static final int MASS_PLACES = 3;
    private static final int SECONDS_A_MINUTE = 60;

    private final JdbcClient jdbc;

    DosingRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The days of a child's schedules by entry and day of the week, 0 for every day. */
    Map<Long, Map<Integer, DayPattern>> of(ChildId child) {
        var steps = new HashMap<Long, Map<Integer, List<Step>>>();
        jdbc.sql("select entry_number, week_day, from_minute, to_minute, rate from pump_step where child_id = ?"
                        + " order by entry_number, week_day, from_minute")
                .param(child.value())
                .query(row -> {
                    steps.computeIfAbsent(row.getLong("entry_number"), n -> new HashMap<>())
                            .computeIfAbsent(row.getInt("week_day"), n -> new ArrayList<>())
                            .add(new Step(
                                    time(row.getInt("from_minute")),
                                    time(row.getInt("to_minute")),
                                    DrugRate.microgramsPerHour(row.getBigDecimal("rate"))));
                });
        var boluses = new HashMap<Long, Map<Integer, List<Bolus>>>();
        var adding = new HashMap<Long, Boolean>();
        jdbc.sql("select entry_number, week_day, at_minute, dose, minutes, adds from pump_bolus where child_id = ?"
                        + " order by entry_number, week_day, at_minute")
                .param(child.value())
                .query(row -> {
                    var entry = row.getLong("entry_number");
                    adding.put(entry, row.getBoolean("adds"));
                    boluses.computeIfAbsent(entry, n -> new HashMap<>())
                            .computeIfAbsent(row.getInt("week_day"), n -> new ArrayList<>())
                            .add(new Bolus(
                                    time(row.getInt("at_minute")),
                                    Mass.micrograms(row.getBigDecimal("dose")),
                                    row.getInt("minutes")));
                });
        var all = new HashMap<Long, Map<Integer, DayPattern>>();
        steps.forEach((entry, days) -> {
            var mode = adding.getOrDefault(entry, false) ? BolusMode.ADDS_TO_BASAL : BolusMode.REPLACES_BASAL;
            var patterns = new HashMap<Integer, DayPattern>();
            days.forEach((day, of) -> patterns.put(
                    day,
                    new DayPattern(of, boluses.getOrDefault(entry, Map.of()).getOrDefault(day, List.of()), mode)));
            all.put(entry, patterns);
        });
        return all;
    }

    static Dosing cycle(Map<Integer, DayPattern> days) {
        return Dosing.cycle(Optional.ofNullable(days.get(EVERY_DAY)).orElseThrow());
    }

    static Dosing week(Map<Integer, DayPattern> days) {
        var week = new EnumMap<DayOfWeek, DayPattern>(DayOfWeek.class);
        days.forEach((day, pattern) -> week.put(DayOfWeek.of(day), pattern));
        return Dosing.week(week);
    }

    void add(ChildId child, long entry, Dosing dosing) {
        if (dosing instanceof Dosing.Cycle cycle) {
            add(child, entry, EVERY_DAY, cycle.day());
        } else if (dosing instanceof Dosing.Week week) {
            week.days().forEach((day, pattern) -> add(child, entry, day.getValue(), pattern));
        }
    }

    private void add(ChildId child, long entry, int day, DayPattern pattern) {
        for (var step : pattern.steps()) {
            jdbc.sql("insert into pump_step (child_id, entry_number, week_day, from_minute, to_minute, rate)"
                            + " values (?, ?, ?, ?, ?, ?)")
                    .params(child.value(), entry, day, minute(step.from()), minute(step.to()), rate(step))
                    .update();
        }
        for (var bolus : pattern.boluses()) {
            jdbc.sql("insert into pump_bolus (child_id, entry_number, week_day, at_minute, dose, minutes, adds)"
                            + " values (?, ?, ?, ?, ?, ?, ?)")
                    .params(
                            child.value(),
                            entry,
                            day,
                            minute(bolus.at()),
                            bolus.dose().rounded(MASS_PLACES),
                            bolus.minutes(),
                            pattern.mode() == BolusMode.ADDS_TO_BASAL)
                    .update();
        }
    }

    /** Steps and boluses in the order of the day, so that two who typed the same are found to agree. */
    static Dosing inOrder(Dosing dosing) {
        if (dosing instanceof Dosing.Cycle cycle) {
            return Dosing.cycle(inOrder(cycle.day()));
        }
        if (dosing instanceof Dosing.Week week) {
            var days = new EnumMap<DayOfWeek, DayPattern>(DayOfWeek.class);
            week.days().forEach((day, pattern) -> days.put(day, inOrder(pattern)));
            return Dosing.week(days);
        }
        return dosing;
    }

    private static DayPattern inOrder(DayPattern day) {
        return new DayPattern(
                day.steps().stream().sorted(Comparator.comparing(Step::from)).toList(),
                day.boluses().stream().sorted(Comparator.comparing(Bolus::at)).toList(),
                day.mode());
    }

    private static BigDecimal rate(Step step) {
        return step.rate().perHour().rounded(RATE_PLACES);
    }

    private static LocalTime time(int minute) {
        return LocalTime.ofSecondOfDay((long) minute * SECONDS_A_MINUTE);
    }

    private static int minute(LocalTime time) {
        return time.toSecondOfDay() / SECONDS_A_MINUTE;
    }
}
