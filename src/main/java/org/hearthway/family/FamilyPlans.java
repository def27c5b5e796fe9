package org.hearthway.family;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.springframework.stereotype.Component;

/** A child's path as its family may read it: in a real clinic not before an administrator has accepted its words. */
@Component
class FamilyPlans {

    private final Plans plans;
    private final SignOff signOff;

    FamilyPlans(Plans plans, SignOff signOff) {
        this.plans = plans;
        this.signOff = signOff;
    }

    /** The plans whose words were accepted, those that are over last. */
    List<Plan> plans(Reader reader) {
        return all(reader).filter(this::isShown).toList();
    }

    /** The plans as they would be today had nothing been decided after a moment. */
    List<Plan> asDecidedBy(Reader reader, Instant moment) {
        return plans.asDecidedBy(reader.viewer(), reader.id(), moment).stream()
                .filter(this::isShown)
                .toList();
    }

    /** Whether there is a plan whose words nobody has accepted yet. */
    boolean isHeldBack(Reader reader) {
        return all(reader).anyMatch(plan -> !isShown(plan));
    }

    private Stream<Plan> all(Reader reader) {
        return plans.plans(reader.viewer(), reader.id()).stream().map(Plans.ChildPlan::plan);
    }

    private boolean isShown(Plan plan) {
        var template = plan.template();
        return signOff.isShown(new SignOff.Item("paths", template.id(), template.version()));
    }

    /** The rules of care that hold on a day, in words that were accepted. */
    List<Plan.Care> precautions(Reader reader, LocalDate day) {
        return plans(reader).stream()
                .flatMap(plan -> plan.stages().stream())
                .flatMap(stage -> stage.precautions().stream())
                .filter(care -> care.holdsOn(day))
                .toList();
    }

    /** Why a stage begins when it does; which rules of the team clash is for the team alone. */
    String why(Reader reader, Plan plan, Plan.Planned stage) {
        return stage.clash().isPresent() ? reader.say("family.path.no-day.means") : reader.text(plans.why(plan, stage));
    }
}
