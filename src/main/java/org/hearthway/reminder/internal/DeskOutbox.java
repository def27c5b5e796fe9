package org.hearthway.reminder.internal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Standings;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.reminder.Outbox;
import org.hearthway.reminder.events.MessageSettled;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;
import org.hearthway.words.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The outbox as the clinic sees and works it. */
@Service
class DeskOutbox implements Outbox {

    static final int NOTE_LENGTH = 500;
    private static final Duration STILL_MATTERS = Duration.ofDays(30);

    private final OutboxRows rows;
    private final Wording wording;
    private final Postman postman;
    private final Accounts accounts;
    private final Visits visits;
    private final Standings standings;
    private final Gate gate;
    private final ClinicSettings clinic;
    private final Words words;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    DeskOutbox(
            OutboxRows rows,
            Wording wording,
            Postman postman,
            Accounts accounts,
            Visits visits,
            Standings standings,
            Gate gate,
            ClinicSettings clinic,
            Words words,
            ApplicationEventPublisher events,
            Clock clock) {
        this.rows = rows;
        this.wording = wording;
        this.postman = postman;
        this.accounts = accounts;
        this.visits = visits;
        this.standings = standings;
        this.gate = gate;
        this.clinic = clinic;
        this.words = words;
        this.events = events;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Message> board(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var mine = new HashMap<ChildId, Boolean>();
        return told(
                viewer,
                rows.after(clock.instant().minus(STILL_MATTERS)).stream()
                        .filter(row -> mine.computeIfAbsent(
                                row.draft().child(), child -> gate.allows(viewer, Action.WORK_DESK, child)))
                        .toList());
    }

    @Override
    @Transactional(readOnly = true)
    public List<Message> of(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.WORK_DESK, child);
        return told(viewer, rows.ofChild(child));
    }

    @Override
    @Transactional
    public void sendNow(Viewer viewer, UUID message, long seen) {
        var row = toWork(viewer, message, seen);
        if (row.draft().channel() != Channel.MAIL || (!waits(row.state()) && row.state() != State.NOT_REACHED)) {
            throw movedOn();
        }
        if (!standings.now(Family.MACHINE, row.draft().child()).status().asksTheFamily()) {
            throw new Invalid(Problem.at("", "reminder.problem.quiet"));
        }
        change(row, State.PLANNED, clock.instant(), true, row.note(), null);
    }

    @Override
    @Transactional
    public void hold(Viewer viewer, UUID message, boolean held, long seen) {
        var row = toWork(viewer, message, seen);
        if (row.draft().channel() != Channel.MAIL || !waits(row.state())) {
            throw movedOn();
        }
        change(row, held ? State.HELD : State.PLANNED, row.draft().due(), false, row.note(), null);
    }

    @Override
    @Transactional
    public void called(Viewer viewer, UUID message, boolean reached, String note, long seen) {
        var row = toWork(viewer, message, seen);
        var text = note.strip();
        if (text.length() > NOTE_LENGTH) {
            throw new Invalid(Problem.at("note", "reminder.problem.note", NOTE_LENGTH, text.length()));
        }
        // of mails only one that reached nobody is answered by a call
        var open = row.draft().channel() == Channel.CALL || row.state() == State.NOT_REACHED;
        if (!open || row.state() == State.CALLED || row.state() == State.CANCELLED) {
            throw movedOn();
        }
        settle(viewer, row, reached ? State.CALLED : State.NOT_REACHED, text);
        if (reached) {
            sameCallToOthers(row).forEach(other -> settle(viewer, other, State.CANCELLED, text));
        }
    }

    @Override
    public boolean sendsMail() {
        return postman.sends();
    }

    /** One caregiver answered: the call that stands for the others of the household is made as well. */
    private List<OutboxRow> sameCallToOthers(OutboxRow row) {
        return rows.ofCause(row.draft().cause()).stream()
                .filter(other -> !other.id().equals(row.id())
                        && other.draft().channel() == Channel.CALL
                        && other.draft().textId().equals(row.draft().textId())
                        && (other.state() == State.TO_CALL
                                || other.state() == State.PLANNED
                                || other.state() == State.NOT_REACHED))
                .toList();
    }

    private OutboxRow toWork(Viewer viewer, UUID message, long seen) {
        var row = rows.find(message).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.WORK_DESK, row.draft().child());
        if (row.version() != seen) {
            throw new Overtaken();
        }
        return row;
    }

    private static boolean waits(State state) {
        return state == State.PLANNED || state == State.HELD || state == State.RETRYING;
    }

    private static Invalid movedOn() {
        return new Invalid(Problem.at("", "reminder.problem.state"));
    }

    private void settle(Viewer viewer, OutboxRow row, State state, String note) {
        var now = clock.instant();
        change(row, state, row.draft().due(), row.byHand(), note, now);
        events.publishEvent(new MessageSettled(row.draft().child(), viewer, now, row.id(), state.name()));
    }

    private void change(
            OutboxRow row, State state, Instant due, boolean byHand, String note, @Nullable Instant settled) {
        if (!rows.change(row, state, due, byHand, note, settled)) {
            throw new Overtaken();
        }
    }

    private List<Message> told(Viewer viewer, Collection<OutboxRow> kept) {
        var language = viewer instanceof Viewer.Person person ? person.language() : Language.EN;
        var people = accounts.byId(
                Family.MACHINE, kept.stream().map(row -> row.draft().person()).collect(Collectors.toSet()));
        var kinds = visits.kinds().stream().collect(Collectors.toMap(VisitKind::id, Function.identity()));
        return kept.stream().map(row -> told(language, row, people, kinds)).toList();
    }

    private Message told(
            Language language, OutboxRow row, Map<AccountId, Account> people, Map<String, VisitKind> kinds) {
        var draft = row.draft();
        var person = people.get(draft.person());
        var kind = kinds.get(draft.about());
        var call = draft.channel() == Channel.CALL;
        // a call is for staff to read: in the reader's language, and by the clinic's clock
        var subject = call
                ? wording.subject(draft.textId(), language, draft.occasion(), draft.occasionZone(), clinic.zone())
                : draft.subject();
        var body = call
                ? wording.body(draft.textId(), language, draft.occasion(), draft.occasionZone(), clinic.zone())
                : draft.body()
                        .replace(
                                MessageTexts.LINK,
                                clinic.baseUrl() + (draft.visit().isPresent() ? "/v/…" : "/"));
        return new Message(
                row.id(),
                draft.child(),
                draft.person(),
                person == null ? "" : person.name(),
                address(call, person),
                draft.channel(),
                draft.language(),
                draft.zone(),
                draft.visit(),
                about(language, draft, kind),
                subject,
                body,
                draft.due(),
                row.state(),
                row.tries(),
                note(language, row),
                draft.urgent(),
                row.version());
    }

    private String about(Language language, Draft draft, @Nullable VisitKind kind) {
        if (kind != null) {
            return kind.name().in(language);
        }
        return draft.about().equals(Planner.STEP) ? words.say(language, "reminder.about.step") : draft.about();
    }

    private static String address(boolean call, @Nullable Account person) {
        if (person == null) {
            return "";
        }
        return call ? person.phone() : person.email();
    }

    private String note(Language language, OutboxRow row) {
        return row.reason().isEmpty() ? row.note() : words.say(language, "reminder.reason." + row.reason());
    }
}
