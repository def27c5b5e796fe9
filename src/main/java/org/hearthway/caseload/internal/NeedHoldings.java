package org.hearthway.caseload.internal;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holding.Table;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What needs or needed a look; an item that is open for both stays one. */
@Component
class NeedHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(new Rows("need-item", new Table("need_item", "child"), "id", List.of("open_cause"), ""));
    }
}
