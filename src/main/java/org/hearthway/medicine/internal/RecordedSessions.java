package org.hearthway.medicine.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.medicine.SessionId;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.medicine.engine.ToxinInterval;
import org.hearthway.medicine.events.ToxinSessionCancelled;
import org.hearthway.medicine.events.ToxinSessionPlanned;
import org.hearthway.medicine.events.ToxinSessionRecorded;
import org.hearthway.words.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Toxin sessions as the team wrote them down. */
@Service
class RecordedSessions implements ToxinSessions {

    private final SessionRows rows;
    private final MuscleKind muscles;
    private final IntervalSetting setting;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    RecordedSessions(
            SessionRows rows,
            MuscleKind muscles,
            IntervalSetting setting,
            ClinicSettings clinic,
            Gate gate,
            Words words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.muscles = muscles;
        this.setting = setting;
        this.clinic = clinic;
        this.gate = gate;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @Override
    public ToxinInterval interval() {
        return setting.interval();
    }

    @Override
    public List<Muscle> muscles() {
        return muscles.all();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Session> all(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return rows.newest(child);
    }

    @Override
    @Transactional(readOnly = true)
    public Shown shown(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var all = rows.newest(child);
        var last = all.stream().filter(is(State.GIVEN)).findFirst();
        var planned = all.stream()
                .filter(is(State.PLANNED))
                .map(Session::on)
                .filter(day -> !day.isBefore(today()))
                .min(LocalDate::compareTo);
        return new Shown(
                last.map(Session::on),
                last.map(this::places).orElse(List.of()),
                last.map(Session::on).map(setting.interval()::notBefore),
                planned);
    }

    private static Predicate<Session> is(State state) {
        return session -> session.state() == state;
    }

    /** Where, in family words; two muscles of one family name are one place to the family. */
    private List<Place> places(Session session) {
        var sides = new LinkedHashMap<Bilingual, Set<Side>>();
        session.injections()
                .forEach(injection -> sides.computeIfAbsent(familyName(injection), name -> EnumSet.noneOf(Side.class))
                        .add(injection.side()));
        return sides.entrySet().stream()
                .map(place -> new Place(place.getKey(), place.getValue()))
                .toList();
    }

    /** A muscle that the content has dropped since keeps its identifier for a name. */
    private Bilingual familyName(Injection injection) {
        return muscles.find(injection.muscle()).map(Muscle::family).orElseGet(() -> Bilingual.same(injection.muscle()));
    }

    @Override
    @Transactional
    public Session enter(Viewer viewer, ChildId child, SessionData data) {
        gate.require(viewer, Action.RECORD_MEDICINE, child);
        return write(viewer, child, SessionId.random(), data, 1);
    }

    @Override
    @Transactional
    public Session change(Viewer viewer, ChildId child, SessionId session, SessionData data, long seen) {
        gate.require(viewer, Action.RECORD_MEDICINE, child);
        var newest = rows.newest(child).stream()
                .filter(known -> known.id().equals(session))
                .findFirst()
                .orElseThrow(NotAvailable::new);
        if (newest.version() != seen) {
            throw new Overtaken();
        }
        return write(viewer, child, session, data, seen + 1);
    }

    private Session write(Viewer viewer, ChildId child, SessionId id, SessionData data, long version) {
        if (!(viewer instanceof Viewer.Person person)) {
            // a session has a person who answers for it
            throw new NotAvailable();
        }
        var others = rows.newest(child).stream()
                .filter(other -> !other.id().equals(id) && other.state() != State.CANCELLED)
                .map(Session::on)
                .toList();
        var known = muscles.all().stream().map(Muscle::id).collect(Collectors.toSet());
        var injections = new SessionRules(setting.interval(), today(), known)
                .check(data, others, gate.allows(viewer, Action.SIGN_MEDICINE, child));
        var session = new Session(
                id,
                child,
                version,
                data.state(),
                data.on(),
                injections,
                data.givenBy().strip(),
                data.note().strip(),
                data.early().strip(),
                person.account(),
                clock.instant().truncatedTo(ChronoUnit.MICROS));
        rows.add(session);
        events.publishEvent(event(viewer, session));
        return session;
    }

    private Change event(Viewer viewer, Session session) {
        return switch (session.state()) {
            case GIVEN ->
                new ToxinSessionRecorded(
                        session.child(),
                        viewer,
                        session.at(),
                        words.both(
                                "medicine.told.session",
                                session.on(),
                                setting.interval().notBefore(session.on())));
            case PLANNED ->
                new ToxinSessionPlanned(
                        session.child(), viewer, session.at(), words.both("medicine.told.planned", session.on()));
            case CANCELLED ->
                new ToxinSessionCancelled(
                        session.child(), viewer, session.at(), words.both("medicine.told.taken-back", session.on()));
        };
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }
}
