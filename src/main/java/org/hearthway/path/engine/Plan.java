package org.hearthway.path.engine;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A child's plan on a day: every stage with its dates and the reason for each.
 *
 * @param template the pathway
 * @param today the day it was made for
 * @param stages in order
 */
public record Plan(Template template, LocalDate today, List<Planned> stages) {

    public Plan {
        stages = List.copyOf(stages);
    }

    /**
     * The one stage that today lies in: of those that have begun, the one that lasts longest, so that a check of a
     * single day does not end the weeks around it. Empty before the first.
     */
    public Optional<Planned> now() {
        return stages.stream().filter(s -> s.state() == State.NOW).findFirst();
    }

    /** The stage with this identifier. */
    public Optional<Planned> stage(String id) {
        return stages.stream().filter(s -> s.stage().id().equals(id)).findFirst();
    }

    /** The first stage that begins before the one in front of it, which only dates that people gave can bring about. */
    public Optional<Planned> outOfOrder() {
        return IntStream.range(1, stages.size())
                .filter(i -> stages.get(i).start().isBefore(stages.get(i - 1).start()))
                .mapToObj(stages::get)
                .findFirst();
    }

    /** Where a stage lies, seen from today. */
    public enum State {
        /** Began before today, and another stage is the present one. */
        PAST,
        /** The present one; never more than one. */
        NOW,
        /** Begins today or later. */
        TO_COME
    }

    /** How a date came to be. */
    public enum Origin {
        /** It happened, and somebody recorded it. */
        ACTUAL,
        /** Somebody set it by hand. */
        SET_BY_HAND,
        /** The rule gives it. */
        RULE
    }

    /**
     * One stage with its dates.
     *
     * @param stage the template's stage
     * @param state seen from today
     * @param earliest first day the rule allows
     * @param start planned first day
     * @param latest last day the rule allows
     * @param end planned last day, not before the first
     * @param why where the first day comes from
     * @param visits visits asked for, with their windows
     * @param precautions rules of care with their days
     */
    public record Planned(
            Template.Stage stage,
            State state,
            LocalDate earliest,
            LocalDate start,
            LocalDate latest,
            LocalDate end,
            Why why,
            List<VisitWindow> visits,
            List<Care> precautions) {

        public Planned {
            visits = List.copyOf(visits);
            precautions = List.copyOf(precautions);
        }
    }

    /**
     * The reason for a date, as data; words are made of it in the reader's language.
     *
     * @param origin how it came to be
     * @param from the stage counted from, if any
     * @param base the date counted from, if any
     * @param rule the date the rule alone would give
     * @param shiftedFrom the day the rule fell on, when the clinic is closed on it and the date moved to an open day
     * @param outside true when the date lies outside what the rule allows: given by a person, or no day was left
     */
    public record Why(
            Origin origin,
            Optional<Template.Stage> from,
            Optional<LocalDate> base,
            LocalDate rule,
            Optional<LocalDate> shiftedFrom,
            boolean outside) {}

    /**
     * A visit to book, first and last day it may lie on, both included; purpose is {@code path/stage/visit}, and for
     * the later ones of a visit that comes again {@code path/stage/visit/2} and so on.
     */
    public record VisitWindow(String purpose, String kind, LocalDate from, LocalDate until) {}

    /** A rule of care from a first day until the day it no longer holds (half-open). */
    public record Care(Template.Precaution rule, LocalDate from, LocalDate until) {

        /** Whether the rule holds on a day. */
        public boolean holdsOn(LocalDate day) {
            return !day.isBefore(from) && day.isBefore(until);
        }
    }
}
