package org.hearthway.caseload.internal;

import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Facts;
import org.hearthway.caseload.engine.Office;
import org.hearthway.caseload.engine.Urgency;
import org.hearthway.program.HomeWeek;
import org.hearthway.pump.Pumps;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.hearthway.visit.Visits;
import org.springframework.stereotype.Component;

/** Gathers what the features know about a child into the facts that the rules read. */
@Component
class ChildFacts {

    /** How far back a report or a pain is looked for; older ones have long had their item. */
    private static final int LATELY_DAYS = 30;

    /** How far back home days are read; a longer silence counts as one of this length. */
    private static final int HOME_DAYS = 60;

    private final Signs signs;
    private final HomeWeek homeWeek;
    private final Pumps pumps;
    private final Visits visits;
    private final NeedsContent content;

    ChildFacts(Signs signs, HomeWeek homeWeek, Pumps pumps, Visits visits, NeedsContent content) {
        this.signs = signs;
        this.homeWeek = homeWeek;
        this.pumps = pumps;
        this.visits = visits;
        this.content = content;
    }

    Facts of(Viewer viewer, ChildId child, LocalDate today, Office office, Optional<LocalDate> silenceAnsweredOn) {
        var lately = today.minusDays(LATELY_DAYS);
        var reports = signs.of(viewer, child).stream()
                .filter(report -> !office.dayOf(report.at()).isBefore(lately))
                .map(report -> new Facts.Report(report.key(), urgency(report.urgency()), report.at()))
                .toList();
        var pains = homeWeek.entries(viewer, child, lately, today).stream()
                .flatMap(logged -> logged.entry().pain().stream()
                        .map(pain -> new Facts.Pain(
                                logged.entry().key(),
                                logged.entry().exercise(),
                                logged.entry().day(),
                                pain,
                                logged.at())))
                .toList();
        var homeDays = homeWeek.days(viewer, child, today.minusDays(HOME_DAYS), HOME_DAYS + 1).stream()
                .filter(day -> !day.planned().isEmpty())
                .map(day -> new Facts.HomeDay(
                        day.date(),
                        day.planned().stream()
                                .anyMatch(planned -> planned.logged().isPresent())))
                .toList();
        return new Facts(reports, pains, homeDays, refill(viewer, child), silenceAnsweredOn);
    }

    private Optional<Facts.Refill> refill(Viewer viewer, ChildId child) {
        return pumps.current(viewer, child)
                .map(fill -> fill.refillBy().day())
                .map(by -> new Facts.Refill(
                        by,
                        visits.upcoming(viewer, child).stream()
                                .anyMatch(visit -> visit.kind().id().equals(content.refillKind())
                                        && !visit.start().toLocalDate().isAfter(by))));
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
