package org.hearthway.path.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.path.Plans.ChildPlan;
import org.hearthway.path.engine.Calendar;
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
        return plan(template(pathway), course);
    }

    Plan plan(Template path, Course course) {
        return Planner.plan(path, course, days.on(today()), today());
    }

    /** The plans of a child, those that are over last. */
    List<ChildPlan> plans(Standing standing) {
        return plans(standing, this::template);
    }

    private List<ChildPlan> plans(Standing standing, Function<String, Template> templates) {
        return standing.paths().stream()
                .map(path -> new ChildPlan(
                        plan(templates.apply(path.pathway()), path.course()),
                        path.course(),
                        path.opened(),
                        standing.version()))
                .sorted(Comparator.comparing(plan -> plan.plan().over().isPresent()))
                .toList();
    }

    /** The plans that decisions, oldest first, make. */
    List<Plan> plans(List<Row> rows) {
        return plans(standing(rows)).stream().map(ChildPlan::plan).toList();
    }

    /** The same if the clinic had other days. */
    List<Plan> plans(List<Row> rows, Calendar calendar) {
        return standing(rows).paths().stream()
                .map(path -> Planner.plan(template(path.pathway()), path.course(), calendar, today()))
                .toList();
    }

    /** The same with the values that the clinic had at a moment. */
    List<Plan> plans(List<Row> rows, Instant moment) {
        Function<String, Template> then = id -> paths.asOf(id, moment).orElseGet(() -> template(id));
        return plans(Standing.of(rows, then), then).stream()
                .map(ChildPlan::plan)
                .toList();
    }
}
