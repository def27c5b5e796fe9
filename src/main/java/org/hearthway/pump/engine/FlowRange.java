package org.hearthway.pump.engine;

import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/** The flows that a pump can deliver; both ends belong to it. */
public record FlowRange(FlowRate least, FlowRate most) {

    /** @throws Invalid when the first is the larger */
    public FlowRange {
        if (least.compareTo(most) > 0) {
            throw new Invalid(Problem.at("deliverable", "pump.problem.range"));
        }
    }

    /** Whether it can deliver a flow; it can always stand still. */
    public boolean holds(FlowRate flow) {
        return flow.exact().signum() == 0 || (flow.compareTo(least) >= 0 && flow.compareTo(most) <= 0);
    }
}
