package org.hearthway.family;

import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.UUID;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.sign.Signs;

/** Notes to the team: not read at night, so the page says to call first. */
@Route("my/:child/notes")
@PermitAll
class NotesView extends FamilyPage {

    private static final int SHOWN = 20;

    private final transient Signs signs;
    private final transient Gate gate;
    private final transient CallRows.Numbers numbers;

    NotesView(Readers readers, Signs signs, Gate gate, CallRows.Numbers numbers) {
        super(readers);
        this.signs = signs;
        this.gate = gate;
        this.numbers = numbers;
    }

    @Override
    Place place() {
        return Place.CALL;
    }

    @Override
    String title(Reader reader) {
        return reader.say("notes.title");
    }

    @Override
    void draw(Reader reader) {
        add(Bits.hero(reader.say("notes.about", reader.name()), reader.say("notes.title")));
        var words = Tags.div("", Bits.el("b", "", reader.say("notes.not-at-night") + " "));
        words.add(Tags.span("", reader.say("notes.hours", numbers.hours(reader)) + " "));
        words.add(Tags.link("u-kiln", reader.address("call"), reader.say("notes.call")));
        add(Bits.strip("ember u-mb3", Icon.HOURS, words));
        if (gate.allows(reader.viewer(), Action.REPORT, reader.id())) {
            write(reader);
        } else {
            add(Bits.strip("quiet", Icon.LOCK, reader.say("view-only")));
        }
        var notes = signs.of(reader.viewer(), reader.id()).stream()
                .filter(report -> report.signs().isEmpty())
                .limit(SHOWN)
                .toList();
        if (!notes.isEmpty()) {
            add(new ReportList(reader, reader.say("notes.own"), notes));
        }
    }

    private void write(Reader reader) {
        var key = UUID.randomUUID();
        var note = new TextArea(reader.say("notes.yours"));
        note.setWidthFull();
        note.setMinRows(4);
        asked("about").filter("refill"::equals).ifPresent(about -> note.setValue(reader.say("notes.refill")));
        var send = Tags.button("main wide big", reader.say("notes.send"), pressed -> send(reader, key, note));
        add(Tags.div("hw-stack", note, send));
    }

    private void send(Reader reader, UUID key, TextArea note) {
        if (note.isEmpty()) {
            tell(note, reader.say("notes.empty"));
            return;
        }
        try {
            signs.report(reader.viewer(), reader.id(), new Signs.ReportData(key, List.of(), false, note.getValue()));
            Told.done(reader.say("notes.sent"));
            refresh();
        } catch (Invalid invalid) {
            tell(note, reader.say(invalid.problems().get(0)));
        }
    }

    private static void tell(TextArea note, String words) {
        note.setErrorMessage(words);
        note.setInvalid(true);
        note.focus();
    }
}
