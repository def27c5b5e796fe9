package org.hearthway.path.ui;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Section;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans.Decision;

/** Everything that was decided for the path, newest first: when, by whom, what, why. */
final class DecisionList extends Section {

    DecisionList(
            StageWords words,
            List<Decision> decisions,
            Map<AccountId, Account> people,
            ZoneId zone,
            LocalDate today,
            Optional<Consumer<Decision>> takeBack) {
        addClassName("u-mt5");
        getElement().setAttribute("aria-label", words.say("path.decided.title"));
        add(Tags.div("hw-colh", Tags.h2("", words.say("path.decided.title"))));
        var table = new NativeTable();
        table.addClassNames("hw-moves", "hw-decided");
        var several = decisions.stream()
                        .flatMap(one -> one.path().stream())
                        .distinct()
                        .count()
                > 1;
        for (var decision : decisions) {
            var row = new NativeTableRow();
            var when = LocalDate.ofInstant(decision.at(), zone);
            var what = new NativeTableCell();
            what.add(Tags.div(
                    "",
                    Tags.span(
                            "hw-b",
                            words.say(
                                    "path.decided." + decision.kind().name(),
                                    decision.name(),
                                    decision.day()
                                            .map(day -> words.date(day, today))
                                            .orElse(""),
                                    decision.outcome()
                                            .map(name -> name.in(words.language()))
                                            .orElse(""),
                                    decision.last()
                                            .map(day -> words.date(day, today))
                                            .orElse("")))));
            if (several) {
                decision.path()
                        .filter(path -> !path.equals(decision.name()))
                        .ifPresent(path -> what.add(Tags.div("", Tags.span("hw-sub", path.in(words.language())))));
            }
            if (decision.undone()) {
                what.addClassName("u-struck");
                what.add(Tags.div("", Tags.span("hw-label line", words.say("path.decided.undone"))));
            }
            what.add(Tags.div("", Tags.span("hw-sub", decision.reason())));
            var who = decision.by().map(people::get).map(Account::name).orElse(words.say("path.decided.machine"));
            var act = new NativeTableCell();
            takeBack.filter(any -> !decision.undone())
                    .ifPresent(undo -> act.add(Tags.button(
                            "text", words.say("path.decided.take-back"), pressed -> undo.accept(decision))));
            row.add(what, new NativeTableCell(who), new NativeTableCell(words.date(when, today)), act);
            table.getBody().add(row);
        }
        add(table);
    }
}
