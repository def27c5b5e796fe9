package org.hearthway.family;

import com.vaadin.flow.component.checkbox.Checkbox;
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
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.Signs;

/** Notes to the team: not read at night, so the page says to call first. */
@Route("my/:child/notes")
@PermitAll
class NotesView extends FamilyPage {

    private static final int SHOWN = 20;

    private final transient Signs signs;
    private final transient Gate gate;
    private final transient CallLines lines;

    NotesView(Readers readers, Signs signs, Gate gate, CallLines lines) {
        super(readers);
        this.signs = signs;
        this.gate = gate;
        this.lines = lines;
    }

    @Override
    Place place() {
        return Place.CALL;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.notes.title");
    }

    @Override
    void draw(Reader reader) {
        add(Bits.hero(reader.say("family.notes.about", reader.name()), reader.say("family.notes.title")));
        var words = Tags.div("", Bits.el("b", "", reader.say("family.notes.not-at-night") + " "));
        words.add(Tags.span("", reader.say("family.notes.hours", officeHours(reader)) + " "));
        words.add(Tags.link("u-kiln", reader.address("call"), reader.say("family.notes.call")));
        add(Bits.strip("ember u-mb3", Icon.HOURS, words));
        if (gate.allows(reader.viewer(), Action.REPORT, reader.id())) {
            write(reader);
        } else {
            add(Bits.strip("quiet", Icon.LOCK, reader.say("family.view-only")));
        }
        var notes = signs.of(reader.viewer(), reader.id()).stream()
                .filter(report -> report.signs().isEmpty())
                .limit(SHOWN)
                .toList();
        if (!notes.isEmpty()) {
            add(new ReportList(reader, reader.say("family.notes.own"), notes, List.of()));
        }
    }

    private String officeHours(Reader reader) {
        return CallRows.only(lines.lines(), Urgency.HOURS).stream()
                .map(line -> reader.text(line.detail()))
                .findFirst()
                .orElse("");
    }

    private void write(Reader reader) {
        var key = UUID.randomUUID();
        var note = new TextArea(reader.say("family.notes.yours"));
        note.setWidthFull();
        note.setMinRows(4);
        asked("about").filter("refill"::equals).ifPresent(about -> note.setValue(reader.say("family.notes.refill")));
        var draft = new Draft(reader, "note", note);
        var teamOnly = new Checkbox(reader.say("family.notes.team-only"));
        teamOnly.setId("note-team-only");
        teamOnly.addClassName("hw-team-only");
        var send = Tags.button(
                "main wide big",
                reader.say("family.notes.send"),
                pressed -> send(reader, key, note, teamOnly.getValue(), draft));
        add(Tags.div("hw-stack", draft, teamOnly, send));
    }

    private void send(Reader reader, UUID key, TextArea note, boolean teamOnly, Draft draft) {
        if (note.isEmpty()) {
            tell(note, reader.say("family.notes.empty"));
            return;
        }
        try {
            signs.report(
                    reader.viewer(),
                    reader.id(),
                    new Signs.ReportData(key, List.of(), false, note.getValue(), teamOnly));
            draft.forget();
            Told.done(reader.say("family.notes.sent"));
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
