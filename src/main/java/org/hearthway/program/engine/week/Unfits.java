package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.week.FamilyWeek.Slot;
import org.hearthway.program.engine.week.WeekPlan.Reason;
import org.hearthway.program.engine.week.WeekPlan.Unfit;
import org.hearthway.program.engine.week.WeekPlan.Way;

/** What did not fit whole into a week, why, and what would make room for one time more. */
final class Unfits {

    private final Board board;
    private final Collection<Ask> asks;

    Unfits(FamilyWeek week, Collection<Ask> asks, Collection<Placed> placed) {
        this.board = new Board(week, asks, placed);
        this.asks = asks;
    }

    /** The most important first. */
    List<Unfit> all() {
        return asks.stream()
                .sorted(Comparator.comparing(Ask::priority).thenComparing(Ask::exercise))
                .flatMap(ask -> unfit(ask).stream())
                .toList();
    }

    private Optional<Unfit> unfit(Ask ask) {
        var sessions = ask.timesADay() * ask.rhythm().days() - board.count(ask);
        return sessions == 0 ? Optional.empty() : Optional.of(new Unfit(ask, sessions, reason(ask), ways(ask)));
    }

    private Reason reason(Ask ask) {
        if (most(ask, EnumSet.allOf(DayOfWeek.class)) < ask.rhythm().days()) {
            return Reason.REST;
        }
        if (isShort(ask, slot -> true)) {
            return Reason.NO_TIME;
        }
        if (isShort(ask, slot -> slot.minutes() >= ask.minutes())) {
            return Reason.TOO_LONG;
        }
        return isShort(ask, ask::fits) ? Reason.NO_HELPER : Reason.FULL;
    }

    /** Whether it found no place on all its days even if it were alone and only these times were there. */
    private boolean isShort(Ask ask, Predicate<Slot> usable) {
        var days = EnumSet.noneOf(DayOfWeek.class);
        for (var day : ask.days()) {
            if (board.week().on(day).stream().filter(usable).count() >= ask.timesADay()) {
                days.add(day);
            }
        }
        return most(ask, days) < ask.rhythm().days();
    }

    private static int most(Ask ask, Set<DayOfWeek> days) {
        var possible = EnumSet.copyOf(ask.days());
        possible.retainAll(days);
        var rhythm = ask.muscles().isEmpty()
                ? ask.rhythm()
                : new Rhythm(
                        ask.rhythm().days(),
                        ask.rhythm().spread() == Rhythm.Spread.ALTERNATE
                                ? Rhythm.Spread.ALTERNATE
                                : Rhythm.Spread.NOT_FOLLOWING);
        return rhythm.most(possible);
    }

    private List<Way> ways(Ask ask) {
        var ways = new ArrayList<Way>();
        for (var slot : board.week().slots()) {
            if (board.mayBeOn(ask, slot.day()) && !board.holds(ask, slot)) {
                ways.addAll(ways(ask, slot));
            }
        }
        return best(ways);
    }

    private List<Way> ways(Ask ask, Slot slot) {
        var room = board.room(slot);
        if (!ask.isHelpedIn(slot)) {
            return ask.minutes() <= room ? List.of(new Way.Help(slot)) : List.of();
        }
        var ways = new ArrayList<Way>();
        if (ask.minutes() > room) {
            ways.add(new Way.Longer(slot, ask.minutes() - room));
            if (2 * room >= ask.minutes()) {
                ways.add(new Way.Shorter(slot, room));
            }
            board.in(slot).stream()
                    .filter(other -> other.priority().compareTo(ask.priority()) >= 0)
                    .filter(other -> ask.minutes() <= room + other.minutes())
                    .forEach(other -> ways.add(new Way.InsteadOf(other.exercise(), slot)));
        }
        return ways;
    }

    /** The gentlest of each kind: the fewest minutes more, the fewest less, the first help, the first exchange. */
    private static List<Way> best(List<Way> ways) {
        var best = new ArrayList<Way>();
        each(ways, Way.Longer.class)
                .min(Comparator.comparingInt(Way.Longer::minutes))
                .ifPresent(best::add);
        each(ways, Way.Shorter.class)
                .max(Comparator.comparingInt(Way.Shorter::minutes))
                .ifPresent(best::add);
        each(ways, Way.Help.class).findFirst().ifPresent(best::add);
        each(ways, Way.InsteadOf.class).findFirst().ifPresent(best::add);
        return best;
    }

    private static <T extends Way> Stream<T> each(List<Way> ways, Class<T> kind) {
        return ways.stream().filter(kind::isInstance).map(kind::cast);
    }
}
