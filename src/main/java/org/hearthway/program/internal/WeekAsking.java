package org.hearthway.program.internal;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.week.Ask;
import org.hearthway.program.engine.week.Demand;
import org.hearthway.program.engine.week.FamilyWeek;
import org.hearthway.program.engine.week.Standing;
import org.springframework.stereotype.Component;

/** What the lines of a program ask of a week, and what the family's times offer, as the planner knows it. */
@Component
class WeekAsking {

    private static final int LONGEST = 240;

    private final ExerciseLibrary library;

    WeekAsking(ExerciseLibrary library) {
        this.library = library;
    }

    /** The lines, each under a name of its own: that of its exercise, with a number when an exercise comes again. */
    static Map<String, ProgramLine> named(List<ProgramLine> lines) {
        var named = new LinkedHashMap<String, ProgramLine>();
        var often = new HashMap<String, Integer>();
        for (var line : lines) {
            var number = often.merge(line.exercise(), 1, Integer::sum);
            named.put(number == 1 ? line.exercise() : line.exercise() + "/" + number, line);
        }
        return named;
    }

    /** What stands for a week of these lines and times. */
    Standing standing(List<ProgramLine> lines, FamilyTimes.Times times) {
        var week = week(times);
        var timed = !week.slots().isEmpty();
        return new Standing(timed, timed ? week : Standing.OPEN, demands(lines, timed));
    }

    private static FamilyWeek week(FamilyTimes.Times times) {
        return new FamilyWeek(
                times.free().stream().map(WeekAsking::slot).toList(),
                times.most()
                        .map(most ->
                                Arrays.stream(DayOfWeek.values()).collect(Collectors.toMap(day -> day, day -> most)))
                        .orElse(Map.of()));
    }

    private static FamilyWeek.Slot slot(FamilyTimes.Slot slot) {
        var helpers = new HashSet<>(slot.helpers());
        if (!slot.helpers().isEmpty()) {
            helpers.add(Standing.ONE);
        }
        if (slot.helpers().size() > 1) {
            helpers.add(Standing.TWO);
        }
        return new FamilyWeek.Slot(slot.day(), slot.start(), slot.minutes(), helpers);
    }

    /** What the lines ask for, in weeks with times or without. */
    List<Demand> demands(List<ProgramLine> lines, boolean timed) {
        var demands = new ArrayList<Demand>();
        named(lines)
                .forEach((name, line) -> library.find(line.exercise())
                        .filter(exercise -> !line.days().isEmpty())
                        .ifPresent(exercise ->
                                demands.add(new Demand(ask(name, line, exercise, timed), line.from(), line.until()))));
        var firm = demands.stream().filter(Demand::isFixed).toList();
        return demands.stream()
                .map(demand -> demand.isFixed() && firm.stream().anyMatch(other -> clash(demand.ask(), other.ask()))
                        ? new Demand(withoutMuscles(demand.ask()), demand.from(), demand.until())
                        : demand)
                .toList();
    }

    /** Whether days that the therapist named work the same muscles two days in a row: then these days are meant. */
    private static boolean clash(Ask one, Ask other) {
        return one.muscles().stream().anyMatch(other.muscles()::contains)
                && one.days().stream()
                        .anyMatch(day -> other.days().contains(day.plus(1))
                                || other.days().contains(day.minus(1)));
    }

    private static Ask withoutMuscles(Ask ask) {
        return new Ask(
                ask.exercise(),
                ask.priority(),
                ask.minutes(),
                ask.timesADay(),
                ask.rhythm(),
                ask.days(),
                Set.of(),
                ask.phase(),
                ask.equipment(),
                ask.helpers());
    }

    private Ask ask(String name, ProgramLine line, Exercise exercise, boolean timed) {
        var minutes = timed
                ? line.prescription().minutes(library.pace())
                : library.pace().minutes(line);
        return new Ask(
                name,
                line.priority(),
                Math.min(LONGEST, minutes),
                timed ? line.dose().timesADay() : 1,
                line.isOnFixedDays()
                        ? Rhythm.on(line.days())
                        : line.prescription().rhythm(),
                line.days(),
                exercise.kind() == Exercise.Kind.STRENGTH ? groups(exercise) : Set.of(),
                exercise.traits().phase(),
                exercise.traits().things().stream()
                        .map(Exercise.Named::id)
                        .sorted()
                        .collect(Collectors.joining("+")),
                helpers(exercise));
    }

    private static Set<String> groups(Exercise exercise) {
        return exercise.traits().muscleGroups().stream().map(Exercise.Named::id).collect(Collectors.toSet());
    }

    private static Set<String> helpers(Exercise exercise) {
        return switch (exercise.traits().help()) {
            case NONE -> Set.of();
            case NEAR, HANDS -> Set.of(Standing.ONE);
            case TWO -> Set.of(Standing.TWO);
        };
    }
}
