package org.hearthway.pump.engine;

/** The formulas of the pump. A name in braces is a {@link Symbol}. */
public enum Formula {
    /** What leaves the reservoir in a day. */
    DAILY_VOLUME("{DAILY_DOSE} / {STRENGTH}"),
    /** A day's dose as that of an hour. */
    HOURLY_DOSE("{DAILY_DOSE} / 24"),
    /** The flow that gives a day's dose. */
    FLOW("{DAILY_DOSE} / {STRENGTH} / 24"),
    /** The dose that a fixed flow gives. */
    DOSE_OF_FLOW("{STRENGTH} × {FLOW} × 24"),
    /** What a step gives. */
    STEP("{HOURLY_DOSE} × {HOURS}"),
    /** The parts of a day together. */
    DAY_TOTAL(" + "),
    /** What one dose took from the reservoir. */
    USED("{DAILY_DOSE} × {DAYS} / {STRENGTH}"),
    /** What a schedule took: whole days or weeks, and the rest. */
    USED_BY_SCHEDULE("({WHOLE_DAYS} × {DAILY_DOSE} + {REST}) / {STRENGTH}"),
    /** What is left. */
    LEFT("max(0, {VOLUME} - {USED})"),
    /** Days from the last change to the alarm; exact at one dose, within a day at a schedule. */
    DAYS_TO_ALARM("({VOLUME} - {ALARM_VOLUME}) / {DAILY_VOLUME}"),
    /** Days from the last change until nothing is left. */
    DAYS_TO_EMPTY("{VOLUME} / {DAILY_VOLUME}"),
    /** Days from the fill to the alarm: up to the last change and from there. */
    DAYS_TOGETHER(" + "),
    /** Whole days. */
    WHOLE_DAYS("floor({DAYS})"),
    /** Fill and whole days. */
    COUNTED_DAY("{FIRST_DAY} + {WHOLE_DAYS}"),
    /** The day to plan by. */
    PLANNING_DAY("min({COUNTED_DAY}, {ALARM_DAY})"),
    /** The earlier of our day and that of the print-out. */
    EARLIER_OF_PRINT_OUT("min({OUR_DAY}, {PRINTED_DAY})"),
    /** Life of the drug after the fill. */
    LIFE_DAY("{FIRST_DAY} + {SPAN}"),
    /** Life of the drug when the pharmacy gave a day, too. */
    LIFE_DAY_OF_BOTH("min({FIRST_DAY} + {SPAN}, {END})"),
    /** The last day for a refill. */
    LATEST("min({PLANNING_DAY} - {SPAN}, {LIFE_DAY})"),
    /** The last day for a refill of a pump that gives nothing. */
    LATEST_BY_LIFE("{LIFE_DAY}"),
    /** The last open day that is not later. */
    OPEN_DAY("open day <= {LATEST_ANY}"),
    /** The first day of the window. */
    OPENS("max({FIRST_DAY}, {LATEST} - {SPAN})"),
    /** The day to order the drug. */
    ORDER("{VISIT} - {SPAN}"),
    /** Difference of the residual. */
    DIFFERENCE("{MEASURED} - {EXPECTED}"),
    /** Difference of the residual in percent of what was expected. */
    PERCENT_OF_EXPECTED("100 × ({MEASURED} - {EXPECTED}) / {EXPECTED}"),
    /** Difference right after a fill. */
    AFTER_FILL("{INJECTED} - {MEASURED}"),
    /** Delivered against planned. */
    RATIO("({VOLUME} - {MEASURED}) / ({VOLUME} - {EXPECTED})"),
    /** Less delivered than planned, in percent of it. */
    PERCENT_OF_PLANNED("100 × (1 - {RATIO})"),
    /** The first daily dose. */
    FIRST_DOSE("{TEST_DOSE} × {FACTOR}"),
    /** A dose step. */
    STEP_PERCENT("100 × ({NEW_DOSE} - {OLD_DOSE}) / {OLD_DOSE}"),
    /** What a catheter holds. */
    CATHETER_VOLUME("{LENGTH} × {PER_LENGTH}"),
    /** What tubing and catheter hold. */
    DEAD_VOLUME("{TUBING} + {LENGTH} × {PER_LENGTH}"),
    /** Drug in a volume. */
    DRUG_IN("{VOLUME} × {STRENGTH}"),
    /** Drug in tubing and catheter. */
    BRIDGE_DOSE("{DEAD_VOLUME} × {OLD_STRENGTH}"),
    /** How long a bridge runs. */
    BRIDGE_HOURS("{BRIDGE_DOSE} / {DAILY_DOSE} × 24"),
    /** Flow of a bridge, for a day. */
    BRIDGE_FLOW("{DAILY_DOSE} / {OLD_STRENGTH}"),
    /** Flow after a bridge, for a day. */
    FLOW_AFTERWARDS("{DAILY_DOSE} / {NEW_STRENGTH}"),
    /** What a child gets without a bridge, in a day. */
    RECEIVED_UNBRIDGED("{DAILY_DOSE} × {OLD_STRENGTH} / {NEW_STRENGTH}"),
    /** How long the old drug lasts at a daily volume. */
    OLD_DRUG_DAYS("{DEAD_VOLUME} / {DAILY_VOLUME}"),
    /** How long a wrong volume of tubing and catheter is felt. */
    WRONG_HOURS("({DEAD_VOLUME} - {REALLY}) / {DAILY_VOLUME} × 24"),
    /** The same when it is larger than reckoned. */
    WRONG_HOURS_LARGER("({REALLY} - {DEAD_VOLUME}) / {DAILY_VOLUME} × 24"),
    /** What is received then. */
    WRONG_RECEIVED("{DAILY_VOLUME} × {HOURS} / 24 × {STRENGTH}"),
    /** What is wanted then. */
    WRONG_WANTED("{DAILY_DOSE} × {HOURS} / 24"),
    /** Strength of a mixture. */
    MIXTURE("({LEFT} × {OLD_STRENGTH} + {ADDED} × {NEW_STRENGTH}) / ({LEFT} + {ADDED})"),
    /** When a pump is to be replaced. */
    REPLACEMENT("{FIRST_DAY} + {SPAN}"),
    /** When to plan its replacement, counted back. */
    PLAN_BEFORE("{END} - {SPAN}"),
    /** When to plan its replacement, counted on. */
    PLAN_AFTER("{FIRST_DAY} + {SPAN}");

    private final String template;

    Formula(String template) {
        this.template = template;
    }

    String template() {
        return template;
    }

    /** Whether all figures are added up, however many there are. */
    boolean isSum() {
        return template.indexOf('{') < 0;
    }
}
