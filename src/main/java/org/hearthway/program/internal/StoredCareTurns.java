package org.hearthway.program.internal;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.CareTurns;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.WeekSchedule;
import org.hearthway.program.engine.WeekSchedule.Dated;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Turns worked out of the plan's rules of care and the stored program. */
@Service
class StoredCareTurns implements CareTurns {

    private final ProgramStore programs;
    private final WeekReading reading;
    private final Cautions cautions;
    private final ExerciseLibrary library;
    private final Gate gate;

    StoredCareTurns(ProgramStore programs, WeekReading reading, Cautions cautions, ExerciseLibrary library, Gate gate) {
        this.programs = programs;
        this.reading = reading;
        this.cautions = cautions;
        this.library = library;
        this.gate = gate;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Turn> between(Viewer viewer, ChildId child, LocalDate from, LocalDate until) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        if (until.isBefore(from) || ChronoUnit.DAYS.between(from, until) > MOST_DAYS) {
            throw new IllegalArgumentException("at most " + MOST_DAYS + " days, the first before the last");
        }
        var rules = cautions.rules(viewer, child).stream()
                .filter(care -> care.rule().forbids())
                .toList();
        var versions = WeekLaying.versions(programs.all(child));
        var turns = new ArrayList<Turn>();
        for (var day : edges(rules, from, until)) {
            var lines = WeekSchedule.versionOn(versions, day).map(Dated::lines).orElse(List.of());
            library.all().stream()
                    .flatMap(exercise -> turn(exercise, lines, day, rules).stream())
                    .sorted(Comparator.comparing(Turn::inProgram).reversed())
                    .forEach(turns::add);
        }
        return List.copyOf(turns);
    }

    /** The days on which a rule begins or holds no more. */
    private static NavigableSet<LocalDate> edges(List<Plan.Care> rules, LocalDate from, LocalDate until) {
        var edges = new TreeSet<LocalDate>();
        for (var care : rules) {
            edges.add(care.from());
            edges.add(care.until());
        }
        edges.removeIf(day -> day.isBefore(from) || day.isAfter(until));
        return edges;
    }

    private Optional<Turn> turn(Exercise exercise, List<ProgramLine> lines, LocalDate day, List<Plan.Care> rules) {
        var mine = lines.stream()
                .filter(line -> line.exercise().equals(exercise.id()))
                .filter(line -> line.until().filter(last -> last.isBefore(day)).isEmpty())
                .findFirst();
        var leave = mine.map(ProgramLine::exceptions).orElse(List.of());
        var before = cautions.lock(exercise.id(), leave, day.minusDays(1), rules);
        var now = cautions.lock(exercise.id(), leave, day, rules);
        if (before.isPresent() == now.isPresent()) {
            return Optional.empty();
        }
        var care = now.or(() -> before).orElseThrow();
        return Optional.of(new Turn(exercise.id(), care, day, now.isPresent(), mine.isPresent()));
    }

    @Override
    @Transactional(readOnly = true)
    public List<Resting> resting(Viewer viewer, ChildId child, LocalDate day) {
        gate.require(viewer, Action.SEE_WEEK, child);
        return reading.locked(viewer, child, day).stream()
                .flatMap(locked -> library.find(locked.line().exercise()).stream()
                        .map(exercise -> new Resting(exercise, locked.care())))
                .toList();
    }
}
