package org.hearthway.family;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.program.FamilyTimes.Busy;
import org.hearthway.program.FamilyTimes.Slot;

/** The same time on several days, as a family enters it: for exercises, or taken up by something. Changes while it is edited. */
final class WeekBlock {

    static final int USUAL_MINUTES = 20;

    private final Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    private final Set<String> helpers = new LinkedHashSet<>();
    private Optional<LocalTime> start;
    private Optional<LocalTime> end = Optional.empty();
    private int minutes;
    private String what = "";

    private WeekBlock(Optional<LocalTime> start, int minutes) {
        this.start = start;
        this.minutes = minutes;
    }

    /** A time for exercises. */
    static WeekBlock time(LocalTime start, int minutes, Set<DayOfWeek> days, List<String> helpers) {
        var block = new WeekBlock(Optional.of(start), minutes);
        block.days.addAll(days);
        block.helpers.addAll(helpers);
        return block;
    }

    /** School, a club. */
    static WeekBlock busy(LocalTime from, LocalTime until, Set<DayOfWeek> days, String what) {
        var block = new WeekBlock(Optional.of(from), 0);
        block.end = Optional.of(until);
        block.days.addAll(days);
        block.what = what;
        return block;
    }

    /** Times that are alike on several days, put together. */
    static List<WeekBlock> times(List<Slot> slots) {
        var blocks = new ArrayList<WeekBlock>();
        for (var slot : slots) {
            var same = blocks.stream()
                    .filter(block -> block.start.filter(slot.start()::equals).isPresent()
                            && block.minutes == slot.minutes()
                            && block.helpers.equals(Set.copyOf(slot.helpers())))
                    .findFirst();
            if (same.isPresent()) {
                same.get().days.add(slot.day());
            } else {
                blocks.add(time(slot.start(), slot.minutes(), EnumSet.of(slot.day()), slot.helpers()));
            }
        }
        return blocks;
    }

    /** What takes up the same time on several days, put together. */
    static List<WeekBlock> busy(List<Busy> all) {
        var blocks = new ArrayList<WeekBlock>();
        for (var one : all) {
            var same = blocks.stream()
                    .filter(block -> block.start.filter(one.from()::equals).isPresent()
                            && block.end.filter(one.until()::equals).isPresent()
                            && block.what.equals(one.what()))
                    .findFirst();
            if (same.isPresent()) {
                same.get().days.add(one.day());
            } else {
                blocks.add(busy(one.from(), one.until(), EnumSet.of(one.day()), one.what()));
            }
        }
        return blocks;
    }

    /** The times of the days; nothing while the start is open. */
    List<Slot> slots() {
        return start.stream()
                .flatMap(from -> days.stream().map(day -> new Slot(day, from, minutes, List.copyOf(helpers))))
                .toList();
    }

    /** What is taken up on the days; nothing while start or end is open. */
    List<Busy> busy() {
        return start.stream()
                .flatMap(from -> end.stream()
                        .flatMap(until -> days.stream().map(day -> new Busy(day, from, until, what.strip()))))
                .toList();
    }

    static Set<DayOfWeek> schoolDays() {
        return EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    }

    static Set<DayOfWeek> weekend() {
        return EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
    }

    static Set<DayOfWeek> everyDay() {
        return EnumSet.copyOf(Arrays.asList(DayOfWeek.values()));
    }

    Set<DayOfWeek> days() {
        return days;
    }

    void on(DayOfWeek day, boolean there) {
        if (there) {
            days.add(day);
        } else {
            days.remove(day);
        }
    }

    Set<String> helpers() {
        return helpers;
    }

    void with(String helper, boolean there) {
        if (there) {
            helpers.add(helper);
        } else {
            helpers.remove(helper);
        }
    }

    Optional<LocalTime> start() {
        return start;
    }

    void startsAt(Optional<LocalTime> time) {
        start = time;
    }

    Optional<LocalTime> end() {
        return end;
    }

    void endsAt(Optional<LocalTime> time) {
        end = time;
    }

    int minutes() {
        return minutes;
    }

    void takes(int longer) {
        minutes = longer;
    }

    String what() {
        return what;
    }

    void isFor(String words) {
        what = words;
    }
}
