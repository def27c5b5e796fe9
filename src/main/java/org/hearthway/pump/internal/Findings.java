package org.hearthway.pump.internal;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpOutlook.Found;
import org.hearthway.pump.engine.Residual;
import org.hearthway.pump.engine.ResidualRules;

/** What was found at the refills of a book. */
final class Findings {

    private Findings() {}

    /** The refill before another. */
    static Optional<PumpEntry> before(Ledger book, PumpEntry fill) {
        var last = Optional.<PumpEntry>empty();
        for (var entry : book.counted()) {
            if (entry.number() == fill.number()) {
                return last;
            }
            if (entry.isRefill()) {
                last = Optional.of(entry);
            }
        }
        return last;
    }

    /** What was drawn out at a refill against what the fill before it had come to. */
    static Optional<Residual> of(Ledger book, PumpEntry fill, ResidualRules rules) {
        if (!(fill.what() instanceof PumpEntry.Refill refill)) {
            return Optional.empty();
        }
        return refill.withdrawn()
                .flatMap(found -> before(book, fill)
                        .flatMap(book::reservoir)
                        .map(since -> Residual.at(since, fill.at(), found, rules)));
    }

    /** All of them, the last refill first. */
    static List<Found> all(Ledger book, ResidualRules rules, ZoneId zone) {
        var all = new ArrayList<Found>();
        for (var entry : book.counted()) {
            of(book, entry, rules)
                    .ifPresent(residual -> all.add(
                            new Found(entry.number(), entry.at().atZone(zone).toLocalDate(), residual)));
        }
        Collections.reverse(all);
        return all;
    }
}
