package org.hearthway.path.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.radiobutton.RadioGroupVariant;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans.Beginning;
import org.hearthway.path.Plans.Outlook;
import org.hearthway.path.Plans.Start;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.words.Words;

/**
 * Begins a path: which one, at which stage and from which day, when the stages before it were done, and why. What the
 * plan would be and what sources advise stands there before anything is saved.
 */
final class BeginForm extends Section {

    private static final int REASON_MOST = 500;

    /** What the form asks for; the first two refuse with {@link Invalid}. */
    interface Acts {
        /** What it would do. */
        Outlook outlook(Start start);

        /** Begins it. */
        void begin(Start start, String reason);

        /** Drops everything typed. */
        void leave();
    }

    private final transient StageWords say;
    private final transient Words words;
    private final transient LocalDate today;
    private final transient Acts acts;
    private final RadioButtonGroup<Template> pathway = new RadioButtonGroup<>();
    private final RadioButtonGroup<Beginning> how = new RadioButtonGroup<>();
    private final Select<Stage> stage = new Select<>();
    private final DayField day;
    private final TextField reason = new TextField();
    private final Div done = Tags.div("hw-fields");
    private final Div outlook = Tags.div("hw-outlook");
    private final transient Map<Stage, DayField> before = new LinkedHashMap<>();
    private transient Optional<NativeDetails> others = Optional.empty();

    /**
     * Asks.
     *
     * @param another whether the child is on a path already
     */
    BeginForm(StageWords say, Words words, List<Template> pathways, boolean another, LocalDate today, Acts acts) {
        this.say = say;
        this.words = words;
        this.today = today;
        this.acts = acts;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "u-own", "hw-fields");
        getElement().setAttribute("aria-label", say.say("path.begin.title"));
        pathway.setLabel(say.say("path.begin.pathway"));
        pathway.addThemeVariants(RadioGroupVariant.LUMO_VERTICAL);
        pathway.setItems(pathways);
        pathway.setItemLabelGenerator(path -> path.name().in(say.language()));
        how.setLabel(say.say("path.begin.how"));
        how.addThemeVariants(RadioGroupVariant.LUMO_VERTICAL);
        how.setItems(Beginning.BESIDE, Beginning.INSTEAD);
        how.setItemLabelGenerator(one -> say.say("path.begin.how." + one.name()));
        how.setValue(Beginning.BESIDE);
        how.setVisible(another);
        stage.setLabel(say.say("path.begin.stage"));
        stage.setHelperText(say.say("path.begin.stage.hint"));
        stage.setItemLabelGenerator(this::label);
        stage.setWidthFull();
        stage.setVisible(false);
        day = new DayField(say.say("path.begin.day"), words, say.language());
        day.setValue(today);
        day.setWidthFull();
        reason.setLabel(say.say("path.change.reason"));
        reason.setMaxLength(REASON_MOST);
        reason.setWidthFull();
        outlook.getElement().setAttribute("aria-live", "polite");
        pathway.addValueChangeListener(chosen -> offerStages());
        how.addValueChangeListener(chosen -> show());
        stage.addValueChangeListener(chosen -> askBefore());
        day.addValueChangeListener(chosen -> show());
        add(
                Tags.div("hw-colh", Tags.h2("", say.say("path.begin.title"))),
                Tags.p("hw-s hw-quiet", say.say("path.begin.hint")),
                pathway,
                how,
                stage,
                day,
                done,
                outlook,
                reason,
                Tags.div(
                        "u-row u-wrap u-end",
                        Tags.button("plain", say.say("path.change.leave"), pressed -> acts.leave()),
                        Tags.button("main", say.say("path.begin.do"), pressed -> begin())));
        Shortcuts.addShortcutListener(this, acts::leave, Key.ESCAPE).listenOn(this);
    }

    private String label(Stage one) {
        var name = one.name().in(say.language());
        return pathway.getOptionalValue()
                        .flatMap(Template::chosenAt)
                        .filter(one.id()::equals)
                        .isPresent()
                ? say.say("path.begin.stage.tested", name)
                : name;
    }

    /** The first one stands there until another is chosen. */
    private void offerStages() {
        var stages = pathway.getOptionalValue().map(Template::stages).orElse(List.of());
        stage.setItems(stages);
        stage.setVisible(stages.size() > 1);
        stages.stream().findFirst().ifPresent(stage::setValue);
        askBefore();
    }

    /** A day for each stage in front of the chosen one; what was typed for one that stays is kept. */
    private void askBefore() {
        var front = front();
        before.keySet().removeIf(one -> !front.contains(one));
        var fields = new LinkedHashMap<Stage, DayField>();
        front.forEach(
                one -> fields.put(one, Optional.ofNullable(before.get(one)).orElseGet(() -> dayOf(one))));
        before.clear();
        before.putAll(fields);
        drawBefore();
        day.setLabel(say.say(front.isEmpty() ? "path.begin.day" : "path.begin.day.stage"));
        show();
    }

    /** The days that are needed stand there, the others are folded. */
    private void drawBefore() {
        done.removeAll();
        others = Optional.empty();
        if (before.isEmpty()) {
            return;
        }
        done.add(Tags.div(
                "",
                Tags.span("hw-b", say.say("path.begin.before")),
                Tags.p("hw-s hw-quiet", say.say("path.begin.before.hint"))));
        var needed =
                pathway.getValue().neededBefore(stage.getValue().id(), Set.of()).keySet();
        var folded = Tags.div("hw-fields");
        before.forEach((one, field) -> (needed.contains(one) ? done : folded).add(field));
        if (needed.size() < before.size()) {
            var details = new NativeDetails(say.say("path.begin.before.others", before.size() - needed.size()), folded);
            done.add(details);
            others = Optional.of(details);
        }
    }

    private DayField dayOf(Stage one) {
        var name = one.name().in(say.language());
        var field = new DayField(
                one.timing().optional() ? say.say("path.begin.before.optional", name) : name, words, say.language());
        field.setWidthFull();
        field.addValueChangeListener(change -> show());
        return field;
    }

    private List<Stage> front() {
        var first = stage.getOptionalValue();
        return first.flatMap(at -> pathway.getOptionalValue().map(path -> path.before(at.id())))
                .orElse(List.of());
    }

    private Map<String, HasValidation> fields() {
        var fields = new HashMap<String, HasValidation>(
                Map.of("pathway", pathway, "stage", stage, "day", day, "reason", reason));
        before.forEach((one, field) -> fields.put("before/" + one.id(), field));
        return fields;
    }

    private Start start() {
        var days = new HashMap<String, LocalDate>();
        before.forEach((one, field) -> field.getOptionalValue().ifPresent(known -> days.put(one.id(), known)));
        return new Start(
                pathway.getValue().id(),
                how.getValue(),
                stage.getOptionalValue().filter(any -> !before.isEmpty()).map(Stage::id),
                day.getValue(),
                days);
    }

    private void show() {
        outlook.removeAll();
        fields().values().forEach(field -> field.setInvalid(false));
        if (pathway.isEmpty() || day.isEmpty()) {
            return;
        }
        try {
            var would = acts.outlook(start());
            outlook.add(
                    new OutlookList(say, would, today),
                    new AdviceList(say, say.say("path.advice.title"), would.advice(), today));
        } catch (Invalid invalid) {
            refused(invalid);
        }
    }

    private void refused(Invalid invalid) {
        Told.problems(invalid.problems(), fields(), words, say.language());
        if (before.values().stream().anyMatch(field -> field.isInvalid() && !field.isEmpty())) {
            others.ifPresent(details -> details.setOpen(true));
        }
    }

    private void begin() {
        try {
            var problems = new ArrayList<Problem>();
            if (pathway.isEmpty()) {
                problems.add(Problem.at("pathway", "path.problem.pathway"));
            }
            if (day.isEmpty()) {
                problems.add(Problem.at("day", "path.problem.day"));
            }
            Invalid.ifAny(problems);
            acts.begin(start(), reason.getValue());
        } catch (Invalid invalid) {
            refused(invalid);
        }
    }
}
