package org.hearthway.stimulator.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.DescriptionList;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.stream.Collectors;
import org.hearthway.base.Language;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Reading.Other;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.Reading.Setting;
import org.hearthway.stimulator.StimulatorRules;
import org.hearthway.stimulator.engine.BatteryFit;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.Window;
import org.hearthway.stimulator.engine.Window.Source;
import org.hearthway.words.Words;

/** Says what a stimulator showed and the arithmetic of its window: every result with its inputs under it. */
record StimulatorWords(Words words, Language language) {

    private static final double A_MONTH = 30;

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    /** A date with its year: a generator lasts for years. */
    String date(LocalDate day) {
        return words.dateWithYear(language, day);
    }

    /** A date with its weekday and year. */
    String full(LocalDate day) {
        return say("stimulator.day", words.weekday(language, day), date(day));
    }

    String moment(LocalDateTime taken) {
        return say("stimulator.moment", date(taken.toLocalDate()), words.time(language, taken.toLocalTime()));
    }

    /** How far the day is from today. */
    String distance(LocalDate day, LocalDate today) {
        var days = ChronoUnit.DAYS.between(today, day);
        if (days == 0) {
            return say("stimulator.distance.today");
        }
        return days > 0 ? say("stimulator.distance.ahead", days) : say("stimulator.distance.past", -days);
    }

    String level(BigDecimal level, BatteryUnit unit) {
        return say("stimulator.level." + unit, level);
    }

    /** What the battery showed, or that nobody saw it. */
    String level(ReadingData data) {
        return data.level().map(level -> level(level, data.unit())).orElseGet(() -> say("stimulator.level.none"));
    }

    /** A side in one line. */
    String setting(Setting setting) {
        var figures =
                say("stimulator.setting." + setting.unit(), setting.amplitude(), setting.pulseWidth(), setting.rate());
        return setting.contacts().isBlank()
                ? say("stimulator.setting.side." + setting.side(), figures)
                : say("stimulator.setting.side.contacts." + setting.side(), figures, setting.contacts());
    }

    String other(Other other) {
        return other.unit().isBlank()
                ? say("stimulator.other", other.name(), other.value())
                : say("stimulator.other.unit", other.name(), other.value(), other.unit());
    }

    String impedances(ReadingData data) {
        return data.impedances().stream()
                .map(pair -> say("stimulator.ohms", pair.name(), pair.ohms()))
                .collect(Collectors.joining(" · "));
    }

    /** The sums of a window of a generator: each day that could open the window, which one does, and when it closes. */
    Component sums(Generator generator, Window window, StimulatorRules rules) {
        var sums = list();
        window.candidates().stream()
                .filter(candidate -> candidate.source() == Source.ESTIMATE)
                .forEach(candidate -> line(
                        sums,
                        "",
                        say("stimulator.sum.estimate"),
                        date(candidate.day()),
                        say("stimulator.sum.estimate.formula")));
        window.fit().ifPresent(answer -> fit(sums, answer, unit(generator)));
        window.candidates().forEach(candidate -> {
            if (candidate.source() == Source.AGE) {
                line(
                        sums,
                        "",
                        say("stimulator.sum.age", rules.firstCheckMonths()),
                        date(candidate.day()),
                        say("stimulator.sum.age.formula", date(generator.implanted()), rules.firstCheckMonths()));
            } else if (candidate.source() == Source.LIFE) {
                line(
                        sums,
                        "",
                        say("stimulator.sum.life"),
                        date(candidate.day()),
                        say(
                                "stimulator.sum.life.formula",
                                date(generator.implanted()),
                                generator.about().lifeYears().orElse(0)));
            }
        });
        totals(sums, window);
        generator
                .nextReading()
                .ifPresent(day -> line(
                        sums,
                        "",
                        say("stimulator.sum.next"),
                        date(day),
                        say("stimulator.sum.next.formula", rules.everyDays())));
        return sums;
    }

    /** The two days alone, while a reading is typed. */
    Component shortly(Window window) {
        var sums = list();
        totals(sums, window);
        return sums;
    }

    private static BatteryUnit unit(Generator generator) {
        return generator.newest().map(reading -> reading.data().unit()).orElse(BatteryUnit.PERCENT);
    }

    private static DescriptionList list() {
        var sums = new DescriptionList();
        sums.addClassNames("hw-sum", "u-ruled");
        return sums;
    }

    private void fit(DescriptionList sums, BatteryFit.Answer answer, BatteryUnit unit) {
        answer.silence()
                .ifPresent(silence -> line(
                        sums,
                        "",
                        say("stimulator.sum.fit"),
                        say("stimulator.sum.cannot-say"),
                        say("stimulator.sum.silent." + silence, answer.readings())));
        answer.fit().ifPresent(fit -> {
            line(
                    sums,
                    "",
                    say("stimulator.sum.fit"),
                    date(fit.earliest()),
                    formula(fit, fit.steepest(), fit.earliest(), unit)
                            + ". "
                            + say(
                                    "stimulator.sum.fit.how",
                                    fit.whole().readings(),
                                    fit.recent().readings()));
            line(
                    sums,
                    "",
                    say("stimulator.sum.likely"),
                    date(fit.likely()),
                    formula(fit, fit.slope(), fit.likely(), unit));
        });
    }

    private String formula(BatteryFit fit, double slope, LocalDate day, BatteryUnit unit) {
        return say(
                "stimulator.sum.fit.formula." + unit,
                fit.from(),
                fit.end(),
                -slope * A_MONTH,
                ChronoUnit.DAYS.between(fit.whole().last(), day),
                date(fit.whole().last()));
    }

    private void totals(DescriptionList sums, Window window) {
        window.opens()
                .ifPresentOrElse(
                        first -> line(
                                sums,
                                "tot",
                                say("stimulator.sum.opens"),
                                full(first.day()),
                                say("stimulator.sum.decides." + first.source())),
                        () -> line(
                                sums,
                                "tot",
                                say("stimulator.sum.opens"),
                                say("stimulator.sum.cannot-say"),
                                say("stimulator.sum.nothing-known")));
        line(
                sums,
                "tot",
                say("stimulator.sum.closes"),
                window.closes().map(last -> full(last.day())).orElseGet(() -> say("stimulator.sum.cannot-say")),
                window.closes()
                        .map(last -> say("stimulator.sum.closes." + last.source()))
                        .orElseGet(() -> say("stimulator.sum.closes.none")));
    }

    private static void line(DescriptionList sums, String weight, String name, String result, String formula) {
        var term = new DescriptionList.Term(name);
        var value = new DescriptionList.Description(result);
        var explained = new DescriptionList.Description(formula);
        if (!weight.isEmpty()) {
            term.addClassName(weight);
            value.addClassName(weight);
        }
        explained.addClassName("f");
        sums.add(term, value, explained);
    }
}
