package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;

/** Everything that a family needs in a stage, from where it is kept. */
@org.springframework.stereotype.Component
class StageNeeds {

    private final FamilyPlans plans;
    private final StageTicks.Source ticks;
    private final StageVisits.Source visits;
    private final StageCare care;

    StageNeeds(FamilyPlans plans, StageTicks.Source ticks, StageVisits.Source visits, StageCare care) {
        this.plans = plans;
        this.ticks = ticks;
        this.visits = visits;
        this.care = care;
    }

    /**
     * For one drawing of the page.
     *
     * @param again draws it anew after a press
     */
    PathWay.Needs of(Reader reader, PathNews news, Runnable again) {
        var tasks = ticks.of(reader, again);
        var ofStages = visits.of(reader, news);
        return new PathWay.Needs() {
            @Override
            public List<Component> now(Plan plan, Planned stage) {
                return parts(Stream.of(
                        tasks.list(name(plan, stage), true),
                        ofStages.list(stage),
                        care.today(reader, plan),
                        care.signs(reader, stage),
                        Optional.of(care.who(reader, stage))));
            }

            @Override
            public List<Component> besides(Plan plan, Planned stage) {
                return parts(Stream.of(tasks.list(name(plan, stage), true), ofStages.list(stage)));
            }

            @Override
            public List<Component> next(Plan plan, Planned stage) {
                var stands = PathWords.isFixed(stage) || ofStages.day(stage).isPresent();
                return parts(Stream.of(
                        tasks.list(name(plan, stage), stands), ofStages.list(stage), care.ahead(reader, stage)));
            }

            @Override
            public Optional<LocalDate> booked(Planned stage) {
                return ofStages.day(stage);
            }

            @Override
            public String why(Plan plan, Planned stage) {
                return plans.why(reader, plan, stage);
            }
        };
    }

    /** How tasks name a stage. */
    private static String name(Plan plan, Planned stage) {
        return plan.template().id() + "/" + stage.point();
    }

    private static List<Component> parts(Stream<Optional<Component>> parts) {
        return parts.flatMap(Optional::stream).toList();
    }
}
