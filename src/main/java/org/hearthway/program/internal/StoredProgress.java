package org.hearthway.program.internal;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.Programs;
import org.hearthway.program.Progress;
import org.hearthway.program.engine.Adherence.Said;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.Progression;
import org.hearthway.program.engine.trend.Quilt;
import org.hearthway.program.engine.trend.RunChart;
import org.hearthway.program.engine.trend.Trends;
import org.hearthway.program.engine.trend.Trends.Log;
import org.hearthway.program.engine.trend.Trends.Rater;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads how a program goes out of the weeks as they were planned and what was said of them. */
@Service
class StoredProgress implements Progress {

    private static final int MOST_WEEKS = 52;
    private static final int A_WEEK = 7;

    /** Weeks in which a rule for more finds its days: 28 of them, and days on which nothing was said between. */
    private static final int LOOKED_BACK = 12;

    /** Whoever looks, planned is what the family had: an exercise that it was not shown is nobody's to do. */
    private static final Viewer AS_THE_FAMILY = new Viewer.Machine("progress");

    /** Before any clinic had this program. */
    private static final LocalDate EVER = LocalDate.of(2000, 1, 1);

    private final HomeWeek week;
    private final SessionStore sessions;
    private final Programs programs;
    private final ExerciseLibrary library;
    private final Gate gate;
    private final ClinicSettings clinic;
    private final Clock clock;

    StoredProgress(
            HomeWeek week,
            SessionStore sessions,
            Programs programs,
            ExerciseLibrary library,
            Gate gate,
            ClinicSettings clinic,
            Clock clock) {
        this.week = week;
        this.sessions = sessions;
        this.programs = programs;
        this.library = library;
        this.gate = gate;
        this.clinic = clinic;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Weeks weeks(Viewer viewer, ChildId child, int weeks) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        if (weeks < 1 || weeks > MOST_WEEKS) {
            throw new IllegalArgumentException("1 to " + MOST_WEEKS + " weeks");
        }
        var today = today();
        var from = monday(today).minusWeeks(weeks - 1L);
        var logs = read(child, from, today);
        var exercises = new LinkedHashMap<String, List<Log>>();
        logs.forEach(log -> exercises
                .computeIfAbsent(log.exercise(), exercise -> new ArrayList<>())
                .add(log));
        return new Weeks(
                from,
                today,
                going(logs, from, weeks),
                exercises.entrySet().stream()
                        .map(one -> new OfExercise(one.getKey(), going(one.getValue(), from, weeks)))
                        .toList());
    }

    private static Going going(List<Log> logs, LocalDate from, int weeks) {
        return new Going(
                Trends.weeks(logs, from, weeks),
                Trends.adherence(logs),
                charts(logs, Trends::pain),
                charts(logs, Trends::effort),
                Trends.reasons(logs));
    }

    private static Map<Rater, RunChart> charts(List<Log> logs, BiFunction<List<Log>, Rater, RunChart> chart) {
        var charts = new EnumMap<Rater, RunChart>(Rater.class);
        for (var rater : Rater.values()) {
            charts.put(rater, chart.apply(logs, rater));
        }
        return charts;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Log> logs(Viewer viewer, ChildId child, LocalDate from, LocalDate until) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return read(child, from, until.isAfter(today()) ? today() : until);
    }

    private record Slot(String exercise, LocalDate day) {}

    /** In the order of the program of the newest day; of what is planned for today only what something was said of. */
    private List<Log> read(ChildId child, LocalDate from, LocalDate until) {
        if (until.isBefore(from)) {
            return List.of();
        }
        var planned = new LinkedHashSet<Slot>();
        var days =
                new ArrayList<>(week.days(AS_THE_FAMILY, child, from, (int) ChronoUnit.DAYS.between(from, until) + 1));
        Collections.reverse(days);
        days.forEach(day ->
                day.planned().forEach(one -> planned.add(new Slot(one.exercise().id(), day.date()))));
        var said = new LinkedHashMap<Slot, Entry>();
        for (var logged : sessions.counting(child, from, until)) {
            said.putIfAbsent(new Slot(logged.entry().exercise(), logged.entry().day()), logged.entry());
        }
        var today = today();
        return Stream.concat(planned.stream(), said.keySet().stream())
                .distinct()
                .filter(slot -> slot.day().isBefore(today) || said.containsKey(slot))
                .map(slot -> log(slot, planned.contains(slot), Optional.ofNullable(said.get(slot))))
                .toList();
    }

    private static Log log(Slot slot, boolean planned, Optional<Entry> entry) {
        return new Log(
                slot.exercise(),
                slot.day(),
                planned,
                entry.map(StoredProgress::said).orElse(Said.NOTHING),
                entry.flatMap(Entry::reason).map(Reason::name),
                entry.flatMap(Entry::effort),
                entry.flatMap(Entry::pain),
                entry.flatMap(Entry::ratedBy).map(StoredProgress::rater));
    }

    private static Said said(Entry entry) {
        return switch (entry.outcome()) {
            case DONE -> Said.DONE;
            case SOME -> Said.SOME;
            case COULD_NOT -> entry.reason().filter(Reason::isGood).isPresent() ? Said.EXCUSED : Said.NOT_DONE;
        };
    }

    private static Rater rater(RatedBy by) {
        return switch (by) {
            case CHILD -> Rater.CHILD;
            case ADULT -> Rater.ADULT;
        };
    }

    @Override
    @Transactional(readOnly = true)
    public List<Proposed> proposed(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var versions = programs.history(viewer, child);
        if (versions.isEmpty()
                || versions.get(0).lines().stream()
                        .noneMatch(line -> line.prescription().progression().isPresent())) {
            return List.of();
        }
        var today = today();
        var logs = read(child, today.minusWeeks(LOOKED_BACK), today);
        // what is locked, paused or over is not on these days
        var ahead = week.days(AS_THE_FAMILY, child, today, A_WEEK).stream()
                .flatMap(day -> day.planned().stream())
                .map(one -> one.exercise().id())
                .collect(Collectors.toSet());
        var found = new LinkedHashMap<String, Proposed>();
        versions.get(0).lines().stream()
                .filter(line -> ahead.contains(line.exercise()))
                .forEach(line -> propose(line, versions, logs)
                        .ifPresent(proposed -> found.putIfAbsent(line.exercise(), proposed)));
        return List.copyOf(found.values());
    }

    private static Optional<Proposed> propose(ProgramLine line, List<Programs.Version> versions, List<Log> logs) {
        var told = logs.stream()
                .filter(log -> log.exercise().equals(line.exercise())
                        && log.said() != Said.NOTHING
                        && line.days().contains(log.day().getDayOfWeek()))
                .map(log -> new Progression.Told(log.day(), log.said() == Said.DONE, log.effort(), log.pain()))
                .toList();
        return line.prescription()
                .progression()
                .flatMap(rule -> rule.propose(told, since(line, versions)))
                .map(more -> new Proposed(
                        line,
                        line.with(line.prescription().after(more)),
                        versions.get(0).number(),
                        more.days()));
    }

    /** The first day of what is done now: of the oldest of the newest versions that all ask the same of the exercise. */
    private static LocalDate since(ProgramLine line, List<Programs.Version> versions) {
        var since = versions.get(0).effective();
        for (var version : versions) {
            if (version.lines().stream().noneMatch(before -> asksTheSame(before, line))) {
                break;
            }
            since = version.effective();
        }
        return since.isBefore(line.from()) ? line.from() : since;
    }

    private static boolean asksTheSame(ProgramLine before, ProgramLine now) {
        return before.exercise().equals(now.exercise())
                && before.dose().equals(now.dose())
                && before.side() == now.side()
                && before.prescription().load().equals(now.prescription().load());
    }

    @Override
    @Transactional
    public void takeUp(Viewer.Person viewer, ChildId child, Proposed seen) {
        gate.require(viewer, Action.CHANGE_PROGRAM, child);
        var latest = programs.latest(viewer, child).orElseThrow(Overtaken::new);
        if (!proposed(viewer, child).contains(seen)) {
            throw new Overtaken();
        }
        var kept = programs.keptDraft(viewer, child);
        var draft =
                kept.map(Programs.KeptDraft::draft).orElseGet(() -> new Programs.Draft(today(), latest.lines(), ""));
        var lines = new ArrayList<>(draft.lines());
        var at = IntStream.range(0, lines.size())
                .filter(i -> asksTheSame(lines.get(i), seen.now()))
                .findFirst()
                .orElseThrow(Overtaken::new);
        lines.set(at, lines.get(at).with(seen.then().prescription()));
        programs.keepDraft(
                viewer,
                child,
                new Programs.Draft(draft.effective(), lines, draft.reason(), draft.toFamily()),
                kept.map(Programs.KeptDraft::seen).orElse(latest.number()));
    }

    @Override
    @Transactional(readOnly = true)
    public List<Quilt.Patch> quilt(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return Quilt.of(sessions.counting(child, EVER, today().plusDays(1)).stream()
                .map(Logged::entry)
                .filter(entry -> entry.outcome() != Outcome.COULD_NOT)
                .map(entry -> new Quilt.Practised(kind(entry.exercise()), entry.day()))
                .toList());
    }

    /** Of an exercise that the library no longer knows nothing is taken away: its patch is a plain one. */
    private String kind(String exercise) {
        return library.find(exercise).map(Exercise::kind).map(Enum::name).orElse("");
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
