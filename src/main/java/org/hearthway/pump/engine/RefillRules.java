package org.hearthway.pump.engine;

/**
 * What a clinic keeps to when it plans refills. All are calendar days.
 *
 * @param marginDays kept before the alarm, 3 to 14
 * @param windowDays length of the window in which a refill is planned, 0 to 90
 * @param lifeDays longest time the drug may stay in the reservoir, 1 to 180; the product label decides
 * @param orderDays from ordering the drug to the visit, 0 to 60
 * @param printOutDays how far the date of a print-out may lie from ours before it is told, 0 to 7
 */
public record RefillRules(int marginDays, int windowDays, int lifeDays, int orderDays, int printOutDays) {

    private static final int LEAST_MARGIN = 3;
    private static final int MOST_MARGIN = 14;
    private static final int LONGEST_WINDOW = 90;
    private static final int LONGEST_LIFE = 180;
    private static final int LONGEST_ORDER = 60;
    private static final int MOST_APART = 7;

    /** @throws org.hearthway.base.Invalid naming the bound that is broken */
    public RefillRules {
        Bounds.whole("marginDays", marginDays, LEAST_MARGIN, MOST_MARGIN, Unit.DAYS);
        Bounds.whole("windowDays", windowDays, 0, LONGEST_WINDOW, Unit.DAYS);
        Bounds.whole("lifeDays", lifeDays, 1, LONGEST_LIFE, Unit.DAYS);
        Bounds.whole("orderDays", orderDays, 0, LONGEST_ORDER, Unit.DAYS);
        Bounds.whole("printOutDays", printOutDays, 0, MOST_APART, Unit.DAYS);
    }

    /** 5 days of margin, 14 of window, 180 of life, 10 to order, 1 apart. Common practice; life: usual upper limit. */
    public static RefillRules usual() {
        return new RefillRules(5, 14, LONGEST_LIFE, 10, 1);
    }

    /** The same with another margin. */
    public RefillRules withMargin(int days) {
        return new RefillRules(days, windowDays, lifeDays, orderDays, printOutDays);
    }
}
