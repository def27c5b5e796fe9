package org.hearthway.child.internal;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holdings;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Brings after what another transaction wrote under an entry at the very moment at which it was folded. */
@Component
class Gathering {

    private final MergeRows merges;
    private final HoldingMover mover;
    private final List<Holding> holdings;
    private final TransactionTemplate inTransaction;

    Gathering(MergeRows merges, HoldingMover mover, List<Holdings> holdings, TransactionTemplate inTransaction) {
        this.merges = merges;
        this.mover = mover;
        this.holdings = holdings.stream().flatMap(one -> one.all().stream()).toList();
        this.inTransaction = inTransaction;
    }

    @Scheduled(initialDelayString = "PT1M", fixedDelayString = "PT10M")
    void gather() {
        inTransaction.executeWithoutResult(status -> merges.standing().forEach(this::gather));
    }

    private void gather(MergeRows.Row merge) {
        merges.hold(merge.pair());
        holdings.stream()
                .filter(Rows.class::isInstance)
                .map(Rows.class::cast)
                .filter(rows -> mover.count(rows, merge.pair(), holdings).moves() > 0)
                .forEach(rows -> mover.moveRows(merge.id(), rows, merge.pair(), holdings));
    }
}
