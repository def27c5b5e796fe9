package org.hearthway.task.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.task.Assignee;
import org.hearthway.task.PlainWords;
import org.hearthway.task.Task;
import org.hearthway.task.Tasks.Asked;
import org.hearthway.task.Tasks.Choice;
import org.hearthway.task.Tasks.Ready;
import org.hearthway.words.Words;

/** Gives a task, or says one anew. A ready text fills the fields and gives nothing by itself. */
final class GiveForm extends Section {

    /** What the form asks of its page. */
    interface Acts {
        /** Takes what was typed; refuses with {@link Invalid}. */
        void take(Asked asked);

        /** Drops what was typed. */
        void leave();
    }

    /**
     * What can be chosen.
     *
     * @param choices whom it can be given to
     * @param ready the ready texts
     * @param stages the stages of the path, by their names in tasks
     * @param name says for whom a task is
     */
    record Offer(
            List<Choice> choices, List<Ready> ready, Map<String, String> stages, Function<Assignee, String> name) {}

    private static final int PAUSE_MILLIS = 700;

    private final transient Words words;
    private final Language language;
    private final transient Offer offer;
    private final Select<Choice> to = new Select<>();
    private final ComboBox<Ready> ready = new ComboBox<>();
    private final Map<Language, TextArea> says = new LinkedHashMap<>();
    private final DayField due;
    private final Select<String> stage = new Select<>();

    GiveForm(Words words, Language language, Offer offer, Optional<Task> known, Acts acts) {
        this.words = words;
        this.language = language;
        this.offer = offer;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields");
        var title = say(known.isPresent() ? "task.change" : "task.give");
        getElement().setAttribute("aria-label", title);
        to.setLabel(say("task.form.to"));
        to.setItems(offer.choices());
        to.setItemLabelGenerator(choice -> offer.name().apply(choice.to()));
        to.setId("task-to");
        to.setWidthFull();
        ready.setLabel(say("task.form.ready"));
        ready.setItems(offer.ready());
        ready.setItemLabelGenerator(text -> text.says().in(language));
        ready.setHelperText(say("task.form.ready.help"));
        ready.setClearButtonVisible(true);
        ready.setId("task-ready");
        ready.setWidthFull();
        for (var each : Language.values()) {
            var area = new TextArea(say("task.form.says." + each.tag()));
            area.setWidthFull();
            area.setMinRows(2);
            area.setId("task-" + each.tag());
            area.getElement().setAttribute("lang", each.tag());
            // a pause of the typing is enough: the words below are a hint and no verdict
            area.setValueChangeMode(ValueChangeMode.LAZY);
            area.setValueChangeTimeout(PAUSE_MILLIS);
            area.addValueChangeListener(typed -> help());
            says.put(each, area);
        }
        due = new DayField(say("task.form.due"), words, language);
        due.setId("task-due");
        stage.setLabel(say("task.form.stage"));
        stage.setItems(offer.stages().keySet());
        stage.setItemLabelGenerator(
                id -> id == null ? say("task.form.stage.none") : offer.stages().getOrDefault(id, id));
        stage.setEmptySelectionAllowed(true);
        stage.setEmptySelectionCaption(say("task.form.stage.none"));
        stage.setHelperText(say("task.form.stage.help"));
        stage.setId("task-stage");
        stage.setWidthFull();
        stage.setVisible(!offer.stages().isEmpty());
        to.addValueChangeListener(chosen -> help());
        ready.addValueChangeListener(
                chosen -> Optional.ofNullable(chosen.getValue()).ifPresent(this::fill));
        known.ifPresentOrElse(
                this::recall, () -> offer.choices().stream().findFirst().ifPresent(to::setValue));
        help();
        var save = Tags.button("main", title, pressed -> send(acts));
        save.setId("task-give");
        add(Tags.div("hw-colh", Tags.h2("", title)), to, ready);
        says.values().forEach(this::add);
        var buttons = Tags.div("u-row u-end");
        if (known.isPresent()) {
            buttons.add(Tags.button("plain", say("task.leave"), pressed -> acts.leave()));
        }
        buttons.add(save);
        add(due, stage, Tags.p("hw-sub u-my2", say("task.form.hint")), buttons);
    }

    private void recall(Task task) {
        offer.choices().stream()
                .filter(choice -> choice.to().equals(task.to()))
                .findFirst()
                .ifPresent(to::setValue);
        field(Language.EN).setValue(task.says().en());
        field(Language.ES).setValue(task.says().es());
        due.setValue(task.due());
        task.stage().filter(offer.stages()::containsKey).ifPresent(stage::setValue);
    }

    private void fill(Ready text) {
        text.role()
                .<Assignee>map(Assignee.AnyOf::new)
                .or(() -> Optional.of(new Assignee.Family()))
                .filter(assignee -> !isAlready(assignee))
                .flatMap(assignee -> offer.choices().stream()
                        .filter(choice -> choice.to().equals(assignee))
                        .findFirst())
                .ifPresent(to::setValue);
        field(Language.EN).setValue(text.says().en());
        field(Language.ES).setValue(text.says().es());
        due.setValue(text.due());
        stage.setValue(text.stage().filter(offer.stages()::containsKey).orElse(null));
    }

    /** One caregiver who was chosen before stays chosen, and so does a person of the team. */
    private boolean isAlready(Assignee assignee) {
        return to.getValue() != null && to.getValue().to().isOfTheFamily() == assignee.isOfTheFamily();
    }

    private TextArea field(Language language) {
        return java.util.Objects.requireNonNull(says.get(language));
    }

    private void help() {
        var choice = Optional.ofNullable(to.getValue());
        var family = choice.filter(one -> one.to().isOfTheFamily()).isPresent();
        var reads = choice.map(Choice::reads).orElse(Set.of());
        says.forEach((each, area) -> {
            var key = family ? (reads.contains(each) ? "needed" : "optional") : "team";
            var hard = family && PlainWords.areHard(each, area.getValue());
            area.setHelperText(say(hard ? "task.form.says.hard" : "task.form.says." + key));
        });
    }

    private Map<String, HasValidation> fields() {
        return Map.of("to", to, "en", field(Language.EN), "es", field(Language.ES), "due", due, "stage", stage);
    }

    private void send(Acts acts) {
        fields().values().forEach(field -> field.setInvalid(false));
        try {
            if (to.getValue() == null) {
                throw new Invalid(Problem.at("to", "task.problem.to.nobody"));
            }
            var day = due.getOptionalValue().orElseThrow(() -> new Invalid(Problem.at("due", "task.problem.no-day")));
            acts.take(new Asked(
                    to.getValue().to(),
                    field(Language.EN).getValue(),
                    field(Language.ES).getValue(),
                    day,
                    Optional.ofNullable(stage.getValue())));
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields(), words, language);
        }
    }

    private String say(String key) {
        return words.say(language, key);
    }
}
