package org.hearthway.path.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.ClinicValues.LeftOut;
import org.hearthway.path.ClinicValues.Preview;
import org.hearthway.path.ClinicValues.Rule;
import org.hearthway.path.ClinicValues.StageValues;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.ValuePlace;

/** Changes values of one or several rules as one change: which plans move stands under the fields before it is saved. */
final class ValuesForm extends Section {

    /** What the form asks of its page. */
    interface Acts {
        /** What it would do; refuses with {@link Invalid}. */
        Preview preview(Map<ValuePlace, Optional<Amount>> wishes);

        /** Saves; refuses with {@link Invalid}. */
        void save(Map<ValuePlace, Optional<Amount>> wishes, String reason);

        /** The children whose plans move. */
        MovedChildren moved(Preview preview);

        /** Drops everything typed. */
        void leave();
    }

    private final transient ValueSay say;
    private final transient Acts acts;
    private final transient List<ValueFields> taken = new ArrayList<>();
    private final transient List<ValuePlace> dropped = new ArrayList<>();
    private final Div rules = Tags.div("hw-value-rules");
    private final Div moves = Tags.div("hw-value-moves");
    private final TextArea reason = new TextArea();

    ValuesForm(ValueSay say, Acts acts) {
        this.say = say;
        this.acts = acts;
        addClassNames("hw-sheet", "u-preview", "u-own", "hw-values-form");
        getElement().setAttribute("aria-label", say.say("path.values.form.title"));
        moves.getElement().setAttribute("aria-live", "polite");
        reason.setLabel(say.say("path.change.reason"));
        reason.setMaxLength(ClinicValues.REASON_MAX);
        reason.setValueChangeMode(ValueChangeMode.ON_BLUR);
        reason.setManualValidation(true);
        reason.setWidthFull();
        add(
                Tags.div("hw-colh", Tags.h2("", say.say("path.values.form.title"))),
                rules,
                Tags.p("hw-sub", say.say("path.values.form.also")),
                moves,
                reason,
                Tags.p("hw-sub", say.say("path.values.form.told")),
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("path.change.leave"), pressed -> acts.leave()),
                        Tags.button("main", say.say("path.values.form.save"), pressed -> save())));
        Shortcuts.addShortcutListener(this, acts::leave, Key.ESCAPE).listenOn(this);
    }

    /** Takes one more rule in; one that is there gets the keys. */
    void take(StageValues stage, Rule rule) {
        var there = taken.stream().filter(fields -> fields.isOf(rule)).findFirst();
        if (there.isPresent()) {
            there.get().focus();
            return;
        }
        var fields = new ValueFields(say, stage, rule, this::show);
        taken.add(fields);
        rules.add(fields);
        show();
        fields.focus();
    }

    private Stream<AmountField> fields() {
        return taken.stream().flatMap(fields -> fields.fields().stream());
    }

    /** Takes back a value that no longer fits. */
    void drop(LeftOut left) {
        if (!dropped.contains(left.place())) {
            dropped.add(left.place());
            rules.add(Tags.p("", say.say("path.values.dropped", say.in(left.name()))));
        }
        show();
    }

    private Map<ValuePlace, Optional<Amount>> wishes() {
        var wishes = new LinkedHashMap<ValuePlace, Optional<Amount>>();
        dropped.forEach(place -> wishes.put(place, Optional.empty()));
        // a rule that was typed itself is not overruled by one that takes it along
        for (int at = taken.size() - 1; at >= 0; at--) {
            taken.get(at).wishes().forEach(wishes::putIfAbsent);
        }
        fields().forEach(field ->
                field.wish().ifPresent(wish -> wishes.put(field.value().place(), wish)));
        return wishes;
    }

    private Map<String, HasValidation> byField() {
        var all = new HashMap<String, HasValidation>();
        fields().forEach(field -> all.put(ClinicValues.field(field.value().place()), field));
        all.put("reason", reason);
        return all;
    }

    private List<Problem> missing() {
        return fields().filter(field -> field.amount().isEmpty())
                .map(field -> Problem.at(
                        ClinicValues.field(field.value().place()),
                        "path.values.problem.amount",
                        field.value().name()))
                .toList();
    }

    /** Draws what would move, or says at the field why it cannot be. */
    void show() {
        moves.removeAll();
        var byField = byField();
        byField.values().forEach(field -> field.setInvalid(false));
        var wishes = wishes();
        if (!missing().isEmpty() || wishes.isEmpty()) {
            moves.add(Tags.p("hw-quiet hw-s", say.say("path.values.preview.unchanged")));
            return;
        }
        try {
            moves.add(acts.moved(acts.preview(wishes)));
        } catch (Invalid invalid) {
            invalid.problems().forEach(problem -> tell(problem, byField));
        }
    }

    private void tell(Problem problem, Map<String, HasValidation> byField) {
        var says = say.words().say(say.language(), problem);
        var field = byField.get(problem.field());
        if (field == null) {
            moves.add(Tags.div("hw-banner", Icon.CLASH.draw(), Tags.div("", Tags.p("", says))));
        } else {
            field.setErrorMessage(says);
            field.setInvalid(true);
        }
    }

    private void save() {
        try {
            Invalid.ifAny(missing());
            acts.save(wishes(), reason.getValue());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), byField(), say.words(), say.language());
        }
    }
}
