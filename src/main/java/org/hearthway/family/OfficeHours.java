package org.hearthway.family;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hearthway.clinic.ClinicSettings;

/** The days and hours in which the office answers, in words. */
final class OfficeHours {

    private static final LocalDate A_MONDAY = LocalDate.of(2024, 1, 1);

    private OfficeHours() {}

    /** "Mon to Fri, 8:00 AM to 4:30 PM". */
    static String said(Reader reader, ClinicSettings clinic) {
        return reader.large(
                reader.say("hours", days(reader, clinic.officeDays()), clinic.officeOpens(), clinic.officeCloses()));
    }

    /** Days that follow one another are told as first and last, three or more of them; others one by one. */
    static String days(Reader reader, Set<DayOfWeek> days) {
        var parts = new ArrayList<String>();
        var run = new ArrayList<DayOfWeek>();
        for (var day : new TreeSet<>(days)) {
            if (!run.isEmpty() && run.get(run.size() - 1).getValue() + 1 != day.getValue()) {
                tell(reader, run, parts);
            }
            run.add(day);
        }
        tell(reader, run, parts);
        return reader.list(parts);
    }

    private static void tell(Reader reader, List<DayOfWeek> run, List<String> parts) {
        if (run.size() > 2) {
            parts.add(reader.say("hours.days", day(reader, run.get(0)), day(reader, run.get(run.size() - 1))));
        } else {
            run.forEach(day -> parts.add(day(reader, day)));
        }
        run.clear();
    }

    private static String day(Reader reader, DayOfWeek day) {
        return reader.words().shortWeekday(reader.language(), A_MONDAY.plusDays(day.getValue() - 1L));
    }
}
