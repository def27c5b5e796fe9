package org.hearthway.program.internal;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.child.Standings;
import org.hearthway.content.SignOff;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.WeekSchedule;
import org.hearthway.program.engine.WeekSchedule.Dated;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The family's week, laid out from the stored versions, and what was said of it. */
@Service
class StoredHomeWeek implements HomeWeek {

    /** Most days asked for at once. */
    private static final int MOST_DAYS = 400;

    private static final Viewer WEEK = new Viewer.Machine("week");

    private final ProgramStore programs;
    private final SessionStore sessions;
    private final Gate gate;
    private final Cautions cautions;
    private final ExerciseLibrary library;
    private final SignOff signOff;
    private final Standings standings;
    private final PauseRows pauses;
    private final Said said;

    StoredHomeWeek(
            ProgramStore programs,
            SessionStore sessions,
            Gate gate,
            Cautions cautions,
            ExerciseLibrary library,
            SignOff signOff,
            Standings standings,
            PauseRows pauses,
            Said said) {
        this.programs = programs;
        this.sessions = sessions;
        this.gate = gate;
        this.cautions = cautions;
        this.library = library;
        this.signOff = signOff;
        this.standings = standings;
        this.pauses = pauses;
        this.said = said;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Day> days(Viewer viewer, ChildId child, LocalDate from, int count) {
        gate.require(viewer, Action.SEE_WEEK, child);
        if (count < 1 || count > MOST_DAYS) {
            throw new IllegalArgumentException("1 to " + MOST_DAYS + " days at once");
        }
        var versions = programs.all(child).stream()
                .map(v -> new Dated(v.number(), v.effective(), v.lines()))
                .toList();
        var plan = WeekSchedule.days(versions, from, count);
        var whole = gate.allows(viewer, Action.SEE_FAMILY_PAGES, child);
        var entries = sessions.counting(child, from, from.plusDays(count - 1L)).stream()
                .map(logged -> whole ? logged : withoutWords(logged))
                .collect(Collectors.toMap(Slot::of, Function.identity()));
        // whoever sees the week need not see the path and the status that it follows from
        var care = cautions.rules(WEEK, child);
        var shown = shown(viewer, plan);
        var closed = standings.pauses(WEEK, child);
        var resting = pauses.of(child);
        return plan.stream()
                .map(day -> new Day(
                        day.date(),
                        day.lines().stream()
                                .filter(line -> closed.stream().noneMatch(pause -> pause.holdsOn(day.date())))
                                .filter(line -> resting.stream().noneMatch(pause -> pause.holdsOn(day.date())))
                                .filter(line -> shown.contains(line.exercise()))
                                .filter(line ->
                                        cautions.lock(line, day.date(), care).isEmpty())
                                .map(line -> planned(line, day.date(), entries))
                                .toList()))
                .toList();
    }

    /** What a helper sees of an entry: how the exercise went, not what the family wrote to the team, nor who did. */
    private static Logged withoutWords(Logged said) {
        var e = said.entry();
        return new Logged(
                new Entry(
                        e.key(), e.exercise(), e.day(), e.outcome(), e.reason(), e.effort(), e.pain(), e.ratedBy(), ""),
                "",
                said.at(),
                said.received(),
                said.version(),
                said.became(),
                said.turn(),
                List.of());
    }

    /** An exercise on a day. */
    private record Slot(String exercise, LocalDate day) {
        static Slot of(Logged logged) {
            return new Slot(logged.entry().exercise(), logged.entry().day());
        }
    }

    private Planned planned(ProgramLine line, LocalDate day, Map<Slot, Logged> logged) {
        return new Planned(
                library.find(line.exercise()).orElseThrow(),
                line,
                library.pace().minutes(line),
                Optional.ofNullable(logged.get(new Slot(line.exercise(), day))));
    }

    /** Which exercises this viewer sees: a family only those the clinic has accepted, staff all. */
    private Set<String> shown(Viewer viewer, List<WeekSchedule.DayPlan> plan) {
        var all = plan.stream()
                .flatMap(day -> day.lines().stream())
                .map(ProgramLine::exercise)
                .distinct()
                .flatMap(id -> library.find(id).stream())
                .toList();
        if (viewer instanceof Viewer.Person person && person.isStaff()) {
            return all.stream().map(Exercise::id).collect(Collectors.toSet());
        }
        return signOff.shownAmong(all.stream().map(Exercise::item).toList()).stream()
                .map(SignOff.Item::id)
                .collect(Collectors.toSet());
    }

    @Override
    @Transactional(readOnly = true)
    public Carried carry(Viewer viewer, ChildId child, LocalDate from, int count) {
        var days = days(viewer, child, from, count);
        var care = cautions.rules(WEEK, child);
        var forbiddenFrom = new LinkedHashMap<String, LocalDate>();
        var lines = days.stream()
                .flatMap(day -> day.planned().stream())
                .map(Planned::line)
                .collect(Collectors.toMap(ProgramLine::exercise, Function.identity(), (first, later) -> later));
        lines.forEach((exercise, line) -> days.stream()
                .map(Day::date)
                .filter(day -> cautions.lock(line, day, care).isPresent())
                .findFirst()
                .ifPresent(day -> forbiddenFrom.put(exercise, day)));
        return new Carried(programs.latest(child).map(Programs.Version::number).orElse(0), days, forbiddenFrom);
    }

    @Override
    public boolean log(Viewer viewer, ChildId child, Entry entry) {
        return said.keep(viewer, child, entry, Optional.empty());
    }

    @Override
    public boolean log(Viewer viewer, ChildId child, Entry entry, long before) {
        return said.keep(viewer, child, entry, Optional.of(before));
    }

    @Override
    public List<Arrived> bring(Viewer viewer, ChildId child, List<Tick> ticks) {
        return said.bring(viewer, child, ticks);
    }

    @Override
    @Transactional
    public void takeBack(Viewer viewer, ChildId child, String exercise, LocalDate day) {
        said.takeBack(viewer, child, exercise, day);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Logged> entries(Viewer viewer, ChildId child, LocalDate from, LocalDate until) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return sessions.counting(child, from, until);
    }
}
