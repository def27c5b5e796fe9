package org.hearthway.caseload.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.caseload.engine.RuleBook;
import org.hearthway.caseload.engine.Urgency;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.sign.Signs;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The list as it is stored. */
@Service
@Transactional
class StoredNeeds implements Needs {

    private static final int WORDS_MIN = 3;
    private static final int WORDS_MAX = 500;

    private final NeedItems items;
    private final NeedsContent content;
    private final Gate gate;
    private final Accounts accounts;
    private final Signs signs;
    private final Standings standings;
    private final ClinicSettings settings;
    private final Clock clock;
    private final NeedSteps steps;

    StoredNeeds(
            NeedItems items,
            NeedsContent content,
            Gate gate,
            Accounts accounts,
            Signs signs,
            Standings standings,
            ClinicSettings settings,
            Clock clock,
            NeedSteps steps) {
        this.items = items;
        this.content = content;
        this.gate = gate;
        this.accounts = accounts;
        this.signs = signs;
        this.standings = standings;
        this.settings = settings;
        this.clock = clock;
        this.steps = steps;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Item> open(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        return told(viewer, items.open()).stream()
                .sorted(Comparator.comparing(StoredNeeds::cannotWait)
                        .reversed()
                        .thenComparing(item -> item.cause().dueDay())
                        .thenComparing(item -> item.cause().rule())
                        .thenComparing(Item::since)
                        .thenComparing(Item::id))
                .toList();
    }

    private static boolean cannotWait(Item item) {
        return item.cause()
                .urgency()
                .filter(urgency -> urgency == Urgency.NOW || urgency == Urgency.URGENT)
                .isPresent();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Item> left(Viewer viewer, Instant since) {
        gate.require(viewer, Action.LIST_CHILDREN);
        return told(viewer, items.leftSince(since));
    }

    private List<Item> told(Viewer viewer, List<NeedItems.Row> all) {
        var status = standings.notActive(viewer);
        var rows = all.stream()
                .filter(row -> status.getOrDefault(row.child(), Status.ACTIVE).isWatched())
                .filter(row -> gate.allows(viewer, Action.SEE_FOLDER, row.child()))
                .toList();
        var people = accounts.byId(viewer, NeedItems.people(rows));
        return rows.stream().map(row -> item(row, people)).toList();
    }

    private Item item(NeedItems.Row row, Map<AccountId, Account> people) {
        var left = row.leftAt()
                .map(at -> new Left(
                        at, row.leftBy().map(by -> person(by, people)), row.outcome(), row.leftWords(), row.gone()));
        return new Item(
                row.id(),
                row.child(),
                row.cause(),
                row.since(),
                row.owner().map(by -> person(by, people)),
                row.seenBy().flatMap(by -> row.seenAt().map(at -> new Stamp(person(by, people), at))),
                row.asideUntil()
                        .filter(until -> until.isAfter(today()))
                        .map(until -> new Aside(until, row.asideReason())),
                left,
                row.version());
    }

    private static Person person(AccountId id, Map<AccountId, Account> people) {
        var account = people.get(id);
        return new Person(id, account == null ? "" : account.name());
    }

    @Override
    public RuleBook.Conduct conduct(Item item) {
        return content.book().conduct(item.cause().rule());
    }

    @Override
    public void take(Viewer viewer, UUID item, long seen) {
        var row = workable(viewer, item, seen);
        items.own(row, account(viewer), seen);
        steps.worked(viewer, row, "TAKEN", null, "");
    }

    @Override
    public void see(Viewer viewer, UUID item, long seen) {
        var row = workable(viewer, item, seen);
        if (row.cause().rule() == Rule.SIGN) {
            signs.read(viewer, row.child(), UUID.fromString(row.cause().subject()));
        }
        // reading a report marks its item by the event; a report that was read before tells no event
        var now = items.find(item).orElseThrow(NotAvailable::new);
        if (now.seenBy().isEmpty()) {
            steps.seen(viewer, account(viewer), now);
        }
    }

    @Override
    public void setAside(Viewer viewer, UUID item, LocalDate until, String reason, long seen) {
        var row = workable(viewer, item, seen);
        var says = reason.strip();
        var problems = new java.util.ArrayList<Problem>();
        asideProblem(row, until).ifPresent(problems::add);
        wordsProblem("reason", says).ifPresent(problems::add);
        Invalid.ifAny(problems);
        items.aside(row, until, says, seen);
        steps.worked(viewer, row, "SET_ASIDE", until, says);
    }

    private Optional<Problem> asideProblem(NeedItems.Row row, LocalDate until) {
        var days = content.book().conduct(row.cause().rule()).asideDays();
        if (days == 0) {
            return Optional.of(Problem.at("", "caseload.aside.never"));
        }
        var last = today().plusDays(days);
        if (row.cause().rule() == Rule.REFILL && row.cause().day().isBefore(last)) {
            last = row.cause().day();
        }
        if (!last.isAfter(today())) {
            return Optional.of(Problem.at("", "caseload.aside.too-late"));
        }
        return until.isAfter(today()) && !until.isAfter(last)
                ? Optional.empty()
                : Optional.of(Problem.at("until", "caseload.aside.bounds", today().plusDays(1), last));
    }

    @Override
    public void resume(Viewer viewer, UUID item, long seen) {
        var row = workable(viewer, item, seen);
        items.aside(row, null, "", seen);
        steps.worked(viewer, row, "RESUMED", null, "");
    }

    @Override
    public void close(Viewer viewer, UUID item, Outcome outcome, String words, long seen) {
        var row = workable(viewer, item, seen);
        if (!content.book().conduct(row.cause().rule()).outcomeCloses()) {
            throw new Invalid(Problem.at("", "caseload.close.cause-stands"));
        }
        var says = words.strip();
        wordsProblem("words", says).ifPresent(problem -> {
            throw new Invalid(problem);
        });
        items.close(row, account(viewer), clock.instant(), outcome, says, seen);
        steps.worked(viewer, row, "CLOSED", null, says);
    }

    private static Optional<Problem> wordsProblem(String field, String words) {
        return words.length() >= WORDS_MIN && words.length() <= WORDS_MAX
                ? Optional.empty()
                : Optional.of(Problem.at(field, "caseload.words.bounds", WORDS_MIN, WORDS_MAX, words.length()));
    }

    private NeedItems.Row workable(Viewer viewer, UUID item, long seen) {
        var row = items.find(item);
        if (row.isEmpty()) {
            throw new NotAvailable();
        }
        gate.require(viewer, Action.WORK_NEEDS, row.get().child());
        if (row.get().leftAt().isPresent() || row.get().version() != seen) {
            throw new Overtaken();
        }
        return row.get();
    }

    private static AccountId account(Viewer viewer) {
        if (viewer instanceof Viewer.Person person) {
            return person.account();
        }
        throw new NotAvailable();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }
}
