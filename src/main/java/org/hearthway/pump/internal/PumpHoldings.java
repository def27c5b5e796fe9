package org.hearthway.pump.internal;

import static org.hearthway.base.Holding.GoesOn.THE_NEWER;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holding.Table;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is kept of a child’s pump: of two alarm dates and two doses only the newer may go on. */
@Component
class PumpHoldings implements Holdings {

    private static final String CHILD = "child_id";

    @Override
    public List<Holding> all() {
        return List.of(new Chain(
                "pump-entry",
                List.of(
                        new Table("pump_entry", CHILD),
                        new Table("pump_step", CHILD),
                        new Table("pump_bolus", CHILD),
                        new Table("pump_implant", CHILD),
                        new Table("pump_refill", CHILD),
                        new Table("pump_check", CHILD),
                        new Table("pump_explained", CHILD)),
                List.of(),
                THE_NEWER,
                "done_at"));
    }
}
