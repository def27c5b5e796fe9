package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.parts.Tags;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.engine.Conversion;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.engine.Derivation;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.Formula;
import org.hearthway.pump.engine.OrderBy;
import org.hearthway.pump.engine.Reservoir;
import org.hearthway.pump.engine.ScheduleTotal;
import org.hearthway.pump.engine.Symbol;
import org.hearthway.pump.engine.TimeLeft;

/** Every sum behind the page, by what it is about; with letters on the page that explains them. */
final class PumpSumsList extends Div {

    private final transient PumpFigures figures;
    private final boolean letters;
    private final transient Set<Symbol> symbols = EnumSet.noneOf(Symbol.class);

    PumpSumsList(PumpFigures figures, PumpReading reading, boolean letters) {
        this.figures = figures;
        this.letters = letters;
        var outlook = reading.outlook();
        outlook.setting().ifPresent(set -> {
            schedule(set);
            conversion(set).ifPresent(how -> part("pump.sums.part.flow", how));
        });
        outlook.reservoir()
                .filter(reservoir -> reading.now().isAfter(reservoir.filling().at()))
                .ifPresent(reservoir -> today(reservoir, reading));
        outlook.forecast().ifPresent(forecast -> part("pump.sums.part.dates", forecast.how()));
        outlook.window()
                .ifPresent(window -> part(
                        "pump.sums.part.order",
                        OrderBy.of(window.opens(), reading.rules().refill(), reading.open())
                                .how()));
        outlook.replacement().ifPresent(plan -> part("pump.sums.part.replacement", plan.how()));
        if (letters) {
            outlook.refills().stream()
                    .findFirst()
                    .ifPresent(found ->
                            part("pump.sums.part.residual", found.residual().how()));
        }
    }

    /** The letters that stand in it. */
    Set<Symbol> symbols() {
        return Collections.unmodifiableSet(symbols);
    }

    private void part(String title, Derivation how) {
        part(title, new DerivationList(figures), how);
    }

    /** The times come first: nobody types them, and each programming has its own. */
    private void today(Reservoir reservoir, PumpReading reading) {
        var now = reading.now();
        var times = new DerivationList(figures);
        var nodes = reservoir.nodes();
        for (var i = 0; i < nodes.size() && nodes.get(i).at().isBefore(now); i++) {
            var next = i + 1 < nodes.size() ? nodes.get(i + 1).at() : now;
            times.time(nodes.get(i).at(), next.isBefore(now) ? next : now);
        }
        part("pump.sums.part.today", times, forThem(TimeLeft.of(reservoir, now).how(), reading));
    }

    /** How long it lasts until nothing is left is for those who record. */
    private static Derivation forThem(Derivation how, PumpReading reading) {
        return new Derivation(how.lines().stream()
                .filter(line -> reading.mayRecord() || line.formula() != Formula.DAYS_TO_EMPTY)
                .toList());
    }

    private void part(String title, DerivationList list, Derivation how) {
        how.lines().forEach(line -> {
            symbols.add(line.result().symbol());
            line.figures().forEach(figure -> symbols.add(figure.symbol()));
        });
        var says = figures.words().say(title);
        add(Tags.section(
                "hw-sumpart", says, Tags.h2("", says), letters ? list.withLetters(how) : list.derivation(how)));
    }

    private void schedule(Setting set) {
        if (set.dosing() instanceof Dosing.Cycle cycle) {
            part("pump.sums.part.schedule", ScheduleTotal.of(cycle.day()).how());
        } else if (set.dosing() instanceof Dosing.Week week) {
            week(set, week);
        }
    }

    /** Days that are alike are added up once; then the mean, which goes on from here. */
    private void week(Setting set, Dosing.Week week) {
        new LinkedHashSet<>(week.days().values())
                .forEach(day ->
                        part("pump.sums.part.schedule", ScheduleTotal.of(day).how()));
        var days = week.doses().stream().map(figures::figure).collect(Collectors.joining(" + "));
        var says = figures.words().say("pump.sums.part.week");
        add(Tags.section(
                "hw-sumpart",
                says,
                Tags.h2("", says),
                new DerivationList(figures)
                        .line(
                                figures.words().say("pump.sums.week"),
                                figures.result(set.dosing().perDay(set.strength())),
                                figures.words().say("pump.sums.week.how", days))));
    }

    private static Optional<Derivation> conversion(Setting set) {
        if (set.dosing() instanceof Dosing.FixedFlow fixed) {
            return Optional.of(Conversion.ofFlow(fixed.flow(), set.strength()).how());
        }
        var rate = set.dosing().perDay(set.strength());
        return rate.exact().signum() == 0
                ? Optional.empty()
                : Optional.of(Conversion.of(new DailyDose(rate.exact()), set.strength())
                        .how());
    }
}
