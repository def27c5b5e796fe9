package org.hearthway.program.internal;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.Missed;
import org.hearthway.program.engine.week.Ask;
import org.hearthway.program.engine.week.Demand;
import org.hearthway.program.engine.week.Layout;
import org.hearthway.program.engine.week.MissedSessions;
import org.hearthway.program.engine.week.Placed;
import org.hearthway.program.events.SessionMoveTakenBack;
import org.hearthway.program.events.SessionMoved;
import org.hearthway.program.internal.WeekReading.Read;
import org.hearthway.program.internal.WeekStore.Move;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What is offered for sessions that were missed, worked out afresh each time it is asked. */
@Service
class StoredMissed implements Missed {

    private static final int WEEK = 7;

    private final WeekReading reading;
    private final WeekStore weeks;
    private final SessionStore sessions;
    private final WeekAsking asking;
    private final ExerciseLibrary library;
    private final Gate gate;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    StoredMissed(
            WeekReading reading,
            WeekStore weeks,
            SessionStore sessions,
            WeekAsking asking,
            ExerciseLibrary library,
            Gate gate,
            ApplicationEventPublisher events,
            Clock clock) {
        this.reading = reading;
        this.weeks = weeks;
        this.sessions = sessions;
        this.asking = asking;
        this.library = library;
        this.gate = gate;
        this.events = events;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Offer> offers(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return viewer instanceof Viewer.Person person ? offers(person, child) : List.of();
    }

    private List<Offer> offers(Viewer.Person person, ChildId child) {
        var now = LocalDateTime.ofInstant(clock.instant(), person.zone());
        var today = now.toLocalDate();
        if (weeks.laid(child, today, Optional.of(today)).isEmpty()) {
            return List.of();
        }
        var monday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        var days = reading.days(person, child, monday, WEEK);
        var layout = days.get(today.getDayOfWeek().getValue() - 1).layout();
        if (layout.isEmpty()) {
            return List.of();
        }
        var said = sessions.counting(child, monday, today);
        var missed = new ArrayList<Placed>();
        var planned = new ArrayList<Placed>();
        for (var day : days) {
            for (var on : day.on()) {
                var placed = placed(day, on);
                planned.addAll(placed);
                if (isMissed(day.date(), on.line().exercise(), said, today)) {
                    missed.add(placed.get(0));
                }
            }
        }
        return missed.isEmpty() ? List.of() : offers(days, layout.get(), planned, missed, now);
    }

    private static List<Placed> placed(Read day, LaidDays.On on) {
        var times = on.times().isEmpty() ? List.of(LocalTime.MIDNIGHT) : on.times();
        return times.stream()
                .map(start -> new Placed(on.name(), day.date().getDayOfWeek(), start))
                .toList();
    }

    private static boolean isMissed(LocalDate day, String exercise, List<Logged> said, LocalDate today) {
        return said.stream()
                .map(Logged::entry)
                .filter(entry -> entry.day().equals(day) && entry.exercise().equals(exercise))
                .findFirst()
                .map(entry -> entry.outcome() == Outcome.COULD_NOT
                        && entry.reason().filter(HomeWeek.Reason.PAIN::equals).isEmpty())
                .orElse(day.isBefore(today));
    }

    private List<Offer> offers(
            List<Read> days, Layout layout, List<Placed> planned, List<Placed> missed, LocalDateTime now) {
        var timed = layout.kind() == Layout.Kind.BY_TIME;
        var today = now.toLocalDate();
        var asks = asks(days, today, timed);
        var monday = days.get(0).date();
        return MissedSessions.offers(
                        layout.week(),
                        asks,
                        planned,
                        missed,
                        today.getDayOfWeek(),
                        timed ? now.toLocalTime() : LocalTime.MIDNIGHT)
                .stream()
                .flatMap(offer -> offer(offer, days, monday, timed).stream())
                .sorted(Comparator.comparing(offer -> offer.to().isEmpty()))
                .toList();
    }

    /** What the lines in force today ask for, those that show nowhere in the week left out. */
    private List<Ask> asks(List<Read> days, LocalDate today, boolean timed) {
        var there = days.stream()
                .flatMap(day -> day.on().stream())
                .map(LaidDays.On::name)
                .toList();
        return asking.demands(days.get(today.getDayOfWeek().getValue() - 1).lines(), timed).stream()
                .map(Demand::ask)
                .filter(ask -> there.contains(ask.exercise()))
                .toList();
    }

    private Optional<Offer> offer(MissedSessions.Offer offer, List<Read> days, LocalDate monday, boolean timed) {
        var missed = offer.missed();
        var to = offer instanceof MissedSessions.Offer.Move move
                ? Optional.of(new To(day(monday, move.to().day()), move.to().start(), timed))
                : Optional.<To>empty();
        var why = offer instanceof MissedSessions.Offer.Skip skip
                ? Optional.of(skip.why())
                : Optional.<MissedSessions.Why>empty();
        var day = day(monday, missed.day());
        return days.get(missed.day().getValue() - 1).on().stream()
                .filter(on -> on.name().equals(missed.exercise()))
                .findFirst()
                .flatMap(on -> library.find(on.line().exercise()))
                .map(exercise -> new Offer(exercise, missed.exercise(), day, missed.start(), to, why));
    }

    private static LocalDate day(LocalDate monday, DayOfWeek day) {
        return monday.plusDays(day.getValue() - 1L);
    }

    @Override
    @Transactional
    public void move(Viewer viewer, ChildId child, UUID key, Offer offer) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        gate.require(viewer, Action.LOG_SESSION, child);
        var by = person(viewer);
        weeks.hold(child);
        if (weeks.move(child, key).isPresent()) {
            return;
        }
        var to = offer.to().orElseThrow(Overtaken::new);
        if (!offers(by, child).contains(offer)) {
            throw new Overtaken();
        }
        var now = clock.instant();
        weeks.add(child, by, now, new Move(key, offer.line(), offer.day(), offer.start(), to.day(), to.start()), false);
        events.publishEvent(
                new SessionMoved(child, viewer, now, offer.exercise().id(), offer.day(), to.day()));
    }

    private static Viewer.Person person(Viewer viewer) {
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }

    @Override
    @Transactional
    public void takeBack(Viewer viewer, ChildId child, UUID key) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        gate.require(viewer, Action.LOG_SESSION, child);
        var by = person(viewer);
        weeks.hold(child);
        var move = weeks.move(child, key).orElseThrow(Overtaken::new);
        var today = LocalDate.ofInstant(clock.instant(), by.zone());
        var exercise = move.line().split("/", 2)[0];
        var said = sessions.counting(child, move.to(), move.to()).stream()
                .anyMatch(logged -> logged.entry().exercise().equals(exercise));
        if (move.to().isBefore(today) || said) {
            throw new Overtaken();
        }
        if (weeks.moves(child, move.from(), move.to()).stream()
                .anyMatch(one -> one.key().equals(key))) {
            var now = clock.instant();
            weeks.add(child, by, now, move, true);
            events.publishEvent(new SessionMoveTakenBack(child, viewer, now, exercise, move.from(), move.to()));
        }
    }
}
