package org.hearthway.path.internal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.content.Entry;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Repeat;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.ValueRules;

/** Checks what the stages of a path say about each other, and that their rules can be kept at all. */
record StageLinks(Template template, Map<String, Entry> entries) {

    private static final String A_LATER_STAGE = "a stage that stands after this one";

    void check() {
        for (int at = 0; at < template.stages().size(); at++) {
            check(template.stages().get(at), at);
        }
        var ordered = template.stages().stream()
                .flatMap(stage -> stage.timing().begins().stream())
                .allMatch(rule -> rule.isOrdered() && !countsFromAnOpenEnd(rule));
        // a rule at odds with itself is told already
        if (ordered) {
            checkRules();
        }
    }

    private void check(Stage stage, int at) {
        var later = ids(template.stages().subList(at + 1, template.stages().size()));
        var earlier = ids(template.stages().subList(0, at + 1));
        Stream.of(stage.timing().until(), stage.timing().repeats().flatMap(Repeat::until))
                .flatMap(Optional::stream)
                .forEach(id -> known(stage, "until", id, later, A_LATER_STAGE));
        stage.visits().stream()
                .flatMap(visit -> visit.until().stream())
                .forEach(id -> known(stage, "visits", id, later, A_LATER_STAGE));
        for (var outcome : stage.outcomes()) {
            outcome.opens().forEach(id -> known(stage, "outcomes", id, later, A_LATER_STAGE));
            outcome.skips().forEach(id -> known(stage, "outcomes", id, later, A_LATER_STAGE));
            outcome.returnsTo()
                    .ifPresent(id -> known(stage, "outcomes", id, earlier, "this stage or one that stands before it"));
        }
    }

    private boolean countsFromAnOpenEnd(After rule) {
        return rule.edge() == Edge.END
                && rule.stage()
                        .flatMap(template::stage)
                        .filter(s -> s.timing().until().isPresent())
                        .isPresent();
    }

    private static Set<String> ids(List<Stage> stages) {
        return stages.stream().map(Stage::id).collect(Collectors.toSet());
    }

    private void known(Stage stage, String key, String id, Set<String> known, String expected) {
        if (!known.contains(id)) {
            at(stage).ifPresent(entry -> entry.wrong(key, "\"" + key + "\" names " + id, expected));
        }
    }

    private Optional<Entry> at(Stage stage) {
        return Optional.ofNullable(entries.get(stage.id()));
    }

    private void checkRules() {
        ValueRules.clashes(template).stream()
                .map(clash -> clash.stage())
                .distinct()
                .forEach(stage -> at(stage)
                        .ifPresent(entry -> entry.wrong(
                                "begins",
                                "no day keeps all rules of " + stage.id(),
                                "gaps and lengths that can be kept together")));
    }
}
