package org.hearthway.pump.ui;

import com.ibm.icu.text.DecimalFormat;
import com.ibm.icu.text.NumberFormat;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.apache.commons.numbers.fraction.BigFraction;
import org.hearthway.pump.engine.Amount;
import org.hearthway.pump.engine.Quantity;
import org.hearthway.pump.engine.Shown;
import org.hearthway.pump.engine.Unit;

/**
 * Writes figures of a pump with their units. A result is told with the places that its unit is used with; within a
 * formula it stands with as many digits as a pocket calculator needs, so that what is shown can be reckoned again. Days
 * are always rounded down: nothing is told later than it is.
 */
final class PumpFigures {

    private static final int DIGITS = 7;
    private static final int MOST_PLACES = 9;
    private static final int SECONDS_A_MINUTE = 60;

    private final PumpWords say;
    private final ZoneId zone;

    PumpFigures(PumpWords say, ZoneId zone) {
        this.say = say;
        this.zone = zone;
    }

    PumpWords words() {
        return say;
    }

    /** Where the clinic's clock stands. */
    ZoneId zone() {
        return zone;
    }

    /** A result with its unit; a day with weekday and year. */
    String result(Shown shown) {
        if (shown instanceof Quantity quantity) {
            return withUnit(quantity.unit(), brief(quantity));
        }
        return shown instanceof Shown.Day day ? full(day.date()) : moment(((Shown.Moment) shown).instant());
    }

    /** A figure within a formula, with its unit. */
    String figure(Shown shown) {
        if (shown instanceof Quantity quantity) {
            return withUnit(quantity.unit(), precise(quantity));
        }
        return shown instanceof Shown.Day day ? say.date(day.date()) : moment(((Shown.Moment) shown).instant());
    }

    /** A result without its unit, for a table whose head names it. */
    String bare(Quantity quantity) {
        return written(brief(quantity));
    }

    /** A result with its unit and a plus where it is more than nothing. */
    String signed(Quantity quantity) {
        var told = brief(quantity);
        return say.say(told.signum() > 0 ? "pump.sums.plus" : "pump.sums.plain", withUnit(quantity.unit(), told));
    }

    /** Whether a result is told with fewer places than the figure has within a formula. */
    boolean isRounded(Shown shown) {
        return shown instanceof Quantity quantity && brief(quantity).compareTo(precise(quantity)) != 0;
    }

    /** Whether even the figure within a formula is not the whole number. */
    boolean isCut(Shown shown) {
        return shown instanceof Quantity quantity && !isWhole(quantity.exact(), precise(quantity));
    }

    /** A day with weekday and year. */
    String full(LocalDate day) {
        return say.full(day);
    }

    /** A moment by the clinic's clock. */
    String moment(Instant at) {
        var local = at.atZone(zone);
        return say.say("pump.sums.moment", full(local.toLocalDate()), time(at));
    }

    /** The time of a moment by the clinic's clock. */
    LocalTime time(Instant at) {
        return at.atZone(zone).toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    }

    /** The day of a moment by the clinic's clock. */
    LocalDate day(Instant at) {
        return at.atZone(zone).toLocalDate();
    }

    /** By how many minutes the local clock was changed from one moment to another; positive: put forward. */
    long clockChange(Instant from, Instant to) {
        var rules = zone.getRules();
        var seconds = (long) rules.getOffset(to).getTotalSeconds()
                - rules.getOffset(from).getTotalSeconds();
        return seconds / SECONDS_A_MINUTE;
    }

    /** A whole number of days, as people say it. */
    String days(long days) {
        return withUnit(Unit.DAYS, BigDecimal.valueOf(days));
    }

    private String withUnit(Unit unit, BigDecimal number) {
        var key = "pump.sums.unit." + unit.name();
        return say.say(key, written(number), number);
    }

    /** Minus as mathematicians write it; a point or comma as the language does. */
    private String written(BigDecimal number) {
        var format = (DecimalFormat) NumberFormat.getInstance(say.language().locale());
        format.setMinimumFractionDigits(Math.max(0, number.scale()));
        format.setMaximumFractionDigits(MOST_PLACES);
        format.setGroupingUsed(false);
        return format.format(number).replace('-', '\u2212');
    }

    private static BigDecimal brief(Quantity quantity) {
        var places = Places.of(quantity.unit());
        var exact = rounded(quantity.exact(), places.whole, rounding(quantity));
        if (isWhole(quantity.exact(), exact)) {
            return exact;
        }
        // zeros at the end of what was cut stay: they say how far it was told
        return places.digits > 0
                ? significant(quantity.exact(), places.digits, rounding(quantity))
                : quantity.exact().bigDecimalValue(places.cut, rounding(quantity));
    }

    private static BigDecimal precise(Quantity quantity) {
        var whole = rounded(quantity.exact(), MOST_PLACES, rounding(quantity));
        return whole.precision() <= DIGITS && isWhole(quantity.exact(), whole)
                ? whole
                : significant(quantity.exact(), DIGITS, rounding(quantity));
    }

    private static boolean isWhole(BigFraction exact, BigDecimal told) {
        return exact.equals(BigFraction.of(told.unscaledValue(), BigInteger.TEN.pow(told.scale())));
    }

    private static RoundingMode rounding(Quantity quantity) {
        return quantity instanceof Amount && quantity.unit() == Unit.DAYS ? RoundingMode.DOWN : RoundingMode.HALF_UP;
    }

    private static BigDecimal rounded(BigFraction exact, int places, RoundingMode mode) {
        return plain(exact.bigDecimalValue(places, mode));
    }

    private static BigDecimal significant(BigFraction exact, int digits, RoundingMode mode) {
        var many = exact.bigDecimalValue(MOST_PLACES * 2, RoundingMode.DOWN);
        return plain(many.round(new MathContext(digits, mode)));
    }

    private static BigDecimal plain(BigDecimal number) {
        var stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /**
     * Places after the point.
     *
     * @param whole so many are told when the number ends with them
     * @param cut so many are told otherwise
     * @param digits instead of cut: so many digits that count
     */
    private record Places(int whole, int cut, int digits) {

        private static Places of(Unit unit) {
            return switch (unit) {
                case MILLILITRES -> new Places(3, 2, 0);
                case MICROGRAMS, MICROGRAMS_PER_MILLILITRE, MICROGRAMS_PER_DAY -> new Places(3, 1, 0);
                case MICROGRAMS_PER_HOUR -> new Places(4, 2, 0);
                case MILLILITRES_PER_DAY -> new Places(4, 0, 4);
                case MILLILITRES_PER_HOUR -> new Places(6, 0, 4);
                case MILLILITRES_PER_CENTIMETRE -> new Places(6, 0, 4);
                case CENTIMETRES, HOURS, DAYS -> new Places(2, 1, 0);
                case PERCENT -> new Places(2, 1, 0);
                case MINUTES, MONTHS, YEARS -> new Places(0, 0, 0);
                case ONE -> new Places(3, 3, 0);
            };
        }
    }
}
