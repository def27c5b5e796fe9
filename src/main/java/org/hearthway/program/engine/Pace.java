package org.hearthway.program.engine;

import org.hearthway.program.engine.ProgramLine.Side;

/**
 * How long exercises take, for the estimate of minutes.
 *
 * @param secondsARepetition of one repetition, besides its hold
 * @param restSeconds between two rounds
 */
public record Pace(int secondsARepetition, int restSeconds) {

    /** Minutes of one day of the line, rounded up to whole minutes; at least 1. */
    public int minutes(ProgramLine line) {
        var rest = line.prescription().restSeconds().orElse(restSeconds);
        return new Pace(secondsARepetition, rest).minutes(line.dose(), line.side());
    }

    /** Minutes of one day of the dose, rounded up to whole minutes; at least 1. */
    public int minutes(Dose dose, Side side) {
        var sides = side == Side.EACH ? 2L : 1L;
        var seconds = dose.timesADay() * (sides * work(dose) + (long) restSeconds * Math.max(0, dose.sets() - 1));
        return Math.toIntExact(Math.max(1, -Math.floorDiv(-seconds, 60L)));
    }

    private long work(Dose dose) {
        return dose.minutes() > 0
                ? 60L * dose.minutes() * dose.sets()
                : (long) dose.sets() * dose.repetitions() * (secondsARepetition + dose.holdSeconds());
    }
}
