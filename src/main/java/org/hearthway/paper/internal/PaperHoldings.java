package org.hearthway.paper.internal;

import static org.hearthway.base.Holding.GoesOn.THE_NEWER;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is signed for an emergency: only the newer plan may go on. */
@Component
class PaperHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(Chain.of("emergency_plan", "child", THE_NEWER, "signed_at"));
    }
}
