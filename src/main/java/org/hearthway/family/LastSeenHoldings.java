package org.hearthway.family;

import static org.hearthway.base.Holding.GoesOn.SILENTLY;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** When each caregiver last saw a child’s pages. */
@Component
class LastSeenHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(Chain.of("last_seen", "child_id", SILENTLY, "seen_at", "account_id"));
    }
}
