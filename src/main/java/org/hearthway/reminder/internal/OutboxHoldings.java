package org.hearthway.reminder.internal;

import static org.hearthway.base.Holding.GoesOn.SILENTLY;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holding.Table;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is planned and was sent; a reminder of a refill goes only where the fill goes that it was made for. */
@Component
class OutboxHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(
                new Rows(
                        "outbox-message",
                        new Table("outbox_message", "child"),
                        "id",
                        List.of("idem", "cause"),
                        "pump-entry"),
                Chain.of("outbox_quiet", "child", SILENTLY, "since"));
    }
}
