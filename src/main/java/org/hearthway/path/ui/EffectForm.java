package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans.Effect;
import org.hearthway.words.Words;

/** Takes a decision that is about no single stage: what it would do to the plans stands there before it is saved. */
final class EffectForm extends Section {

    private static final int REASON_MOST = 500;

    /** What the form says. */
    record Says(String title, String hint, String save) {}

    /** What the form asks of its page; the first two refuse with {@link Invalid}. */
    interface Acts {
        /** What it would do on those days. */
        Effect effect(List<LocalDate> days);

        /** Takes it. */
        void save(List<LocalDate> days, String reason);

        /** Drops everything typed. */
        void leave();
    }

    /** A day that the decision needs, and how problems name it. */
    record Asked(String name, DayField field) {}

    private final transient StageWords say;
    private final transient Words words;
    private final transient List<Asked> days;
    private final transient LocalDate today;
    private final transient Acts acts;
    private final Div effect = new Div();
    private final TextField reason = new TextField();
    private final transient Map<String, HasValidation> fields = new HashMap<>();

    EffectForm(StageWords say, Words words, Says says, List<Asked> days, LocalDate today, Acts acts) {
        this.say = say;
        this.words = words;
        this.days = List.copyOf(days);
        this.today = today;
        this.acts = acts;
        addClassNames("hw-sheet", "u-preview", "u-own", "hw-fields");
        getElement().setAttribute("aria-label", says.title());
        reason.setLabel(say.say("path.change.reason"));
        reason.setMaxLength(REASON_MOST);
        reason.setWidthFull();
        fields.put("reason", reason);
        add(Tags.div("hw-colh", Tags.h2("", says.title())), Tags.p("hw-quiet", says.hint()));
        for (var day : days) {
            day.field().setWidthFull();
            day.field().addValueChangeListener(change -> show());
            fields.put(day.name(), day.field());
            add(day.field());
        }
        add(
                effect,
                reason,
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("path.change.leave"), pressed -> acts.leave()),
                        Tags.button("main", says.save(), pressed -> save())));
        Shortcuts.addShortcutListener(this, acts::leave, Key.ESCAPE).listenOn(this);
        show();
    }

    /** Says something more above what it would do. */
    EffectForm noting(Component says) {
        addComponentAtIndex(indexOf(effect), says);
        return this;
    }

    private List<LocalDate> typed() {
        return days.stream()
                .flatMap(day -> day.field().getOptionalValue().stream())
                .toList();
    }

    private void show() {
        effect.removeAll();
        days.forEach(day -> day.field().setInvalid(false));
        if (typed().size() == days.size()) {
            try {
                effect.add(new EffectList(say, acts.effect(typed()), today));
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, words, say.language());
            }
        }
    }

    private void save() {
        try {
            Invalid.ifAny(days.stream()
                    .filter(day -> day.field().isEmpty())
                    .map(day -> Problem.at(day.name(), "path.problem.day"))
                    .toList());
            acts.save(typed(), reason.getValue());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, words, say.language());
        }
    }
}
