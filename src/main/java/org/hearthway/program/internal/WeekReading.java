package org.hearthway.program.internal;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.Standings;
import org.hearthway.content.SignOff;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.week.Layout;
import org.hearthway.program.internal.LaidDays.On;
import org.hearthway.program.internal.WeekStore.Move;
import org.springframework.stereotype.Component;

/**
 * Reads what is on which day for a viewer: as it was laid out, less what is locked, paused or not accepted, and with the
 * sessions that the family moved within a week.
 */
@Component
class WeekReading {

    private static final Viewer WEEK = new Viewer.Machine("week");
    private static final Comparator<On> BY_TIME =
            Comparator.comparing(on -> on.times().stream().findFirst().orElse(LocalTime.MIDNIGHT));

    private final ProgramStore programs;
    private final WeekStore weeks;
    private final SessionStore sessions;
    private final Cautions cautions;
    private final ExerciseLibrary library;
    private final SignOff signOff;
    private final Standings standings;
    private final PauseRows pauses;

    WeekReading(
            ProgramStore programs,
            WeekStore weeks,
            SessionStore sessions,
            Cautions cautions,
            ExerciseLibrary library,
            SignOff signOff,
            Standings standings,
            PauseRows pauses) {
        this.programs = programs;
        this.weeks = weeks;
        this.sessions = sessions;
        this.cautions = cautions;
        this.library = library;
        this.signOff = signOff;
        this.standings = standings;
        this.pauses = pauses;
    }

    /**
     * A day.
     *
     * @param layout how its week was laid out; empty when the lines alone say it
     * @param lines those in force, also for other days
     * @param on in the order in which it is done
     * @param moved what was moved away from the day or to it
     */
    record Read(LocalDate date, Optional<Layout> layout, List<ProgramLine> lines, List<On> on, List<Move> moved) {}

    /** The days from the first, {@code count} of them. Who may see them was asked before. */
    List<Read> days(Viewer viewer, ChildId child, LocalDate from, int count) {
        var last = from.plusDays(count - 1L);
        var moves = weeks.moves(child, from, last);
        var first = moves.isEmpty() ? from : from.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        var end = moves.isEmpty() ? last : last.with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
        var laid = new LaidDays(WeekLaying.versions(programs.all(child)), weeks.laid(child, first, Optional.of(end)));
        var shows = shows(viewer, child, laid, first, end);
        var days = new TreeMap<LocalDate, List<On>>();
        first.datesUntil(end.plusDays(1))
                .forEach(day -> days.put(
                        day,
                        laid.on(day).stream()
                                .filter(on -> shows.test(on.line(), day))
                                .collect(Collectors.toCollection(ArrayList::new))));
        var applied = apply(child, moves.isEmpty() ? moves : weeks.moves(child, first, end), days, laid, shows);
        return IntStream.range(0, count)
                .mapToObj(from::plusDays)
                .map(day -> new Read(
                        day,
                        laid.layout(day),
                        List.copyOf(laid.named(day).values()),
                        List.copyOf(days.getOrDefault(day, new ArrayList<>())),
                        applied.stream()
                                .filter(move ->
                                        move.from().equals(day) || move.to().equals(day))
                                .toList()))
                .toList();
    }

    /** A line that would be on a day, and the rule of care that forbids it. */
    record Locked(ProgramLine line, Plan.Care care) {}

    /** What was laid out for a day and is not done on it because of a rule of care, in the order of the day. */
    List<Locked> locked(Viewer viewer, ChildId child, LocalDate day) {
        var laid = new LaidDays(WeekLaying.versions(programs.all(child)), weeks.laid(child, day, Optional.of(day)));
        var asked = asked(viewer, child, laid, day, day);
        var care = cautions.rules(WEEK, child);
        return laid.on(day).stream()
                .map(On::line)
                .filter(line -> asked.test(line, day))
                .flatMap(line -> cautions.lock(line, day, care).stream().map(rule -> new Locked(line, rule)))
                .toList();
    }

    /** Whether a line shows on a day: it is asked for, and no rule of care forbids it. */
    private BiPredicate<ProgramLine, LocalDate> shows(
            Viewer viewer, ChildId child, LaidDays laid, LocalDate first, LocalDate end) {
        // whoever sees the week need not see the path and the status that it follows from
        var care = cautions.rules(WEEK, child);
        return asked(viewer, child, laid, first, end)
                .and((line, day) -> cautions.lock(line, day, care).isEmpty());
    }

    /** Whether a line is asked for on a day: neither child nor program is paused, and the clinic has accepted it. */
    private BiPredicate<ProgramLine, LocalDate> asked(
            Viewer viewer, ChildId child, LaidDays laid, LocalDate first, LocalDate end) {
        var closed = standings.pauses(WEEK, child);
        var resting = pauses.of(child);
        var shown = shown(viewer, first.datesUntil(end.plusDays(1)).flatMap(day -> laid.named(day).values().stream()));
        return (line, day) -> closed.stream().noneMatch(pause -> pause.holdsOn(day))
                && resting.stream().noneMatch(pause -> pause.holdsOn(day))
                && shown.contains(line.exercise());
    }

    /** Which exercises this viewer sees: a family only those the clinic has accepted, staff all. */
    private Set<String> shown(Viewer viewer, Stream<ProgramLine> lines) {
        var all = lines.map(ProgramLine::exercise)
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

    /** Moves the sessions, each unless what it rests on is no longer so; tells which were. */
    private List<Move> apply(
            ChildId child,
            List<Move> moves,
            Map<LocalDate, List<On>> days,
            LaidDays laid,
            BiPredicate<ProgramLine, LocalDate> shows) {
        return moves.stream()
                .filter(move -> days.containsKey(move.from()) && days.containsKey(move.to()))
                .filter(move -> isMoved(child, move, days, laid, shows))
                .toList();
    }

    private boolean isMoved(
            ChildId child,
            Move move,
            Map<LocalDate, List<On>> days,
            LaidDays laid,
            BiPredicate<ProgramLine, LocalDate> shows) {
        var there = days.getOrDefault(move.from(), new ArrayList<>());
        var target = days.getOrDefault(move.to(), new ArrayList<>());
        var left = there.stream().filter(on -> on.name().equals(move.line())).findFirst();
        var line = Optional.ofNullable(laid.named(move.to()).get(move.line())).filter(to -> shows.test(to, move.to()));
        if (left.isEmpty() || line.isEmpty() || wasDone(child, left.get().line().exercise(), move.from())) {
            return false;
        }
        var timed = laid.layout(move.to())
                .filter(l -> l.kind() == Layout.Kind.BY_TIME)
                .isPresent();
        var known = target.stream().filter(on -> on.name().equals(move.line())).findFirst();
        var times = new ArrayList<>(known.map(On::times).orElse(List.of()));
        if (known.isPresent()
                && (!timed
                        || times.contains(move.toStart())
                        || times.size() >= line.get().dose().timesADay())) {
            return false;
        }
        if (timed) {
            times.add(move.toStart());
            times.sort(Comparator.naturalOrder());
        }
        known.ifPresent(target::remove);
        target.add(new On(move.line(), line.get(), times));
        target.sort(BY_TIME);
        leave(there, left.get(), move.start());
        return true;
    }

    private static void leave(List<On> there, On left, LocalTime start) {
        var kept = left.times().stream().filter(time -> !time.equals(start)).toList();
        var at = there.indexOf(left);
        if (kept.isEmpty()) {
            there.remove(at);
        } else {
            there.set(at, new On(left.name(), left.line(), kept));
        }
    }

    /** Whether it was done after all on the day it left, so that the move would double it. */
    private boolean wasDone(ChildId child, String exercise, LocalDate day) {
        return sessions.counting(child, day, day).stream()
                .anyMatch(said ->
                        said.entry().exercise().equals(exercise) && said.entry().outcome() != Outcome.COULD_NOT);
    }
}
