package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
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
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.ChildPlan;
import org.hearthway.path.Plans.Preview;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Template.Outcome;
import org.hearthway.words.Words;

/** Changes one stage of a child's plan: what would move stands under the fields before anything is saved. */
final class ChangeForm extends Section {

    private static final int REASON_MOST = 500;

    /** What is meant by a day. */
    private enum How {
        FIX,
        BY_HAND,
        BY_RULE,
        ENDED,
        SKIP,
        OWN_GAP,
        SHARED_GAP
    }

    private static final Set<How> DATED = EnumSet.of(How.FIX, How.BY_HAND, How.ENDED);

    /** What the form asks of its page. */
    interface Acts {
        /** Shows what would move; refuses with {@link Invalid}. */
        Preview preview(Change change);

        /** What has to be entered elsewhere after the change was saved, if anything has. */
        Optional<Component> after(Change change);

        /** Saves; refuses with {@link Invalid}. */
        void save(Change change, String reason);

        /** Drops everything typed. */
        void leave();
    }

    private final transient StageWords say;
    private final transient Words words;
    private final transient Planned stage;
    private final transient Course course;
    private final transient Acts acts;
    private final RadioButtonGroup<How> how = new RadioButtonGroup<>();
    private final RadioButtonGroup<Outcome> outcome = new RadioButtonGroup<>();
    private final DayField day;
    private final RuleFields rule;
    private final TextField reason = new TextField();
    private final Div moves = new Div();

    ChangeForm(StageWords say, Words words, ChildPlan plan, Planned stage, Acts acts) {
        this.say = say;
        this.words = words;
        this.stage = stage;
        this.acts = acts;
        this.course = plan.course();
        this.day = new DayField(say.say("path.change.day"), words, say.language());
        this.rule = new RuleFields(say, plan.plan().template(), stage.stage(), course, this::show);
        addClassNames("hw-sheet", "u-preview", "u-own", "hw-fields");
        var name = stage.stage().name().in(say.language());
        getElement().setAttribute("aria-label", name);
        ask();
        add(
                Tags.div("hw-colh", Tags.h2("", name)),
                how,
                outcome,
                day,
                rule,
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
            choices.add(How.OWN_GAP);
            if (ownGap().isPresent()) {
                choices.add(How.SHARED_GAP);
            }
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
        rule.setVisible(false);
        how.addValueChangeListener(change -> {
            day.setVisible(DATED.contains(change.getValue()));
            outcome.setVisible(change.getValue() == How.ENDED);
            rule.setVisible(change.getValue() == How.OWN_GAP);
            show();
        });
        day.setWidthFull();
        day.addValueChangeListener(change -> show());
        reason.setLabel(say.say("path.change.reason"));
        reason.setMaxLength(REASON_MOST);
        reason.setWidthFull();
        reason.setValueChangeMode(ValueChangeMode.ON_BLUR);
    }

    /** Which rule of the stage is another one for this child, if one is. */
    private Optional<Integer> ownGap() {
        return course.gaps().keySet().stream()
                .filter(place -> place.stage().equals(stage.stage().id()))
                .map(Course.RuleAt::at)
                .min(Integer::compare);
    }

    private Map<String, HasValidation> fields() {
        Map<String, HasValidation> fields = new HashMap<>(Map.of("reason", reason, "outcome", outcome));
        fields.put("usual", rule.usual());
        if (day.isVisible()) {
            fields.put("day", day);
        }
        return fields;
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
            case OWN_GAP -> rule.change();
            case SHARED_GAP -> ownGap().map(at -> new Change.SharedRule(id, at));
        };
    }

    /** Draws what would move, or says at the field why it cannot be. */
    void show() {
        moves.removeAll();
        day.setInvalid(false);
        change().ifPresent(change -> {
            try {
                moves.add(new MoveList(say, acts.preview(change), change));
                acts.after(change).ifPresent(moves::add);
            } catch (Invalid invalid) {
                var says = words.say(say.language(), invalid.problems().get(0));
                if (day.isVisible()) {
                    day.setErrorMessage(says);
                    day.setInvalid(true);
                } else {
                    moves.add(Tags.div("hw-banner u-my2", Icon.CLASH.draw(), Tags.span("", says)));
                }
            }
        });
    }

    private Problem missing() {
        if (how.getValue() == How.OWN_GAP) {
            return rule.isWrong()
                    ? Problem.at("usual", "path.problem.rule-number", GapField.MOST)
                    : Problem.at("usual", "path.problem.rule-earliest");
        }
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
