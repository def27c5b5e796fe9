package org.hearthway.reminder.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.access.Account;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.reminder.Beginning;
import org.hearthway.reminder.Outbox.Channel;
import org.hearthway.reminder.engine.Occasion;
import org.hearthway.reminder.engine.Planned;
import org.hearthway.reminder.engine.Rule;
import org.hearthway.reminder.engine.Standing;
import org.hearthway.reminder.engine.Way;
import org.hearthway.reminder.internal.RuleBook.DayRule;
import org.hearthway.reminder.internal.RuleBook.RefillRule;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;
import org.hearthway.task.Tasks;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visit.State;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** Says which reminders there should be for a visit or a refill, for every caregiver, as things stand. */
@Component
class Planner {

    /** What should be there. */
    record Wanted(String cause, List<Draft> all, List<Draft> ahead) {}

    /** What a reminder of a step is about, in the outbox; said to the desk alone. */
    static final String STEP = "step";

    private static final int PAST_VISITS = 20;

    private final RuleBook rules;
    private final SendingRules sending;
    private final Wording wording;
    private final Family family;
    private final Visits visits;
    private final Pumps pumps;
    private final Tasks tasks;
    private final DueDays dueDays;
    private final ClinicSettings clinic;
    private final Clock clock;
    private final Instant beginning;

    Planner(
            RuleBook rules,
            SendingRules sending,
            Wording wording,
            Family family,
            Visits visits,
            Pumps pumps,
            Tasks tasks,
            DueDays dueDays,
            ClinicSettings clinic,
            Clock clock,
            ObjectProvider<Beginning> beginning) {
        this.rules = rules;
        this.sending = sending;
        this.wording = wording;
        this.family = family;
        this.visits = visits;
        this.pumps = pumps;
        this.tasks = tasks;
        this.dueDays = dueDays;
        this.clinic = clinic;
        this.clock = clock;
        this.beginning = beginning.stream().map(Beginning::at).findFirst().orElse(Instant.MIN);
    }

    Wanted forVisit(Visit visit) {
        var cause = "visit:" + visit.id();
        var rule = rules.forVisits(visit.kind().critical());
        if (visit.state() != State.BOOKED || rule.isEmpty()) {
            return new Wanted(cause, List.of(), List.of());
        }
        var occasion = new Occasion.Appointment(visit.start(), visit.zone());
        var standing = switch (visit.answer()) {
            case NONE -> Standing.OPEN;
            case CONFIRMED -> Standing.CONFIRMED;
            case ASKED_TO_MOVE -> Standing.ASKED_TO_MOVE;
        };
        var matter = new Matter(
                cause,
                cause + "|" + visit.sequence(),
                visit.child(),
                Optional.of(visit.id()),
                visit.kind().id(),
                occasion,
                visit.zone());
        return wanted(cause, matter, rule.get(), standing);
    }

    Wanted forRefill(ChildId child) {
        var cause = "refill:" + child;
        var due = pumps.refill(Family.MACHINE, child).flatMap(Refill::window);
        var all = new ArrayList<Draft>();
        var ahead = new ArrayList<Draft>();
        for (var refill : due.isPresent() ? rules.forRefills() : List.<RefillRule>of()) {
            var by = due.get();
            var booked = inTime(child, refill.visitKind(), by);
            var occasion = new Occasion.Deadline(by.day(), refill.at());
            var matter = new Matter(
                    cause,
                    cause + "|" + by.day(),
                    child,
                    booked.map(Visit::id),
                    refill.visitKind(),
                    occasion,
                    clinic.zone());
            var wanted = wanted(cause, matter, refill.rule(), standing(booked));
            all.addAll(wanted.all());
            ahead.addAll(wanted.ahead());
        }
        return new Wanted(cause, all, ahead);
    }

    /** One mail to a person for a day, however many tasks are wanted by it. */
    Wanted forTasks(ChildId child) {
        var cause = "tasks:" + child;
        var today = LocalDate.ofInstant(clock.instant(), clinic.zone());
        var open = tasks.of(Family.MACHINE, child).stream()
                .filter(task -> task.to().isOfTheFamily() && task.isOpenOn(today))
                .toList();
        var people = open.isEmpty() ? List.<Account>of() : family.of(child);
        var all = new ArrayList<Draft>();
        var ahead = new ArrayList<Draft>();
        for (var person : people) {
            for (var day : days(open, person.id())) {
                for (var task : rules.forTasks()) {
                    var occasion = new Occasion.Deadline(day, task.at());
                    var matter =
                            new Matter(cause, cause + "|" + day, child, Optional.empty(), "", occasion, clinic.zone());
                    all.addAll(drafts(List.of(person), matter, task.rule(), Standing.OPEN, Instant.MIN));
                    ahead.addAll(drafts(List.of(person), matter, task.rule(), Standing.OPEN, ahead()));
                }
            }
        }
        return new Wanted(cause, all, ahead);
    }

    private static List<LocalDate> days(List<Task> open, AccountId person) {
        return open.stream()
                .filter(task ->
                        task.to() instanceof Assignee.Family || task.to().equals(new Assignee.Caregiver(person)))
                .map(Task::wantedBy)
                .distinct()
                .sorted()
                .toList();
    }

    /** Looks at home: one mail for a day, however many things are looked at on it. */
    Wanted forHomeChecks(ChildId child) {
        return forDays(child, "home-check:" + child, "", rules.forHomeChecks(), dueDays.atHome(child));
    }

    /** Steps of taper calendars: one mail for a day, however many doses change on it. */
    Wanted forSteps(ChildId child) {
        return forDays(child, "steps:" + child, STEP, rules.forSteps(), dueDays.steps(child));
    }

    private Wanted forDays(ChildId child, String cause, String about, Optional<DayRule> rule, Set<LocalDate> days) {
        return forDays(
                cause,
                rule.stream()
                        .flatMap(each -> days.stream()
                                .map(day -> wanted(
                                        cause,
                                        new Matter(
                                                cause,
                                                cause + "|" + day,
                                                child,
                                                Optional.empty(),
                                                about,
                                                new Occasion.Deadline(day, each.at()),
                                                clinic.zone()),
                                        each.rule(),
                                        Standing.OPEN,
                                        ahead())))
                        .toList());
    }

    /** Checks of hips and spine; a visit that is booked for one has mails of its own. */
    Wanted forChecks(ChildId child) {
        var cause = "check:" + child;
        var checks = rules.forChecks().isPresent() ? dueDays.checks(child) : List.<DueDays.Check>of();
        return forDays(
                cause,
                checks.stream()
                        .map(check -> {
                            var rule = rules.forChecks().orElseThrow();
                            var booked = visits.upcoming(Family.MACHINE, child).stream()
                                    .filter(visit -> visit.kind().id().equals(check.visitKind()))
                                    .findFirst();
                            var matter = new Matter(
                                    cause,
                                    cause + "|" + check.visitKind() + "|" + check.by(),
                                    child,
                                    booked.map(Visit::id),
                                    check.visitKind(),
                                    new Occasion.Deadline(check.by(), rule.at()),
                                    clinic.zone());
                            return wanted(cause, matter, rule.rule(), standing(booked));
                        })
                        .toList());
    }

    private static Wanted forDays(String cause, List<Wanted> each) {
        return new Wanted(
                cause,
                each.stream().flatMap(one -> one.all().stream()).toList(),
                each.stream().flatMap(one -> one.ahead().stream()).toList());
    }

    private static Standing standing(Optional<Visit> booked) {
        return booked.map(visit -> visit.state() == State.ATTENDED || visit.answer() == Visit.Answer.CONFIRMED
                        ? Standing.CONFIRMED
                        : Standing.BOOKED)
                .orElse(Standing.OPEN);
    }

    /** A visit that meets the deadline: after the last fill, on or before the last day; the surest of several. */
    private Optional<Visit> inTime(ChildId child, String kind, RefillWindow by) {
        return Stream.concat(
                        visits.upcoming(Family.MACHINE, child).stream(),
                        visits.past(Family.MACHINE, child, PAST_VISITS).stream())
                .filter(visit -> visit.kind().id().equals(kind)
                        && visit.state() != State.NOT_ATTENDED
                        && by.isKeptOn(visit.start().toLocalDate()))
                .max(java.util.Comparator.comparing(visit -> standing(Optional.of(visit))));
    }

    /** What all reminders of one occasion share. */
    private record Matter(
            String cause,
            String key,
            ChildId child,
            Optional<VisitId> visit,
            String about,
            Occasion occasion,
            ZoneId zone) {}

    /** What is only told by mail is not told for a time before the program wrote to anybody. */
    private Instant ahead() {
        var now = clock.instant();
        return now.isBefore(beginning) ? beginning : now;
    }

    private Wanted wanted(String cause, Matter matter, Rule rule, Standing standing) {
        return wanted(cause, matter, rule, standing, clock.instant());
    }

    private Wanted wanted(String cause, Matter matter, Rule rule, Standing standing, Instant from) {
        var people = family.of(matter.child());
        return new Wanted(
                cause,
                drafts(people, matter, rule, standing, Instant.MIN),
                drafts(people, matter, rule, standing, from));
    }

    private List<Draft> drafts(List<Account> people, Matter matter, Rule rule, Standing standing, Instant now) {
        return people.stream()
                .flatMap(person -> sending.plan().of(rule, matter.occasion(), standing, person.zone(), now).stream()
                        .map(planned -> draft(matter, rule, person, planned)))
                .toList();
    }

    private Draft draft(Matter matter, Rule rule, Account person, Planned planned) {
        var channel = planned.way() == Way.SEND ? Channel.MAIL : Channel.CALL;
        var wall = matter.occasion().on(matter.zone());
        var until = planned.usefulUntil().equals(Instant.MAX) || channel == Channel.CALL
                ? Optional.<Instant>empty()
                : Optional.of(planned.usefulUntil());
        return new Draft(
                String.join(
                        "|",
                        rule.id() + "/" + planned.step(),
                        matter.key(),
                        person.id().toString(),
                        channel.name(),
                        planned.meant().toString()),
                matter.cause(),
                matter.child(),
                person.id(),
                matter.visit(),
                channel,
                person.language(),
                person.zone(),
                matter.about(),
                planned.text(),
                wall,
                matter.zone(),
                planned.urgent(),
                wording.subject(planned.text(), person.language(), wall, matter.zone(), person.zone()),
                wording.body(planned.text(), person.language(), wall, matter.zone(), person.zone()),
                planned.due(),
                until);
    }
}
