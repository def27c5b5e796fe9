package org.hearthway.program.ui;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.hearthway.program.Exercise;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.Rhythm;
import org.jspecify.annotations.Nullable;

/** A line while somebody edits it: what was typed stays as it was typed, be it a number or not. */
final class EditedLine {

    /** One number of the dose. */
    enum Amount {
        SETS("sets"),
        REPETITIONS("repetitions"),
        HOLD("holdSeconds"),
        MINUTES("minutes"),
        TIMES_A_DAY("timesADay");

        private final String field;

        Amount(String field) {
            this.field = field;
        }

        /** Its name in problems. */
        String field() {
            return field;
        }
    }

    private static final Set<DayOfWeek> WORKING = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    private final java.util.EnumMap<Amount, String> typed = new java.util.EnumMap<>(Amount.class);
    /** The line as it was before anybody edited it. */
    private final ProgramLine kept;

    private String exercise;
    private Side side;
    private final EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    private @Nullable LocalDate from;
    private @Nullable LocalDate until;
    private String note;
    private boolean open;

    EditedLine(ProgramLine line) {
        kept = line;
        exercise = line.exercise();
        dose(line.dose());
        side = line.side();
        days.addAll(line.days());
        from = line.from();
        until = line.until().orElse(null);
        note = line.note();
    }

    /** What adding an exercise puts there: its usual dose, Monday to Friday. */
    static ProgramLine usual(Exercise exercise, LocalDate from) {
        return ProgramLine.of(
                exercise.id(),
                exercise.usual(),
                exercise.sided() ? Side.EACH : Side.NONE,
                WORKING,
                from,
                Optional.empty(),
                "");
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

    /** The line as it stands; what is no number is below every bound. */
    ProgramLine line(LocalDate effective) {
        var dose = new Dose(
                number(Amount.SETS),
                number(Amount.REPETITIONS),
                number(Amount.HOLD),
                number(Amount.MINUTES),
                number(Amount.TIMES_A_DAY));
        var was = kept.prescription();
        var rhythm = kept.isOnFixedDays() ? Rhythm.on(days) : was.rhythm();
        return new ProgramLine(
                exercise,
                new Prescription(dose, was.restSeconds(), side, was.load(), rhythm, was.effort(), was.progression()),
                days,
                from == null ? effective : from,
                Optional.ofNullable(until),
                note,
                kept.priority(),
                kept.beyond(),
                kept.exceptions());
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

    String exercise() {
        return exercise;
    }

    /** Puts another exercise in its place; days, dates and note stay, the dose is the new one's usual. */
    void swap(Exercise other) {
        exercise = other.id();
        dose(other.usual());
        if (!other.sided()) {
            side = Side.NONE;
        } else if (side == Side.NONE) {
            side = Side.EACH;
        }
    }

    String typed(Amount number) {
        return typed.getOrDefault(number, "");
    }

    void type(Amount number, String text) {
        typed.put(number, text);
    }

    /** Whether the dose is in minutes rather than in times. */
    boolean inMinutes() {
        return !typed(Amount.MINUTES).isBlank();
    }

    /** Turns a dose in times into one in minutes, and back. */
    void turnDose() {
        if (inMinutes()) {
            typed.put(Amount.MINUTES, "");
            type(Amount.REPETITIONS, 8);
        } else {
            typed.put(Amount.REPETITIONS, "");
            typed.put(Amount.HOLD, "");
            type(Amount.MINUTES, 5);
        }
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

    /** Whether its dates, note and how often a day are open for editing. */
    boolean isOpen() {
        return open;
    }

    void open(boolean toOpen) {
        open = toOpen;
    }
}
