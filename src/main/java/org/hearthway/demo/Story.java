package org.hearthway.demo;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.child.Helpers.Kind;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Households.Reach;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Place;
import org.hearthway.medicine.Medicines.How;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.Progression;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.surveillance.engine.Watched;

/**
 * What happened to one child of the demo. Days are counted from today: a negative number lies behind, a positive one
 * ahead; days of the clinic move to an open day.
 */
record Story(
        String usedName,
        String familyName,
        Period age,
        Optional<Integer> gmfcs,
        int skinTone,
        int entered,
        List<Cares> caregivers,
        List<Way> ways,
        List<Filled> fills,
        Optional<Implanted> implanted,
        Optional<Stimulated> stimulated,
        List<Version> versions,
        List<Kept> log,
        List<Said> said,
        List<Seen> visits,
        List<Told> told,
        List<Helps> helpers,
        List<Asked> tasks,
        List<Thing> things,
        List<Cast> casts,
        List<Watch> checks,
        List<Taken> medicines,
        List<Shots> toxin,
        List<Laid> facts,
        List<Chosen> decided,
        Optional<Week> week) {

    /**
     * A family's week, as it was entered on a day.
     *
     * @param most minutes of exercises on a day at most
     */
    record Week(int day, String by, List<Timed> times, List<Blocked> busy, Optional<Integer> most) {

        /** A time for exercises on some days. */
        record Timed(Set<DayOfWeek> days, LocalTime at, int minutes, List<String> helpers) {}

        /** School, a club. */
        record Blocked(Set<DayOfWeek> days, LocalTime from, LocalTime until, String what) {}
    }

    /** Facts laid on the table for the choice of a path; several choices of one fact stand behind each other. */
    record Laid(int day, String by, Map<String, List<String>> choices, Map<String, String> notes) {}

    /** What was decided; no path means none for now. */
    record Chosen(int day, String by, Optional<String> path, String present, String reason) {}

    /** Somebody who cares for the child. */
    record Cares(String person, Reach reach, Optional<Lives> lives) {}

    /** What the clinic knows of that person's home; nights of the other week only when weeks take turns. */
    record Lives(
            String relation,
            Authority authority,
            String address,
            Set<DayOfWeek> nights,
            Set<DayOfWeek> otherNights,
            boolean turns,
            boolean keptApart,
            String note) {}

    /** Somebody who helps outside the clinic from a day on, with a caregiver's consent. */
    record Helps(String person, Kind kind, int asked, int lastDay, String consent) {}

    /** The path, the day it began and why, and the days that the clinic fixed. */
    record Way(String pathway, int begun, String reason, String by, List<Fixed> fixed) {}

    /** A stage's day that was fixed, and on which day that was done. */
    record Fixed(String stage, int day, int done, String reason) {}

    /**
     * A refill. The dose follows from the alarm date, so that the story keeps its days whenever it is told.
     *
     * @param alarm day of the alarm
     * @param strength micrograms per millilitre
     * @param injected mL
     * @param found mL more than expected that were drawn out before
     * @param checked who typed the figures again; empty when nobody has yet
     */
    record Filled(
            int day,
            int alarm,
            int marginDays,
            BigDecimal strength,
            BigDecimal injected,
            BigDecimal found,
            String by,
            Optional<String> checked) {}

    /**
     * The dose of a pump was changed.
     *
     * @param percent of the dose of before
     * @param checked who typed it again; empty when nobody has yet
     */
    record Changed(int day, int percent, String reason, String by, Optional<String> checked) {}

    /**
     * A pump put into the body.
     *
     * @param day when it came in
     * @param pump serial number, as that of the catheter
     * @param reservoir mL
     * @param catheterLength cm; empty when nobody wrote it down
     * @param by who entered it
     * @param checked who typed the figures again
     */
    record Implanted(
            int day,
            String pump,
            String catheter,
            int reservoir,
            Optional<BigDecimal> catheterLength,
            String by,
            String checked,
            List<Changed> steps,
            Optional<Plan> plan) {}

    /**
     * A stimulator put into the body.
     *
     * @param day when it came in
     * @param storm what a physician signed for an emergency, and where the leads lie
     * @param charge whether its generator is charged at home
     * @param life years that the label states; of one that is charged
     * @param readings what it showed since
     */
    record Stimulated(
            int day,
            String generator,
            List<String> leads,
            String by,
            Plan storm,
            Charge charge,
            Optional<Integer> life,
            List<Reading> readings) {}

    /**
     * What a stimulator showed.
     *
     * @param battery per cent
     * @param left strength of the left side in tenths of a milliampere; empty when nothing was set
     * @param every days between two charges
     * @param charged the day of the last charge
     * @param estimate the day of replacement that the device estimates
     * @param checked who typed it again
     */
    record Reading(
            int day,
            int battery,
            Optional<Integer> left,
            Optional<Integer> right,
            Optional<Integer> every,
            Optional<Integer> charged,
            Optional<Integer> estimate,
            String note,
            String by,
            Optional<String> checked) {}

    /** What a physician signed for an emergency: for withdrawal with a pump, for a storm with a stimulator. */
    record Plan(String by, String line, String lies, String words) {}

    /** A version of the home program. */
    record Version(int day, String by, String reason, List<Line> lines) {}

    /** A line of it; the dose is the exercise's usual one where nothing is said, and more is proposed by its rule if it has one. */
    record Line(
            String exercise,
            Optional<Dose> dose,
            Side side,
            Set<DayOfWeek> days,
            String note,
            Optional<Progression> more) {}

    /**
     * What the family ticked of one exercise: a letter a day, the last for yesterday, on the days it was planned. Effort
     * and pain are the same on all days, or a digit a day.
     */
    record Kept(
            String exercise,
            String by,
            String marks,
            Optional<Integer> effort,
            Optional<Integer> pain,
            String efforts,
            String pains,
            RatedBy ratedBy) {

        /** What a letter says: d done, s some, x and the letters of reasons could not, a point nothing. */
        static Optional<Outcome> outcome(char mark) {
            return switch (mark) {
                case 'd' -> Optional.of(Outcome.DONE);
                case 's' -> Optional.of(Outcome.SOME);
                case '.' -> Optional.empty();
                default -> Optional.of(Outcome.COULD_NOT);
            };
        }

        /** Why it could not be: p pain, i ill, t no time, w did not want; any other letter tired. */
        static Reason reason(char mark) {
            return switch (mark) {
                case 'p' -> Reason.PAIN;
                case 'i' -> Reason.ILL;
                case 't' -> Reason.NO_TIME;
                case 'w' -> Reason.DID_NOT_WANT;
                default -> Reason.TIRED;
            };
        }

        /** The effort of a day, counted from the first mark: its own digit, or that of all days. */
        Optional<Integer> effort(int at) {
            return digit(efforts, at).or(() -> efforts.isEmpty() ? effort : Optional.empty());
        }

        /** The pain of a day. */
        Optional<Integer> pain(int at) {
            return digit(pains, at).or(() -> pains.isEmpty() ? pain : Optional.empty());
        }

        private static Optional<Integer> digit(String row, int at) {
            return at < row.length() && Character.isDigit(row.charAt(at))
                    ? Optional.of(row.charAt(at) - '0')
                    : Optional.empty();
        }
    }

    /** One tick with more to it, in place of the letter of that day. */
    record Said(
            String exercise,
            String by,
            int day,
            Outcome outcome,
            Optional<Reason> reason,
            Optional<Integer> effort,
            Optional<Integer> pain,
            String note) {}

    /** A visit and what became of it. */
    record Seen(
            String kind,
            int day,
            LocalTime at,
            String place,
            Optional<String> purpose,
            int booked,
            Answered answered,
            String by,
            String wish,
            Optional<Other> other,
            Came came) {}

    /** What another caregiver answered of the same visit, when it asks to move. */
    record Other(String by, String wish) {}

    /** What the family answered. */
    enum Answered {
        NOTHING,
        YES,
        ASKED_TO_MOVE
    }

    /** Whether the child came. */
    enum Came {
        NOT_NOTED,
        YES,
        NO,
        CANCELLED
    }

    /**
     * A task.
     *
     * @param day when it was given
     * @param by who gave it
     * @param to {@code family}, a role such as {@code any-nurse}, or the key of a person of the clinic
     * @param due the day by which
     * @param done the day on which it was done; 0 while it was not
     * @param doneBy who did it
     */
    record Asked(int day, String by, String to, Bilingual says, int due, int done, String doneBy) {}

    /** A report after a call, or a note to the team when it names no sign; so many minutes ago. */
    record Told(
            int minutesAgo,
            String by,
            List<String> signs,
            boolean called,
            String note,
            boolean read,
            boolean teamOnly) {}

    /** A splint or a piece of equipment, given on a day and looked at since. */
    record Thing(
            String kind,
            Optional<Place> place,
            Optional<Place.Side> side,
            int day,
            String by,
            Optional<Integer> byDay,
            Optional<Integer> byNight,
            String schedule,
            String buildUp,
            Optional<Integer> lentUntil,
            List<Look> looks) {}

    /** A look at it. */
    record Look(Item.What what, int day, Item.Outcome outcome, String note) {}

    /** A series of casts as it stands. */
    record Cast(Place place, Place.Side side, int day, int everyDays, int lastOff, String by, List<Worn> worn) {}

    /** A cast of it. */
    record Worn(int on, Optional<Integer> off, Optional<Integer> degrees, String skin) {}

    /** A check of hips or spine; of another clinic when the child came here later. */
    record Watch(
            Watched watched,
            int day,
            String who,
            Optional<Integer> left,
            Optional<Integer> right,
            Optional<Integer> cobb,
            boolean stable,
            String by) {}

    /**
     * A medicine of the list.
     *
     * @param day when it was written down
     * @param checked who typed the same again, if somebody did
     * @param change another dose that waits for its check, if there is one
     * @param taper its calendar, if it has one
     */
    record Taken(
            int day,
            String name,
            String form,
            How how,
            String dose,
            Bilingual purpose,
            String prescriber,
            String by,
            Optional<String> checked,
            Optional<Redosed> change,
            Optional<Stepped> taper) {}

    /** Another dose, written on a day. */
    record Redosed(int day, String dose, String by) {}

    /** A calendar signed on a day; days of its steps are counted from today like all others. */
    record Stepped(int day, String by, Optional<String> checked, List<Step> steps, Optional<Integer> stops) {}

    /** One step of a calendar. */
    record Step(int from, String dose) {}

    /** A toxin session that was given. */
    record Shots(int day, String preparation, String givenBy, String by, List<Shot> places) {}

    /** One place of a session. */
    record Shot(String muscle, ToxinSessions.Side side, int units) {}
}
