package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The times that a family has for exercises.
 *
 * @param slots by day and start; no two overlap
 * @param most minutes of exercises on a day at most; a day that is not named has no bound but its times
 */
public record FamilyWeek(List<Slot> slots, Map<DayOfWeek, Integer> most) {

    private static final Comparator<Slot> IN_ORDER =
            Comparator.comparing(Slot::day).thenComparing(Slot::start);

    public FamilyWeek {
        slots = slots.stream().sorted(IN_ORDER).toList();
        most = Map.copyOf(most);
        for (int i = 1; i < slots.size(); i++) {
            var before = slots.get(i - 1);
            if (before.day() == slots.get(i).day()
                    && minute(before.start()) + before.minutes()
                            > minute(slots.get(i).start())) {
                throw new IllegalArgumentException("times overlap");
            }
        }
    }

    /**
     * A time for exercises.
     *
     * @param day weekday
     * @param start when it begins
     * @param minutes how long it is, at least 1
     * @param helpers who is there to help
     */
    public record Slot(DayOfWeek day, LocalTime start, int minutes, Set<String> helpers) {
        public Slot {
            if (minutes < 1) {
                throw new IllegalArgumentException("at least a minute");
            }
            helpers = Set.copyOf(helpers);
        }
    }

    /**
     * A part of a day in which something else is: school, a club, being away.
     *
     * @param from its start
     * @param until its end, which does not belong to it
     */
    public record Busy(DayOfWeek day, LocalTime from, LocalTime until) {}

    /** The same week without what is taken up; a time that is cut leaves the pieces of at least {@code shortest} minutes. */
    public FamilyWeek without(Collection<Busy> busy, int shortest) {
        var left = slots;
        for (var one : busy) {
            left = left.stream()
                    .flatMap(slot -> cut(slot, one, shortest).stream())
                    .toList();
        }
        return new FamilyWeek(left, most);
    }

    /** The same week without these days: away, ill, a holiday. */
    public FamilyWeek withoutDays(Set<DayOfWeek> away) {
        return new FamilyWeek(
                slots.stream().filter(slot -> !away.contains(slot.day())).toList(), most);
    }

    /** The times of a day, in order. */
    public List<Slot> on(DayOfWeek day) {
        return slots.stream().filter(slot -> slot.day() == day).toList();
    }

    /** The time that begins then. */
    public Optional<Slot> at(DayOfWeek day, LocalTime start) {
        return slots.stream()
                .filter(slot -> slot.day() == day && slot.start().equals(start))
                .findFirst();
    }

    /** Minutes that a day has at most, by its times and its own bound. */
    int minutesOn(DayOfWeek day) {
        var times = on(day).stream().mapToInt(Slot::minutes).sum();
        return Math.min(times, Math.max(0, most.getOrDefault(day, times)));
    }

    private static List<Slot> cut(Slot slot, Busy busy, int shortest) {
        var start = minute(slot.start());
        var end = start + slot.minutes();
        var from = minute(busy.from());
        var until = minute(busy.until());
        if (slot.day() != busy.day() || until <= start || from >= end) {
            return List.of(slot);
        }
        var pieces = new ArrayList<Slot>();
        if (from - start >= Math.max(1, shortest)) {
            pieces.add(new Slot(slot.day(), slot.start(), from - start, slot.helpers()));
        }
        if (end - until >= Math.max(1, shortest)) {
            pieces.add(new Slot(slot.day(), busy.until(), end - until, slot.helpers()));
        }
        return pieces;
    }

    private static int minute(LocalTime time) {
        return time.getHour() * 60 + time.getMinute();
    }
}
