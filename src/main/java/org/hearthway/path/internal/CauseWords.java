package org.hearthway.path.internal;

import java.time.LocalDate;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.path.engine.Cause;
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.Clash.Way;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Puts rules about dates, and what to do when they cannot all be kept, into words. */
@Component
class CauseWords {

    private final Words words;
    private final GapWords gaps;
    private final SeasonKind seasons;

    CauseWords(Words words, GapWords gaps, SeasonKind seasons) {
        this.words = words;
        this.gaps = gaps;
        this.seasons = seasons;
    }

    /** The rule as a sentence. */
    String say(Template template, Cause cause, Language language) {
        var name = cause.stage().name().in(language);
        if (cause instanceof Cause.Begins begins) {
            return begins(template, begins.stage(), begins.rule(), language);
        }
        if (cause instanceof Cause.Lasts lasts) {
            var least = lasts.stage().timing().lasts().least();
            return words.say(language, "path.cause.lasts", name, gaps.say(language, least));
        }
        if (cause instanceof Cause.InOrder order) {
            return words.say(
                    language, "path.cause.in-order", name, order.before().name().in(language));
        }
        if (cause instanceof Cause.InSeason season) {
            return words.say(language, "path.cause.season", name, season(season.season(), language));
        }
        if (cause instanceof Cause.Dated dated) {
            var key = dated.origin() == Origin.ACTUAL ? "path.cause.fixed" : "path.cause.by-hand";
            return words.say(language, key, name, date(language, dated.day()));
        }
        if (cause instanceof Cause.NotYet notYet) {
            return words.say(language, "path.cause.not-yet", name, date(language, notYet.first()));
        }
        if (cause instanceof Cause.KeptApart apart) {
            return words.say(
                    language, "path.cause.apart", name, apart.other().name().in(language), apart.days());
        }
        return words.say(language, cause instanceof Cause.OpenDay ? "path.cause.open" : "path.cause.visit", name);
    }

    private String season(String id, Language language) {
        var season = seasons.all().get(id);
        return season == null ? id : season.name().in(language);
    }

    private String begins(Template template, Stage stage, After rule, Language language) {
        var name = stage.name().in(language);
        var least = gaps.say(language, rule.earliest());
        var from = rule.stage()
                .flatMap(template::stage)
                .map(anchor -> words.say(
                        language,
                        rule.edge() == Edge.START ? "path.cause.first-day" : "path.cause.last-day",
                        anchor.name().in(language)))
                .orElseGet(() -> words.say(language, "path.cause.path"));
        return rule.latest()
                .map(most -> words.say(language, "path.cause.begins", name, least, gaps.say(language, most), from))
                .orElseGet(() -> words.say(language, "path.cause.begins-from", name, least, from));
    }

    /** Why a stage gets no day, and what would help: a sentence for each rule, then one for each way out. */
    Bilingual say(Template template, Clash clash) {
        return new Bilingual(say(template, clash, Language.EN), say(template, clash, Language.ES));
    }

    private String say(Template template, Clash clash, Language language) {
        var rules = clash.causes().stream()
                .map(cause -> say(template, cause, language))
                .distinct()
                .collect(Collectors.joining(" "));
        var told = words.say(language, "path.clash", clash.stage().name().in(language), rules);
        if (clash.ways().isEmpty()) {
            return told;
        }
        var ways =
                clash.ways().stream().map(way -> way(template, way, language)).collect(Collectors.joining("; "));
        return told + " " + words.say(language, "path.clash.ways", ways);
    }

    /** A way out as a sentence of its own. */
    String todo(Template template, Way way, Language language) {
        var says = way(template, way, language);
        return says.substring(0, 1).toUpperCase(language.locale()) + says.substring(1);
    }

    private String way(Template template, Way way, Language language) {
        if (way instanceof Way.Move move) {
            return words.say(language, "path.way.move", move.stage().name().in(language), date(language, move.to()));
        }
        var give = (Way.Give) way;
        var rule = begins(template, give.stage(), give.rule(), language);
        // the ways are one sentence together
        return words.say(language, "path.way.give", rule.substring(0, rule.length() - 1));
    }

    private String date(Language language, LocalDate day) {
        return words.dateWithYear(language, day);
    }
}
