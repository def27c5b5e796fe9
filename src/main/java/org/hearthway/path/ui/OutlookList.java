package org.hearthway.path.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans.Outlook;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Template.Stage;

/** What a path would be if it began so: what was done before, each stage with its day, and what becomes of other paths. */
final class OutlookList extends Div {

    /** So many stages are listed; those far ahead tell little before the path has begun. */
    private static final int LISTED = 9;

    private final transient StageWords say;

    OutlookList(StageWords say, Outlook would, LocalDate today) {
        this.say = say;
        var plan = would.plan();
        add(Tags.h2("u-l", say.say("path.begin.would")), Tags.p("hw-s hw-quiet", say.say("path.preview.unsaved")));
        plan.before().stream()
                .filter(stage -> !stage.precautions().isEmpty())
                .forEach(stage -> add(Tags.div(
                        "hw-banner",
                        Icon.CLASH.draw(),
                        Tags.div("", Tags.p("", say.say("path.begin.care-unknown", name(stage)))))));
        if (!plan.before().isEmpty()) {
            add(Tags.p(
                    "",
                    say.say(
                            "path.begin.would.before",
                            plan.before().stream().map(this::name).collect(Collectors.joining(", ")))));
        }
        var table = new NativeTable();
        table.addClassName("hw-moves");
        table.getElement().setAttribute("aria-label", say.say("path.begin.would"));
        var once = plan.stages().stream().filter(stage -> stage.round() == 1).toList();
        once.stream().limit(LISTED).forEach(stage -> table.getBody().add(row(stage, today)));
        add(table);
        if (once.size() > LISTED) {
            add(Tags.p("hw-s hw-quiet", say.say("path.begin.would.more", once.size() - LISTED)));
        }
        if (!would.effect().leaving().isEmpty() || !would.effect().visits().isEmpty()) {
            add(new EffectList(say, would.effect(), today));
        }
    }

    private String name(Stage stage) {
        return stage.name().in(say.language());
    }

    private NativeTableRow row(Planned stage, LocalDate today) {
        if (stage.clash().isPresent()) {
            return row(say.name(stage), say.say("path.table.no-day"));
        }
        var day = say.date(stage.start(), today);
        return row(say.name(stage), stage.isDoneBefore() ? say.say("path.before.on", day) : day);
    }

    private static NativeTableRow row(String name, String day) {
        return new NativeTableRow(new NativeTableCell(name), new NativeTableCell(Tags.span("hw-b", day)));
    }
}
