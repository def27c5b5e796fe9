package org.hearthway.child.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Allergies;
import org.hearthway.child.Child;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Names;
import org.hearthway.child.engine.Gestation;
import org.hearthway.child.events.ChildCorrected;
import org.hearthway.child.events.ChildEntered;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Lazy;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class ChildRows implements ChildRegister {

    private static final String SELECT = """
            select c.id, c.version, v.used_name, v.given_name, v.family_name, v.second_surname, v.birth_date,
              v.gestation_weeks, v.gestation_days, v.gmfcs, v.skin_tone, v.allergies_asked, v.allergies, v.interpreter
            from child c join child_version v on v.child = c.id and v.version = c.version
            """;
    private static final String PRESENT = " c.id in (select id from child_present) ";

    private final JdbcClient jdbc;
    private final Gate gate;
    private final ApplicationEventPublisher events;
    private final ClinicSettings clinic;
    private final Clock clock;

    /** The gate itself asks this module how far a caregiver reaches, hence the lazy reference. */
    ChildRows(JdbcClient jdbc, @Lazy Gate gate, ApplicationEventPublisher events, ClinicSettings clinic, Clock clock) {
        this.jdbc = jdbc;
        this.gate = gate;
        this.events = events;
        this.clinic = clinic;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Child> all(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        return jdbc.sql(SELECT + " where" + PRESENT + "order by v.family_name, v.used_name, c.id")
                .query(ChildRows::child)
                .list();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Child> mine(Viewer.Person viewer) {
        return jdbc.sql(SELECT + """
                         join caregiver_reach r on r.child = c.id
                        where r.account = :account and r.reach <> 'NONE'
                          and r.number = (select max(n.number) from caregiver_reach n
                                          where n.child = r.child and n.account = r.account)
                        order by v.birth_date, c.id
                        """).param("account", viewer.account().value()).query(ChildRows::child).list().stream()
                .filter(child -> gate.allows(viewer, Action.SEE_FAMILY_PAGES, child.id()))
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public Child get(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return find(child).orElseThrow(NotAvailable::new);
    }

    private Optional<Child> find(ChildId child) {
        return jdbc.sql(SELECT + " where c.id = :id")
                .param("id", child.value())
                .query(ChildRows::child)
                .optional();
    }

    /** A child whether folded or not, as the history of merges names it. */
    Child folded(ChildId child) {
        return find(child).orElseThrow(NotAvailable::new);
    }

    /** The entry into which this one was folded, if it was. */
    Optional<ChildId> goesOnAs(ChildId child) {
        return jdbc.sql("select folded_into from child where id = :id and folded_into is not null")
                .param("id", child.value())
                .query(UUID.class)
                .optional()
                .map(ChildId::new);
    }

    @Override
    @Transactional
    public ChildId enter(Viewer viewer, ChildData data) {
        gate.require(viewer, Action.ENTER_CHILD);
        ChildRules.check(data, today());
        var id = ChildId.random();
        var now = now();
        jdbc.sql("insert into child (id, version, entered_at) values (:id, 1, :at)")
                .param("id", id.value())
                .param("at", now)
                .update();
        write(viewer, id, 1, data, now);
        events.publishEvent(new ChildEntered(id, viewer, now.toInstant()));
        return id;
    }

    @Override
    @Transactional
    public void change(Viewer viewer, ChildId child, ChildData data, long seen) {
        gate.require(viewer, Action.CHANGE_CHILD, child);
        ChildRules.check(data, today());
        var moved = jdbc.sql("update child set version = :next where id = :id and version = :seen")
                .param("next", seen + 1)
                .param("id", child.value())
                .param("seen", seen)
                .update();
        if (moved == 0) {
            throw new Overtaken();
        }
        var now = now();
        write(viewer, child, seen + 1, data, now);
        events.publishEvent(new ChildCorrected(child, viewer, now.toInstant()));
    }

    private void write(Viewer viewer, ChildId child, long version, ChildData data, OffsetDateTime at) {
        var names = data.names().stripped();
        jdbc.sql("""
                        insert into child_version (child, version, used_name, given_name, family_name, second_surname,
                          birth_date, gestation_weeks, gestation_days, gmfcs, skin_tone, allergies_asked, allergies,
                          interpreter, entered_by, entered_at)
                        values (:child, :version, :used, :given, :family, :second, :birth, :weeks, :days, :gmfcs, :tone,
                          :asked, :allergies, :interpreter, :by, :at)
                        """)
                .param("child", child.value())
                .param("version", version)
                .param("used", names.used())
                .param("given", names.given())
                .param("family", names.surname())
                .param("second", names.secondSurname())
                .param("birth", data.birthDate())
                .param("weeks", data.gestation().map(Gestation::weeks).orElse(null))
                .param("days", data.gestation().map(Gestation::days).orElse(null))
                .param("gmfcs", data.gmfcs().orElse(null))
                .param("tone", data.skinTone())
                .param("asked", data.allergies().asked())
                .param("allergies", String.join("\n", data.allergies().known()))
                .param("interpreter", data.interpreter().strip())
                .param("by", viewer.tag())
                .param("at", at)
                .update();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Former> names(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var all = jdbc.sql("""
                        select v.used_name, v.given_name, v.family_name, v.second_surname, v.entered_at
                        from child_version v where v.child = :child order by v.version
                        """)
                .param("child", child.value())
                .query((row, n) -> new Former(
                        names(row),
                        row.getObject("entered_at", OffsetDateTime.class).toInstant()))
                .list();
        var kept = new ArrayDeque<Former>();
        for (var each : all) {
            if (kept.isEmpty() || !kept.getFirst().names().equals(each.names())) {
                kept.addFirst(each);
            }
        }
        return List.copyOf(kept);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Alike> alike(Viewer viewer, ChildData data) {
        gate.require(viewer, Action.ENTER_CHILD);
        return jdbc
                .sql(SELECT + " where" + PRESENT + "order by v.family_name, v.used_name, c.id")
                .query(ChildRows::child)
                .list()
                .stream()
                .map(child -> new Alike(child, Resemblance.between(child.data(), data)))
                .filter(alike -> !alike.why().isEmpty())
                .collect(Collectors.toList());
    }

    private static Names names(ResultSet row) throws SQLException {
        return new Names(
                row.getString("used_name"),
                row.getString("given_name"),
                row.getString("family_name"),
                row.getString("second_surname"));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    private OffsetDateTime now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private static Child child(ResultSet row, int number) throws SQLException {
        var weeks = Optional.ofNullable(row.getObject("gestation_weeks", Integer.class));
        var days = row.getInt("gestation_days");
        var data = new ChildData(
                names(row),
                row.getObject("birth_date", LocalDate.class),
                weeks.map(known -> new Gestation(known, days)),
                Optional.ofNullable(row.getObject("gmfcs", Integer.class)),
                row.getInt("skin_tone"),
                new Allergies(
                        row.getBoolean("allergies_asked"),
                        row.getString("allergies").lines().collect(Collectors.toList())),
                row.getString("interpreter"));
        return new Child(new ChildId(row.getObject("id", UUID.class)), data, row.getLong("version"));
    }
}
