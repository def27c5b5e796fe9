package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.week.FamilyWeek.Slot;
import org.hearthway.program.engine.week.WeekPlan.Session;

/**
 * Lays a program's exercises out over a family's week, as {@link WeekCost} wants it and never against what must hold: a
 * time holds no more than its minutes and a day no more than its bound; an exercise is in a time once, on a day so often
 * as asked and on so many days as asked, which lie as its rhythm says; whose hands it needs is there; and muscles that
 * were made stronger on one day rest on the next, Monday after Sunday too.
 */
public final class WeekPlanner {

    /** Exercises of one week at most. */
    public static final int MOST = 60;

    /** Steps for each aim; a family's week mostly takes far fewer. */
    private static final int LIMIT = 40_000;

    private WeekPlanner() {}

    /**
     * The week. The order in which things are given does not matter.
     *
     * @param week the family's times
     * @param asks what the program asks for, at most {@link #MOST}, no exercise twice
     * @param last where the exercises were last week; empty for a first week
     */
    public static WeekPlan plan(FamilyWeek week, Collection<Ask> asks, Collection<Placed> last) {
        if (asks.stream().map(Ask::exercise).distinct().count() < asks.size() || asks.size() > MOST) {
            throw new IllegalArgumentException("each exercise once, at most " + MOST);
        }
        return inOrder(
                week, asks.stream().sorted(Comparator.comparing(Ask::exercise)).toList(), last);
    }

    private static WeekPlan inOrder(FamilyWeek week, List<Ask> asks, Collection<Placed> last) {
        var items = items(week, asks, last);
        var effort = new Effort();
        var days = Arrays.stream(DayOfWeek.values())
                .map(day -> new DayFit(
                        items,
                        Item.at(day),
                        week.on(day).stream().mapToInt(Slot::minutes).toArray(),
                        week.minutesOn(day),
                        effort))
                .toArray(DayFit[]::new);
        var capacity = Arrays.stream(DayOfWeek.values())
                .mapToInt(day -> capacity(week, day, asks))
                .toArray();
        var search = new WeekSearch(items, days, capacity, groups(asks).size(), LIMIT, effort);
        var proved = search.run();
        var placed = placed(week, items, search.days());
        return new WeekPlan(
                sessions(week, asks, placed),
                new Unfits(week, asks, placed).all(),
                WeekCost.of(asks, last, placed),
                proved);
    }

    /** Minutes of the day that can be filled at most, exercises being whole. */
    private static int capacity(FamilyWeek week, DayOfWeek day, Collection<Ask> asks) {
        var times = week.on(day).stream()
                .mapToInt(slot -> {
                    var sums = new BitSet();
                    sums.set(0);
                    asks.stream().filter(ask -> ask.fits(slot)).forEach(ask -> {
                        for (int sum = slot.minutes() - ask.minutes(); sum >= 0; sum--) {
                            if (sums.get(sum)) {
                                sums.set(sum + ask.minutes());
                            }
                        }
                    });
                    return sums.length() - 1;
                })
                .sum();
        return Math.min(times, week.minutesOn(day));
    }

    private static List<String> groups(Collection<Ask> asks) {
        var groups = new TreeSet<String>();
        asks.forEach(ask -> groups.addAll(ask.muscles()));
        return List.copyOf(groups);
    }

    /** All of an earlier priority first, then what has fewest days to choose from, then what takes longest. */
    private static Item[] items(FamilyWeek week, Collection<Ask> asks, Collection<Placed> last) {
        var groups = groups(asks);
        var things = List.copyOf(asks.stream()
                .map(Ask::equipment)
                .filter(thing -> !thing.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new)));
        var before = new HashSet<>(last);
        var firsts = asks.stream()
                .map(ask -> item(week, ask, before, things, groups))
                .sorted(Comparator.<Item, Priority>comparing(item -> item.ask().priority())
                        .thenComparingInt(item -> item.patterns().length)
                        .thenComparingInt(item -> -item.ask().minutesAWeek())
                        .thenComparing(item -> item.ask().exercise()))
                .toList();
        var all = new ArrayList<Item>();
        for (var first : firsts) {
            for (int copy = 0; copy < first.ask().timesADay(); copy++) {
                all.add(copy == 0 ? first : first.again(copy));
            }
        }
        return all.toArray(Item[]::new);
    }

    private static Item item(FamilyWeek week, Ask ask, Set<Placed> before, List<String> things, List<String> groups) {
        var days = DayOfWeek.values();
        var slots = new int[days.length];
        var hadSlots = new int[days.length];
        var had = 0;
        for (var day : days) {
            var times = week.on(day);
            slots[Item.at(day)] = bits(times.size(), i -> ask.fits(times.get(i)));
            hadSlots[Item.at(day)] = bits(
                    times.size(),
                    i -> before.contains(
                            new Placed(ask.exercise(), day, times.get(i).start())));
            had |= before.stream().anyMatch(one -> one.exercise().equals(ask.exercise()) && one.day() == day)
                    ? 1 << Item.at(day)
                    : 0;
        }
        return new Item(
                ask,
                0,
                Item.patterns(ask, 0, slots),
                slots,
                had,
                hadSlots,
                things.indexOf(ask.equipment()),
                ask.muscles().stream().mapToInt(groups::indexOf).sorted().toArray());
    }

    private static int bits(int count, IntPredicate test) {
        return IntStream.range(0, count).filter(test).map(i -> 1 << i).sum();
    }

    private static List<Placed> placed(FamilyWeek week, Item[] items, DayFit[] days) {
        var placed = new ArrayList<Placed>();
        for (var day : DayOfWeek.values()) {
            var fit = days[Item.at(day)];
            var there = fit.items();
            var places = fit.settledPlaces();
            for (int i = 0; i < there.length; i++) {
                placed.add(new Placed(
                        items[there[i]].ask().exercise(),
                        day,
                        week.on(day).get(places[i]).start()));
            }
        }
        return placed;
    }

    private static List<Session> sessions(FamilyWeek week, Collection<Ask> asks, List<Placed> placed) {
        var sessions = new ArrayList<Session>();
        for (var slot : week.slots()) {
            var there = asks.stream()
                    .filter(ask -> placed.contains(new Placed(ask.exercise(), slot.day(), slot.start())))
                    .toList();
            if (!there.isEmpty()) {
                var order = SessionOrder.of(there);
                sessions.add(new Session(slot, order.exercises(), order.changes()));
            }
        }
        return sessions;
    }
}
