package org.hearthway.path.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.radiobutton.RadioGroupVariant;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.path.Plans.Beginning;
import org.hearthway.path.engine.Remark;
import org.hearthway.path.engine.Template;
import org.hearthway.words.Words;

/** Begins a path: which one, from which day, and why; what sources advise for it is told as soon as it is chosen. */
final class BeginForm extends Section {

    private static final int REASON_MOST = 500;

    /** What the form asks for; each refuses with {@link Invalid}. */
    interface Acts {
        List<Remark> advice(String pathway, LocalDate day);

        void begin(String pathway, Beginning how, LocalDate day, String reason);
    }

    /**
     * Asks.
     *
     * @param another whether the child is on a path already
     */
    BeginForm(StageWords say, Words words, List<Template> pathways, boolean another, LocalDate today, Acts acts) {
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "u-own", "hw-fields");
        getElement().setAttribute("aria-label", say.say("path.begin.title"));
        var pathway = new RadioButtonGroup<Template>(say.say("path.begin.pathway"));
        pathway.addThemeVariants(RadioGroupVariant.LUMO_VERTICAL);
        pathway.setItems(pathways);
        pathway.setItemLabelGenerator(path -> path.name().in(say.language()));
        var how = new RadioButtonGroup<Beginning>(say.say("path.begin.how"));
        how.addThemeVariants(RadioGroupVariant.LUMO_VERTICAL);
        how.setItems(Beginning.BESIDE, Beginning.INSTEAD);
        how.setItemLabelGenerator(one -> say.say("path.begin.how." + one.name()));
        how.setValue(Beginning.BESIDE);
        how.setVisible(another);
        var day = new DayField(say.say("path.begin.day"), words, say.language());
        day.setValue(today);
        day.setWidthFull();
        var reason = new TextField(say.say("path.change.reason"));
        reason.setMaxLength(REASON_MOST);
        reason.setWidthFull();
        var advice = new Div();
        Runnable advise = () -> {
            advice.removeAll();
            if (!pathway.isEmpty() && !day.isEmpty()) {
                try {
                    var remarks = acts.advice(pathway.getValue().id(), day.getValue());
                    advice.add(new AdviceList(say, say.say("path.advice.title"), remarks, today));
                } catch (Invalid dayOutOfBounds) {
                    // the field says so when the path is to begin
                }
            }
        };
        pathway.addValueChangeListener(chosen -> advise.run());
        day.addValueChangeListener(chosen -> advise.run());
        Map<String, HasValidation> fields = Map.of("pathway", pathway, "day", day, "reason", reason);
        add(
                Tags.div("hw-colh", Tags.h2("", say.say("path.begin.title"))),
                Tags.p("hw-s hw-quiet", say.say("path.begin.hint")),
                pathway,
                how,
                day,
                advice,
                reason,
                Tags.div("u-row u-end", Tags.button("main", say.say("path.begin.do"), pressed -> {
                    try {
                        var problems = new ArrayList<Problem>();
                        if (pathway.isEmpty()) {
                            problems.add(Problem.at("pathway", "path.problem.pathway"));
                        }
                        if (day.isEmpty()) {
                            problems.add(Problem.at("day", "path.problem.day"));
                        }
                        Invalid.ifAny(problems);
                        acts.begin(pathway.getValue().id(), how.getValue(), day.getValue(), reason.getValue());
                    } catch (Invalid invalid) {
                        Told.problems(invalid.problems(), fields, words, say.language());
                    }
                })));
    }
}
