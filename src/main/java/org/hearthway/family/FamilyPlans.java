package org.hearthway.family;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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

    /** The plan; empty while there is none, or none whose words were accepted. */
    Optional<Plan> plan(Reader reader) {
        return any(reader).filter(this::isShown);
    }

    /** The plans whose words were accepted. */
    List<Plan> plans(Reader reader) {
        return plan(reader).stream().toList();
    }

    /** The plans as they would be today had nothing been decided after a moment. */
    List<Plan> asDecidedBy(Reader reader, Instant moment) {
        return plans.asDecidedBy(reader.viewer(), reader.id(), moment).stream()
                .filter(this::isShown)
                .toList();
    }

    /** Whether there is a plan whose words nobody has accepted yet. */
    boolean isHeldBack(Reader reader) {
        return any(reader).filter(plan -> !isShown(plan)).isPresent();
    }

    private Optional<Plan> any(Reader reader) {
        return plans.plan(reader.viewer(), reader.id()).map(Plans.ChildPlan::plan);
    }

    private boolean isShown(Plan plan) {
        var template = plan.template();
        return signOff.isShown(new SignOff.Item("paths", template.id(), template.version()));
    }

    /** The rules of care that hold on a day, in words that were accepted. */
    List<Plan.Care> precautions(Reader reader, LocalDate day) {
        return plan(reader).isEmpty() ? List.of() : plans.precautions(reader.viewer(), reader.id(), day);
    }

    /** Why a stage begins when it does; which rules of the team clash is for the team alone. */
    String why(Reader reader, Plan plan, Plan.Planned stage) {
        return stage.clash().isPresent() ? reader.say("family.path.no-day.means") : reader.text(plans.why(plan, stage));
    }
}
