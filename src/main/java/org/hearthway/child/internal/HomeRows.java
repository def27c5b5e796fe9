package org.hearthway.child.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Homes;
import org.hearthway.child.Households;
import org.hearthway.child.engine.Nights;
import org.hearthway.child.engine.TwoHomes;
import org.hearthway.child.events.HomeEntered;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Lazy;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class HomeRows implements Homes {

    private static final char NIGHT = 'x';
    private static final char NO_NIGHT = '-';

    private final JdbcClient jdbc;
    private final Gate gate;
    private final Households households;
    private final ApplicationEventPublisher events;
    private final ClinicSettings clinic;
    private final Clock clock;

    HomeRows(
            JdbcClient jdbc,
            @Lazy Gate gate,
            Households households,
            ApplicationEventPublisher events,
            ClinicSettings clinic,
            Clock clock) {
        this.jdbc = jdbc;
        this.gate = gate;
        this.households = households;
        this.events = events;
        this.clinic = clinic;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Map<AccountId, Entered> of(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_HOMES, child);
        return entered(child);
    }

    @Override
    @Transactional(readOnly = true)
    public TwoHomes nights(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return new TwoHomes(entered(child).entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, known -> known.getValue().home().nights())));
    }

    /** Of those who care for the child now; what was entered of somebody before stays and comes back with the person. */
    private Map<AccountId, Entered> entered(ChildId child) {
        var all = new LinkedHashMap<AccountId, Entered>();
        jdbc
                .sql("""
                        select h.account, h.number, h.relation, h.authority, h.address, h.interpreter, h.nights,
                               h.other_nights, h.turns_from, h.shares_phone, h.kept_apart, h.note, h.said_by, h.said_at
                        from caregiver_home h
                        where h.child = :child
                          and h.number = (select max(n.number) from caregiver_home n
                                          where n.child = h.child and n.account = h.account)
                        order by h.account
                        """)
                .param("child", child.value())
                .query((row, n) -> Map.entry(new AccountId(row.getObject("account", UUID.class)), entered(row)))
                .list()
                .stream()
                .filter(known -> households.reach(known.getKey(), child).isPresent())
                .forEach(known -> all.put(known.getKey(), known.getValue()));
        return all;
    }

    private static Entered entered(ResultSet row) throws SQLException {
        return new Entered(
                new Home(
                        row.getString("relation"),
                        Authority.valueOf(row.getString("authority")),
                        row.getString("address"),
                        row.getString("interpreter"),
                        new Nights(
                                nights(row.getString("nights")),
                                nights(row.getString("other_nights")),
                                Optional.ofNullable(row.getObject("turns_from", LocalDate.class))),
                        row.getBoolean("shares_phone"),
                        row.getBoolean("kept_apart"),
                        row.getString("note")),
                row.getLong("number"),
                row.getString("said_by"),
                row.getObject("said_at", OffsetDateTime.class).toInstant());
    }

    private static String signs(Set<DayOfWeek> nights) {
        return Arrays.stream(DayOfWeek.values())
                .map(day -> String.valueOf(nights.contains(day) ? NIGHT : NO_NIGHT))
                .collect(Collectors.joining());
    }

    private static Set<DayOfWeek> nights(String signs) {
        return Arrays.stream(DayOfWeek.values())
                .filter(day -> signs.charAt(day.getValue() - 1) == NIGHT)
                .collect(Collectors.toSet());
    }

    @Override
    @Transactional
    public void enter(Viewer viewer, ChildId child, AccountId caregiver, Home typed, long seen) {
        gate.require(viewer, Action.LINK_CAREGIVER, child);
        if (households.reach(caregiver, child).isEmpty()) {
            throw new NotAvailable();
        }
        var now = clock.instant();
        var home = stripped(typed);
        HomeRules.check(home, LocalDate.ofInstant(now, clinic.zone()));
        var last = Optional.ofNullable(entered(child).get(caregiver));
        if (last.map(Entered::number).orElse(0L) != seen) {
            throw new Overtaken();
        }
        if (last.map(Entered::home).filter(home::equals).isPresent()) {
            return;
        }
        insert(
                viewer,
                child,
                caregiver,
                home,
                seen + 1,
                now.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC));
        events.publishEvent(new HomeEntered(child, viewer, now, caregiver));
    }

    private void insert(Viewer viewer, ChildId child, AccountId caregiver, Home home, long number, OffsetDateTime at) {
        try {
            jdbc.sql("""
                            insert into caregiver_home (child, account, number, relation, authority, address, interpreter,
                              nights, other_nights, turns_from, shares_phone, kept_apart, note, said_by, said_at)
                            values (:child, :account, :number, :relation, :authority, :address, :interpreter,
                              :nights, :otherNights, :turns, :shares, :apart, :note, :by, :at)
                            """)
                    .param("child", child.value())
                    .param("account", caregiver.value())
                    .param("number", number)
                    .param("relation", home.relation())
                    .param("authority", home.authority().name())
                    .param("address", home.address())
                    .param("interpreter", home.interpreter())
                    .param("nights", signs(home.nights().week()))
                    .param("otherNights", signs(home.nights().otherWeek()))
                    .param("turns", home.nights().turns().orElse(null))
                    .param("shares", home.sharesPhone())
                    .param("apart", home.keptApart())
                    .param("note", home.note())
                    .param("by", viewer.tag())
                    .param("at", at)
                    .update();
        } catch (DuplicateKeyException enteredByAnotherAtTheSameMoment) {
            throw new Overtaken();
        }
    }

    /** Without blanks around; no database takes a zero character. */
    private static Home stripped(Home home) {
        return new Home(
                plain(home.relation()),
                home.authority(),
                plain(home.address()),
                plain(home.interpreter()),
                home.nights(),
                home.sharesPhone(),
                home.keptApart(),
                plain(home.note()));
    }

    private static String plain(String typed) {
        return typed.replace("\u0000", "").strip();
    }
}
