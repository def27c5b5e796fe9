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

    @Override
    public List<Holding> all() {
        return List.of(
                Chain.of("pump_fill", "child_id", THE_NEWER, "filled_on"),
                new Chain(
                        "pump-setting",
                        List.of(new Table("pump_setting", "child_id"), new Table("pump_setting_check", "child_id")),
                        List.of(),
                        THE_NEWER,
                        "printed_on"));
    }
}
