package org.hearthway.path.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hearthway.base.ChildId;
import org.hearthway.path.ClinicValues.CareMove;
import org.hearthway.path.ClinicValues.ChildEffect;
import org.hearthway.path.Plans.Effect;
import org.hearthway.path.Plans.Move;
import org.hearthway.path.VisitsForPlans.Booked;
import org.hearthway.path.engine.PathValues;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Care;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.VisitWindow;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.Task;

/** What becomes of one child's plan when the values of its path change, from today on; what is behind tells nobody. */
record PlanShift(Plan before, Plan after) {

    /**
     * The effect, if there is one.
     *
     * @param booked the child's visits that are booked for something
     */
    Optional<ChildEffect> of(ChildId child, Function<ChildId, List<Booked>> booked) {
        if (before.equals(after)) {
            return Optional.empty();
        }
        var effects = Effects.between(List.of(before), List.of(after), booked.apply(child));
        var effect = new ChildEffect(
                child,
                moves(effects),
                ends(),
                cares(),
                tasks(stage -> stage.duties().family()),
                tasks(stage -> stage.duties().staff()),
                visits(),
                effects.noDay(),
                effects.visits());
        return effect.concernsTheFamily() || !effect.staffTasks().isEmpty() ? Optional.of(effect) : Optional.empty();
    }

    private LocalDate today() {
        return after.today();
    }

    private List<Move> moves(Effect effects) {
        return effects.moves().stream()
                .filter(move -> hasDay(before, move.stage()) && hasDay(after, move.stage()))
                .filter(move -> isAhead(before, move.stage()) || isAhead(after, move.stage()))
                .toList();
    }

    /** Stages of a length of their own that begin as before and end on another day. */
    private List<Move> ends() {
        var ends = new ArrayList<Move>();
        for (var is : after.stages()) {
            before.stage(is.point())
                    .filter(was -> was.start().equals(is.start()) && !was.end().equals(is.end()))
                    .filter(was ->
                            is.stage().timing().until().isEmpty() && is.clash().isEmpty())
                    .filter(was -> isAhead(before, is.point()) || isAhead(after, is.point()))
                    .ifPresent(was -> ends.add(new Move(is.point(), is.stage().name(), was.end(), is.end())));
        }
        return ends;
    }

    /** Whether the stage is not over today. */
    private boolean isAhead(Plan plan, String point) {
        return plan.stage(point).filter(stage -> !stage.end().isBefore(today())).isPresent();
    }

    /** Where nothing fits, the day in the plan stands for the order only. */
    private static boolean hasDay(Plan plan, String point) {
        return plan.stage(point).filter(stage -> stage.clash().isEmpty()).isPresent();
    }

    private record CareAt(String point, String part) {}

    private static Map<CareAt, Care> cares(Plan plan) {
        var cares = new java.util.LinkedHashMap<CareAt, Care>();
        for (var planned : plan.stages()) {
            for (var care : planned.precautions()) {
                owner(plan, planned, care)
                        .ifPresent(stage -> cares.put(
                                new CareAt(planned.point(), stage.id() + "/" + PathValues.part(stage, care.rule())),
                                care));
            }
        }
        return cares;
    }

    /** The stage that a rule is of: one of an earlier round stands with the stage to which the way went back. */
    private static Optional<Stage> owner(Plan plan, Planned planned, Care care) {
        return Stream.concat(Stream.of(planned.stage()), plan.template().stages().stream())
                .filter(stage -> stage.precautions().contains(care.rule()))
                .findFirst();
    }

    /** Rules of care that hold on other days, in so far as one of them lies ahead. */
    private List<CareMove> cares() {
        var was = cares(before);
        var moves = new ArrayList<CareMove>();
        cares(after).forEach((at, is) -> {
            var care = was.get(at);
            if (care != null
                    && !(care.from().equals(is.from()) && care.until().equals(is.until()))
                    && (care.until().isAfter(today()) || is.until().isAfter(today()))) {
                moves.add(new CareMove(is.rule().says(), care.from(), care.until(), is.from(), is.until()));
            }
        });
        return moves;
    }

    /** Tasks that count otherwise from their stage's first day; those that only go with it move as it does. */
    private List<Move> tasks(Function<Stage, List<? extends Task>> of) {
        var moves = new ArrayList<Move>();
        for (var is : after.stages()) {
            before.stage(is.point())
                    .filter(was -> hasDay(before, was.point()) && hasDay(after, is.point()))
                    .ifPresent(was -> {
                        var then = dueByPart(was.stage(), of);
                        dueByPart(is.stage(), of)
                                .forEach((part, task) -> Optional.ofNullable(then.get(part))
                                        .filter(old -> !old.due().equals(task.due()))
                                        .map(old -> new Move(is.point(), task.does(), due(was, old), due(is, task)))
                                        .filter(move -> !move.from().isBefore(today())
                                                || !move.to().isBefore(today()))
                                        .ifPresent(moves::add));
                    });
        }
        return moves;
    }

    private static LocalDate due(Planned planned, Task task) {
        return planned.start().plus(task.due().orElseThrow());
    }

    /** Those that have a day. */
    private static Map<String, Task> dueByPart(Stage stage, Function<Stage, List<? extends Task>> of) {
        var due = new java.util.LinkedHashMap<String, Task>();
        of.apply(stage).stream()
                .filter(task -> task.due().isPresent())
                .forEach(task -> due.put(PathValues.part(stage, task), task));
        return due;
    }

    private Map<String, VisitWindow> windows(Plan plan) {
        var windows = new HashMap<String, VisitWindow>();
        plan.stages().stream()
                .flatMap(planned -> planned.visits().stream())
                .filter(window -> !window.until().isBefore(today()))
                .forEach(window -> windows.put(window.purpose(), window));
        return windows;
    }

    private int visits() {
        var was = windows(before);
        var is = windows(after);
        var all = new java.util.HashSet<>(was.keySet());
        all.addAll(is.keySet());
        return (int) all.stream()
                .filter(purpose -> !Objects.equals(was.get(purpose), is.get(purpose)))
                .count();
    }
}
