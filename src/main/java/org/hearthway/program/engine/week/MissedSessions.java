package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.week.FamilyWeek.Slot;

/**
 * What becomes of sessions that were missed: each is offered another time in what is left of the week, or it is better
 * skipped. All offers hold together: whoever takes them all breaks no rule of the week. A day never holds an exercise more
 * often than asked, so that nothing is made up for by doubling; the next week is as planned and gives no room.
 */
public final class MissedSessions {

    private MissedSessions() {}

    /** What is offered for a session that was missed. */
    public sealed interface Offer {

        /** The session. */
        Placed missed();

        /** It can be done then. */
        record Move(Placed missed, Placed to) implements Offer {}

        /** It is better left out. */
        record Skip(Placed missed, Why why) implements Offer {}
    }

    /** Why a session is better left out. */
    public enum Why {
        /** No time is left in the week. */
        WEEK_OVER,
        /** In none that is left is somebody whose hands it needs. */
        NO_HELPER,
        /** It is on each day left as often as it may, or may not be there. */
        ENOUGH,
        /** Muscles or the exercise would have no day of rest. */
        REST,
        /** No time that is left has room for it. */
        NO_ROOM
    }

    /**
     * The offers, the most important first.
     *
     * @param week the family's times
     * @param asks what the program asks for
     * @param planned where the exercises are in the week, those missed included
     * @param missed those of them that were missed
     * @param today the day
     * @param now times of the day that began before it are over
     */
    public static List<Offer> offers(
            FamilyWeek week,
            Collection<Ask> asks,
            Collection<Placed> planned,
            Collection<Placed> missed,
            DayOfWeek today,
            LocalTime now) {
        var kept = planned.stream().filter(one -> !missed.contains(one)).toList();
        var board = new Board(week, asks, kept);
        var nextWeek = new Board(week, asks, planned);
        var left = week.slots().stream()
                .filter(slot -> slot.day().compareTo(today) > 0
                        || (slot.day() == today && !slot.start().isBefore(now)))
                .toList();
        var offers = new ArrayList<Offer>();
        for (var ask : inOrder(asks)) {
            for (var one : inOrder(ask, missed)) {
                var offer = new Chance(board, nextWeek, ask, left).offer(one);
                if (offer instanceof Offer.Move move) {
                    board.put(move.to());
                }
                offers.add(offer);
            }
        }
        return offers;
    }

    private static List<Ask> inOrder(Collection<Ask> asks) {
        return asks.stream()
                .sorted(Comparator.comparing(Ask::priority).thenComparing(Ask::exercise))
                .toList();
    }

    private static List<Placed> inOrder(Ask ask, Collection<Placed> missed) {
        return missed.stream()
                .filter(one -> one.exercise().equals(ask.exercise()))
                .sorted(Comparator.comparing(Placed::day).thenComparing(Placed::start))
                .toList();
    }

    /** The times that are left, for one exercise. */
    private record Chance(Board board, Board nextWeek, Ask ask, List<Slot> left) {

        private Offer offer(Placed missed) {
            Predicate<Slot> often = slot -> ask.days().contains(slot.day())
                    && board.count(ask, slot.day()) < ask.timesADay()
                    && !board.holds(ask, slot);
            Predicate<Slot> rested = slot -> board.mayBeOn(ask, slot.day()) && !isAheadOfMonday(slot);
            Predicate<Slot> roomy = slot -> ask.minutes() <= board.room(slot);
            var helped = left.stream().filter(ask::isHelpedIn).toList();
            var to = helped.stream().filter(often.and(rested).and(roomy)).findFirst();
            if (to.isPresent()) {
                return new Offer.Move(missed, missed.to(to.get()));
            }
            return new Offer.Skip(missed, why(helped, often, rested));
        }

        private Why why(List<Slot> helped, Predicate<Slot> often, Predicate<Slot> rested) {
            if (left.isEmpty()) {
                return Why.WEEK_OVER;
            }
            if (helped.isEmpty()) {
                return Why.NO_HELPER;
            }
            if (helped.stream().noneMatch(often)) {
                return Why.ENOUGH;
            }
            return helped.stream().noneMatch(often.and(rested)) ? Why.REST : Why.NO_ROOM;
        }

        /** Whether the Monday to come, as planned, needs this Sunday for rest; this week's Monday may have been missed. */
        private boolean isAheadOfMonday(Slot slot) {
            if (slot.day() != DayOfWeek.SUNDAY || board.count(ask, slot.day()) > 0) {
                return false;
            }
            var spread = ask.rhythm().spread();
            var apart = spread == Rhythm.Spread.NOT_FOLLOWING || spread == Rhythm.Spread.ALTERNATE;
            return nextWeek.works(ask, DayOfWeek.MONDAY) || (apart && nextWeek.count(ask, DayOfWeek.MONDAY) > 0);
        }
    }
}
