package org.hearthway.program.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.WeekSchedule;
import org.hearthway.program.engine.WeekSchedule.Dated;
import org.hearthway.program.engine.week.Demand;
import org.hearthway.program.engine.week.Layout;
import org.hearthway.program.engine.week.Placed;
import org.hearthway.program.engine.week.WeekPlan.Way;
import org.hearthway.program.engine.week.WeekPlanner;
import org.hearthway.program.events.BackFromAway;
import org.hearthway.program.events.DaysAwaySaid;
import org.hearthway.program.events.FamilyTimesSaved;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Families' times in the database. */
@Service
class StoredFamilyTimes implements FamilyTimes {

    private final WeekStore store;
    private final ProgramStore programs;
    private final SessionStore sessions;
    private final WeekLaying laying;
    private final WeekAsking asking;
    private final ExerciseLibrary library;
    private final Gate gate;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    StoredFamilyTimes(
            WeekStore store,
            ProgramStore programs,
            SessionStore sessions,
            WeekLaying laying,
            WeekAsking asking,
            ExerciseLibrary library,
            Gate gate,
            ApplicationEventPublisher events,
            Clock clock) {
        this.store = store;
        this.programs = programs;
        this.sessions = sessions;
        this.laying = laying;
        this.asking = asking;
        this.library = library;
        this.gate = gate;
        this.events = events;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Version> latest(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return store.times(child).stream().findFirst();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Version> history(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return store.times(child);
    }

    /** Who may write: whoever of the family may tick, and who may change the program, on the family's behalf. */
    private Viewer.Person writer(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        if (viewer instanceof Viewer.Person person) {
            gate.require(viewer, person.isStaff() ? Action.CHANGE_PROGRAM : Action.LOG_SESSION, child);
            return person;
        }
        throw new NotAvailable();
    }

    private LocalDate today(Viewer.Person person) {
        return LocalDate.ofInstant(clock.instant(), person.zone());
    }

    @Override
    @Transactional
    public Version save(Viewer viewer, ChildId child, Times times, int seen) {
        var by = writer(viewer, child);
        var kept = TimesRules.tidy(times);
        Invalid.ifAny(TimesRules.check(kept));
        if (store.times(child).stream().findFirst().map(Version::number).orElse(0) != seen) {
            throw new Overtaken();
        }
        var today = today(by);
        // what was said of a day is said of what was planned on it
        var begun = !sessions.counting(child, today, today).isEmpty();
        var version = new Version(
                seen + 1,
                begun ? today.plusDays(1) : today,
                kept,
                by.name(),
                by.isStaff(),
                ProgramStore.utc(clock.instant()).toInstant());
        store.insert(child, by, version);
        laying.anew(child, version.effective());
        events.publishEvent(new FamilyTimesSaved(child, viewer, version.at(), version.number(), version.onBehalf()));
        return version;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Away> away(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var zone = viewer instanceof Viewer.Person person ? person.zone() : clock.getZone();
        return store.away(child, LocalDate.ofInstant(clock.instant(), zone));
    }

    @Override
    @Transactional
    public void goAway(Viewer viewer, ChildId child, UUID key, LocalDate first, LocalDate last, Reason reason) {
        var by = writer(viewer, child);
        var today = today(by);
        Invalid.ifAny(TimesRules.checkAway(first, last, today));
        var known = store.childOfAway(key);
        if (known.isPresent()) {
            if (!known.get().equals(child)) {
                throw new NotAvailable();
            }
            return;
        }
        var now = clock.instant();
        store.add(child, by, now, new Away(key, first, last, reason, by.name(), by.isStaff()));
        laying.anew(child, first);
        events.publishEvent(new DaysAwaySaid(child, viewer, now, first, last));
    }

    @Override
    @Transactional
    public void comeBack(Viewer viewer, ChildId child, UUID key) {
        var by = writer(viewer, child);
        var today = today(by);
        var away = store.away(child, today).stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(Overtaken::new);
        var now = clock.instant();
        store.add(
                child,
                by,
                now,
                new Away(key, away.first(), today.minusDays(1), away.reason(), by.name(), by.isStaff()));
        laying.anew(child, away.first().isBefore(today) ? today : away.first());
        events.publishEvent(new BackFromAway(child, viewer, now, away.first(), today));
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Fit> fit(Viewer viewer, ChildId child, LocalDate day) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var versions = WeekLaying.versions(programs.all(child));
        var away = store.away(child, day);
        return store.laid(child, day, Optional.of(day)).stream()
                .findFirst()
                .filter(laid -> away.stream()
                        .noneMatch(one -> !one.first().isAfter(laid.until().orElse(one.first()))))
                .filter(laid -> laid.layout().kind() == Layout.Kind.BY_TIME)
                .flatMap(laid -> WeekSchedule.versionOn(versions, day)
                        .map(version -> new Fit(
                                laid.from().isBefore(day) ? day : laid.from(),
                                laid.until(),
                                version.number(),
                                laid.layout().out().stream()
                                        .flatMap(out -> out(version, out).stream())
                                        .toList())))
                .filter(fit -> !fit.out().isEmpty());
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Trial> tryOut(Viewer viewer, ChildId child, LocalDate first, List<ProgramLine> lines) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var active = lines.stream()
                .filter(line -> line.firstDayWithin(first, first.plusWeeks(1)).isPresent())
                .toList();
        var named = WeekAsking.named(active);
        var times = store.times(child).stream().findFirst().map(Version::times).orElse(Times.NONE);
        var stands = asking.standing(active, times);
        if (active.isEmpty()
                || active.size() > WeekPlanner.MOST
                || (!stands.timed() && stands.demands().stream().allMatch(Demand::isFixed))) {
            return Optional.empty();
        }
        var last = store.laid(child, first, Optional.of(first)).stream()
                .flatMap(laid -> laid.layout().placed().stream())
                .toList();
        var plan = WeekPlanner.plan(
                stands.week(), stands.demands().stream().map(Demand::ask).toList(), last);
        var version = new Dated(1, first, active);
        return Optional.of(new Trial(
                plan.placed().stream()
                        .sorted(Comparator.comparing(Placed::day).thenComparing(Placed::start))
                        .map(placed -> new Tried(
                                placed.day(),
                                stands.timed() ? Optional.of(placed.start()) : Optional.empty(),
                                lines.indexOf(named.get(placed.exercise()))))
                        .toList(),
                plan.unfit().stream()
                        .map(one -> new Layout.Out(one.ask().exercise(), one.sessions(), one.reason(), one.ways()))
                        .flatMap(one -> out(version, one).stream())
                        .toList()));
    }

    private Optional<Out> out(Dated version, Layout.Out out) {
        var instead = out.ways().stream()
                .filter(Way.InsteadOf.class::isInstance)
                .map(Way.InsteadOf.class::cast)
                .flatMap(way -> exercise(version, way.exercise()).stream())
                .findFirst();
        return exercise(version, out.exercise()).map(exercise -> new Out(exercise, out, instead));
    }

    private Optional<Exercise> exercise(Dated version, String name) {
        return Optional.ofNullable(WeekAsking.named(version.lines()).get(name))
                .flatMap(line -> library.find(line.exercise()));
    }
}
