package org.hearthway.program;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.program.engine.ProgramLine;

/** What a family does on which day, and what it did. */
public interface HomeWeek {

    /** How a session went. */
    enum Outcome {
        DONE,
        SOME,
        COULD_NOT
    }

    /** Why it could not be. */
    enum Reason {
        TIRED,
        PAIN,
        ILL,
        NO_TIME,
        DID_NOT_WANT,
        OTHER;

        /** Ill, or stopped because it hurt, as families are told to: nobody's lack of zeal. Common practice, no source. */
        public boolean isGood() {
            return switch (this) {
                case ILL, PAIN -> true;
                case TIRED, NO_TIME, DID_NOT_WANT, OTHER -> false;
            };
        }
    }

    /** Who says how much it hurt or how hard it was. */
    enum RatedBy {
        CHILD,
        ADULT
    }

    /**
     * What a family says of one exercise on one day.
     *
     * @param key made on the phone, so that the same tick sent twice counts once
     * @param exercise identifier in the library
     * @param day the day it was for
     * @param outcome how it went
     * @param reason why it could not be, with {@link Outcome#COULD_NOT}
     * @param effort 0 to 10
     * @param pain 0 to 10
     * @param ratedBy who rated, when effort or pain is given
     * @param note at most 2000 characters, may be empty
     */
    record Entry(
            UUID key,
            String exercise,
            LocalDate day,
            Outcome outcome,
            Optional<Reason> reason,
            Optional<Integer> effort,
            Optional<Integer> pain,
            Optional<RatedBy> ratedBy,
            String note) {}

    /** An entry as it was kept. A later entry for the same exercise and day supersedes it; none is altered. */
    record Logged(Entry entry, String by, Instant at) {}

    /**
     * One exercise of a day, with what was said of it.
     *
     * @param minutes of the whole day
     * @param times when it is done, as many as it is done a day; empty where the family has named no times
     */
    record Planned(Exercise exercise, ProgramLine line, int minutes, Optional<Logged> logged, List<LocalTime> times) {
        public Planned {
            times = List.copyOf(times);
        }

        /** Without times. */
        public Planned(Exercise exercise, ProgramLine line, int minutes, Optional<Logged> logged) {
            this(exercise, line, minutes, logged, List.of());
        }
    }

    /**
     * One of the family's times in which something is planned.
     *
     * @param start when it begins
     * @param minutes how long it is
     * @param helpers who is there to help; empty when nobody is
     */
    record Time(LocalTime start, int minutes, List<String> helpers) {
        public Time {
            helpers = List.copyOf(helpers);
        }
    }

    /**
     * A session that the family moved within its week, told on the day it left and on the day it went to.
     *
     * @param key by which it is taken back
     * @param start its new time; empty where the week has none
     */
    record Moved(UUID key, Exercise exercise, LocalDate from, LocalDate to, Optional<LocalTime> start) {}

    /**
     * One day.
     *
     * @param planned in the order in which it is done
     * @param times the family's times of the day in which something is planned; empty where it has named none
     * @param moved what was moved away from this day or to it
     */
    record Day(LocalDate date, List<Planned> planned, List<Time> times, List<Moved> moved) {
        public Day {
            planned = List.copyOf(planned);
            times = List.copyOf(times);
            moved = List.copyOf(moved);
        }

        /** A day without times. */
        public Day(LocalDate date, List<Planned> planned) {
            this(date, planned, List.of(), List.of());
        }
    }

    /** The days from {@code from}, {@code count} of them. */
    List<Day> days(Viewer viewer, ChildId child, LocalDate from, int count);

    /**
     * Keeps what the family says.
     *
     * @return true when pain is 7 or more: the page shows the sign and the call links at once
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    boolean log(Viewer viewer, ChildId child, Entry entry);

    /** Takes back what was said of an exercise on a day; the trail keeps it. */
    void takeBack(Viewer viewer, ChildId child, String exercise, LocalDate day);

    /** All entries that count, newest first, from the first day to the last, both included. */
    List<Logged> entries(Viewer viewer, ChildId child, LocalDate from, LocalDate until);
}
