package org.hearthway.family;

import com.vaadin.flow.component.html.Div;
import java.util.List;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.Sign.Urgency;

/** After severe pain: stop, call. Nothing else is asked of the family today. */
class StopPage extends Div {

    StopPage(Reader reader, DayStory day, CallRows.Numbers numbers) {
        addClassName("hw-stop");
        var severe = day.severe().orElseThrow();
        var exercise = reader.text(severe.exercise().name());
        var pain = severe.logged().flatMap(l -> l.entry().pain()).orElseThrow();
        add(Bits.hero(
                reader.say("stop.pain", exercise, pain),
                reader.say("today.stop"),
                Tags.p("u-lead", reader.say("stop.why"))));
        add(new CallRows(reader, numbers, List.of(Urgency.URGENT, Urgency.NOW)));
        add(Tags.p("hw-first", reader.say("stop.when-now")));
        add(Bits.strip("quiet", Icon.REST, reader.say("stop.rest")));
        add(Tags.div(
                "hw-stack u-mt5",
                Tags.link("hw-button plain wide", reader.address("call") + "#report", reader.say("stop.report")),
                Tags.link(
                        "hw-button text wide",
                        reader.address("exercise/" + severe.exercise().id()),
                        reader.say("stop.correct"))));
    }
}
