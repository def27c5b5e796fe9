package org.hearthway.program.engine.week;

import java.util.List;
import java.util.Optional;
import org.hearthway.program.engine.week.FamilyWeek.Slot;

/**
 * A program laid out over a week.
 *
 * @param sessions the times in which something is done, in their order
 * @param unfit what did not fit whole, the most important first
 * @param cost what it costs
 * @param proved how many aims of the cost, from the first on, are proved to be as small as they can be
 */
public record WeekPlan(List<Session> sessions, List<Unfit> unfit, WeekCost cost, int proved) {

    public WeekPlan {
        sessions = List.copyOf(sessions);
        unfit = List.copyOf(unfit);
    }

    /**
     * What is done in one of the family's times.
     *
     * @param slot the time
     * @param exercises in the order in which they are done
     * @param changes how often another piece of equipment is fetched
     */
    public record Session(Slot slot, List<Ask> exercises, int changes) {

        public Session {
            exercises = List.copyOf(exercises);
        }

        /** Minutes of the exercises. */
        public int minutes() {
            return exercises.stream().mapToInt(Ask::minutes).sum();
        }
    }

    /**
     * An exercise that did not fit whole.
     *
     * @param ask the exercise
     * @param sessions how many of its times found no place
     * @param reason why
     * @param ways what would make room for one of them, nothing else moved; empty when only a look at the whole helps
     */
    public record Unfit(Ask ask, int sessions, Reason reason, List<Way> ways) {
        public Unfit {
            ways = List.copyOf(ways);
        }
    }

    /** Why something found no place. */
    public enum Reason {
        /** So many days cannot lie as they should, in any week: strength wants a day between. */
        REST,
        /** The family has too few times on its days. */
        NO_TIME,
        /** Too few of them are long enough. */
        TOO_LONG,
        /** In too few of them is somebody whose hands it needs. */
        NO_HELPER,
        /** By itself it would fit; other exercises take the room, or the rest of the same muscles forbids the days. */
        FULL
    }

    /** Something that would make room for one time of an exercise. */
    public sealed interface Way {

        /** More minutes in that time, or on that day. */
        record Longer(Slot slot, int minutes) implements Way {}

        /** The exercise made shorter, to so many minutes, in that time. */
        record Shorter(Slot slot, int minutes) implements Way {}

        /** Somebody to help in that time. */
        record Help(Slot slot) implements Way {}

        /** Leaving out an exercise of the same priority or a later one in that time. */
        record InsteadOf(String exercise, Slot slot) implements Way {}
    }

    /** Where each exercise is, in the order of the week. */
    public List<Placed> placed() {
        return sessions.stream()
                .flatMap(session -> session.exercises().stream()
                        .map(ask -> new Placed(
                                ask.exercise(),
                                session.slot().day(),
                                session.slot().start())))
                .toList();
    }

    /** What is done in that time, if anything is. */
    public Optional<Session> in(Slot slot) {
        return sessions.stream().filter(session -> session.slot().equals(slot)).findFirst();
    }
}
