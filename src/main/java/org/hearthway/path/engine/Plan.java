package org.hearthway.path.engine;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hearthway.path.engine.network.Span;

/**
 * A child's plan on a day: every stage with its dates and the reason for each.
 *
 * @param template the pathway
 * @param today the day it was made for
 * @param stages those on the plan, in order; one that repeats stands once for each time
 * @param over how the path ended, if it did
 * @param before stages that were done before the path began here and of which no day is known, in order; without those
 *     that are there only if needed
 */
public record Plan(
        Template template, LocalDate today, List<Planned> stages, Optional<Over> over, List<Template.Stage> before) {

    public Plan {
        stages = List.copyOf(stages);
        before = List.copyOf(before);
    }

    /** A plan of a path that began with its first stage. */
    public Plan(Template template, LocalDate today, List<Planned> stages, Optional<Over> over) {
        this(template, today, stages, over, List.of());
    }

    /**
     * The one stage that today lies in: of those that have begun, the one that lasts longest, so that a check of a
     * single day does not end the weeks around it. Empty before the first, and when the path is over.
     */
    public Optional<Planned> now() {
        return stages.stream().filter(s -> s.state() == State.NOW).findFirst();
    }

    /** The stage of this name; {@code stage/2} is the second time of one that repeats. */
    public Optional<Planned> stage(String point) {
        return stages.stream().filter(s -> s.point().equals(point)).findFirst();
    }

    /** The stages, but of those that come again no time later than a day. */
    public List<Planned> until(LocalDate last) {
        return stages.stream()
                .filter(stage -> stage.round() == 1 || !stage.start().isAfter(last))
                .toList();
    }

    /** The stages, but of those that come again only the next time that lies ahead. */
    public List<Planned> next() {
        var ahead = new HashSet<String>();
        return stages.stream()
                .filter(stage -> stage.state() != State.TO_COME
                        || ahead.add(stage.stage().id()))
                .toList();
    }

    /** What cannot be kept, in the order of the path. */
    public List<Clash> clashes() {
        return stages.stream().flatMap(stage -> stage.clash().stream()).toList();
    }

    /** The first stage that begins before the one in front of it, which only dates that people gave can bring about. */
    public Optional<Planned> outOfOrder() {
        var once = stages.stream().filter(stage -> stage.round() == 1).toList();
        return IntStream.range(1, once.size())
                .filter(i -> once.get(i).start().isBefore(once.get(i - 1).start()))
                .mapToObj(once::get)
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

    /** What people said of a stage; of one that only a rule dates the plan supposes that it began on its day. */
    public enum Said {
        /** Nothing, or a day that is still to come. */
        NOTHING,
        /** That it began. */
        BEGUN,
        /** How it ended. */
        ENDED,
        /** That it was done before the path began here, on that day. */
        DONE_BEFORE
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

    /** A path that ended: on which day, and by which outcome of a stage unless the team ended it. */
    public record Over(LocalDate day, Optional<Template.Outcome> outcome) {}

    /**
     * One stage with its dates.
     *
     * @param stage the template's stage
     * @param round which time of it, from 1
     * @param state seen from today
     * @param said what people said of it
     * @param earliest first day the rules allow, counted from the dates in front
     * @param start planned first day; where there is a clash it stands for the order only and is shown to nobody
     * @param latest last day the rules allow; empty when they name none
     * @param end planned last day, not before the first
     * @param possible from the earliest to the latest day that it could have at all, whatever the dates in front become
     * @param why where the first day comes from
     * @param visits visits asked for, with their windows
     * @param precautions rules of care with their days
     * @param clash why no day can be given, if that is so
     */
    public record Planned(
            Template.Stage stage,
            int round,
            State state,
            Said said,
            LocalDate earliest,
            LocalDate start,
            Optional<LocalDate> latest,
            LocalDate end,
            Span possible,
            Why why,
            List<VisitWindow> visits,
            List<Care> precautions,
            Optional<Clash> clash) {

        public Planned {
            visits = List.copyOf(visits);
            precautions = List.copyOf(precautions);
        }

        /** Whether it was done before the path began here. */
        public boolean isDoneBefore() {
            return said == Said.DONE_BEFORE;
        }

        /** The name under which the stage is dated: its identifier, {@code stage/2} for the second time. */
        public String point() {
            return round == 1 ? stage.id() : stage.id() + "/" + round;
        }
    }

    /**
     * The reason for a date, as data; words are made of it in the reader's language.
     *
     * @param origin how it came to be
     * @param from the stage counted from, if any
     * @param base the date counted from, if any
     * @param rule the date the rule alone would give
     * @param shiftedFrom the day the rule fell on, when it cannot be and the date moved to one that can
     * @param away whether it cannot be that day because the family cannot come; otherwise the clinic is closed
     * @param outside true when the date lies outside what the rule allows: given by a person, or no day was left
     * @param counted the rule that gave the day aimed at
     * @param own whether that rule is this child's own, in the place of the path's
     * @param pushed the rule that kept the stage from that day, if one did
     */
    public record Why(
            Origin origin,
            Optional<Template.Stage> from,
            Optional<LocalDate> base,
            LocalDate rule,
            Optional<LocalDate> shiftedFrom,
            boolean away,
            boolean outside,
            Template.After counted,
            boolean own,
            Optional<Cause> pushed) {}

    /**
     * A visit to book, first and last day it may lie on, both included; purpose is {@code path/stage/visit}, and for
     * the later ones of a visit that comes again {@code path/stage/visit/2} and so on.
     *
     * @param day the first day in the window on which it can be; empty when it has none
     */
    public record VisitWindow(String purpose, String kind, LocalDate from, LocalDate until, Optional<LocalDate> day) {}

    /** A rule of care from a first day until the day it no longer holds (half-open). */
    public record Care(Template.Precaution rule, LocalDate from, LocalDate until) {

        /** Whether the rule holds on a day. */
        public boolean holdsOn(LocalDate day) {
            return !day.isBefore(from) && day.isBefore(until);
        }
    }
}
