package org.hearthway.task;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;

/**
 * Something to be done for a child. It ends only with an outcome; versions are added and none is altered.
 *
 * @param id identifier
 * @param child whose
 * @param to who is to do it
 * @param says what is to be done
 * @param due the day by which; that of an open task of a stage moves with the stage
 * @param of the stage of the path that it belongs to; empty for none
 * @param givenBy who gave it
 * @param givenAt when
 * @param aside set aside until a day, with the reason
 * @param end how it ended; empty while it is open
 * @param version the version that was read
 */
public record Task(
        TaskId id,
        ChildId child,
        Assignee to,
        Says says,
        LocalDate due,
        Optional<OfStage> of,
        AccountId givenBy,
        Instant givenAt,
        Optional<Aside> aside,
        Optional<End> end,
        long version) {

    /** What is to be done, as somebody typed it: in one language or in both; the other one is empty. */
    public record Says(String en, String es) {

        /** Whether it was typed in this language. */
        public boolean isIn(Language language) {
            return !typed(language).isEmpty();
        }

        /** The language in which a reader of this one gets it: this one, or the only one there is. */
        public Language shownIn(Language language) {
            return isIn(language) ? language : language == Language.EN ? Language.ES : Language.EN;
        }

        /** The words for a reader of this language. */
        public String in(Language language) {
            return typed(shownIn(language));
        }

        private String typed(Language language) {
            return switch (language) {
                case EN -> en;
                case ES -> es;
            };
        }
    }

    /**
     * A task's stage.
     *
     * @param stage as {@code path/stage}, {@code path/stage/2} for the second time of one that repeats
     * @param begins its first day when the task's day was set; empty when it was not known
     * @param asks whether the stage asks it by itself: nobody gave it, the family ticked it
     * @param onPlan whether it is on the child's plan; while it is not, the task rests
     */
    public record OfStage(String stage, Optional<LocalDate> begins, boolean asks, boolean onPlan) {

        /** A stage of which nothing more is known. */
        public static OfStage named(String stage) {
            return new OfStage(stage, Optional.empty(), false, true);
        }
    }

    /** Out of sight until a day. */
    public record Aside(LocalDate until, String reason) {}

    /** How a task ends. */
    public enum Outcome {
        DONE,
        NOT_NEEDED
    }

    /**
     * How it ended.
     *
     * @param outcome done or not needed
     * @param by who said so
     * @param at when
     * @param reason why it is not needed; empty when it was done
     * @param ticked whether the family ticked it, rather than somebody of the team
     */
    public record End(Outcome outcome, AccountId by, Instant at, String reason, boolean ticked) {}

    /** Whether it waits to be done on a day: not ended, not set aside beyond that day, its stage on the plan. */
    public boolean isOpenOn(LocalDate day) {
        return end.isEmpty()
                && isOnPlan()
                && aside.filter(away -> away.until().isAfter(day)).isEmpty();
    }

    /** Whether its stage is on the child's plan, if it is of one. */
    public boolean isOnPlan() {
        return of.map(OfStage::onPlan).orElse(true);
    }

    /** The name of its stage, if it is of one. */
    public Optional<String> stage() {
        return of.map(OfStage::stage);
    }

    /** Whether its stage asks it by itself, and nobody gave it. */
    public boolean isAskedByItsStage() {
        return of.filter(OfStage::asks).isPresent();
    }

    /** The same on another day, with what is known of its stage. */
    public Task on(LocalDate day, OfStage known) {
        return new Task(id, child, to, says, day, Optional.of(known), givenBy, givenAt, aside, end, version);
    }

    /** The day by which it is wanted: its own, or the day it came back when that is later. */
    public LocalDate wantedBy() {
        return aside.map(Aside::until).filter(due::isBefore).orElse(due);
    }
}
