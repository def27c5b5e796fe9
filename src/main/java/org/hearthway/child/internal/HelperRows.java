package org.hearthway.child.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Helpers;
import org.hearthway.child.Homes;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.events.HelperEnded;
import org.hearthway.child.events.HelperLinked;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Lazy;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class HelperRows implements Helpers {

    private static final String HELPING = "HELPING";
    private static final String ENDED = "ENDED";
    private static final int MOST_MONTHS = 12;
    private static final Viewer AUTHORITY = new Viewer.Machine("authority to consent");

    private static final String LATEST = """
            select h.account, h.child, h.number, h.kind, h.state, h.last_day, h.consent_by, h.consent_on, h.said_by, h.said_at
            from child_helper h
            where h.number = (select max(n.number) from child_helper n where n.child = h.child and n.account = h.account)
            """;

    private final JdbcClient jdbc;
    private final Gate gate;
    private final Households households;
    private final Homes homes;
    private final ApplicationEventPublisher events;
    private final ClinicSettings clinic;
    private final Clock clock;

    /** The gate itself asks this module whether somebody helps, hence the lazy reference. */
    HelperRows(
            JdbcClient jdbc,
            @Lazy Gate gate,
            Households households,
            Homes homes,
            ApplicationEventPublisher events,
            ClinicSettings clinic,
            Clock clock) {
        this.jdbc = jdbc;
        this.gate = gate;
        this.households = households;
        this.homes = homes;
        this.events = events;
        this.clinic = clinic;
        this.clock = clock;
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    @Override
    @Transactional(readOnly = true)
    public List<Helper> of(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return jdbc
                .sql(LATEST + " and h.child = :child order by h.said_at, h.account")
                .param("child", child.value())
                .query((row, n) -> helper(row))
                .list()
                .stream()
                .sorted(Comparator.comparing(Helper::over))
                .toList();
    }

    private Helper helper(ResultSet row) throws SQLException {
        var help = new Help(
                Kind.valueOf(row.getString("kind")),
                row.getObject("last_day", LocalDate.class),
                new Consent(
                        new AccountId(row.getObject("consent_by", UUID.class)),
                        row.getObject("consent_on", LocalDate.class)));
        return new Helper(
                new AccountId(row.getObject("account", UUID.class)),
                help,
                row.getLong("number"),
                row.getString("said_by"),
                row.getObject("said_at", OffsetDateTime.class).toInstant(),
                row.getString("state").equals(ENDED) || help.lastDay().isBefore(today()));
    }

    @Override
    @Transactional(readOnly = true)
    public Glimpse glimpse(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_WEEK, child);
        return glimpse(child).orElseThrow(NotAvailable::new);
    }

    private Optional<Glimpse> glimpse(ChildId child) {
        return jdbc.sql("""
                        select v.used_name, v.skin_tone from child c
                        join child_version v on v.child = c.id and v.version = c.version
                        where c.id = :child
                        """)
                .param("child", child.value())
                .query((row, n) -> new Glimpse(child, row.getString("used_name"), row.getInt("skin_tone")))
                .optional();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Glimpse> mine(Viewer.Person viewer) {
        return jdbc
                .sql(LATEST + " and h.account = :account order by h.said_at, h.child")
                .param("account", viewer.account().value())
                .query((row, n) -> new ChildId(row.getObject("child", UUID.class)))
                .list()
                .stream()
                .filter(child -> gate.allows(viewer, Action.SEE_WEEK, child))
                .flatMap(child -> glimpse(child).stream())
                .toList();
    }

    @Override
    public boolean reaches(AccountId account, ChildId child) {
        return latest(account, child).filter(helper -> !helper.over()).isPresent() && present(child);
    }

    @Override
    public void hold(AccountId account, ChildId child) {
        Held.rows(jdbc, "child_helper", account, child);
    }

    private boolean present(ChildId child) {
        return jdbc.sql("select count(*) from child_present where id = :id")
                        .param("id", child.value())
                        .query(Long.class)
                        .single()
                > 0;
    }

    private Optional<Helper> latest(AccountId account, ChildId child) {
        return jdbc.sql(LATEST + " and h.account = :account and h.child = :child")
                .param("account", account.value())
                .param("child", child.value())
                .query((row, n) -> helper(row))
                .optional();
    }

    @Override
    @Transactional(readOnly = true)
    public void check(Viewer viewer, ChildId child, Help help) {
        gate.require(viewer, Action.LINK_HELPER, child);
        requireValid(viewer, child, help);
    }

    @Override
    @Transactional
    public void link(Viewer viewer, ChildId child, AccountId account, Help help, long seen) {
        gate.require(viewer, Action.LINK_HELPER, child);
        requireValid(viewer, child, help);
        var now = clock.instant();
        insert(viewer, child, account, help, HELPING, seen, now);
        events.publishEvent(new HelperLinked(child, viewer, now, account));
    }

    @Override
    @Transactional
    public void end(Viewer viewer, ChildId child, AccountId account, long seen) {
        gate.require(viewer, Action.LINK_HELPER, child);
        var helper = latest(account, child).orElseThrow(NotAvailable::new);
        if (helper.over()) {
            return;
        }
        var now = clock.instant();
        insert(viewer, child, account, helper.help(), ENDED, seen, now);
        events.publishEvent(new HelperEnded(child, viewer, now, account));
    }

    private void requireValid(Viewer viewer, ChildId child, Help help) {
        var today = today();
        var problems = new ArrayList<Problem>();
        if (help.lastDay().isBefore(today) || help.lastDay().isAfter(today.plusMonths(MOST_MONTHS))) {
            problems.add(Problem.at("lastDay", "child.problem.last-day", MOST_MONTHS));
        }
        var on = help.consent().on();
        if (on.isAfter(today) || on.isBefore(today.minusMonths(MOST_MONTHS))) {
            problems.add(Problem.at("consentOn", "child.problem.consent-day", MOST_MONTHS));
        }
        if (!mayConsent(child, help.consent().by())) {
            problems.add(Problem.at("consentBy", "child.problem.consent-by"));
        } else if (viewer instanceof Viewer.Person person
                && !person.isStaff()
                && !person.account().equals(help.consent().by())) {
            // a caregiver speaks for nobody else
            problems.add(Problem.at("consentBy", "child.problem.consent-own"));
        }
        Invalid.ifAny(problems);
    }

    /** A caregiver who acts for the child and of whom nobody said that the authority is missing. */
    private boolean mayConsent(ChildId child, AccountId caregiver) {
        var acts = households.reach(caregiver, child).filter(Reach.FULL::equals).isPresent();
        var lacks = Optional.ofNullable(homes.of(AUTHORITY, child).get(caregiver))
                .filter(entered -> entered.home().authority() == Authority.NO)
                .isPresent();
        return acts && !lacks;
    }

    private void insert(
            Viewer viewer, ChildId child, AccountId account, Help help, String state, long seen, Instant now) {
        hold(account, child);
        if (latest(account, child).map(Helper::number).orElse(0L) != seen) {
            throw new Overtaken();
        }
        try {
            jdbc.sql("""
                            insert into child_helper (child, account, number, kind, state, last_day, consent_by, consent_on,
                              said_by, said_at)
                            values (:child, :account, :number, :kind, :state, :lastDay, :consentBy, :consentOn, :by, :at)
                            """)
                    .param("child", child.value())
                    .param("account", account.value())
                    .param("number", seen + 1)
                    .param("kind", help.kind().name())
                    .param("state", state)
                    .param("lastDay", help.lastDay())
                    .param("consentBy", help.consent().by().value())
                    .param("consentOn", help.consent().on())
                    .param("by", viewer.tag())
                    .param("at", now.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException saidByAnotherAtTheSameMoment) {
            throw new Overtaken();
        }
    }
}
