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
import org.hearthway.content.SignOff;
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

    private static final Viewer WEEK = new Viewer.Machine("week");

    private final ProgramStore programs;
    private final PauseRows pauses;
    private final Cautions cautions;
    private final ExerciseLibrary library;
    private final SignOff signOff;
    private final Gate gate;

    StoredCareTurns(
            ProgramStore programs,
            PauseRows pauses,
            Cautions cautions,
            ExerciseLibrary library,
            SignOff signOff,
            Gate gate) {
        this.programs = programs;
        this.pauses = pauses;
        this.cautions = cautions;
        this.library = library;
        this.signOff = signOff;
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
        var versions = versions(child);
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
        if (pauses.of(child).stream().anyMatch(pause -> pause.holdsOn(day))) {
            return List.of();
        }
        // whoever sees the week need not see the path that it follows from
        var rules = cautions.rules(WEEK, child);
        var resting = new ArrayList<Resting>();
        for (var line : WeekSchedule.days(versions(child), day, 1).get(0).lines()) {
            var care = cautions.lock(line, day, rules);
            var exercise = library.find(line.exercise()).filter(known -> isShown(viewer, known));
            if (care.isPresent() && exercise.isPresent()) {
                resting.add(new Resting(exercise.get(), care.get()));
            }
        }
        return List.copyOf(resting);
    }

    private boolean isShown(Viewer viewer, Exercise exercise) {
        return (viewer instanceof Viewer.Person person && person.isStaff())
                || !signOff.shownAmong(List.of(exercise.item())).isEmpty();
    }

    private List<Dated> versions(ChildId child) {
        return programs.all(child).stream()
                .map(version -> new Dated(version.number(), version.effective(), version.lines()))
                .toList();
    }
}
