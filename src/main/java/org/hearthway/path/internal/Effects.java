package org.hearthway.path.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.path.Plans.Effect;
import org.hearthway.path.Plans.Move;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Template.Stage;

/** Compares two plans of one child. */
final class Effects {

    private Effects() {}

    static Effect between(Plan before, Plan after) {
        return between(Optional.of(before), Optional.of(after));
    }

    /** The same where there may be no plan before or behind the change. */
    static Effect between(Optional<Plan> before, Optional<Plan> after) {
        var was = before.map(Plan::stages).orElse(List.of());
        var is = after.map(Plan::stages).orElse(List.of());
        var starts = was.stream().collect(Collectors.toMap(Planned::point, Planned::start));
        var moves = new ArrayList<Move>();
        for (var stage : is) {
            var from = starts.getOrDefault(stage.point(), stage.start());
            if (!from.equals(stage.start())) {
                moves.add(new Move(stage.point(), stage.stage().name(), from, stage.start()));
            }
        }
        return new Effect(List.copyOf(moves), only(is, was), only(was, is));
    }

    private static List<Bilingual> only(List<Planned> these, List<Planned> notThose) {
        var others = notThose.stream().map(stage -> stage.stage().id()).collect(Collectors.toSet());
        return these.stream()
                .map(Planned::stage)
                .filter(stage -> !others.contains(stage.id()))
                .distinct()
                .map(Stage::name)
                .toList();
    }
}
