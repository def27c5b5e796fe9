package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;

/** What differs between a child's plan and the one that the path alone would make. */
record Compared(StageWords say, Plan plan, Plan alone) {

    /** How a stage's first day differs, if it does. */
    Optional<String> differs(Planned stage) {
        var other = alone.stage(stage.point());
        if (other.isEmpty()) {
            return stage.round() > 1 ? Optional.empty() : Optional.of(say.say("path.compare.only-here"));
        }
        var days = ChronoUnit.DAYS.between(other.get().start(), stage.start());
        if (days == 0) {
            return Optional.empty();
        }
        var day = say.date(other.get().start(), plan.today());
        return Optional.of(say.say(days > 0 ? "path.compare.later" : "path.compare.earlier", day, Math.abs(days)));
    }

    /** That nothing differs, or which stages the path has and this child's plan has not. */
    Component summary() {
        var left = alone.stages().stream()
                .filter(stage -> stage.round() == 1 && plan.stage(stage.point()).isEmpty())
                .map(say::name)
                .collect(Collectors.joining(", "));
        if (!left.isEmpty()) {
            return Tags.p("hw-quiet u-mt2", say.say("path.compare.left", left));
        }
        var same = plan.stages().stream().noneMatch(stage -> differs(stage).isPresent());
        return Tags.p("hw-quiet u-mt2", say.say(same ? "path.compare.same" : "path.compare.differs"));
    }
}
