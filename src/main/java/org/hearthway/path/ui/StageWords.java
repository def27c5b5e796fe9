package org.hearthway.path.ui;

import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.hearthway.base.Language;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.State;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.internal.GapWords;
import org.hearthway.words.Words;

/** Says a stage's rule, state and dates for staff. */
final class StageWords {

    private final Words words;
    private final GapWords gaps;
    private final Language language;

    StageWords(Words words, GapWords gaps, Language language) {
        this.words = words;
        this.gaps = gaps;
        this.language = language;
    }

    Language language() {
        return language;
    }

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    /** A date, with its year when that is not this one. */
    String date(LocalDate day, LocalDate today) {
        return day.getYear() == today.getYear() ? words.date(language, day) : words.dateWithYear(language, day);
    }

    /** A date with its year. */
    String bound(LocalDate day) {
        return words.dateWithYear(language, day);
    }

    /** The stage's name; the later times of one that repeats are numbered. */
    String name(Planned planned) {
        var name = planned.stage().name().in(language);
        return planned.round() == 1 ? name : say("path.table.again", name, planned.round());
    }

    /** The rule for the first day, in few words. */
    String rule(Template path, Planned planned) {
        if (planned.isDoneBefore()) {
            return say("path.rule.before");
        }
        var counted = planned.why().counted();
        var anchor = counted.stage().flatMap(path::stage).map(s -> s.name().in(language));
        if (anchor.isEmpty()) {
            return say("path.rule.first");
        }
        var usual = counted.usual().orElse(counted.earliest());
        return usual.isZero()
                ? say("path.rule.on." + edge(counted), anchor.get())
                : say("path.rule." + edge(counted), gaps.say(language, usual), anchor.get());
    }

    /** Where something comes from; what has no source says so in the reader's language. */
    String source(String source) {
        return source.equals(Plans.NO_SOURCE) ? say("path.no-source") : source;
    }

    /** A gap. */
    String gap(Period gap) {
        return gaps.say(language, gap);
    }

    /** What a rule counts from. */
    String anchor(Template path, After rule) {
        return rule.stage()
                .flatMap(path::stage)
                .map(stage -> say("path.rule.from." + edge(rule), stage.name().in(language)))
                .orElse(say("path.rule.first"));
    }

    private static String edge(After rule) {
        return rule.edge() == Edge.START ? "start" : "end";
    }

    /** The gaps that the rule allows; empty when it allows only one. */
    Optional<String> allowed(Planned planned) {
        var counted = planned.why().counted();
        var earliest = gaps.say(language, counted.earliest());
        if (counted.latest().isEmpty()) {
            return Optional.of(say("path.rule.allowed-from", earliest));
        }
        return counted.latest().filter(counted.earliest()::equals).isPresent()
                ? Optional.empty()
                : Optional.of(say(
                        "path.rule.allowed",
                        earliest,
                        gaps.say(language, counted.latest().get())));
    }

    /** The state as a label: word and weight, never colour alone. */
    Span state(Planned planned, LocalDate today, boolean moving) {
        if (moving) {
            return Tags.span("hw-label u-moving", say("path.state.moving"));
        }
        var origin = planned.why().origin();
        if (planned.state() == State.NOW) {
            if (planned.start().equals(today)) {
                return Tags.span("hw-label ember", say("path.state.today"));
            }
            var week = ChronoUnit.WEEKS.between(planned.start(), today) + 1;
            return Tags.span("hw-label ember", say("path.state.now", week));
        }
        if (planned.isDoneBefore()) {
            return Tags.span("hw-label moss", say("path.state.done-before"));
        }
        if (origin == Origin.ACTUAL) {
            return planned.start().isAfter(today)
                    ? Tags.span("hw-label river", say("path.state.fixed"))
                    : Tags.span("hw-label moss", say("path.state.happened"));
        }
        if (planned.state() == State.PAST && !planned.end().isBefore(today)) {
            return Tags.span("hw-label", say("path.state.goes-on"));
        }
        if (planned.state() == State.PAST) {
            return Tags.span("hw-label line", say("path.state.unrecorded"));
        }
        if (origin == Origin.SET_BY_HAND) {
            return Tags.span("hw-label river", say("path.state.by-hand"));
        }
        return planned.stage().timing().signal()
                ? Tags.span("hw-label line", say("path.state.no-date"))
                : Tags.span("hw-label", say("path.state.planned"));
    }

    /** That the date lies outside its rule, if it does. */
    Optional<String> outside(Planned planned) {
        return planned.why().outside() ? Optional.of(say("path.state.outside")) : Optional.empty();
    }
}
