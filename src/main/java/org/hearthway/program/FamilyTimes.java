package org.hearthway.program;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.week.FamilyWeek;
import org.hearthway.program.engine.week.Layout;

/**
 * When a family can do exercises, and when not. The program is laid out over these times; a family that has named none
 * sees its exercises by day. The family writes them, or the team on its behalf.
 */
public interface FamilyTimes {

    /** Minutes of a time at most, and of a day. */
    int LONGEST = 240;

    /** Times on one day at most. */
    int TIMES_A_DAY = 6;

    /** What is taken up by school and clubs, entries at most. */
    int BUSY = 40;

    /** People who help in one time at most. */
    int HELPERS = 4;

    /** Characters of a name at most. */
    int NAME = 40;

    /** Days ahead that may be named at most. */
    int DAYS_AHEAD = 400;

    /**
     * A time for exercises.
     *
     * @param day weekday
     * @param start when it begins
     * @param minutes 5 to 240, within the day
     * @param helpers who is there to help, by the names the family uses; empty when the child is alone
     */
    record Slot(DayOfWeek day, LocalTime start, int minutes, List<String> helpers) {
        public Slot {
            helpers = List.copyOf(helpers);
        }

        /** When it ends; the first minute that does not belong to it. */
        public LocalTime end() {
            return start.plusMinutes(minutes);
        }
    }

    /**
     * School, a club, a way there.
     *
     * @param day weekday
     * @param from its start
     * @param until its end, after its start
     * @param what in a word or two, at most 40 characters
     */
    record Busy(DayOfWeek day, LocalTime from, LocalTime until, String what) {}

    /**
     * A family's week.
     *
     * @param slots times for exercises; empty when the family names none
     * @param busy what takes up time
     * @param most minutes of exercises on a day at most, 5 to 240; empty for no bound but the times
     */
    record Times(List<Slot> slots, List<Busy> busy, Optional<Integer> most) {

        /** No times at all. */
        public static final Times NONE = new Times(List.of(), List.of(), Optional.empty());

        private static final int SHORTEST = 5;

        public Times {
            slots = slots.stream()
                    .sorted(Comparator.comparing(Slot::day).thenComparing(Slot::start))
                    .toList();
            busy = busy.stream()
                    .sorted(Comparator.comparing(Busy::day).thenComparing(Busy::from))
                    .toList();
        }

        /** The times less what is taken up; pieces of less than five minutes are no time for anything. */
        public List<Slot> free() {
            var left = slots;
            for (var one : busy) {
                left = left.stream().flatMap(slot -> cut(slot, one).stream()).toList();
            }
            return left;
        }

        /** Minutes that are free for exercises on a weekday. */
        public int minutesOn(DayOfWeek day) {
            var minutes = free().stream()
                    .filter(slot -> slot.day() == day)
                    .mapToInt(Slot::minutes)
                    .sum();
            return Math.min(minutes, most.orElse(minutes));
        }

        /** Minutes of a whole week. */
        public int minutesAWeek() {
            return java.util.Arrays.stream(DayOfWeek.values())
                    .mapToInt(this::minutesOn)
                    .sum();
        }

        private static List<Slot> cut(Slot slot, Busy busy) {
            var one = new FamilyWeek.Slot(slot.day(), slot.start(), slot.minutes(), java.util.Set.of());
            return new FamilyWeek(List.of(one), java.util.Map.of())
                            .without(List.of(new FamilyWeek.Busy(busy.day(), busy.from(), busy.until())), SHORTEST)
                            .slots()
                            .stream()
                            .map(piece -> new Slot(piece.day(), piece.start(), piece.minutes(), slot.helpers()))
                            .toList();
        }
    }

    /**
     * A family's week as it was saved.
     *
     * @param number 1, 2, 3 …
     * @param effective first day that is laid out by it
     * @param by name of who saved it
     * @param onBehalf whether that was somebody of the team, for the family
     */
    record Version(int number, LocalDate effective, Times times, String by, boolean onBehalf, Instant at) {}

    /** Why a child is away. */
    enum Reason {
        HOLIDAY,
        ILL,
        OTHER_HOME,
        OTHER
    }

    /**
     * Days on which a child is away, and nothing is planned.
     *
     * @param key made by who says it, so that the same thing sent twice counts once
     * @param first first day
     * @param last last day, included
     * @param by name of who said it
     */
    record Away(UUID key, LocalDate first, LocalDate last, Reason reason, String by, boolean onBehalf) {}

    /**
     * What of the program finds no place in weeks to come.
     *
     * @param from first day of these weeks, not before today
     * @param until last day; empty for open end
     * @param version of the program that it is about
     * @param out exercises with what did not fit; empty when all does
     */
    record Fit(LocalDate from, Optional<LocalDate> until, int version, List<Out> out) {
        public Fit {
            out = List.copyOf(out);
        }
    }

    /**
     * An exercise that did not fit whole.
     *
     * @param exercise which
     * @param out how often, why, and what would make room
     * @param instead the exercise that would have to go for it, where that is a way
     */
    record Out(Exercise exercise, Layout.Out out, Optional<Exercise> instead) {}

    /**
     * A session of a week that is only tried out.
     *
     * @param start when it begins; empty where the family has named no times
     * @param line its line, counted from 0
     */
    record Tried(DayOfWeek day, Optional<LocalTime> start, int line) {}

    /**
     * A week that is only tried out.
     *
     * @param sessions by day and time
     * @param out what did not fit whole
     */
    record Trial(List<Tried> sessions, List<Out> out) {
        public Trial {
            sessions = List.copyOf(sessions);
            out = List.copyOf(out);
        }
    }

    /**
     * How a program's first week would lie if these were its lines, near to the week as it is; nothing is kept. Empty when
     * the lines themselves name every day and the family has named no times.
     *
     * @param first first day of that week
     * @param lines sound ones
     */
    Optional<Trial> tryOut(Viewer viewer, ChildId child, LocalDate first, List<ProgramLine> lines);

    /** The family's week as it is now; empty when nobody has named any. */
    Optional<Version> latest(Viewer viewer, ChildId child);

    /** Every version, newest first; for the team. */
    List<Version> history(Viewer viewer, ChildId child);

    /**
     * Saves a family's week. It holds from today on, or from tomorrow when something was said of today already.
     *
     * @param seen number of the version that the person saw, 0 for none
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else saved in between
     */
    Version save(Viewer viewer, ChildId child, Times times, int seen);

    /** The days away that are not over, the next first. */
    List<Away> away(Viewer viewer, ChildId child);

    /**
     * Says that the child is away from a day on, today at the earliest.
     *
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     */
    void goAway(Viewer viewer, ChildId child, UUID key, LocalDate first, LocalDate last, Reason reason);

    /** Says that the child is back: days from today on are planned again. */
    void comeBack(Viewer viewer, ChildId child, UUID key);

    /**
     * What does not fit into the family's times in the week of a day, days away aside. Empty when nothing is laid out by
     * times or all fits.
     */
    Optional<Fit> fit(Viewer viewer, ChildId child, LocalDate day);
}
