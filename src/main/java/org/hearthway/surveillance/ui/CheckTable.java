package org.hearthway.surveillance.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.parts.Tags;
import org.hearthway.surveillance.Check;
import org.hearthway.surveillance.Surveillance.Matter;
import org.hearthway.surveillance.engine.Watched;

/** What each check showed, newest first, as it was entered; for the team alone. */
final class CheckTable extends Div {

    private final transient RuleWords say;
    private final transient Matter matter;

    CheckTable(RuleWords say, Matter matter, List<Check> checks, boolean may, Consumer<Check> corrects) {
        this.say = say;
        this.matter = matter;
        addClassNames("hw-scroll", "u-mt3");
        getElement()
                .setAttribute("role", "region")
                .setAttribute("tabindex", "0")
                .setAttribute("aria-label", say.say("surveillance.table." + matter.watched()));
        var table = new NativeTable();
        table.addClassNames("hw-table", "u-edged");
        var head = new NativeTableRow();
        for (var key : List.of("day", "found", "who", "correct")) {
            var cell = new NativeTableHeaderCell(say.say("surveillance.column." + key));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        checks.forEach(check -> table.getBody().add(row(check, may, corrects)));
        add(table);
    }

    private NativeTableRow row(Check check, boolean may, Consumer<Check> corrects) {
        var data = check.data();
        var found = new NativeTableCell();
        found.add(Tags.div("", Tags.span("hw-b", found(data))));
        matter.displacedFrom()
                .filter(data::reaches)
                .ifPresent(from -> found.add(
                        Tags.div("hw-label ember", Tags.span("", say.say("surveillance.displaced", from))),
                        Tags.div("hw-sub", Tags.span("", say.say("surveillance.displaced.by", matter.definition())))));
        if (data.stable()) {
            found.add(Tags.div("", Tags.span("hw-label moss", say.say("surveillance.stable"))));
        }
        if (!data.note().isBlank()) {
            found.add(Tags.div("hw-sub", Tags.span("", data.note())));
        }
        var correct = new NativeTableCell();
        if (may) {
            correct.add(Tags.button("text", say.say("surveillance.correct"), pressed -> corrects.accept(check)));
        }
        return new NativeTableRow(
                new NativeTableCell(say.day(data.day())), found, new NativeTableCell(data.who()), correct);
    }

    private String found(Check.CheckData data) {
        if (data.watched() == Watched.SPINE) {
            return data.cobb()
                    .map(angle -> say.say("surveillance.found.cobb", angle))
                    .orElseGet(() -> say.say("surveillance.found.nothing"));
        }
        return data.left().isEmpty() && data.right().isEmpty()
                ? say.say("surveillance.found.nothing")
                : say.say("surveillance.found.migration", percent(data.left()), percent(data.right()));
    }

    private String percent(Optional<BigDecimal> migration) {
        return migration
                .map(typed -> say.say("surveillance.percent", typed))
                .orElseGet(() -> say.say("surveillance.found.not-entered"));
    }
}
