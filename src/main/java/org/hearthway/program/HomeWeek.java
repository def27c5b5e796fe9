package org.hearthway.program;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Problem;
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

    /** What became of an exercise before an entry about it came in. */
    enum Became {
        /** A rule of care forbids it, on the day it was for or on the day it came. */
        FORBIDDEN,
        /** The program has it no more. */
        TAKEN_OUT
    }

    /**
     * What counts for one exercise on one day. A person's later entry takes the place of the earlier one, and of all that
     * the person had before them; none is altered. What two people said without knowing of each other both counts: see
     * {@link #voices}.
     *
     * @param entry what was said; of several people the best outcome (who did it, did it), the highest pain with who
     *     rated it, the highest effort by the same, and all notes
     * @param by who said it first of those who count
     * @param at when it was said, on the phone or here
     * @param received when it came in
     * @param version of the program that the person saw, when that is known
     * @param became what became of the exercise before it came in
     * @param turn the place of the newest entry among all that were kept
     * @param voices what each of several people said, the first first; empty when one person did
     */
    record Logged(
            Entry entry,
            String by,
            Instant at,
            Instant received,
            Optional<Integer> version,
            Optional<Became> became,
            long turn,
            List<Logged> voices) {
        public Logged {
            voices = List.copyOf(voices);
        }

        /** What one person said, kept as it was said. */
        public Logged(Entry entry, String by, Instant at) {
            this(entry, by, at, at, Optional.empty(), Optional.empty(), 0, List.of());
        }

        /** Who said it, the first first. */
        public List<String> names() {
            return voices.isEmpty()
                    ? List.of(by)
                    : voices.stream().map(Logged::by).distinct().toList();
        }
    }

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
     * What a phone takes along for the time without a signal.
     *
     * @param version number of the newest version of the program, 0 for none
     * @param days what is planned
     * @param forbiddenFrom the first of these days on which an exercise of them is forbidden
     */
    record Carried(int version, List<Day> days, Map<String, LocalDate> forbiddenFrom) {
        public Carried {
            days = List.copyOf(days);
            forbiddenFrom = Map.copyOf(forbiddenFrom);
        }
    }

    /** The days from {@code from}, {@code count} of them, to take along. */
    Carried carry(Viewer viewer, ChildId child, LocalDate from, int count);

    /** Most ticks that come in at once. */
    int MOST_TICKS = 50;

    /**
     * What was said on a phone and comes in now.
     *
     * @param entry what was said; its day is the day of the plan that the person saw
     * @param saidAt when, by the server's clock: the phone's own time set right by how far that clock was off. Outside the
     *     stretch from the beginning of its day to now it cannot have been, and the nearer end counts
     * @param version of the program that the person saw, if the phone told it
     * @param before {@link Logged#turn} of what the person saw for that exercise and day, 0 for nothing
     */
    record Tick(Entry entry, Instant saidAt, Optional<Integer> version, long before) {}

    /** What became of a tick that came in. */
    enum Arrival {
        KEPT,
        /** It came in before, and counts once. */
        KNOWN,
        /** It was not kept; the problems say why. */
        REFUSED
    }

    /**
     * The answer to one tick.
     *
     * @param became what became of the exercise in the meantime; the tick is kept all the same
     * @param problems why it was refused
     */
    record Arrived(Arrival arrival, Optional<Became> became, List<Problem> problems) {
        public Arrived {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Keeps what was said on a phone, each tick on its own: one that is refused holds no other back.
     *
     * @return an answer for each, in their order
     * @throws org.hearthway.base.Invalid when there are more than {@value #MOST_TICKS}
     */
    List<Arrived> bring(Viewer viewer, ChildId child, List<Tick> ticks);

    /**
     * Keeps what the family says, in the place of all that was said of that exercise and day.
     *
     * @return true when pain is 7 or more: the page shows the sign and the call links at once
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    boolean log(Viewer viewer, ChildId child, Entry entry);

    /**
     * Keeps what the family says, beside what somebody else said since the page was drawn.
     *
     * @param before {@link Logged#turn} of what the person saw, 0 for nothing
     * @return true when pain is 7 or more
     * @throws org.hearthway.base.Invalid naming field and bound
     */
    boolean log(Viewer viewer, ChildId child, Entry entry, long before);

    /** Takes back what was said of an exercise on a day, by a helper what the helper said; the trail keeps it. */
    void takeBack(Viewer viewer, ChildId child, String exercise, LocalDate day);

    /** All entries that count, newest first, from the first day to the last, both included. */
    List<Logged> entries(Viewer viewer, ChildId child, LocalDate from, LocalDate until);
}
