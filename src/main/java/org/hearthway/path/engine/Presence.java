package org.hearthway.path.engine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.hearthway.path.engine.Template.Outcome;
import org.hearthway.path.engine.Template.Stage;

/**
 * Which stages are on a child's plan. A stage that has not ended is expected to end with its first outcome.
 *
 * @param stages in order
 * @param over how the path ended, if it did
 */
record Presence(List<Stage> stages, Optional<Plan.Over> over) {

    static Presence of(Template template, Course course) {
        var opened = new HashSet<>(course.added());
        var skipped = new HashSet<>(course.skipped());
        var stages = new ArrayList<Stage>();
        for (var stage : template.stages()) {
            boolean known = course.before().contains(stage.id()) && !course.isBeforeWithoutDay(stage);
            boolean open = !stage.timing().optional() || opened.contains(stage.id()) || known;
            if (!open || skipped.contains(stage.id()) || course.isBeforeWithoutDay(stage)) {
                continue;
            }
            stages.add(stage);
            var outcome = outcome(stage, course);
            outcome.ifPresent(way -> {
                opened.addAll(way.opens());
                skipped.addAll(way.skips());
            });
            var over = course.ended(stage)
                    .flatMap(
                            ended -> outcome.filter(Outcome::endsPath).map(way -> new Plan.Over(ended.day(), outcome)));
            if (over.isPresent()) {
                return new Presence(List.copyOf(stages), over);
            }
        }
        return new Presence(List.copyOf(stages), course.closed().map(day -> new Plan.Over(day, Optional.empty())));
    }

    private static Optional<Outcome> outcome(Stage stage, Course course) {
        return course.ended(stage)
                .map(ended -> stage.outcome(ended.outcome()))
                .orElseGet(() -> stage.outcomes().stream().findFirst());
    }
}
