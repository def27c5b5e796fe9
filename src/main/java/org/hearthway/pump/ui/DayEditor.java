package org.hearthway.pump.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Tags;
import org.hearthway.pump.engine.Bolus;
import org.hearthway.pump.engine.DayPattern;
import org.hearthway.pump.engine.ScheduleTotal;
import org.hearthway.pump.engine.Step;

/** A day of a schedule, row by row, with what it comes to. */
final class DayEditor extends Div {

    private final transient FormFields fields;
    private final transient HasValidation whole;
    private final List<StepRow> steps = new ArrayList<>();
    private final List<BolusRow> boluses = new ArrayList<>();
    private final Div stepPlace = Tags.div("hw-dose-rows");
    private final Div bolusPlace = Tags.div("hw-dose-rows");
    private final Paragraph total = Tags.p("hw-dose-total", "");

    /**
     * An empty day.
     *
     * @param whole is marked when the day does not fit together
     */
    DayEditor(FormFields fields, HasValidation whole) {
        this.fields = fields;
        this.whole = whole;
        var say = fields.say();
        total.getElement().setAttribute("aria-live", "polite");
        add(
                stepPlace,
                Tags.div("u-row", Tags.button("text", say.say("pump.dosing.step.more"), pressed -> moreSteps())),
                bolusPlace,
                Tags.div("u-row", Tags.button("text", say.say("pump.dosing.bolus.more"), pressed -> moreBoluses())),
                Tags.p("hw-sub", say.say("pump.dosing.mode." + say.rules().bolus())),
                total);
        step().from(LocalTime.MIDNIGHT);
        steps.get(0).to(LocalTime.MIDNIGHT);
    }

    private StepRow step() {
        var row = new StepRow(new RowFields(fields), this::drop);
        steps.add(row);
        stepPlace.add(row);
        return row;
    }

    private BolusRow bolus() {
        var row = new BolusRow(new RowFields(fields), this::drop);
        boluses.add(row);
        bolusPlace.add(row);
        return row;
    }

    /** The next step begins where the last one ends and closes the day. */
    private void moreSteps() {
        var before = steps.isEmpty()
                ? Optional.<LocalTime>empty()
                : steps.get(steps.size() - 1).to();
        var first = steps.isEmpty() ? Optional.<LocalTime>empty() : steps.get(0).from();
        fields.fill(() -> {
            var row = step();
            before.ifPresent(row::from);
            first.ifPresent(row::to);
            row.focus();
        });
    }

    private void moreBoluses() {
        bolus().focus();
        fields.typed();
    }

    private void drop(StepRow row) {
        steps.remove(row);
        stepPlace.remove(row);
        fields.typed();
    }

    private void drop(BolusRow row) {
        boluses.remove(row);
        bolusPlace.remove(row);
        fields.typed();
    }

    /** Fills the rows in. */
    void show(DayPattern day) {
        fields.fill(() -> fill(day));
    }

    private void fill(DayPattern day) {
        steps.clear();
        stepPlace.removeAll();
        boluses.clear();
        bolusPlace.removeAll();
        day.steps().forEach(step -> step().show(step));
        day.boluses().forEach(bolus -> bolus().show(bolus));
    }

    /** What the rows say; empty when they do not make up a day. */
    Optional<DayPattern> read(Reading reading) {
        var given = new ArrayList<Step>();
        for (var row : steps) {
            row.read(reading).ifPresent(given::add);
        }
        var extra = new ArrayList<Bolus>();
        for (var row : boluses) {
            row.read(reading).ifPresent(extra::add);
        }
        var complete = given.size() == steps.size() && extra.size() == boluses.size();
        var day = complete
                ? reading.with(
                        whole,
                        () -> new DayPattern(given, extra, fields.say().rules().bolus()))
                : Optional.<DayPattern>empty();
        tell(day);
        return day;
    }

    private void tell(Optional<DayPattern> day) {
        var say = fields.say();
        try {
            total.setText(day.map(ScheduleTotal::of)
                    .map(sum -> say.say("pump.dosing.total", say.figures().result(sum.dose())))
                    .orElseGet(() -> say.say("pump.dosing.total.wait")));
        } catch (Invalid noTotal) {
            // what is wrong is said by the dosing as a whole
            total.setText(say.say("pump.dosing.total.wait"));
        }
    }
}
