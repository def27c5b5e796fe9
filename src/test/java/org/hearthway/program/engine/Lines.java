package org.hearthway.program.engine;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.hearthway.program.engine.ProgramLine.Side;

/** Program lines for tests. */
public final class Lines {

    public static final LocalDate DAY = LocalDate.of(2026, 3, 12);
    public static final Set<DayOfWeek> ALL_DAYS = EnumSet.allOf(DayOfWeek.class);

    private Lines() {}

    public static ProgramLine line(String exercise) {
        return because(
                ProgramLine.of(exercise, new Dose(2, 8, 0, 0, 1), Side.NONE, ALL_DAYS, DAY, Optional.empty(), ""));
    }

    /** With a reason for whatever dose it has. */
    public static ProgramLine because(ProgramLine line) {
        return new ProgramLine(
                line.exercise(),
                line.prescription(),
                line.days(),
                line.from(),
                line.until(),
                line.note(),
                line.priority(),
                "as this test wants it",
                line.exceptions());
    }

    public static ProgramLine with(ProgramLine line, Dose dose) {
        return line.with(line.prescription().with(dose));
    }

    public static ProgramLine with(ProgramLine line, Set<DayOfWeek> days) {
        return because(ProgramLine.of(
                line.exercise(), line.dose(), line.side(), days, line.from(), line.until(), line.note()));
    }

    public static ProgramLine with(ProgramLine line, Side side) {
        return line.with(line.prescription().with(side));
    }

    public static ProgramLine with(ProgramLine line, String note) {
        return because(ProgramLine.of(
                line.exercise(), line.dose(), line.side(), line.days(), line.from(), line.until(), note));
    }

    public static ProgramLine between(ProgramLine line, LocalDate from, LocalDate until) {
        return line.between(from, Optional.of(until));
    }

    /** Any lines, sound or not, of three exercises. */
    static Arbitrary<ProgramLine> any() {
        var dose = Combinators.combine(
                        Arbitraries.integers().between(-1, 12),
                        Arbitraries.integers().between(-1, 10_000),
                        Arbitraries.integers().between(-1, 700),
                        Arbitraries.integers().between(-1, 300),
                        Arbitraries.integers().between(-1, 8))
                .as(Dose::new);
        var from = Arbitraries.integers().between(-20, 20).map(DAY::plusDays);
        return Combinators.combine(
                        Arbitraries.of("bridge", "clam", "unknown"),
                        dose,
                        Arbitraries.of(Side.class),
                        Arbitraries.subsetOf(DayOfWeek.values()),
                        from,
                        from.optional(),
                        Arbitraries.strings().alpha().ofMaxLength(600))
                .as(ProgramLine::of);
    }

    /** Sound lines of six exercises. */
    static Arbitrary<ProgramLine> sound() {
        return Combinators.combine(
                        Arbitraries.of("a", "b", "c", "d", "e", "f"),
                        Arbitraries.integers().between(1, 3),
                        Arbitraries.integers().between(1, 15),
                        Arbitraries.subsetOf(DayOfWeek.values()).ofMinSize(1))
                .as((exercise, sets, repetitions, days) ->
                        with(with(line(exercise), days), new Dose(sets, repetitions, 0, 0, 1)));
    }
}
