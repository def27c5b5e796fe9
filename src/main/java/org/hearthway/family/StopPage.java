package org.hearthway.family;

import com.vaadin.flow.component.html.Div;
import java.util.List;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.CallLines.Line;
import org.hearthway.sign.Sign.Urgency;

/** After severe pain: stop, call. Nothing else is asked of the family today. */
class StopPage extends Div {

    StopPage(Reader reader, DayStory day, List<Line> lines) {
        addClassName("hw-stop");
        var severe = day.severe().orElseThrow();
        var exercise = reader.text(severe.exercise().name());
        var pain = severe.logged().flatMap(l -> l.entry().pain()).orElseThrow();
        add(Bits.hero(
                reader.say("family.stop.pain", exercise, pain),
                reader.say("family.today.stop"),
                Tags.p("u-lead", reader.say("family.stop.why"))));
        add(new CallRows(reader, CallRows.only(lines, Urgency.URGENT, Urgency.NOW)));
        add(Tags.p("hw-first", reader.say("family.stop.when-now")));
        add(Bits.strip("quiet", Icon.REST, reader.say("family.stop.rest")));
        var after = Tags.div("hw-stack u-mt5");
        if (reader.isHelper()) {
            add(Bits.strip("", Icon.PERSON, reader.say("family.help.tell", reader.name())));
        } else {
            after.add(Tags.link(
                    "hw-button plain wide",
                    reader.address("call") + "?" + CallView.AFTER_THE_CALL,
                    reader.say("family.stop.report")));
        }
        after.add(Tags.link(
                "hw-button text wide",
                reader.address("exercise/" + severe.exercise().id()),
                reader.say("family.stop.correct")));
        add(after);
    }
}
