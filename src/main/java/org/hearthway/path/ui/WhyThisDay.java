package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Clash;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;

/** Why a stage begins on its day, by which source; or why no day fits, with what would help a press from its preview. */
final class WhyThisDay extends Div {

    /** Shows what a way out of a clash would do. */
    interface Propose {
        /** Under the words of the way. */
        void change(String title, Change change);
    }

    private final transient StageWords say;
    private final transient Plans plans;
    private final transient Plan plan;

    WhyThisDay(StageWords say, Plans plans, Plan plan, Planned stage) {
        this.say = say;
        this.plans = plans;
        this.plan = plan;
        addClassNames("hw-banner", "river", "u-mt3", "u-start");
        add(Icon.WHY.draw(), says(stage));
    }

    /** The same with the ways out, for who may go them. */
    WhyThisDay(StageWords say, Plans plans, Plan plan, Planned stage, Propose propose) {
        this(say, plans, plan, stage);
        stage.clash()
                .ifPresent(clash -> getComponentAt(1)
                        .getElement()
                        .appendChild(ways(clash, propose).getElement()));
    }

    private Component says(Planned stage) {
        return Tags.div(
                "",
                Tags.span(
                        "hw-b",
                        stage.clash().isPresent()
                                ? say.say("path.why.no-day")
                                : say.say("path.why.title", say.date(stage.start(), plan.today()))),
                new Span(" " + plans.why(plan, stage).in(say.language()) + " "),
                new Span(say.allowed(stage).map(allowed -> allowed + " ").orElse("")),
                Tags.span(
                        "hw-sub",
                        say.say("path.why.source", say.source(stage.stage().source()))));
    }

    private Component ways(Clash clash, Propose propose) {
        var ways = Tags.div("hw-offers u-mt2");
        for (var way : clash.ways()) {
            var title = plans.way(plan, way).in(say.language());
            ways.add(Tags.button("plain", title, pressed -> propose.change(title, change(way))));
        }
        return ways;
    }

    private static Change change(Clash.Way way) {
        if (way instanceof Clash.Way.Move move) {
            return new Change.SetByHand(move.stage().id(), move.to());
        }
        var give = (Clash.Way.Give) way;
        return new Change.OwnRule(give.stage().id(), give.at(), give.rule());
    }
}
