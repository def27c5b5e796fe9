package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.hearthway.program.engine.week.FamilyWeek.Slot;

/** A week with what lies in it, to ask whether something more may lie there. */
final class Board {

    private final FamilyWeek week;
    private final List<Ask> asks;
    private final List<Placed> placed;

    Board(FamilyWeek week, Collection<Ask> asks, Collection<Placed> placed) {
        this.week = week;
        this.asks = List.copyOf(asks);
        this.placed = new ArrayList<>(placed);
    }

    FamilyWeek week() {
        return week;
    }

    void put(Placed one) {
        placed.add(one);
    }

    /** How often the exercise lies in the week. */
    int count(Ask ask) {
        return (int) placed.stream()
                .filter(one -> one.exercise().equals(ask.exercise()))
                .count();
    }

    /** How often it lies on the day. */
    int count(Ask ask, DayOfWeek day) {
        return (int) placed.stream()
                .filter(one -> one.exercise().equals(ask.exercise()) && one.day() == day)
                .count();
    }

    /** Whether it lies in that time already. */
    boolean holds(Ask ask, Slot slot) {
        return in(slot).contains(ask);
    }

    /** What lies in that time. */
    List<Ask> in(Slot slot) {
        return asks.stream()
                .filter(ask -> placed.contains(new Placed(ask.exercise(), slot.day(), slot.start())))
                .toList();
    }

    /** Minutes that are left in that time, also by the bound of its day. */
    int room(Slot slot) {
        var inSlot = in(slot).stream().mapToInt(Ask::minutes).sum();
        var onDay = asks.stream()
                .mapToInt(ask -> ask.minutes() * count(ask, slot.day()))
                .sum();
        return Math.min(slot.minutes() - inSlot, week.minutesOn(slot.day()) - onDay);
    }

    /** Whether one time more may be on that day by the rules of days, whatever room there is. */
    boolean mayBeOn(Ask ask, DayOfWeek day) {
        if (count(ask, day) > 0) {
            return count(ask, day) < ask.timesADay();
        }
        var days = days(ask);
        days.add(day);
        return ask.allows(days) && !isResting(ask, day);
    }

    /** Whether muscles of the exercise are made stronger on the day before or after. */
    boolean isResting(Ask ask, DayOfWeek day) {
        return works(ask, day.plus(1)) || works(ask, day.minus(1));
    }

    /** Whether muscles of the exercise are made stronger on that day, by whichever exercise. */
    boolean works(Ask ask, DayOfWeek day) {
        return asks.stream()
                .filter(other -> other.muscles().stream().anyMatch(ask.muscles()::contains))
                .anyMatch(other -> count(other, day) > 0);
    }

    private Set<DayOfWeek> days(Ask ask) {
        var days = EnumSet.noneOf(DayOfWeek.class);
        placed.stream().filter(one -> one.exercise().equals(ask.exercise())).forEach(one -> days.add(one.day()));
        return days;
    }
}
