package org.hearthway.path.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.radiobutton.RadioGroupVariant;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.Preview;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Template.Outcome;
import org.hearthway.words.Words;

/** Gives one stage a day: what would move stands under the field before anything is saved. */
final class ChangeForm extends Section {

    private static final int REASON_MOST = 500;

    /** What is meant by a day. */
    private enum How {
        FIX,
        BY_HAND,
        BY_RULE,
        ENDED,
        SKIP
    }

    /** What the form asks of its page. */
    interface Acts {
        /** Shows what would move; refuses with {@link Invalid}. */
        Preview preview(Change change);

        /** Saves; refuses with {@link Invalid}. */
        void save(Change change, String reason);

        /** Drops everything typed. */
        void leave();
    }

    private final transient StageWords say;
    private final transient Words words;
    private final transient Planned stage;
    private final transient Acts acts;
    private final RadioButtonGroup<How> how = new RadioButtonGroup<>();
    private final RadioButtonGroup<Outcome> outcome = new RadioButtonGroup<>();
    private final DayField day;
    private final TextField reason = new TextField();
    private final Div moves = new Div();

    ChangeForm(StageWords say, Words words, Planned stage, Acts acts) {
        this.say = say;
        this.words = words;
        this.stage = stage;
        this.acts = acts;
        this.day = new DayField(say.say("path.change.day"), words, say.language());
        addClassNames("hw-sheet", "u-preview", "u-own", "hw-fields");
        var name = stage.stage().name().in(say.language());
        getElement().setAttribute("aria-label", name);
        ask();
        add(
                Tags.div("hw-colh", Tags.h2("", name)),
                how,
                outcome,
                day,
                moves,
                reason,
                Tags.p("hw-sub u-mb2", say.say("path.change.told")),
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("path.change.leave"), pressed -> acts.leave()),
                        Tags.button("main", say.say("path.change.save"), pressed -> save())));
        Shortcuts.addShortcutListener(this, acts::leave, Key.ESCAPE).listenOn(this);
    }

    private void ask() {
        var choices = new ArrayList<>(List.of(How.FIX, How.BY_HAND));
        if (stage.why().origin() != Origin.RULE) {
            choices.add(How.BY_RULE);
        }
        if (stage.round() == 1) {
            if (!stage.stage().outcomes().isEmpty()) {
                choices.add(How.ENDED);
            }
            choices.add(How.SKIP);
        }
        outcome.setLabel(say.say("path.change.outcome"));
        outcome.addThemeVariants(RadioGroupVariant.LUMO_VERTICAL);
        outcome.setItems(stage.stage().outcomes());
        outcome.setItemLabelGenerator(end -> end.name().in(say.language()));
        outcome.setVisible(false);
        outcome.addValueChangeListener(change -> show());
        how.setLabel(say.say("path.change.how"));
        how.addThemeVariants(RadioGroupVariant.LUMO_VERTICAL);
        how.setItems(choices);
        how.setItemLabelGenerator(h -> say.say("path.change.how." + h.name()));
        how.setValue(stage.stage().timing().signal() || stage.why().origin() == Origin.ACTUAL ? How.FIX : How.BY_HAND);
        how.addValueChangeListener(change -> {
            day.setVisible(change.getValue() != How.BY_RULE && change.getValue() != How.SKIP);
            outcome.setVisible(change.getValue() == How.ENDED);
            show();
        });
        day.setWidthFull();
        day.addValueChangeListener(change -> show());
        reason.setLabel(say.say("path.change.reason"));
        reason.setMaxLength(REASON_MOST);
        reason.setWidthFull();
        reason.setValueChangeMode(ValueChangeMode.ON_BLUR);
    }

    private Map<String, HasValidation> fields() {
        return Map.of("day", day, "reason", reason, "outcome", outcome);
    }

    private Optional<Change> change() {
        var id = stage.point();
        var typed = Optional.ofNullable(day.getValue());
        return switch (how.getValue()) {
            case FIX -> typed.map(d -> new Change.Fix(id, d));
            case BY_HAND -> typed.map(d -> new Change.SetByHand(id, d));
            case BY_RULE -> Optional.of(new Change.ByRule(id));
            case ENDED -> typed.flatMap(d -> outcome.getOptionalValue().map(o -> new Change.End(id, o.id(), d)));
            case SKIP -> Optional.of(new Change.Skip(id));
        };
    }

    /** Draws what would move, or says at the field why it cannot be. */
    void show() {
        moves.removeAll();
        day.setInvalid(false);
        change().ifPresent(change -> {
            try {
                moves.add(new MoveList(say, acts.preview(change), change));
            } catch (Invalid invalid) {
                var problem = invalid.problems().get(0);
                day.setErrorMessage(words.say(say.language(), problem));
                day.setInvalid(true);
            }
        });
    }

    private Problem missing() {
        return how.getValue() == How.ENDED && outcome.isEmpty()
                ? Problem.at("outcome", "path.problem.outcome")
                : Problem.at("day", "path.problem.day");
    }

    private void save() {
        try {
            var change = change().orElseThrow(() -> new Invalid(missing()));
            acts.save(change, reason.getValue());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields(), words, say.language());
        }
    }
}
