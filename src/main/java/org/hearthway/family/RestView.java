package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.program.ProgramPauses;
import org.hearthway.program.ProgramPauses.Asked;
import org.hearthway.program.ProgramPauses.Pause;
import org.hearthway.program.ProgramPauses.Why;

/** A family lets the exercises rest for an illness or a holiday, and goes on again. */
@Route("my/:child/rest")
@PermitAll
class RestView extends FamilyPage {

    private final transient ProgramPauses pauses;
    private final transient Gate gate;

    RestView(Readers readers, ProgramPauses pauses, Gate gate) {
        super(readers);
        this.pauses = pauses;
        this.gate = gate;
    }

    @Override
    Place place() {
        return Place.WEEK;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.resting.title");
    }

    @Override
    Optional<String> below() {
        return Optional.of(title(reader()));
    }

    @Override
    void draw(Reader reader) {
        add(Bits.hero(
                reader.say("family.notes.about", reader.name()),
                title(reader),
                Tags.p("u-lead", reader.say("family.resting.means"))));
        var may = gate.allows(reader.viewer(), Action.LOG_SESSION, reader.id());
        var today = reader.today();
        var now = pauses.all(reader.viewer(), reader.id()).stream()
                .filter(pause -> pause.end().filter(end -> !end.isAfter(today)).isEmpty())
                .toList();
        var list = Bits.el("ul", "hw-stack u-gap2");
        now.forEach(pause -> list.add(held(reader, pause, may)));
        add(list);
        if (may) {
            add(form(reader));
        } else {
            add(Bits.strip("quiet", Icon.LOCK, reader.say("family.view-only")));
        }
    }

    private Component held(Reader reader, Pause pause, boolean may) {
        var item = Bits.el("li", "hw-sheet hw-told", Bits.el("p", "hw-b", RestingProgram.said(reader, pause)));
        if (!pause.note().isBlank()) {
            item.add(Bits.el("p", "hw-s", pause.note()));
        }
        item.add(Tags.p(
                "hw-s hw-quiet",
                reader.say(
                        "family.resting.by",
                        pause.by(),
                        LocalDate.ofInstant(pause.at(), reader.viewer().zone()))));
        if (may) {
            var today = reader.today();
            var begun = !pause.from().isAfter(today);
            var first = begun ? today : pause.from();
            item.add(Tags.button(
                    "main wide",
                    reader.say(begun ? "family.resting.go-on" : "family.resting.undo"),
                    pressed -> goOn(reader, pause, first)));
            if (begun) {
                item.add(Tags.button(
                        "plain wide",
                        reader.say("family.resting.go-on.tomorrow"),
                        pressed -> goOn(reader, pause, today.plusDays(1))));
            }
        }
        return item;
    }

    private void goOn(Reader reader, Pause pause, LocalDate first) {
        try {
            pauses.goOn(reader.viewer(), reader.id(), pause.number(), first);
            Told.done(reader.say("family.resting.goes-on", first));
        } catch (Invalid | Overtaken changed) {
            // what it was refused for is that the pause is another by now, and the page shows it
            Told.couldNot(reader.say("family.help.overtaken"));
        }
        refresh();
    }

    private Component form(Reader reader) {
        var why = Choice.of(
                reader,
                "family.resting.why",
                "family.resting.why.",
                List.of(Why.values()),
                "hw-chips",
                each -> Optional.empty());
        var from = new DayField(reader.say("family.resting.from"), reader.words(), reader.language());
        from.setValue(reader.today());
        from.setWidthFull();
        from.setId("rest-from");
        var last = new DayField(reader.say("family.resting.last"), reader.words(), reader.language());
        last.setWidthFull();
        last.setId("rest-last");
        var note = new TextArea(reader.say("family.resting.note"));
        note.setWidthFull();
        note.setId("rest-note");
        Map<String, HasValidation> fields = Map.of("from", from, "last", last, "note", note);
        var save = Tags.button("main wide", reader.say("family.resting.save"), pressed -> {
            try {
                if (why.chosen().isEmpty() || from.getValue() == null) {
                    throw new Invalid(Problem.at(
                            why.chosen().isEmpty() ? "why" : "from",
                            why.chosen().isEmpty() ? "family.resting.no-why" : "family.resting.no-day"));
                }
                pauses.pause(
                        reader.viewer(),
                        reader.id(),
                        new Asked(
                                from.getValue(),
                                Optional.ofNullable(last.getValue()),
                                why.chosen().orElseThrow(),
                                note.getValue()));
                Told.done(reader.say("family.resting.saved"));
                refresh();
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, reader.words(), reader.language());
            }
        });
        save.setId("rest-save");
        return Tags.div(
                "hw-stack u-gap2 u-mt5",
                Tags.h2("hw-h2", reader.say("family.resting.new")),
                Tags.p("hw-s", reader.say("family.resting.why")),
                why,
                from,
                last,
                note,
                save);
    }
}
