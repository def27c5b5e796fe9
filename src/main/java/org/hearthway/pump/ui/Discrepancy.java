package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Map;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.pump.engine.PrintOutCheck;
import org.hearthway.words.Words;

/** Print-out and our alarm date are apart: both, which of them stands, and why, once somebody has said it. */
final class Discrepancy extends Div {

    private static final int MOST = 500;

    private final transient PumpWords say;

    Discrepancy(PumpFigures figures, PrintOutCheck check, PumpReading reading) {
        this.say = figures.words();
        addClassName("hw-notices");
        var says = Tags.div(
                "",
                Tags.span("hw-b", say.say("pump.state.apart", check.daysApart())),
                new Span(" "),
                new Span(say.say(
                        "pump.state.apart.both",
                        say.date(check.ours()),
                        say.date(check.printed()),
                        say.date(check.stands()),
                        reading.rules().refill().printOutDays())));
        reading.outlook()
                .explained()
                .ifPresent(said -> says.add(Tags.p(
                        "hw-sub",
                        say.say(
                                "pump.state.apart.explained",
                                said.words(),
                                reading.name(said.by()),
                                figures.moment(said.at())))));
        add(Tags.div("hw-banner", Icon.CLASH.draw(), says));
    }

    /** Lets a person say why; what is typed stays when it is refused. */
    Discrepancy ask(Words words, Consumer<String> explain) {
        var why = new TextArea(say.say("pump.state.apart.why"));
        why.setMaxLength(MOST);
        why.setWidthFull();
        add(Tags.div(
                "hw-fields",
                why,
                Tags.div("u-row u-end", Tags.button("plain", say.say("pump.state.apart.keep"), pressed -> {
                    try {
                        explain.accept(why.getValue());
                    } catch (Invalid invalid) {
                        Told.problems(invalid.problems(), Map.of("explained", why), words, say.language());
                    }
                }))));
        return this;
    }
}
