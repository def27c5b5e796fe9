package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.ClinicValues.LeftOut;
import org.hearthway.path.ClinicValues.Own;
import org.hearthway.path.ClinicValues.PathOfClinic;
import org.hearthway.path.ClinicValues.Rule;
import org.hearthway.path.ClinicValues.StageValues;
import org.hearthway.path.ClinicValues.Value;

/** What this clinic does otherwise than the path as it came, at a glance; and what no longer fits it. */
final class OwnValueSheet extends Div {

    private final transient ValueSay say;

    OwnValueSheet(ValueSay say, PathOfClinic path, BiConsumer<StageValues, Rule> change, Consumer<LeftOut> drop) {
        this.say = say;
        addClassNames("hw-sheet", "hw-own-values");
        if (!path.leftOut().isEmpty()) {
            add(leftOut(path, drop));
        }
        add(Tags.h2("u-l", say.say("path.values.own.title")));
        if (path.ownValues() == 0) {
            add(Tags.p("hw-quiet", say.say("path.values.own.none")));
            return;
        }
        var table = new NativeTable();
        table.addClassNames("hw-moves", "hw-value-table", "u-own-table");
        table.getElement().setAttribute("aria-label", say.say("path.values.own.title"));
        for (var stage : path.stages()) {
            for (var rule : stage.rules()) {
                for (var value : rule.values()) {
                    value.own().ifPresent(own -> table.getBody().add(row(stage, rule, value, own, change)));
                }
            }
        }
        add(table, wordsStay());
    }

    private NativeTableRow row(
            StageValues stage, Rule rule, Value value, Own own, BiConsumer<StageValues, Rule> change) {
        var what = new NativeTableCell(
                Tags.span("hw-b", say.in(stage.name())),
                Tags.div("", Tags.span("", say.in(rule.name()) + " · " + say.in(value.name()))),
                Tags.div("hw-sub", Tags.span("", say.since(own.at(), own.by()) + ": " + own.reason())));
        if (!own.shipped().equals(value.shipped())) {
            what.add(Tags.p(
                    "hw-sub hw-value-newer",
                    say.say("path.values.own.newer", say.amount(value.shipped()), say.amount(own.shipped()))));
        }
        var press = Tags.button("text", say.say("path.values.change"), pressed -> change.accept(stage, rule));
        press.getElement()
                .setAttribute(
                        "aria-label",
                        say.say("path.values.change.this", say.in(stage.name()) + ", " + say.in(rule.name())));
        return new NativeTableRow(
                what,
                new NativeTableCell(say.change(say.amount(value.shipped()), say.amount(own.amount()))),
                new NativeTableCell(press));
    }

    /** A text that names six weeks goes on naming them. */
    private Component wordsStay() {
        var hint = Tags.p("hw-quiet hw-s", say.say("path.values.words") + " ");
        hint.add(Tags.link("", "staff/clinic/texts", say.say("access.clinic.texts")));
        return hint;
    }

    private Component leftOut(PathOfClinic path, Consumer<LeftOut> drop) {
        var list = Tags.div("", Tags.p("hw-b", say.say("path.values.left.title")));
        for (var left : path.leftOut()) {
            var why = say.say("path.values.left." + left.why().name());
            list.add(Tags.div(
                    "hw-left-out",
                    Tags.span(
                            "",
                            Tags.span(
                                    "",
                                    say.in(left.name()) + ": "
                                            + say.amount(left.own().amount()) + ". " + why),
                            Tags.span(
                                    "hw-sub",
                                    " " + say.since(left.own().at(), left.own().by()))),
                    Tags.button("text", say.say("path.values.drop"), pressed -> drop.accept(left))));
        }
        return Tags.div("hw-banner u-start", Icon.CLASH.draw(), list);
    }
}
