package org.hearthway.path.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.path.Plans.Beginning;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.Kind;
import org.hearthway.path.Plans.Start;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.network.Span;
import org.hearthway.path.internal.DecisionRecords.Row;

/** A decision about one child on its way into the table: what was decided first, then who said it, when and why. */
final class NewDecision {

    private final ChildId child;
    private final long version;
    private final Kind kind;
    private Optional<String> pathway = Optional.empty();
    private Optional<String> stage = Optional.empty();
    private Optional<LocalDate> day = Optional.empty();
    private Optional<LocalDate> last = Optional.empty();
    private Optional<String> outcome = Optional.empty();
    private Optional<Integer> ruleAt = Optional.empty();
    private Optional<After> rule = Optional.empty();
    private Optional<Long> undoes = Optional.empty();

    private NewDecision(ChildId child, long version, Kind kind) {
        this.child = child;
        this.version = version;
        this.kind = kind;
    }

    static NewDecision begun(ChildId child, long version, Start start) {
        var row = new NewDecision(child, version, start.how() == Beginning.BESIDE ? Kind.BESIDE : Kind.BEGUN);
        row.stage = start.stage();
        return row.of(start.pathway()).on(start.day());
    }

    static NewDecision closed(ChildId child, long version, String pathway, LocalDate day) {
        return new NewDecision(child, version, Kind.CLOSED).of(pathway).on(day);
    }

    static NewDecision away(ChildId child, long version, Span days) {
        var row = new NewDecision(child, version, Kind.AWAY).on(days.first());
        row.last = Optional.of(days.last());
        return row;
    }

    static NewDecision undone(ChildId child, long version, Row taken) {
        var row = new NewDecision(child, version, Kind.UNDONE);
        row.pathway = taken.pathway();
        row.undoes = Optional.of(taken.version());
        return row;
    }

    static NewDecision changed(ChildId child, long version, String pathway, Change change) {
        var row = new NewDecision(child, version, kind(change)).of(pathway);
        row.stage = Optional.of(change.stage());
        if (change instanceof Change.Fix fix) {
            return row.on(fix.day());
        }
        if (change instanceof Change.SetByHand byHand) {
            return row.on(byHand.day());
        }
        if (change instanceof Change.End end) {
            row.outcome = Optional.of(end.outcome());
            return row.on(end.day());
        }
        if (change instanceof Change.OwnRule own) {
            row.ruleAt = Optional.of(own.at());
            row.rule = Optional.of(own.rule());
        }
        if (change instanceof Change.SharedRule shared) {
            row.ruleAt = Optional.of(shared.at());
        }
        return row;
    }

    private static Kind kind(Change change) {
        if (change instanceof Change.Fix) {
            return Kind.FIXED;
        }
        if (change instanceof Change.SetByHand) {
            return Kind.SET_BY_HAND;
        }
        if (change instanceof Change.ByRule) {
            return Kind.BACK_TO_RULE;
        }
        if (change instanceof Change.Add) {
            return Kind.ADDED;
        }
        if (change instanceof Change.Skip) {
            return Kind.SKIPPED;
        }
        if (change instanceof Change.End) {
            return Kind.ENDED;
        }
        return change instanceof Change.OwnRule ? Kind.OWN_RULE : Kind.SHARED_RULE;
    }

    private NewDecision of(String path) {
        pathway = Optional.of(path);
        return this;
    }

    private NewDecision on(LocalDate date) {
        day = Optional.of(date);
        return this;
    }

    Row said(String reason, Optional<AccountId> by, Instant at) {
        return new Row(child, version, kind, pathway, stage, day, last, outcome, ruleAt, rule, undoes, reason, by, at);
    }

    /** As if it had been said, to look at what it would do. */
    Row unsaid() {
        return said("", Optional.empty(), Instant.EPOCH);
    }
}
