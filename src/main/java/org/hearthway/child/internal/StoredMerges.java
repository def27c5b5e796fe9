package org.hearthway.child.internal;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holding.GoesOn;
import org.hearthway.base.Holding.Kept;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holdings;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Merges;
import org.hearthway.child.events.ChildrenMerged;
import org.hearthway.child.events.MergeTakenBack;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Lazy;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reminders and what needs a look are derived again by their own rounds, so that taking a merge back restores all. */
@Service
class StoredMerges implements Merges {

    private static final int REASON_LEAST = 3;
    private static final int REASON_MOST = 500;

    private final MergeRows rows;
    private final HoldingMover mover;
    private final MergeChecks checks;
    private final ChildRows children;
    private final List<Holding> holdings;
    private final Gate gate;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    /** The gate itself asks this module how far a caregiver reaches, hence the lazy reference. */
    StoredMerges(
            MergeRows rows,
            HoldingMover mover,
            MergeChecks checks,
            ChildRows children,
            List<Holdings> holdings,
            @Lazy Gate gate,
            ApplicationEventPublisher events,
            Clock clock) {
        this.rows = rows;
        this.mover = mover;
        this.checks = checks;
        this.children = children;
        // whether a row follows its chain is seen while the chain has not moved yet
        this.holdings = holdings.stream()
                .flatMap(one -> one.all().stream())
                .sorted(Comparator.comparing(holding -> !(holding instanceof Rows)))
                .toList();
        this.gate = gate;
        this.events = events;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Preview preview(Viewer viewer, ChildId stays, ChildId folds) {
        gate.require(viewer, Action.MERGE_CHILDREN, stays);
        gate.require(viewer, Action.MERGE_CHILDREN, folds);
        return look(viewer, stays, folds);
    }

    private Preview look(Viewer viewer, ChildId stays, ChildId folds) {
        var one = children.get(viewer, stays);
        var other = children.get(viewer, folds);
        var pair = new HoldingMover.Pair(stays, folds);
        var caregivers = checks.caregivers(one, other);
        return new Preview(
                one,
                other,
                holdings.stream()
                        .filter(StoredMerges::isTold)
                        .map(holding -> part(holding, pair))
                        .filter(part -> part.moves() + part.staysBehind() > 0)
                        .toList(),
                caregivers,
                checks.hindrances(viewer, one, other, caregivers, holdings));
    }

    private Part part(Holding holding, HoldingMover.Pair pair) {
        var count = mover.count(holding, pair, holdings);
        return new Part(holding.name(), count.moves(), count.staysBehind());
    }

    private static boolean isTold(Holding holding) {
        return !(holding instanceof Kept) && !(holding instanceof Chain chain && chain.goesOn() == GoesOn.SILENTLY);
    }

    @Override
    @Transactional
    public void merge(Viewer viewer, ChildId stays, Preview seen, String reason) {
        var by = person(viewer, stays);
        var pair = new HoldingMover.Pair(stays, seen.folds().id());
        gate.require(viewer, Action.MERGE_CHILDREN, pair.folds());
        var why = checked(reason);
        rows.hold(pair);
        var now = look(viewer, pair.stays(), pair.folds());
        if (!now.equals(seen)) {
            throw new Overtaken();
        }
        Invalid.ifAny(now.hindrances());
        var at = clock.instant();
        var merge = rows.add(pair, by, at, why);
        holdings.forEach(holding -> mover.move(merge, holding, pair, holdings));
        events.publishEvent(new ChildrenMerged(pair.stays(), viewer, at, pair.folds()));
    }

    @Override
    @Transactional(readOnly = true)
    public List<Merged> standing(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return rows.standing().stream()
                .map(row -> new Merged(
                        row.id(), row.stays(), children.folded(row.folds()), row.by(), row.at(), row.reason()))
                .toList();
    }

    @Override
    @Transactional
    public void takeBack(Viewer viewer, ChildId stays, UUID merge, String reason) {
        var by = person(viewer, stays);
        var row = rows.find(merge).filter(found -> found.stays().equals(stays)).orElseThrow(NotAvailable::new);
        var why = checked(reason);
        rows.hold(row.pair());
        blocking(row).ifPresent(later -> {
            throw new Invalid(Problem.at(
                    "",
                    "child.problem.merge.later",
                    children.folded(later.folds()).fullName()));
        });
        var at = clock.instant();
        if (!rows.part(row, by, at, why)) {
            throw new Overtaken();
        }
        var backwards = new ArrayList<>(holdings);
        Collections.reverse(backwards);
        backwards.forEach(holding -> mover.moveBack(merge, holding, row.pair()));
        events.publishEvent(new MergeTakenBack(row.stays(), viewer, at, row.folds()));
    }

    /** The newest merge into the same entry, or of that entry into another, when it came later. */
    private Optional<MergeRows.Row> blocking(MergeRows.Row row) {
        return rows.standing().stream()
                .takeWhile(later -> !later.id().equals(row.id()))
                .filter(later ->
                        later.stays().equals(row.stays()) || later.folds().equals(row.stays()))
                .findFirst();
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<ChildId> goesOnAs(Viewer viewer, ChildId folded) {
        var last = Optional.<ChildId>empty();
        for (var next = children.goesOnAs(folded); next.isPresent(); next = children.goesOnAs(next.get())) {
            last = next;
        }
        gate.require(viewer, Action.SEE_WEEK, last.orElse(folded));
        return last;
    }

    private AccountId person(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.MERGE_CHILDREN, child);
        if (viewer instanceof Viewer.Person person) {
            return person.account();
        }
        throw new NotAvailable();
    }

    private static String checked(String reason) {
        var why = reason.replace("\u0000", "").strip();
        if (why.length() < REASON_LEAST || why.length() > REASON_MOST) {
            throw new Invalid(Problem.at("reason", "child.problem.merge.reason", REASON_LEAST, REASON_MOST));
        }
        return why;
    }
}
