package org.hearthway.program.ui;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Problem;
import org.hearthway.program.Exercise;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Excepted;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.ProgramRules;
import org.hearthway.program.engine.ProgramRules.Bound;
import org.hearthway.program.engine.Progression;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.Rhythm.Spread;
import org.jspecify.annotations.Nullable;

/** A line while somebody edits it: what was typed stays as it was typed, be it a number or not. */
final class EditedLine {

    /** One number of the line: its name in problems, its steps and where they end. */
    enum Amount {
        SETS("sets", ProgramRules.SETS, 1, 1),
        REPETITIONS("repetitions", ProgramRules.REPETITIONS, 1, 2),
        HOLD("holdSeconds", ProgramRules.HOLD_SECONDS, 5, 15),
        MINUTES("minutes", ProgramRules.MINUTES, 1, 5),
        TIMES_A_DAY("timesADay", ProgramRules.TIMES_A_DAY, 1, 1),
        REST("restSeconds", Prescription.REST_SECONDS, 15, 60),
        EFFORT("effort", Prescription.EFFORT, 1, 1),
        RHYTHM("rhythm", new Bound(1, 7), 1, 1),
        KILOGRAMS("load", new Bound(0, 200), 0.25, 0.5),
        BAND("load", new Bound(1, 10), 1, 1),
        RULE_DAYS("progression", new Bound(1, 28), 1, 1),
        RULE_EFFORT("progression", new Bound(1, 10), 1, 1),
        RULE_PAIN("progression", new Bound(1, 10), 1, 1),
        NEXT_SETS("progression", ProgramRules.SETS, 1, 1),
        NEXT_REPETITIONS("progression", ProgramRules.REPETITIONS, 1, 2),
        NEXT_HOLD("progression", ProgramRules.HOLD_SECONDS, 5, 15),
        NEXT_MINUTES("progression", ProgramRules.MINUTES, 1, 5),
        NEXT_KILOGRAMS("progression", new Bound(0, 200), 0.25, 0.5),
        NEXT_BAND("progression", new Bound(1, 10), 1, 1);

        private final String field;
        private final int min;
        private final int max;
        private final double step;
        private final double leap;

        Amount(String field, Bound bound, double step, double leap) {
            this.field = field;
            this.min = bound.min();
            this.max = bound.max();
            this.step = step;
            this.leap = leap;
        }

        /** Its name in problems. */
        String field() {
            return field;
        }

        Bound bound() {
            return new Bound(min, max);
        }

        /** What an arrow key adds. */
        double step() {
            return step;
        }

        /** What a page key adds. */
        double leap() {
            return leap;
        }
    }

    /** How the marked days are meant. */
    enum Lie {
        /** On every one of them. */
        EACH,
        /** On all seven. */
        DAILY,
        /** On some of them. */
        ANY,
        ALTERNATE,
        NOT_FOLLOWING
    }

    /** What it is done against. */
    enum Against {
        BODY,
        WEIGHT,
        BAND
    }

    /** Leave from a rule of care while its reason is typed. */
    record Leave(String tag, LocalDate begins, LocalDate until, String reason) {}

    private static final Set<DayOfWeek> WORKING = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    /** The most days of a week that do not touch. */
    private static final int APART = 3;

    private static final Set<DayOfWeek> WEEK = EnumSet.allOf(DayOfWeek.class);
    private static final BigDecimal GRAMS = BigDecimal.valueOf(1000);

    private final Map<Amount, String> typed = new EnumMap<>(Amount.class);
    private final EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    private final List<Leave> leaves = new ArrayList<>();
    private String exercise;
    private Side side;
    private Lie lie = Lie.EACH;
    private Against against = Against.BODY;
    private boolean rule;
    private Priority priority;
    private String beyond;
    /** Why the dose lay outside what is usual before anybody edited it. */
    private final String beyondBefore;

    private @Nullable LocalDate from;
    private @Nullable LocalDate until;
    private String note;
    private boolean open;
    private Optional<ProgramLine> swapped = Optional.empty();

    EditedLine(ProgramLine line) {
        var prescription = line.prescription();
        exercise = line.exercise();
        dose(line.dose());
        side = line.side();
        days.addAll(line.days());
        rhythm(prescription.rhythm());
        load(prescription.load());
        prescription.restSeconds().ifPresent(rest -> typed.put(Amount.REST, String.valueOf(rest)));
        prescription.effort().ifPresent(effort -> typed.put(Amount.EFFORT, String.valueOf(effort)));
        prescription.progression().ifPresent(this::rule);
        priority = line.priority();
        beyond = line.beyond();
        beyondBefore = line.beyond();
        line.exceptions()
                .forEach(leave -> leaves.add(new Leave(leave.tag(), leave.begins(), leave.until(), leave.reason())));
        from = line.from();
        until = line.until().orElse(null);
        note = line.note();
    }

    /**
     * What adding an exercise puts there: its own dose where that is usual at the child's age, else the nearest, Monday to
     * Friday or as many days as are usual; strength work lies on days that do not touch, the first day among them.
     */
    static ProgramLine usual(Exercise exercise, LocalDate from, int years) {
        var strength = exercise.kind() == Exercise.Kind.STRENGTH;
        var often = exercise.usualFor(years)
                .days()
                .map(usual -> usual.nearest(strength ? APART : WORKING.size()))
                .orElse(strength ? APART : WORKING.size());
        return ProgramLine.of(
                exercise.id(),
                Swapped.dose(exercise.usual(), exercise.usual(), exercise.usualFor(years)),
                exercise.sided() ? Side.EACH : Side.NONE,
                days(often, from.getDayOfWeek()),
                from,
                Optional.empty(),
                "");
    }

    private static Set<DayOfWeek> days(int often, DayOfWeek first) {
        return switch (often) {
            case 1 -> EnumSet.of(first);
            case 2 -> EnumSet.of(first, first.plus(3));
            case 3 -> EnumSet.of(first, first.plus(2), first.plus(4));
            case 4 -> EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY);
            case 5 -> WORKING;
            case 6 -> EnumSet.complementOf(EnumSet.of(DayOfWeek.SUNDAY));
            default -> WEEK;
        };
    }

    private void dose(Dose dose) {
        type(Amount.SETS, dose.sets());
        type(Amount.REPETITIONS, dose.repetitions());
        type(Amount.HOLD, dose.holdSeconds());
        type(Amount.MINUTES, dose.minutes());
        type(Amount.TIMES_A_DAY, dose.timesADay());
    }

    private void type(Amount number, int value) {
        typed.put(number, value > 0 ? String.valueOf(value) : "");
    }

    private void rhythm(Rhythm rhythm) {
        type(Amount.RHYTHM, rhythm.days());
        lie = switch (rhythm.spread()) {
            case DAILY -> Lie.DAILY;
            case ANY -> rhythm.days() == days.size() ? Lie.EACH : Lie.ANY;
            case ALTERNATE -> Lie.ALTERNATE;
            case NOT_FOLLOWING -> Lie.NOT_FOLLOWING;
        };
    }

    private void load(Load load) {
        if (load instanceof Load.Weight weight) {
            against = Against.WEIGHT;
            typed.put(Amount.KILOGRAMS, kilograms(weight));
        } else if (load instanceof Load.Band band) {
            against = Against.BAND;
            type(Amount.BAND, band.step());
        } else {
            against = Against.BODY;
        }
    }

    private static String kilograms(Load.Weight weight) {
        return BigDecimal.valueOf(weight.grams())
                .divide(GRAMS)
                .stripTrailingZeros()
                .toPlainString();
    }

    private void rule(Progression progression) {
        rule = true;
        type(Amount.RULE_DAYS, progression.days());
        type(Amount.RULE_EFFORT, progression.effortUnder());
        type(Amount.RULE_PAIN, progression.painUnder());
        type(Amount.NEXT_SETS, progression.next().sets());
        type(Amount.NEXT_REPETITIONS, progression.next().repetitions());
        type(Amount.NEXT_HOLD, progression.next().holdSeconds());
        type(Amount.NEXT_MINUTES, progression.next().minutes());
        if (progression.nextLoad() instanceof Load.Weight weight) {
            typed.put(Amount.NEXT_KILOGRAMS, kilograms(weight));
        } else if (progression.nextLoad() instanceof Load.Band band) {
            type(Amount.NEXT_BAND, band.step());
        }
    }

    /** The line as it stands; what is no number is below every bound, and what cannot be held is left out. */
    ProgramLine line(LocalDate effective) {
        var dose = new Dose(
                number(Amount.SETS),
                number(Amount.REPETITIONS),
                number(Amount.HOLD),
                number(Amount.MINUTES),
                number(Amount.TIMES_A_DAY));
        var prescription = new Prescription(
                dose,
                given(Amount.REST),
                side,
                load().orElseGet(Load.Body::new),
                rhythm(),
                given(Amount.EFFORT),
                rule());
        return new ProgramLine(
                exercise,
                prescription,
                days,
                from == null ? effective : from,
                Optional.ofNullable(until),
                note,
                priority,
                beyond.strip(),
                leaves.stream()
                        .map(leave -> new Excepted(leave.tag(), leave.begins(), leave.until(), leave.reason()))
                        .toList());
    }

    /** What was typed and cannot stand in a line at all; the bounds of everything else are the program's rules. */
    List<Problem> unheld(int index) {
        var problems = new ArrayList<Problem>();
        if (load().isEmpty()) {
            var weight = against == Against.WEIGHT;
            problems.add(Problem.at(
                    ProgramRules.field(index, "load"),
                    weight ? "program.problem.load.weight" : "program.problem.load.band",
                    index + 1));
        }
        if (chosenDays() && !holds(Amount.RHYTHM)) {
            problems.add(Problem.at(ProgramRules.field(index, "rhythm"), "program.problem.rhythm.days", index + 1));
        }
        if (rule && rule().isEmpty()) {
            problems.add(Problem.at(
                    ProgramRules.field(index, "progression"), "program.problem.progression.bounds", index + 1));
        }
        return problems;
    }

    private int number(Amount number) {
        var text = typed(number).strip();
        if (text.isEmpty()) {
            return 0;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException notANumber) {
            return -1;
        }
    }

    private Optional<Integer> given(Amount number) {
        return typed(number).isBlank() ? Optional.empty() : Optional.of(number(number));
    }

    private boolean holds(Amount number) {
        return number.bound().holds(number(number));
    }

    private boolean chosenDays() {
        return lie == Lie.ANY || lie == Lie.ALTERNATE || lie == Lie.NOT_FOLLOWING;
    }

    private Rhythm rhythm() {
        var many = holds(Amount.RHYTHM) ? number(Amount.RHYTHM) : 1;
        return switch (lie) {
            case EACH -> Rhythm.on(days);
            case DAILY -> days.equals(WEEK) ? new Rhythm(WEEK.size(), Spread.DAILY) : Rhythm.on(days);
            case ANY -> new Rhythm(many, Spread.ANY);
            case ALTERNATE -> new Rhythm(many, Spread.ALTERNATE);
            case NOT_FOLLOWING -> new Rhythm(many, Spread.NOT_FOLLOWING);
        };
    }

    /** What it is done against; empty when what was typed cannot be. */
    private Optional<Load> load() {
        return load(Amount.KILOGRAMS, Amount.BAND);
    }

    private Optional<Load> load(Amount kilograms, Amount band) {
        return switch (against) {
            case BODY -> Optional.of(new Load.Body());
            case WEIGHT -> grams(typed(kilograms)).map(Load.Weight::new);
            case BAND -> holds(band) ? Optional.of(new Load.Band(number(band))) : Optional.empty();
        };
    }

    /** Grams of what was typed in kilograms, with a point or a comma; empty when it is none of 1 g to 200 kg. */
    private static Optional<Integer> grams(String typed) {
        try {
            var grams = new BigDecimal(typed.strip().replace(',', '.'))
                    .multiply(GRAMS)
                    .setScale(0, RoundingMode.HALF_UP)
                    .intValueExact();
            return grams >= 1 && grams <= 200_000 ? Optional.of(grams) : Optional.empty();
        } catch (ArithmeticException | NumberFormatException notAWeight) {
            return Optional.empty();
        }
    }

    private Optional<Progression> rule() {
        var nextLoad = load(Amount.NEXT_KILOGRAMS, Amount.NEXT_BAND);
        if (!rule
                || nextLoad.isEmpty()
                || !holds(Amount.RULE_DAYS)
                || !holds(Amount.RULE_EFFORT)
                || !holds(Amount.RULE_PAIN)) {
            return Optional.empty();
        }
        var next = new Dose(
                number(Amount.NEXT_SETS),
                inMinutes() ? 0 : number(Amount.NEXT_REPETITIONS),
                inMinutes() ? 0 : number(Amount.NEXT_HOLD),
                inMinutes() ? number(Amount.NEXT_MINUTES) : 0,
                number(Amount.TIMES_A_DAY));
        return Optional.of(new Progression(
                number(Amount.RULE_DAYS), number(Amount.RULE_EFFORT), number(Amount.RULE_PAIN), next, nextLoad.get()));
    }

    String exercise() {
        return exercise;
    }

    /**
     * Puts another exercise in its place. Days, side, dates, note, priority stay; the dose stays where it is within what
     * is usual for the new one and is brought to the nearest number where it is not. Load, rule for more, reason for a
     * dose beyond the usual and leave were about the old one and go.
     *
     * @param years the child's age
     */
    void swap(Exercise other, int years) {
        var was = line(LocalDate.EPOCH);
        var is = Swapped.dose(was.dose(), other.usual(), other.usualFor(years));
        exercise = other.id();
        dose(is);
        swapped = is.equals(was.dose()) ? Optional.empty() : Optional.of(was);
        against = Against.BODY;
        rule = false;
        beyond = "";
        leaves.clear();
        if (!other.sided()) {
            side = Side.NONE;
        } else if (side == Side.NONE) {
            side = Side.EACH;
        }
    }

    /** The line as it was before a swap that changed its dose, until the dose is typed anew. */
    Optional<ProgramLine> swapped() {
        return swapped;
    }

    String typed(Amount number) {
        return typed.getOrDefault(number, "");
    }

    void type(Amount number, String text) {
        typed.put(number, text);
        swapped = Optional.empty();
    }

    /** Whether the dose is in minutes rather than in times. */
    boolean inMinutes() {
        return !typed(Amount.MINUTES).isBlank();
    }

    /** Turns a dose in times into one in minutes, and back; the rule for more goes, since it told the other. */
    void turnDose() {
        if (inMinutes()) {
            typed.put(Amount.MINUTES, "");
            type(Amount.REPETITIONS, 8);
        } else {
            typed.put(Amount.REPETITIONS, "");
            typed.put(Amount.HOLD, "");
            type(Amount.MINUTES, 5);
        }
        rule = false;
    }

    Side side() {
        return side;
    }

    /** Each, left, right, each … */
    void turnSide() {
        side = switch (side) {
            case NONE, RIGHT -> Side.EACH;
            case EACH -> Side.LEFT;
            case LEFT -> Side.RIGHT;
        };
    }

    boolean isOn(DayOfWeek day) {
        return days.contains(day);
    }

    void toggle(DayOfWeek day) {
        if (!days.remove(day)) {
            days.add(day);
        }
        if (lie == Lie.DAILY) {
            lie = Lie.EACH;
        }
    }

    Lie lie() {
        return lie;
    }

    /** Says how the marked days are meant; every day marks all seven. */
    void lie(Lie other) {
        lie = other;
        if (other == Lie.DAILY) {
            days.addAll(WEEK);
        }
        if (chosenDays() && number(Amount.RHYTHM) >= days.size()) {
            type(Amount.RHYTHM, Math.max(1, (days.size() + 1) / 2));
        }
    }

    /** Whether the number of days is to be said, since not every marked day is meant. */
    boolean saysHowMany() {
        return chosenDays();
    }

    Against against() {
        return against;
    }

    /** Says what it is done against; the rule for more, which names a load too, goes. */
    void against(Against other) {
        against = other;
        rule = false;
    }

    boolean hasRule() {
        return rule;
    }

    /** A rule for more, to begin from: four days with little effort and pain, then a little more. Common practice, no source. */
    void addRule() {
        rule = true;
        type(Amount.RULE_DAYS, 4);
        type(Amount.RULE_EFFORT, 5);
        type(Amount.RULE_PAIN, 4);
        typed.put(Amount.NEXT_SETS, typed(Amount.SETS));
        typed.put(Amount.NEXT_HOLD, typed(Amount.HOLD));
        type(Amount.NEXT_REPETITIONS, Math.min(ProgramRules.REPETITIONS.max(), number(Amount.REPETITIONS) + 2));
        type(Amount.NEXT_MINUTES, Math.min(ProgramRules.MINUTES.max(), number(Amount.MINUTES) + 5));
        typed.put(Amount.NEXT_KILOGRAMS, typed(Amount.KILOGRAMS));
        typed.put(Amount.NEXT_BAND, typed(Amount.BAND));
    }

    void dropRule() {
        rule = false;
    }

    Priority priority() {
        return priority;
    }

    void priority(Priority other) {
        priority = other;
    }

    /** Why the dose lies outside what is usual. */
    String beyond() {
        return beyond;
    }

    /** Whether the reason for an unusual dose is the one that the line came with. */
    boolean isBeyondAsBefore() {
        return beyond.equals(beyondBefore);
    }

    void beyond(String text) {
        beyond = text;
    }

    List<Leave> leaves() {
        return List.copyOf(leaves);
    }

    /** Leave from a rule of care about a movement, if it is given or being written. */
    Optional<Leave> leave(String tag) {
        return leaves.stream().filter(leave -> leave.tag().equals(tag)).findFirst();
    }

    /** Gives leave, or gives it another reason. */
    void leave(Leave leave) {
        leaves.removeIf(other -> other.tag().equals(leave.tag()));
        leaves.add(leave);
    }

    void takeLeave(String tag) {
        leaves.removeIf(leave -> leave.tag().equals(tag));
    }

    /** Lets leave go that has no reason yet and that no rule asks for any more. */
    void dropIdleLeaves(Set<String> asked) {
        leaves.removeIf(leave -> leave.reason().isBlank() && !asked.contains(leave.tag()));
    }

    @Nullable
    LocalDate from() {
        return from;
    }

    void from(@Nullable LocalDate day) {
        from = day;
    }

    @Nullable
    LocalDate until() {
        return until;
    }

    void until(@Nullable LocalDate day) {
        until = day;
    }

    String note() {
        return note;
    }

    void note(String text) {
        note = text;
    }

    /** Whether what is seldom changed of it is open for editing. */
    boolean isOpen() {
        return open;
    }

    void open(boolean toOpen) {
        open = toOpen;
    }
}
