package org.hearthway.program.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
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
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.engine.week.FamilyWeek;
import org.hearthway.program.engine.week.Layout;
import org.hearthway.program.engine.week.Standing;
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

    private final WeekReading reading;
    private final SessionStore sessions;
    private final Gate gate;
    private final ExerciseLibrary library;
    private final SessionRules rules;
    private final ApplicationEventPublisher events;
    private final TransactionOperations transaction;
    private final Clock clock;

    StoredHomeWeek(
            WeekReading reading,
            SessionStore sessions,
            Gate gate,
            ExerciseLibrary library,
            SessionRules rules,
            ApplicationEventPublisher events,
            TransactionOperations transaction,
            Clock clock) {
        this.reading = reading;
        this.sessions = sessions;
        this.gate = gate;
        this.library = library;
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
        var whole = gate.allows(viewer, Action.SEE_FAMILY_PAGES, child);
        var logged = sessions.counting(child, from, from.plusDays(count - 1L)).stream()
                .map(said -> whole ? said : withoutWords(said))
                .collect(Collectors.toMap(Slot::of, Function.identity()));
        return reading.days(viewer, child, from, count).stream()
                .map(read -> day(read, whole, logged))
                .toList();
    }

    private Day day(WeekReading.Read read, boolean whole, Map<Slot, Logged> logged) {
        return new Day(
                read.date(),
                read.on().stream().map(on -> planned(on, read.date(), logged)).toList(),
                read.on().stream()
                        .flatMap(on -> on.times().stream())
                        .distinct()
                        .sorted()
                        .map(start -> time(read, start, whole))
                        .toList(),
                whole
                        ? read.moved().stream()
                                .flatMap(move -> moved(read, move).stream())
                                .toList()
                        : List.of());
    }

    /** A time of the day; one that was moved to a time that is gone since is as long as what is in it. */
    private Time time(WeekReading.Read read, LocalTime start, boolean whole) {
        var slot = read.layout().flatMap(layout -> layout.week().at(read.date().getDayOfWeek(), start));
        var minutes = slot.map(FamilyWeek.Slot::minutes)
                .orElseGet(() -> read.on().stream()
                        .filter(on -> on.times().contains(start))
                        .mapToInt(on ->
                                library.pace().minutes(on.line()) / on.times().size())
                        .sum());
        var helpers = slot.filter(there -> whole).map(FamilyWeek.Slot::helpers).orElse(Set.of()).stream()
                .filter(name -> !name.equals(Standing.ONE) && !name.equals(Standing.TWO))
                .sorted()
                .toList();
        return new Time(start, minutes, helpers);
    }

    private Optional<Moved> moved(WeekReading.Read read, WeekStore.Move move) {
        var timed = read.layout()
                .filter(layout -> layout.kind() == Layout.Kind.BY_TIME)
                .isPresent();
        return library.find(move.line().split("/", 2)[0])
                .map(exercise -> new Moved(
                        move.key(),
                        exercise,
                        move.from(),
                        move.to(),
                        timed ? Optional.of(move.toStart()) : Optional.empty()));
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

    private Planned planned(LaidDays.On on, LocalDate day, Map<Slot, Logged> logged) {
        var line = on.line();
        return new Planned(
                library.find(line.exercise()).orElseThrow(),
                line,
                library.pace().minutes(line),
                Optional.ofNullable(logged.get(new Slot(line.exercise(), day))),
                on.times());
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
