package org.hearthway.path.internal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.path.Plans.Kind;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Course.Given;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.network.Span;
import org.hearthway.path.internal.DecisionRecords.Row;

/**
 * What the decisions of a child add up to.
 *
 * @param paths the paths it is on, in the order they were begun
 * @param version of the last decision; 0 while there is none
 */
record Standing(List<OnPath> paths, long version) {

    /**
     * One of a child's paths, and what was said of its course.
     *
     * @param opened by stage the moment from which it is in its present run
     */
    record OnPath(String pathway, Course course, Map<String, Instant> opened) {

        private OnPath by(Row row, Template template) {
            var from = row.stage()
                    .flatMap(template::stage)
                    .flatMap(stage -> row.outcome().flatMap(stage::outcome))
                    .flatMap(Template.Outcome::returnsTo);
            var runs = new HashMap<>(opened);
            from.ifPresent(stage -> runs.putAll(openedFrom(stage, template, row)));
            return new OnPath(pathway, new CourseChange(course, template).by(row), runs);
        }

        private OnPath away(List<Span> days) {
            return new OnPath(pathway, course.withAway(days), opened);
        }
    }

    /**
     * From all of a child's decisions, oldest first.
     *
     * @param templates the path of an identifier
     */
    static Standing of(List<Row> rows, Function<String, Template> templates) {
        var undone = undone(rows);
        var paths = new LinkedHashMap<String, OnPath>();
        var away = new ArrayList<Span>();
        for (var row : rows) {
            if (!undone.contains(row.version())) {
                row.away().ifPresent(away::add);
                row.pathway().ifPresent(pathway -> decided(paths, pathway, row, templates));
            }
        }
        return new Standing(
                paths.values().stream().map(path -> path.away(away)).toList(),
                rows.isEmpty() ? 0 : rows.get(rows.size() - 1).version());
    }

    private static void decided(
            Map<String, OnPath> paths, String pathway, Row row, Function<String, Template> templates) {
        if (row.kind() == Kind.BEGUN) {
            paths.clear();
        }
        if (row.isBeginning()) {
            // the same path begun again is the newest one
            paths.remove(pathway);
            var template = templates.apply(pathway);
            var first = template.stages().get(0).id();
            paths.put(pathway, new OnPath(pathway, begun(row, template), openedFrom(first, template, row)));
        } else if (row.kind() != Kind.UNDONE) {
            paths.computeIfPresent(pathway, (id, path) -> path.by(row, templates.apply(id)));
        }
    }

    /** A stage and all behind it, opened by one decision. */
    private static Map<String, Instant> openedFrom(String stage, Template template, Row row) {
        return template.stages().stream()
                .map(Template.Stage::id)
                .dropWhile(id -> !id.equals(stage))
                .collect(Collectors.toMap(Function.identity(), id -> row.at()));
    }

    /** At the stage that was named the path begins on its day, and what stands in front of it was done before. */
    private static Course begun(Row row, Template template) {
        var day = row.day().orElseThrow();
        var course = Course.begun(day);
        return row.stage()
                .flatMap(template::stage)
                .map(first -> course.withGiven(Map.of(first.id(), new Given(day, Origin.ACTUAL)))
                        .withStages(first.timing().optional() ? Set.of(first.id()) : Set.of(), Set.of())
                        .withBefore(template.before(first.id()).stream()
                                .map(Template.Stage::id)
                                .collect(Collectors.toSet())))
                .orElse(course);
    }

    /** The versions that count no more. What takes back can itself be taken back, so the newest speaks first. */
    static Set<Long> undone(List<Row> rows) {
        var undone = new HashSet<Long>();
        for (int at = rows.size() - 1; at >= 0; at--) {
            var row = rows.get(at);
            if (!undone.contains(row.version())) {
                row.undoes().ifPresent(undone::add);
            }
        }
        return undone;
    }

    /** The path of that identifier, if the child is on it. */
    Optional<OnPath> on(String pathway) {
        return paths.stream().filter(path -> path.pathway().equals(pathway)).findFirst();
    }
}
