package org.hearthway.program.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hearthway.base.Problem;

/**
 * What a program may hold. The bounds catch slips of the pen (a thousand repetitions); they are no clinical advice.
 * Common practice, no source. Fields are named {@code lines[0].repetitions} and so on, counted from 0; messages count
 * lines from 1.
 */
public final class ProgramRules {

    /** Bounds of a field, both allowed. */
    public record Bound(int min, int max) {
        /** Whether the number lies within. */
        public boolean holds(int number) {
            return number >= min && number <= max;
        }
    }

    /** Rounds. */
    public static final Bound SETS = new Bound(1, 10);
    /** Times in a round. */
    public static final Bound REPETITIONS = new Bound(1, 100);
    /** Seconds of each hold; 0 for none. */
    public static final Bound HOLD_SECONDS = new Bound(0, 600);
    /** Minutes at a time. */
    public static final Bound MINUTES = new Bound(1, 240);
    /** Sessions on one day. */
    public static final Bound TIMES_A_DAY = new Bound(1, 6);
    /** Characters of a note to the family. */
    public static final int NOTE = 500;
    /** Characters of what stands behind a dose outside the usual, or behind leave from a rule of care. */
    public static final Bound BECAUSE = new Bound(3, 500);
    /** Characters of a reason. */
    public static final Bound REASON = new Bound(3, 500);
    /** Characters of a word to the family that comes with a version. */
    public static final int TO_FAMILY = 400;
    /** Lines of a program. */
    public static final int LINES = 30;
    /** The first day of a version lies at most so many days ahead. */
    public static final int DAYS_AHEAD = 366;

    private static final LocalDate FIRST = LocalDate.of(2000, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2100, 12, 31);

    private ProgramRules() {}

    /**
     * Everything that is wrong with the lines, in their order; empty when all is well.
     *
     * @param lines of the program
     * @param sided the exercises of the library, and whether each is done one side at a time
     */
    public static List<Problem> check(List<ProgramLine> lines, Map<String, Boolean> sided) {
        var problems = new ArrayList<Problem>();
        if (lines.size() > LINES) {
            problems.add(Problem.at("lines", "program.problem.lines", LINES));
        }
        for (int i = 0; i < lines.size(); i++) {
            checkExercise(i, lines.get(i), sided, problems);
            problems.addAll(lines.get(i).prescription().check(i));
            checkDays(i, lines.get(i), problems);
            checkRhythm(i, lines.get(i), problems);
            checkBecause(i, lines.get(i), problems);
            if (lines.get(i).note().length() > NOTE) {
                problems.add(Problem.at(field(i, "note"), "program.problem.note", i + 1, NOTE));
            }
            checkOverlap(i, lines, problems);
        }
        return List.copyOf(problems);
    }

    /** What is wrong with a version's first day. */
    public static List<Problem> checkEffective(LocalDate effective, LocalDate today) {
        var last = today.plusDays(DAYS_AHEAD);
        return effective.isBefore(today) || effective.isAfter(last)
                ? List.of(Problem.at("effective", "program.problem.effective", today, last))
                : List.of();
    }

    /** What is wrong with the reason for a version. */
    public static List<Problem> checkReason(String reason) {
        return REASON.holds(reason.strip().length())
                ? List.of()
                : List.of(Problem.at("reason", "program.problem.reason", REASON.min(), REASON.max()));
    }

    /** What is wrong with the word to the family that comes with a version. */
    public static List<Problem> checkToFamily(String toFamily) {
        return toFamily.strip().length() > TO_FAMILY
                ? List.of(Problem.at("toFamily", "program.problem.toFamily", TO_FAMILY))
                : List.of();
    }

    /** Name of a line's field in problems and forms. */
    public static String field(int line, String name) {
        return "lines[" + line + "]." + name;
    }

    private static void checkExercise(int i, ProgramLine line, Map<String, Boolean> sided, List<Problem> problems) {
        var hasSides = sided.get(line.exercise());
        if (hasSides == null) {
            problems.add(Problem.at(field(i, "exercise"), "program.problem.exercise", i + 1));
        } else if (hasSides && line.side() == ProgramLine.Side.NONE) {
            problems.add(Problem.at(field(i, "side"), "program.problem.side.missing", i + 1));
        } else if (!hasSides && line.side() != ProgramLine.Side.NONE) {
            problems.add(Problem.at(field(i, "side"), "program.problem.side.none", i + 1));
        }
    }

    /** Everything that is wrong with the dose of a line, counted from 0. */
    static List<Problem> checkDose(int line, Dose dose) {
        var problems = new ArrayList<Problem>();
        checkDose(line, dose, problems);
        return problems;
    }

    private static void checkDose(int i, Dose dose, List<Problem> problems) {
        within(i, "sets", dose.sets(), SETS, problems);
        if (dose.repetitions() != 0 && dose.minutes() != 0) {
            problems.add(Problem.at(field(i, "minutes"), "program.problem.both", i + 1));
        } else if (dose.minutes() != 0) {
            within(i, "minutes", dose.minutes(), MINUTES, problems);
        } else {
            within(i, "repetitions", dose.repetitions(), REPETITIONS, problems);
        }
        within(i, "holdSeconds", dose.holdSeconds(), HOLD_SECONDS, problems);
        within(i, "timesADay", dose.timesADay(), TIMES_A_DAY, problems);
    }

    private static void within(int i, String name, int number, Bound bound, List<Problem> problems) {
        if (!bound.holds(number)) {
            problems.add(Problem.at(field(i, name), "program.problem." + name, i + 1, bound.min(), bound.max()));
        }
    }

    private static void checkDays(int i, ProgramLine line, List<Problem> problems) {
        if (line.days().isEmpty()) {
            problems.add(Problem.at(field(i, "days"), "program.problem.days", i + 1));
        }
        if (line.from().isBefore(FIRST) || line.from().isAfter(LAST)) {
            problems.add(Problem.at(field(i, "from"), "program.problem.from", i + 1));
        }
        line.until().ifPresent(until -> {
            if (until.isBefore(line.from())) {
                problems.add(Problem.at(field(i, "until"), "program.problem.until", i + 1, line.from()));
            } else if (until.isAfter(LAST)) {
                problems.add(Problem.at(field(i, "until"), "program.problem.until.far", i + 1));
            }
        });
    }

    /** The days must hold as many as the rhythm asks for, lying as it says. */
    private static void checkRhythm(int i, ProgramLine line, List<Problem> problems) {
        var rhythm = line.prescription().rhythm();
        var most = rhythm.most(line.days());
        if (!line.days().isEmpty() && most < rhythm.days()) {
            problems.add(Problem.at(field(i, "rhythm"), "program.problem.rhythm", i + 1, rhythm.days(), most));
        }
    }

    private static void checkBecause(int i, ProgramLine line, List<Problem> problems) {
        if (line.beyond().length() > BECAUSE.max()) {
            problems.add(Problem.at(field(i, "beyond"), "program.problem.beyond", i + 1, BECAUSE.min(), BECAUSE.max()));
        }
        for (var exception : line.exceptions()) {
            if (!BECAUSE.holds(exception.reason().strip().length())) {
                problems.add(Problem.at(
                        field(i, "exceptions"), "program.problem.exception", i + 1, BECAUSE.min(), BECAUSE.max()));
            }
        }
    }

    /** A family says of one exercise on one day how it went, so it must not stand there twice. */
    private static void checkOverlap(int i, List<ProgramLine> lines, List<Problem> problems) {
        for (int earlier = 0; earlier < i; earlier++) {
            if (lines.get(earlier).sharesADayWith(lines.get(i))) {
                problems.add(Problem.at(field(i, "exercise"), "program.problem.twice", i + 1, earlier + 1));
                return;
            }
        }
    }
}
