package org.hearthway.surveillance.internal;

import static org.hearthway.base.Holding.GoesOn.THE_NEWER;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** Checks of hips and spine: the newer record of each goes on. */
@Component
class CheckHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(Chain.of("surveillance_check", "child", THE_NEWER, "done_on", "watched"));
    }
}
