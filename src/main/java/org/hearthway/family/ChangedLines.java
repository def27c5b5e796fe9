package org.hearthway.family;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.program.Programs.Version;
import org.hearthway.program.engine.ProgramLine;

/**
 * What the newest version of a home program changed, line by line, against the one before it.
 *
 * @param from first day of the newest version
 * @param before the former line by exercise; empty for an exercise that is new
 * @param gone lines that are no longer done
 */
record ChangedLines(LocalDate from, Map<String, Optional<ProgramLine>> before, List<ProgramLine> gone) {

    /** How long a change is pointed out. */
    static final int DAYS_SHOWN = 7;

    static final ChangedLines NONE = new ChangedLines(LocalDate.MAX, Map.of(), List.of());

    /** Compares the newest version with the one before it; a first version has changed nothing. */
    static ChangedLines of(Optional<Version> newest, Optional<Version> before) {
        if (newest.isEmpty() || before.isEmpty()) {
            return NONE;
        }
        var now = newest.get();
        var former = byExercise(before.get().lines());
        var changed = new LinkedHashMap<String, Optional<ProgramLine>>();
        byExercise(now.lines()).forEach((exercise, line) -> {
            var old = Optional.ofNullable(former.get(exercise));
            if (old.filter(o -> isSame(o, line)).isEmpty()) {
                changed.put(exercise, old);
            }
        });
        var still = byExercise(now.lines());
        var gone = former.values().stream()
                .filter(line -> !still.containsKey(line.exercise()))
                .toList();
        return new ChangedLines(now.effective(), changed, gone);
    }

    private static boolean isSame(ProgramLine a, ProgramLine b) {
        return a.prescription().equals(b.prescription())
                && a.days().equals(b.days())
                && a.note().equals(b.note());
    }

    private static Map<String, ProgramLine> byExercise(List<ProgramLine> lines) {
        return lines.stream()
                .collect(Collectors.toMap(
                        ProgramLine::exercise, Function.identity(), (first, second) -> first, LinkedHashMap::new));
    }

    /** Whether the exercise is pointed out on a day. */
    boolean marks(String exercise, LocalDate day) {
        return before.containsKey(exercise) && isFresh(day);
    }

    /** Whether anything is pointed out on a day. */
    boolean isFresh(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(from.plusDays(DAYS_SHOWN));
    }

    /** The former line, when there was one. */
    Optional<ProgramLine> former(String exercise) {
        return before.getOrDefault(exercise, Optional.empty());
    }
}
