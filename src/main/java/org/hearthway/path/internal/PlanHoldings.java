package org.hearthway.path.internal;

import static org.hearthway.base.Holding.GoesOn.OF_THE_ONE_THAT_STAYS;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is kept of a child’s care pathway. */
@Component
class PlanHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(Chain.of("path_change", "child_id", OF_THE_ONE_THAT_STAYS, "decided_at"));
    }
}
