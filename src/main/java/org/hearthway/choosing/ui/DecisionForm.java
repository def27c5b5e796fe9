package org.hearthway.choosing.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.radiobutton.RadioGroupVariant;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.choosing.Choosing;
import org.hearthway.choosing.Decision;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** Writes down what the team and the family decided: a path or none now, why, who was there, and the day. */
final class DecisionForm extends Section {

    /** What the form asks of its page. */
    interface Acts {
        /** Writes it down; refuses with {@link Invalid}. */
        void decide(Decision.Data data);

        /** Drops what was typed. */
        void leave();
    }

    /** A path, or none now. */
    private record Offer(Optional<String> path, String name) {}

    private final transient Telling say;
    private final RadioButtonGroup<Offer> path;
    private final DayField day;
    private final TextField present;
    private final TextArea reason;

    DecisionForm(Telling say, List<Choosing.Way> ways, LocalDate today, Acts acts) {
        this.say = say;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "u-own", "hw-fields");
        setId("decision");
        getElement().setAttribute("aria-label", say.say("choosing.decide"));
        path = new RadioButtonGroup<>(say.say("choosing.decide.path"));
        path.addThemeVariants(RadioGroupVariant.LUMO_VERTICAL);
        var offers = new ArrayList<Offer>();
        ways.forEach(way -> offers.add(new Offer(Optional.of(way.id()), say.in(way.name()))));
        offers.add(new Offer(Optional.empty(), say.say("choosing.decide.none")));
        path.setItems(offers);
        path.setItemLabelGenerator(Offer::name);
        day = new DayField(say.say("choosing.decide.day"), say.words(), say.language());
        day.setValue(today);
        present = new TextField(say.say("choosing.decide.present"));
        present.setWidthFull();
        reason = new TextArea(say.say("choosing.decide.reason"));
        reason.setWidthFull();
        var save = Tags.button("main", say.say("choosing.decide.save"), pressed -> settle(() -> acts.decide(data())));
        save.setId("save-decision");
        add(
                Tags.div("hw-colh", Tags.h2("", say.say("choosing.decide"))),
                Tags.p("hw-s", say.say("choosing.who-decides")),
                Tags.p("hw-sub", say.say("choosing.decide.hint")),
                path,
                day,
                present,
                reason,
                Tags.div(
                        "u-row u-wrap u-end",
                        Tags.button("plain", say.say("choosing.decide.leave"), pressed -> acts.leave()),
                        save));
    }

    private Decision.Data data() {
        var problems = new ArrayList<Problem>();
        if (path.isEmpty()) {
            problems.add(Problem.at("path", "choosing.problem.path-missing"));
        }
        if (day.isEmpty()) {
            problems.add(Problem.at("day", "choosing.problem.day-missing"));
        }
        Invalid.ifAny(problems);
        return new Decision.Data(path.getValue().path(), day.getValue(), present.getValue(), reason.getValue());
    }

    private void settle(Runnable act) {
        Map<String, HasValidation> fields = Map.of("path", path, "day", day, "present", present, "reason", reason);
        fields.values().forEach(field -> field.setInvalid(false));
        try {
            act.run();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, say.words(), say.language());
        }
    }
}
