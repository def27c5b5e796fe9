package org.hearthway.reminder.internal;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.access.Links;
import org.hearthway.base.ChildId;
import org.hearthway.child.Standings;
import org.hearthway.reminder.Outbox.Channel;
import org.hearthway.reminder.Outbox.State;
import org.hearthway.reminder.internal.Planner.Wanted;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Makes the kept messages agree with what there should be: adds what is missing and still ahead, cancels what fell
 * away, changes words that no longer fit. Doing it again changes nothing. Runs only inside the transaction of the
 * change that asks for it, so that neither stands without the other.
 */
@Component
class Planning {

    private final Planner planner;
    private final OutboxRows rows;
    private final Links links;
    private final Visits visits;
    private final Standings standings;
    private final Clock clock;

    Planning(Planner planner, OutboxRows rows, Links links, Visits visits, Standings standings, Clock clock) {
        this.planner = planner;
        this.rows = rows;
        this.links = links;
        this.visits = visits;
        this.standings = standings;
        this.clock = clock;
    }

    /** For one visit; its links live until it is over. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void visit(VisitId id) {
        var visit = visits.get(Family.MACHINE, id);
        if (isLeftInPeace(visit.child())) {
            return;
        }
        rows.linksOf(id).forEach(link -> links.extend(link, visit.endsAt()));
        agree(planner.forVisit(visit), Optional.of(visit));
    }

    /** For a child's refill. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void refill(ChildId child) {
        if (isLeftInPeace(child)) {
            return;
        }
        agree(planner.forRefill(child), Optional.empty());
    }

    /** For what the child's family is asked to do. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void tasks(ChildId child) {
        if (!isLeftInPeace(child)) {
            agree(planner.forTasks(child), Optional.empty());
        }
    }

    /** For the days on which something is looked at, at home or at the clinic. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void dueDays(ChildId child) {
        if (isLeftInPeace(child)) {
            return;
        }
        agree(planner.forHomeChecks(child), Optional.empty());
        agree(planner.forChecks(child), Optional.empty());
    }

    /** For the steps of a child's taper calendars. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void steps(ChildId child) {
        if (!isLeftInPeace(child)) {
            agree(planner.forSteps(child), Optional.empty());
        }
    }

    /** For everything that is to come for a child. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void child(ChildId child) {
        visits.upcoming(Family.MACHINE, child).forEach(visit -> visit(visit.id()));
        refill(child);
        tasks(child);
        dueDays(child);
        steps(child);
    }

    private boolean isLeftInPeace(ChildId child) {
        return !standings.now(Family.MACHINE, child).status().asksTheFamily();
    }

    private void agree(Wanted wanted, Optional<Visit> visit) {
        var kept = rows.ofCause(wanted.cause()).stream()
                .collect(Collectors.toMap(row -> row.draft().idem(), Function.identity()));
        var all = wanted.all().stream().collect(Collectors.toMap(Draft::idem, Function.identity()));
        kept.forEach((idem, row) -> {
            var draft = all.get(idem);
            if (draft == null) {
                rows.retire(row.id());
            } else {
                rows.reword(row.id(), draft);
            }
        });
        for (var draft : wanted.ahead()) {
            var row = kept.get(draft.idem());
            if (row == null) {
                rows.insert(draft, link(draft, visit), clock.instant());
            } else if (row.state() == State.CANCELLED) {
                rows.revive(row.id(), draft);
            }
        }
    }

    /** One link for a person and a visit, however many messages carry it. */
    private Optional<UUID> link(Draft draft, Optional<Visit> visit) {
        return visit.filter(to -> draft.channel() == Channel.MAIL)
                .map(to -> rows.linkOf(to.id(), draft.person())
                        .orElseGet(() -> links.create(
                                        Links.Purpose.ANSWER_VISIT, to.id().value(), to.endsAt())
                                .id()));
    }
}
