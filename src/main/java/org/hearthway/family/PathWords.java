package org.hearthway.family;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.hearthway.path.engine.Plan;

/** What is said about a stage and its dates. */
final class PathWords {

    private static final int TWO_YEARS = 730;

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
        return day.getYear() == reader.today().getYear()
                ? reader.monthDay(day)
                : reader.words().monthDayYear(reader.language(), day);
    }

    /** When a stage that lies ahead begins: "on April 23" when it is known, else "between April 23 and May 7". */
    static String begins(Reader reader, Plan.Planned stage) {
        if (stage.clash().isPresent()) {
            return reader.say("family.path.no-day");
        }
        if (stage.why().origin() != Plan.Origin.RULE) {
            return reader.say("family.path.on", date(reader, stage.start()));
        }
        return stage.latest()
                .map(latest -> latest.equals(stage.earliest())
                        ? reader.say("family.path.on", date(reader, stage.start()))
                        : reader.say("family.path.between", date(reader, stage.earliest()), date(reader, latest)))
                .orElseGet(() -> reader.say("family.path.about", date(reader, stage.start())));
    }

    /** When a stage that lies behind was: one day, or from a day to a day. */
    static String was(Reader reader, Plan.Planned stage) {
        return stage.start().equals(stage.end())
                ? reader.say("family.path.on", date(reader, stage.start()))
                : reader.say("family.path.from-to", date(reader, stage.start()), date(reader, stage.end()));
    }
}
