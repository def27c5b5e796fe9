package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.program.engine.Priority;

/**
 * What the planner makes small. The aims stand in order: nothing of an earlier one is given up for a later one, so a week
 * is better than another when the first number that differs is smaller.
 *
 * <ol>
 *   <li>minutes of the first priority that do not fit,
 *   <li>of the second;
 *   <li>days on which an exercise was last week and no longer is;
 *   <li>times that are new to an exercise on a day which it keeps;
 *   <li>minutes of the third priority that do not fit, for which no week is turned over;
 *   <li>minutes of the longest day, counted in steps of five;
 *   <li>days of one exercise that follow each other though so few need not;
 *   <li>how often another piece of equipment is fetched within a time.
 * </ol>
 *
 * @param aims the eight numbers, in that order
 */
public record WeekCost(List<Integer> aims) implements Comparable<WeekCost> {

    /** How many aims there are. */
    public static final int AIMS = 8;

    /** Days that are alike by less are alike. */
    static final int STEP = 5;

    public WeekCost {
        aims = List.copyOf(aims);
    }

    /** Minutes of that priority that do not fit. */
    public int missing(Priority priority) {
        return aims.get(
                switch (priority) {
                    case FIRST -> 0;
                    case SECOND -> 1;
                    case THIRD -> 4;
                });
    }

    @Override
    public int compareTo(WeekCost other) {
        for (int i = 0; i < aims.size(); i++) {
            if (!aims.get(i).equals(other.aims.get(i))) {
                return Integer.compare(aims.get(i), other.aims.get(i));
            }
        }
        return 0;
    }

    /** Days of one exercise next to each other, less those that so many days cannot do without. */
    static int bunched(Set<DayOfWeek> days) {
        var pairs =
                (int) days.stream().filter(day -> days.contains(day.plus(1))).count();
        return pairs - Math.max(0, 2 * days.size() - DayOfWeek.values().length);
    }

    /**
     * What a week costs.
     *
     * @param asks what was asked for
     * @param last where the exercises were last week; empty for a first week
     * @param placed where they are
     */
    public static WeekCost of(Collection<Ask> asks, Collection<Placed> last, Collection<Placed> placed) {
        var byName = asks.stream().collect(Collectors.toMap(Ask::exercise, ask -> ask));
        var aims = new ArrayList<Integer>();
        aims.add(missing(Priority.FIRST, asks, placed));
        aims.add(missing(Priority.SECOND, asks, placed));
        var was = days(last);
        var is = days(placed);
        aims.add(byName.keySet().stream()
                .mapToInt(name -> {
                    var left = EnumSet.noneOf(DayOfWeek.class);
                    left.addAll(was.getOrDefault(name, Set.of()));
                    left.removeAll(is.getOrDefault(name, Set.of()));
                    return left.size();
                })
                .sum());
        var before = new HashSet<>(last);
        aims.add((int) placed.stream()
                .filter(one -> was.getOrDefault(one.exercise(), Set.of()).contains(one.day()) && !before.contains(one))
                .count());
        aims.add(missing(Priority.THIRD, asks, placed));
        aims.add(longest(byName, placed));
        aims.add(is.values().stream().mapToInt(WeekCost::bunched).sum());
        aims.add(
                placed.stream().collect(Collectors.groupingBy(one -> List.of(one.day(), one.start()))).values().stream()
                        .mapToInt(session -> SessionOrder.of(session.stream()
                                        .map(one -> byName.get(one.exercise()))
                                        .toList())
                                .changes())
                        .sum());
        return new WeekCost(aims);
    }

    private static int missing(Priority priority, Collection<Ask> asks, Collection<Placed> placed) {
        return asks.stream()
                .filter(ask -> ask.priority() == priority)
                .mapToInt(ask -> ask.minutesAWeek()
                        - ask.minutes()
                                * (int) placed.stream()
                                        .filter(one -> one.exercise().equals(ask.exercise()))
                                        .count())
                .sum();
    }

    private static int longest(Map<String, Ask> asks, Collection<Placed> placed) {
        var minutes = new EnumMap<DayOfWeek, Integer>(DayOfWeek.class);
        for (var one : placed) {
            var ask = asks.get(one.exercise());
            minutes.merge(one.day(), ask == null ? 0 : ask.minutes(), Integer::sum);
        }
        return steps(minutes.values().stream().max(Comparator.naturalOrder()).orElse(0));
    }

    /** Minutes in steps of five, begun ones counted whole. */
    static int steps(int minutes) {
        return (minutes + STEP - 1) / STEP;
    }

    private static Map<String, Set<DayOfWeek>> days(Collection<Placed> placed) {
        var days = new HashMap<String, Set<DayOfWeek>>();
        placed.forEach(one -> days.computeIfAbsent(one.exercise(), name -> EnumSet.noneOf(DayOfWeek.class))
                .add(one.day()));
        return days;
    }
}
