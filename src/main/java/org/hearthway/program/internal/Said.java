package org.hearthway.program.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Arrival;
import org.hearthway.program.HomeWeek.Arrived;
import org.hearthway.program.HomeWeek.Became;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Tick;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.WeekSchedule;
import org.hearthway.program.engine.WeekSchedule.Dated;
import org.hearthway.program.events.SessionLogged;
import org.hearthway.program.events.SessionTakenBack;
import org.hearthway.program.internal.SessionStore.Margin;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionOperations;

/** Keeps what families and helpers say of sessions, here or on a phone that comes back. */
@Component
class Said {

    private static final Viewer PHONE = new Viewer.Machine("phone");

    private final ProgramStore programs;
    private final SessionStore sessions;
    private final Gate gate;
    private final Cautions cautions;
    private final ExerciseLibrary library;
    private final SessionRules rules;
    private final ApplicationEventPublisher events;
    private final TransactionOperations transaction;
    private final Clock clock;

    Said(
            ProgramStore programs,
            SessionStore sessions,
            Gate gate,
            Cautions cautions,
            ExerciseLibrary library,
            SessionRules rules,
            ApplicationEventPublisher events,
            TransactionOperations transaction,
            Clock clock) {
        this.programs = programs;
        this.sessions = sessions;
        this.gate = gate;
        this.cautions = cautions;
        this.library = library;
        this.rules = rules;
        this.events = events;
        this.transaction = transaction;
        this.clock = clock;
    }

    /**
     * Keeps an entry.
     *
     * @param before the last turn that the person saw; empty for all that there is
     * @return whether its pain is severe
     */
    boolean keep(Viewer viewer, ChildId child, Entry entry, Optional<Long> before) {
        gate.require(viewer, Action.LOG_SESSION, child);
        var by = person(viewer);
        Invalid.ifAny(rules.check(entry, LocalDate.now(clock.withZone(by.zone()))));
        var now = clock.instant();
        once(() -> add(by, child, entry, before, Optional.empty(), Optional.empty(), now));
        return entry.pain().filter(p -> p >= SessionLogged.SEVERE_PAIN).isPresent();
    }

    /** The same key twice at once collides in the database; the second time it is found there. */
    private boolean once(Keeping keeping) {
        try {
            return Boolean.TRUE.equals(transaction.execute(t -> keeping.keep()));
        } catch (DuplicateKeyException sentTwiceAtOnce) {
            return Boolean.TRUE.equals(transaction.execute(t -> keeping.keep()));
        }
    }

    private interface Keeping {
        boolean keep();
    }

    /** Whether it was kept now; false when it is known. */
    private boolean add(
            Viewer.Person by,
            ChildId child,
            Entry entry,
            Optional<Long> before,
            Optional<Integer> version,
            Optional<Became> became,
            Instant saidAt) {
        // asked again where it is kept: the right may have ended since
        gate.require(by, Action.LOG_SESSION, child);
        var known = sessions.childOf(entry.key());
        if (known.isPresent()) {
            if (!known.get().equals(child)) {
                throw new NotAvailable();
            }
            return false;
        }
        var now = clock.instant();
        var last = sessions.last(child, entry.exercise(), entry.day());
        var over = before.map(seen -> Math.min(seen, last)).orElse(last);
        sessions.add(child, by, entry, new Margin(saidAt, now, over, version, became));
        events.publishEvent(
                new SessionLogged(child, by, now, entry.key(), entry.exercise(), entry.day(), entry.pain()));
        return true;
    }

    private static Viewer.Person person(Viewer viewer) {
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }

    List<Arrived> bring(Viewer viewer, ChildId child, List<Tick> ticks) {
        gate.require(viewer, Action.LOG_SESSION, child);
        if (ticks.size() > HomeWeek.MOST_TICKS) {
            throw new Invalid(Problem.at("ticks", "program.said.many", HomeWeek.MOST_TICKS));
        }
        var by = person(viewer);
        var versions = programs.all(child).stream()
                .map(v -> new Dated(v.number(), v.effective(), v.lines()))
                .toList();
        var bringing = new Bringing(by, child, versions, cautions.rules(PHONE, child));
        return ticks.stream().map(bringing::one).toList();
    }

    /** Ticks of one phone, held against the program and the rules of care as they are now. */
    private final class Bringing {

        private final Viewer.Person by;
        private final ChildId child;
        private final List<Dated> versions;
        private final List<Plan.Care> care;

        Bringing(Viewer.Person by, ChildId child, List<Dated> versions, List<Plan.Care> care) {
            this.by = by;
            this.child = child;
            this.versions = versions;
            this.care = care;
        }

        Arrived one(Tick tick) {
            var today = LocalDate.now(clock.withZone(by.zone()));
            var problems = problems(tick, today);
            if (!problems.isEmpty()) {
                return new Arrived(Arrival.REFUSED, Optional.empty(), problems);
            }
            var became = became(tick.entry(), today);
            try {
                var kept = once(() ->
                        add(by, child, tick.entry(), Optional.of(tick.before()), tick.version(), became, said(tick)));
                return new Arrived(kept ? Arrival.KEPT : Arrival.KNOWN, became, List.of());
            } catch (NotAvailable notAvailable) {
                // the right to log ended a moment ago, or the key is that of another child's tick
                gate.require(by, Action.LOG_SESSION, child);
                return new Arrived(Arrival.REFUSED, Optional.empty(), List.of(Problem.at("key", "program.said.key")));
            }
        }

        private List<Problem> problems(Tick tick, LocalDate today) {
            var problems = new ArrayList<Problem>();
            var exercise = tick.entry().exercise();
            if (lines().noneMatch(line -> isOf(line, exercise))) {
                problems.add(Problem.at("exercise", "program.said.never"));
            }
            problems.addAll(rules.words(tick.entry(), today));
            var newest = versions.stream().mapToInt(Dated::number).max().orElse(0);
            if (tick.version().filter(v -> v < 1 || v > newest).isPresent()) {
                problems.add(Problem.at("version", "program.said.version"));
            }
            return problems;
        }

        /** What became of the exercise by now: of the day it was for and of the day it comes, the stricter. */
        private Optional<Became> became(Entry entry, LocalDate today) {
            var days = List.of(entry.day(), today);
            if (days.stream().anyMatch(day -> isForbidden(entry.exercise(), day))) {
                return Optional.of(Became.FORBIDDEN);
            }
            return library.find(entry.exercise()).isPresent()
                            && days.stream()
                                    .allMatch(day -> line(entry.exercise(), day).isPresent())
                    ? Optional.empty()
                    : Optional.of(Became.TAKEN_OUT);
        }

        private boolean isForbidden(String exercise, LocalDate day) {
            return line(exercise, day)
                    .or(() -> lines().filter(line -> isOf(line, exercise)).findFirst())
                    .flatMap(line -> cautions.lock(line, day, care))
                    .isPresent();
        }

        /** The exercise in the version that holds on a day. */
        private Optional<ProgramLine> line(String exercise, LocalDate day) {
            return WeekSchedule.versionOn(versions, day).stream()
                    .flatMap(version -> version.lines().stream())
                    .filter(line -> isOf(line, exercise))
                    .findFirst();
        }

        /** All lines there ever were, those of the newest version first. */
        private Stream<ProgramLine> lines() {
            return versions.stream().flatMap(version -> version.lines().stream());
        }

        private boolean isOf(ProgramLine line, String exercise) {
            return line.exercise().equals(exercise);
        }

        /** Between the beginning of its day and now. */
        private Instant said(Tick tick) {
            var now = clock.instant();
            var begin = tick.entry().day().atStartOfDay(by.zone()).toInstant();
            var notBefore = tick.saidAt().isBefore(begin) ? begin : tick.saidAt();
            return notBefore.isAfter(now) ? now : notBefore;
        }
    }

    /** Takes back all that was said of an exercise on a day; a helper takes back what the helper said. */
    void takeBack(Viewer viewer, ChildId child, String exercise, LocalDate day) {
        gate.require(viewer, Action.LOG_SESSION, child);
        var by = person(viewer);
        var whole = gate.allows(viewer, Action.SEE_FAMILY_PAGES, child);
        if (!whole && !sessions.isSaidBy(child, exercise, day, by.account())) {
            throw new NotAvailable();
        }
        var counts = sessions.counting(child, day, day).stream()
                .anyMatch(logged -> logged.entry().exercise().equals(exercise));
        if (counts) {
            var now = clock.instant();
            var over = whole ? sessions.last(child, exercise, day) : 0;
            sessions.takeBack(child, by, now, exercise, day, over);
            events.publishEvent(new SessionTakenBack(child, viewer, now, exercise, day));
        }
    }
}
