package org.hearthway.family;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Div;
import org.hearthway.figure.Figure;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.parts.Tags;

/** A day without exercises: what the day is for, and what comes tomorrow. */
class RestDay extends Div {

    RestDay(Reader reader, Figure resting, DayStory tomorrow, String why) {
        add(figure(reader, resting));
        add(Tags.p("u-lead", why));
        var stack = Tags.div("hw-stack u-mt5");
        if (!tomorrow.planned().isEmpty()) {
            stack.add(tomorrow(reader, tomorrow));
        }
        var words = Tags.div("", Tags.span("", reader.say("family.rest.mind") + " "));
        words.add(Tags.link("u-kiln", reader.address("notes"), reader.say("family.rest.write")));
        words.add(Tags.span("", " " + reader.say("family.rest.read")));
        stack.add(Bits.strip("quiet", Icon.NOTES, words));
        add(stack);
    }

    /** A child lies resting by the hearth. */
    static HtmlContainer figure(Reader reader, Figure resting) {
        return Bits.el(
                "figure", "hw-rest", hearth(reader.say("family.rest.picture")), Pictures.start(reader, resting, false));
    }

    private static com.vaadin.flow.component.Component tomorrow(Reader reader, DayStory tomorrow) {
        var key = Tags.span("k", Icon.WEEK.draw("sm"));
        key.add(Tags.span("", reader.say("family.rest.tomorrow")));
        var count = reader.say("family.rest.count", tomorrow.planned().size(), tomorrow.minutes());
        var first = reader.text(tomorrow.planned().get(0).exercise().name());
        return Tags.link(
                "hw-fact",
                reader.address("week"),
                key,
                Tags.span("v", count),
                Tags.p("d", reader.say("family.rest.first", first)));
    }

    /** A doorway with a light in it, and the way before it: two stones behind, one lit, two to come. */
    static Drawing hearth(String says) {
        var picture = new SvgText("hw-hearth", 0, 0, 358, 236)
                .named(says)
                .shape("path", "class", "ht-room", "d", "M59 196V124a120 114 0 0 1 240 0v72z")
                .shape("ellipse", "class", "st-glow breathe", "cx", "179", "cy", "158", "rx", "96", "ry", "52")
                .shape("path", "class", "ht-door", "d", "M59 196V124a120 114 0 0 1 240 0v72M22 196h314");
        for (int i = 0; i < 5; i++) {
            var lit = i == 2;
            var outline = Stone.outline(59 + 60 * i, 217, lit ? 28 : 19, lit ? 11 : 7.5, i + 20);
            picture.shape("path", "class", i < 2 ? "st-done" : lit ? "st-now" : "st-later", "d", outline);
            if (lit) {
                picture.shape("path", "class", "st-now-edge", "d", outline);
            }
        }
        return new Drawing(picture);
    }
}
