package org.hearthway.program.ui;

import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.ProgramRules;
import org.hearthway.program.engine.ProgramRules.Bound;

/** One number of the line: its name in problems, its steps and where they end. */
enum Amount {
    SETS("sets", ProgramRules.SETS, 1, 1),
    REPETITIONS("repetitions", ProgramRules.REPETITIONS, 1, 2),
    HOLD("holdSeconds", ProgramRules.HOLD_SECONDS, 5, 15),
    MINUTES("minutes", ProgramRules.MINUTES, 1, 5),
    TIMES_A_DAY("timesADay", ProgramRules.TIMES_A_DAY, 1, 1),
    REST("restSeconds", Prescription.REST_SECONDS, 15, 60),
    EFFORT("effort", Prescription.EFFORT, 1, 1),
    RHYTHM("rhythm", new Bound(1, 7), 1, 1),
    KILOGRAMS("load", new Bound(0, 200), 0.25, 0.5),
    BAND("load", new Bound(1, 10), 1, 1),
    RULE_DAYS("progression", new Bound(1, 28), 1, 1),
    RULE_EFFORT("progression", new Bound(1, 10), 1, 1),
    RULE_PAIN("progression", new Bound(1, 10), 1, 1),
    NEXT_SETS("progression", ProgramRules.SETS, 1, 1),
    NEXT_REPETITIONS("progression", ProgramRules.REPETITIONS, 1, 2),
    NEXT_HOLD("progression", ProgramRules.HOLD_SECONDS, 5, 15),
    NEXT_MINUTES("progression", ProgramRules.MINUTES, 1, 5),
    NEXT_KILOGRAMS("progression", new Bound(0, 200), 0.25, 0.5),
    NEXT_BAND("progression", new Bound(1, 10), 1, 1);

    private final String field;
    private final int min;
    private final int max;
    private final double step;
    private final double leap;

    Amount(String field, Bound bound, double step, double leap) {
        this.field = field;
        this.min = bound.min();
        this.max = bound.max();
        this.step = step;
        this.leap = leap;
    }

    /** Its name in problems. */
    String field() {
        return field;
    }

    Bound bound() {
        return new Bound(min, max);
    }

    /** What an arrow key adds. */
    double step() {
        return step;
    }

    /** What a page key adds. */
    double leap() {
        return leap;
    }
}
