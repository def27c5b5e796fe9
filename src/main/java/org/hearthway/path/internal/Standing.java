package org.hearthway.path.internal;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.path.Plans.Kind;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Template;
import org.hearthway.path.internal.DecisionRecords.Row;

/** What the decisions of a child add up to: the path that counts, and its course. */
record Standing(String pathway, Course course, long version) {

    /**
     * From all of a child's decisions, oldest first; empty when none counts.
     *
     * @param paths the path of an identifier
     */
    static Optional<Standing> of(List<Row> rows, Function<String, Template> paths) {
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        var undone = undone(rows);
        long version = rows.get(rows.size() - 1).version();
        Optional<Standing> result = Optional.empty();
        for (var row : rows) {
            if (row.kind() == Kind.BEGUN && !undone.contains(row.version())) {
                result = Optional.of(new Standing(row.pathway(), begun(row, paths), version));
            } else if (row.kind() != Kind.UNDONE && !undone.contains(row.version())) {
                result = result.map(before -> before.with(row, paths));
            }
        }
        return result;
    }

    /** A path that was chosen begins where its tests are done: what stands before that stage is not on the plan. */
    private static Course begun(Row row, Function<String, Template> paths) {
        var course = Course.begun(row.day().orElseThrow());
        return row.stage()
                .map(first -> paths.apply(row.pathway()).stages().stream()
                        .map(Template.Stage::id)
                        .takeWhile(id -> !id.equals(first))
                        .collect(Collectors.toSet()))
                .map(before -> course.withStages(Set.of(), before))
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

    private Standing with(Row row, Function<String, Template> paths) {
        return new Standing(pathway, new CourseChange(course, paths.apply(pathway)).by(row), version);
    }
}
