package org.hearthway.path.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.path.Plans.Decision;
import org.hearthway.path.engine.Template;
import org.hearthway.path.internal.DecisionRecords.Row;
import org.springframework.stereotype.Component;

/** Names what decisions were about. */
@Component
class DecisionsTold {

    private final ChildCourses courses;
    private final PathReasons reasons;

    DecisionsTold(ChildCourses courses, PathReasons reasons) {
        this.courses = courses;
        this.reasons = reasons;
    }

    /** A child's decisions, given oldest first, newest first. */
    List<Decision> newestFirst(List<Row> rows) {
        var undone = Standing.undone(rows);
        var told = new ArrayList<Decision>();
        for (var row : rows) {
            told.add(0, decision(row, subject(row, rows), undone.contains(row.version())));
        }
        return List.copyOf(told);
    }

    /** What a decision is about: of one that takes another back, what the other was about. */
    private Bilingual subject(Row row, List<Row> rows) {
        return row.undoes()
                .flatMap(other ->
                        rows.stream().filter(taken -> taken.version() == other).findFirst())
                .map(taken -> subject(taken, rows))
                .orElseGet(() -> name(row));
    }

    private Decision decision(Row row, Bilingual subject, boolean undone) {
        var template = row.pathway().map(courses::template);
        var outcome = template.flatMap(path -> row.stage().flatMap(path::stage))
                .flatMap(stage -> row.outcome().flatMap(stage::outcome))
                .map(Template.Outcome::name);
        return new Decision(
                row.version(),
                row.kind(),
                subject,
                template.map(Template::name),
                row.day(),
                row.last(),
                outcome,
                undone,
                row.reason(),
                row.by(),
                row.at());
    }

    /** The path or the stage that a decision is about, or the days away. */
    Bilingual name(Row row) {
        var template = row.pathway().map(courses::template);
        if (template.isEmpty()) {
            return reasons.away();
        }
        return row.stage()
                .filter(stage -> !row.isBeginning())
                .map(id -> stage(template.get(), id))
                .orElse(template.get().name());
    }

    /** A stage that a later version of the path left out keeps its identifier. */
    private static Bilingual stage(Template template, String id) {
        return Optional.of(id.split("/")[0])
                .flatMap(template::stage)
                .map(Template.Stage::name)
                .orElse(Bilingual.same(id));
    }
}
