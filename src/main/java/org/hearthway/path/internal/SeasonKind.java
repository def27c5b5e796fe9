package org.hearthway.path.internal;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.springframework.stereotype.Component;

/** The seasons in {@code content/seasons}, one file each: weeks of the year that come again, such as a summer break. */
@Component
class SeasonKind implements ContentKind {

    private final Map<String, Season> seasons = new LinkedHashMap<>();

    /**
     * A season.
     *
     * @param name in family words
     * @param from first day in each year
     * @param until last day, in the next year when it stands earlier in the year
     */
    record Season(Bilingual name, MonthDay from, MonthDay until) {

        boolean holds(LocalDate day) {
            var at = MonthDay.from(day);
            boolean begun = !at.isBefore(from);
            boolean notOver = !at.isAfter(until);
            return from.isAfter(until) ? begun || notOver : begun && notOver;
        }
    }

    @Override
    public String place() {
        return "seasons";
    }

    @Override
    public void read(Entry file) {
        var name = file.bilingual("name");
        var block = file.block("each-year");
        seasons.put(file.id(), new Season(name, monthDay(block.block("from")), monthDay(block.block("until"))));
        block.done();
    }

    private static MonthDay monthDay(Entry entry) {
        var month = entry.choice("month", Month.class);
        int day = entry.integer("day", 1, 31);
        if (day > month.maxLength()) {
            entry.wrong("day", "\"day\" is " + day, "a day that the month has");
        }
        entry.done();
        return MonthDay.of(month, Math.min(day, month.maxLength()));
    }

    Set<String> names() {
        return Set.copyOf(seasons.keySet());
    }

    Map<String, Season> all() {
        return Map.copyOf(seasons);
    }
}
