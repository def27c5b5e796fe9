package org.hearthway.program.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.hearthway.program.HomeWeek.Day;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.engine.Adherence;
import org.hearthway.program.engine.Adherence.Said;
import org.hearthway.program.engine.Adherence.Session;

/** What was done of a program in days gone by, by exercise and day. */
final class LastDays {

    /** One exercise on one day: was it planned, and what was said. */
    record Stone(boolean planned, Optional<Entry> said) {}

    private record Slot(String exercise, LocalDate day) {}

    private final List<LocalDate> dates;
    private final Map<Slot, Stone> stones = new HashMap<>();

    /**
     * Puts plan and entries together.
     *
     * @param days the days with what was planned
     * @param entries all that was said of these days, also of what was not planned
     */
    LastDays(List<Day> days, List<Logged> entries) {
        dates = days.stream().map(Day::date).toList();
        for (var day : days) {
            for (var planned : day.planned()) {
                stones.put(slot(planned, day.date()), new Stone(true, Optional.empty()));
            }
        }
        for (var logged : entries) {
            var entry = logged.entry();
            stones.merge(
                    new Slot(entry.exercise(), entry.day()),
                    new Stone(false, Optional.of(entry)),
                    (plan, said) -> new Stone(plan.planned(), said.said()));
        }
    }

    private static Slot slot(Planned planned, LocalDate day) {
        return new Slot(planned.exercise().id(), day);
    }

    /** The stones of an exercise, the oldest first. */
    List<Stone> of(String exercise) {
        return dates.stream()
                .map(day -> Objects.requireNonNullElse(
                        stones.get(new Slot(exercise, day)), new Stone(false, Optional.empty())))
                .toList();
    }

    int count(String exercise, Outcome outcome) {
        return (int) of(exercise).stream()
                .filter(stone ->
                        stone.said().filter(e -> e.outcome() == outcome).isPresent())
                .count();
    }

    OptionalInt leastPain(String exercise) {
        return pains(exercise).min();
    }

    OptionalInt mostPain(String exercise) {
        return pains(exercise).max();
    }

    private IntStream pains(String exercise) {
        return of(exercise).stream()
                .flatMap(stone -> stone.said().flatMap(Entry::pain).stream())
                .mapToInt(Integer::intValue);
    }

    Adherence adherence() {
        var sessions = new ArrayList<Session>();
        stones.values().forEach(stone -> sessions.add(new Session(stone.planned(), said(stone))));
        return Adherence.of(sessions);
    }

    private static Said said(Stone stone) {
        return stone.said()
                .map(entry -> switch (entry.outcome()) {
                    case DONE -> Said.DONE;
                    case SOME -> Said.SOME;
                    case COULD_NOT -> entry.reason().filter(Reason::isGood).isPresent() ? Said.EXCUSED : Said.NOT_DONE;
                })
                .orElse(Said.NOTHING);
    }
}
