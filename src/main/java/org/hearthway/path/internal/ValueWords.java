package org.hearthway.path.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.path.VisitKindNames;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.Amount.Gap;
import org.hearthway.path.engine.Amount.Times;
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.PathValues;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.Duties;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Precaution;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.Task;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.engine.ValuePlace.Rule;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Names the values of a path and says how much they are. */
@Component
public class ValueWords {

    private final Words words;
    private final GapWords gaps;
    private final CauseWords causes;
    private final VisitKindNames visits;

    ValueWords(Words words, GapWords gaps, CauseWords causes, VisitKindNames visits) {
        this.words = words;
        this.gaps = gaps;
        this.causes = causes;
        this.visits = visits;
    }

    /** How much it is: "6 weeks", "14 days before", "8 times". */
    public String say(Language language, Amount amount) {
        if (amount instanceof Times times) {
            return words.say(language, "path.values.times", times.number());
        }
        var gap = ((Gap) amount).period();
        var says = gaps.say(language, gap);
        return gap.isNegative() ? words.say(language, "path.values.before", says) : says;
    }

    Bilingual both(Amount amount) {
        return said(language -> say(language, amount));
    }

    /** The value's name within its rule. */
    Bilingual name(ValuePlace place) {
        return words.both("path.values.value." + place.kind().name());
    }

    /** What its rule is about. */
    Bilingual rule(Template path, ValuePlace place) {
        var rule = place.kind().rule();
        return said(language -> words.say(
                language,
                "path.values.rule." + rule.name(),
                about(path, place, rule).in(language)));
    }

    /** The value's name with its stage and rule; what is gone from the path is named as the file had named it. */
    Bilingual whole(Template path, ValuePlace place) {
        var stage = path.stage(place.stage()).map(Stage::name).orElse(Bilingual.same(place.stage()));
        var rule = rule(path, place);
        var name = name(place);
        return said(language -> words.say(
                language, "path.values.whole", stage.in(language), shortly(rule.in(language)), name.in(language)));
    }

    /** The first sentence, without its point. */
    private static String shortly(String says) {
        var end = says.indexOf(". ");
        var first = end < 0 ? says : says.substring(0, end);
        return first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
    }

    private Bilingual about(Template path, ValuePlace place, Rule rule) {
        var part = Bilingual.same(place.part().isEmpty() ? place.stage() : place.part());
        return switch (rule) {
            case LASTS, REPEATS -> part;
            case APART -> path.stage(place.part()).map(Stage::name).orElse(part);
            case BEGINS -> anchor(path, place.part());
            case PRECAUTION -> precaution(path, place).map(Precaution::says).orElse(part);
            case VISIT ->
                path.stage(place.stage()).stream()
                        .flatMap(stage -> stage.visits().stream())
                        .filter(visit -> visit.id().equals(place.part()))
                        .findFirst()
                        .flatMap(visit -> visits.name(visit.kind()))
                        .orElse(part);
            case FAMILY_TASK -> task(path, place, duties -> duties.family()).orElse(part);
            case STAFF_TASK -> task(path, place, duties -> duties.staff()).orElse(part);
        };
    }

    private static Optional<Bilingual> task(
            Template path, ValuePlace place, Function<Duties, List<? extends Task>> of) {
        return path.stage(place.stage())
                .flatMap(stage -> of.apply(stage.duties()).stream()
                        .filter(task -> PathValues.part(stage, task).equals(place.part()))
                        .findFirst()
                        .map(Task::does));
    }

    private Bilingual anchor(Template path, String part) {
        var colon = part.indexOf(':');
        var stage = part.substring(0, colon);
        var name = path.stage(stage).map(Stage::name).orElse(Bilingual.same(stage));
        var key = part.startsWith(Edge.END.name(), colon + 1) ? "path.cause.last-day" : "path.cause.first-day";
        return said(language -> words.say(language, key, name.in(language)));
    }

    /** The rule of care at a place. */
    static Optional<Precaution> precaution(Template path, ValuePlace place) {
        return path.stage(place.stage()).stream()
                .flatMap(stage -> stage.precautions().stream()
                        .filter(rule -> PathValues.part(stage, rule).equals(place.part())))
                .findFirst();
    }

    /** Where the value at a place comes from. */
    static String source(Template path, ValuePlace place) {
        var stage = path.stage(place.stage()).orElseThrow();
        return switch (place.kind().rule()) {
            case PRECAUTION -> precaution(path, place).map(Precaution::source).orElse(stage.source());
            case VISIT ->
                stage.visits().stream()
                        .filter(visit -> visit.id().equals(place.part()))
                        .findFirst()
                        .flatMap(Template.VisitNeed::source)
                        .orElse(stage.source());
            case BEGINS, LASTS, REPEATS, APART, FAMILY_TASK, STAFF_TASK -> stage.source();
        };
    }

    /** The rules that cannot all be kept, as sentences. */
    Bilingual rules(Template path, Clash clash) {
        return said(language -> clash.causes().stream()
                .map(cause -> causes.say(path, cause, language))
                .distinct()
                .collect(Collectors.joining(" ")));
    }

    /** Names in one line. */
    static Bilingual list(List<Bilingual> names) {
        return said(language -> names.stream().map(name -> name.in(language)).collect(Collectors.joining("; ")));
    }

    static Bilingual said(Function<Language, String> say) {
        return new Bilingual(say.apply(Language.EN), say.apply(Language.ES));
    }
}
