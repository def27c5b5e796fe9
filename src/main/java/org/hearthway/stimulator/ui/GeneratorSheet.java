package org.hearthway.stimulator.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Reading.Found;
import org.hearthway.stimulator.StimulatorRules;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.stimulator.engine.Window;

/** One generator as it stands now: the day that matters, what is unusual, the battery, the sums, settings, charging. */
final class GeneratorSheet extends Section {

    private final transient StimulatorWords say;
    private final transient Generator generator;
    private final transient Window window;
    private final transient List<Reading> shown;
    private final transient LocalDate today;

    /**
     * Draws it.
     *
     * @param veiled readings that this person may have to confirm, and whose figures are not shown before
     */
    GeneratorSheet(
            StimulatorWords say, Generator generator, List<Reading> veiled, StimulatorRules rules, LocalDate today) {
        this.say = say;
        this.window =
                generator.readings().stream().anyMatch(veiled::contains) ? generator.counted() : generator.window();
        this.shown = generator.readings().stream()
                .filter(reading -> !veiled.contains(reading))
                .toList();
        this.generator = generator;
        this.today = today;
        addClassName("hw-generator");
        var title = say.say("stimulator.generator", generator.serial());
        getElement().setAttribute("aria-label", title);
        add(
                Tags.div("hw-colh", Tags.h2("", title), print()),
                Tags.p(
                        "hw-sub",
                        say.say(
                                "stimulator.generator.since",
                                say.date(generator.implanted()),
                                say.say("stimulator.charge." + generator.about().charge()))));
        head();
        warnings().forEach(warning -> add(banner(warning)));
        var chart = new BatteryChart(say, generator, window, shown, today).draw();
        chart.addClassName("narrow");
        add(
                ReadingTable.scroll(say.say("stimulator.chart"), chart),
                Tags.p(
                        "hw-sub",
                        say.say(
                                generator.about().charge() == Charge.AT_HOME
                                        ? "stimulator.chart.charged"
                                        : "stimulator.chart.key")),
                say.sums(generator, window, rules));
        settings();
        charging();
    }

    private Component print() {
        var print = Tags.button(
                "text",
                Icon.PRINT,
                say.say("stimulator.print"),
                pressed -> UI.getCurrent().getPage().executeJs("window.print()"));
        print.addClassName("hw-screen-only");
        return print;
    }

    /** From when on a new generator is planned, or the battery read at every visit. */
    private void head() {
        var earlier = generator.window();
        var opens = earlier.opens();
        if (opens.isEmpty()) {
            add(Tags.p("hw-b u-mt3", say.say("stimulator.no-window")));
            return;
        }
        var day = opens.get().day();
        add(
                Tags.p(
                        "hw-b u-mt3",
                        say.say(earlier.asksForReplacement() ? "stimulator.plan-from" : "stimulator.read-from")),
                Tags.div(
                        "hw-refill",
                        Tags.span("day", say.full(day)),
                        Tags.span("hw-label " + (day.isAfter(today) ? "line" : "ember"), say.distance(day, today))));
        if (!earlier.equals(generator.counted())) {
            add(Tags.p("hw-sub", say.say("stimulator.by-unchecked")));
        }
    }

    private List<String> warnings() {
        var off = generator.newest().stream()
                .filter(reading -> reading.data().found() == Found.OFF)
                .map(reading ->
                        say.say("stimulator.warn.off", say.date(reading.data().day())));
        var drop = generator.drop().stream()
                .map(fall -> say.say(
                        "stimulator.warn.drop." + unit(generator),
                        fall.fall(),
                        say.date(fall.from()),
                        say.date(fall.to()),
                        fall.usual()));
        var impedances = generator.unusual().stream()
                .map(unusual -> say.say(
                        "stimulator.warn.ohms." + unusual.what(),
                        unusual.pair().name(),
                        unusual.pair().ohms(),
                        unusual.before().orElse(0)));
        var charge = Stream.of(generator.chargeLate())
                .filter(late -> late > 0)
                .map(late -> say.say("stimulator.warn.charge", late));
        var kind = Stream.of(generator.about().charge())
                .filter(known -> known == Charge.NOT_SAID)
                .map(unsaid -> say.say("stimulator.warn.kind"));
        return Stream.of(off, drop, impedances, charge, kind)
                .flatMap(all -> all)
                .toList();
    }

    private static Component banner(String words) {
        return Tags.div("hw-banner u-my2", Icon.INFO.draw(), Tags.div("", new Span(words)));
    }

    /** In what this generator tells its battery; per cent while nobody has read it. */
    static BatteryUnit unit(Generator generator) {
        return generator.newest().map(reading -> reading.data().unit()).orElse(BatteryUnit.PERCENT);
    }

    /** What two people confirmed; a newer reading that waits is said, for the device may be set otherwise since. */
    private void settings() {
        var checked = generator.readings().stream()
                .filter(reading -> reading.check().isPresent()
                        && !reading.data().settings().isEmpty())
                .findFirst();
        add(Tags.h2("u-xl u-mt5", say.say("stimulator.settings")));
        if (checked.isEmpty()) {
            add(Tags.p("hw-quiet", say.say("stimulator.settings.none")));
            return;
        }
        var data = checked.get().data();
        data.settings().forEach(setting -> add(Tags.p("hw-setting-sum", say.setting(setting))));
        data.others().forEach(other -> add(Tags.p("hw-sub", say.other(other))));
        add(Tags.p("hw-sub", say.say("stimulator.settings.of", say.moment(data.taken()))));
        if (generator.newest().filter(reading -> reading.check().isEmpty()).isPresent()) {
            add(Tags.p("hw-b", say.say("stimulator.settings.newer")));
        }
    }

    private void charging() {
        generator.recharging().ifPresent(rhythm -> {
            add(
                    Tags.h2("u-xl u-mt5", say.say("stimulator.recharging")),
                    Tags.p("hw-b", say.say("stimulator.charge.every", rhythm.everyDays())));
            add(rhythm.last()
                    .map(last -> Tags.p(
                            "",
                            say.say(
                                    "stimulator.charge.known",
                                    say.date(last),
                                    rhythm.next().map(say::date).orElse(""))))
                    .orElseGet(() -> Tags.p("", say.say("stimulator.charge.unknown"))));
        });
    }
}
