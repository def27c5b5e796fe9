package org.hearthway.desk.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.dom.DebouncePhase;
import java.util.List;
import java.util.Map;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.desk.Board.Group;
import org.hearthway.desk.Board.Row;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** The desk's one list with its bands. */
final class DeskTable {

    private static final int SETTLE_MILLIS = 120;
    private static final String COLUMNS = "6";

    private final Words words;
    private final Language language;
    private final DeskWords deskWords;
    private final DeskActs acts;
    private final boolean sendsMail;

    DeskTable(Words words, Language language, DeskWords deskWords, DeskActs acts, boolean sendsMail) {
        this.words = words;
        this.language = language;
        this.deskWords = deskWords;
        this.acts = acts;
        this.sendsMail = sendsMail;
    }

    /**
     * Draws the list.
     *
     * @param focus whether the keys are brought to the row at hand
     */
    NativeTable draw(DeskRows rows, Map<ChildId, String> names, boolean focus) {
        var chosen = rows.chosenIds();
        var table = new NativeTable();
        table.addClassNames("hw-table", "tight", "hw-desk-list");
        table.getElement().setAttribute("aria-label", say("desk.title"));
        table.getHead().add(head(rows));
        for (var group : Group.values()) {
            var ofGroup =
                    rows.shown().stream().filter(row -> row.group() == group).toList();
            if (ofGroup.isEmpty()) {
                continue;
            }
            table.getBody().add(band(group, ofGroup.size()));
            for (var row : ofGroup) {
                var line = line(row, names.getOrDefault(row.child(), ""), chosen.contains(row.id()));
                if (rows.isAtHand(row)) {
                    line.addClassName("on");
                    if (focus) {
                        Keys.focus(line);
                    }
                }
                table.getBody().add(line);
            }
        }
        return table;
    }

    private NativeTableRow head(DeskRows rows) {
        var head = new NativeTableRow();
        var sendable = rows.shown().stream().filter(Row::isSendable).toList();
        var all = new NativeTableHeaderCell();
        all.addClassName("u-w2");
        if (sendable.isEmpty()) {
            all.add(Tags.span("hw-vh", say("desk.column.choose")));
        } else {
            var ticked = rows.chosen().containsAll(sendable);
            all.add(box(say("desk.choose-all"), ticked, acts::chooseAll));
        }
        head.add(all);
        for (var column : List.of("child", "about", "visit", "how", "when")) {
            var cell = new NativeTableHeaderCell(say("desk.column." + column));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        return head;
    }

    private NativeTableRow band(Group group, int count) {
        var rule = group == Group.GOING_OUT && !sendsMail ? "desk.mail.folder" : "desk.group.says." + group.name();
        var says = Tags.span("u-row u-mid", icon(group).draw("sm"));
        says.add(
                Tags.span("", say("desk.group." + group.name())),
                Tags.span("hw-count u-onsheet", String.valueOf(count)),
                Tags.span("hw-sub u-thin", say(rule)));
        var cell = new NativeTableCell(says);
        cell.getElement().setAttribute("colspan", COLUMNS);
        var band = new NativeTableRow(cell);
        band.addClassName("band");
        return band;
    }

    private static Icon icon(Group group) {
        return switch (group) {
            case GOING_OUT -> Icon.MAIL;
            case WAITING -> Icon.HOURS;
            case NOT_REACHED -> Icon.AWAY;
            case TO_BOOK -> Icon.DATES;
        };
    }

    private NativeTableRow line(Row row, String name, boolean chosen) {
        var line = Keys.row(new NativeTableRow(), row.id());
        line.getElement()
                .addEventListener("focusin", event -> acts.open(row))
                .debounce(SETTLE_MILLIS, DebouncePhase.TRAILING);
        var pick = cell("pick");
        if (row.isSendable()) {
            pick.add(Keys.press(box(say("desk.choose", name), chosen, ticked -> acts.choose(row, ticked)), "x"));
            var upTo = Keys.press(
                    Tags.bare("hw-vh", say("desk.choose-to-here"), pressed -> acts.chooseUpTo(row)), "shift+x");
            upTo.getElement().setAttribute("tabindex", "-1");
            pick.add(upTo);
        }
        var child = Keys.press(Tags.bare("hw-kid", name, pressed -> acts.begin(row)), "enter");
        var how = Tags.span("how", deskWords.icon(row).draw("sm"));
        how.add(Tags.span("hw-sub", deskWords.how(language, row)));
        line.add(
                pick,
                cell("kid", child),
                cell("about", Tags.span("", deskWords.about(language, row))),
                cell("visit hw-num", Tags.span("", deskWords.visit(language, row))),
                cell("how", how),
                cell("when hw-num", Tags.span("hw-sub u-ink", deskWords.when(language, row))));
        return line;
    }

    private static Input box(String name, boolean ticked, java.util.function.Consumer<Boolean> changed) {
        var box = new Input();
        box.setType("checkbox");
        box.addClassName("hw-box");
        box.getElement()
                .setAttribute("aria-label", name)
                .setProperty("checked", ticked)
                .addPropertyChangeListener(
                        "checked", "change", event -> changed.accept(Boolean.TRUE.equals(event.getValue())));
        return box;
    }

    private static NativeTableCell cell(String classes, Component... parts) {
        var cell = new NativeTableCell(parts);
        cell.addClassNames(classes.split(" "));
        return cell;
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
