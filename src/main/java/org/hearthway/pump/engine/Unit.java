package org.hearthway.pump.engine;

/** Units that results of the pump are told in. */
public enum Unit {
    /** mL. */
    MILLILITRES("mL"),
    /** Micrograms. */
    MICROGRAMS("mcg"),
    /** Micrograms per millilitre. */
    MICROGRAMS_PER_MILLILITRE("mcg/mL"),
    /** Micrograms per day of 24 hours. */
    MICROGRAMS_PER_DAY("mcg/d"),
    /** Micrograms per hour. */
    MICROGRAMS_PER_HOUR("mcg/h"),
    /** mL per hour. */
    MILLILITRES_PER_HOUR("mL/h"),
    /** mL per day of 24 hours. */
    MILLILITRES_PER_DAY("mL/d"),
    /** cm. */
    CENTIMETRES("cm"),
    /** mL per cm. */
    MILLILITRES_PER_CENTIMETRE("mL/cm"),
    /** Hours of 3600 seconds. */
    HOURS("h"),
    /** Minutes. */
    MINUTES("min"),
    /** Days of 24 hours, or calendar days beside a date. */
    DAYS("d"),
    /** Calendar months. */
    MONTHS("mo"),
    /** Calendar years. */
    YEARS("a"),
    /** Of a hundred. */
    PERCENT("%"),
    /** A plain number. */
    ONE("");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    /** The sign of the trade, the same in all languages. */
    public String symbol() {
        return symbol;
    }
}
