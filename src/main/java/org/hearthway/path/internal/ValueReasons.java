package org.hearthway.path.internal;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.path.ClinicValues.Own;
import org.hearthway.path.engine.Cause;
import org.hearthway.path.engine.PathValues;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Precaution;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.engine.ValuePlace.Kind;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Says which of the dates and rules of care rest on the clinic's own values, and what the file says. */
@Component
class ValueReasons {

    private final ClinicPaths paths;
    private final Words words;
    private final ValueWords values;
    private final ClinicSettings settings;

    ValueReasons(ClinicPaths paths, Words words, ValueWords values, ClinicSettings settings) {
        this.paths = paths;
        this.words = words;
        this.values = values;
        this.settings = settings;
    }

    /** About the gap that gave the day aimed at, and what it is counted from. */
    List<String> counted(Plan plan, Planned planned, Language language) {
        var own = paths.own(plan.template().id());
        if (own.isEmpty()) {
            return List.of();
        }
        var says = new ArrayList<String>();
        rule(planned).ifPresent(rule -> {
            var kind = rule.usual().isPresent() ? Kind.BEGINS_USUAL : Kind.BEGINS_EARLIEST;
            var place = new ValuePlace(planned.stage().id(), kind, PathValues.part(rule));
            at(own, place)
                    .ifPresent(value -> says.add(words.say(
                            language,
                            planned.round() == 1 ? "path.why.own.gap" : "path.why.own.first-gap",
                            date(language, value),
                            values.say(language, value.shipped()))));
            if (planned.round() > 1) {
                add(says, plan, own, new ValuePlace(planned.stage().id(), Kind.REPEATS_EVERY, ""), language);
            }
        });
        lengthInFront(plan, planned)
                .ifPresent(stage -> add(says, plan, own, new ValuePlace(stage.id(), Kind.LASTS_USUAL, ""), language));
        return says;
    }

    /** That one value is the clinic's own, and what the file says; empty when it is not. */
    Optional<Bilingual> why(Plan plan, ValuePlace place) {
        return at(paths.own(plan.template().id()), place)
                .map(own -> ValueWords.said(language -> words.say(
                        language, "path.why.own.gap", date(language, own), values.say(language, own.shipped()))));
    }

    /** The path's rule that gave the day; empty when it was one of the child's own. */
    private static Optional<After> rule(Planned planned) {
        var counted = planned.why().counted();
        return planned.stage().timing().begins().stream()
                .filter(rule -> !planned.why().own()
                        && rule.stage().equals(counted.stage())
                        && rule.edge() == counted.edge()
                        && inRound(planned, rule).equals(counted.usual()))
                .findFirst();
    }

    private static Optional<Period> inRound(Planned planned, After rule) {
        var more = planned.stage()
                .timing()
                .repeats()
                .filter(repeat -> planned.round() > 1)
                .map(repeat -> repeat.every().multipliedBy(planned.round() - 1));
        return rule.usual()
                .map(usual -> more.map(later -> usual.plus(later).normalized()).orElse(usual));
    }

    /** The stage whose usual length gave the day counted from; when it really ended, its length gave nothing. */
    private static Optional<Stage> lengthInFront(Plan plan, Planned planned) {
        var why = planned.why();
        return why.from()
                .filter(stage -> why.counted().edge() == Edge.END
                        && stage.timing().until().isEmpty())
                .flatMap(stage -> plan.stage(stage.id()))
                .filter(front -> front.end()
                        .equals(front.start()
                                .plus(front.stage().timing().lasts().usual())))
                .map(Planned::stage);
    }

    /** About the rule that kept the stage from the day aimed at. */
    List<String> pushed(Plan plan, Planned planned, Language language) {
        var own = paths.own(plan.template().id());
        var says = new ArrayList<String>();
        if (!own.isEmpty()) {
            planned.why().pushed().stream()
                    .flatMap(cause -> places(cause, isLater(planned)).stream())
                    .forEach(place -> add(says, plan, own, place, language));
        }
        return says;
    }

    private static boolean isLater(Planned planned) {
        var counted = planned.why().counted();
        var gap = counted.usual().orElse(counted.earliest());
        return planned.why()
                .base()
                .filter(base -> planned.start().isAfter(base.plus(gap)))
                .isPresent();
    }

    private static List<ValuePlace> places(Cause cause, boolean later) {
        var stage = cause.stage().id();
        if (cause instanceof Cause.Begins begins
                && begins.stage().timing().begins().contains(begins.rule())) {
            var kind = later ? Kind.BEGINS_EARLIEST : Kind.BEGINS_LATEST;
            return List.of(new ValuePlace(stage, kind, PathValues.part(begins.rule())));
        }
        if (cause instanceof Cause.Lasts) {
            return List.of(new ValuePlace(stage, later ? Kind.LASTS_LEAST : Kind.LASTS_MOST, ""));
        }
        if (cause instanceof Cause.Asked asked) {
            return List.of(new ValuePlace(
                    stage,
                    later ? Kind.VISIT_AFTER : Kind.VISIT_WITHIN,
                    asked.visit().id()));
        }
        return cause instanceof Cause.KeptApart apart
                ? List.of(new ValuePlace(stage, Kind.APART_DAYS, apart.other().id()))
                : List.of();
    }

    private void add(List<String> says, Plan plan, Map<ValuePlace, Own> own, ValuePlace place, Language language) {
        at(own, place)
                .ifPresent(value -> says.add(words.say(
                        language,
                        "path.why.own.value",
                        values.whole(plan.template(), place).in(language),
                        values.say(language, value.amount()),
                        date(language, value),
                        values.say(language, value.shipped()))));
    }

    private static Optional<Own> at(Map<ValuePlace, Own> own, ValuePlace place) {
        return Optional.ofNullable(own.get(place));
    }

    private String date(Language language, Own own) {
        return words.monthDayYear(language, LocalDate.ofInstant(own.at(), settings.zone()));
    }

    /** That the clinic said how long a rule of care holds, and what the file says; empty when the file alone speaks. */
    Optional<Bilingual> why(Precaution rule) {
        return paths.all().stream()
                .flatMap(path -> path.stages().stream()
                        .filter(stage -> stage.precautions().contains(rule))
                        .map(stage -> why(path, stage, rule)))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Bilingual> why(Template path, Stage stage, Precaution rule) {
        var own = paths.own(path.id());
        var part = PathValues.part(stage, rule);
        var said = new ArrayList<Bilingual>();
        for (var kind : List.of(Kind.PRECAUTION_FROM, Kind.PRECAUTION_UNTIL)) {
            at(own, new ValuePlace(stage.id(), kind, part))
                    .ifPresent(value -> said.add(ValueWords.said(language -> words.say(
                            language,
                            "path.why.own." + kind.name(),
                            values.say(language, value.amount()),
                            date(language, value),
                            values.say(language, value.shipped())))));
        }
        return said.stream().reduce((a, b) -> new Bilingual(a.en() + " " + b.en(), a.es() + " " + b.es()));
    }
}
