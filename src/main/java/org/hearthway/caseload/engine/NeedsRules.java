package org.hearthway.caseload.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Finds what needs a look, from facts: the same facts on the same day give the same causes in the same order. */
public record NeedsRules(RuleBook book, Office office) {

    /**
     * The causes that stand on a day.
     *
     * @param today the clinic's day; a planned home day counts as silent only once it is over
     */
    public List<Cause> causes(Facts facts, LocalDate today) {
        var causes = new ArrayList<Cause>();
        facts.reports().forEach(report -> causes.add(report(report)));
        facts.pains().stream()
                .filter(p -> p.pain() >= book.figure(Figure.PAIN_FROM))
                .forEach(pain -> causes.add(pain(pain)));
        facts.refill().flatMap(refill -> refill(refill, today)).ifPresent(causes::add);
        facts.unfilledSince().map(this::firstFill).ifPresent(causes::add);
        facts.concerns().stream().map(this::concern).forEach(causes::add);
        facts.devicesBehind().stream().map(this::deviceBehind).forEach(causes::add);
        facts.stimulator().warnings().stream().map(this::warning).forEach(causes::add);
        facts.stimulator().due().stream()
                .flatMap(due -> generator(due, today).stream())
                .forEach(causes::add);
        facts.checks().stream().flatMap(check -> check(check, today).stream()).forEach(causes::add);
        facts.unconfirmed().stream()
                .flatMap(waiting -> secondCheck(waiting, today).stream())
                .forEach(causes::add);
        causes.addAll(missed(facts));
        causes.addAll(ofPaths(facts, today));
        silence(facts, today).ifPresent(causes::add);
        causes.addAll(new HomeRules(book, office, facts.home(), today).causes());
        causes.addAll(late(facts, today));
        causes.sort(Comparator.comparing(Cause::rule).thenComparing(Cause::key));
        return List.copyOf(causes);
    }

    private List<Cause> ofPaths(Facts facts, LocalDate today) {
        var asked = facts.checks().stream()
                .filter(check -> check(check, today).isPresent())
                .map(Facts.Check::kind)
                .collect(Collectors.toSet());
        return facts.paths().stream()
                .flatMap(path -> new PathRules(book.path(), office, path, today).causes(asked).stream())
                .toList();
    }

    private Cause report(Facts.Report report) {
        var within = Optional.ofNullable(book.reportWithin().get(report.urgency()));
        var dueAt = within.map(report.at()::plus);
        var later = book.reportOpenDays().getOrDefault(report.urgency(), 0);
        var dueDay = dueAt.map(office::dayOf).orElseGet(() -> office.workingDay(report.at(), later));
        return new Cause(
                Rule.SIGN,
                "report/" + report.key(),
                dueDay,
                dueAt,
                office.dayOf(report.at()),
                0,
                report.key().toString(),
                Optional.of(report.urgency()));
    }

    private Cause pain(Facts.Pain pain) {
        return new Cause(
                Rule.PAIN,
                "pain/" + pain.key(),
                office.workingDay(pain.at(), openDays(Rule.PAIN)),
                Optional.empty(),
                pain.day(),
                pain.pain(),
                pain.exercise(),
                Optional.empty());
    }

    private Optional<Cause> refill(Facts.Refill refill, LocalDate today) {
        if (refill.booked() || today.plusDays(book.refillDays()).isBefore(refill.by())) {
            return Optional.empty();
        }
        return Optional.of(new Cause(
                Rule.REFILL,
                "refill/" + refill.by(),
                refill.by(),
                Optional.empty(),
                refill.by(),
                0,
                "",
                Optional.empty()));
    }

    /** It is shown from the first day on, because until then no refill can be late. */
    private Cause firstFill(LocalDate since) {
        return new Cause(
                Rule.FIRST_FILL,
                "first-fill/" + since,
                office.openDay(since, openDays(Rule.FIRST_FILL)),
                Optional.empty(),
                since,
                0,
                "",
                Optional.empty());
    }

    private Cause concern(Facts.PumpConcern concern) {
        var what = concern.kind() + "/" + concern.entry();
        return new Cause(
                Rule.PUMP_CONCERN,
                "pump/" + what,
                office.openDay(concern.day(), openDays(Rule.PUMP_CONCERN)),
                Optional.empty(),
                concern.day(),
                0,
                what,
                Optional.empty());
    }

    private Cause deviceBehind(Facts.DeviceBehind behind) {
        return new Cause(
                Rule.DEVICE_BEHIND,
                "device-behind/" + behind.decision(),
                office.openDay(behind.day(), openDays(Rule.DEVICE_BEHIND)),
                Optional.empty(),
                behind.day(),
                0,
                String.valueOf(behind.decision()),
                Optional.empty());
    }

    /** A check that is late is worked with what is due today: a rhythm is counted in months, not in days. */
    private Optional<Cause> check(Facts.Check check, LocalDate today) {
        if (check.booked() || today.plusDays(book.checkDays()).isBefore(check.by())) {
            return Optional.empty();
        }
        return Optional.of(new Cause(
                Rule.CHECK,
                "check/" + check.watched() + "/" + check.by(),
                check.by().isBefore(today) ? today : check.by(),
                Optional.empty(),
                check.by(),
                0,
                check.watched(),
                Optional.empty()));
    }

    private Cause warning(Facts.Warning warning) {
        return new Cause(
                Rule.DEVICE_WARNING,
                "warning/" + warning.key(),
                office.workingDay(warning.at(), openDays(Rule.DEVICE_WARNING)),
                Optional.empty(),
                warning.day(),
                warning.count(),
                warning.what().name(),
                Optional.empty());
    }

    /** What is late is worked with what is due today, as a check is. */
    private Optional<Cause> generator(Facts.GeneratorDue due, LocalDate today) {
        if (due.booked() || today.plusDays(book.generatorDays()).isBefore(due.by())) {
            return Optional.empty();
        }
        return Optional.of(new Cause(
                Rule.GENERATOR,
                "generator/" + due.key() + "/" + due.by(),
                due.by().isBefore(today) ? today : due.by(),
                Optional.empty(),
                due.by(),
                0,
                due.key(),
                Optional.empty()));
    }

    /** It waits as long as the clinic usually takes before anybody is asked to look; a pump is looked at the day after, be it a Sunday. */
    private Optional<Cause> secondCheck(Facts.Unconfirmed waiting, LocalDate today) {
        var due = waiting.what() == Facts.Unconfirmed.What.PUMP
                ? office.dayOf(waiting.at()).plusDays(1)
                : office.workingDay(waiting.at(), openDays(Rule.SECOND_CHECK));
        return today.isBefore(due)
                ? Optional.empty()
                : Optional.of(new Cause(
                        Rule.SECOND_CHECK,
                        "second-check/" + waiting.key(),
                        due,
                        Optional.empty(),
                        office.dayOf(waiting.at()),
                        0,
                        waiting.key(),
                        Optional.empty()));
    }

    /** Of each kind, the visits since the child came last; one more that is missed is a new cause. */
    private List<Cause> missed(Facts facts) {
        var kinds = facts.criticalVisits().stream()
                .collect(Collectors.groupingBy(Facts.CriticalVisit::kind, TreeMap::new, Collectors.toList()));
        return kinds.values().stream()
                .map(visits -> visits.stream()
                        .sorted(Comparator.comparing(Facts.CriticalVisit::over)
                                .reversed()
                                .thenComparing(Facts.CriticalVisit::key))
                        .takeWhile(visit -> !visit.came())
                        .toList())
                .filter(missed -> !missed.isEmpty() && missed.size() >= book.missedInARow())
                .map(this::missed)
                .toList();
    }

    private Cause missed(List<Facts.CriticalVisit> missed) {
        var last = missed.get(0);
        return new Cause(
                Rule.MISSED,
                "missed/" + last.key(),
                office.workingDay(last.over(), openDays(Rule.MISSED)),
                Optional.empty(),
                last.day(),
                missed.size(),
                last.kind(),
                Optional.empty());
    }

    /** The planned days since the last log, today left out; what the team has answered for starts the count anew. */
    private Optional<Cause> silence(Facts facts, LocalDate today) {
        var silentDays = book.figure(Figure.SILENT_DAYS);
        var lastLogged = facts.homeDays().stream()
                .filter(Facts.HomeDay::logged)
                .map(Facts.HomeDay::date)
                .max(Comparator.naturalOrder());
        var silent = facts.homeDays().stream()
                .map(Facts.HomeDay::date)
                .filter(day -> day.isBefore(today))
                .filter(day -> lastLogged.map(day::isAfter).orElse(true))
                .filter(day ->
                        facts.home().answered(Rule.NO_LOG).map(day::isAfter).orElse(true))
                .distinct()
                .sorted()
                .toList();
        if (silent.size() < silentDays) {
            return Optional.empty();
        }
        var tipping = silent.get(silentDays - 1);
        return Optional.of(new Cause(
                Rule.NO_LOG,
                "no-log"
                        + facts.home()
                                .answered(Rule.NO_LOG)
                                .map(day -> "/" + day)
                                .orElse(""),
                office.openDay(tipping.plusDays(1), openDays(Rule.NO_LOG)),
                Optional.empty(),
                silent.get(0),
                silent.size(),
                "",
                Optional.empty()));
    }

    /** Whoever it is handed to next looks afresh: that is another cause. */
    private List<Cause> late(Facts facts, LocalDate today) {
        return facts.tasks().stream()
                .filter(task -> !today.isBefore(flaggedOn(task)))
                .map(task -> new Cause(
                        Rule.TASK,
                        "task/" + task.key()
                                + task.with().map(with -> "/" + with).orElse(""),
                        office.openDay(flaggedOn(task), openDays(Rule.TASK)),
                        Optional.empty(),
                        task.wantedBy(),
                        0,
                        task.key(),
                        Optional.empty()))
                .toList();
    }

    private LocalDate flaggedOn(Facts.OpenTask task) {
        return task.wantedBy().plusDays(task.ofTheFamily() ? book.familyTaskDays() : book.taskDays());
    }

    private int openDays(Rule rule) {
        return book.openDays().getOrDefault(rule, 0);
    }
}
