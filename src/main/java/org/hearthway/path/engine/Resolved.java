package org.hearthway.path.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.path.engine.Clash.Way;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.network.Condition;
import org.hearthway.path.engine.network.Network;
import org.hearthway.path.engine.network.Schedule;
import org.hearthway.path.engine.network.WayOut;
import org.hearthway.path.engine.network.WaysOut;

/**
 * A network that has a schedule, and what had to give way for it. A plan in trouble still has to be shown: the rule that
 * is broken last in the path gives way, its stage is told apart, and everything else keeps to its rules.
 */
final class Resolved {

    private final PathNetwork path;
    private final List<Stage> stages;
    private final Map<String, Clash> clashes = new HashMap<>();
    private final Schedule schedule;
    private Network network;

    private Resolved(PathNetwork path, List<Stage> stages) {
        this.path = path;
        this.stages = stages;
        network = path.network();
        schedule = resolve();
    }

    static Resolved of(PathNetwork path, List<Stage> stages) {
        return new Resolved(path, stages);
    }

    Schedule schedule() {
        return schedule;
    }

    /** What keeps a stage from having a day, if something does. */
    Optional<Clash> clash(Stage stage) {
        return Optional.ofNullable(clashes.get(stage.id()));
    }

    private Schedule resolve() {
        var found = network.schedule();
        while (found.isEmpty()) {
            var conflict = network.conflict();
            var causes = causes(conflict);
            var broken = causes.stream().max(Comparator.comparing(this::gives)).orElseThrow();
            clashes.putIfAbsent(broken.stage().id(), new Clash(broken.stage(), causes, ways(conflict)));
            giveWay(conflict, broken);
            found = network.schedule();
        }
        return found.get();
    }

    private List<Cause> causes(Set<String> conflict) {
        return conflict.stream()
                .flatMap(rule -> path.cause(rule).stream())
                .sorted(Comparator.comparing(cause -> stages.indexOf(cause.stage())))
                .toList();
    }

    /** The later in the path the sooner it gives way; of one stage first its gap, and never a date that was given. */
    private int gives(Cause cause) {
        int kind;
        if (cause instanceof Cause.Begins) {
            kind = 6;
        } else if (cause instanceof Cause.VisitDay || cause instanceof Cause.Asked) {
            kind = 5;
        } else if (cause instanceof Cause.KeptApart) {
            kind = 4;
        } else if (cause instanceof Cause.Lasts) {
            kind = 3;
        } else if (cause instanceof Cause.InSeason) {
            kind = 2;
        } else {
            kind = cause instanceof Cause.InOrder ? 1 : 0;
        }
        boolean softens = kind > 0;
        return softens ? stages.indexOf(cause.stage()) * 10 + kind + 10 : 0;
    }

    private void giveWay(Set<String> conflict, Cause broken) {
        var rule = conflict.stream()
                .filter(name -> path.cause(name).filter(broken::equals).isPresent())
                .findFirst()
                .orElseThrow();
        var most = network.conditions().stream()
                .filter(condition -> condition instanceof Condition.Gap gap
                        && gap.rule().equals(rule)
                        && gap.most().isPresent())
                .findFirst();
        network = most.map(condition -> network.replacing(condition, Optional.empty()))
                .orElseGet(() -> network.without(rule));
    }

    private List<Way> ways(Set<String> conflict) {
        var ways = new ArrayList<Way>();
        for (var way : WaysOut.of(network, conflict, this::isByHand)) {
            path.cause(way.rule()).ifPresent(cause -> way(way, cause).ifPresent(ways::add));
        }
        return ways;
    }

    private boolean isByHand(String rule) {
        return path.cause(rule)
                .filter(cause -> cause instanceof Cause.Dated dated && dated.origin() == Origin.SET_BY_HAND)
                .isPresent();
    }

    private static Optional<Way> way(WayOut way, Cause cause) {
        if (way instanceof WayOut.Move move) {
            return Optional.of(new Way.Move(cause.stage(), move.from(), move.to()));
        }
        if (way instanceof WayOut.Give give && cause instanceof Cause.Begins begins) {
            return Optional.of(new Way.Give(begins.stage(), begins.at(), given(begins.rule(), give), give.days()));
        }
        return Optional.empty();
    }

    private static After given(After rule, WayOut.Give give) {
        return give.side() == WayOut.Side.LONGER
                ? new After(
                        rule.stage(),
                        rule.edge(),
                        rule.earliest(),
                        rule.usual(),
                        rule.latest().map(latest -> latest.plusDays(give.days())))
                : new After(
                        rule.stage(), rule.edge(), rule.earliest().minusDays(give.days()), rule.usual(), rule.latest());
    }
}
