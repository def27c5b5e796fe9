package org.hearthway.pump.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.pump.engine.OrderBy;
import org.hearthway.pump.engine.PrintOutCheck;
import org.hearthway.pump.engine.RefillForecast;
import org.hearthway.pump.engine.RefillRules;
import org.hearthway.pump.engine.RefillWindow;

/** The dates of a pump, each with what it rests on and which of it is the clinic's own rule. */
final class PumpDates {

    private final PumpFigures figures;
    private final PumpWords say;
    private final PumpReading reading;
    private final DerivationList list;

    PumpDates(PumpFigures figures, PumpReading reading) {
        this.figures = figures;
        this.say = figures.words();
        this.reading = reading;
        this.list = new DerivationList(figures);
    }

    /** What is known of them. */
    DerivationList all() {
        reading.outlook().window().ifPresent(this::window);
        reading.outlook()
                .forecast()
                .filter(forecast -> reading.mayRecord())
                .flatMap(RefillForecast::empty)
                .ifPresent(empty -> list.line(
                        say.say("pump.state.empty"),
                        say.date(figures.day(empty.at())),
                        say.say("pump.state.empty.never")));
        reading.outlook().window().ifPresent(window -> {
            life(window);
            order(window);
        });
        reading.outlook()
                .replacement()
                .ifPresent(plan -> list.line(
                        say.say("pump.state.replacement"),
                        say.date(plan.planFrom()),
                        say.say(
                                "pump.state.replacement.why",
                                say.date(plan.implanted()),
                                say.date(plan.end()),
                                figures.result(reading.rules().replacement().span()))));
        return list;
    }

    private void window(RefillWindow window) {
        var why = new ArrayList<String>();
        why.add(
                window.decides() == RefillForecast.Limit.ALARM
                        ? say.say(
                                "pump.state.window.ALARM",
                                window.marginDays(),
                                reading.rules().refill().marginDays())
                        : say.say("pump.state.window." + window.decides()));
        why.add(say.say("pump.state.window.length", reading.rules().refill().windowDays()));
        list.total(
                say.say("pump.state.window"),
                say.say("pump.state.window.days", say.date(window.opens()), say.date(window.day())),
                why.toArray(String[]::new));
        window.alarm()
                .ifPresent(alarm -> list.line(
                        say.say("pump.state.alarm"),
                        say.date(alarm),
                        alarms(window).toArray(String[]::new)));
    }

    private List<String> alarms(RefillWindow window) {
        if (window.printOut().isPresent()) {
            var check = window.printOut().get();
            return List.of(
                    say.say("pump.state.alarm.both", say.date(check.ours()), say.date(check.printed())), stands(check));
        }
        return List.of(say.say(
                reading.outlook().reservoir().isPresent() ? "pump.state.alarm.ours" : "pump.state.alarm.printed"));
    }

    private String stands(PrintOutCheck check) {
        if (check.daysApart() == 0) {
            return say.say("pump.state.alarm.agree");
        }
        return say.say(
                check.printed().equals(check.stands())
                        ? "pump.state.alarm.print-stands"
                        : "pump.state.alarm.ours-stands",
                check.daysApart(),
                reading.rules().refill().printOutDays());
    }

    private void life(RefillWindow window) {
        var byLabel = window.filled().plusDays(reading.rules().refill().lifeDays());
        list.line(
                say.say("pump.state.life"),
                say.date(window.lifeEnds()),
                window.lifeEnds().equals(byLabel)
                        ? say.say(
                                "pump.state.life.label",
                                reading.rules().refill().lifeDays())
                        : say.say("pump.state.life.beyond-use"));
    }

    /** For the first day of the window, so that the drug is there on each of them. */
    private void order(RefillWindow window) {
        list.line(
                say.say("pump.state.order"),
                say.date(order(window.opens())),
                say.say(
                        "pump.state.order.why",
                        say.date(window.opens()),
                        reading.rules().refill().orderDays()),
                say.say("pump.state.order.last", say.date(window.day()), say.date(order(window.day()))));
    }

    private LocalDate order(LocalDate visit) {
        RefillRules rules = reading.rules().refill();
        return OrderBy.of(visit, rules, reading.open()).day();
    }
}
