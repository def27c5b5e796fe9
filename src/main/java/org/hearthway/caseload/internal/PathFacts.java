package org.hearthway.caseload.internal;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Facts;
import org.hearthway.path.PathDevices;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template.VisitNeed;
import org.hearthway.visit.Unbooked;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.springframework.stereotype.Component;

/** What is known of the paths that a child is on: the plan, and what visits say of it. */
@Component
class PathFacts {

    /** How many past visits are read; earlier ones say nothing about what is to come. */
    private static final int PAST_VISITS = 60;

    private final Plans plans;
    private final PathDevices devices;
    private final Visits visits;

    PathFacts(Plans plans, PathDevices devices, Visits visits) {
        this.plans = plans;
        this.devices = devices;
        this.visits = visits;
    }

    List<Facts.DeviceBehind> devicesBehind(Viewer viewer, ChildId child) {
        return devices.behind(viewer, child).stream()
                .map(behind -> new Facts.DeviceBehind(behind.decision(), behind.fate(), behind.day()))
                .toList();
    }

    List<Facts.OnPath> of(Viewer viewer, ChildId child, LocalDate today) {
        var known =
                plans.plans(viewer, child).stream().map(Plans.ChildPlan::plan).toList();
        if (known.isEmpty()) {
            return List.of();
        }
        var all = Stream.concat(
                        visits.upcoming(viewer, child).stream(), visits.past(viewer, child, PAST_VISITS).stream())
                .toList();
        return known.stream().map(plan -> of(plan, all, today)).toList();
    }

    static Facts.OnPath of(Plan plan, List<Visit> visits, LocalDate today) {
        var unbooked = Unbooked.of(plan, visits, today).toList();
        var open = unbooked.stream().map(one -> one.window().purpose()).collect(Collectors.toSet());
        var kept = visits.stream()
                .filter(visit -> visit.state() == Visit.State.BOOKED || visit.state() == Visit.State.ATTENDED)
                .flatMap(visit -> visit.purpose().stream())
                .filter(purpose -> !open.contains(purpose))
                .collect(Collectors.toSet());
        var seen = visits.stream()
                .filter(visit -> visit.state() == Visit.State.ATTENDED)
                .flatMap(visit -> stage(plan, visit).stream().map(stage -> new Seen(stage, day(visit))))
                .collect(Collectors.toMap(Seen::stage, Seen::day, BinaryOperator.maxBy(Comparator.naturalOrder())));
        return new Facts.OnPath(
                plan,
                kept,
                seen,
                booked(plan, visits, today),
                unbooked.stream()
                        .map(one -> new Facts.Unbooked(one.stage().point(), one.window()))
                        .toList());
    }

    private record Seen(String stage, LocalDate day) {}

    private static Set<String> booked(Plan plan, List<Visit> visits, LocalDate today) {
        return visits.stream()
                .filter(visit ->
                        visit.state() == Visit.State.BOOKED && !day(visit).isBefore(today))
                .flatMap(visit -> stage(plan, visit).stream())
                .collect(Collectors.toSet());
    }

    private static LocalDate day(Visit visit) {
        return visit.start().toLocalDate();
    }

    /** The stage that a visit shows to have begun; one that only prepares a stage shows nothing. */
    private static Optional<String> stage(Plan plan, Visit visit) {
        var parts = visit.purpose().map(purpose -> purpose.split("/")).orElse(new String[0]);
        return parts.length < 3 || !parts[0].equals(plan.template().id())
                ? Optional.empty()
                : plan.template()
                        .stage(parts[1])
                        .filter(stage -> stage.visits().stream()
                                .anyMatch(need -> need.id().equals(parts[2]) && !isBefore(need)))
                        .map(stage -> stage.id());
    }

    private static boolean isBefore(VisitNeed need) {
        return LocalDate.EPOCH.plus(need.after()).isBefore(LocalDate.EPOCH);
    }
}
