package org.hearthway.visit.internal;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is kept of a child’s visits. */
@Component
class VisitHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(Rows.of("visit", "visit", "child", "id"));
    }
}
