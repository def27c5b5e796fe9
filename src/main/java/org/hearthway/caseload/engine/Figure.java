package org.hearthway.caseload.engine;

/**
 * A number of a rule about the home program that each clinic may set for itself. What ships stands in
 * {@code content/needs}.
 */
public enum Figure {
    /** Pain, 0 to 10, of a single entry. Never above 7, where the family is told to call. */
    PAIN_FROM(Rule.PAIN, "from", 1, 7),
    /** Planned home days in a row without a log. */
    SILENT_DAYS(Rule.NO_LOG, "planned-days", 1, 21),
    /** Weeks of ratings in which pain is looked at for a rise. */
    RISING_WEEKS(Rule.PAIN_RISING, "weeks", 3, 26),
    /** How much higher the mean of the later half must be than that of the earlier, in points of 0 to 10. */
    RISING_BY(Rule.PAIN_RISING, "by", 0, 5),
    /** Pain, 0 to 10, that counts as sore. */
    SORE_FROM(Rule.PAIN_OFTEN, "from", 2, 7),
    /** On how many days. */
    SORE_DAYS(Rule.PAIN_OFTEN, "days", 2, 28),
    /** Within how many days. */
    SORE_WITHIN(Rule.PAIN_OFTEN, "within-days", 5, 28),
    /** Adherence, in percent, below which too little is done. */
    DONE_PERCENT(Rule.FEW_DONE, "percent", 5, 95),
    /** Over how many whole weeks. */
    DONE_WEEKS(Rule.FEW_DONE, "weeks", 1, 12),
    /** Percent of the planned sessions of which something was said; with fewer nothing is known. */
    DONE_REPORTED(Rule.FEW_DONE, "reported-percent", 10, 100),
    /** Effort, 0 to 10, that counts as too hard. */
    HARD_FROM(Rule.TOO_HARD, "from", 4, 10),
    /** On how many days. */
    HARD_DAYS(Rule.TOO_HARD, "days", 2, 28),
    /** Within how many days. */
    HARD_WITHIN(Rule.TOO_HARD, "within-days", 5, 28),
    /** How often an exercise could not be because of pain. */
    STOPPED_TIMES(Rule.STOPPED, "times", 1, 20),
    /** Within how many days. */
    STOPPED_WITHIN(Rule.STOPPED, "within-days", 3, 28);

    private final Rule rule;
    private final String key;
    private final int least;
    private final int most;

    Figure(Rule rule, String key, int least, int most) {
        this.rule = rule;
        this.key = key;
        this.least = least;
        this.most = most;
    }

    /** The rule that it belongs to. */
    public Rule rule() {
        return rule;
    }

    /** What it is called in the rule's block of the content. */
    public String key() {
        return key;
    }

    /** The least it may be. */
    public int least() {
        return least;
    }

    /** The most it may be. */
    public int most() {
        return most;
    }

    /** Whether it may be this number. */
    public boolean holds(int number) {
        return number >= least && number <= most;
    }
}
