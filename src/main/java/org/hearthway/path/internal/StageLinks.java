package org.hearthway.path.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.content.Entry;
import org.hearthway.path.engine.Calendar;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Planner;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Span;
import org.hearthway.path.internal.StageReader.Link;

/** Checks what the stages of a path say about each other, and that their rules can be kept at all. */
record StageLinks(Template template, Map<String, Entry> entries, List<Link> links) {

    private static final LocalDate SOME_DAY = LocalDate.of(2026, 1, 5);
    private static final Calendar EVERY_DAY =
            Calendar.of(Days.ALL, new Span(SOME_DAY.minusYears(2), SOME_DAY.plusYears(60)));

    void check() {
        links.forEach(this::check);
        checkRules();
    }

    private void check(Link link) {
        var stages = template.stages();
        int from = stages.stream().map(Stage::id).toList().indexOf(link.from());
        var known = ids(link.behind() ? stages.subList(from + 1, stages.size()) : stages.subList(0, from + 1));
        if (!known.contains(link.stage())) {
            link.at()
                    .wrong(
                            link.key(),
                            "\"" + link.key() + "\" names " + link.stage(),
                            link.behind()
                                    ? "a stage that stands after this one"
                                    : "this stage or one that stands before it");
        }
    }

    private static Set<String> ids(List<Stage> stages) {
        return stages.stream().map(Stage::id).collect(Collectors.toSet());
    }

    private Optional<Entry> at(Stage stage) {
        return Optional.ofNullable(entries.get(stage.id()));
    }

    /** With and without the stages that are not always there: rules without slack between them show here. */
    private void checkRules() {
        var optional = template.stages().stream()
                .filter(stage -> stage.timing().optional())
                .map(Stage::id)
                .collect(Collectors.toSet());
        Stream.of(Set.<String>of(), optional)
                .map(added -> Course.begun(SOME_DAY).withStages(added, Set.of()))
                .flatMap(course -> Planner.plan(template, course, EVERY_DAY, SOME_DAY).clashes().stream())
                .map(clash -> clash.stage())
                .distinct()
                .forEach(stage -> at(stage)
                        .ifPresent(entry -> entry.wrong(
                                "begins",
                                "no day keeps all rules of " + stage.id(),
                                "gaps and lengths that can be kept together")));
    }
}
