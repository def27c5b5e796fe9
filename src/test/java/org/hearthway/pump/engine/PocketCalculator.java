package org.hearthway.pump.engine;

import org.apache.commons.numbers.fraction.BigFraction;

/** Works out a line as a person does who only sees it written; days are counted from 1970. */
final class PocketCalculator {

    private final String line;
    private int at;

    private PocketCalculator(String line) {
        this.line = line.replace(" ", "");
    }

    /** What the right side of a line comes to. */
    static BigFraction workOut(Derivation.Line line) {
        var calculator = new PocketCalculator(line.numbers(shown -> "(" + value(shown) + ")"));
        var result = calculator.sum();
        if (calculator.at < calculator.line.length()) {
            throw new IllegalStateException("cannot read " + calculator.line + " from " + calculator.at);
        }
        return result;
    }

    /** A figure as a number. */
    static BigFraction value(Shown shown) {
        if (shown instanceof Quantity quantity) {
            return quantity.exact();
        }
        return BigFraction.of(((Shown.Day) shown).date().toEpochDay());
    }

    private BigFraction sum() {
        var result = product();
        while (sees('+') || sees('-')) {
            var plus = line.charAt(at++) == '+';
            result = plus ? result.add(product()) : result.subtract(product());
        }
        return result;
    }

    private BigFraction product() {
        var result = factor();
        while (sees('×') || sees('/')) {
            var times = line.charAt(at++) == '×';
            result = times ? result.multiply(factor()) : result.divide(factor());
        }
        return result;
    }

    private BigFraction factor() {
        if (sees('-')) {
            at++;
            return factor().negate();
        }
        if (takes("max(")) {
            return Exact.most(pairFirst(), pairSecond());
        }
        if (takes("min(")) {
            return Exact.least(pairFirst(), pairSecond());
        }
        if (takes("floor(")) {
            return BigFraction.of(Exact.floor(pairSecond()));
        }
        if (takes("(")) {
            return pairSecond();
        }
        var from = at;
        while (at < line.length() && Character.isDigit(line.charAt(at))) {
            at++;
        }
        return BigFraction.of(Long.parseLong(line.substring(from, at)));
    }

    private BigFraction pairFirst() {
        var first = sum();
        expect(',');
        return first;
    }

    private BigFraction pairSecond() {
        var second = sum();
        expect(')');
        return second;
    }

    private boolean sees(char sign) {
        return at < line.length() && line.charAt(at) == sign;
    }

    private boolean takes(String word) {
        if (!line.startsWith(word, at)) {
            return false;
        }
        at += word.length();
        return true;
    }

    private void expect(char sign) {
        if (!sees(sign)) {
            throw new IllegalStateException("no " + sign + " at " + at + " of " + line);
        }
        at++;
    }
}
