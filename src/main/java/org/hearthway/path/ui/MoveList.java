package org.hearthway.path.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans.Preview;

/** What a change would move, from and to, and what it leaves. */
final class MoveList extends Div {

    MoveList(StageWords words, Preview preview, String stage) {
        var today = preview.after().today();
        var kept = preview.after().stage(stage);
        if (kept.isEmpty()) {
            add(
                    Tags.h2("u-l", words.say("path.preview.leaves")),
                    Tags.p("hw-s hw-quiet u-mb1", words.say("path.preview.unsaved")));
            if (!preview.moves().isEmpty()) {
                add(table(words, preview));
            }
            return;
        }
        var after = kept.get();
        var name = after.stage().name().in(words.language());
        var title = preview.moves().isEmpty()
                ? words.say("path.preview.stays", name, words.date(after.start(), today))
                : words.say("path.preview.title", name, words.date(after.start(), today));
        add(Tags.h2("u-l", title), Tags.p("hw-s hw-quiet u-mb1", words.say("path.preview.unsaved")));
        if (!preview.moves().isEmpty()) {
            add(table(words, preview));
        }
        if (preview.outsideTheRule()) {
            var says = after.latest()
                    .map(latest -> words.say(
                            "path.preview.outside", words.date(after.earliest(), today), words.date(latest, today)))
                    .orElseGet(() -> words.say("path.preview.too-early", words.date(after.earliest(), today)));
            var banner = Tags.div("hw-banner u-my2", Icon.CLASH.draw(), Tags.div("", new Span(says)));
            add(banner);
        }
    }

    private static NativeTable table(StageWords words, Preview preview) {
        var today = preview.after().today();
        var table = new NativeTable();
        table.addClassName("hw-moves");
        for (var move : preview.moves()) {
            var row = new NativeTableRow();
            var arrow = new NativeTableCell();
            arrow.add(Icon.MOVE.draw("sm"));
            var to = new NativeTableCell();
            to.add(Tags.span("hw-b", words.date(move.to(), today)));
            row.add(
                    new NativeTableCell(move.name().in(words.language())),
                    new NativeTableCell(words.date(move.from(), today)),
                    arrow,
                    to);
            table.getBody().add(row);
        }
        return table;
    }
}
