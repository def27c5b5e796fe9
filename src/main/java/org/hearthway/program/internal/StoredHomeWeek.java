package org.hearthway.program.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.child.Standings;
import org.hearthway.content.SignOff;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.WeekSchedule;
import org.hearthway.program.engine.WeekSchedule.Dated;
import org.hearthway.program.events.SessionLogged;
import org.hearthway.program.events.SessionTakenBack;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionOperations;

/** The family's week, laid out from the stored versions, and what was said of it. */
@Service
class StoredHomeWeek implements HomeWeek {

    /** Most days asked for at once. */
    private static final int MOST_DAYS = 400;

    private static final Viewer WEEK = new Viewer.Machine("week");

    private final ProgramStore programs;
    private final SessionStore sessions;
    private final Gate gate;
    private final Cautions cautions;
    private final ExerciseLibrary library;
    private final SignOff signOff;
    private final Standings standings;
    private final PauseRows pauses;
    private final SessionRules rules;
    private final ApplicationEventPublisher events;
    private final TransactionOperations transaction;
    private final Clock clock;

    StoredHomeWeek(
            ProgramStore programs,
            SessionStore sessions,
            Gate gate,
            Cautions cautions,
            ExerciseLibrary library,
            SignOff signOff,
            Standings standings,
            PauseRows pauses,
            SessionRules rules,
            ApplicationEventPublisher events,
            TransactionOperations transaction,
            Clock clock) {
        this.programs = programs;
        this.sessions = sessions;
        this.gate = gate;
        this.cautions = cautions;
        this.library = library;
        this.signOff = signOff;
        this.standings = standings;
        this.pauses = pauses;
        this.rules = rules;
        this.events = events;
        this.transaction = transaction;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Day> days(Viewer viewer, ChildId child, LocalDate from, int count) {
        gate.require(viewer, Action.SEE_WEEK, child);
        if (count < 1 || count > MOST_DAYS) {
            throw new IllegalArgumentException("1 to " + MOST_DAYS + " days at once");
        }
        var versions = programs.all(child).stream()
                .map(v -> new Dated(v.number(), v.effective(), v.lines()))
                .toList();
        var plan = WeekSchedule.days(versions, from, count);
        var whole = gate.allows(viewer, Action.SEE_FAMILY_PAGES, child);
        var logged = sessions.counting(child, from, from.plusDays(count - 1L)).stream()
                .map(said -> whole ? said : withoutWords(said))
                .collect(Collectors.toMap(Slot::of, Function.identity()));
        // whoever sees the week need not see the path and the status that it follows from
        var care = cautions.rules(WEEK, child);
        var shown = shown(viewer, plan);
        var closed = standings.pauses(WEEK, child);
        var resting = pauses.of(child);
        return plan.stream()
                .map(day -> new Day(
                        day.date(),
                        day.lines().stream()
                                .filter(line -> closed.stream().noneMatch(pause -> pause.holdsOn(day.date())))
                                .filter(line -> resting.stream().noneMatch(pause -> pause.holdsOn(day.date())))
                                .filter(line -> shown.contains(line.exercise()))
                                .filter(line ->
                                        cautions.lock(line, day.date(), care).isEmpty())
                                .map(line -> planned(line, day.date(), logged))
                                .toList()))
                .toList();
    }

    /** What a helper sees of an entry: how the exercise went, not what the family wrote to the team, nor who did. */
    private static Logged withoutWords(Logged said) {
        var e = said.entry();
        return new Logged(
                new Entry(
                        e.key(), e.exercise(), e.day(), e.outcome(), e.reason(), e.effort(), e.pain(), e.ratedBy(), ""),
                "",
                said.at());
    }

    /** An exercise on a day. */
    private record Slot(String exercise, LocalDate day) {
        static Slot of(Logged logged) {
            return new Slot(logged.entry().exercise(), logged.entry().day());
        }
    }

    private Planned planned(ProgramLine line, LocalDate day, Map<Slot, Logged> logged) {
        return new Planned(
                library.find(line.exercise()).orElseThrow(),
                line,
                library.pace().minutes(line),
                Optional.ofNullable(logged.get(new Slot(line.exercise(), day))));
    }

    /** Which exercises this viewer sees: a family only those the clinic has accepted, staff all. */
    private Set<String> shown(Viewer viewer, List<WeekSchedule.DayPlan> plan) {
        var all = plan.stream()
                .flatMap(day -> day.lines().stream())
                .map(ProgramLine::exercise)
                .distinct()
                .flatMap(id -> library.find(id).stream())
                .toList();
        if (viewer instanceof Viewer.Person person && person.isStaff()) {
            return all.stream().map(Exercise::id).collect(Collectors.toSet());
        }
        return signOff.shownAmong(all.stream().map(Exercise::item).toList()).stream()
                .map(SignOff.Item::id)
                .collect(Collectors.toSet());
    }

    @Override
    public boolean log(Viewer viewer, ChildId child, Entry entry) {
        gate.require(viewer, Action.LOG_SESSION, child);
        var by = person(viewer);
        Invalid.ifAny(rules.check(entry, LocalDate.now(clock.withZone(by.zone()))));
        try {
            transaction.executeWithoutResult(t -> add(by, child, entry));
        } catch (DuplicateKeyException sentTwiceAtOnce) {
            transaction.executeWithoutResult(t -> add(by, child, entry));
        }
        return isSevere(entry);
    }

    private void add(Viewer.Person by, ChildId child, Entry entry) {
        // asked again where it is kept: the right may have ended since
        gate.require(by, Action.LOG_SESSION, child);
        var known = sessions.childOf(entry.key());
        if (known.isPresent()) {
            if (!known.get().equals(child)) {
                throw new NotAvailable();
            }
            return;
        }
        var now = clock.instant();
        sessions.add(child, by, now, entry);
        events.publishEvent(
                new SessionLogged(child, by, now, entry.key(), entry.exercise(), entry.day(), entry.pain()));
    }

    private static boolean isSevere(Entry entry) {
        return entry.pain().filter(p -> p >= SessionLogged.SEVERE_PAIN).isPresent();
    }

    private static Viewer.Person person(Viewer viewer) {
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }

    @Override
    @Transactional
    public void takeBack(Viewer viewer, ChildId child, String exercise, LocalDate day) {
        gate.require(viewer, Action.LOG_SESSION, child);
        if (!gate.allows(viewer, Action.SEE_FAMILY_PAGES, child)
                && !sessions.isSaidBy(child, exercise, day, person(viewer).account())) {
            // a helper takes back what the helper said, not what the family did
            throw new NotAvailable();
        }
        var counts = sessions.counting(child, day, day).stream()
                .anyMatch(logged -> logged.entry().exercise().equals(exercise));
        if (counts) {
            var now = clock.instant();
            sessions.takeBack(child, person(viewer), now, exercise, day);
            events.publishEvent(new SessionTakenBack(child, viewer, now, exercise, day));
        }
    }

    @Override
    @Transactional(readOnly = true)
    public List<Logged> entries(Viewer viewer, ChildId child, LocalDate from, LocalDate until) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return sessions.counting(child, from, until);
    }
}
