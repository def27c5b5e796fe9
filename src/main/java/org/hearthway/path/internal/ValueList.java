package org.hearthway.path.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.path.ClinicValues.Change;
import org.hearthway.path.ClinicValues.LeftOut;
import org.hearthway.path.ClinicValues.Line;
import org.hearthway.path.ClinicValues.Own;
import org.hearthway.path.ClinicValues.PathOfClinic;
import org.hearthway.path.ClinicValues.Rule;
import org.hearthway.path.ClinicValues.StageValues;
import org.hearthway.path.ClinicValues.Value;
import org.hearthway.path.engine.Fitted;
import org.hearthway.path.engine.PathValues;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.ValuePlace;
import org.hearthway.path.internal.ValueHistory.Given;
import org.hearthway.path.internal.ValueHistory.Made;
import org.springframework.stereotype.Component;

/** Lays out a path's values for the administrator: by stage, what no longer fits, what was changed. */
@Component
class ValueList {

    private final ValueWords words;

    ValueList(ValueWords words) {
        this.words = words;
    }

    PathOfClinic of(Template shipped, ValueHistory history) {
        var fitted = Fitted.of(shipped, history.amounts());
        var own = history.own();
        return new PathOfClinic(
                shipped.id(),
                shipped.name(),
                stages(shipped, fitted, own),
                fitted.left().stream()
                        .map(left -> new LeftOut(
                                left.place(),
                                name(shipped, left.place()),
                                Objects.requireNonNull(own.get(left.place())),
                                left.why()))
                        .toList(),
                changes(shipped, history),
                history.version());
    }

    /** A value's name with its stage and rule. */
    Bilingual name(Template shipped, ValuePlace place) {
        return words.whole(shipped, place);
    }

    private List<StageValues> stages(Template shipped, Fitted fitted, Map<ValuePlace, Own> own) {
        var values = PathValues.of(shipped);
        var stages = new ArrayList<StageValues>();
        for (var stage : shipped.stages()) {
            var rules = new ArrayList<Rule>();
            List<Value> open = new ArrayList<>();
            for (var entry : values.entrySet()) {
                var place = entry.getKey();
                if (place.stage().equals(stage.id())) {
                    if (!open.isEmpty() && !open.get(0).place().isOfOneRuleWith(place)) {
                        rules.add(rule(shipped, open));
                        open = new ArrayList<>();
                    }
                    open.add(new Value(
                            place,
                            words.name(place),
                            entry.getValue(),
                            Optional.ofNullable(own.get(place))
                                    .filter(any -> fitted.own().containsKey(place))));
                }
            }
            if (!open.isEmpty()) {
                rules.add(rule(shipped, open));
                stages.add(new StageValues(stage.id(), stage.name(), rules));
            }
        }
        return stages;
    }

    private Rule rule(Template shipped, List<Value> values) {
        var place = values.get(0).place();
        return new Rule(words.rule(shipped, place), ValueWords.source(shipped, place), values);
    }

    private List<Change> changes(Template shipped, ValueHistory history) {
        var undone = history.undone();
        var newestFirst = new ArrayList<Change>();
        for (var made : history.changes()) {
            newestFirst.add(0, change(shipped, history, made, undone));
        }
        return newestFirst;
    }

    private Change change(Template shipped, ValueHistory history, Made made, Set<Long> undone) {
        return new Change(
                made.number(),
                given(history, made).stream().map(given -> line(shipped, given)).toList(),
                made.undoes(),
                undone.contains(made.number()),
                made.reason(),
                made.by(),
                made.at());
    }

    /** What a change is about: of one that takes another back, what the other was about. */
    private static List<Given> given(ValueHistory history, Made made) {
        return made.undoes()
                .flatMap(history::change)
                .map(other -> given(history, other))
                .orElse(made.given());
    }

    private Line line(Template shipped, Given given) {
        return new Line(given.place(), name(shipped, given.place()), given.before(), given.own());
    }
}
