package org.hearthway.medicine.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.medicine.ToxinSessions.Muscle;
import org.hearthway.medicine.ToxinSessions.Session;
import org.hearthway.medicine.ToxinSessions.SessionData;
import org.hearthway.medicine.ToxinSessions.State;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** Writes down a toxin session, planned or given: each place with its muscle, side, units and their preparation. */
final class SessionForm extends Section {

    private final transient MedicineWords say;
    private final transient List<Muscle> muscles;
    private final transient Consumer<SessionData> save;
    private final RadioButtonGroup<State> state = new RadioButtonGroup<>();
    private final DayField on;
    private final List<PlaceFields> rows = new ArrayList<>();
    private final Div places = Tags.div("hw-stack u-gap2");
    private final Div given = new Div();
    private final Div planned = new Div();
    private final TextField givenBy;
    private final TextArea note;
    private final TextArea early;

    /**
     * Draws the form.
     *
     * @param muscles what can be chosen
     * @param known the session as it stands, when there is one
     * @param mayPlanEarly whether this person may plan before the clinic's interval
     */
    SessionForm(
            MedicineWords say,
            List<Muscle> muscles,
            Optional<Session> known,
            boolean mayPlanEarly,
            Consumer<SessionData> save,
            Runnable leave) {
        this.say = say;
        this.muscles = muscles;
        this.save = save;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields", "hw-wide");
        var title = say.say(known.isPresent() ? "medicine.toxin.change" : "medicine.toxin.new");
        getElement().setAttribute("aria-label", title);
        state.setLabel(say.say("medicine.toxin.state"));
        state.setItems(known.isPresent() ? List.of(State.values()) : List.of(State.GIVEN, State.PLANNED));
        state.setItemLabelGenerator(each -> say.say("medicine.toxin.state." + each));
        state.setValue(known.map(Session::state).orElse(State.GIVEN));
        state.setId("session-state");
        on = new DayField(say.say("medicine.toxin.on"), say.words(), say.language());
        known.map(Session::on).ifPresent(on::setValue);
        on.setId("session-on");
        givenBy = new TextField(say.say("medicine.toxin.given-by"));
        givenBy.setMaxLength(ToxinSessions.NAME_MOST);
        givenBy.setValue(known.map(Session::givenBy).orElse(""));
        givenBy.setId("session-by");
        note = area("note", known.map(Session::note));
        early = area("early", known.map(Session::early));
        known.map(Session::injections)
                .filter(injections -> !injections.isEmpty())
                .ifPresentOrElse(
                        injections -> injections.forEach(place -> addRow(Optional.of(place))),
                        () -> addRow(Optional.empty()));
        given.add(
                places,
                Tags.div(
                        "u-row",
                        Tags.button("text", say.say("medicine.toxin.more"), pressed -> addRow(Optional.empty()))),
                givenBy);
        planned.add(early);
        state.addValueChangeListener(changed -> show(mayPlanEarly));
        show(mayPlanEarly);
        var keep = Tags.button("main", say.say("medicine.toxin.save"), pressed -> send());
        keep.setId("session-save");
        add(
                Tags.div("hw-colh", Tags.h2("", title)),
                state,
                on,
                given,
                planned,
                note,
                Tags.p("hw-sub u-mb2", say.say("medicine.caution")),
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("medicine.form.leave"), pressed -> leave.run()),
                        keep));
    }

    private void show(boolean mayPlanEarly) {
        given.setVisible(state.getValue() != State.PLANNED);
        planned.setVisible(state.getValue() == State.PLANNED && mayPlanEarly);
    }

    private TextArea area(String field, Optional<String> known) {
        var area = new TextArea(say.say("medicine.toxin." + field));
        area.setMaxLength(ToxinSessions.NOTE_MOST);
        area.setValue(known.orElse(""));
        area.setWidthFull();
        area.setId("session-" + field);
        return area;
    }

    private void addRow(Optional<ToxinSessions.Injection> known) {
        if (rows.size() == ToxinSessions.PLACES_MOST) {
            Told.couldNot(say.say("medicine.problem.places", ToxinSessions.PLACES_MOST));
            return;
        }
        var row = new PlaceFields(say, muscles, rows.size(), known);
        rows.add(row);
        places.add(row);
    }

    /** Rows that somebody typed into; a row left empty is none. */
    private List<PlaceFields> typed() {
        return rows.stream().filter(row -> !row.isEmpty()).toList();
    }

    private Map<String, HasValidation> fields() {
        var fields = new HashMap<String, HasValidation>();
        var typed = typed();
        for (var number = 0; number < typed.size(); number++) {
            fields.putAll(typed.get(number).fields(number));
        }
        fields.putAll(Map.of("on", on, "givenBy", givenBy, "note", note, "early", early));
        return fields;
    }

    private void send() {
        rows.forEach(row -> row.fields(0).values().forEach(field -> field.setInvalid(false)));
        try {
            if (on.isEmpty()) {
                throw new Invalid(Problem.at("on", "medicine.problem.on.missing"));
            }
            save.accept(new SessionData(
                    state.getValue(),
                    on.getValue(),
                    typed().stream().map(PlaceFields::typed).toList(),
                    givenBy.getValue(),
                    note.getValue(),
                    state.getValue() == State.PLANNED ? early.getValue() : ""));
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields(), say.words(), say.language());
        }
    }
}
