package org.hearthway.program.internal;

import java.time.LocalDate;
import java.time.LocalTime;
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
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.week.FamilyWeek;
import org.hearthway.program.engine.week.Layout;
import org.hearthway.program.engine.week.Standing;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The family's week, laid out from the stored versions, and what was said of it. */
@Service
class StoredHomeWeek implements HomeWeek {

    /** Most days asked for at once. */
    private static final int MOST_DAYS = 400;

    private static final Viewer WEEK = new Viewer.Machine("week");

    private final WeekReading reading;
    private final SessionStore sessions;
    private final Gate gate;
    private final ExerciseLibrary library;
    private final ProgramStore programs;
    private final Cautions cautions;
    private final Said said;

    StoredHomeWeek(
            WeekReading reading,
            SessionStore sessions,
            Gate gate,
            ExerciseLibrary library,
            ProgramStore programs,
            Cautions cautions,
            Said said) {
        this.reading = reading;
        this.sessions = sessions;
        this.gate = gate;
        this.library = library;
        this.programs = programs;
        this.cautions = cautions;
        this.said = said;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Day> days(Viewer viewer, ChildId child, LocalDate from, int count) {
        gate.require(viewer, Action.SEE_WEEK, child);
        if (count < 1 || count > MOST_DAYS) {
            throw new IllegalArgumentException("1 to " + MOST_DAYS + " days at once");
        }
        var whole = gate.allows(viewer, Action.SEE_FAMILY_PAGES, child);
        var entries = sessions.counting(child, from, from.plusDays(count - 1L)).stream()
                .map(logged -> whole ? logged : withoutWords(logged))
                .collect(Collectors.toMap(Slot::of, Function.identity()));
        return reading.days(viewer, child, from, count).stream()
                .map(read -> day(read, whole, entries))
                .toList();
    }

    private Day day(WeekReading.Read read, boolean whole, Map<Slot, Logged> logged) {
        return new Day(
                read.date(),
                read.on().stream().map(on -> planned(on, read.date(), logged)).toList(),
                read.on().stream()
                        .flatMap(on -> on.times().stream())
                        .distinct()
                        .sorted()
                        .map(start -> time(read, start, whole))
                        .toList(),
                whole
                        ? read.moved().stream()
                                .flatMap(move -> moved(read, move).stream())
                                .toList()
                        : List.of());
    }

    /** A time of the day; one that was moved to a time that is gone since is as long as what is in it. */
    private Time time(WeekReading.Read read, LocalTime start, boolean whole) {
        var slot = read.layout().flatMap(layout -> layout.week().at(read.date().getDayOfWeek(), start));
        var minutes = slot.map(FamilyWeek.Slot::minutes)
                .orElseGet(() -> read.on().stream()
                        .filter(on -> on.times().contains(start))
                        .mapToInt(on ->
                                library.pace().minutes(on.line()) / on.times().size())
                        .sum());
        var helpers = slot.filter(there -> whole).map(FamilyWeek.Slot::helpers).orElse(Set.of()).stream()
                .filter(name -> !name.equals(Standing.ONE) && !name.equals(Standing.TWO))
                .sorted()
                .toList();
        return new Time(start, minutes, helpers);
    }

    private Optional<Moved> moved(WeekReading.Read read, WeekStore.Move move) {
        var timed = read.layout()
                .filter(layout -> layout.kind() == Layout.Kind.BY_TIME)
                .isPresent();
        return library.find(move.line().split("/", 2)[0])
                .map(exercise -> new Moved(
                        move.key(),
                        exercise,
                        move.from(),
                        move.to(),
                        timed ? Optional.of(move.toStart()) : Optional.empty()));
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

    private Planned planned(LaidDays.On on, LocalDate day, Map<Slot, Logged> logged) {
        var line = on.line();
        return new Planned(
                library.find(line.exercise()).orElseThrow(),
                line,
                library.pace().minutes(line),
                Optional.ofNullable(logged.get(new Slot(line.exercise(), day))),
                on.times());
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
