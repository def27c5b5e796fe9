package org.hearthway.family;

import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.html.Div;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Still;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.engine.ProgramLine;

/** The large figure: rests in the end position, shows start and end in turn when asked. */
@JsModule("context://offline/show-me.js")
class Stage extends Div {

    Stage(Reader reader, Planned planned) {
        addClassName("hw-stage");
        var picture = planned.exercise().picture();
        var says = reader.text(planned.exercise().name());
        var poses = Bits.el(
                "div",
                "hw-poses" + Side.mirror(planned.line()),
                Still.of(picture, Still.Pose.START, ""),
                Still.of(picture, Still.Pose.END, reader.say("family.exercise.picture", says)));
        add(poses);
        if (planned.line().side() != ProgramLine.Side.NONE) {
            var side = "family.exercise.side." + planned.line().side();
            add(Tags.span("hw-side", Bits.el("b", "", reader.say(side + ".letter")), Tags.span("", reader.say(side))));
        }
        var show = Bits.el("hw-show-me", "over");
        var button = Bits.el(
                "button",
                "hw-button plain",
                Icon.PLAY.draw("sm"),
                Bits.el("span", "", reader.say("family.exercise.show")));
        button.getElement().setAttribute("type", "button");
        show.getElement().setAttribute("data-show", reader.say("family.exercise.show"));
        show.getElement().setAttribute("data-stop", reader.say("family.exercise.show.stop"));
        show.add(button);
        add(show);
    }
}
