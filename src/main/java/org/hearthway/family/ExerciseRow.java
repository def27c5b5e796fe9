package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.NativeButton;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Planned;

/** One exercise in the list of a day: what, how much, a tick; the lit one is larger and has Start. */
class ExerciseRow extends Article {

    /** Told when the tick is pressed: tick it, or take it back. */
    interface Ticked {
        void tick(Planned planned, boolean done);
    }

    private final NativeButton tick = new NativeButton();

    /** A row; without {@code ticked} it only shows. */
    ExerciseRow(Reader reader, Planned planned, boolean lit, String address, Optional<Ticked> ticked) {
        var outcome = DayStory.outcome(planned);
        addClassNames("hw-ex", outcome.isPresent() ? "done" : lit ? "lit" : "later");
        var exercise = planned.exercise();
        var name = reader.text(exercise.name());
        var says = planned.logged()
                .map(logged -> DayWords.said(reader, logged))
                .orElseGet(() -> DoseWords.said(reader, planned.line(), planned.minutes()));
        add(Tags.div("hw-well", Pictures.end(reader, exercise, Side.isLeft(planned.line()))));
        add(Tags.div("", Bits.el("h2", "name", Tags.link("", address, name)), Tags.p("dose", says)));
        add(state(planned, name, ticked));
        if (lit && ticked.isPresent()) {
            add(Tags.link(
                    "hw-button main wide go", address, Icon.PLAY.draw(), Tags.span("", reader.say("family.start"))));
        }
    }

    /** A tick where ticking is allowed and makes sense; else the stone that says how it went. */
    private Component state(Planned planned, String name, Optional<Ticked> ticked) {
        var outcome = DayStory.outcome(planned);
        if (ticked.isPresent() && outcome.filter(o -> o != Outcome.DONE).isEmpty()) {
            return tick(planned, name, ticked.get());
        }
        return outcome.<Component>map(ExerciseRow::mark).orElseGet(() -> Tags.span("", ""));
    }

    private static HtmlContainer mark(Outcome outcome) {
        var state = switch (outcome) {
            case DONE -> "done";
            case SOME -> "some";
            case COULD_NOT -> "miss";
        };
        return Bits.el("span", "hw-went", Bits.pip(state));
    }

    private NativeButton tick(Planned planned, String name, Ticked ticked) {
        var done = planned.logged().isPresent();
        tick.addClassName("hw-tick");
        tick.setId("tick-" + planned.exercise().id());
        tick.getElement().setAttribute("type", "button");
        tick.getElement().setAttribute("role", "checkbox");
        tick.getElement().setAttribute("aria-checked", String.valueOf(done));
        tick.getElement().setAttribute("aria-label", name);
        tick.add(Icon.CHECK.draw());
        tick.addClickListener(pressed -> ticked.tick(planned, !done));
        return tick;
    }

    boolean isTickOf(String exercise) {
        return tick.getId().filter(("tick-" + exercise)::equals).isPresent();
    }

    /** Puts the focus back on the tick after the list was drawn again. */
    void focusTick() {
        tick.focus();
    }
}
