package org.hearthway.caseload.internal;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Facts;
import org.hearthway.caseload.engine.Figure;
import org.hearthway.caseload.engine.Office;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.caseload.engine.RuleBook;
import org.hearthway.caseload.engine.Urgency;
import org.hearthway.program.CareTurns;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.program.Progress;
import org.hearthway.program.engine.trend.Trends;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;
import org.hearthway.task.Tasks;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.springframework.stereotype.Component;

/** Gathers what the features know about a child into the facts that the rules read. */
@Component
class ChildFacts {

    /** How far back a report or a pain is looked for; older ones have long had their item. */
    private static final int LATELY_DAYS = 30;

    /** How far back home days are read; a longer silence counts as one of this length. */
    private static final int HOME_DAYS = 60;

    /** How long a turn of a rule of care is told. */
    private static final int TURNED_DAYS = 14;

    /** How many past visits are read; a longer run of missed ones counts as one of this length. */
    private static final int PAST_VISITS = 40;

    private final Signs signs;
    private final HomeWeek homeWeek;
    private final Progress progress;
    private final Programs programs;
    private final CareTurns careTurns;
    private final Pumps pumps;
    private final Visits visits;
    private final Tasks tasks;
    private final Surveillance surveillance;
    private final DosesInDoubt doses;
    private final PathFacts paths;
    private final StimulatorFacts stimulators;
    private final NeedsContent content;

    ChildFacts(
            Signs signs,
            HomeWeek homeWeek,
            Progress progress,
            Programs programs,
            CareTurns careTurns,
            Pumps pumps,
            Visits visits,
            Tasks tasks,
            Surveillance surveillance,
            DosesInDoubt doses,
            PathFacts paths,
            StimulatorFacts stimulators,
            NeedsContent content) {
        this.signs = signs;
        this.homeWeek = homeWeek;
        this.progress = progress;
        this.programs = programs;
        this.careTurns = careTurns;
        this.pumps = pumps;
        this.visits = visits;
        this.tasks = tasks;
        this.surveillance = surveillance;
        this.doses = doses;
        this.paths = paths;
        this.stimulators = stimulators;
        this.content = content;
    }

    Facts of(
            Viewer viewer,
            ChildId child,
            LocalDate today,
            Office office,
            RuleBook book,
            Map<Rule, LocalDate> answered) {
        var lately = today.minusDays(LATELY_DAYS);
        var reports = signs.of(viewer, child).stream()
                .filter(report -> !office.dayOf(report.at()).isBefore(lately))
                .map(report -> new Facts.Report(
                        report.key(),
                        urgency(report.urgency()),
                        report.at(),
                        report.read().map(read -> new Facts.Read(read.account(), read.at()))))
                .toList();
        var entries = homeWeek.entries(viewer, child, lately, today);
        var pains = entries.stream()
                .flatMap(logged -> logged.entry().pain().stream()
                        .map(pain -> new Facts.Pain(
                                logged.entry().key(),
                                logged.entry().exercise(),
                                logged.entry().day(),
                                pain,
                                logged.at())))
                .toList();
        var homeDays = homeDays(viewer, child, today, lastDay(entries));
        return new Facts(
                reports,
                pains,
                homeDays,
                refill(viewer, child),
                criticalVisits(viewer, child),
                openTasks(viewer, child, today),
                checks(viewer, child, today),
                doses.of(viewer, child),
                paths.of(viewer, child, today),
                pumps.concerns(viewer, child).stream()
                        .map(concern -> new Facts.PumpConcern(concern.kind().name(), concern.entry(), concern.day()))
                        .toList(),
                pumps.unfilledSince(viewer, child),
                paths.devicesBehind(viewer, child),
                stimulators.of(viewer, child, today),
                new Facts.OfHome(
                        logs(viewer, child, today, book),
                        more(viewer, child),
                        turns(viewer, child, today, office),
                        answered));
    }

    /** Of the last two weeks; whoever saved the program since has looked at it. */
    private List<Facts.CareTurn> turns(Viewer viewer, ChildId child, LocalDate today, Office office) {
        var saved = programs.latest(viewer, child).map(version -> office.dayOf(version.at()));
        var byDay = new TreeMap<LocalDate, Map<Boolean, List<String>>>();
        careTurns.between(viewer, child, today.minusDays(TURNED_DAYS), today).stream()
                .filter(CareTurns.Turn::inProgram)
                .filter(turn -> saved.filter(day -> day.isBefore(turn.day())).isPresent())
                .forEach(turn -> byDay.computeIfAbsent(turn.day(), day -> new TreeMap<>())
                        .computeIfAbsent(turn.forbids(), forbids -> new ArrayList<>())
                        .add(turn.exercise()));
        return byDay.entrySet().stream()
                .flatMap(day -> day.getValue().entrySet().stream()
                        .map(way -> new Facts.CareTurn(day.getKey(), way.getKey(), way.getValue())))
                .toList();
    }

    private List<Facts.MoreProposed> more(Viewer viewer, ChildId child) {
        return progress.proposed(viewer, child).stream()
                .map(one -> new Facts.MoreProposed(one.now().exercise(), one.version(), one.days()))
                .toList();
    }

    /** As far back as any rule looks; whole weeks are counted from the Monday before this one. */
    private List<Trends.Log> logs(Viewer viewer, ChildId child, LocalDate today, RuleBook book) {
        var weeks = Math.max(book.figure(Figure.RISING_WEEKS), book.figure(Figure.DONE_WEEKS) + 1);
        return progress.logs(viewer, child, today.minusWeeks(weeks), today);
    }

    private static Optional<LocalDate> lastDay(List<HomeWeek.Logged> entries) {
        return entries.stream().map(logged -> logged.entry().day()).max(Comparator.naturalOrder());
    }

    /**
     * The planned days that can still matter. Days before the last logged one say nothing about silence, so they are
     * read only where the last entry was for something that was not planned.
     */
    private List<Facts.HomeDay> homeDays(Viewer viewer, ChildId child, LocalDate today, Optional<LocalDate> lastEntry) {
        var since = lastEntry.map(last -> homeDays(viewer, child, last, today)).orElse(List.of());
        return since.stream().anyMatch(Facts.HomeDay::logged)
                ? since
                : homeDays(viewer, child, today.minusDays(HOME_DAYS), today);
    }

    private List<Facts.HomeDay> homeDays(Viewer viewer, ChildId child, LocalDate first, LocalDate last) {
        return homeWeek.days(viewer, child, first, (int) ChronoUnit.DAYS.between(first, last) + 1).stream()
                .filter(day -> !day.planned().isEmpty())
                .map(day -> new Facts.HomeDay(
                        day.date(),
                        day.planned().stream()
                                .anyMatch(planned -> planned.logged().isPresent())))
                .toList();
    }

    private Optional<Facts.Refill> refill(Viewer viewer, ChildId child) {
        return pumps.refill(viewer, child)
                .flatMap(Refill::window)
                .map(window -> new Facts.Refill(
                        window.day(),
                        visits.upcoming(viewer, child).stream()
                                .anyMatch(visit -> visit.kind().id().equals(content.refillKind())
                                        && window.isKeptOn(visit.start().toLocalDate()))));
    }

    /** A late check is kept by a visit that is booked from today on within the same time. */
    private List<Facts.Check> checks(Viewer viewer, ChildId child, LocalDate today) {
        var coming = visits.upcoming(viewer, child);
        return surveillance.outlook(viewer, child).stream()
                .flatMap(outlook -> outlook.next().stream().map(due -> {
                    var by = due.by();
                    var last = (by.isBefore(today) ? today : by).plusDays(content.checkLateDays());
                    return new Facts.Check(
                            outlook.matter().watched().name(),
                            outlook.matter().visitKind(),
                            by,
                            coming.stream()
                                    .anyMatch(visit -> visit.kind()
                                                    .id()
                                                    .equals(outlook.matter().visitKind())
                                            && !visit.start().toLocalDate().isAfter(last)));
                }))
                .toList();
    }

    private List<Facts.CriticalVisit> criticalVisits(Viewer viewer, ChildId child) {
        return visits.past(viewer, child, PAST_VISITS).stream()
                .filter(visit -> visit.kind().critical())
                .filter(visit -> visit.state() == Visit.State.ATTENDED || visit.state() == Visit.State.NOT_ATTENDED)
                .map(visit -> new Facts.CriticalVisit(
                        visit.id().toString(),
                        visit.kind().id(),
                        visit.start().toLocalDate(),
                        visit.endsAt(),
                        visit.state() == Visit.State.ATTENDED))
                .toList();
    }

    private List<Facts.OpenTask> openTasks(Viewer viewer, ChildId child, LocalDate today) {
        return tasks.of(viewer, child).stream()
                .filter(task -> task.isOpenOn(today))
                .map(task -> new Facts.OpenTask(
                        task.id().toString(), task.wantedBy(), task.to().isOfTheFamily(), with(task)))
                .toList();
    }

    /** A family cannot own an item of the team: whoever asked it looks whether it needs help. */
    private static Optional<AccountId> with(Task task) {
        if (task.to() instanceof Assignee.Person person) {
            return Optional.of(person.account());
        }
        return task.to().isOfTheFamily() ? Optional.of(task.givenBy()) : Optional.empty();
    }

    private static Urgency urgency(Optional<Sign.Urgency> urgency) {
        return urgency.map(known -> switch (known) {
                    case NOW -> Urgency.NOW;
                    case URGENT -> Urgency.URGENT;
                    case HOURS -> Urgency.HOURS;
                })
                .orElse(Urgency.NOTE);
    }
}
