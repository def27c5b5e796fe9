package org.hearthway.path.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.path.Plans.ChildPlan;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Planner;
import org.hearthway.path.engine.Template;
import org.hearthway.path.internal.DecisionRecords.Row;
import org.springframework.stereotype.Component;

/** Turns decisions into plans: with the clinic's paths, its days and its today. */
@Component
class ChildCourses {

    private final ClinicPaths paths;
    private final PlanDays days;
    private final ClinicSettings settings;
    private final Clock clock;

    ChildCourses(ClinicPaths paths, PlanDays days, ClinicSettings settings, Clock clock) {
        this.paths = paths;
        this.days = days;
        this.settings = settings;
        this.clock = clock;
    }

    LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }

    /** The path of that identifier, in the clinic's words. */
    Template template(String pathway) {
        return paths.find(pathway)
                .orElseThrow(() -> new IllegalStateException("no path " + pathway + " in the content"));
    }

    Standing standing(List<Row> rows) {
        return Standing.of(rows, this::template);
    }

    Plan plan(String pathway, Course course) {
        return Planner.plan(template(pathway), course, days.on(today()), today());
    }

    /** The plans of a child, those that are over last. */
    List<ChildPlan> plans(Standing standing) {
        return standing.paths().stream()
                .map(path -> new ChildPlan(plan(path.pathway(), path.course()), path.course(), standing.version()))
                .sorted(Comparator.comparing(plan -> plan.plan().over().isPresent()))
                .toList();
    }

    /** The plans that decisions, oldest first, make. */
    List<Plan> plans(List<Row> rows) {
        return plans(standing(rows)).stream().map(ChildPlan::plan).toList();
    }
}
