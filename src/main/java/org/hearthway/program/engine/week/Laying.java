package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.Rhythm.Spread;

/**
 * Lays days out anew from one day on, because the program, the family's times or the days away are different from then
 * on. What lies before that day is taken as it is; what lies behind it stays as near to what was planned as it can.
 *
 * <p>A week in which nothing changes is planned once and then repeated. A week with days away, or one that begins in its
 * middle, is planned by itself beside it: an exercise is then asked for as often as falls to the days that are left,
 * rounded to whole days, and never more often than in a whole week.
 */
public final class Laying {

    private static final int WEEK = 7;

    /** Weeks that are looked at one by one at most; what changes later than that changes when it comes. */
    private static final int WEEKS = 60;

    private final LocalDate first;
    private final Function<LocalDate, Standing> standing;
    private final Predicate<LocalDate> away;
    private final Function<LocalDate, List<Placed>> before;
    private final Map<Standing, Layout> steady = new HashMap<>();
    private List<Placed> lastSteady;

    private Laying(
            LocalDate first,
            Function<LocalDate, Standing> standing,
            Predicate<LocalDate> away,
            Function<LocalDate, List<Placed>> before) {
        this.first = first;
        this.standing = standing;
        this.away = away;
        this.before = before;
        this.lastSteady = week(monday(first).plusWeeks(1))
                .flatMap(day -> before.apply(day).stream())
                .toList();
    }

    /**
     * The days from the first on, without end.
     *
     * @param first the first day that may be laid out anew
     * @param horizon the last day on which anything that stands, or whether the child is away, may change
     * @param standing what stands on a day, also on days of that week before the first
     * @param away whether the child is away on a day
     * @param before what was on a day until now, before and behind the first
     */
    public static List<Stretch> from(
            LocalDate first,
            LocalDate horizon,
            Function<LocalDate, Standing> standing,
            Predicate<LocalDate> away,
            Function<LocalDate, List<Placed>> before) {
        return new Laying(first, standing, away, before).stretches(horizon);
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private static Stream<LocalDate> week(LocalDate monday) {
        return IntStream.range(0, WEEK).mapToObj(monday::plusDays);
    }

    private List<Stretch> stretches(LocalDate horizon) {
        var found = new ArrayList<Stretch>();
        var latest = first.plusWeeks(WEEKS);
        var last = monday(horizon.isAfter(latest) ? latest : horizon).plusWeeks(1);
        var sunday = placedOn(first.minusDays(1));
        for (var monday = monday(first); !monday.isAfter(last); monday = monday.plusWeeks(1)) {
            var layout = layout(monday, sunday);
            join(found, monday.isBefore(first) ? first : monday, layout);
            sunday = works(layout.on(DayOfWeek.SUNDAY), standing.apply(monday.plusDays(WEEK - 1)));
        }
        return found;
    }

    /** Begins a stretch, or lets the one before go on. */
    private static void join(List<Stretch> found, LocalDate from, Layout layout) {
        var newest = found.size() - 1;
        if (newest >= 0 && found.get(newest).layout().equals(layout)) {
            return;
        }
        if (newest >= 0) {
            var ended = found.get(newest);
            found.set(newest, new Stretch(ended.from(), Optional.of(from.minusDays(1)), ended.layout()));
        }
        found.add(new Stretch(from, Optional.empty(), layout));
    }

    private Layout layout(LocalDate monday, Set<String> sunday) {
        var days = week(monday).filter(day -> !day.isBefore(first)).toList();
        var last = standing.apply(days.get(days.size() - 1));
        var stands = new Standing(
                last.timed(),
                last.week(),
                last.demands().stream()
                        .filter(demand -> days.stream().anyMatch(demand::holdsOn))
                        .toList());
        var whole = steady(stands);
        var alike = days.stream().allMatch(day -> standing.apply(day).equals(last))
                && days.stream().noneMatch(away)
                && stands.demands().stream().allMatch(demand -> days.stream().allMatch(demand::holdsOn));
        if (alike && whole.kind() == Layout.Kind.AS_WRITTEN) {
            return whole;
        }
        if (alike && days.size() == WEEK && !meets(works(whole.on(DayOfWeek.MONDAY), stands), sunday)) {
            return whole;
        }
        if (days.stream().noneMatch(away) && days.stream().map(standing).allMatch(Standing::isWritten)) {
            return written(stands);
        }
        return pieced(monday, days, whole, sunday);
    }

    private static boolean meets(Set<String> some, Set<String> others) {
        return some.stream().anyMatch(others::contains);
    }

    /** The week in which nothing changes. */
    private Layout steady(Standing stands) {
        var known = steady.get(stands);
        if (known == null) {
            known = stands.isWritten()
                    ? written(stands)
                    : planned(
                            stands,
                            WeekPlanner.plan(
                                    stands.week(),
                                    stands.demands().stream().map(Demand::ask).toList(),
                                    lastSteady));
            steady.put(stands, known);
            lastSteady = known.placed();
        }
        return known;
    }

    private static Layout planned(Standing stands, WeekPlan plan) {
        return new Layout(
                stands.kind(),
                plan.placed(),
                asked(stands),
                stands.week(),
                plan.unfit().stream().map(Layout.Out::of).toList());
    }

    private static Set<String> asked(Standing stands) {
        return stands.demands().stream().map(demand -> demand.ask().exercise()).collect(Collectors.toSet());
    }

    private static Layout written(Standing stands) {
        var placed = stands.demands().stream()
                .flatMap(demand -> demand.ask().days().stream()
                        .map(day -> new Placed(demand.ask().exercise(), day, LocalTime.MIDNIGHT)))
                .toList();
        return Layout.asWritten(placed, asked(stands));
    }

    /** A week that is unlike others: piece by piece, each piece knowing what lies before it. */
    private Layout pieced(LocalDate monday, List<LocalDate> days, Layout whole, Set<String> sunday) {
        var stands = standing.apply(days.get(days.size() - 1));
        var slots = new ArrayList<FamilyWeek.Slot>();
        var placed = new ArrayList<Placed>();
        week(monday).filter(day -> day.isBefore(first)).forEach(day -> placed.addAll(before.apply(day)));
        var past = placed.size();
        var out = new ArrayList<Layout.Out>();
        var asked = new HashSet<String>();
        for (int i = 0; i < days.size(); ) {
            var piece = piece(days, i);
            var there = standing.apply(piece.get(0));
            asked.addAll(asked(there));
            var open = EnumSet.noneOf(DayOfWeek.class);
            piece.stream().filter(away.negate()).forEach(day -> open.add(day.getDayOfWeek()));
            var last = monday.isBefore(first)
                    ? piece.stream().flatMap(day -> before.apply(day).stream()).toList()
                    : whole.placed();
            var asks = asks(piece, placed, whole, sunday, last);
            var free = there.week().withoutDays(EnumSet.complementOf(open));
            slots.addAll(free.slots());
            var plan = WeekPlanner.plan(free, asks, last);
            placed.addAll(plan.placed());
            plan.unfit().forEach(unfit -> out.add(Layout.Out.of(unfit)));
            i += piece.size();
        }
        return new Layout(
                stands.kind(),
                placed.subList(past, placed.size()),
                asked,
                new FamilyWeek(slots, stands.week().most()),
                out);
    }

    private List<LocalDate> piece(List<LocalDate> days, int from) {
        var stands = standing.apply(days.get(from));
        return days.subList(from, days.size()).stream()
                .takeWhile(day -> standing.apply(day).equals(stands))
                .toList();
    }

    private List<Ask> asks(
            List<LocalDate> piece, List<Placed> placed, Layout whole, Set<String> sunday, List<Placed> last) {
        var asks = new ArrayList<Ask>();
        var begin = piece.get(0);
        var stands = standing.apply(begin);
        var end = piece.get(piece.size() - 1);
        var ahead =
                end.getDayOfWeek() == DayOfWeek.SUNDAY ? works(whole.on(DayOfWeek.MONDAY), stands) : Set.<String>of();
        var behind = begin.getDayOfWeek() == DayOfWeek.MONDAY
                ? sunday
                : works(on(placed, begin.getDayOfWeek().minus(1)), standing.apply(begin.minusDays(1)));
        for (var demand : stands.demands()) {
            var days = EnumSet.noneOf(DayOfWeek.class);
            piece.stream().filter(away.negate()).filter(demand::isOn).forEach(day -> days.add(day.getDayOfWeek()));
            var rests = needsRest(demand.ask());
            if (meets(rests, behind)) {
                days.remove(begin.getDayOfWeek());
            }
            if (meets(rests, ahead)) {
                days.remove(DayOfWeek.SUNDAY);
            }
            var often = Math.min(days.size(), often(piece, demand, placed, last));
            if (often > 0) {
                asks.add(fewer(demand.ask(), days, often));
            }
        }
        return asks;
    }

    /** On how many days of the piece it is asked for: its share, or more where it was on more of them. */
    private int often(List<LocalDate> piece, Demand demand, List<Placed> placed, List<Placed> last) {
        var ask = demand.ask();
        var had = (int) placed.stream()
                .filter(one -> one.exercise().equals(ask.exercise()))
                .map(Placed::day)
                .distinct()
                .count();
        if (demand.isFixed()) {
            return ask.rhythm().days();
        }
        var left = (int)
                piece.stream().filter(away.negate()).filter(demand::holdsOn).count();
        var share = (2 * ask.rhythm().days() * left + WEEK) / (2 * WEEK);
        var planned = piece.stream()
                .filter(day -> on(last, day.getDayOfWeek()).stream()
                        .anyMatch(one -> one.exercise().equals(ask.exercise())))
                .toList();
        var kept = (int) planned.stream().filter(away.negate()).count();
        // one that falls on a day away finds another day; more of them would crowd the days that are left
        return Math.min(
                ask.rhythm().days() - had, Math.max(kept, Math.max(share, Math.min(planned.size(), share + 1))));
    }

    private static Ask fewer(Ask ask, Set<DayOfWeek> days, int often) {
        var spread = ask.rhythm().spread();
        var rhythm = often == ask.rhythm().days()
                ? ask.rhythm()
                : new Rhythm(
                        often,
                        switch (spread) {
                            case DAILY, ANY -> Spread.ANY;
                            case ALTERNATE, NOT_FOLLOWING -> Spread.NOT_FOLLOWING;
                        });
        return new Ask(
                ask.exercise(),
                ask.priority(),
                ask.minutes(),
                ask.timesADay(),
                rhythm,
                days,
                ask.muscles(),
                ask.phase(),
                ask.equipment(),
                ask.helpers());
    }

    /** What has to rest between two days of it: its muscles, and itself when its days must lie apart. */
    private static Set<String> needsRest(Ask ask) {
        var rests = new HashSet<>(ask.muscles());
        if (ask.rhythm().spread() == Spread.NOT_FOLLOWING || ask.rhythm().spread() == Spread.ALTERNATE) {
            rests.add(itself(ask));
        }
        return rests;
    }

    private static String itself(Ask ask) {
        return "=" + ask.exercise();
    }

    private Set<String> placedOn(LocalDate day) {
        return works(before.apply(day), standing.apply(day));
    }

    private static List<Placed> on(List<Placed> placed, DayOfWeek day) {
        return placed.stream().filter(one -> one.day() == day).toList();
    }

    /** What was worked by the exercises of a day and wants rest on the next. */
    private static Set<String> works(List<Placed> placed, Standing stands) {
        return stands.demands().stream()
                .map(Demand::ask)
                .filter(ask -> placed.stream().anyMatch(one -> one.exercise().equals(ask.exercise())))
                .flatMap(ask -> needsRest(ask).stream())
                .collect(Collectors.toSet());
    }
}
