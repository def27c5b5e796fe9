package org.hearthway.visit.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visit.Answer;
import org.hearthway.visit.Visit.State;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;
import org.hearthway.visit.events.VisitAnswered;
import org.hearthway.visit.events.VisitAttended;
import org.hearthway.visit.events.VisitBooked;
import org.hearthway.visit.events.VisitCancelled;
import org.hearthway.visit.events.VisitMoved;
import org.hearthway.words.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The clinic's visits: each change is checked, added as a version and told in one transaction. */
@Service
class BookedVisits implements Visits {

    private final VisitStore store;
    private final VisitKinds kinds;
    private final BookingRules rules;
    private final Gate gate;
    private final ClinicSettings clinic;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    BookedVisits(
            VisitStore store,
            VisitKinds kinds,
            BookingRules rules,
            Gate gate,
            ClinicSettings clinic,
            Words words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.store = store;
        this.kinds = kinds;
        this.rules = rules;
        this.gate = gate;
        this.clinic = clinic;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @Override
    public List<VisitKind> kinds() {
        return kinds.all();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Visit> upcoming(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var now = clock.instant();
        return store.ofChild(child).stream()
                .filter(visit -> visit.state() == State.BOOKED && visit.endsAt().isAfter(now))
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Visit> past(Viewer viewer, ChildId child, int limit) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var now = clock.instant();
        return store.ofChild(child).stream()
                .filter(visit -> visit.state() != State.CANCELLED
                        && (visit.state() != State.BOOKED || !visit.endsAt().isAfter(now)))
                .sorted(Comparator.comparing(Visit::start).reversed())
                .limit(limit)
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Visit> between(Viewer viewer, LocalDate from, LocalDate until) {
        gate.require(viewer, Action.LIST_CHILDREN);
        return store.bookedBetween(from.atStartOfDay(), until.plusDays(1).atStartOfDay());
    }

    @Override
    @Transactional(readOnly = true)
    public Visit get(Viewer viewer, VisitId id) {
        var visit = store.find(id).orElseThrow(NotAvailable::new);
        // a link is for answering one visit and opens nothing else of the family's pages
        var action = viewer instanceof Viewer.LinkHolder ? Action.ANSWER_VISIT : Action.SEE_FAMILY_PAGES;
        gate.require(viewer, action, visit.child());
        return visit;
    }

    @Override
    @Transactional
    public VisitId book(Viewer viewer, ChildId child, Booking booking) {
        gate.require(viewer, Action.BOOK_VISIT, child);
        rules.check(booking);
        var visit = new Visit(
                VisitId.random(),
                child,
                kinds.ofBooked(booking.kind(), booking.minutes()),
                BookingRules.toTheMinute(booking.start()),
                clinic.zone(),
                booking.minutes(),
                booking.place().strip(),
                booking.purpose().filter(purpose -> !purpose.isBlank()),
                Answer.NONE,
                "",
                State.BOOKED,
                0,
                1);
        var now = clock.instant();
        store.insert(visit, viewer, now);
        events.publishEvent(new VisitBooked(child, viewer, now, visit.id().value(), told("visit.told.booked", visit)));
        return visit.id();
    }

    @Override
    @Transactional
    public void move(Viewer viewer, VisitId id, LocalDateTime start, long seen) {
        var old = toChange(viewer, Action.BOOK_VISIT, id);
        requireBooked(old, seen);
        rules.checkStart(start);
        var now = clock.instant();
        var moved = next(old, BookingRules.toTheMinute(start), Answer.NONE, "", State.BOOKED, old.sequence() + 1);
        store.insertVersion(moved, viewer, now);
        events.publishEvent(new VisitMoved(old.child(), viewer, now, id.value(), told("visit.told.moved", moved)));
    }

    @Override
    @Transactional
    public void cancel(Viewer viewer, VisitId id, long seen) {
        var old = toChange(viewer, Action.BOOK_VISIT, id);
        requireBooked(old, seen);
        var now = clock.instant();
        var cancelled = next(old, old.start(), old.answer(), old.wish(), State.CANCELLED, old.sequence());
        store.insertVersion(cancelled, viewer, now);
        events.publishEvent(
                new VisitCancelled(old.child(), viewer, now, id.value(), told("visit.told.cancelled", old)));
    }

    @Override
    @Transactional
    public void attended(Viewer viewer, VisitId id, boolean came, long seen) {
        var old = toChange(viewer, Action.BOOK_VISIT, id);
        if (old.version() != seen || old.state() == State.CANCELLED) {
            throw new Overtaken();
        }
        var now = clock.instant();
        var state = came ? State.ATTENDED : State.NOT_ATTENDED;
        store.insertVersion(next(old, old.start(), old.answer(), old.wish(), state, old.sequence()), viewer, now);
        events.publishEvent(new VisitAttended(old.child(), viewer, now, id.value(), came));
    }

    @Override
    @Transactional
    public void confirm(Viewer viewer, VisitId id, int sequence) {
        answer(viewer, id, sequence, Answer.CONFIRMED, "");
    }

    @Override
    @Transactional
    public void askToMove(Viewer viewer, VisitId id, int sequence, String wish) {
        answer(viewer, id, sequence, Answer.ASKED_TO_MOVE, wish);
    }

    private void answer(Viewer viewer, VisitId id, int sequence, Answer answer, String typed) {
        var old = toChange(viewer, Action.ANSWER_VISIT, id);
        var wish = typed.strip();
        var now = clock.instant();
        if (old.sequence() != sequence
                || old.state() != State.BOOKED
                || !old.endsAt().isAfter(now)) {
            throw new Overtaken();
        }
        rules.checkWish(wish);
        if (old.answer() == answer && old.wish().equals(wish)) {
            // the same answer twice, as two taps on a slow phone send it, is one answer
            return;
        }
        store.insertVersion(next(old, old.start(), answer, wish, State.BOOKED, sequence), viewer, now);
        events.publishEvent(new VisitAnswered(old.child(), viewer, now, id.value(), answer == Answer.CONFIRMED));
    }

    private Visit toChange(Viewer viewer, Action action, VisitId id) {
        var visit = store.find(id).orElseThrow(NotAvailable::new);
        gate.require(viewer, action, visit.child());
        return visit;
    }

    private static void requireBooked(Visit visit, long seen) {
        if (visit.version() != seen || visit.state() != State.BOOKED) {
            throw new Overtaken();
        }
    }

    private static Visit next(Visit old, LocalDateTime start, Answer answer, String wish, State state, int sequence) {
        return new Visit(
                old.id(),
                old.child(),
                old.kind(),
                start,
                old.zone(),
                old.minutes(),
                old.place(),
                old.purpose(),
                answer,
                wish,
                state,
                sequence,
                old.version() + 1);
    }

    private Bilingual told(String key, Visit visit) {
        return words.both(
                key,
                visit.kind().name(),
                visit.start().toLocalDate(),
                visit.start().toLocalTime());
    }
}
