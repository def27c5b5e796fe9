package org.hearthway.sign.internal;

import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.hearthway.sign.events.ReportRead;
import org.hearthway.sign.events.SignReported;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/** Signs for whoever may see them, and reports: checked, kept once and told in one transaction. */
@Service
class ReportedSigns implements Signs {

    static final int NOTE_LENGTH = 2000;
    private static final Viewer NAMES = new Viewer.Machine("names of who wrote and read a report");

    private final SignKind kind;
    private final SignOff signOff;
    private final ReportStore store;
    private final Plans plans;
    private final Accounts accounts;
    private final Gate gate;
    private final Clock clock;
    private final ApplicationEventPublisher events;
    private final TransactionTemplate transaction;

    ReportedSigns(
            SignKind kind,
            SignOff signOff,
            ReportStore store,
            Plans plans,
            Accounts accounts,
            Gate gate,
            Clock clock,
            ApplicationEventPublisher events,
            PlatformTransactionManager transactions) {
        this.kind = kind;
        this.signOff = signOff;
        this.store = store;
        this.plans = plans;
        this.accounts = accounts;
        this.gate = gate;
        this.clock = clock;
        this.events = events;
        this.transaction = new TransactionTemplate(transactions);
    }

    @Override
    public List<Sign> all() {
        var shown = signOff.shownAmong(kind.all().stream().map(SignKind::item).collect(Collectors.toList()));
        return kind.all().stream()
                .filter(sign -> shown.contains(SignKind.item(sign)))
                .map(this::inTheClinicsWords)
                .collect(Collectors.toList());
    }

    @Override
    public Optional<Sign> find(String id) {
        return kind.find(id).map(this::inTheClinicsWords);
    }

    private Sign inTheClinicsWords(Sign sign) {
        var own = signOff.ownWords(SignKind.item(sign)).get(0);
        return own == null ? sign : new Sign(sign.id(), sign.topic(), sign.urgency(), own, sign.provenance());
    }

    @Override
    @Transactional(readOnly = true)
    public Set<Sign.Topic> topics(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return kind.topics(plans.plans(viewer, child).stream()
                .map(plan -> plan.plan().template().id())
                .toList());
    }

    @Override
    public void report(Viewer viewer, ChildId child, ReportData data) {
        gate.require(viewer, Action.REPORT, child);
        if (!(viewer instanceof Viewer.Person person)) {
            throw new NotAvailable();
        }
        var signs = data.signs().stream()
                .distinct()
                .flatMap(id -> find(id).stream())
                .collect(Collectors.toList());
        var report = new ReportData(data.key(), data.signs(), data.called(), readable(data.note()), data.teamOnly());
        check(report, signs);
        try {
            transaction.executeWithoutResult(t -> {
                // asked again where it is kept: the right may have ended since
                gate.require(viewer, Action.REPORT, child);
                keep(person, child, report, signs);
            });
        } catch (DuplicateKeyException sentTwiceAtOnce) {
            requireSame(child, store.childOf(report.key()));
        }
    }

    /** Line ends and tabs stay; no database takes a null byte. */
    private static String readable(String note) {
        return note.replace("\u0000", "").strip();
    }

    private static void check(ReportData report, List<Sign> found) {
        var problems = new ArrayList<Problem>();
        if (found.size() < new HashSet<>(report.signs()).size()) {
            problems.add(Problem.at("signs", "sign.problem.unknown"));
        }
        if (report.signs().isEmpty() && report.note().isEmpty()) {
            problems.add(Problem.at("note", "sign.problem.empty"));
        }
        if (report.note().length() > NOTE_LENGTH) {
            problems.add(Problem.at(
                    "note", "sign.problem.note", NOTE_LENGTH, report.note().length()));
        }
        Invalid.ifAny(problems);
    }

    private void keep(Viewer.Person person, ChildId child, ReportData report, List<Sign> signs) {
        var before = store.childOf(report.key());
        if (before.isPresent()) {
            requireSame(child, before);
            return;
        }
        var at = clock.instant();
        store.insert(child, report, signs, person.account(), at);
        events.publishEvent(
                new SignReported(child, person, at, report.key(), urgency(signs).map(Enum::name)));
    }

    private static void requireSame(ChildId child, Optional<ChildId> kept) {
        if (!kept.equals(Optional.of(child))) {
            throw new NotAvailable();
        }
    }

    private static Optional<Sign.Urgency> urgency(List<Sign> signs) {
        return signs.stream().map(Sign::urgency).min(Enum::compareTo);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Report> of(Viewer viewer, ChildId child) {
        gate.require(viewer, isStaffAlone(viewer) ? Action.SEE_FOLDER : Action.SEE_FAMILY_PAGES, child);
        var kept =
                store.ofChild(child).stream().filter(one -> isFor(viewer, one)).collect(Collectors.toList());
        var people = accounts.byId(
                NAMES,
                kept.stream()
                        .flatMap(k -> Stream.concat(Stream.of(k.by()), k.read().map(ReportStore.KeptRead::by).stream()))
                        .collect(Collectors.toSet()));
        return kept.stream().map(k -> report(child, k, people)).collect(Collectors.toList());
    }

    /** What one caregiver keeps for the team, no other caregiver sees, be it a colleague of the team besides. */
    private static boolean isFor(Viewer viewer, ReportStore.Kept kept) {
        return !kept.teamOnly()
                || isStaffAlone(viewer)
                || viewer instanceof Viewer.Machine
                || (viewer instanceof Viewer.Person person && person.account().equals(kept.by()));
    }

    /** Whoever runs the clinic's side of the program may see the family's pages, but reads no reports. */
    private static boolean isStaffAlone(Viewer viewer) {
        return viewer instanceof Viewer.Person person && person.isStaff() && !person.is(Role.CAREGIVER);
    }

    private static Report report(ChildId child, ReportStore.Kept kept, Map<AccountId, Account> people) {
        return new Report(
                kept.key(),
                child,
                kept.signs(),
                urgency(kept.signs()),
                kept.called(),
                kept.note(),
                name(people, kept.by()),
                kept.at(),
                kept.read().map(read -> new Read(read.by(), name(people, read.by()), read.at())),
                kept.teamOnly());
    }

    private static String name(Map<AccountId, Account> people, AccountId id) {
        return Optional.ofNullable(people.get(id)).map(Account::name).orElse("");
    }

    @Override
    public void read(Viewer viewer, ChildId child, UUID key) {
        gate.require(viewer, Action.WORK_NEEDS, child);
        if (!(viewer instanceof Viewer.Person person)) {
            throw new NotAvailable();
        }
        requireSame(child, store.childOf(key));
        try {
            transaction.executeWithoutResult(t -> {
                if (!store.isRead(key)) {
                    var at = clock.instant();
                    store.insertRead(key, person.account(), at);
                    events.publishEvent(new ReportRead(child, viewer, at, key));
                }
            });
        } catch (DuplicateKeyException readByAnotherJustNow) {
            // the first to say so stands
            return;
        }
    }
}
