package org.hearthway.caseload.engine;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.sign.engine.OfficeHours;

/**
 * Who is told of a reported sign that nobody takes up, and when the next one is. The order is gone through from the
 * first to the last, then it starts over; it ends only when somebody takes the sign up. Waiting is counted in minutes
 * that pass, so a night on which the clocks change makes nobody wait longer.
 *
 * @param patience how long one person has before the next is told
 * @param office who is told in office hours, in this order
 * @param outside who is told outside them, in this order; when one of the two lists is empty the other stands for it
 * @param hours when the office is open
 */
public record Escalation(Duration patience, List<AccountId> office, List<AccountId> outside, OfficeHours hours) {

    public Escalation {
        office = List.copyOf(office);
        outside = List.copyOf(outside);
    }

    /**
     * A person who was told.
     *
     * @param number counts from 1
     * @param person who
     * @param from since when it is with this person
     */
    public record Turn(int number, AccountId person, Instant from) {}

    /** Whether a person was told before: then everybody of the order was, and it has started over. */
    public static boolean startedOver(List<Turn> told) {
        return told.stream().map(Turn::person).distinct().count() < told.size();
    }

    /**
     * The turn that follows, if nobody takes the sign up; empty when the order names nobody.
     *
     * @param told who was told so far, in order
     * @param reported when the family reported it
     */
    public Optional<Turn> next(List<Turn> told, Instant reported) {
        return at(
                told,
                told.isEmpty() ? reported : told.get(told.size() - 1).from().plus(patience));
    }

    /**
     * The turn that is to be made now; empty while the one told last still has time. What was slept through is not made
     * up for: a program that stood still tells one person and counts from there.
     */
    public Optional<Turn> due(List<Turn> told, Instant reported, Instant now) {
        return next(told, reported)
                .filter(turn -> !turn.from().isAfter(now))
                .flatMap(turn -> turn.from().plus(patience).isAfter(now) ? Optional.of(turn) : at(told, now));
    }

    /**
     * Everything that happens up to a moment.
     *
     * @param takenUp when somebody took it up, if anybody does; at that very moment nobody is told any more
     * @param until the moment, left out
     */
    public List<Turn> timeline(Instant reported, Optional<Instant> takenUp, Instant until) {
        var end = takenUp.filter(until::isAfter).orElse(until);
        var told = new ArrayList<Turn>();
        for (var turn = next(told, reported);
                turn.isPresent() && turn.get().from().isBefore(end);
                turn = next(told, reported)) {
            told.add(turn.get());
        }
        return told;
    }

    /** The first in the order among those who were told least often. */
    private Optional<Turn> at(List<Turn> told, Instant moment) {
        return order(moment).stream()
                .min(Comparator.comparing(person -> told.stream()
                        .filter(turn -> turn.person().equals(person))
                        .count()))
                .map(person -> new Turn(told.size() + 1, person, moment));
    }

    private List<AccountId> order(Instant moment) {
        var open = hours.from(moment, 0).stream().anyMatch(opening -> opening.holds(moment));
        var first = open ? office : outside;
        var other = open ? outside : office;
        return first.isEmpty() ? other : first;
    }
}
