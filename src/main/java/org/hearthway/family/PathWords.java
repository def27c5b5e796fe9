package org.hearthway.family;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.hearthway.path.engine.Plan;

/** What is said about a stage and its dates. */
final class PathWords {

    private static final int TWO_YEARS = 730;

    /** From here on a day that is not fixed is told by its month: a nearer one would promise too much. */
    private static final int FAR_DAYS = 180;

    /** More days than these are not told one by one. */
    private static final int WIDE_DAYS = 92;

    private PathWords() {}

    /** "Week 6 of about 26", counted from the stage's first day. */
    static String week(Reader reader, Plan.Planned stage) {
        var week = ChronoUnit.WEEKS.between(stage.start(), reader.today()) + 1;
        var weeks = (ChronoUnit.DAYS.between(stage.start(), stage.end()) + 6) / 7;
        return week < weeks ? reader.say("family.where.week", week, weeks) : reader.say("family.where.week.over", week);
    }

    /** Whether a stage goes on for so long that counting its weeks or naming its end tells nothing. */
    static boolean isWithoutEnd(Plan.Planned stage) {
        return ChronoUnit.DAYS.between(stage.start(), stage.end()) > TWO_YEARS;
    }

    /** "until March 17". */
    static String until(Reader reader, Plan.Planned stage) {
        return reader.say("family.where.until", date(reader, stage.end()));
    }

    /** A month and a day, with the year when it is another one than this. */
    static String date(Reader reader, LocalDate day) {
        return isThisYear(reader, day) ? reader.monthDay(day) : reader.words().monthDayYear(reader.language(), day);
    }

    /** A day that is fixed: its weekday too, and the year when it is another one than this. */
    static String day(Reader reader, LocalDate day) {
        return isThisYear(reader, day)
                ? reader.words().longDate(reader.language(), day)
                : reader.words().fullDate(reader.language(), day);
    }

    private static boolean isThisYear(Reader reader, LocalDate day) {
        return day.getYear() == reader.today().getYear();
    }

    private static boolean isFar(Reader reader, LocalDate day) {
        return day.isAfter(reader.today().plusDays(FAR_DAYS));
    }

    /** A day that nobody has fixed, by its month: "about July" or "about January 2027". */
    static String about(Reader reader, LocalDate day) {
        return reader.say("family.path.about", month(reader, day));
    }

    private static String month(Reader reader, LocalDate day) {
        return isThisYear(reader, day)
                ? reader.words().month(reader.language(), day)
                : reader.words().monthYear(reader.language(), day);
    }

    /** Where a stage lies for who walks: what began and has not ended goes on, beside the present one or as it. */
    static Plan.State lies(Reader reader, Plan.Planned stage) {
        return stage.state() == Plan.State.PAST && !stage.end().isBefore(reader.today())
                ? Plan.State.NOW
                : stage.state();
    }

    /** When a stage is, told as one that lies there. */
    static String when(Reader reader, Plan.Planned stage, Plan.State lies) {
        return switch (lies) {
            case PAST -> was(reader, stage);
            case NOW -> is(reader, stage);
            case TO_COME -> begins(reader, stage);
        };
    }

    /** When a stage is, told by where it lies. */
    static String when(Reader reader, Plan.Planned stage) {
        return when(reader, stage, lies(reader, stage));
    }

    /** When a stage that lies ahead begins: the day when it is fixed, "between" or "about" while it is not. */
    private static String begins(Reader reader, Plan.Planned stage) {
        if (stage.clash().isPresent()) {
            return reader.say("family.path.no-day");
        }
        if (isFixed(stage)) {
            return reader.say("family.path.on", day(reader, stage.start()));
        }
        return isFar(reader, stage.start()) ? about(reader, stage.start()) : between(reader, stage);
    }

    /** Whether the day stands: somebody gave it, or what it counts from leaves no other. */
    static boolean isFixed(Plan.Planned stage) {
        return stage.clash().isEmpty()
                && (stage.why().origin() != Plan.Origin.RULE
                        || stage.possible().first().equals(stage.possible().last()));
    }

    /** All the days that it could be, whatever the dates in front become; too many of them tell less than the month. */
    private static String between(Reader reader, Plan.Planned stage) {
        var possible = stage.possible();
        var first = possible.first().isBefore(reader.today()) ? reader.today() : possible.first();
        var last = possible.last();
        return last.isAfter(first) && !last.isAfter(first.plusDays(WIDE_DAYS))
                ? reader.say("family.path.between", from(reader, first, last), date(reader, last))
                : about(reader, stage.start());
    }

    /** The first of two days; the year is said once, at the second. */
    static String from(Reader reader, LocalDate first, LocalDate last) {
        return first.getYear() == last.getYear() ? reader.monthDay(first) : date(reader, first);
    }

    /** When a stage that goes on began, and about when it ends. */
    private static String is(Reader reader, Plan.Planned stage) {
        if (stage.start().equals(stage.end())) {
            return reader.large(reader.say("family.path.on", day(reader, stage.start())));
        }
        if (isWithoutEnd(stage)) {
            return reader.say("family.path.since", date(reader, stage.start()));
        }
        var since = date(reader, stage.start());
        return isFar(reader, stage.end())
                ? reader.say("family.path.since-until.month", since, month(reader, stage.end()))
                : reader.say("family.path.since-until", since, date(reader, stage.end()));
    }

    /** When a stage that lies behind was: one day, or from a day to a day. */
    static String was(Reader reader, Plan.Planned stage) {
        return stage.start().equals(stage.end())
                ? reader.say("family.path.on", date(reader, stage.start()))
                : reader.say(
                        "family.path.from-to", from(reader, stage.start(), stage.end()), date(reader, stage.end()));
    }
}
