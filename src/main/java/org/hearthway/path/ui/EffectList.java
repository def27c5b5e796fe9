package org.hearthway.path.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans.Effect;
import org.hearthway.path.Plans.Move;

/** What a change does to the plan: the dates that move, what comes and what leaves. */
final class EffectList extends Div {

    EffectList(StageWords words, Effect effect, LocalDate today) {
        if (!effect.moves().isEmpty()) {
            add(table(words, effect.moves(), today));
        }
        stages(words, "path.preview.coming", effect.coming());
        stages(words, "path.preview.leaving", effect.leaving());
        stages(words, "path.preview.late", effect.late());
        stages(words, "path.preview.no-day", effect.noDay());
        effect.visits()
                .forEach(visit -> add(Tags.p(
                        "u-mb1",
                        words.say(
                                "path.preview.visit",
                                visit.kind(),
                                words.date(visit.start().toLocalDate(), today)))));
        if (getChildren().findAny().isEmpty()) {
            add(Tags.p("hw-quiet", words.say("path.preview.nothing")));
        }
    }

    private void stages(StageWords words, String key, List<Bilingual> names) {
        if (!names.isEmpty()) {
            var all = names.stream().map(name -> name.in(words.language())).collect(Collectors.joining(", "));
            add(Tags.p("u-mb1", words.say(key, all)));
        }
    }

    private static NativeTable table(StageWords words, List<Move> moves, LocalDate today) {
        var table = new NativeTable();
        table.addClassName("hw-moves");
        for (var move : moves) {
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
