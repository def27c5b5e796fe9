package org.hearthway.sign.internal;

import com.ibm.icu.lang.UCharacter;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.engine.OfficeHours;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** The clinic's three numbers and its office hours, in words. */
@Component
class ClinicLines implements CallLines {

    private static final int DAYS_AHEAD = 31;
    private static final LocalDate A_MONDAY = LocalDate.of(2026, 1, 5);

    private final ClinicSettings clinic;
    private final ClinicCalendar calendar;
    private final Words words;
    private final Clock clock;

    ClinicLines(ClinicSettings clinic, ClinicCalendar calendar, Words words, Clock clock) {
        this.clinic = clinic;
        this.calendar = calendar;
        this.words = words;
        this.clock = clock;
    }

    @Override
    public List<Line> lines() {
        return List.of(
                line(Urgency.NOW, "now", words.both("sign.now.detail"), clinic.emergencyNumber()),
                line(Urgency.URGENT, "urgent", words.both("sign.urgent.detail"), clinic.urgentLine()),
                line(Urgency.HOURS, "hours", hours(), clinic.officeLine()));
    }

    private Line line(Urgency urgency, String key, Bilingual detail, String number) {
        return new Line(
                urgency,
                words.both("sign.urgency." + key),
                detail,
                words.both("sign.call", number),
                number,
                "tel:" + number.replaceAll("[^+0-9]", ""));
    }

    private Bilingual hours() {
        return new Bilingual(hours(Language.EN), hours(Language.ES));
    }

    private String hours(Language language) {
        var said =
                words.say(language, "sign.hours.detail", days(language), clinic.officeOpens(), clinic.officeCloses());
        // Spanish writes days small, but a line begins large
        return UCharacter.toUpperCase(language.locale(), said.substring(0, 1)) + said.substring(1);
    }

    /** "Mon to Fri" for days in a row, else each by name. */
    private String days(Language language) {
        var days = Stream.of(DayOfWeek.values())
                .filter(clinic.officeDays()::contains)
                .collect(Collectors.toList());
        var first = days.get(0);
        var last = days.get(days.size() - 1);
        if (days.size() > 2 && last.getValue() - first.getValue() == days.size() - 1) {
            return words.say(language, "sign.hours.run", name(language, first), name(language, last));
        }
        return days.stream().map(day -> name(language, day)).collect(Collectors.joining(", "));
    }

    private String name(Language language, DayOfWeek day) {
        return words.shortWeekday(language, A_MONDAY.with(day));
    }

    @Override
    public List<Opening> openings() {
        return openings(clock.instant());
    }

    private List<Opening> openings(Instant now) {
        return new OfficeHours(clinic.officeOpens(), clinic.officeCloses(), clinic.zone(), calendar::isOpen)
                .from(now, DAYS_AHEAD).stream().map(this::told).collect(Collectors.toList());
    }

    private Opening told(OfficeHours.Opening opening) {
        var day = LocalDate.ofInstant(opening.from(), clinic.zone());
        return new Opening(
                opening.from(),
                opening.until(),
                words.both("sign.office.open", clinic.officeCloses(), clinic.urgentLine()),
                new Bilingual(before(Language.EN, day), before(Language.ES, day)));
    }

    private String before(Language language, LocalDate day) {
        return words.say(
                language,
                "sign.office.closed",
                words.longDate(language, day),
                clinic.officeOpens(),
                clinic.urgentLine());
    }

    @Override
    public Bilingual officeNow() {
        var now = clock.instant();
        return openings(now).stream()
                .findFirst()
                .map(opening -> opening.at(now))
                .orElseGet(() -> words.both("sign.office.closed-long", clinic.urgentLine()));
    }
}
