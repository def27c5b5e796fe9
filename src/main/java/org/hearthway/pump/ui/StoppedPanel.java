package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasComponents;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Optional;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.Elapsed;
import org.hearthway.pump.engine.RefillWindow;

/**
 * A pump that stopped or a refill that was missed: the time that is left, what a sudden stop does, what staff do now and
 * what the family is told. While it is open, it alone is printed.
 */
final class StoppedPanel extends Div {

    private static final int STAFF_STEPS = 5;
    private static final int EARLY_SIGNS = 5;
    private static final int LATE_SIGNS = 5;
    private static final int FAMILY_STEPS = 5;
    private static final int FACTS = 4;
    private static final int HOURS_A_DAY = 24;

    private final transient PumpWords say;

    StoppedPanel(PumpFigures figures, PumpReading reading, ClinicSettings clinic, Runnable close) {
        this.say = figures.words();
        addClassNames("hw-sheet", "u-edged", "hw-stopped");
        setId("pump-stopped");
        getElement().setAttribute("role", "region");
        getElement().setAttribute("aria-label", say.say("pump.stop.title"));
        getElement().setAttribute("tabindex", "-1");
        var print = Tags.button(
                "plain",
                Icon.PRINT,
                say.say("pump.stop.print"),
                pressed -> UI.getCurrent().getPage().executeJs("window.print()"));
        add(Tags.div(
                "hw-colh",
                Tags.h2("", say.say("pump.stop.title")),
                Tags.span("grow", ""),
                print,
                Tags.button("text", say.say("pump.stop.close"), pressed -> close.run())));
        add(Tags.p("hw-b", say.say("pump.stop.now")));
        add(calls(clinic));
        add(left(figures, reading));
        var family = new OrderedList();
        for (var i = 1; i <= FAMILY_STEPS; i++) {
            family.add(new ListItem(say.say("pump.stop.family." + i, clinic.urgentLine(), clinic.emergencyNumber())));
        }
        add(Tags.div(
                "hw-stopcols",
                Tags.div(
                        "",
                        part("pump.stop.staff", list(new OrderedList(), "pump.stop.staff.", STAFF_STEPS)),
                        part("pump.stop.family", family)),
                Tags.div(
                        "",
                        part("pump.stop.danger", list(new UnorderedList(), "pump.stop.danger.", FACTS)),
                        part("pump.stop.early", list(new UnorderedList(), "pump.stop.early.", EARLY_SIGNS)),
                        part("pump.stop.late", list(new UnorderedList(), "pump.stop.late.", LATE_SIGNS)),
                        Tags.p("hw-sub", say.say("pump.stop.danger.source")))));
        add(Tags.p("hw-sub", say.say("pump.stop.caution")));
    }

    private Component part(String title, Component list) {
        return Tags.div("", Tags.h2("", say.say(title)), list);
    }

    private <L extends Component & HasComponents> L list(L list, String keys, int count) {
        for (var i = 1; i <= count; i++) {
            list.add(new ListItem(say.say(keys + i)));
        }
        return list;
    }

    private Component calls(ClinicSettings clinic) {
        return Tags.div(
                "u-row u-wrap",
                call(say.say("pump.stop.call.urgent", clinic.urgentLine()), clinic.urgentLine()),
                call(say.say("pump.stop.call.emergency", clinic.emergencyNumber()), clinic.emergencyNumber()));
    }

    private static Component call(String words, String number) {
        var link = new Anchor("tel:" + number.replaceAll("[^+0-9]", ""), words);
        link.addClassNames("hw-button", "plain");
        return link;
    }

    private DerivationList left(PumpFigures figures, PumpReading reading) {
        var list = new DerivationList(figures);
        var reservoir = reading.outlook()
                .reservoir()
                .filter(known -> reading.refillInCheck().isEmpty());
        if (reading.isStopped() && reservoir.isPresent()) {
            // what is left in it helps nobody: no time to the alarm could be told that did not calm
            return list.line(
                    say.say("pump.stop.left.stopped"),
                    figures.moment(reservoir.get().last().at()),
                    say.say("pump.stop.left.stopped.why"));
        }
        if (reservoir.isEmpty()) {
            return list.line(
                    say.say("pump.stop.left.alarm"),
                    reading.outlook()
                            .window()
                            .filter(window -> reading.refillInCheck().isEmpty())
                            .flatMap(RefillWindow::alarm)
                            .map(say::full)
                            .orElse(say.say("pump.state.unknown")),
                    say.say("pump.stop.left.unknown"));
        }
        var known = reservoir.get();
        return list.line(say.say("pump.stop.left.volume"), figures.result(known.at(reading.now())))
                .line(
                        say.say("pump.stop.left.alarm"),
                        left(known.leftToAlarm(reading.now())),
                        known.alarm().map(at -> figures.moment(at.at())).orElse(""))
                .line(
                        say.say("pump.stop.left.empty"),
                        left(known.leftToEmpty(reading.now())),
                        known.empty().map(at -> figures.moment(at.at())).orElse(""))
                .line(say.say("pump.stop.left.as-set"), "");
    }

    private String left(Optional<Elapsed> left) {
        if (left.isEmpty()) {
            return say.say("pump.stop.left.never");
        }
        var hours = left.get().exact().longValue();
        return hours == 0
                ? say.say("pump.stop.left.none")
                : say.say("pump.stop.left.days", hours / HOURS_A_DAY, hours % HOURS_A_DAY);
    }
}
