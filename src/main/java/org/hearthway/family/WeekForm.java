package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.FamilyTimes.Times;

/**
 * Enters a family's week: times for exercises, who helps then, school and clubs, the most minutes of a day. One press
 * gives a whole week to begin with; everything stays open to change until it is saved.
 */
final class WeekForm extends Div {

    private static final int STEP = 5;

    private final transient Reader reader;
    private final transient List<String> people;
    private final transient Consumer<Times> save;
    private final transient List<WeekBlock> times;
    private final transient List<WeekBlock> busy;
    private transient Optional<Integer> most;
    private transient Map<WeekBlock, Component> lines = new LinkedHashMap<>();
    private transient Faults faults = new Faults();

    /**
     * The form.
     *
     * @param people names of those who may help, the first is there unless said otherwise
     * @param save keeps what was entered, or says what is wrong with it
     */
    WeekForm(Reader reader, Times now, List<String> people, Consumer<Times> save) {
        this.reader = reader;
        this.people = people;
        this.save = save;
        this.times = WeekBlock.times(now.slots());
        this.busy = WeekBlock.busy(now.busy());
        this.most = now.most();
        addClassName("hw-ours");
        draw();
    }

    private void draw() {
        removeAll();
        lines = new LinkedHashMap<>();
        faults = new Faults();
        add(Tags.h2("hw-h2", reader.say("family.ours.times")), quick());
        times.forEach(block -> add(card(block, times)));
        add(Tags.button(
                "plain wide u-mt3",
                reader.say(times.isEmpty() ? "family.ours.own" : "family.ours.more"),
                pressed -> begin(WeekBlock.time(
                        LocalTime.of(17, 0), WeekBlock.USUAL_MINUTES, WeekBlock.schoolDays(), usual()))));
        add(
                Tags.h2("hw-h2 u-mt5", reader.say("family.ours.busy")),
                Tags.p("hw-s hw-quiet u-mb3", reader.say("family.ours.busy.why")));
        busy.forEach(block -> add(card(block, busy)));
        add(Tags.button("plain wide u-mt3", reader.say("family.ours.busy.more"), pressed -> {
            busy.add(WeekBlock.busy(
                    LocalTime.of(8, 0),
                    LocalTime.of(15, 0),
                    WeekBlock.schoolDays(),
                    busy.isEmpty() ? reader.say("family.ours.school") : ""));
            draw();
            focus(busy.get(busy.size() - 1));
        }));
        add(mostADay(), faults.at(""));
        var done = Tags.button("main wide u-mt3", reader.say("family.ours.save"), pressed -> send());
        done.setId("ours-save");
        add(done);
    }

    private List<String> usual() {
        return people.stream().limit(1).toList();
    }

    /** A week at one press. */
    private Component quick() {
        var starts = new LinkedHashMap<String, WeekBlock>();
        starts.put("before", WeekBlock.time(LocalTime.of(7, 10), 10, WeekBlock.schoolDays(), usual()));
        starts.put("after", WeekBlock.time(LocalTime.of(16, 0), 20, WeekBlock.schoolDays(), usual()));
        starts.put("evening", WeekBlock.time(LocalTime.of(18, 30), 20, WeekBlock.everyDay(), usual()));
        starts.put("weekend", WeekBlock.time(LocalTime.of(10, 0), 30, WeekBlock.weekend(), usual()));
        var chips = Tags.div("hw-chips u-mb3");
        chips.getElement().setAttribute("role", "group");
        chips.getElement().setAttribute("aria-label", reader.say("family.ours.quick"));
        starts.forEach((name, block) -> {
            var chip = Tags.button("", reader.say("family.ours.quick." + name), pressed -> begin(block));
            chip.removeClassName("hw-button");
            chip.addClassName("hw-chip");
            chip.setId("quick-" + name);
            chip.getElement()
                    .setAttribute("aria-label", reader.say("family.ours.quick." + name + ".full", block.minutes()));
            chips.add(chip);
        });
        return Tags.div(
                "",
                Tags.p("hw-s hw-quiet u-mb2", reader.say(times.isEmpty() ? "family.ours.begin" : "family.ours.add")),
                chips);
    }

    private void begin(WeekBlock block) {
        times.add(block);
        draw();
        focus(block);
    }

    private void focus(WeekBlock block) {
        Optional.ofNullable(lines.get(block)).ifPresent(card -> {
            card.getElement().setAttribute("tabindex", "-1");
            card.getElement().callJsFunction("focus");
            card.getElement().callJsFunction("scrollIntoView", false);
        });
    }

    private Component card(WeekBlock block, List<WeekBlock> all) {
        var isTime = all == times;
        var card = Bits.el("section", "hw-sheet hw-ours-time u-mb3");
        card.getElement()
                .setAttribute(
                        "aria-label",
                        reader.say(isTime ? "family.ours.time" : "family.ours.taken", all.indexOf(block) + 1));
        lines.put(block, card);
        card.add(isTime ? timeRow(block) : busyRow(block));
        var days = new Toggles<>(
                reader.say("family.ours.days"),
                Arrays.asList(DayOfWeek.values()),
                block.days(),
                day -> reader.large(reader.words().shortWeekday(reader.language(), date(day))),
                day -> reader.words().weekday(reader.language(), date(day)),
                block::on);
        days.addClassName("hw-ours-days");
        card.add(days);
        if (isTime) {
            card.add(Tags.p("hw-s hw-quiet", reader.say("family.ours.who")), who(block));
        }
        card.add(faults.at(field(block)));
        card.add(Tags.button("text", reader.say("family.ours.remove"), pressed -> {
            all.remove(block);
            draw();
        }));
        return card;
    }

    private java.time.LocalDate date(DayOfWeek day) {
        return reader.today().with(day);
    }

    private HtmlContainer timeRow(WeekBlock block) {
        var minutes = Bits.el("b", "hw-num", reader.say("family.minutes.short", block.minutes()));
        minutes.getElement().setAttribute("aria-live", "polite");
        return Tags.div(
                "hw-ours-row",
                clock("family.ours.start", block.start(), block::startsAt),
                Tags.div(
                        "hw-ours-steps",
                        Tags.round(Icon.MINUS, reader.say("family.ours.shorter"), p -> step(block, -STEP, minutes)),
                        minutes,
                        Tags.round(Icon.PLUS, reader.say("family.ours.longer"), p -> step(block, STEP, minutes))));
    }

    private void step(WeekBlock block, int by, HtmlContainer minutes) {
        block.takes(Math.max(STEP, Math.min(FamilyTimes.LONGEST, block.minutes() + by)));
        minutes.getElement().setText(reader.say("family.minutes.short", block.minutes()));
    }

    private HtmlContainer busyRow(WeekBlock block) {
        var what = new Input();
        what.setValue(block.what());
        what.addValueChangeListener(change -> block.isFor(change.getValue()));
        return Tags.div(
                "hw-ours-row",
                labelled("family.ours.what", what),
                clock("family.ours.from", block.start(), block::startsAt),
                clock("family.ours.until", block.end(), block::endsAt));
    }

    private Component clock(String key, Optional<LocalTime> now, Consumer<Optional<LocalTime>> changed) {
        var input = new Input(ValueChangeMode.ON_CHANGE);
        input.setType("time");
        input.setValue(now.map(LocalTime::toString).orElse(""));
        input.addValueChangeListener(change -> changed.accept(time(change.getValue())));
        return labelled(key, input);
    }

    private Component labelled(String key, Input input) {
        return Bits.el("label", "hw-clock", Tags.span("", reader.say(key)), input);
    }

    private static Optional<LocalTime> time(String text) {
        try {
            return Optional.of(LocalTime.parse(text));
        } catch (DateTimeParseException open) {
            return Optional.empty();
        }
    }

    /** Who is there: those the child's circle knows, and whoever else is named. */
    private Component who(WeekBlock block) {
        Set<String> names = new LinkedHashSet<>(people);
        times.forEach(other -> names.addAll(other.helpers()));
        var other = new Input();
        other.setPlaceholder(reader.say("family.ours.other"));
        other.getElement().setAttribute("aria-label", reader.say("family.ours.other"));
        other.addValueChangeListener(change -> {
            var name = change.getValue().strip();
            if (!name.isEmpty()) {
                block.with(name, true);
                draw();
                focus(block);
            }
        });
        return Tags.div(
                "hw-ours-who",
                new Toggles<>(reader.say("family.ours.who"), names, block.helpers(), n -> n, n -> n, block::with),
                Bits.el("label", "hw-clock", other));
    }

    private Component mostADay() {
        var input = new Input();
        input.setType("number");
        input.getElement().setAttribute("inputmode", "numeric");
        input.getElement().setAttribute("min", "5");
        input.setValue(most.map(String::valueOf).orElse(""));
        input.addValueChangeListener(change -> most = number(change.getValue()));
        return Tags.div("hw-ours-most u-mt5", labelled("family.ours.most", input), faults.at("most"));
    }

    private static Optional<Integer> number(String text) {
        return text.matches("\\d{1,4}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
    }

    private String field(WeekBlock block) {
        return "block-" + System.identityHashCode(block);
    }

    private void send() {
        faults.clear();
        var open = new ArrayList<WeekBlock>(times);
        open.addAll(busy);
        var isWhole = true;
        for (var block : open) {
            var missing = missing(block);
            missing.ifPresent(key -> faults.tell(field(block), reader.say(key)));
            isWhole &= missing.isEmpty();
        }
        if (!isWhole) {
            faults.tell("", reader.say("family.ours.see-above"));
            return;
        }
        var entered = new Times(
                times.stream().flatMap(block -> block.slots().stream()).toList(),
                busy.stream().flatMap(block -> block.busy().stream()).toList(),
                most);
        try {
            save.accept(entered);
        } catch (Invalid invalid) {
            invalid.problems().forEach(problem -> faults.tell(place(problem.field(), entered), reader.say(problem)));
        }
    }

    private Optional<String> missing(WeekBlock block) {
        if (block.days().isEmpty()) {
            return Optional.of("family.ours.no-day");
        }
        var whole = block.start().isPresent()
                && (times.contains(block) || block.end().isPresent());
        return whole ? Optional.empty() : Optional.of("family.ours.no-time");
    }

    /** Where a problem is told: at the entry that it is about. */
    private String place(String field, Times entered) {
        var parts = field.split("\\.", 2);
        if (parts.length < 2) {
            return field.equals("most") ? field : "";
        }
        var at = Integer.parseInt(parts[1]);
        var found = parts[0].equals("slots")
                ? times.stream()
                        .filter(block -> block.slots().contains(entered.slots().get(at)))
                        .reduce((first, later) -> later)
                : busy.stream()
                        .filter(block -> block.busy().contains(entered.busy().get(at)))
                        .findFirst();
        return found.map(this::field).orElse("");
    }
}
