package org.hearthway.family;

import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs.ReportData;

/** What the family saw, told after the call. It never replaces the call, and says so. */
class ReportForm extends Section {

    /** The same for every press of Send, so that one form counts once. */
    private final UUID key = UUID.randomUUID();

    private final transient Reader reader;
    private final List<String> chosen = new ArrayList<>();
    private final Choice<Called> called;
    private final TextArea note;
    private final Draft draft;
    private final Faults faults = new Faults();

    /** Whether the family has called. */
    enum Called {
        YES,
        NOT_YET
    }

    ReportForm(Reader reader, List<Sign> signs, Consumer<ReportData> send) {
        this.reader = reader;
        addClassNames("hw-sheet", "hw-tell", "u-mt5");
        setId("report");
        getElement().setAttribute("aria-label", reader.say("family.report"));
        called = Choice.of(
                reader,
                "family.report.called",
                "family.called.",
                List.of(Called.values()),
                "hw-chips",
                c -> java.util.Optional.empty());
        note = new TextArea(reader.say("family.report.note"));
        note.setWidthFull();
        note.setMinRows(2);
        draft = new Draft(reader, "report", note);
        add(
                Tags.h2("u-xl", reader.say("family.report")),
                Tags.p("hw-quiet", reader.say("family.report.after")),
                Bits.el("h3", "u-l", reader.say("family.report.signs")));
        var list = Bits.el("ul", "hw-picks");
        signs.forEach(sign -> list.add(Bits.el("li", "", pick(sign))));
        add(Bits.el(
                "details",
                "hw-more",
                Bits.el("summary", "hw-button plain wide", reader.say("family.report.choose")),
                list));
        add(Bits.el("h3", "u-l", reader.say("family.report.called")), called, draft, faults.at(""));
        add(Tags.button("main wide", reader.say("family.report.send"), pressed -> send(send)));
    }

    private NativeButton pick(Sign sign) {
        var button = new NativeButton();
        button.addClassName("hw-pick");
        button.getElement().setAttribute("type", "button");
        button.getElement().setAttribute("role", "checkbox");
        button.getElement().setAttribute("aria-checked", "false");
        button.add(Bits.el("span", "hw-tick", Icon.CHECK.draw()), Tags.span("", reader.text(sign.says())));
        button.addClickListener(pressed -> {
            var on = !chosen.remove(sign.id());
            if (on) {
                chosen.add(sign.id());
            }
            button.getElement().setAttribute("aria-checked", String.valueOf(on));
        });
        return button;
    }

    private void send(Consumer<ReportData> send) {
        if (chosen.isEmpty()) {
            faults.tell("", reader.say("family.report.none"));
            return;
        }
        if (called.chosen().isEmpty()) {
            faults.tell("", reader.say("family.report.called-unsaid"));
            return;
        }
        try {
            send.accept(new ReportData(
                    key, chosen, called.chosen().filter(Called.YES::equals).isPresent(), note.getValue()));
            draft.forget();
        } catch (Invalid invalid) {
            faults.tell(reader, invalid);
        }
    }
}
