package org.hearthway.access.ui;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.base.Language;
import org.hearthway.child.engine.Nights;
import org.hearthway.words.Words;

/** Says in words which nights a child sleeps at somebody's. */
final class NightWords {

    private static final LocalDate A_MONDAY = LocalDate.of(2024, 1, 1);

    private final Words words;
    private final Language language;

    NightWords(Words words, Language language) {
        this.words = words;
        this.language = language;
    }

    /** All nights in a line; empty while none is known. */
    String of(Nights nights) {
        if (!nights.isKnown()) {
            return "";
        }
        return nights.turns()
                .map(from -> words.say(
                        language,
                        "access.homes.nights.turns",
                        days(nights.week()),
                        days(nights.otherWeek()),
                        from.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))))
                .orElseGet(() -> days(nights.week()));
    }

    private String days(Set<DayOfWeek> days) {
        return days.isEmpty()
                ? words.say(language, "access.homes.nights.no")
                : Arrays.stream(DayOfWeek.values())
                        .filter(days::contains)
                        .map(this::name)
                        .collect(Collectors.joining(", "));
    }

    /** A weekday, shortly. */
    String name(DayOfWeek day) {
        return words.shortWeekday(language, A_MONDAY.with(TemporalAdjusters.nextOrSame(day)));
    }
}
