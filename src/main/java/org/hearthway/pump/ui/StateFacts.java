package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import org.hearthway.parts.Tags;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.engine.BolusMode;
import org.hearthway.pump.engine.Dosing;

/** What was filled, how strong it is and how it is given, in words. */
final class StateFacts extends Div {

    private final transient PumpFigures figures;
    private final transient PumpWords say;

    StateFacts(PumpFigures figures, PumpReading reading) {
        this.figures = figures;
        this.say = figures.words();
        var facts = new DerivationList(figures);
        reading.outlook().fill().ifPresent(fill -> filled(facts, fill));
        reading.outlook()
                .setting()
                .ifPresentOrElse(
                        set -> facts.line(say.say("pump.state.strength"), figures.result(set.strength())),
                        () -> facts.line(say.say("pump.state.strength"), say.say("pump.state.unknown")));
        add(facts);
        reading.outlook().setting().ifPresent(set -> dosing(set, reading.rules().bolus()));
    }

    private void filled(DerivationList facts, PumpEntry fill) {
        var refill = (PumpEntry.Refill) fill.what();
        facts.line(
                say.say(refill.elsewhere() ? "pump.state.filled.elsewhere" : "pump.state.filled"),
                say.date(figures.day(fill.at())));
        facts.line(
                say.say("pump.state.volume"),
                refill.injected().map(figures::result).orElse(say.say("pump.state.unknown")));
    }

    private void dosing(Setting set, BolusMode mode) {
        var words = new DosingWords(figures);
        var list = new DescriptionList();
        list.addClassName("hw-dosing");
        list.add(new DescriptionList.Term(say.say("pump.state.dosing")));
        list.add(new DescriptionList.Description(words.line(set)));
        add(list);
        DayCurve.of(set, say).ifPresent(this::add);
        var parts = words.parts(set);
        if (!parts.isEmpty()) {
            var steps = new UnorderedList();
            steps.addClassName("hw-steps");
            parts.forEach(part -> steps.add(new ListItem(part)));
            add(steps);
        }
        if (set.dosing() instanceof Dosing.Cycle cycle && !cycle.day().boluses().isEmpty()) {
            add(Tags.p("hw-sub", say.say("pump.state.bolus." + mode)));
        }
    }
}
