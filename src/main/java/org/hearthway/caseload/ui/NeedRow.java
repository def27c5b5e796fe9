package org.hearthway.caseload.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Language;
import org.hearthway.caseload.Needs.Handed;
import org.hearthway.caseload.Needs.Item;
import org.hearthway.caseload.Needs.Person;
import org.hearthway.caseload.engine.Urgency;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** One line of Needs a look. */
final class NeedRow {

    /** What a row can set off. */
    interface Acts {
        void take(Item item);

        void see(Item item);

        void setAside(Item item);

        void resume(Item item);

        void close(Item item);
    }

    /** The child as the first row about it shows it; empty on the rows that follow. */
    record Kid(String name, String about) {}

    /** Where the next step leads. */
    record Step(String words, String address) {}

    private final Words words;
    private final Language language;
    private final NeedWords needWords;
    private final Instant now;
    private final LocalDate today;

    NeedRow(Words words, Language language, NeedWords needWords, Instant now, LocalDate today) {
        this.words = words;
        this.language = language;
        this.needWords = needWords;
        this.now = now;
        this.today = today;
    }

    NativeTableRow open(
            Item item, Optional<Kid> kid, NeedWords.Why why, Step step, String usual, boolean asideAllowed, Acts acts) {
        var row = row(item, kid);
        var told = why(why, needWords.standing(language, item, today));
        way(item).forEach(told::add);
        row.add(by(item), told);
        row.add(who(item, usual, asideAllowed, acts));
        var next = Keys.press(Tags.link("hw-button plain u-step", step.address(), step.words()), "enter");
        row.add(cell("step", next));
        return row;
    }

    NativeTableRow left(Item item, Optional<Kid> kid, NeedWords.Why why) {
        var row = row(item, kid);
        var when = item.left()
                .map(left -> needWords.moment(language, left.at(), today))
                .orElse("");
        row.add(cell("by", Tags.span("hw-by", when)), left(item, why), cell("who"), cell("step"));
        return row;
    }

    private NativeTableCell left(Item item, NeedWords.Why why) {
        var cell = why(why, Optional.of(needWords.left(language, item, today)));
        way(item).forEach(cell::add);
        return cell;
    }

    /** With whom of the people on call it is, and who comes next: loud once it has passed somebody by. */
    private List<Component> way(Item item) {
        var way = new WayWords(words, needWords, language, today).of(item);
        var lines = new ArrayList<Component>();
        way.filter(w -> !w.says().isEmpty())
                .ifPresent(w -> lines.add(
                        w.loud()
                                ? Tags.div("hw-handed loud", Icon.CLASH.draw("sm"), new Span(w.says()))
                                : Tags.div("hw-handed", Icon.PERSON.draw("sm"), new Span(w.says()))));
        way.filter(w -> !w.then().isEmpty()).ifPresent(w -> lines.add(small(w.then())));
        return lines;
    }

    private NativeTableRow row(Item item, Optional<Kid> kid) {
        var row = Keys.row(new NativeTableRow(), item.id().toString());
        if (kid.isEmpty()) {
            row.addClassName("cont");
        }
        var folder = folder(item, kid.map(Kid::name).orElse(words.say(language, "caseload.folder")));
        row.add(kid.map(k -> cell("kid", folder, small(k.about()))).orElseGet(() -> cell("kid", folder)));
        return row;
    }

    /** The child's name opens the folder; where the name is left out, the key still does. */
    private Anchor folder(Item item, String name) {
        return Keys.press(Tags.link("kidn", "staff/child/" + item.child(), name), "o");
    }

    private NativeTableCell by(Item item) {
        var due = Tags.span("hw-by", needWords.due(language, item, now, today));
        var urgent = item.cause().urgency().flatMap(this::urgent);
        return urgent.map(mark -> cell("by", due, mark)).orElseGet(() -> cell("by", due));
    }

    private Optional<Component> urgent(Urgency urgency) {
        return switch (urgency) {
            case NOW -> Optional.of(urgent(Icon.NOW, "caseload.urgency.now"));
            case URGENT -> Optional.of(urgent(Icon.URGENT, "caseload.urgency.urgent"));
            case HOURS -> Optional.of(small(words.say(language, "caseload.urgency.hours")));
            case NOTE -> Optional.empty();
        };
    }

    private Component urgent(Icon icon, String key) {
        var mark = Tags.span("hw-by solid hw-xs", icon.draw());
        mark.add(new Span(words.say(language, key)));
        return mark;
    }

    private static NativeTableCell why(NeedWords.Why why, Optional<String> standing) {
        var title = Tags.div("", Tags.span("hw-b", why.title()), Tags.span("rest", why.rest()));
        var cell = cell("why", title, small(why.below()));
        standing.ifPresent(words -> cell.add(small("stood", words)));
        return cell;
    }

    private NativeTableCell who(Item item, String usual, boolean asideAllowed, Acts acts) {
        var owner = item.owner()
                .map(Person::name)
                .or(() -> item.handed()
                        .flatMap(Handed::at)
                        .map(turn -> words.say(
                                language, "caseload.call.holds", turn.with().name())));
        var name = Tags.div("", Tags.span(owner.isPresent() ? "hw-b" : "hw-quiet", owner.orElse(usual)));
        var tools = new Div();
        tools.addClassName("hw-acts");
        tools.add(act("caseload.take", "a", () -> acts.take(item)));
        if (item.seen().isEmpty()) {
            tools.add(act("caseload.see", "e", () -> acts.see(item)));
        }
        if (item.aside().isPresent()) {
            tools.add(act("caseload.resume", "s", () -> acts.resume(item)));
        } else if (asideAllowed) {
            tools.add(act("caseload.aside", "s", () -> acts.setAside(item)));
        }
        tools.add(act("caseload.close", "c", () -> acts.close(item)));
        return cell("who", name, tools);
    }

    private Component act(String key, String letter, Runnable done) {
        return Keys.press(Tags.bare("hw-word", words.say(language, key), pressed -> done.run()), letter);
    }

    private static Component small(String text) {
        return small("", text);
    }

    private static Component small(String classes, String text) {
        return Tags.div(("hw-sub " + classes).strip(), new Span(text));
    }

    private static NativeTableCell cell(String classes, Component... parts) {
        var cell = new NativeTableCell(parts);
        cell.addClassName(classes);
        return cell;
    }
}
