package org.hearthway.pump.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How a result came about, line by line, so that a person can follow it with a pocket calculator. Plain data: which
 * formula, which figures, what came out. Words and rounding are the screen's business.
 */
public record Derivation(List<Line> lines) {

    public Derivation {
        lines = List.copyOf(lines);
    }

    /** A figure, and the letter it has in the formula. */
    public record Figure(Symbol symbol, Shown value) {}

    /**
     * One line.
     *
     * @param figures each symbol of the formula once; the parts of a sum as often as there are
     * @param result what came out, not rounded
     */
    public record Line(Formula formula, List<Figure> figures, Figure result) {

        private static final Pattern PLACE = Pattern.compile("\\{(\\w+)}");

        /** @throws IllegalArgumentException when the figures are not those of the formula */
        public Line {
            figures = List.copyOf(figures);
            var places = PLACE.matcher(formula.template())
                    .results()
                    .map(place -> place.group(1))
                    .collect(Collectors.toSet());
            var given = figures.stream().map(figure -> figure.symbol().name()).collect(Collectors.toSet());
            if (!formula.isSum() && !places.equals(given)) {
                throw new IllegalArgumentException("figures " + given + " for " + formula);
            }
        }

        /** The formula with letters, such as {@code Vd = D / C}. */
        public String symbols() {
            return result.symbol().text() + " = "
                    + fill(figure -> figure.symbol().text());
        }

        /** The right side of the formula with its numbers filled in, such as {@code 110 / 500}. */
        public String numbers(Function<Shown, String> writing) {
            return fill(figure -> writing.apply(figure.value()));
        }

        private String fill(Function<Figure, String> writing) {
            if (formula.isSum()) {
                return figures.stream().map(writing).collect(Collectors.joining(formula.template()));
            }
            return PLACE.matcher(formula.template())
                    .replaceAll(place -> Matcher.quoteReplacement(figures.stream()
                            .filter(figure -> figure.symbol().name().equals(place.group(1)))
                            .map(writing)
                            .findFirst()
                            .orElseThrow()));
        }
    }

    /** Lines as they come about. */
    static final class Working {

        private final List<Line> lines = new ArrayList<>();

        <T extends Shown> T line(Formula formula, Symbol symbol, T result, Figure... figures) {
            lines.add(new Line(formula, List.of(figures), new Figure(symbol, result)));
            return result;
        }

        LocalDate day(Formula formula, Symbol symbol, LocalDate result, Figure... figures) {
            line(formula, symbol, new Shown.Day(result), figures);
            return result;
        }

        void all(Derivation other) {
            lines.addAll(other.lines());
        }

        Derivation done() {
            return new Derivation(lines);
        }
    }
}
