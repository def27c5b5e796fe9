package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.DescriptionList;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.hearthway.base.Language;
import org.hearthway.pump.engine.RefillBy;
import org.hearthway.words.Words;

/** Says the refill-by date and the arithmetic that gives it: every result with its inputs under it. */
final class PumpWords {

    private final Words words;
    private final Language language;

    PumpWords(Words words, Language language) {
        this.words = words;
        this.language = language;
    }

    Language language() {
        return language;
    }

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    /** A date with its year: alarm dates may lie years ahead. */
    String date(LocalDate day) {
        return words.dateWithYear(language, day);
    }

    /** A date with its weekday and year. */
    String full(LocalDate day) {
        return say("pump.day", words.weekday(language, day), date(day));
    }

    /** How far the day is from today. */
    String distance(LocalDate day, LocalDate today) {
        var days = ChronoUnit.DAYS.between(today, day);
        if (days == 0) {
            return say("pump.distance.today");
        }
        return days > 0 ? say("pump.distance.ahead", days) : say("pump.distance.past", -days);
    }

    /** The sums: alarm less margin, fill plus life limit, and the earlier of both. */
    Component sums(RefillBy by) {
        var sums = new DescriptionList();
        sums.addClassNames("hw-sum", "u-ruled");
        line(
                sums,
                "",
                say("pump.sum.alarm"),
                date(by.byAlarm()),
                say("pump.sum.alarm.formula", date(by.alarm()), by.marginDays()));
        line(
                sums,
                "",
                say("pump.sum.life"),
                date(by.byLife()),
                say("pump.sum.life.formula", date(by.filled()), by.lifeLimitDays()));
        line(
                sums,
                "tot",
                say("pump.sum.day"),
                full(by.day()),
                say(by.lifeDecides() ? "pump.sum.life-decides" : "pump.sum.alarm-decides"));
        return sums;
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
