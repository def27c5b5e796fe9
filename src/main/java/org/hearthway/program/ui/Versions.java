package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.parts.Tags;
import org.hearthway.program.Programs.Version;
import org.hearthway.program.engine.ProgramDiff;
import org.hearthway.program.engine.ProgramLine;

/** The versions of a program: a list, one read as it was, or two side by side. Addresses lead from one to the other. */
final class Versions extends Div {

    private final transient Say say;
    private final transient ZoneId zone;
    private final String address;
    private final transient List<Version> all;
    private final transient Map<AccountId, Account> authors;

    Versions(Say say, ZoneId zone, String address, List<Version> all, Map<AccountId, Account> authors) {
        this.say = say;
        this.zone = zone;
        this.address = address;
        this.all = all;
        this.authors = authors;
    }

    private Optional<Version> find(int number) {
        return all.stream().filter(v -> v.number() == number).findFirst();
    }

    private String author(Version version) {
        return Optional.ofNullable(authors.get(version.author()))
                .map(Account::name)
                .orElseGet(() -> say.say("versions.somebody"));
    }

    private String when(Version version) {
        return say.words()
                .dateWithYear(say.language(), version.at().atZone(zone).toLocalDate());
    }

    /** Lists them all, newest first. */
    Versions list() {
        removeAll();
        add(Tags.div("hw-colh u-mt3", Tags.h2("", say.say("versions"))));
        if (all.isEmpty()) {
            add(Tags.p("hw-quiet", say.say("versions.none")));
            return this;
        }
        var table = table("versions.number", "versions.from", "versions.by", "versions.why", "versions.look");
        for (var version : all) {
            var row = new NativeTableRow();
            var looks = Tags.span("u-row");
            looks.add(Tags.link(
                    "", address + "?version=" + version.number(), say.say("versions.read", version.number())));
            if (version.number() > 1) {
                looks.add(Tags.link(
                        "",
                        address + "?compare=" + (version.number() - 1) + "-" + version.number(),
                        say.say("versions.compare", version.number() - 1)));
            }
            row.add(
                    Cells.cell("r", Tags.span("hw-b", String.valueOf(version.number()))),
                    Cells.cell("", new Span(say.date(version.effective()))),
                    Cells.cell("", new Span(author(version)), new Span(", " + when(version))),
                    Cells.cell("why", new Span(version.reason())),
                    Cells.cell("", looks));
            table.getBody().add(row);
        }
        add(scroll(table, "versions"));
        return this;
    }

    /** Shows one version as it was. */
    Versions read(int number) {
        removeAll();
        find(number).ifPresentOrElse(this::read, () -> add(Tags.p("hw-quiet", say.say("versions.unknown"))));
        return this;
    }

    private void read(Version version) {
        add(
                Tags.div(
                        "hw-colh",
                        Tags.h2("", say.say("title", version.number())),
                        Tags.span(
                                "hw-sub", say.say("versions.head", author(version), when(version), version.reason()))),
                lines(version.lines()));
    }

    Component lines(List<ProgramLine> lines) {
        var table = table("table.exercise", "table.what");
        for (var line : lines) {
            var row = new NativeTableRow();
            row.add(
                    Cells.cell(
                            "with-pic",
                            Cells.figure(say, line.exercise(), line.side()),
                            Tags.span("hw-b", say.name(line.exercise()))),
                    Cells.cell("", LineStory.of(say, line, List.of())));
            table.getBody().add(row);
        }
        return lines.isEmpty() ? Tags.p("hw-quiet", say.say("empty")) : scroll(table, "versions.table");
    }

    /**
     * Shows two side by side; {@code later} 0 stands for what is being written.
     *
     * @param writing the lines being written
     * @param go leads to another pair
     */
    Versions compare(
            int earlier, int later, List<ProgramLine> writing, java.util.function.BiConsumer<Integer, Integer> go) {
        removeAll();
        var choices = new ArrayList<>(all.stream().map(Version::number).toList());
        choices.add(0, 0);
        var left = choice("versions.earlier", choices, earlier);
        var right = choice("versions.later", choices, later);
        left.addValueChangeListener(change -> go.accept(change.getValue(), right.getValue()));
        right.addValueChangeListener(change -> go.accept(left.getValue(), change.getValue()));
        add(Tags.div("hw-colh", Tags.h2("", say.say("versions.both"))), Tags.div("u-row hw-pair-of", left, right));
        var diff = ProgramDiff.between(linesOf(earlier, writing), linesOf(later, writing));
        if (diff.isEmpty()) {
            add(Tags.p("hw-quiet u-my2", say.say("versions.same")));
        }
        var table = table("table.exercise", "versions.earlier", "versions.later");
        for (var line : diff.lines()) {
            var row = new NativeTableRow();
            row.setClassName("differs", !line.isSame());
            var name = Cells.cell("", Tags.span("hw-b", say.name(line.line().exercise())));
            if (line.moved()) {
                name.add(new Span(" "), Tags.span("hw-label ember", say.say("moved")));
            }
            row.add(
                    name,
                    Cells.cell("", story(line.before(), line, "versions.not.yet")),
                    Cells.cell("", story(line.after(), line, "versions.no.more")));
            table.getBody().add(row);
        }
        add(scroll(table, "versions.both"));
        return this;
    }

    private Component story(Optional<ProgramLine> line, ProgramDiff.LineDiff diff, String without) {
        return line.map(l -> (Component) LineStory.of(say, l, diff.fields()))
                .orElseGet(() -> Tags.span("hw-sub", say.say(without)));
    }

    private List<ProgramLine> linesOf(int number, List<ProgramLine> writing) {
        return number == 0 ? writing : find(number).map(Version::lines).orElse(List.of());
    }

    private Select<Integer> choice(String key, List<Integer> numbers, int chosen) {
        var select = new Select<Integer>();
        select.setLabel(say.say(key));
        select.setItems(numbers);
        select.setItemLabelGenerator(
                number -> number == 0 ? say.say("versions.writing") : say.say("versions.of", number));
        select.setValue(numbers.contains(chosen) ? chosen : numbers.get(0));
        return select;
    }

    private NativeTable table(String... heads) {
        var table = new NativeTable();
        table.addClassNames("hw-table", "hw-versions");
        var row = new NativeTableRow();
        for (var head : heads) {
            var cell = new NativeTableHeaderCell(say.say(head));
            cell.getElement().setAttribute("scope", "col");
            row.add(cell);
        }
        table.getHead().add(row);
        return table;
    }

    private Component scroll(NativeTable table, String label) {
        var box = Tags.div("hw-scroll", table);
        box.getElement()
                .setAttribute("role", "region")
                .setAttribute("tabindex", "0")
                .setAttribute("aria-label", say.say(label));
        return box;
    }
}
