package org.hearthway.family;

import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.Div;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.engine.ProgramLine;

/** The large figure: goes from start to end and back until paused; still where motion is not wanted. */
@JsModule("context://figure/moving-figure.js")
class Stage extends Div {

    Stage(Reader reader, Planned planned) {
        addClassName("hw-stage");
        var left = Side.isLeft(planned.line());
        var moving = Bits.el(
                "hw-moving-figure",
                "hw-tone-" + reader.child().skinTone(),
                Tags.div(
                        "hw-poses",
                        Pictures.start(reader, planned.exercise().figure(), left),
                        Pictures.told(reader, planned.exercise(), left)));
        moving.getElement()
                .setAttribute("data-src", Pictures.moving(reader, planned.exercise(), left))
                .setAttribute("data-show", reader.say("family.exercise.show"))
                .setAttribute("data-stop", reader.say("family.exercise.show.stop"))
                .setAttribute("data-pause", reader.say("family.exercise.show.pause"))
                .setAttribute("data-play", reader.say("family.exercise.show.play"));
        if (planned.line().side() != ProgramLine.Side.NONE) {
            var side = "family.exercise.side." + planned.line().side();
            add(Tags.span("hw-side", Bits.el("b", "", reader.say(side + ".letter")), Tags.span("", reader.say(side))));
        }
        var button = Bits.el(
                "button",
                "hw-button plain",
                Icon.PLAY.draw("sm", "play"),
                Icon.PAUSE.draw("sm", "pause"),
                Bits.el("span", "", reader.say("family.exercise.show")));
        button.getElement().setAttribute("type", "button");
        moving.add(Tags.div("over", button));
        addComponentAsFirst(moving);
    }
}
