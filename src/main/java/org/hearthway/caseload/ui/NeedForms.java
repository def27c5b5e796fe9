package org.hearthway.caseload.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.caseload.Needs.Outcome;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** The two short forms of Needs a look. They close when what was typed is taken, and keep it when it is not. */
final class NeedForms {

    private static final int MAX = 500;

    private final Words words;
    private final Language language;

    NeedForms(Words words, Language language) {
        this.words = words;
        this.language = language;
    }

    /** Takes a day and a reason, or refuses with {@link Invalid}. */
    interface Aside {
        void on(LocalDate until, String reason);
    }

    /** Takes an outcome and words, or refuses with {@link Invalid}. */
    interface Close {
        void with(Outcome outcome, String words);
    }

    void setAside(String about, LocalDate tomorrow, LocalDate last, Aside taken) {
        var until = new DatePicker(say("caseload.aside.until-label"), tomorrow);
        until.setLocale(language.locale());
        until.setMin(tomorrow);
        until.setMax(last);
        until.setHelperText(say("caseload.aside.until-help", last));
        var reason = text("caseload.aside.reason");
        ask(
                "caseload.aside.title",
                about,
                "caseload.aside.do",
                Map.of("until", until, "reason", reason),
                List.of(until, reason),
                () -> taken.on(until.getValue() == null ? tomorrow.minusDays(1) : until.getValue(), reason.getValue()));
        reason.focus();
    }

    void close(String about, Close taken) {
        var outcome = new RadioButtonGroup<Outcome>(say("caseload.close.outcome"));
        outcome.setItems(Outcome.values());
        outcome.setValue(Outcome.SPOKE);
        outcome.setItemLabelGenerator(o -> say("caseload.outcome." + o.name()));
        var reason = text("caseload.close.words");
        ask(
                "caseload.close.title",
                about,
                "caseload.close.do",
                Map.of("outcome", outcome, "words", reason),
                List.of(outcome, reason),
                () -> taken.with(outcome.getValue(), reason.getValue()));
        reason.focus();
    }

    private TextField text(String label) {
        var field = new TextField(say(label));
        field.setMaxLength(MAX);
        field.setWidthFull();
        return field;
    }

    private void ask(
            String title,
            String about,
            String doIt,
            Map<String, ? extends HasValidation> fields,
            List<? extends Component> shown,
            Runnable submit) {
        var dialog = new Dialog();
        dialog.setHeaderTitle(say(title));
        var body = Tags.div("hw-form", Tags.p("hw-quiet", about));
        shown.forEach(body::add);
        Runnable take = () -> {
            try {
                submit.run();
                dialog.close();
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, words, language);
            }
        };
        var save = Tags.button("main", say(doIt), pressed -> take.run());
        var leave = Tags.button("plain", say("caseload.leave"), pressed -> dialog.close());
        // Enter in the line of words is enough
        Shortcuts.addShortcutListener(body, take::run, Key.ENTER)
                .resetFocusOnActiveElement()
                .listenOn(body);
        dialog.add(body);
        dialog.getFooter().add(Tags.div("u-row", leave, save));
        dialog.open();
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
