package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Overtaken;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.program.ProgramPauses.Asked;
import org.hearthway.program.ProgramPauses.Pause;
import org.hearthway.program.ProgramPauses.Why;

/** The whole program rests for an illness or a holiday: what is so now or soon, going on again, and a rest to come. */
final class Resting extends Div {

    /** What the panel asks of its page. */
    interface Acts {
        List<Pause> pauses();

        /** Lets the program rest; refuses with {@link Invalid}. */
        void pause(Asked asked);

        /** Goes on; refuses with {@link Invalid} or {@link Overtaken}. */
        void goOn(Pause pause, LocalDate first);

        LocalDate today();
    }

    private final transient Say say;
    private final transient Acts acts;
    private final boolean writes;
    private boolean open;
    private Why why = Why.ILL;

    Resting(Say say, boolean writes, Acts acts) {
        this.say = say;
        this.writes = writes;
        this.acts = acts;
        addClassName("hw-resting");
        draw();
    }

    private void draw() {
        removeAll();
        acts.pauses().stream()
                .filter(pause ->
                        pause.end().filter(end -> !end.isAfter(acts.today())).isEmpty())
                .forEach(pause -> add(told(pause)));
        if (!writes) {
            return;
        }
        if (open) {
            add(form());
        }
    }

    /** Opens the form, or closes it. */
    void turn() {
        open = !open;
        draw();
        if (open) {
            scrollIntoView();
        }
    }

    private Component told(Pause pause) {
        var today = acts.today();
        var begun = !pause.from().isAfter(today);
        var reason = say.one("rest.why", pause.why());
        var says = new Div(new Span(pause.end()
                .map(end -> say.say("rest.until", reason, say.date(pause.from()), say.date(end)))
                .orElseGet(() -> say.say("rest.open", reason, say.date(pause.from())))));
        if (!pause.note().isBlank()) {
            says.add(new Span(" " + say.say("quoted", pause.note())));
        }
        says.add(Tags.span("hw-sub", " " + say.say("rest.by", pause.by())));
        var banner = Tags.div("hw-banner u-mb2", Icon.PAUSE.draw(), says);
        if (writes) {
            banner.add(Tags.button(
                    "plain",
                    say.say(begun ? "rest.go-on" : "rest.undo"),
                    pressed -> goOn(pause, begun ? today : pause.from())));
        }
        return banner;
    }

    private void goOn(Pause pause, LocalDate first) {
        try {
            acts.goOn(pause, first);
            Told.done(say.say("rest.goes-on", say.date(first)));
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), Map.of(), say.words(), say.language());
        } catch (Overtaken changed) {
            Told.couldNot(say.say("rest.changed"));
        }
        draw();
    }

    private Component form() {
        var from = new DayField(say.say("rest.from"), say.words(), say.language());
        from.setValue(acts.today());
        var last = new DayField(say.say("rest.last"), say.words(), say.language());
        last.setHelperText(say.say("rest.last.hint"));
        var note = new TextField(say.say("rest.note"));
        note.addClassName("grow");
        var save = Tags.button("main", say.say("rest.save"), pressed -> {
            try {
                var first = Optional.ofNullable(from.getValue()).orElse(acts.today());
                acts.pause(new Asked(first, Optional.ofNullable(last.getValue()), why, note.getValue()));
                open = false;
                Told.done(say.say("rest.saved"));
                draw();
            } catch (Invalid invalid) {
                Told.problems(
                        invalid.problems(),
                        Map.of("from", from, "last", last, "note", note),
                        say.words(),
                        say.language());
            }
        });
        return Tags.section(
                "hw-panel",
                say.say("rest.title"),
                Tags.div("hw-colh", Tags.h2("", say.say("rest.title"))),
                Tags.p("hw-sub", say.say("rest.means")),
                Tags.div(
                        "hw-dates",
                        new Choose(
                                say.say("rest.why"),
                                List.of(Why.values()),
                                why,
                                one -> say.one("rest.why", one),
                                one -> why = one),
                        from,
                        last,
                        note,
                        save,
                        Tags.button("text", say.say("rest.not"), pressed -> turn())));
    }
}
