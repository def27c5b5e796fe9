package org.hearthway.stimulator.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.hearthway.base.AccountId;
import org.hearthway.parts.Tags;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Stimulators.Revision;

/** Every reading, newest first; what was corrected or taken back stays, struck through. */
final class ReadingTable extends Section {

    private final transient StimulatorWords say;
    private final transient Function<AccountId, String> name;
    private final transient List<Reading> veiled;

    /**
     * Draws it.
     *
     * @param veiled readings that this person may have to confirm, and whose figures are not shown before
     */
    ReadingTable(
            StimulatorWords say,
            List<Revision> revisions,
            List<Reading> veiled,
            Function<AccountId, String> name,
            boolean may,
            Consumer<Reading> corrects) {
        this.say = say;
        this.name = name;
        this.veiled = veiled;
        addClassName("u-mt5");
        add(Tags.div("hw-colh", Tags.h2("", say.say("stimulator.history"))));
        var table = new NativeTable();
        table.addClassNames("hw-table", "u-edged", "hw-readings");
        var head = new NativeTableRow();
        for (var key : List.of("taken", "battery", "settings", "rest", "who", "correct")) {
            var cell = new NativeTableHeaderCell(say.say("stimulator.column." + key));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.getHead().add(head);
        revisions.forEach(revision -> table.getBody().add(row(revision, may, corrects)));
        add(scroll(say.say("stimulator.history"), table));
    }

    /** A box that scrolls by itself on a phone, by touch or by keys. */
    static Div scroll(String label, com.vaadin.flow.component.Component content) {
        var box = Tags.div("hw-scroll", content);
        box.getElement()
                .setAttribute("role", "region")
                .setAttribute("tabindex", "0")
                .setAttribute("aria-label", label);
        return box;
    }

    private NativeTableRow row(Revision revision, boolean may, Consumer<Reading> corrects) {
        var reading = revision.reading();
        var data = reading.data();
        var taken = new NativeTableCell();
        taken.add(line("hw-b", say.moment(data.taken())), line("hw-sub", data.generator()));
        if (data.emergency()) {
            taken.add(label("ember", "stimulator.mark.emergency"));
        }
        taken.add(state(revision));
        if (veiled.contains(reading)) {
            var kept = new NativeTableCell();
            kept.add(line("hw-sub", say.say("stimulator.veiled")));
            return new NativeTableRow(
                    taken, new NativeTableCell(), kept, new NativeTableCell(), who(reading), new NativeTableCell());
        }
        var battery = new NativeTableCell();
        battery.add(line("hw-b", say.level(data)));
        data.estimate().ifPresent(day -> battery.add(line("hw-sub", say.say("stimulator.estimated", say.date(day)))));
        var settings = new NativeTableCell();
        data.settings().forEach(setting -> settings.add(line("", say.setting(setting))));
        data.others().forEach(other -> settings.add(line("hw-sub", say.other(other))));
        if (!reading.unusual().isEmpty()) {
            settings.add(label("ember", "stimulator.mark.unusual"));
        }
        var correct = new NativeTableCell();
        if (may && revision.counts()) {
            correct.add(Tags.button("text", say.say("stimulator.correct"), pressed -> corrects.accept(reading)));
        }
        var row = new NativeTableRow(taken, battery, settings, rest(reading), who(reading), correct);
        if (!revision.counts()) {
            row.addClassName("u-struck");
        }
        return row;
    }

    private Div state(Revision revision) {
        if (!revision.counts()) {
            return label("line", revision.withdrawn() ? "stimulator.mark.withdrawn" : "stimulator.mark.superseded");
        }
        return revision.reading().check().isPresent()
                ? label("moss", "stimulator.mark.confirmed")
                : label("ember", "stimulator.mark.waits");
    }

    private NativeTableCell rest(Reading reading) {
        var data = reading.data();
        var rest = new NativeTableCell();
        rest.add(line("", say.say("stimulator.found." + data.found())));
        if (!data.impedances().isEmpty()) {
            rest.add(line("hw-sub", say.impedances(data)));
        }
        data.chargeEveryDays().ifPresent(days -> rest.add(line("hw-sub", say.say("stimulator.charge.every", days))));
        data.lastCharge().ifPresent(day -> rest.add(line("hw-sub", say.say("stimulator.charge.last", say.date(day)))));
        if (!data.note().isBlank()) {
            rest.add(line("hw-sub", data.note()));
        }
        return rest;
    }

    private NativeTableCell who(Reading reading) {
        var who = new NativeTableCell();
        who.add(line("", name.apply(reading.by())));
        reading.check()
                .ifPresent(check -> who.add(line("hw-sub", say.say("stimulator.checked-by", name.apply(check.by())))));
        if (!reading.reason().isBlank()) {
            who.add(line("hw-sub", say.say("stimulator.corrected", reading.reason())));
        }
        return who;
    }

    private static Div line(String style, String words) {
        return Tags.div("", Tags.span(style, words));
    }

    private Div label(String style, String key) {
        return Tags.div("", Tags.span("hw-label " + style, say.say(key)));
    }
}
