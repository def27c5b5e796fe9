package org.hearthway.child.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Devices;
import org.hearthway.child.SamePerson;
import org.hearthway.child.Standing;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.child.events.DeathConfirmed;
import org.hearthway.child.events.StandingChanged;
import org.hearthway.clinic.ClinicSettings;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Lazy;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

@Service
class StandingRows implements Standings {

    private static final String NEWEST =
            " s.number = (select max(n.number) from child_standing n where n.child = s.child)";

    private final JdbcClient jdbc;
    private final Gate gate;
    private final Devices devices;
    private final SamePerson people;
    private final ApplicationEventPublisher events;
    private final ClinicSettings clinic;
    private final Clock clock;

    /** Gate and people ask this module in their turn, hence the lazy references. */
    StandingRows(
            JdbcClient jdbc,
            @Lazy Gate gate,
            Devices devices,
            @Lazy SamePerson people,
            ApplicationEventPublisher events,
            ClinicSettings clinic,
            Clock clock) {
        this.jdbc = jdbc;
        this.gate = gate;
        this.devices = devices;
        this.people = people;
        this.events = events;
        this.clinic = clinic;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Standing now(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return newest(child);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Standing> history(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return jdbc.sql("select s.* from child_standing s where s.child = :child order by s.number desc")
                .param("child", child.value())
                .query(StandingRows::standing)
                .list();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Pause> pauses(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var said = jdbc.sql("select s.* from child_standing s where s.child = :child order by s.number")
                .param("child", child.value())
                .query(StandingRows::standing)
                .list();
        return Pauses.of(said, at -> LocalDate.ofInstant(at, clinic.zone()));
    }

    @Override
    @Transactional(propagation = Propagation.MANDATORY)
    public Status hold(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        stand(child);
        return newest(child).status();
    }

    /** Whoever changes a standing, or relies on it, holds the child's row until the transaction ends. */
    private void stand(ChildId child) {
        jdbc.sql("select id from child where id = :id for update")
                .param("id", child.value())
                .query(UUID.class)
                .optional();
    }

    @Override
    @Transactional(readOnly = true)
    public Map<ChildId, Status> notActive(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        return jdbc
                .sql("select s.child, s.status from child_standing s where s.status <> 'ACTIVE' and" + NEWEST)
                .query((row, n) -> Map.entry(
                        new ChildId(row.getObject("child", UUID.class)), Status.valueOf(row.getString("status"))))
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    @Override
    @Transactional(readOnly = true)
    public Set<ChildId> waiting(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        return jdbc
                .sql("select s.child from child_standing s where s.status = 'DIED' and s.confirmed_by is null and"
                        + NEWEST)
                .query(UUID.class)
                .stream()
                .map(ChildId::new)
                .collect(Collectors.toSet());
    }

    @Override
    @Transactional
    public void say(Viewer viewer, ChildId child, Saying saying, long seen) {
        var by = person(viewer, child);
        var now = seen(child, seen);
        StandingRules.check(saying, now, devices.anyInPlace(child), today());
        insert(child, seen + 1, by, saying, Optional.empty(), Optional.empty());
        changed(viewer, child, saying.status());
    }

    @Override
    @Transactional
    public void confirm(Viewer viewer, ChildId child, long seen) {
        var by = person(viewer, child);
        var now = seen(child, seen);
        if (!now.waitsForSecondPerson()) {
            throw new Overtaken();
        }
        if (now.saidBy()
                .filter(first -> first.equals(by) || people.areOne(first, by))
                .isPresent()) {
            throw new Invalid(Problem.at("", "child.problem.same-person"));
        }
        var written = jdbc.sql("""
                        update child_standing set confirmed_by = :by, confirmed_at = :at
                        where child = :child and number = :number and confirmed_by is null
                        """)
                .param("by", by.value())
                .param("at", utc(clock.instant()))
                .param("child", child.value())
                .param("number", seen)
                .update();
        if (written == 0) {
            throw new Overtaken();
        }
        events.publishEvent(new DeathConfirmed(child, viewer, clock.instant()));
    }

    @Override
    @Transactional
    public void takeBack(Viewer viewer, ChildId child, String reason, long seen) {
        var by = person(viewer, child);
        var now = seen(child, seen);
        StandingRules.checkReason(reason);
        if (now.number() == 0 || now.undoes().isPresent()) {
            throw new Invalid(Problem.at("", "child.problem.nothing-to-take-back"));
        }
        var before = find(child, seen - 1).orElseGet(() -> unsaid(child));
        insert(
                child,
                seen + 1,
                by,
                new Saying(before.status(), reason, before.handover()),
                before.confirmedBy(),
                Optional.of(seen));
        changed(viewer, child, before.status());
    }

    private AccountId person(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.CHANGE_STATUS, child);
        if (viewer instanceof Viewer.Person person) {
            return person.account();
        }
        throw new NotAvailable();
    }

    private Standing seen(ChildId child, long seen) {
        stand(child);
        var now = newest(child);
        if (now.number() != seen) {
            throw new Overtaken();
        }
        return now;
    }

    private void insert(
            ChildId child,
            long number,
            AccountId by,
            Saying saying,
            Optional<AccountId> confirmedBy,
            Optional<Long> undoes) {
        var at = utc(clock.instant());
        try {
            jdbc.sql("""
                            insert into child_standing (child, number, status, said_by, said_at, reason,
                              receiving_service, device_date, confirmed_by, confirmed_at, undoes)
                            values (:child, :number, :status, :by, :at, :reason, :service, :device, :confirmed,
                              :confirmedAt, :undoes)
                            """)
                    .param("child", child.value())
                    .param("number", number)
                    .param("status", saying.status().name())
                    .param("by", by.value())
                    .param("at", at)
                    .param("reason", saying.reason().strip())
                    .param(
                            "service",
                            saying.handover()
                                    .map(Standing.Handover::service)
                                    .orElse("")
                                    .strip())
                    .param(
                            "device",
                            saying.handover()
                                    .flatMap(Standing.Handover::deviceDate)
                                    .orElse(null))
                    .param("confirmed", confirmedBy.map(AccountId::value).orElse(null))
                    .param("confirmedAt", confirmedBy.isPresent() ? at : null)
                    .param("undoes", undoes.orElse(null))
                    .update();
        } catch (DuplicateKeyException saidByAnotherAtTheSameMoment) {
            throw new Overtaken();
        }
    }

    private void changed(Viewer viewer, ChildId child, Status status) {
        events.publishEvent(new StandingChanged(child, viewer, clock.instant(), status.asksTheFamily()));
    }

    private Standing newest(ChildId child) {
        return jdbc.sql("select s.* from child_standing s where s.child = :child and" + NEWEST)
                .param("child", child.value())
                .query(StandingRows::standing)
                .optional()
                .orElseGet(() -> unsaid(child));
    }

    private Optional<Standing> find(ChildId child, long number) {
        return jdbc.sql("select s.* from child_standing s where s.child = :child and s.number = :number")
                .param("child", child.value())
                .param("number", number)
                .query(StandingRows::standing)
                .optional();
    }

    /** Before anybody said anything a child is active, from the moment it was entered. */
    private Standing unsaid(ChildId child) {
        var entered = jdbc.sql("select entered_at from child where id = :id")
                .param("id", child.value())
                .query(OffsetDateTime.class)
                .optional()
                .orElseThrow(NotAvailable::new)
                .toInstant();
        return new Standing(
                0, Status.ACTIVE, entered, Optional.empty(), "", Optional.empty(), Optional.empty(), Optional.empty());
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    private static OffsetDateTime utc(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private static Standing standing(ResultSet row, int n) throws SQLException {
        var service = row.getString("receiving_service");
        var deviceDate = Optional.ofNullable(row.getObject("device_date", LocalDate.class));
        return new Standing(
                row.getLong("number"),
                Status.valueOf(row.getString("status")),
                row.getObject("said_at", OffsetDateTime.class).toInstant(),
                account(row.getObject("said_by", UUID.class)),
                row.getString("reason"),
                service.isEmpty() ? Optional.empty() : Optional.of(new Standing.Handover(service, deviceDate)),
                account(row.getObject("confirmed_by", UUID.class)),
                Optional.ofNullable(row.getObject("undoes", Long.class)));
    }

    private static Optional<AccountId> account(@Nullable UUID id) {
        return Optional.ofNullable(id).map(AccountId::new);
    }
}
