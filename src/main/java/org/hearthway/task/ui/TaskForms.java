package org.hearthway.task.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.task.Tasks;
import org.hearthway.words.Words;

/** The two short forms that ask for a reason. They close when what was typed is taken, and keep it when it is not. */
final class TaskForms {

    private final Words words;
    private final Language language;

    TaskForms(Words words, Language language) {
        this.words = words;
        this.language = language;
    }

    /** Takes a day and a reason, or refuses with {@link Invalid}. */
    interface Aside {
        void until(LocalDate day, String reason);
    }

    void notNeeded(String about, Consumer<String> taken) {
        var reason = reason("task.not-needed.why");
        ask("task.not-needed", about, Map.of("reason", reason), List.of(reason), () -> taken.accept(reason.getValue()));
        reason.focus();
    }

    void setAside(String about, LocalDate today, Aside taken) {
        var until = new DayField(say("task.aside.until"), words, language);
        until.setId("task-until");
        var reason = reason("task.aside.why");
        ask(
                "task.aside",
                about,
                Map.of("until", until, "reason", reason),
                List.of(until, reason),
                () -> taken.until(until.getOptionalValue().orElse(today), reason.getValue()));
        until.focus();
    }

    private TextField reason(String label) {
        var field = new TextField(say(label));
        field.setMaxLength(Tasks.REASON_MAX);
        field.setWidthFull();
        field.setId("task-reason");
        return field;
    }

    private void ask(
            String title,
            String about,
            Map<String, ? extends HasValidation> fields,
            List<? extends Component> shown,
            Runnable submit) {
        var dialog = new Dialog();
        dialog.setHeaderTitle(say(title));
        var body = Tags.div("hw-form", Tags.p("hw-quiet", about));
        shown.forEach(body::add);
        var save = Tags.button("main", say(title), pressed -> {
            try {
                submit.run();
                dialog.close();
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, words, language);
            }
        });
        save.setId("task-take");
        var leave = Tags.button("plain", say("task.leave"), pressed -> dialog.close());
        dialog.add(body);
        dialog.getFooter().add(Tags.div("u-row", leave, save));
        dialog.open();
    }

    private String say(String key) {
        return words.say(language, key);
    }
}
