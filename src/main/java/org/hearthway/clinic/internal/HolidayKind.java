package org.hearthway.clinic.internal;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.clinic.engine.HolidayRule;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.springframework.stereotype.Component;

/** The days a clinic is closed, in {@code content/holidays}; all files count. */
@Component
class HolidayKind implements ContentKind {

    /** A holiday: its name and the rule that gives its day. */
    record Holiday(Bilingual name, HolidayRule rule) {}

    private final List<Holiday> holidays = new ArrayList<>();

    /** All holidays, in the order of the files. */
    List<Holiday> all() {
        return List.copyOf(holidays);
    }

    @Override
    public String place() {
        return "holidays";
    }

    @Override
    public void read(Entry file) {
        file.bilingual("name");
        for (var entry : file.list("holidays")) {
            var name = entry.bilingual("name");
            rule(entry).ifPresent(rule -> holidays.add(new Holiday(name, rule)));
            entry.done();
        }
    }

    private static Optional<HolidayRule> rule(Entry entry) {
        var onDay = entry.maybeBlock("each-year-on");
        var onWeekday = entry.maybeBlock("weekday-of-month");
        var easter = entry.maybeInteger("days-from-easter", -120, 120);
        var given = List.of(onDay.isPresent(), onWeekday.isPresent(), easter.isPresent());
        if (given.stream().filter(yes -> yes).count() != 1) {
            entry.wrong(
                    "name",
                    "the holiday has no rule or several",
                    "one of each-year-on, weekday-of-month, days-from-easter");
            return Optional.empty();
        }
        return onDay.flatMap(HolidayKind::sameDay)
                .or(() -> onWeekday.flatMap(HolidayKind::nthWeekday))
                .or(() -> easter.map(HolidayRule.FromEaster::new));
    }

    private static Optional<HolidayRule> sameDay(Entry block) {
        var month = block.choice("month", Month.class);
        var day = block.integer("day", 1, 31);
        block.done();
        if (day > month.maxLength()) {
            block.wrong("day", "\"day\" is " + day, "a day that the month has");
            return Optional.empty();
        }
        return Optional.of(new HolidayRule.SameDay(MonthDay.of(month, day)));
    }

    private static Optional<HolidayRule> nthWeekday(Entry block) {
        var month = block.choice("month", Month.class);
        var weekday = block.choice("weekday", DayOfWeek.class);
        var last = block.yes("last");
        var nth = last ? Optional.of(-1) : block.maybeInteger("nth", 1, 4);
        block.done();
        if (nth.isEmpty()) {
            block.wrong("nth", "\"nth\" is missing", "1 to 4, or last: yes");
        }
        return nth.map(n -> new HolidayRule.NthWeekday(month, weekday, n));
    }
}
