package org.hearthway.family;

import java.util.List;
import java.util.Optional;
import org.hearthway.parts.DayWay;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.events.SessionLogged;

/** How far a day has come: what was done, what could not be, what is open and what comes next. */
record DayStory(HomeWeek.Day day) {

    /** How a day stands. */
    enum Mood {
        /** Nothing is planned. */
        REST,
        /** Nothing was said yet. */
        FRESH,
        /** Something is behind, something ahead. */
        UNDERWAY,
        /** Nothing is open and something was done. */
        OVER,
        /** Nothing is open and nothing could be done. */
        SPENT,
        /** Severe pain was told: a call comes first and nothing else is asked. */
        CALL_FIRST
    }

    List<Planned> planned() {
        return day.planned();
    }

    Mood mood() {
        if (severe().isPresent()) {
            return Mood.CALL_FIRST;
        }
        if (planned().isEmpty()) {
            return Mood.REST;
        }
        if (open() == 0) {
            return done() == 0 ? Mood.SPENT : Mood.OVER;
        }
        return open() == planned().size() ? Mood.FRESH : Mood.UNDERWAY;
    }

    /** How many were done, wholly or in part. */
    int done() {
        return count(Outcome.DONE) + count(Outcome.SOME);
    }

    /** How many of those in part only. */
    int inPart() {
        return count(Outcome.SOME);
    }

    int couldNot() {
        return count(Outcome.COULD_NOT);
    }

    int open() {
        return planned().size() - done() - couldNot();
    }

    private int count(Outcome outcome) {
        return (int) planned().stream()
                .filter(p -> outcome(p).filter(outcome::equals).isPresent())
                .count();
    }

    static Optional<Outcome> outcome(Planned planned) {
        return planned.logged().map(l -> l.entry().outcome());
    }

    /** The first of which nothing was said. */
    Optional<Planned> next() {
        return planned().stream().filter(p -> p.logged().isEmpty()).findFirst();
    }

    int minutes() {
        return planned().stream().mapToInt(Planned::minutes).sum();
    }

    int minutesLeft() {
        return planned().stream()
                .filter(p -> p.logged().isEmpty())
                .mapToInt(Planned::minutes)
                .sum();
    }

    /** The exercise for which severe pain was told, if there is one. */
    Optional<Planned> severe() {
        return planned().stream().filter(DayStory::isSevere).findFirst();
    }

    private static boolean isSevere(Planned planned) {
        return planned.logged()
                .flatMap(l -> l.entry().pain())
                .filter(pain -> pain >= SessionLogged.SEVERE_PAIN)
                .isPresent();
    }

    /** One stone for each exercise; the next is lit only on the present day. */
    List<DayWay.State> stones(boolean present) {
        var next = present ? next() : Optional.<Planned>empty();
        return planned().stream().map(p -> stone(p, next)).toList();
    }

    private static DayWay.State stone(Planned planned, Optional<Planned> next) {
        return outcome(planned)
                .map(outcome -> switch (outcome) {
                    case DONE -> DayWay.State.DONE;
                    case SOME -> DayWay.State.SOME;
                    case COULD_NOT -> DayWay.State.COULD_NOT;
                })
                .orElse(next.filter(planned::equals).isPresent() ? DayWay.State.NOW : DayWay.State.LATER);
    }
}
