package org.hearthway.path.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.path.Plans.Effect;
import org.hearthway.path.Plans.Move;
import org.hearthway.path.VisitsForPlans.Booked;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Template.Stage;

/** Compares the plans of one child before and after a decision. */
final class Effects {

    private final List<Move> moves = new ArrayList<>();
    private final List<Bilingual> coming = new ArrayList<>();
    private final List<Bilingual> leaving = new ArrayList<>();
    private final List<Bilingual> late = new ArrayList<>();
    private final List<Bilingual> noDay = new ArrayList<>();
    private final Set<Booked> unfit = new HashSet<>();
    private final List<Booked> booked;

    private Effects(List<Booked> booked) {
        this.booked = booked;
    }

    /**
     * What differs.
     *
     * @param booked the child's visits that are booked for something
     */
    static Effect between(List<Plan> before, List<Plan> after, List<Booked> booked) {
        var effects = new Effects(booked);
        var was = byPath(before);
        var is = byPath(after);
        is.forEach((path, plan) -> {
            if (was.containsKey(path)) {
                effects.compare(Objects.requireNonNull(was.get(path)), plan);
            } else {
                effects.coming.add(plan.template().name());
            }
        });
        was.forEach((path, plan) -> {
            if (!is.containsKey(path)) {
                effects.leaving.add(plan.template().name());
            }
        });
        return effects.made();
    }

    private static Map<String, Plan> byPath(List<Plan> plans) {
        return plans.stream()
                .collect(
                        Collectors.toMap(plan -> plan.template().id(), Function.identity(), (a, b) -> a, TreeMap::new));
    }

    private void compare(Plan before, Plan after) {
        var starts = before.stages().stream().collect(Collectors.toMap(Planned::point, Planned::start));
        for (var stage : after.stages()) {
            var from = starts.getOrDefault(stage.point(), stage.start());
            if (!from.equals(stage.start())) {
                moves.add(new Move(stage.point(), stage.stage().name(), from, stage.start()));
            }
        }
        coming.addAll(only(after, before, any -> true));
        leaving.addAll(only(before, after, any -> true));
        late.addAll(only(after, before, stage -> stage.why().outside()));
        noDay.addAll(only(after, before, stage -> stage.clash().isPresent()));
        var path = before.template().id() + "/";
        booked.stream()
                .filter(visit -> visit.purpose().startsWith(path) && fits(before, visit) && !fits(after, visit))
                .forEach(unfit::add);
    }

    /** The stages of which something is so in one plan and in the other not. */
    private static List<Bilingual> only(Plan these, Plan notThose, Predicate<Planned> so) {
        var others = notThose.stages().stream()
                .filter(so)
                .map(stage -> stage.stage().id())
                .collect(Collectors.toSet());
        return these.stages().stream()
                .filter(so)
                .map(Planned::stage)
                .filter(stage -> !others.contains(stage.id()))
                .distinct()
                .map(Stage::name)
                .toList();
    }

    private static boolean fits(Plan plan, Booked visit) {
        var day = visit.start().toLocalDate();
        return plan.stages().stream()
                .flatMap(stage -> stage.visits().stream())
                .anyMatch(window -> window.purpose().equals(visit.purpose())
                        && !day.isBefore(window.from())
                        && !day.isAfter(window.until()));
    }

    private Effect made() {
        return new Effect(
                List.copyOf(moves),
                List.copyOf(coming),
                List.copyOf(leaving),
                List.copyOf(late),
                List.copyOf(noDay),
                booked.stream().filter(unfit::contains).toList());
    }
}
