package org.hearthway.program.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.program.ProgramPauses;
import org.hearthway.program.events.ProgramPaused;
import org.hearthway.program.events.ProgramResumed;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Pauses in the database. */
@Service
class StoredPauses implements ProgramPauses {

    private static final int DAYS_AHEAD = 366;
    private static final int NOTE = 500;

    private final PauseRows rows;
    private final Gate gate;
    private final ClinicSettings clinic;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    StoredPauses(PauseRows rows, Gate gate, ClinicSettings clinic, ApplicationEventPublisher events, Clock clock) {
        this.rows = rows;
        this.gate = gate;
        this.clinic = clinic;
        this.events = events;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Pause> all(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_WEEK, child);
        return rows.of(child);
    }

    @Override
    @Transactional
    public void pause(Viewer viewer, ChildId child, Asked asked) {
        var by = person(viewer, child);
        var today = LocalDate.now(clock.withZone(clinic.zone()));
        Invalid.ifAny(check(asked, today));
        rows.add(child, by, clock.instant(), asked);
        events.publishEvent(new ProgramPaused(child, viewer, clock.instant(), asked.from()));
    }

    private static List<Problem> check(Asked asked, LocalDate today) {
        var problems = new ArrayList<Problem>();
        var first = today.minusDays(DAYS_BACK);
        var last = today.plusDays(DAYS_AHEAD);
        if (asked.from().isBefore(first) || asked.from().isAfter(last)) {
            problems.add(Problem.at("from", "program.pause.problem.from", first, last));
        }
        var end = asked.from().plusDays(DAYS_AHEAD);
        if (asked.last()
                .filter(day -> day.isBefore(asked.from()) || day.isAfter(end))
                .isPresent()) {
            problems.add(Problem.at("last", "program.pause.problem.last", asked.from(), end));
        }
        if (asked.note().strip().length() > NOTE) {
            problems.add(Problem.at("note", "program.pause.problem.note", NOTE));
        }
        return problems;
    }

    @Override
    @Transactional
    public void goOn(Viewer viewer, ChildId child, long number, LocalDate first) {
        var by = person(viewer, child);
        var pause = rows.of(child).stream()
                .filter(one -> one.number() == number)
                .findFirst()
                .orElseThrow(Overtaken::new);
        if (first.isBefore(pause.from()) || pause.end().filter(first::isAfter).isPresent()) {
            var end = pause.end().orElse(pause.from().plusDays(DAYS_AHEAD));
            throw new Invalid(List.of(Problem.at("first", "program.pause.problem.first", pause.from(), end)));
        }
        rows.goOn(child, by, clock.instant(), number, first);
        events.publishEvent(new ProgramResumed(child, viewer, clock.instant(), first));
    }

    /** Who cares for the child or changes its program; a helper from outside does not let it rest. */
    private Viewer.Person person(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        if (!gate.allows(viewer, Action.CHANGE_PROGRAM, child)) {
            gate.require(viewer, Action.LOG_SESSION, child);
        }
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }
}
