package org.hearthway.choosing.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.FactsEntry;
import org.hearthway.choosing.FactsEntry.Difference;
import org.hearthway.parts.Tags;

/** The earlier versions of the facts: what each one changed, who entered it and when, and any two beside each other. */
final class FactsHistory extends Section {

    /** So many versions stand open; older ones are folded. */
    private static final int OPEN = 2;

    private final transient Telling say;
    private final transient List<FactsEntry> newestFirst;
    private final transient Function<FactsEntry, String> since;
    private final Div compared = new Div();

    /**
     * Lays them out.
     *
     * @param newestFirst at least one
     * @param since when and by whom a version was entered
     */
    FactsHistory(Telling say, List<FactsEntry> newestFirst, Function<FactsEntry, String> since) {
        this.say = say;
        this.newestFirst = List.copyOf(newestFirst);
        this.since = since;
        addClassNames("hw-sheet", "u-edged", "hw-fact-history");
        setId("facts-history");
        getElement().setAttribute("aria-label", say.say("choosing.history"));
        add(Tags.h2("u-xl", say.say("choosing.history")));
        newestFirst.stream().limit(OPEN).forEach(entry -> add(entry(entry)));
        if (newestFirst.size() > OPEN) {
            var older = new Div();
            newestFirst.stream().skip(OPEN).forEach(entry -> older.add(entry(entry)));
            add(new NativeDetails(say.say("choosing.history.older", newestFirst.size() - OPEN), older));
        }
        if (newestFirst.size() > 1) {
            add(pair());
        }
    }

    private Component entry(FactsEntry entry) {
        var at = newestFirst.indexOf(entry);
        var first = at == newestFirst.size() - 1;
        var changes = first ? entry.sinceNothing() : entry.since(newestFirst.get(at + 1));
        var box = Tags.div(
                "hw-decided",
                Tags.span("hw-b", say.say("choosing.history.version", entry.version())),
                Tags.span("hw-sub", since.apply(entry)));
        inOrder(changes).forEach(change -> box.add(line(change)));
        return box;
    }

    /** In the order in which the facts are asked for; what is asked for no more comes last. */
    private List<Difference> inOrder(List<Difference> changes) {
        var order = List.copyOf(say.facts().keySet());
        return changes.stream()
                .sorted(Comparator.comparingInt(
                        change -> order.contains(change.fact()) ? order.indexOf(change.fact()) : Integer.MAX_VALUE))
                .toList();
    }

    /** What stands there since then, and struck what had stood there, if anything had. */
    private Component line(Difference change) {
        var line = Tags.span("", say.say("choosing.history.of", name(change)) + " ");
        if (!change.before().isEmpty()) {
            var was = new com.vaadin.flow.dom.Element("s").setText(says(change.fact(), change.before()));
            was.setAttribute("class", "u-thin");
            line.getElement().appendChild(was, com.vaadin.flow.dom.Element.createText(" "));
        }
        line.add(Tags.span("hw-b", says(change.fact(), change.after())));
        return line;
    }

    private Component pair() {
        var left = choice("choosing.history.earlier", newestFirst.get(1));
        var right = choice("choosing.history.later", newestFirst.get(0));
        left.addValueChangeListener(chosen -> compare(chosen.getValue(), right.getValue()));
        right.addValueChangeListener(chosen -> compare(left.getValue(), chosen.getValue()));
        compare(left.getValue(), right.getValue());
        return new NativeDetails(
                say.say("choosing.history.compare"), Tags.div("", Tags.div("hw-fact-pair", left, right), compared));
    }

    private Select<FactsEntry> choice(String key, FactsEntry chosen) {
        var select = new Select<FactsEntry>();
        select.setLabel(say.say(key));
        select.setItems(newestFirst);
        select.setItemLabelGenerator(entry -> say.say("choosing.history.one", entry.version(), since.apply(entry)));
        select.setValue(chosen);
        return select;
    }

    private void compare(FactsEntry one, FactsEntry other) {
        compared.removeAll();
        var differences = other.since(one);
        if (differences.isEmpty()) {
            compared.add(Tags.p("hw-quiet", say.say("choosing.history.same")));
            return;
        }
        var table = new NativeTable();
        table.addClassName("hw-table");
        var head = new NativeTableRow();
        head.add(
                head(say.say("choosing.history.fact")),
                head(say.say("choosing.history.version", one.version())),
                head(say.say("choosing.history.version", other.version())));
        table.getHead().add(head);
        inOrder(differences)
                .forEach(change -> table.getBody()
                        .add(new NativeTableRow(
                                new NativeTableCell(Tags.span("hw-b", name(change))),
                                new NativeTableCell(says(change.fact(), change.before())),
                                new NativeTableCell(says(change.fact(), change.after())))));
        table.getElement().setAttribute("aria-label", say.say("choosing.history.compare"));
        compared.add(table);
    }

    private static NativeTableHeaderCell head(String words) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    private String name(Difference change) {
        return say.name(change.fact());
    }

    private String says(String fact, Answer.Data data) {
        var choices = data.choices().isEmpty() ? say.say("choosing.unknown") : say.choices(fact, data.choices());
        return data.note().isBlank() ? choices : say.say("choosing.history.noted", choices, data.note());
    }
}
