package org.hearthway.path.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.base.ChildId;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Planner;
import org.hearthway.path.engine.Template;
import org.hearthway.path.internal.DecisionRecords.Row;
import org.springframework.stereotype.Component;

/** The plans of all children on one path, if the path were another one. */
@Component
class PathPlans {

    private final ClinicPaths paths;
    private final DecisionRecords records;
    private final ValueRows values;
    private final PlanDays days;
    private final ClinicSettings settings;
    private final Clock clock;

    PathPlans(
            ClinicPaths paths,
            DecisionRecords records,
            ValueRows values,
            PlanDays days,
            ClinicSettings settings,
            Clock clock) {
        this.paths = paths;
        this.records = records;
        this.values = values;
        this.days = days;
        this.settings = settings;
        this.clock = clock;
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
        return Standing.of(rows, among(path))
                .filter(standing -> standing.pathway().equals(path.id()))
                .map(standing -> Planner.plan(path, standing.course(), days.on(today()), today()));
    }

    private Function<String, Template> among(Template path) {
        return id -> id.equals(path.id())
                ? path
                : paths.find(id).orElseThrow(() -> new IllegalStateException("no path " + id + " in the content"));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }
}
