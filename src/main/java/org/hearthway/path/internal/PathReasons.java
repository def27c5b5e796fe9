package org.hearthway.path.internal;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Cause;
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.Why;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.engine.network.Span;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Puts the reason for a date into words. */
@Component
class PathReasons {

    private final Words words;
    private final GapWords gaps;
    private final CauseWords causes;
    private final ValueReasons values;
    private final ClinicCalendar calendar;

    PathReasons(Words words, GapWords gaps, CauseWords causes, ValueReasons values, ClinicCalendar calendar) {
        this.words = words;
        this.gaps = gaps;
        this.causes = causes;
        this.values = values;
        this.calendar = calendar;
    }

    /** That a value is the clinic's own, in both languages. */
    Optional<Bilingual> why(Plan plan, ValuePlace place) {
        return values.why(plan, place);
    }

    /** The reason for a stage's first day, in both languages. */
    Bilingual why(Plan plan, Planned planned) {
        return planned.clash()
                .map(clash -> causes.say(plan.template(), clash))
                .orElseGet(() -> told(language -> why(plan, planned, language)));
    }

    private String why(Plan plan, Planned planned, Language language) {
        return switch (planned.why().origin()) {
            case ACTUAL -> given(plan, planned, language, "path.why.fixed");
            case SET_BY_HAND -> given(plan, planned, language, "path.why.by-hand");
            case RULE -> rule(plan, planned, language);
        };
    }

    private String given(Plan plan, Planned planned, Language language, String key) {
        var parts = new ArrayList<String>();
        parts.add(words.say(language, key));
        if (!planned.why().rule().equals(planned.start())) {
            parts.add(words.say(
                    language,
                    "path.why.rule-alone",
                    date(language, planned.why().rule())));
            parts.addAll(values.counted(plan, planned, language));
        }
        if (planned.why().outside()) {
            parts.add(tooLate(planned, language)
                    .orElseGet(
                            () -> words.say(language, "path.why.before-earliest", date(language, planned.earliest()))));
        }
        return String.join(" ", parts);
    }

    private String rule(Plan plan, Planned planned, Language language) {
        var why = planned.why();
        var parts = new ArrayList<String>();
        parts.add(counted(planned, why, language));
        if (why.own()) {
            parts.add(words.say(language, "path.why.own-gap"));
        }
        parts.addAll(values.counted(plan, planned, language));
        if (planned.stage().timing().signal()) {
            parts.add(words.say(language, "path.why.no-date-yet"));
        } else {
            why.pushed().ifPresent(cause -> parts.add(pushed(plan.template(), cause, language)));
            parts.addAll(values.pushed(plan, planned, language));
        }
        why.shiftedFrom()
                .ifPresent(day -> parts.add(
                        why.away()
                                ? words.say(language, "path.why.away", date(language, day))
                                : closed(day, language)));
        if (why.outside()) {
            tooLate(planned, language).ifPresent(parts::add);
        }
        return String.join(" ", parts);
    }

    private Optional<String> tooLate(Planned planned, Language language) {
        return planned.latest()
                .filter(planned.start()::isAfter)
                .map(latest -> words.say(language, "path.why.after-latest", date(language, latest)));
    }

    private String pushed(Template template, Cause cause, Language language) {
        return cause instanceof Cause.InOrder
                ? words.say(language, "path.why.in-order")
                : words.say(language, "path.why.also", causes.say(template, cause, language));
    }

    private String closed(LocalDate day, Language language) {
        return calendar.holiday(day)
                .map(name -> words.say(language, "path.why.holiday", date(language, day), name.in(language)))
                .orElseGet(() -> words.say(language, "path.why.closed", date(language, day)));
    }

    private String counted(Planned planned, Why why, Language language) {
        var base = date(language, why.base().orElse(planned.start()));
        var gap = usual(why);
        var from = why.from();
        if (from.isEmpty()) {
            return gap.isZero()
                    ? words.say(language, "path.why.begins", base)
                    : words.say(language, "path.why.after-begin", gaps.say(language, gap), base);
        }
        var edge = why.counted().edge() == Edge.START ? "first-day" : "last-day";
        var name = from.get().name().in(language);
        return gap.isZero()
                ? words.say(language, "path.why.on." + edge, name, base)
                : words.say(language, "path.why.after." + edge, gaps.say(language, gap), name, base);
    }

    private static Period usual(Why why) {
        return why.counted().usual().orElse(why.counted().earliest());
    }

    private String date(Language language, LocalDate date) {
        return words.dateWithYear(language, date);
    }

    /** What the family is told when a path begins. */
    Bilingual begun(Template template, LocalDate day) {
        return told(
                language -> words.say(language, "path.told.begun", template.name(), words.dateWithYear(language, day)));
    }

    /** What the family is told about a change; dates of this year need no year. */
    Bilingual told(Planned stage, LocalDate before, int alsoMoved, LocalDate today) {
        var name = stage.stage().name();
        if (stage.start().equals(before)) {
            return told(
                    language -> words.say(language, "path.told.stands", name, near(language, stage.start(), today)));
        }
        return told(language -> words.say(
                language,
                "path.told.moved",
                name,
                near(language, stage.start(), today),
                near(language, before, today),
                alsoMoved));
    }

    /** Why a stage gets no day, and what would help. */
    Bilingual clash(Template template, Clash clash) {
        return causes.say(template, clash);
    }

    /** A way out of a clash, as something to do. */
    Bilingual way(Template template, Clash.Way way) {
        return told(language -> causes.todo(template, way, language));
    }

    /** What the family is told when a stage ends, comes on the plan or leaves it. */
    Bilingual told(Template template, Change change) {
        var stage = template.stage(change.stage()).orElseThrow();
        if (change instanceof Change.End end) {
            return stage.outcome(end.outcome())
                    .flatMap(Template.Outcome::tells)
                    .orElseGet(() -> told(language -> words.say(language, "path.told.ended", stage.name())));
        }
        if (change instanceof Change.Fix fix) {
            return told(language -> words.say(
                    language, "path.told.done-before", stage.name(), words.dateWithYear(language, fix.day())));
        }
        var added = change instanceof Change.Add;
        return told(language -> words.say(language, added ? "path.told.added" : "path.told.skipped", stage.name()));
    }

    /** What the family is told when the team ends a path. */
    Bilingual closed(Template template, LocalDate day) {
        return told(language ->
                words.say(language, "path.told.closed", template.name(), words.dateWithYear(language, day)));
    }

    /** What the family is told when days were kept on which it cannot come. */
    Bilingual away(Span days) {
        return told(language -> words.say(
                language,
                "path.told.away",
                words.dateWithYear(language, days.first()),
                words.dateWithYear(language, days.last())));
    }

    /** The name of days away, where a decision is named. */
    Bilingual away() {
        return told(language -> words.say(language, "path.away.name"));
    }

    /** What the family is told when a decision is taken back. */
    Bilingual takenBack(Bilingual name) {
        return told(language -> words.say(language, "path.told.taken-back", name));
    }

    private static Bilingual told(Function<Language, String> say) {
        return new Bilingual(say.apply(Language.EN), say.apply(Language.ES));
    }

    private String near(Language language, LocalDate date, LocalDate today) {
        return date.getYear() == today.getYear() ? words.date(language, date) : words.dateWithYear(language, date);
    }
}
