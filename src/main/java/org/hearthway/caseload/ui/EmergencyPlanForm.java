package org.hearthway.caseload.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.paper.EmergencySheet.Plan;
import org.hearthway.paper.EmergencySheet.PlanData;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** What must be done in an emergency: read by everyone at the clinic, written and signed by a physician. */
final class EmergencyPlanForm extends Section {

    private final transient Words words;
    private final Language language;
    private final TextField line;
    private final TextArea catheter;
    private final TextArea withdrawal;
    private final TextArea storm;

    /**
     * Draws the form.
     *
     * @param maySign whether this person signs plans
     * @param sign signs; refuses with {@link Invalid}
     */
    EmergencyPlanForm(
            Words words,
            Language language,
            ClinicSettings clinic,
            Optional<Plan> plan,
            boolean maySign,
            Consumer<PlanData> sign) {
        this.words = words;
        this.language = language;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields");
        getElement().setAttribute("aria-label", say("caseload.emergency.title"));
        line = new TextField(say("caseload.emergency.line"));
        line.setId("emergency-line");
        catheter = new TextArea(say("caseload.emergency.catheter"));
        catheter.setId("emergency-catheter");
        withdrawal = new TextArea(say("caseload.emergency.withdrawal"));
        withdrawal.setId("emergency-withdrawal");
        storm = new TextArea(say("caseload.emergency.storm"));
        storm.setId("emergency-storm");
        var data = plan.map(Plan::data).orElse(PlanData.EMPTY);
        line.setValue(data.surgeonLine());
        catheter.setValue(data.catheter());
        withdrawal.setValue(data.withdrawal());
        storm.setValue(data.storm());
        fields().values().forEach(field -> {
            if (field instanceof com.vaadin.flow.component.HasSize size) {
                size.setWidthFull();
            }
            if (field instanceof com.vaadin.flow.component.HasValueAndElement<?, ?> value) {
                value.setReadOnly(!maySign);
            }
        });
        add(
                Tags.div("hw-colh", Tags.h2("", say("caseload.emergency.title"))),
                Tags.p(
                        plan.isPresent() ? "hw-sub" : "hw-quiet",
                        plan.map(known -> say(
                                        "paper.signed",
                                        known.signedByName(),
                                        words.dateWithYear(language, LocalDate.ofInstant(known.at(), clinic.zone()))))
                                .orElse(say("caseload.emergency.none"))),
                line,
                catheter,
                withdrawal,
                storm);
        if (maySign) {
            var button = Tags.button("main", say("caseload.emergency.sign"), pressed -> {
                fields().values().forEach(field -> field.setInvalid(false));
                try {
                    sign.accept(new PlanData(
                            line.getValue(), catheter.getValue(), withdrawal.getValue(), storm.getValue()));
                } catch (Invalid invalid) {
                    Told.problems(invalid.problems(), fields(), words, language);
                }
            });
            button.setId("emergency-sign");
            add(Tags.p("hw-sub u-my2", say("caseload.emergency.caution")), Tags.div("u-row u-end", button));
        } else {
            add(Tags.p("hw-quiet u-my2", say("caseload.emergency.read-only")));
        }
    }

    private Map<String, HasValidation> fields() {
        return Map.of("surgeonLine", line, "catheter", catheter, "withdrawal", withdrawal, "storm", storm);
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
