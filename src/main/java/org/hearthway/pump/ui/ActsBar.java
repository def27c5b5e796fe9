package org.hearthway.pump.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import java.util.Locale;
import org.hearthway.parts.Icon;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;

/** What a person can do on the page of a pump; of recording only those see it who may, and only while a pump is in. */
final class ActsBar extends Div {

    private final transient PumpWords say;

    ActsBar(PumpWords say, PumpReading reading, PumpActs acts, Runnable stopped) {
        this.say = say;
        addClassNames("hw-pumpacts", "u-row", "u-wrap");
        var isIn = reading.takenOutOn().isEmpty();
        if (records(reading)) {
            record(acts);
        } else if (isIn) {
            add(Tags.span("hw-quiet", say.say("pump.state.read-only")));
        }
        add(Tags.span("grow", ""));
        if (isIn) {
            add(Tags.button("plain", Icon.URGENT, say.say("pump.stop.open"), pressed -> stopped.run()));
        }
        add(
                Tags.link("hw-button plain", "staff/child/" + reading.child() + "/pump/how", say.say("pump.how.open")),
                Tags.button(
                        "plain",
                        Icon.PRINT,
                        say.say("pump.state.print"),
                        pressed -> UI.getCurrent().getPage().executeJs("window.print()")));
    }

    private static boolean records(PumpReading reading) {
        return reading.mayRecord() && reading.takenOutOn().isEmpty();
    }

    private void record(PumpActs acts) {
        add(
                Keys.press(
                        Tags.button("main", say.say("pump.state.refill"), pressed -> acts.refill()),
                        key("pump.state.key.refill")),
                Tags.button("plain", say.say("pump.state.elsewhere"), pressed -> acts.elsewhere()),
                Keys.press(
                        Tags.button("plain", say.say("pump.state.change"), pressed -> acts.change()),
                        key("pump.state.key.change")),
                Tags.button("plain", say.say("pump.state.figures"), pressed -> acts.figures()));
    }

    private String key(String key) {
        return say.say(key).toLowerCase(Locale.ROOT);
    }

    /** The line that tells the keys of what is there. */
    static KeyBar keys(PumpWords say, PumpReading reading) {
        var bar = new KeyBar();
        if (records(reading)) {
            bar.tell(say.say("pump.state.refill"), say.say("pump.state.key.refill"))
                    .tell(say.say("pump.state.change"), say.say("pump.state.key.change"))
                    .tell(say.say("pump.form.send"), say.say("parts.key.ctrl"), say.say("parts.key.enter"));
        }
        return bar.remark(say.say("pump.keys.written-down"));
    }
}
