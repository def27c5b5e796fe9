package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.hearthway.base.ChildId;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.ClinicValues.CareMove;
import org.hearthway.path.ClinicValues.ChildEffect;
import org.hearthway.path.ClinicValues.Preview;
import org.hearthway.path.Plans.Move;

/** Whose plans a change for the whole clinic moves: each child by name, and opened each date and rule of care. */
final class MovedChildren extends Div {

    /** So many children are named; more tell nothing new. */
    private static final int NAMED = 20;

    /** So many dates of one child are listed; what comes again moves alike. */
    private static final int LISTED = 12;

    private final transient ValueSay say;
    private final transient Function<ChildId, String> names;
    private final transient Predicate<ChildId> opens;

    /**
     * Draws those whose plans a change of values moves.
     *
     * @param names of the children
     * @param opens whether the viewer may open a child's folder
     */
    MovedChildren(ValueSay say, Preview preview, Function<ChildId, String> names, Predicate<ChildId> opens) {
        this(
                say,
                say.say(
                        preview.children().isEmpty() ? "path.values.preview.none" : "path.values.preview.some",
                        preview.children().size(),
                        preview.onPath()),
                names,
                opens);
        preview.again()
                .forEach(name -> add(Tags.div(
                        "hw-banner",
                        Icon.INFO.draw(),
                        Tags.div("", Tags.p("", say.say("path.values.preview.again", say.in(name)))))));
        name(preview.children());
    }

    /** Draws those whose plans move when the clinic closes on one more day, or is open on it again. */
    MovedChildren(
            ValueSay say,
            String title,
            List<ChildEffect> effects,
            Function<ChildId, String> names,
            Predicate<ChildId> opens) {
        this(say, title, names, opens);
        name(effects);
    }

    private MovedChildren(ValueSay say, String title, Function<ChildId, String> names, Predicate<ChildId> opens) {
        this.say = say;
        this.names = names;
        this.opens = opens;
        add(Tags.h2("u-l", title), Tags.p("hw-s hw-quiet", say.say("path.preview.unsaved")));
    }

    private void name(List<ChildEffect> effects) {
        var children = effects.stream()
                .sorted(Comparator.comparing(effect -> names.apply(effect.child())))
                .toList();
        children.stream().limit(NAMED).forEach(effect -> add(child(effect)));
        if (children.size() > NAMED) {
            add(Tags.p("hw-quiet hw-s", say.say("path.values.preview.more", children.size() - NAMED)));
        }
    }

    private Component child(ChildEffect effect) {
        var name = names.apply(effect.child());
        var body = new Div();
        var details = new NativeDetails(
                Tags.span("", Tags.span("kidn", name), Tags.span("hw-sub", " " + inShort(effect))), body);
        details.addClassName("hw-moved");
        details.addToggleListener(toggled -> {
            if (details.isOpen() && body.getChildren().findAny().isEmpty()) {
                fill(body, effect);
            }
        });
        return details;
    }

    private String inShort(ChildEffect effect) {
        var parts = new ArrayList<String>();
        int dates = effect.moves().size() + effect.ends().size();
        if (dates > 0) {
            parts.add(say.say("path.values.preview.dates", dates));
        }
        if (!effect.cares().isEmpty()) {
            parts.add(say.say("path.values.preview.cares", effect.cares().size()));
        }
        int tasks = effect.familyTasks().size() + effect.staffTasks().size();
        if (tasks > 0) {
            parts.add(say.say("path.values.preview.tasks", tasks));
        }
        if (effect.visits() > 0) {
            parts.add(say.say("path.values.preview.visits", effect.visits()));
        }
        if (!effect.unfit().isEmpty()) {
            parts.add(say.say("path.values.preview.unfits", effect.unfit().size()));
        }
        effect.noDay().forEach(stage -> parts.add(say.say("path.values.preview.no-day", say.in(stage))));
        return String.join(" · ", parts);
    }

    private void fill(Div body, ChildEffect effect) {
        var table = new NativeTable();
        table.addClassNames("hw-moves", "hw-value-table");
        effect.moves().stream().limit(LISTED).forEach(move -> table.getBody().add(row(move)));
        effect.ends()
                .forEach(end -> table.getBody()
                        .add(row(
                                say.say("path.values.preview.end", say.in(end.name())),
                                say.change(end.from(), end.to()),
                                say.moved(end.from(), end.to()))));
        effect.cares().forEach(care -> table.getBody().add(row(care)));
        effect.familyTasks().forEach(task -> table.getBody().add(task("path.values.rule.FAMILY_TASK", task)));
        effect.staffTasks().forEach(task -> table.getBody().add(task("path.values.rule.STAFF_TASK", task)));
        body.add(table);
        effect.unfit()
                .forEach(visit -> body.add(Tags.p(
                        "hw-s",
                        say.say(
                                "path.values.preview.unfit",
                                say.in(visit.kind()),
                                say.date(visit.start().toLocalDate())))));
        if (effect.moves().size() > LISTED) {
            body.add(Tags.p(
                    "hw-quiet hw-s",
                    say.say("path.values.preview.more-dates", effect.moves().size() - LISTED)));
        }
        if (opens.test(effect.child())) {
            body.add(Tags.link(
                    "hw-button text", "staff/child/" + effect.child() + "/path", say.say("path.values.folder")));
        }
    }

    private NativeTableRow row(Move move) {
        return row(say.in(move.name()), say.change(move.from(), move.to()), say.moved(move.from(), move.to()));
    }

    private NativeTableRow task(String key, Move task) {
        return row(
                say.say(key, say.in(task.name())),
                say.change(task.from(), task.to()),
                say.moved(task.from(), task.to()));
    }

    private NativeTableRow row(CareMove care) {
        return care.until().equals(care.newUntil())
                ? row(
                        say.in(care.says()),
                        say.change(care.from(), care.newFrom()),
                        say.moved(care.from(), care.newFrom()))
                : row(
                        say.in(care.says()),
                        say.change(care.until(), care.newUntil()),
                        say.moved(care.until(), care.newUntil()));
    }

    private static NativeTableRow row(String what, Component change, String moved) {
        var days = new NativeTableCell(change);
        days.add(Tags.div("hw-sub", Tags.span("", moved)));
        return new NativeTableRow(new NativeTableCell(what), days);
    }
}
