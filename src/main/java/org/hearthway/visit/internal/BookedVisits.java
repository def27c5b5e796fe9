package org.hearthway.visit.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
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
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The clinic's visits: each change is checked, added as a version and told in one transaction. */
@Service
class BookedVisits implements Visits {

    private final VisitStore store;
    private final SaidOfVisits said;
    private final VisitKinds kinds;
    private final BookingRules rules;
    private final Gate gate;
    private final ClinicSettings clinic;
    private final VisitWords words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    BookedVisits(
            VisitStore store,
            SaidOfVisits said,
            VisitKinds kinds,
            BookingRules rules,
            Gate gate,
            ClinicSettings clinic,
            VisitWords words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.store = store;
        this.said = said;
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
        return asSeenBy(
                viewer,
                store.ofChild(child).stream()
                        .filter(visit ->
                                visit.state() == State.BOOKED && visit.endsAt().isAfter(now))
                        .toList());
    }

    @Override
    @Transactional(readOnly = true)
    public List<Visit> past(Viewer viewer, ChildId child, int limit) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var now = clock.instant();
        return asSeenBy(
                viewer,
                store.ofChild(child).stream()
                        .filter(visit -> visit.state() != State.CANCELLED
                                && (visit.state() != State.BOOKED
                                        || !visit.endsAt().isAfter(now)))
                        .sorted(Comparator.comparing(Visit::start).reversed())
                        .limit(limit)
                        .toList());
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
        return speaker(viewer).isEmpty() ? visit : asSeenBy(viewer, visit, said.standing(visit));
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<LocalDateTime> startAsOf(Viewer viewer, VisitId id, Instant moment) {
        var visit = store.find(id).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FAMILY_PAGES, visit.child());
        return store.startAsOf(id, moment);
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
        events.publishEvent(new VisitBooked(child, viewer, now, visit.id().value(), words.booked(visit)));
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
        events.publishEvent(new VisitMoved(old.child(), viewer, now, id.value(), words.moved(moved)));
    }

    @Override
    @Transactional
    public void cancel(Viewer viewer, VisitId id, long seen) {
        var old = toChange(viewer, Action.BOOK_VISIT, id);
        requireBooked(old, seen);
        var now = clock.instant();
        store.insertVersion(old.inState(State.CANCELLED), viewer, now);
        events.publishEvent(new VisitCancelled(old.child(), viewer, now, id.value(), words.cancelled(old)));
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
        store.insertVersion(old.inState(state), viewer, now);
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

    /**
     * Each caregiver's own word is kept beside the others'. While one of them asks to move, the visit stands as asked to
     * move, whoever says yes; what the office says settles it.
     */
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
        var speaker = speaker(viewer);
        var before = said.standing(old);
        if (isSaidAlready(old, before, speaker, answer, wish)) {
            // the same answer twice, as two taps on a slow phone send it, is one answer
            return;
        }
        said.add(old, speaker, answer, wish, viewer, now);
        var asks = speaker.isEmpty() || answer == Answer.ASKED_TO_MOVE
                ? Optional.<Given>empty()
                : before.stream()
                        .filter(given -> !speaker.equals(Optional.of(given.by())))
                        .filter(given -> given.answer() == Answer.ASKED_TO_MOVE)
                        .max(Comparator.comparing(Given::at));
        store.insertVersion(
                next(
                        old,
                        old.start(),
                        asks.map(Given::answer).orElse(answer),
                        asks.map(Given::wish).orElse(wish),
                        State.BOOKED,
                        sequence),
                viewer,
                now);
        events.publishEvent(new VisitAnswered(old.child(), viewer, now, id.value(), answer == Answer.CONFIRMED));
    }

    private static boolean isSaidAlready(
            Visit visit, List<Given> said, Optional<AccountId> speaker, Answer answer, String wish) {
        return speaker.map(person -> said.stream()
                        .filter(given -> given.by().equals(person))
                        .anyMatch(given ->
                                given.answer() == answer && given.wish().equals(wish)))
                .orElseGet(() -> !SaidOfVisits.differ(said)
                        && visit.answer() == answer
                        && visit.wish().equals(wish));
    }

    /** The caregiver who speaks; nobody when the office does. */
    private static Optional<AccountId> speaker(Viewer viewer) {
        if (viewer instanceof Viewer.Person person) {
            return person.isStaff() ? Optional.empty() : Optional.of(person.account());
        }
        // whoever holds a link that names nobody speaks as that link
        return viewer instanceof Viewer.LinkHolder holder
                ? Optional.of(holder.person().orElseGet(() -> new AccountId(holder.link())))
                : Optional.empty();
    }

    /** A caregiver sees its own answer; of another's only that there is a yes, never the words of a wish. */
    private static Visit asSeenBy(Viewer viewer, Visit visit, List<Given> said) {
        var speaker = speaker(viewer);
        if (speaker.isEmpty() || said.isEmpty()) {
            return visit;
        }
        var own = said.stream()
                .filter(given -> speaker.equals(Optional.of(given.by())))
                .findFirst();
        var answer =
                own.map(Given::answer).orElse(visit.answer() == Answer.ASKED_TO_MOVE ? Answer.NONE : visit.answer());
        return new Visit(
                visit.id(),
                visit.child(),
                visit.kind(),
                visit.start(),
                visit.zone(),
                visit.minutes(),
                visit.place(),
                visit.purpose(),
                answer,
                own.map(Given::wish).orElse(""),
                visit.state(),
                visit.sequence(),
                visit.version());
    }

    private List<Visit> asSeenBy(Viewer viewer, List<Visit> visits) {
        if (speaker(viewer).isEmpty()) {
            return visits;
        }
        var standing = said.standing(visits);
        return visits.stream()
                .map(visit -> asSeenBy(viewer, visit, standing.getOrDefault(visit.id(), List.of())))
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public Map<VisitId, List<Given>> disputed(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var now = clock.instant();
        var today = LocalDate.ofInstant(now, clinic.zone());
        var coming = store
                .bookedBetween(
                        today.atStartOfDay(),
                        today.plusYears(BookingRules.YEARS_AHEAD + 1L).atStartOfDay())
                .stream()
                .filter(visit -> visit.endsAt().isAfter(now))
                .toList();
        return said.standing(coming).entrySet().stream()
                .filter(visit -> SaidOfVisits.differ(visit.getValue()))
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, visit -> List.copyOf(visit.getValue())));
    }

    @Override
    @Transactional(readOnly = true)
    public boolean isDisputed(Viewer viewer, VisitId id) {
        return SaidOfVisits.differ(said.standing(get(viewer, id)));
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
}
