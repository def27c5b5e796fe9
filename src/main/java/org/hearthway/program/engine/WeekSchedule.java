package org.hearthway.program.engine;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Lays a program's versions out over days. */
public final class WeekSchedule {

    private WeekSchedule() {}

    /**
     * A version's lines from its first day on.
     *
     * @param number 1, 2, 3 …
     * @param effective first day
     * @param lines in the order of the day
     */
    public record Dated(int number, LocalDate effective, List<ProgramLine> lines) {
        public Dated {
            lines = List.copyOf(lines);
        }
    }

    /** One day with the lines that are for it, in order. */
    public record DayPlan(LocalDate date, List<ProgramLine> lines) {
        public DayPlan {
            lines = List.copyOf(lines);
        }
    }

    /** The version that holds on a day: of those that have begun by then, the one saved last. */
    public static Optional<Dated> versionOn(List<Dated> versions, LocalDate day) {
        return versions.stream()
                .filter(v -> !v.effective().isAfter(day))
                .max(java.util.Comparator.comparingInt(Dated::number));
    }

    /** The plan of {@code count} days from the first. */
    public static List<DayPlan> days(List<Dated> versions, LocalDate first, int count) {
        return IntStream.range(0, count)
                .mapToObj(first::plusDays)
                .map(day -> new DayPlan(
                        day,
                        versionOn(versions, day).stream()
                                .flatMap(v -> v.lines().stream())
                                .filter(line -> line.isOn(day))
                                .toList()))
                .toList();
    }
}
