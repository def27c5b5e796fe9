package org.hearthway.pump.engine;

import java.time.LocalDate;

/** Letters of the formulas, the same in all languages; what each stands for is told in words elsewhere. */
public enum Symbol {
    /** Volume in the reservoir, after a fill or at the last change. */
    VOLUME("V"),
    /** Volume of the alarm. */
    ALARM_VOLUME("Va"),
    /** Strength. */
    STRENGTH("C"),
    /** Daily dose. */
    DAILY_DOSE("D"),
    /** What leaves the reservoir in a day. */
    DAILY_VOLUME("Vd"),
    /** Flow. */
    FLOW("Q"),
    /** Dose of an hour. */
    HOURLY_DOSE("r"),
    /** Hours. */
    HOURS("h"),
    /** A step's share of the day, or a bolus. */
    PART("m"),
    /** Days, with their fraction. */
    DAYS("t"),
    /** Whole days. */
    WHOLE_DAYS("n"),
    /** Drug given in what is left of a day or week. */
    REST("m'"),
    /** What left the reservoir. */
    USED("U"),
    /** What is expected to be left. */
    EXPECTED("Ve"),
    /** What was measured. */
    MEASURED("Vm"),
    /** What was injected. */
    INJECTED("Vi"),
    /** Measured less expected, or injected less measured. */
    DIFFERENCE("d"),
    /** Percentage. */
    PERCENT("p"),
    /** Delivered against planned. */
    RATIO("q"),
    /** The day of the fill or of the implant. */
    FIRST_DAY("F"),
    /** The day that counting whole days gives. */
    COUNTED_DAY("A1"),
    /** The local day of the alarm. */
    ALARM_DAY("A2"),
    /** The day that we reckon. */
    OUR_DAY("P1"),
    /** The day of the print-out. */
    PRINTED_DAY("P2"),
    /** The day to plan by. */
    PLANNING_DAY("P"),
    /** The last day of the drug's life. */
    LIFE_DAY("L"),
    /** A span of calendar days, months or years. */
    SPAN("k"),
    /** The last day for what is planned. */
    LATEST("Z"),
    /** The same before it was moved to an open day. */
    LATEST_ANY("Z'"),
    /** The first day of a window. */
    OPENS("O"),
    /** The day of a visit. */
    VISIT("B"),
    /** The day on which something ends. */
    END("E"),
    /** What the pump's tubing holds. */
    TUBING("Vt"),
    /** Length of the catheter. */
    LENGTH("l"),
    /** What a cm of it holds. */
    PER_LENGTH("vl"),
    /** Tubing and catheter together. */
    DEAD_VOLUME("V0"),
    /** What they really hold. */
    REALLY("V0'"),
    /** The strength of before. */
    OLD_STRENGTH("C1"),
    /** The strength of afterwards. */
    NEW_STRENGTH("C2"),
    /** Dose of a bridge. */
    BRIDGE_DOSE("M"),
    /** Drug that a child gets, in a day. */
    RECEIVED("R"),
    /** Dose of before. */
    OLD_DOSE("D1"),
    /** Dose of afterwards. */
    NEW_DOSE("D2"),
    /** Dose of a test. */
    TEST_DOSE("T"),
    /** A factor. */
    FACTOR("f"),
    /** What was left in the reservoir. */
    LEFT("V1"),
    /** What was added. */
    ADDED("V2"),
    /** Strength of a mixture. */
    MIXTURE("Cx");

    private final String text;

    Symbol(String text) {
        this.text = text;
    }

    /** As it is written. */
    public String text() {
        return text;
    }

    /** A day with this letter. */
    Derivation.Figure is(LocalDate day) {
        return is(new Shown.Day(day));
    }

    /** A figure with this letter. */
    Derivation.Figure is(Shown value) {
        return new Derivation.Figure(this, value);
    }
}
