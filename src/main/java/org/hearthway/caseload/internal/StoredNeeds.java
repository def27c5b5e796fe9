package org.hearthway.caseload.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
import org.hearthway.caseload.engine.Escalation;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.caseload.engine.RuleBook;
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
    private final Escalations escalations;
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
            Escalations escalations,
            ClinicSettings settings,
            Clock clock,
            NeedSteps steps) {
        this.items = items;
        this.content = content;
        this.gate = gate;
        this.accounts = accounts;
        this.signs = signs;
        this.standings = standings;
        this.escalations = escalations;
        this.settings = settings;
        this.clock = clock;
        this.steps = steps;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Item> open(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        return told(viewer, items.open()).stream()
                .sorted(Comparator.comparing(StoredNeeds::waits)
                        .thenComparing(StoredNeeds::cannotWait)
                        .reversed()
                        .thenComparing(item -> item.cause().dueDay())
                        .thenComparing(item -> item.cause().rule())
                        .thenComparing(Item::since)
                        .thenComparing(Item::id))
                .toList();
    }

    private static boolean waits(Item item) {
        return item.handed().filter(Handed::waits).isPresent();
    }

    private static boolean cannotWait(Item item) {
        return item.handed().isPresent();
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
                .filter(row -> isShown(row, status.getOrDefault(row.child(), Status.ACTIVE)))
                .filter(row -> gate.allows(viewer, Action.SEE_FOLDER, row.child()))
                .toList();
        var ways = ways(rows);
        var named = new HashSet<>(NeedItems.people(rows));
        ways.values().stream().flatMap(way -> way.all().stream()).forEach(turn -> named.add(turn.person()));
        var people = accounts.byId(viewer, named);
        return rows.stream()
                .map(row -> item(row, Optional.ofNullable(ways.get(row.id())), people))
                .toList();
    }

    /** A task, a check of hips or spine, or what a path asks for rests while nothing is asked of the family, and stands here again afterwards. */
    private static boolean isShown(NeedItems.Row row, Status status) {
        return switch (row.cause().rule()) {
            case TASK, CHECK, STAGE_WAITS, STAGE_NO_DAY, STAGE_LATE, STAGE_VISIT -> status.asksTheFamily();
            case SIGN,
                    PAIN,
                    MISSED,
                    REFILL,
                    FIRST_FILL,
                    PUMP_CONCERN,
                    DEVICE_BEHIND,
                    DEVICE_WARNING,
                    GENERATOR,
                    SECOND_CHECK,
                    PAIN_RISING,
                    PAIN_OFTEN,
                    STOPPED,
                    TOO_HARD,
                    NO_LOG,
                    FEW_DONE,
                    MORE,
                    CARE_TURN -> status.isWatched();
        };
    }

    /** The turns of an item so far, and the one to come. */
    private record Way(boolean waits, List<Escalation.Turn> told, Optional<Escalation.Turn> next) {

        List<Escalation.Turn> all() {
            return Stream.concat(told.stream(), next.stream()).toList();
        }

        Handed with(Map<AccountId, Account> people) {
            return new Handed(
                    told.stream().map(turn -> turn(turn, people)).toList(),
                    next.map(turn -> turn(turn, people)),
                    waits,
                    Escalation.startedOver(told));
        }

        private static Turn turn(Escalation.Turn turn, Map<AccountId, Account> people) {
            return new Turn(person(turn.person(), people), turn.from());
        }
    }

    private Map<UUID, Way> ways(List<NeedItems.Row> rows) {
        var urgent = rows.stream().filter(NeedItems.Row::cannotWait).toList();
        if (urgent.isEmpty()) {
            return Map.of();
        }
        var order = escalations.order();
        var turns = escalations.told(urgent);
        return urgent.stream().collect(Collectors.toMap(NeedItems.Row::id, row -> {
            var told = turns.getOrDefault(row.id(), List.of());
            var next = row.waitsForAnybody() ? order.next(told, row.since()) : Optional.<Escalation.Turn>empty();
            return new Way(row.waitsForAnybody(), told, next);
        }));
    }

    private Item item(NeedItems.Row row, Optional<Way> way, Map<AccountId, Account> people) {
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
                way.map(known -> known.with(people)),
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
        looked(viewer, workable(viewer, item, seen));
    }

    /** Reading a report marks its item by the event; a report that was read before tells no event. */
    private NeedItems.Row looked(Viewer viewer, NeedItems.Row row) {
        if (row.cause().rule() == Rule.SIGN) {
            signs.read(viewer, row.child(), UUID.fromString(row.cause().subject()));
        }
        var now = items.find(row.id()).orElseThrow(NotAvailable::new);
        if (now.seenBy().isEmpty()) {
            steps.seen(viewer, account(viewer), now);
        }
        return items.find(row.id()).orElseThrow(NotAvailable::new);
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
            throw new Invalid(
                    Problem.at("", "caseload.close.cause-stands." + row.cause().rule()));
        }
        var says = words.strip();
        wordsProblem("words", says).ifPresent(problem -> {
            throw new Invalid(problem);
        });
        // whoever closes it has looked, so the family is told that its report was read
        var looked = looked(viewer, row);
        items.close(looked, account(viewer), clock.instant(), outcome, says, looked.version());
        steps.worked(viewer, looked, "CLOSED", null, says);
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
