package org.hearthway.path.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template;
import org.hearthway.path.internal.DecisionRecords.Row;
import org.springframework.stereotype.Component;

/** The plans of all children on one path, if the path were another one. */
@Component
class PathPlans {

    private final DecisionRecords records;
    private final ValueRows values;
    private final ChildCourses courses;

    PathPlans(DecisionRecords records, ValueRows values, ChildCourses courses) {
        this.records = records;
        this.values = values;
        this.courses = courses;
    }

    /** By child, the plans under the one and the other. */
    Map<ChildId, PlanShift> between(Template before, Template after) {
        var folded = values.folded();
        var shifts = new LinkedHashMap<ChildId, PlanShift>();
        records.all().forEach((child, rows) -> {
            if (!folded.contains(child)) {
                plan(rows, before)
                        .ifPresent(was -> plan(rows, after).ifPresent(is -> shifts.put(child, new PlanShift(was, is))));
            }
        });
        return shifts;
    }

    private Optional<Plan> plan(List<Row> rows, Template path) {
        return Standing.of(rows, id -> id.equals(path.id()) ? path : courses.template(id))
                .on(path.id())
                .map(on -> courses.plan(path, on.course()));
    }
}
