package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import java.util.function.BiConsumer;
import org.hearthway.parts.Tags;
import org.hearthway.path.ClinicValues.PathOfClinic;
import org.hearthway.path.ClinicValues.Rule;
import org.hearthway.path.ClinicValues.StageValues;
import org.hearthway.path.ClinicValues.Value;

/** All values of a path, stage by stage; a stage is drawn when it is opened. */
final class StageValueList extends Div {

    private final transient ValueSay say;
    private final transient BiConsumer<StageValues, Rule> change;

    StageValueList(ValueSay say, PathOfClinic path, BiConsumer<StageValues, Rule> change) {
        this.say = say;
        this.change = change;
        add(Tags.h2("hw-kind", say.say("path.values.stages")));
        path.stages().forEach(stage -> add(stage(stage)));
    }

    private Component stage(StageValues stage) {
        var own = stage.rules().stream()
                .flatMap(rule -> rule.values().stream())
                .filter(value -> value.own().isPresent())
                .count();
        var body = Tags.div("hw-value-stage");
        var summary = Tags.span(
                "",
                Tags.span("kidn", say.in(stage.name())),
                Tags.span(
                        "hw-sub",
                        " " + say.say("path.values.rules", stage.rules().size())));
        if (own > 0) {
            summary.add(Tags.span("hw-label river", say.say("path.values.count", own)));
        }
        var details = new NativeDetails(summary, body);
        details.addClassName("hw-stage-values");
        details.addToggleListener(toggled -> {
            if (details.isOpen() && body.getChildren().findAny().isEmpty()) {
                stage.rules().forEach(rule -> body.add(rule(stage, rule)));
            }
        });
        return details;
    }

    private Component rule(StageValues stage, Rule rule) {
        var values = Tags.div("hw-value-line");
        rule.values().forEach(value -> values.add(value(value)));
        var press = Tags.button("text", say.say("path.values.change"), pressed -> change.accept(stage, rule));
        press.getElement()
                .setAttribute(
                        "aria-label",
                        say.say("path.values.change.this", say.in(stage.name()) + ", " + say.in(rule.name())));
        return Tags.div(
                "hw-value-row",
                Tags.div(
                        "",
                        Tags.p("hw-value-about", say.in(rule.name())),
                        values,
                        Tags.p("hw-sub", say.source(rule.source()))),
                press);
    }

    private Component value(Value value) {
        var shows = Tags.span("hw-value", Tags.span("hw-sub", say.in(value.name()) + " "));
        value.own()
                .ifPresentOrElse(
                        own -> shows.add(say.change(say.amount(value.shipped()), say.amount(own.amount()))),
                        () -> shows.add(Tags.span("hw-b", say.amount(value.shipped()))));
        return shows;
    }
}
