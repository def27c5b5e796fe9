package org.hearthway.path.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.path.ClinicValues.ChildEffect;
import org.hearthway.path.ClosedDayEffects;
import org.hearthway.path.VisitsForPlans;
import org.hearthway.path.VisitsOnDay;
import org.hearthway.path.engine.Calendar;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.internal.DecisionRecords.Row;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Plans every child once with the day and once without. */
@Service
class ClosedDayShifts implements ClosedDayEffects {

    private final DecisionRecords records;
    private final ValueRows values;
    private final ChildCourses courses;
    private final PlanDays days;
    private final VisitsForPlans visits;
    private final VisitsOnDay onDay;
    private final Gate gate;

    ClosedDayShifts(
            DecisionRecords records,
            ValueRows values,
            ChildCourses courses,
            PlanDays days,
            VisitsForPlans visits,
            VisitsOnDay onDay,
            Gate gate) {
        this.records = records;
        this.values = values;
        this.courses = courses;
        this.days = days;
        this.visits = visits;
        this.onDay = onDay;
        this.gate = gate;
    }

    @Override
    @Transactional(readOnly = true)
    public Preview ifClosed(Viewer viewer, LocalDate day) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return preview(day, false);
    }

    @Override
    @Transactional(readOnly = true)
    public Preview ifOpened(Viewer viewer, LocalDate day) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return preview(day, true);
    }

    private Preview preview(LocalDate day, boolean open) {
        var then = days.with(courses.today(), day, open);
        var folded = values.folded();
        var children = new ArrayList<ChildEffect>();
        var onPaths = 0;
        for (var of : records.all().entrySet()) {
            var plans = folded.contains(of.getKey()) ? List.<Plan>of() : courses.plans(of.getValue());
            if (!plans.isEmpty()) {
                onPaths++;
                effect(of.getKey(), plans, of.getValue(), then).ifPresent(children::add);
            }
        }
        return new Preview(children, onPaths, onDay.on(day));
    }

    private Optional<ChildEffect> effect(ChildId child, List<Plan> plans, List<Row> rows, Calendar then) {
        return courses.plans(rows, then).stream()
                .flatMap(after -> plans.stream()
                        .filter(before ->
                                before.template().id().equals(after.template().id()))
                        .flatMap(before -> new PlanShift(before, after).of(child, visits::ahead).stream()))
                .reduce(ClosedDayShifts::both);
    }

    /** Of two paths of one child. */
    private static ChildEffect both(ChildEffect one, ChildEffect other) {
        return new ChildEffect(
                one.child(),
                joined(one.moves(), other.moves()),
                joined(one.ends(), other.ends()),
                joined(one.cares(), other.cares()),
                joined(one.familyTasks(), other.familyTasks()),
                joined(one.staffTasks(), other.staffTasks()),
                one.visits() + other.visits(),
                joined(one.noDay(), other.noDay()),
                joined(one.unfit(), other.unfit()));
    }

    private static <T> List<T> joined(List<T> some, List<T> others) {
        return Stream.concat(some.stream(), others.stream()).distinct().toList();
    }
}
