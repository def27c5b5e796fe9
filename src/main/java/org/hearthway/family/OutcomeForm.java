package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextArea;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.events.SessionLogged;

/** How it went: done, some, could not and why; work and pain from 0 to 10 with who says so; a note. */
class OutcomeForm extends Div {

    /** The same for every press of Save, so that one form counts once. */
    private final UUID key = UUID.randomUUID();

    private final transient Reader reader;
    private final Planned planned;
    private final LocalDate day;
    private final Choice<Outcome> outcome;
    private final Choice<Reason> reason;
    private final Choice<RatedBy> ratedBy;
    private final Scale effort;
    private final Scale pain;
    private final TextArea note;
    private final Draft draft;
    private final Div why;
    private final Div who;
    private final Faults faults = new Faults();

    OutcomeForm(Reader reader, Planned planned, LocalDate day, Consumer<Entry> save) {
        this.reader = reader;
        this.planned = planned;
        this.day = day;
        addClassName("hw-stack");
        setId("went");
        outcome = Choice.of(
                reader,
                "family.exercise.went",
                "family.outcome.",
                List.of(Outcome.values()),
                "hw-choice",
                OutcomeForm::stone);
        reason = Choice.of(
                reader,
                "family.exercise.why-not",
                "family.reason.",
                List.of(Reason.values()),
                "hw-chips",
                r -> Optional.empty());
        ratedBy = Choice.of(
                reader,
                "family.exercise.who",
                "family.rated.",
                List.of(RatedBy.values()),
                "hw-chips",
                r -> Optional.empty());
        effort = new Scale(reader, "family.scale.effort.", Faces::effort);
        pain = new Scale(reader, "family.scale.pain.", Faces::pain);
        note = new TextArea(reader.say("family.exercise.your-note"));
        note.setWidthFull();
        note.setMinRows(2);
        draft = new Draft(reader, "went-" + planned.exercise().id() + "-" + day, note);
        why = Tags.div(
                "hw-stack u-gap2", Tags.h2("u-l", reader.say("family.exercise.why-not")), reason, faults.at("reason"));
        who = Tags.div(
                "hw-stack u-gap2", Tags.h2("u-l", reader.say("family.exercise.who")), ratedBy, faults.at("ratedBy"));
        add(Tags.div("hw-stack u-gap2", Tags.h2("u-l", reader.say("family.exercise.went")), outcome));
        add(why, effort, faults.at("effort"), pain, faults.at("pain"), who);
        add(Tags.p("hw-s hw-quiet", reader.say("family.exercise.severe")));
        if (!reader.isHelper()) {
            // a helper says how it went and writes no text about the child
            add(draft);
        }
        add(faults.at("note"), faults.at(""));
        add(Tags.button("main big wide", reader.say("family.exercise.save"), pressed -> save(save)));
        outcome.onChange(this::arrange);
        effort.onChange(this::arrange);
        pain.onChange(this::arrange);
        planned.logged().ifPresentOrElse(this::recall, () -> outcome.choose(Optional.of(Outcome.DONE)));
        arrange();
    }

    private static Optional<Component> stone(Outcome outcome) {
        return Optional.of(Bits.pip(
                switch (outcome) {
                    case DONE -> "done";
                    case SOME -> "some";
                    case COULD_NOT -> "miss";
                }));
    }

    private void recall(Logged logged) {
        var entry = logged.entry();
        outcome.choose(Optional.of(entry.outcome()));
        reason.choose(entry.reason());
        effort.choose(entry.effort());
        pain.choose(entry.pain());
        ratedBy.choose(entry.ratedBy());
        note.setValue(entry.note());
    }

    private boolean couldNot() {
        return outcome.chosen().filter(Outcome.COULD_NOT::equals).isPresent();
    }

    private void arrange() {
        why.setVisible(couldNot());
        effort.setVisible(!couldNot());
        who.setVisible(rated());
    }

    private boolean rated() {
        return pain.chosen().isPresent() || (!couldNot() && effort.chosen().isPresent());
    }

    /** Severe pain is not held up by a question: unless said otherwise, the person at the phone says it. */
    private Optional<RatedBy> whoSays() {
        var severe = pain.chosen().filter(p -> p >= SessionLogged.SEVERE_PAIN).isPresent();
        return ratedBy.chosen().or(() -> severe ? Optional.of(RatedBy.ADULT) : Optional.empty());
    }

    private void save(Consumer<Entry> save) {
        faults.clear();
        try {
            save.accept(entry());
            draft.forget();
        } catch (Invalid invalid) {
            faults.tell(reader, invalid);
        }
    }

    private Entry entry() {
        return new Entry(
                key,
                planned.exercise().id(),
                day,
                outcome.chosen().orElse(Outcome.DONE),
                couldNot() ? reason.chosen() : Optional.empty(),
                couldNot() ? Optional.empty() : effort.chosen(),
                pain.chosen(),
                rated() ? whoSays() : Optional.empty(),
                note.getValue());
    }
}
