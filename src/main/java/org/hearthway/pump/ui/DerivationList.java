package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.DescriptionList;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hearthway.pump.engine.Derivation;
import org.hearthway.pump.engine.Derivation.Figure;
import org.hearthway.pump.engine.Elapsed;
import org.hearthway.pump.engine.Formula;

/**
 * Results one under another: what it is, the result with its unit, and under it how it came about with the figures
 * filled in.
 */
final class DerivationList extends DescriptionList {

    /** Formulas that are told in words: the earlier of two days, whole days, an open day. */
    private static final Set<Formula> IN_WORDS = Set.of(
            Formula.LEFT,
            Formula.WHOLE_DAYS,
            Formula.PLANNING_DAY,
            Formula.EARLIER_OF_PRINT_OUT,
            Formula.LIFE_DAY_OF_BOTH,
            Formula.LATEST,
            Formula.LATEST_BY_LIFE,
            Formula.OPEN_DAY,
            Formula.OPENS);

    private static final String EQUALS = "= ";

    private final transient PumpFigures figures;

    DerivationList(PumpFigures figures) {
        this.figures = figures;
        addClassNames("hw-sum", "u-ruled");
    }

    /** A result with whatever is said under it. */
    DerivationList line(String what, String result, String... under) {
        add(new Term(what), new Description(result));
        for (var words : under) {
            under(words);
        }
        return this;
    }

    /** The result that the others lead to. */
    DerivationList total(String what, String result, String... under) {
        var term = new Term(what);
        var value = new Description(result);
        term.addClassName("tot");
        value.addClassName("tot");
        add(term, value);
        for (var words : under) {
            under(words);
        }
        return this;
    }

    /** The time from one moment to another, in days of 24 hours; a change of the clock in between counts. */
    DerivationList time(Instant from, Instant to) {
        var say = figures.words();
        var time = Elapsed.between(from, to);
        var minutes = Duration.between(from, to).minusDays(time.wholeDays()).toMinutes();
        var how = say.say(
                "pump.sums.time.how", time.wholeDays(), minutes, Long.toString(minutes), figures.figure(time.inDays()));
        var changed = figures.clockChange(from, to);
        var what = say.say("pump.sums.time", figures.moment(from), figures.moment(to));
        return changed == 0
                ? line(what, figures.result(time.inDays()), how)
                : line(what, figures.result(time.inDays()), how, say.say("pump.sums.time.clock", changed));
    }

    /** Every line of it with its figures. */
    DerivationList derivation(Derivation how) {
        how.lines()
                .forEach(line -> line(what(line), figures.result(line.result().value()), filled(line)));
        return this;
    }

    /** Every line of it, first with letters and then with its figures. */
    DerivationList withLetters(Derivation how) {
        how.lines().forEach(line -> {
            add(
                    new Term(what(line)),
                    new Description(figures.result(line.result().value())));
            // letters are no words of any language
            under(letters(line)).getElement().setAttribute("translate", "no");
            under(EQUALS + filled(line));
        });
        return this;
    }

    private Description under(String words) {
        var under = new Description(words);
        under.addClassName("f");
        add(under);
        return under;
    }

    private String what(Derivation.Line line) {
        return figures.words().say("pump.sums.what." + line.formula());
    }

    private String filled(Derivation.Line line) {
        var result = line.result().value();
        var numbers = numbers(line);
        if (!figures.isRounded(result)) {
            return numbers;
        }
        return numbers + (figures.isCut(result) ? " \u2248 " : " " + EQUALS) + figures.figure(result);
    }

    private String numbers(Derivation.Line line) {
        return inWords(line, figure -> figures.figure(figure.value()))
                .orElseGet(() -> signs(line.numbers(figures::figure)));
    }

    private String letters(Derivation.Line line) {
        return inWords(line, figure -> signs(figure.symbol().text()))
                .map(words -> signs(line.result().symbol().text()) + " = " + words)
                .orElseGet(() -> signs(line.symbols()));
    }

    private Optional<String> inWords(Derivation.Line line, Function<Figure, String> writing) {
        return IN_WORDS.contains(line.formula())
                ? Optional.of(figures.words()
                        .say(
                                "pump.sums.formula." + line.formula(),
                                line.figures().stream().map(writing).toArray()))
                : Optional.empty();
    }

    /** Signs of arithmetic as people write them; figures have none of these with spaces around. */
    static String signs(String formula) {
        return formula.replace(" - ", " \u2212 ").replace(" / ", " \u00f7 ").replace('\'', '\u2032');
    }
}
