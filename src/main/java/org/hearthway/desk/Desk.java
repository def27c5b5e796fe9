package org.hearthway.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.equipment.Fittings;
import org.hearthway.equipment.Fittings.Fitting;
import org.hearthway.path.Plans;
import org.hearthway.pump.Pumps;
import org.hearthway.reminder.Outbox;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.surveillance.engine.Due;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the desk shows out of the features: messages, visits, plans, pumps, casts and equipment. */
@Service
public class Desk {

    /** Visits further ahead ask for nothing yet. */
    private static final int LOOK_AHEAD_DAYS = 400;

    /** So long it is still asked whether a child came. */
    private static final int LOOK_BACK_DAYS = 14;

    private static final int PAST_VISITS = 50;

    private final Outbox outbox;
    private final Visits visits;
    private final Plans plans;
    private final Pumps pumps;
    private final Surveillance surveillance;
    private final Fittings fittings;
    private final Stimulators stimulators;
    private final ChildRegister children;
    private final Standings standings;
    private final Gate gate;
    private final DeskContent content;
    private final ClinicSettings settings;
    private final ClinicCalendar calendar;
    private final Clock clock;

    Desk(
            Outbox outbox,
            Visits visits,
            Plans plans,
            Pumps pumps,
            Surveillance surveillance,
            Fittings fittings,
            Stimulators stimulators,
            ChildRegister children,
            Standings standings,
            Gate gate,
            DeskContent content,
            ClinicSettings settings,
            ClinicCalendar calendar,
            Clock clock) {
        this.outbox = outbox;
        this.visits = visits;
        this.plans = plans;
        this.pumps = pumps;
        this.surveillance = surveillance;
        this.fittings = fittings;
        this.stimulators = stimulators;
        this.children = children;
        this.standings = standings;
        this.gate = gate;
        this.content = content;
        this.settings = settings;
        this.calendar = calendar;
        this.clock = clock;
    }

    /**
     * The desk as it stands now.
     *
     * @throws org.hearthway.base.NotAvailable unless the viewer may see the clinic's children
     */
    @Transactional(readOnly = true)
    public Board board(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var now = clock.instant();
        var today = LocalDate.ofInstant(now, settings.zone());
        var notActive = standings.notActive(viewer);
        var gone = notActive.entrySet().stream()
                .filter(known -> !known.getValue().isWatched())
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        var booked = visits.between(viewer, today.minusDays(LOOK_BACK_DAYS), today.plusDays(LOOK_AHEAD_DAYS)).stream()
                .filter(visit -> !gone.contains(visit.child()))
                .collect(Collectors.toList());
        var gaps = new Gaps(today, content.aheadDays(), content.refillKind());
        var refills = pumps.refills(viewer);
        var checks = surveillance.all(viewer);
        var fit = fittings.all(viewer);
        var generators = stimulators.due(viewer);
        var ofGenerators = new GeneratorGaps(content.generators(), today);
        var all = plans.all(viewer);
        var open = new ArrayList<Composer.Gap>();
        for (var child : children.all(viewer)) {
            if (gone.contains(child.id())) {
                continue;
            }
            var onPaths = all.getOrDefault(child.id(), List.of());
            var refill = Optional.ofNullable(refills.get(child.id()));
            var asks = notActive.getOrDefault(child.id(), Status.ACTIVE).asksTheFamily();
            var known = ofChild(viewer, child.id(), booked);
            var due = asks
                    ? Stream.of(
                                    due(checks.getOrDefault(child.id(), List.of()), today),
                                    fit.getOrDefault(child.id(), List.of()).stream()
                                            .map(this::fitting),
                                    ofGenerators.of(generators.getOrDefault(child.id(), List.of()), known))
                            .flatMap(asked -> asked)
                            .toList()
                    : List.<Gaps.Check>of();
            gaps.of(child.id(), onPaths, refill, due, known).forEach(open::add);
        }
        var whole = new Composer(now, content.soonDays(), content.outDays())
                .compose(
                        outbox.board(viewer),
                        booked,
                        open,
                        visits.disputed(viewer).keySet(),
                        booked.stream()
                                .filter(visit -> !calendar.isOpen(visit.start().toLocalDate()))
                                .map(Visit::id)
                                .collect(Collectors.toSet()));
        return new Board(
                whole.rows().stream().filter(row -> tellsTheTruth(viewer, row)).toList());
    }

    /** The next check of each; one that long should have been recorded asks for a record before it asks for a visit. */
    private Stream<Gaps.Check> due(List<Surveillance.Outlook> outlooks, LocalDate today) {
        return outlooks.stream()
                .flatMap(outlook -> outlook.next().stream()
                        .map(Due::by)
                        .filter(by -> outlook.last().isPresent() || !by.isBefore(today))
                        .map(by -> new Gaps.Check(
                                Gaps.CHECK + outlook.matter().watched(),
                                outlook.matter().visitKind(),
                                by,
                                content.checkWindowDays())));
    }

    /** A visit that took place answers for it, so that nothing is asked for while its record is written. */
    private Gaps.Check fitting(Fitting fitting) {
        var rules = content.fittings();
        return switch (fitting.reason()) {
            case CAST ->
                new Gaps.Check(
                        "cast/" + fitting.thing(),
                        rules.castKind(),
                        fitting.day(),
                        rules.castWindowDays(),
                        Optional.of(fitting.day().minusDays(rules.castWindowDays())));
            case MEND ->
                new Gaps.Check(
                        "mend/" + fitting.thing(),
                        rules.mendKind(),
                        fitting.day().plusDays(rules.mendWithinDays()),
                        rules.mendWindowDays(),
                        Optional.of(fitting.day().plusDays(1)));
        };
    }

    /** Who does not see a child's messages cannot be told that nobody was asked. */
    private boolean tellsTheTruth(Viewer viewer, Board.Row row) {
        return row.says() != Board.Case.NOBODY_ASKED || gate.allows(viewer, Action.WORK_DESK, row.child());
    }

    /** What was and will be told about a child; nothing for somebody who books visits and leaves messages to others. */
    @Transactional(readOnly = true)
    public List<Outbox.Message> messages(Viewer viewer, ChildId child) {
        return gate.allows(viewer, Action.WORK_DESK, child) ? outbox.of(viewer, child) : List.of();
    }

    private List<Visit> ofChild(Viewer viewer, ChildId child, List<Visit> booked) {
        var all = new ArrayList<>(visits.past(viewer, child, PAST_VISITS));
        booked.stream().filter(visit -> visit.child().equals(child)).forEach(all::add);
        return all;
    }
}
