package org.hearthway.program.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is different between two versions of a program, as data. Lines belong together when they are the same exercise;
 * when an exercise stands several times, the first belongs to the first and so on.
 *
 * @param lines in the order of the later version, those taken out last
 */
public record ProgramDiff(List<LineDiff> lines) {

    public ProgramDiff {
        lines = List.copyOf(lines);
    }

    /** A field of a line. */
    public enum Field {
        SETS,
        REPETITIONS,
        HOLD,
        MINUTES,
        TIMES_A_DAY,
        REST,
        SIDE,
        LOAD,
        DAYS,
        FROM,
        UNTIL,
        EFFORT,
        PROGRESSION,
        PRIORITY,
        EXCEPTIONS,
        NOTE
    }

    /**
     * One line in both versions.
     *
     * @param before empty when it is new
     * @param after empty when it was taken out
     * @param fields which fields differ, when it stands in both
     * @param moved whether its place among the lines that stand in both is another
     */
    public record LineDiff(
            Optional<ProgramLine> before, Optional<ProgramLine> after, List<Field> fields, boolean moved) {

        public LineDiff {
            fields = List.copyOf(fields);
        }

        /** Whether it is new. */
        public boolean isNew() {
            return before.isEmpty();
        }

        /** Whether it was taken out. */
        public boolean isTakenOut() {
            return after.isEmpty();
        }

        /** Whether nothing of it differs, its place included. */
        public boolean isSame() {
            return !isNew() && !isTakenOut() && fields.isEmpty() && !moved;
        }

        /** The line as it stands, or as it last stood. */
        public ProgramLine line() {
            return after.or(() -> before).orElseThrow();
        }
    }

    /** The lines that differ. */
    public List<LineDiff> changes() {
        return lines.stream().filter(line -> !line.isSame()).toList();
    }

    /** Whether nothing differs. */
    public boolean isEmpty() {
        return changes().isEmpty();
    }

    /** What is different. */
    public static ProgramDiff between(List<ProgramLine> before, List<ProgramLine> after) {
        var free = new ArrayList<Integer>();
        for (int i = 0; i < before.size(); i++) {
            free.add(i);
        }
        var partners = after.stream().map(line -> take(free, before, line)).toList();
        var inPlace = longestRise(partners.stream().flatMap(Optional::stream).toList());
        var found = new ArrayList<LineDiff>();
        for (int i = 0; i < after.size(); i++) {
            var line = after.get(i);
            found.add(partners.get(i)
                    .map(at -> new LineDiff(
                            Optional.of(before.get(at)),
                            Optional.of(line),
                            fields(before.get(at), line),
                            !inPlace.contains(at)))
                    .orElseGet(() -> new LineDiff(Optional.empty(), Optional.of(line), List.of(), false)));
        }
        free.forEach(at -> found.add(new LineDiff(Optional.of(before.get(at)), Optional.empty(), List.of(), false)));
        return new ProgramDiff(found);
    }

    private static Optional<Integer> take(List<Integer> free, List<ProgramLine> before, ProgramLine line) {
        var partner = free.stream()
                .filter(at -> before.get(at).exercise().equals(line.exercise()))
                .findFirst();
        partner.ifPresent(free::remove);
        return partner;
    }

    /** The most lines that kept their order: all others were moved. */
    private static Set<Integer> longestRise(List<Integer> places) {
        var best = new ArrayList<List<Integer>>();
        for (int i = 0; i < places.size(); i++) {
            List<Integer> longest = List.of();
            for (int j = 0; j < i; j++) {
                if (places.get(j) < places.get(i) && best.get(j).size() > longest.size()) {
                    longest = best.get(j);
                }
            }
            var rise = new ArrayList<>(longest);
            rise.add(places.get(i));
            best.add(rise);
        }
        return best.stream()
                .max(Comparator.comparingInt(List::size))
                .map(Set::copyOf)
                .orElse(Set.of());
    }

    /** The fields in which two lines differ. */
    public static List<Field> fields(ProgramLine before, ProgramLine after) {
        var fields = new ArrayList<Field>();
        var was = before.dose();
        var is = after.dose();
        add(fields, Field.SETS, was.sets() != is.sets());
        add(fields, Field.REPETITIONS, was.repetitions() != is.repetitions());
        add(fields, Field.HOLD, was.holdSeconds() != is.holdSeconds());
        add(fields, Field.MINUTES, was.minutes() != is.minutes());
        add(fields, Field.TIMES_A_DAY, was.timesADay() != is.timesADay());
        var prescribed = before.prescription();
        var prescribes = after.prescription();
        add(fields, Field.REST, !prescribed.restSeconds().equals(prescribes.restSeconds()));
        add(fields, Field.SIDE, before.side() != after.side());
        add(fields, Field.LOAD, !prescribed.load().equals(prescribes.load()));
        add(
                fields,
                Field.DAYS,
                !before.days().equals(after.days()) || !prescribed.rhythm().equals(prescribes.rhythm()));
        add(fields, Field.FROM, !before.from().equals(after.from()));
        add(fields, Field.UNTIL, !before.until().equals(after.until()));
        add(fields, Field.EFFORT, !prescribed.effort().equals(prescribes.effort()));
        add(fields, Field.PROGRESSION, !prescribed.progression().equals(prescribes.progression()));
        add(fields, Field.PRIORITY, before.priority() != after.priority());
        add(fields, Field.EXCEPTIONS, !before.exceptions().equals(after.exceptions()));
        add(fields, Field.NOTE, !before.note().equals(after.note()));
        return fields;
    }

    private static void add(List<Field> fields, Field field, boolean differs) {
        if (differs) {
            fields.add(field);
        }
    }
}
