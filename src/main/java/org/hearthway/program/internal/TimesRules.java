package org.hearthway.program.internal;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Problem;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.FamilyTimes.Busy;
import org.hearthway.program.FamilyTimes.Slot;
import org.hearthway.program.FamilyTimes.Times;

/** What a family may say of its week. */
final class TimesRules {

    static final int SHORTEST = 5;
    private static final int MINUTES_A_DAY = 24 * 60;

    private TimesRules() {}

    /** The same without spaces around names, without empty ones, and without the character that one database keeps not. */
    static Times tidy(Times times) {
        return new Times(
                times.slots().stream()
                        .map(slot -> new Slot(
                                slot.day(),
                                slot.start(),
                                slot.minutes(),
                                slot.helpers().stream()
                                        .map(TimesRules::tidy)
                                        .filter(name -> !name.isEmpty())
                                        .distinct()
                                        .toList()))
                        .toList(),
                times.busy().stream()
                        .map(busy -> new Busy(busy.day(), busy.from(), busy.until(), tidy(busy.what())))
                        .toList(),
                times.most());
    }

    private static String tidy(String text) {
        return text.replace("\u0000", "").strip();
    }

    static List<Problem> check(Times times) {
        var problems = new ArrayList<Problem>();
        for (int i = 0; i < times.slots().size(); i++) {
            slot(times, i, problems);
        }
        for (int i = 0; i < times.busy().size(); i++) {
            busy(times.busy().get(i), field("busy", i), problems);
        }
        if (times.busy().size() > FamilyTimes.BUSY) {
            problems.add(Problem.at("busy", "program.times.busy.many", FamilyTimes.BUSY));
        }
        if (times.most()
                .filter(most -> most < SHORTEST || most > FamilyTimes.LONGEST)
                .isPresent()) {
            problems.add(Problem.at("most", "program.times.most", SHORTEST, FamilyTimes.LONGEST));
        }
        return problems;
    }

    private static void slot(Times times, int i, List<Problem> problems) {
        var slot = times.slots().get(i);
        var field = field("slots", i);
        if (slot.minutes() < SHORTEST || slot.minutes() > FamilyTimes.LONGEST) {
            problems.add(Problem.at(field, "program.times.minutes", SHORTEST, FamilyTimes.LONGEST));
        } else if (minute(slot.start()) + slot.minutes() >= MINUTES_A_DAY) {
            problems.add(Problem.at(field, "program.times.midnight"));
        } else if (i > 0 && overlap(times.slots().get(i - 1), slot)) {
            problems.add(Problem.at(
                    field, "program.times.overlap", times.slots().get(i - 1).end()));
        }
        var sameDay = times.slots().stream()
                .filter(other -> other.day() == slot.day())
                .count();
        if (sameDay > FamilyTimes.TIMES_A_DAY
                && (i == 0 || times.slots().get(i - 1).day() != slot.day())) {
            problems.add(Problem.at(field, "program.times.many", FamilyTimes.TIMES_A_DAY));
        }
        if (slot.helpers().size() > FamilyTimes.HELPERS) {
            problems.add(Problem.at(field, "program.times.helpers", FamilyTimes.HELPERS));
        }
        if (slot.helpers().stream().anyMatch(name -> name.length() > FamilyTimes.NAME || name.startsWith("+"))) {
            problems.add(Problem.at(field, "program.times.helper", FamilyTimes.NAME));
        }
    }

    private static boolean overlap(Slot before, Slot slot) {
        return before.day() == slot.day() && minute(before.start()) + before.minutes() > minute(slot.start());
    }

    private static void busy(Busy busy, String field, List<Problem> problems) {
        if (!busy.until().isAfter(busy.from())) {
            problems.add(Problem.at(field, "program.times.end", busy.from()));
        }
        if (busy.what().length() > FamilyTimes.NAME) {
            problems.add(Problem.at(field, "program.times.what", FamilyTimes.NAME));
        }
    }

    static List<Problem> checkAway(LocalDate first, LocalDate last, LocalDate today) {
        var latest = today.plusDays(FamilyTimes.DAYS_AHEAD);
        if (first.isBefore(today) || first.isAfter(latest)) {
            return List.of(Problem.at("first", "program.away.first", today, latest));
        }
        if (last.isBefore(first) || last.isAfter(latest)) {
            return List.of(Problem.at("last", "program.away.last", first, latest));
        }
        return List.of();
    }

    private static int minute(LocalTime time) {
        return time.getHour() * 60 + time.getMinute();
    }

    /** Name of the field of one entry, counted from 0 in the order of the week. */
    static String field(String list, int at) {
        return list + "." + at;
    }
}
