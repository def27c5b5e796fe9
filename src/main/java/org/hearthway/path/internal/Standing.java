package org.hearthway.path.internal;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Course.Given;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.internal.DecisionRecords.Row;

/** What the decisions of a child add up to: the path that counts, and its course. */
record Standing(String pathway, Course course, long version) {

    /** From all of a child's decisions, oldest first; empty when none was taken. */
    static Optional<Standing> of(List<Row> rows) {
        Optional<Standing> result = Optional.empty();
        for (var row : rows) {
            result = Optional.of(result.filter(before -> row.stage().isPresent())
                    .map(before -> before.with(row))
                    .orElseGet(() ->
                            new Standing(row.pathway(), Course.begun(row.day().orElseThrow()), row.version())));
        }
        return result;
    }

    private Standing with(Row row) {
        return new Standing(pathway, changed(row.stage().orElseThrow(), row.day(), origin(row)), row.version());
    }

    private static Origin origin(Row row) {
        return switch (row.kind()) {
            case FIXED -> Origin.ACTUAL;
            case SET_BY_HAND -> Origin.SET_BY_HAND;
            case BEGUN, BACK_TO_RULE -> Origin.RULE;
        };
    }

    /** The course if a stage were given this day, or went back to its rule when the day is empty. */
    Course changed(String stage, Optional<LocalDate> day, Origin origin) {
        var given = new HashMap<>(course.given());
        given.remove(stage);
        day.ifPresent(d -> given.put(stage, new Given(d, origin)));
        return new Course(
                course.begun(), given, course.ended(), course.added(), course.skipped(), course.gaps(), course.away());
    }
}
