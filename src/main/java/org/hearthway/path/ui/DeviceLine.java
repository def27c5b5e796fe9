package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.util.List;
import org.hearthway.base.ChildId;
import org.hearthway.child.Device;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.PathDevices.Behind;
import org.hearthway.path.engine.Template.DeviceFate;

/** Leads from what a path says of a device to the record of devices, which only a person can put right. */
record DeviceLine(StageWords say, ChildId child) {

    /** Before it is saved: what has to be entered afterwards. */
    Component preview(DeviceFate fate) {
        return banner(new Span(say.say("path.device.preview." + fate) + " "), aside());
    }

    /** Before a path is ended with a device in the body: ending it says nothing of the device. */
    Component closing(Device.Kind kind) {
        return banner(new Span(say.say("path.device.closing." + kind) + " "), aside());
    }

    /** What stands until the record says the same. */
    Component standing(List<Behind> all, LocalDate today) {
        var box = new Div();
        for (var behind : all) {
            var said = say.say(
                    "path.device.said",
                    behind.stage().in(say.language()),
                    behind.outcome().in(say.language()),
                    say.date(behind.day(), today));
            box.add(banner(
                    Tags.span("hw-b", say.say("path.device." + behind.fate()) + " "),
                    new Span(said + " "),
                    Tags.link("", place(), say.say("path.device.link"))));
        }
        return box;
    }

    private String place() {
        return "staff/child/" + child + "/device";
    }

    /** In a window of its own: what was typed stays. */
    private Anchor aside() {
        var link = new Anchor(place(), say.say("path.device.link"));
        link.setTarget("_blank");
        link.setRouterIgnore(true);
        return link;
    }

    private static Component banner(Component... says) {
        var words = Tags.div("", says);
        return Tags.div("hw-banner u-my2 u-start", Icon.INFO.draw(), words);
    }
}
