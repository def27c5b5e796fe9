package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Origin;

/** A path's name above its stages, which version of it, how many dates people gave, and how it ended if it did. */
final class PathTitle extends Div {

    PathTitle(StageWords say, Plan plan) {
        addClassNames("hw-colh", "hw-pathhead", "u-mt5");
        var byHand = plan.stages().stream()
                .filter(stage -> stage.why().origin() != Origin.RULE)
                .count();
        add(
                Tags.h2("", plan.template().name().in(say.language())),
                Tags.span("hw-sub", say.say("path.template", plan.template().version(), byHand)));
        plan.over().ifPresent(over -> add(over(say, plan, over)));
    }

    private static Component over(StageWords say, Plan plan, Plan.Over over) {
        var day = say.date(over.day(), plan.today());
        return Tags.span(
                "hw-label ember",
                over.outcome()
                        .map(outcome -> say.say("path.over", day, outcome.name().in(say.language())))
                        .orElseGet(() -> say.say("path.over.by-team", day)));
    }
}
