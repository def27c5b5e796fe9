package org.hearthway.program.ui;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
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
import org.hearthway.program.engine.Progression;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.Rhythm.Spread;
import org.jspecify.annotations.Nullable;

/** A line while somebody edits it: what was typed stays as it was typed, be it a number or not. */
final class EditedLine {

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

    /** Leave from a rule of care while its reason is typed. */
    record Leave(String tag, LocalDate begins, LocalDate until, String reason) {}

    private static final Set<DayOfWeek> WORKING = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    /** The most days of a week that do not touch. */
    private static final int APART = 3;

    private static final Set<DayOfWeek> WEEK = EnumSet.allOf(DayOfWeek.class);

    private final TypedNumbers typed = new TypedNumbers();
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
        typed.put(Amount.SETS, dose.sets());
        typed.put(Amount.REPETITIONS, dose.repetitions());
        typed.put(Amount.HOLD, dose.holdSeconds());
        typed.put(Amount.MINUTES, dose.minutes());
        typed.put(Amount.TIMES_A_DAY, dose.timesADay());
    }

    private void rhythm(Rhythm rhythm) {
        typed.put(Amount.RHYTHM, rhythm.days());
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
            typed.putKilograms(Amount.KILOGRAMS, weight);
        } else if (load instanceof Load.Band band) {
            against = Against.BAND;
            typed.put(Amount.BAND, band.step());
        } else {
            against = Against.BODY;
        }
    }

    private void rule(Progression progression) {
        rule = true;
        typed.put(Amount.RULE_DAYS, progression.days());
        typed.put(Amount.RULE_EFFORT, progression.effortUnder());
        typed.put(Amount.RULE_PAIN, progression.painUnder());
        typed.put(Amount.NEXT_SETS, progression.next().sets());
        typed.put(Amount.NEXT_REPETITIONS, progression.next().repetitions());
        typed.put(Amount.NEXT_HOLD, progression.next().holdSeconds());
        typed.put(Amount.NEXT_MINUTES, progression.next().minutes());
        if (progression.nextLoad() instanceof Load.Weight weight) {
            typed.putKilograms(Amount.NEXT_KILOGRAMS, weight);
        } else if (progression.nextLoad() instanceof Load.Band band) {
            typed.put(Amount.NEXT_BAND, band.step());
        }
    }

    /** The line as it stands; what is no number is below every bound, and what cannot be held is left out. */
    ProgramLine line(LocalDate effective) {
        var dose = new Dose(
                typed.number(Amount.SETS),
                typed.number(Amount.REPETITIONS),
                typed.number(Amount.HOLD),
                typed.number(Amount.MINUTES),
                typed.number(Amount.TIMES_A_DAY));
        var prescription = new Prescription(
                dose,
                typed.given(Amount.REST),
                side,
                load().orElseGet(Load.Body::new),
                rhythm(),
                typed.given(Amount.EFFORT),
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
        if (chosenDays() && !typed.holds(Amount.RHYTHM)) {
            problems.add(Problem.at(ProgramRules.field(index, "rhythm"), "program.problem.rhythm.days", index + 1));
        }
        if (rule && rule().isEmpty()) {
            problems.add(Problem.at(
                    ProgramRules.field(index, "progression"), "program.problem.progression.bounds", index + 1));
        }
        return problems;
    }

    private boolean chosenDays() {
        return lie == Lie.ANY || lie == Lie.ALTERNATE || lie == Lie.NOT_FOLLOWING;
    }

    private Rhythm rhythm() {
        var many = typed.holds(Amount.RHYTHM) ? typed.number(Amount.RHYTHM) : 1;
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
        return typed.load(against, Amount.KILOGRAMS, Amount.BAND);
    }

    private Optional<Progression> rule() {
        var nextLoad = typed.load(against, Amount.NEXT_KILOGRAMS, Amount.NEXT_BAND);
        if (!rule
                || nextLoad.isEmpty()
                || !typed.holds(Amount.RULE_DAYS)
                || !typed.holds(Amount.RULE_EFFORT)
                || !typed.holds(Amount.RULE_PAIN)) {
            return Optional.empty();
        }
        var next = new Dose(
                typed.number(Amount.NEXT_SETS),
                inMinutes() ? 0 : typed.number(Amount.NEXT_REPETITIONS),
                inMinutes() ? 0 : typed.number(Amount.NEXT_HOLD),
                inMinutes() ? typed.number(Amount.NEXT_MINUTES) : 0,
                typed.number(Amount.TIMES_A_DAY));
        return Optional.of(new Progression(
                typed.number(Amount.RULE_DAYS),
                typed.number(Amount.RULE_EFFORT),
                typed.number(Amount.RULE_PAIN),
                next,
                nextLoad.get()));
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
        return typed.text(number);
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
            typed.put(Amount.REPETITIONS, 8);
        } else {
            typed.put(Amount.REPETITIONS, "");
            typed.put(Amount.HOLD, "");
            typed.put(Amount.MINUTES, 5);
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
        if (chosenDays() && typed.number(Amount.RHYTHM) >= days.size()) {
            typed.put(Amount.RHYTHM, Math.max(1, (days.size() + 1) / 2));
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
        typed.put(Amount.RULE_DAYS, 4);
        typed.put(Amount.RULE_EFFORT, 5);
        typed.put(Amount.RULE_PAIN, 4);
        typed.put(Amount.NEXT_SETS, typed(Amount.SETS));
        typed.put(Amount.NEXT_HOLD, typed(Amount.HOLD));
        typed.put(
                Amount.NEXT_REPETITIONS,
                Math.min(ProgramRules.REPETITIONS.max(), typed.number(Amount.REPETITIONS) + 2));
        typed.put(Amount.NEXT_MINUTES, Math.min(ProgramRules.MINUTES.max(), typed.number(Amount.MINUTES) + 5));
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
