package org.hearthway.pump.ui;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.Map;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.parts.Tags;
import org.hearthway.pump.Pumps.Fill;

/** Every recorded fill, newest first; the first counts, unless it was of another pump than the one that is in. */
final class FillHistory extends Section {

    FillHistory(PumpWords words, List<Fill> fills, boolean firstCounts, Map<AccountId, Account> people) {
        addClassName("u-mt5");
        add(Tags.div("hw-colh", Tags.h2("", words.say("pump.history.title"))));
        var table = new NativeTable();
        table.addClassNames("hw-table", "u-edged", "hw-fills");
        var head = new NativeTableRow();
        for (var key : List.of("filled", "alarm", "margin", "by", "who", "note")) {
            var cell = new NativeTableHeaderCell(words.say("pump.history." + key));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        for (int i = 0; i < fills.size(); i++) {
            table.getBody().add(row(words, fills.get(i), people, firstCounts && i == 0));
        }
        add(PumpView.scroll(words.say("pump.history.title"), table));
    }

    private static NativeTableRow row(PumpWords words, Fill fill, Map<AccountId, Account> people, boolean counts) {
        var row = new NativeTableRow();
        var by = fill.refillBy();
        var day = new NativeTableCell();
        day.add(Tags.span("hw-b", words.date(by.day())));
        if (counts) {
            day.add(Tags.span("hw-label moss u-ml3", words.say("pump.history.counts")));
        }
        var account = people.get(fill.by());
        row.add(
                new NativeTableCell(words.date(by.filled())),
                new NativeTableCell(words.date(by.alarm())),
                new NativeTableCell(words.say("pump.history.days", by.marginDays())),
                day,
                new NativeTableCell(account == null ? "" : account.name()),
                new NativeTableCell(fill.note()));
        return row;
    }
}
