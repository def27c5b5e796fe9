package org.hearthway.path.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.Kind;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.internal.DecisionRecords.Row;

/** Makes the row that keeps a decision; who took it, when and why is added on keeping. */
final class DecisionRows {

    private DecisionRows() {}

    static Row begun(ChildId child, long version, String pathway, Optional<String> at, LocalDate day) {
        return row(child, version, Kind.BEGUN, pathway, at, Optional.of(day));
    }

    static Row undone(ChildId child, long version, Row taken) {
        return new Row(
                child,
                version,
                Kind.UNDONE,
                taken.pathway(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(taken.version()),
                "",
                Optional.empty(),
                Instant.EPOCH);
    }

    static Row of(ChildId child, long version, String pathway, Change change) {
        var stage = Optional.of(change.stage());
        if (change instanceof Change.Fix fix) {
            return row(child, version, Kind.FIXED, pathway, stage, Optional.of(fix.day()));
        }
        if (change instanceof Change.SetByHand byHand) {
            return row(child, version, Kind.SET_BY_HAND, pathway, stage, Optional.of(byHand.day()));
        }
        if (change instanceof Change.ByRule) {
            return row(child, version, Kind.BACK_TO_RULE, pathway, stage, Optional.empty());
        }
        if (change instanceof Change.Add) {
            return row(child, version, Kind.ADDED, pathway, stage, Optional.empty());
        }
        if (change instanceof Change.Skip) {
            return row(child, version, Kind.SKIPPED, pathway, stage, Optional.empty());
        }
        if (change instanceof Change.End end) {
            return row(child, version, Kind.ENDED, pathway, stage, Optional.of(end.day()))
                    .withOutcome(end.outcome());
        }
        if (change instanceof Change.OwnRule own) {
            return row(child, version, Kind.OWN_RULE, pathway, stage, Optional.empty())
                    .withRule(own.at(), Optional.of(own.rule()));
        }
        return row(child, version, Kind.SHARED_RULE, pathway, stage, Optional.empty())
                .withRule(((Change.SharedRule) change).at(), Optional.empty());
    }

    private static Row row(
            ChildId child, long version, Kind kind, String pathway, Optional<String> stage, Optional<LocalDate> day) {
        return new Row(
                child,
                version,
                kind,
                pathway,
                stage,
                day,
                Optional.empty(),
                Optional.empty(),
                Optional.<After>empty(),
                Optional.empty(),
                "",
                Optional.empty(),
                Instant.EPOCH);
    }
}
