package org.hearthway.path.internal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.content.Entry;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.ValueRules;
import org.hearthway.path.internal.StageReader.Link;

/** Checks what the stages of a path say about each other, and that their rules can be kept at all. */
record StageLinks(Template template, Map<String, Entry> entries, List<Link> links) {

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
