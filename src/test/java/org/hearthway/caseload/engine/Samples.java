package org.hearthway.caseload.engine;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.base.Role;

/** Bounds, an office and facts that tests begin from. */
final class Samples {

    static final ZoneId ZONE = ZoneId.of("America/New_York");

    /** A Thursday. */
    static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    static final Office OFFICE = new Office(ZONE, LocalTime.of(16, 30), Samples::openOnOrAfter);

    private Samples() {}

    private static LocalDate openOnOrAfter(LocalDate day) {
        return Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY).contains(day.getDayOfWeek())
                ? day.with(TemporalAdjusters.next(DayOfWeek.MONDAY))
                : day;
    }

    /** The home program's numbers as they ship, but for these two. */
    static Map<Figure, Integer> figures(int painFrom, int silentDays) {
        var figures = new EnumMap<Figure, Integer>(Figure.class);
        figures.put(Figure.PAIN_FROM, painFrom);
        figures.put(Figure.SILENT_DAYS, silentDays);
        figures.put(Figure.RISING_WEEKS, 8);
        figures.put(Figure.RISING_BY, 1);
        figures.put(Figure.SORE_FROM, 4);
        figures.put(Figure.SORE_DAYS, 5);
        figures.put(Figure.SORE_WITHIN, 14);
        figures.put(Figure.DONE_PERCENT, 50);
        figures.put(Figure.DONE_WEEKS, 3);
        figures.put(Figure.DONE_REPORTED, 60);
        figures.put(Figure.HARD_FROM, 8);
        figures.put(Figure.HARD_DAYS, 4);
        figures.put(Figure.HARD_WITHIN, 14);
        figures.put(Figure.STOPPED_TIMES, 3);
        figures.put(Figure.STOPPED_WITHIN, 14);
        return figures;
    }

    static RuleBook book(int painFrom, int silentDays, int refillDays) {
        var conduct = new RuleBook.Conduct(Role.NURSE, 7, true);
        return new RuleBook(
                figures(painFrom, silentDays),
                refillDays,
                28,
                28,
                2,
                1,
                3,
                new RuleBook.OfPath(14, 14, 60),
                Map.of(Urgency.NOW, Duration.ofMinutes(15), Urgency.URGENT, Duration.ofMinutes(60)),
                Map.of(Urgency.HOURS, 0, Urgency.NOTE, 1),
                Map.of(
                        Rule.PAIN,
                        0,
                        Rule.NO_LOG,
                        0,
                        Rule.MISSED,
                        0,
                        Rule.SECOND_CHECK,
                        1,
                        Rule.FIRST_FILL,
                        1,
                        Rule.PUMP_CONCERN,
                        1),
                Map.of(
                        Rule.SIGN,
                        conduct,
                        Rule.PAIN,
                        conduct,
                        Rule.REFILL,
                        conduct,
                        Rule.NO_LOG,
                        conduct,
                        Rule.MISSED,
                        conduct,
                        Rule.TASK,
                        conduct,
                        Rule.CHECK,
                        conduct,
                        Rule.SECOND_CHECK,
                        conduct));
    }

    static NeedsRules rules() {
        return new NeedsRules(book(7, 3, 14), OFFICE);
    }

    static Facts homeDays(Facts.HomeDay... days) {
        return new Facts(List.of(), List.of(), List.of(days), Optional.empty(), List.of(), List.of(), Optional.empty());
    }

    static Facts.HomeDay silent(int day) {
        return new Facts.HomeDay(LocalDate.of(2026, 3, day), false);
    }

    static Facts.HomeDay logged(int day) {
        return new Facts.HomeDay(LocalDate.of(2026, 3, day), true);
    }

    static Facts refill(LocalDate by, boolean booked) {
        return new Facts(
                List.of(),
                List.of(),
                List.of(),
                Optional.of(new Facts.Refill(by, booked)),
                List.of(),
                List.of(),
                Optional.empty());
    }

    static Facts unfilled(LocalDate since) {
        return new Facts(
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.of(since),
                List.of(),
                Optional.empty());
    }

    static Facts tasks(Facts.OpenTask... tasks) {
        return new Facts(
                List.of(), List.of(), List.of(), Optional.empty(), List.of(), List.of(tasks), Optional.empty());
    }

    static Facts check(LocalDate by, boolean booked) {
        return new Facts(
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(new Facts.Check("HIPS", "hip-xray", by, booked)),
                List.of(),
                List.of(),
                Optional.empty());
    }

    static Facts unconfirmed(Facts.Unconfirmed... waiting) {
        return new Facts(
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(waiting),
                List.of(),
                Optional.empty());
    }

    static Facts onPath(Facts.OnPath... paths) {
        return new Facts(
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(paths),
                Optional.empty());
    }

    static Stream<Rule> rulesOf(List<Cause> causes) {
        return causes.stream().map(Cause::rule);
    }
}
