package org.hearthway.program.engine;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Problem;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.ProgramRules.Bound;

/**
 * All that a therapist says of how much: the dose of a time, what it is done against, how often in a week, how hard it
 * should feel, and when more may be proposed.
 *
 * @param dose rounds, repetitions or minutes, hold, times a day
 * @param restSeconds between two rounds, 0 to 600; empty for what the clinic reckons with usually
 * @param side which side does it
 * @param load what it is done against
 * @param rhythm how many days a week, and how they lie
 * @param effort how hard it should feel, 0 to 10; empty when that is left open
 * @param progression when more is proposed, if ever
 */
public record Prescription(
        Dose dose,
        Optional<Integer> restSeconds,
        Side side,
        Load load,
        Rhythm rhythm,
        Optional<Integer> effort,
        Optional<Progression> progression) {

    /** Seconds of rest between two rounds. */
    public static final Bound REST_SECONDS = new Bound(0, 600);
    /** How hard it should feel. */
    public static final Bound EFFORT = new Bound(0, 10);

    /** A dose against nothing but the body, on these days, and nothing said beyond. */
    public static Prescription of(Dose dose, Side side, Set<DayOfWeek> days) {
        return new Prescription(
                dose, Optional.empty(), side, new Load.Body(), Rhythm.on(days), Optional.empty(), Optional.empty());
    }

    /** The same with another dose. */
    public Prescription with(Dose other) {
        return new Prescription(other, restSeconds, side, load, rhythm, effort, progression);
    }

    /** The same for another side. */
    public Prescription with(Side other) {
        return new Prescription(dose, restSeconds, other, load, rhythm, effort, progression);
    }

    /** The same on other days of the week. */
    public Prescription with(Rhythm other) {
        return new Prescription(dose, restSeconds, side, load, other, effort, progression);
    }

    /** The same against another load. */
    public Prescription with(Load other) {
        return new Prescription(dose, restSeconds, side, other, rhythm, effort, progression);
    }

    /** The same with what was proposed in place of what is done now; the rule that proposed it is spent. */
    public Prescription after(Progression.Proposal proposal) {
        return new Prescription(proposal.next(), restSeconds, side, proposal.load(), rhythm, effort, Optional.empty());
    }

    /** Minutes of one time, rounded up to whole minutes; at least 1. */
    public int minutes(Pace pace) {
        var once = new Dose(dose.sets(), dose.repetitions(), dose.holdSeconds(), dose.minutes(), 1);
        return new Pace(pace.secondsARepetition(), restSeconds.orElse(pace.restSeconds())).minutes(once, side);
    }

    /** Minutes of a whole week, from the rounded minutes of one time. */
    public int minutesAWeek(Pace pace) {
        return minutes(pace) * dose.timesADay() * rhythm.days();
    }

    /**
     * Everything that is wrong with it, its progression included; empty when all is well.
     *
     * @param line which line of the program it is, counted from 0
     */
    public List<Problem> check(int line) {
        var problems = new ArrayList<>(ProgramRules.checkDose(line, dose));
        if (restSeconds.filter(rest -> !REST_SECONDS.holds(rest)).isPresent()) {
            problems.add(at(line, "restSeconds", "program.problem.restSeconds", REST_SECONDS.max()));
        }
        if (effort.filter(target -> !EFFORT.holds(target)).isPresent()) {
            problems.add(at(line, "effort", "program.problem.effort", EFFORT.max()));
        }
        progression.ifPresent(rule -> {
            if (!ProgramRules.checkDose(line, rule.next()).isEmpty()) {
                problems.add(at(line, "progression", "program.problem.progression"));
            } else if (rule.next().equals(dose) && rule.nextLoad().equals(load)) {
                problems.add(at(line, "progression", "program.problem.progression.same"));
            }
        });
        return List.copyOf(problems);
    }

    private static Problem at(int line, String field, String key, Object... bounds) {
        var args = new ArrayList<Object>(List.of(line + 1));
        args.addAll(List.of(bounds));
        return new Problem(ProgramRules.field(line, field), key, args);
    }
}
