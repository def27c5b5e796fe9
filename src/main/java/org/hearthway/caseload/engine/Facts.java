package org.hearthway.caseload.engine;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template;
import org.hearthway.program.engine.trend.Trends;

/**
 * What is known about one child on a day.
 *
 * @param reports what the family reported lately
 * @param pains entries of the home program that carry a pain, lately
 * @param homeDays days of the home program with something planned, in any order
 * @param refill the pump's refill-by date; empty without a pump fill
 * @param criticalVisits visits that must not be missed and of which it was noted whether the child came, in any order
 * @param tasks tasks that have not ended and are not set aside, in any order
 * @param checks checks of hips and spine that are due next, in any order
 * @param unconfirmed doses that a second person has not typed again yet, in any order
 * @param paths the paths that the child is on
 * @param concerns what of the pump has to be looked into, in any order
 * @param unfilledSince since when a pump is in that no fill is recorded of, if one is
 * @param devicesBehind what its paths say of devices and the record of devices does not say
 * @param stimulator what its stimulators ask for
 * @param home what the family said of its home program
 */
public record Facts(
        List<Report> reports,
        List<Pain> pains,
        List<HomeDay> homeDays,
        Optional<Refill> refill,
        List<CriticalVisit> criticalVisits,
        List<OpenTask> tasks,
        List<Check> checks,
        List<Unconfirmed> unconfirmed,
        List<OnPath> paths,
        List<PumpConcern> concerns,
        Optional<LocalDate> unfilledSince,
        List<DeviceBehind> devicesBehind,
        OfStimulator stimulator,
        OfHome home) {

    public Facts {
        reports = List.copyOf(reports);
        pains = List.copyOf(pains);
        homeDays = List.copyOf(homeDays);
        criticalVisits = List.copyOf(criticalVisits);
        tasks = List.copyOf(tasks);
        checks = List.copyOf(checks);
        unconfirmed = List.copyOf(unconfirmed);
        paths = List.copyOf(paths);
        concerns = List.copyOf(concerns);
        devicesBehind = List.copyOf(devicesBehind);
    }

    /** Of a child without a stimulator. */
    public Facts(
            List<Report> reports,
            List<Pain> pains,
            List<HomeDay> homeDays,
            Optional<Refill> refill,
            List<CriticalVisit> criticalVisits,
            List<OpenTask> tasks,
            List<Check> checks,
            List<Unconfirmed> unconfirmed,
            List<OnPath> paths,
            Optional<LocalDate> unfilledSince,
            List<DeviceBehind> devicesBehind,
            Optional<LocalDate> silenceAnsweredOn) {
        this(
                reports,
                pains,
                homeDays,
                refill,
                criticalVisits,
                tasks,
                checks,
                unconfirmed,
                paths,
                List.of(),
                unfilledSince,
                devicesBehind,
                OfStimulator.NONE,
                OfHome.silent(silenceAnsweredOn));
    }

    /** Of a child of whose devices nothing is asked. */
    public Facts(
            List<Report> reports,
            List<Pain> pains,
            List<HomeDay> homeDays,
            Optional<Refill> refill,
            List<CriticalVisit> criticalVisits,
            List<OpenTask> tasks,
            List<Check> checks,
            List<Unconfirmed> unconfirmed,
            List<OnPath> paths,
            Optional<LocalDate> silenceAnsweredOn) {
        this(
                reports,
                pains,
                homeDays,
                refill,
                criticalVisits,
                tasks,
                checks,
                unconfirmed,
                paths,
                Optional.empty(),
                List.of(),
                silenceAnsweredOn);
    }

    /** Of a child on no path, of whom no check is due and no dose in doubt. */
    public Facts(
            List<Report> reports,
            List<Pain> pains,
            List<HomeDay> homeDays,
            Optional<Refill> refill,
            List<CriticalVisit> criticalVisits,
            List<OpenTask> tasks,
            Optional<LocalDate> silenceAnsweredOn) {
        this(
                reports,
                pains,
                homeDays,
                refill,
                criticalVisits,
                tasks,
                List.of(),
                List.of(),
                List.of(),
                silenceAnsweredOn);
    }

    /** Nothing known. */
    public static Facts none() {
        return new Facts(List.of(), List.of(), List.of(), Optional.empty(), List.of(), List.of(), Optional.empty());
    }

    /**
     * A family's report or note.
     *
     * @param read who of the team read it and when, if somebody has
     */
    public record Report(UUID key, Urgency urgency, Instant at, Optional<Read> read) {

        /** One that nobody has read. */
        public Report(UUID key, Urgency urgency, Instant at) {
            this(key, urgency, at, Optional.empty());
        }
    }

    /** Who read a report, and when. */
    public record Read(AccountId by, Instant at) {}

    /**
     * A pain from the home program.
     *
     * @param key of the entry
     * @param exercise identifier in the library
     * @param day the day it was for
     * @param pain 0 to 10
     * @param at when it was said
     */
    public record Pain(UUID key, String exercise, LocalDate day, int pain, Instant at) {}

    /** A day with something planned, and whether anything was said of it: done, some, or could not. */
    public record HomeDay(LocalDate date, boolean logged) {}

    /**
     * A visit that must not be missed.
     *
     * @param key identifier
     * @param kind what kind of visit
     * @param day the day it was on
     * @param over when it was over
     * @param came whether the child was brought
     */
    public record CriticalVisit(String key, String kind, LocalDate day, Instant over, boolean came) {}

    /**
     * A task that waits to be done.
     *
     * @param key identifier
     * @param wantedBy the day by which
     * @param ofTheFamily whether it is asked of the family
     * @param with who sees to it: the person it was given to; of a family's task who gave it; empty for a role
     */
    public record OpenTask(String key, LocalDate wantedBy, boolean ofTheFamily, Optional<AccountId> with) {}

    /**
     * Something about the pump that has to be looked into.
     *
     * @param kind what it is
     * @param entry of the pump's book that it stands in
     * @param day since when
     */
    public record PumpConcern(String kind, long entry, LocalDate day) {}

    /** The day by which the pump must be refilled, and whether a refill visit is booked that keeps it. */
    public record Refill(LocalDate by, boolean booked) {}

    /**
     * A check that is due next.
     *
     * @param watched what is checked
     * @param kind the kind of visit at which it is done
     * @param by the day by which it should be done
     * @param booked whether a visit is booked at which it is done in good time
     */
    public record Check(String watched, String kind, LocalDate by, boolean booked) {}

    /**
     * What was said of a home program, and what of it the team has answered.
     *
     * @param logs of the weeks that the rules look at, today included, in any order
     * @param more rules for more that are met
     * @param turns what rules of care shut off or opened, since the program was last saved
     * @param answered the day on which the team last closed an item of a rule; days up to it count no more for it
     */
    public record OfHome(
            List<Trends.Log> logs, List<MoreProposed> more, List<CareTurn> turns, Map<Rule, LocalDate> answered) {

        public OfHome {
            logs = List.copyOf(logs);
            more = List.copyOf(more);
            turns = List.copyOf(turns);
            answered = Map.copyOf(answered);
        }

        /** Of a home program of which nothing was said; empty where silence was not answered. */
        public static OfHome silent(Optional<LocalDate> answeredOn) {
            return new OfHome(
                    List.of(),
                    List.of(),
                    List.of(),
                    answeredOn.map(day -> Map.of(Rule.NO_LOG, day)).orElse(Map.of()));
        }

        /** The day up to which a rule was answered, if it was. */
        public Optional<LocalDate> answered(Rule rule) {
            return Optional.ofNullable(answered.get(rule));
        }
    }

    /**
     * More is proposed by a therapist's own rule.
     *
     * @param exercise identifier
     * @param version of the program that has the rule
     * @param days that carry it, in order; at least one
     */
    public record MoreProposed(String exercise, int version, List<LocalDate> days) {
        public MoreProposed {
            days = List.copyOf(days);
        }
    }

    /**
     * Exercises of the program that a rule of care shuts off from a day on, or opens again.
     *
     * @param day the first day
     * @param forbids whether they are shut off
     * @param exercises identifiers, at least one
     */
    public record CareTurn(LocalDate day, boolean forbids, List<String> exercises) {
        public CareTurn {
            exercises = List.copyOf(exercises);
        }
    }

    /**
     * What a child's stimulators ask for.
     *
     * @param due days of its generators
     * @param warnings what their newest readings showed
     */
    public record OfStimulator(List<GeneratorDue> due, List<Warning> warnings) {

        /** Nothing. */
        public static final OfStimulator NONE = new OfStimulator(List.of(), List.of());

        public OfStimulator {
            due = List.copyOf(due);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * A day of a generator.
     *
     * @param what whether its battery is read or a new one planned
     * @param serial of the generator
     * @param by the day by which it is read, or from which a new one is planned
     * @param booked whether a visit is booked for it in good time
     */
    public record GeneratorDue(Asked what, String serial, LocalDate by, boolean booked) {

        /** What is due. */
        public enum Asked {
            READ,
            REPLACE
        }

        /** Names it. */
        public String key() {
            return what + "/" + serial;
        }
    }

    /**
     * Something that the newest reading of a generator showed.
     *
     * @param what what it showed
     * @param revision of the reading
     * @param day of the reading
     * @param at when somebody recorded it
     * @param count days that a charge was late, or 0
     */
    public record Warning(Shown what, long revision, LocalDate day, Instant at, int count) {

        /** What can be shown. */
        public enum Shown {
            OFF,
            DROP,
            IMPEDANCE,
            CHARGE
        }

        /** Names it and its reading. */
        public String key() {
            return what + "/" + revision;
        }
    }

    /**
     * A path that the child is on.
     *
     * @param plan the plan as of today
     * @param kept purposes of visits that took place, and of those booked in their window
     * @param seen days on which a visit of a stage took place, by the stage's identifier
     * @param booked stages with a visit to come, by identifier
     * @param unbooked visits that it asks for and that are not booked in their window
     */
    public record OnPath(
            Plan plan, Set<String> kept, Map<String, LocalDate> seen, Set<String> booked, List<Unbooked> unbooked) {

        public OnPath {
            kept = Set.copyOf(kept);
            seen = Map.copyOf(seen);
            booked = Set.copyOf(booked);
            unbooked = List.copyOf(unbooked);
        }
    }

    /** A visit that a stage asks for, by the stage's name in the plan, and that is not booked in its window. */
    public record Unbooked(String point, Plan.VisitWindow window) {}

    /**
     * What a path says of a device and the record of devices does not say.
     *
     * @param decision version of the decision that said it
     * @param fate what it says
     * @param day on which it happened
     */
    public record DeviceBehind(long decision, Template.DeviceFate fate, LocalDate day) {}

    /**
     * A dose, a calendar of doses or an entry about a pump that waits for its second check.
     *
     * @param id identifier of the medicine, {@code entry} of the book of a pump, or the number of a stimulator's reading
     * @param version of what waits
     * @param at when the first person wrote it
     */
    public record Unconfirmed(What what, String id, long version, Instant at) {

        /** What can wait for a second check. */
        public enum What {
            MEDICINE,
            CALENDAR,
            PUMP,
            STIMULATOR
        }

        /** Names what waits and its version. */
        public String key() {
            return what + "/" + id + "/" + version;
        }
    }
}
