package org.hearthway.program.internal;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.WeekSchedule;
import org.hearthway.program.engine.WeekSchedule.Dated;
import org.hearthway.program.engine.week.Layout;
import org.hearthway.program.engine.week.Placed;
import org.hearthway.program.engine.week.Stretch;

/**
 * Which lines of a program are on which day, by the weeks that were laid out; where none was, by the days that the lines
 * name.
 *
 * @param versions of the program
 * @param laid weeks, those laid out last first
 */
record LaidDays(List<Dated> versions, List<Stretch> laid) {

    /**
     * A line on a day.
     *
     * @param name of the line in its version
     * @param times when it is done; empty where the week has no times
     */
    record On(String name, ProgramLine line, List<LocalTime> times) {
        On {
            times = List.copyOf(times);
        }
    }

    /** How the week of a day was laid out, where it was. */
    Optional<Layout> layout(LocalDate day) {
        return laid.stream()
                .filter(stretch -> stretch.holds(day))
                .findFirst()
                .map(Stretch::layout)
                .filter(layout -> layout.kind() != Layout.Kind.AS_WRITTEN);
    }

    /** The lines in force on a day, by their names. */
    Map<String, ProgramLine> named(LocalDate day) {
        return WeekSchedule.versionOn(versions, day)
                .map(version -> WeekAsking.named(version.lines()))
                .orElse(Map.of());
    }

    /** What is on a day, in the order in which it is done. */
    List<On> on(LocalDate day) {
        var there = new LinkedHashMap<String, ProgramLine>();
        named(day).forEach((name, line) -> {
            if (line.isOn(day)) {
                there.put(name, line);
            }
        });
        var layout = layout(day);
        if (layout.isEmpty()) {
            return there.entrySet().stream()
                    .map(one -> new On(one.getKey(), one.getValue(), List.of()))
                    .toList();
        }
        return on(day, there, layout.get());
    }

    private static List<On> on(LocalDate day, Map<String, ProgramLine> there, Layout layout) {
        var times = new LinkedHashMap<String, List<LocalTime>>();
        if (layout.kind() == Layout.Kind.BY_DAY) {
            // the order in which the therapist wrote the lines
            there.keySet().stream()
                    .filter(name -> layout.on(day.getDayOfWeek()).stream()
                            .anyMatch(one -> one.exercise().equals(name)))
                    .forEach(name -> times.put(name, List.of()));
        } else {
            for (var one : layout.on(day.getDayOfWeek())) {
                times.computeIfAbsent(one.exercise(), name -> new ArrayList<>()).add(one.start());
            }
        }
        // a line that the layout knows nothing of, after two entries of a child became one, is on the days it names
        there.keySet().stream()
                .filter(name -> !layout.asked().contains(name))
                .forEach(name -> times.put(name, List.of()));
        return times.entrySet().stream()
                .flatMap(
                        one -> Optional.ofNullable(there.get(one.getKey()))
                                .map(line -> new On(one.getKey(), line, one.getValue()))
                                .stream())
                .toList();
    }

    /** The same as the planner knows it. */
    List<Placed> placed(LocalDate day) {
        return on(day).stream()
                .flatMap(on -> (on.times().isEmpty() ? List.of(LocalTime.MIDNIGHT) : on.times())
                        .stream().map(start -> new Placed(on.name(), day.getDayOfWeek(), start)))
                .toList();
    }
}
