package org.hearthway.pump.engine;

import java.util.List;

/**
 * Whether a pump can do what it is set to.
 *
 * @param outside rates whose flow it cannot deliver; empty when it can do all of it
 * @param range what it can deliver
 */
public record Deliverable(List<Flow> outside, FlowRange range) {

    /** A rate and the flow it needs. */
    public record Flow(DrugRate rate, FlowRate flow) {}

    public Deliverable {
        outside = List.copyOf(outside);
    }

    /** Looks at every rate of a dosing. */
    public static Deliverable check(PumpModel pump, Concentration strength, Dosing dosing) {
        var outside = dosing.pace(strength).rates().stream()
                .map(rate -> new Flow(rate, rate.in(strength)))
                .filter(flow -> !pump.deliverable().holds(flow.flow()))
                .toList();
        return new Deliverable(outside, pump.deliverable());
    }

    /** Whether it can do all of it. */
    public boolean holds() {
        return outside.isEmpty();
    }
}
