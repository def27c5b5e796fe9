package org.hearthway.pump.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Reckons a shown formula as a person with a pocket calculator would, from the shown figures alone. */
final class PocketCalculator {

    private static final Pattern NUMBER = Pattern.compile("^−?[0-9.]+");
    private static final Pattern UNIT =
            Pattern.compile("[0-9.]+ (mL/day|mL/h|mL|mcg/mL|mcg/day|mcg/h|mcg|days?|h|cm|%)(?= |\\)|$)");

    private static final double HAIR = 1e-5;

    private final String formula;
    private int at;

    private PocketCalculator(String formula) {
        this.formula = formula;
    }

    /** Says nothing of dates and of what is told in words. */
    static void check(String result, String shown) {
        var formula = shown.replaceAll(" [=≈] .*", "").replace(", not below 0", "");
        var plain = UNIT.matcher(formula)
                .replaceAll(found -> found.group().substring(0, found.group().indexOf(' ')));
        if (!plain.matches("[0-9. −+×÷()]+")
                || !Character.isDigit(result.replace("−", "").charAt(0))) {
            return;
        }
        var told = NUMBER.matcher(result.replace("+", ""));
        assertThat(told.find()).as(result).isTrue();
        var number = new BigDecimal(told.group().replace("−", "-"));
        var unit = Math.pow(10, -number.scale());
        var reckoned = new PocketCalculator(plain.replace(" ", "")).sum();
        var lowest = shown.contains(", not below 0") ? Math.max(0, reckoned) : reckoned;
        // days are told rounded down, all else half up; the last digit of a figure may be off
        var days = result.endsWith("days");
        assertThat(lowest)
                .as(result + " from " + shown)
                .isBetween(
                        number.doubleValue() - (days ? 0 : 0.5) * unit - HAIR,
                        number.doubleValue() + (days ? 1 : 0.5) * unit + HAIR);
    }

    private double sum() {
        var value = product();
        while (at < formula.length() && "+−".indexOf(formula.charAt(at)) >= 0) {
            value = formula.charAt(at++) == '+' ? value + product() : value - product();
        }
        return value;
    }

    private double product() {
        var value = factor();
        while (at < formula.length() && "×÷".indexOf(formula.charAt(at)) >= 0) {
            value = formula.charAt(at++) == '×' ? value * factor() : value / factor();
        }
        return value;
    }

    private double factor() {
        if (formula.charAt(at) == '(') {
            at++;
            var value = sum();
            at++;
            return value;
        }
        var number = NUMBER.matcher(formula.substring(at));
        assertThat(number.find()).as(formula + " at " + at).isTrue();
        at += number.end();
        return Double.parseDouble(number.group().replace("−", "-"));
    }
}
