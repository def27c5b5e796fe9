package org.hearthway.choosing.internal;

import static org.hearthway.base.Holding.GoesOn.OF_THE_ONE_THAT_STAYS;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** Facts for the choice of a path, and what was decided. */
@Component
class ChoosingHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(
                Chain.of("choosing_facts", "child", OF_THE_ONE_THAT_STAYS, "entered_at"),
                Chain.of("choosing_decision", "child", OF_THE_ONE_THAT_STAYS, "entered_at"));
    }
}
