package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.KeyModifier;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.timepicker.TimePicker;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.pump.PumpBook.NewEntry;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Correction;
import org.hearthway.pump.PumpSums;

/** A form that reckons while it is typed into, says what is out of the usual, and ends in asking for the second check. */
final class EntryForm extends Section {

    /** The fields that one kind of entry has of its own. */
    interface Body {
        /** The fields in the order of the work. */
        List<Component> draw();

        /** What was typed; empty when there is too little of it to reckon with. */
        Optional<PumpEntry.What> read(Reading reading, LocalDateTime at);
    }

    /** What the form asks of its page. */
    interface Acts {
        /** What it would come to; refuses with {@link Invalid}. */
        PumpSums reckon(NewEntry entry);

        /** Saves; refuses with {@link Invalid}. */
        void enter(NewEntry entry);

        /** Goes without saving. */
        void leave();
    }

    private static final int WORDS_MOST = 500;

    private final transient FormSay say;
    private final transient FormFields fields;
    private final transient Body body;
    private final transient Acts acts;
    private final transient Optional<Long> corrects;
    private final transient SumsPanel sums;
    private final DayField day;
    private final TimePicker time;
    private final Checkbox emergency;
    private final TextArea unusual;
    private final TextArea correction;
    private final Paragraph unusualWhy = Tags.p("hw-sub", "");
    private final Div unusualPlace;

    /**
     * Draws the form.
     *
     * @param name of the kind of form
     * @param at what stands in day and time at first
     * @param corrects the entry that it supersedes
     * @param bodies makes its own fields
     */
    EntryForm(
            FormSay say,
            String name,
            LocalDateTime at,
            Optional<Long> corrects,
            Function<FormFields, Body> bodies,
            SumsPanel sums,
            Acts acts) {
        this.say = say;
        this.acts = acts;
        this.corrects = corrects;
        this.sums = sums;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-pump-form");
        var title = say.say("pump.form.title." + name);
        getElement().setAttribute("aria-label", title);
        fields = new FormFields(say, name, this::compute);
        day = fields.day("at");
        day.setValue(at.toLocalDate());
        time = fields.time("time");
        time.setValue(at.toLocalTime().withSecond(0).withNano(0));
        emergency = fields.box("emergency");
        unusual = fields.area("unusual", WORDS_MOST);
        correction = fields.area("correction", WORDS_MOST);
        unusualPlace = Tags.div("hw-pump-unusual", unusualWhy, unusual);
        unusualPlace.setVisible(false);
        body = bodies.apply(fields);
        var send = Tags.button("main", Icon.SECOND, say.say("pump.form.send"), pressed -> send());
        send.setId(name + "-send");
        add(Tags.div("hw-colh", Tags.h2("", title), Tags.p("hw-sub", say.say("pump.form.lead." + name))));
        var left = Tags.div("hw-pump-typed");
        corrects.ifPresent(number -> left.add(fields.part("correction", correction)));
        left.add(fields.part("when", day, time));
        body.draw().forEach(left::add);
        left.add(fields.part("emergency", emergency));
        emergency.setHelperText(say.say("pump.form.help.emergency"));
        add(
                Tags.div("hw-pump-two", left, sums),
                unusualPlace,
                Tags.p("hw-sub u-my2", say.say("pump.form.caution")),
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say.say("pump.form.leave"), pressed -> acts.leave()),
                        send));
        Shortcuts.addShortcutListener(this, this::send, Key.ENTER, KeyModifier.CONTROL)
                .listenOn(this)
                .resetFocusOnActiveElement();
        fields.listen();
        compute();
    }

    private Optional<LocalDateTime> at(Reading reading) {
        var on = reading.needed(day);
        var from = reading.needed(time);
        return on.flatMap(date -> from.map((LocalTime clock) -> date.atTime(clock)));
    }

    private Optional<NewEntry> read(Reading reading) {
        var at = at(reading);
        var reason = correction.getValue().strip();
        if (corrects.isPresent() && reason.isEmpty()) {
            reading.lacks(correction, "pump.problem.reason");
        }
        return at.flatMap(moment -> body.read(reading, moment)
                .map(what -> new NewEntry(
                        moment,
                        what,
                        corrects.map(number -> new Correction(number, reason)),
                        emergency.getValue(),
                        unusualPlace.isVisible() ? unusual.getValue().strip() : "")));
    }

    private void compute() {
        fields.unmark();
        var reading = new Reading();
        var entry = read(reading);
        if (entry.isPresent()) {
            reckon(entry.get(), reading);
        } else {
            sums.waiting(reading.isWrong() ? "pump.form.wait.wrong" : "pump.form.wait.more");
        }
        // marks without taking the focus away from where the person types
        reading.mark(say);
    }

    private void reckon(NewEntry entry, Reading reading) {
        try {
            var reckoned = acts.reckon(entry);
            unusualPlace.setVisible(reckoned.wantsWords());
            unusualWhy.setText(say.say("pump.form.unusual.why", unusual(reckoned)));
            sums.show(reckoned, entry.at().toLocalDate(), reading.isWrong());
        } catch (Invalid invalid) {
            sums.waiting("pump.form.wait.wrong");
            known(invalid).forEach(reading::wrong);
        }
    }

    private String unusual(PumpSums reckoned) {
        return say.words()
                .list(
                        say.language(),
                        reckoned.attention().stream()
                                .sorted()
                                .map(each -> say.say("pump.form.unusual." + each))
                                .toList());
    }

    private Map<HasValidation, Problem> known(Invalid invalid) {
        var found = new java.util.LinkedHashMap<HasValidation, Problem>();
        for (var problem : invalid.problems()) {
            var field = fields.named().get(problem.field());
            if (field != null) {
                found.putIfAbsent(field, problem);
            }
        }
        return found;
    }

    private void send() {
        fields.unmark();
        var reading = new Reading();
        var entry = read(reading);
        if (!reading.isWhole() || entry.isEmpty()) {
            reading.refuse(say);
            return;
        }
        try {
            acts.enter(entry.get());
        } catch (Invalid invalid) {
            invalid.problems().stream()
                    .filter(problem -> problem.field().equals("unusual"))
                    .forEach(problem -> unusualPlace.setVisible(true));
            Told.problems(invalid.problems(), fields.named(), say.words(), say.language());
        }
    }
}
