package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.dom.Element;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Keys;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.Exercise;
import org.hearthway.program.engine.Pace;
import org.hearthway.program.engine.ProgramLine;

/**
 * The table's last line: type a name, a muscle or a kind, or narrow by lists, and at most eight exercises of the library are offered; Enter
 * takes the first. What the stage forbids is shown, with the day it opens, and is taken only by who may give leave.
 */
final class AddRow extends NativeTableRow {

    private static final int MOST = 8;
    private static final String LIST = "add-offers";

    /** The keys that move through the offers and take one, not those that type. */
    private static final String KEYS = "/^(Enter|Escape|Arrow(Up|Down))$/.test(event.key)";

    /** What the row asks of its table. */
    interface Acts {
        /** The rules of care that each of the lines meets, in their order. */
        List<List<Plan.Care>> care(List<ProgramLine> lines);

        /** What taking the exercise would add. */
        ProgramLine usual(Exercise exercise);

        /** Adds the line. */
        void add(ProgramLine line);
    }

    private record Offer(Exercise exercise, ProgramLine line, Optional<Plan.Care> lock) {}

    private final transient Say say;
    private final transient Acts acts;
    private final transient Pace pace;
    private final transient About about;
    private final Filters filters;
    private final Input input = new Input(ValueChangeMode.LAZY);
    private final Span hint = Tags.span("hw-sub", "");
    private final UnorderedList list = new UnorderedList();
    private final NativeTableRow listRow = new NativeTableRow();
    private transient List<Offer> offers = List.of();
    private final List<ListItem> items = new ArrayList<>();
    private int chosen;

    AddRow(Say say, Acts acts, Pace pace, About about, int columns) {
        this.say = say;
        this.acts = acts;
        this.pace = pace;
        this.about = about;
        this.filters = new Filters(say, about, () -> offer(input.getValue()));
        addClassNames("add", "on");
        var type = Cells.cell("", Tags.span("hw-type", field(), filters), hint);
        type.getElement().setAttribute("colspan", String.valueOf(columns - 1));
        add(Cells.cell("ord", Icon.PLUS.draw()), type);
        list.addClassName("hw-sug");
        list.setId(LIST);
        list.getElement().setAttribute("role", "listbox").setAttribute("aria-label", say.say("add.offers"));
        var cell = Cells.cell("", list);
        cell.getElement().setAttribute("colspan", String.valueOf(columns));
        listRow.addClassName("sugs");
        listRow.add(cell);
        offer("");
    }

    /** The line under it that holds what is offered. */
    NativeTableRow listRow() {
        return listRow;
    }

    /** Brings the keys to the field. */
    void focus() {
        input.focus();
    }

    void clear() {
        input.setValue("");
        offer("");
    }

    private Component field() {
        input.setValueChangeTimeout(150);
        input.setId("add-exercise");
        input.setPlaceholder(say.say("add.type"));
        input.addClassName("t");
        input.getElement()
                .setAttribute("role", "combobox")
                .setAttribute("aria-label", say.say("add"))
                .setAttribute("aria-autocomplete", "list")
                .setAttribute("aria-controls", LIST)
                .setAttribute("autocomplete", "off");
        input.addValueChangeListener(typed -> offer(typed.getValue()));
        var event = input.getElement().addEventListener("keydown", pressed -> {
            // what was typed last may not have been told yet when Enter comes
            var now = pressed.getEventData().getString("element.value");
            if (!now.equals(input.getValue())) {
                input.setValue(now);
            }
            keyed(pressed.getEventData().getString("event.key"));
        });
        event.setFilter(KEYS).preventDefault().addEventData("event.key").addEventData("element.value");
        return Keys.press(input, "a");
    }

    private void keyed(String key) {
        if (Key.ARROW_DOWN.matches(key)) {
            choose(Math.min(offers.size() - 1, chosen + 1));
        } else if (Key.ARROW_UP.matches(key)) {
            choose(Math.max(0, chosen - 1));
        } else if (Key.ESCAPE.matches(key)) {
            if (input.getValue().isEmpty()) {
                Keys.back(this);
            }
            input.setValue("");
        } else if (chosen >= 0 && chosen < offers.size()) {
            take(offers.get(chosen));
        }
    }

    private void take(Offer offer) {
        if (mayTake(offer)) {
            acts.add(offer.line());
        }
    }

    /** Who may give leave from a rule of care takes what is locked, and is asked for the reason on its line. */
    private boolean mayTake(Offer offer) {
        return offer.lock().isEmpty() || about.mayLift();
    }

    private void offer(String typed) {
        var found = typed.isBlank() && !filters.isOn() ? List.<Exercise>of() : matching(typed);
        var lines = found.stream().map(acts::usual).toList();
        var care = acts.care(lines);
        var all = IntStream.range(0, found.size())
                .mapToObj(i -> new Offer(
                        found.get(i),
                        lines.get(i),
                        care.get(i).stream().filter(c -> c.rule().forbids()).findFirst()))
                .sorted(Comparator.comparing(offer -> offer.lock().isPresent()))
                .toList();
        var locked = all.stream().filter(offer -> offer.lock().isPresent()).count();
        offers = all.stream().limit(MOST).toList();
        hint.setText(
                found.isEmpty() && typed.isBlank() && !filters.isOn()
                        ? say.say("add.hint", say.library().all().size())
                        : say.say("add.found", found.size(), locked, offers.size()));
        list.removeAll();
        items.clear();
        offers.forEach(offer -> items.add(item(offer)));
        items.forEach(list::add);
        listRow.setVisible(!offers.isEmpty());
        input.getElement().setAttribute("aria-expanded", String.valueOf(!offers.isEmpty()));
        choose(0);
    }

    /** Those whose name begins so come first, and of them those that are usual at the child's level. */
    private List<Exercise> matching(String typed) {
        var words = List.of(plain(typed).split(" +"));
        return say.library().all().stream()
                .filter(filters::takes)
                .filter(e -> words.stream().allMatch(searched(e)::contains))
                .sorted(Comparator.comparing((Exercise e) ->
                                !plain(e.name().in(say.language())).startsWith(words.get(0)))
                        .thenComparing(e -> about.level()
                                .filter(level -> !e.traits().levels().contains(level))
                                .isPresent()))
                .toList();
    }

    private String searched(Exercise exercise) {
        return plain(String.join(
                " ",
                exercise.name().in(say.language()),
                say.one("kind", exercise.kind()),
                say.exercises().searched(say.language(), exercise)));
    }

    /** Without capitals and accents. */
    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .strip();
    }

    private ListItem item(Offer offer) {
        var exercise = offer.exercise();
        var item = new ListItem();
        item.setId(LIST + "-" + exercise.id());
        item.getElement().setAttribute("role", "option").setAttribute("aria-disabled", String.valueOf(!mayTake(offer)));
        item.setClassName("off", !mayTake(offer));
        item.add(
                Cells.figure(say, exercise.id(), offer.line().side()),
                Tags.span("hw-b", say.name(exercise.id())),
                Tags.span("g", say.muscles(exercise)),
                offer.lock()
                        .map(care -> (Component) Tags.span(
                                "lock",
                                Icon.LOCK.draw("sm"),
                                new Span(say.say("locked", say.movement(care), say.date(care.until())))))
                        .orElseGet(() -> Tags.span(
                                "a", say.say("add.dose", say.dose(offer.line()), pace.minutes(offer.line())))));
        item.getElement().addEventListener("click", pressed -> take(offer));
        return item;
    }

    private void choose(int index) {
        chosen = index;
        for (int i = 0; i < offers.size(); i++) {
            var item = items.get(i);
            item.setClassName("first", i == index);
            item.getElement().setAttribute("aria-selected", String.valueOf(i == index));
            item.getElement()
                    .getChildren()
                    .filter(e -> e.getTag().equals("kbd"))
                    .toList()
                    .forEach(Element::removeFromParent);
            if (i == index && mayTake(offers.get(i))) {
                item.getElement().appendChild(new Element("kbd").setText(say.say("key.enter")));
                input.getElement()
                        .setAttribute("aria-activedescendant", item.getId().orElse(""));
            }
        }
    }
}
