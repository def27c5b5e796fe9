package org.hearthway.caseload.engine;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.Said;

/** How far a path has come: by what people said, and by the visits that took place. */
record Progress(Facts.OnPath path) {

    List<Planned> stages() {
        return path.plan().stages();
    }

    /** The stages that stand behind one in the path. */
    List<Planned> behind(Planned stage) {
        return stages().subList(stages().indexOf(stage) + 1, stages().size());
    }

    /** The stage and those behind it that begin no earlier. */
    List<Planned> fromHereOn(Planned stage) {
        return stages().subList(stages().indexOf(stage), stages().size()).stream()
                .filter(later -> !later.start().isBefore(stage.start()))
                .toList();
    }

    /** The stages behind one that count from it by whatever rule, over whatever stages between them. */
    List<Planned> countingFrom(Planned stage) {
        var reached = new HashSet<>(List.of(stage.stage().id()));
        return behind(stage).stream()
                .filter(later -> later.round() == 1
                        && later.stage().timing().begins().stream()
                                .flatMap(rule -> rule.stage().stream())
                                .anyMatch(reached::contains)
                        && reached.add(later.stage().id()))
                .toList();
    }

    /** Whether any of these is known to have begun. */
    boolean hasBeen(List<Planned> any) {
        return any.stream().anyMatch(stage -> stage.said() != Said.NOTHING || wasSeen(stage));
    }

    /** A visit before something in front of it began was of the round before, when the way went back. */
    private boolean wasSeen(Planned stage) {
        return Optional.ofNullable(path.seen().get(stage.stage().id()))
                .filter(day -> stages().subList(0, stages().indexOf(stage) + 1).stream()
                        .noneMatch(front ->
                                front.said() != Said.NOTHING && front.start().isAfter(day)))
                .isPresent();
    }
}
