package org.hearthway.medicine.internal;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.medicine.SessionId;
import org.hearthway.medicine.ToxinSessions.Injection;
import org.hearthway.medicine.ToxinSessions.Session;
import org.hearthway.medicine.ToxinSessions.Side;
import org.hearthway.medicine.ToxinSessions.State;
import org.hearthway.medicine.engine.Preparation;
import org.hearthway.medicine.engine.ToxinUnits;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps versions of toxin sessions. The version is part of the key, so of two at once one wins. */
@Repository
class SessionRows {

    private record Key(UUID session, long version) {}

    private final JdbcClient jdbc;

    SessionRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The newest version of each session of a child, latest day first. */
    List<Session> newest(ChildId child) {
        var places = new HashMap<Key, List<Injection>>();
        jdbc.sql("select session_id, version, muscle, side, units, preparation from toxin_injection"
                        + " where child_id = ? order by place_number")
                .param(child.value())
                .query(row -> {
                    places.computeIfAbsent(
                                    new Key(row.getObject("session_id", UUID.class), row.getLong("version")),
                                    key -> new ArrayList<>())
                            .add(new Injection(
                                    row.getString("muscle"),
                                    Side.valueOf(row.getString("side")),
                                    new ToxinUnits(
                                            row.getBigDecimal("units"),
                                            new Preparation(row.getString("preparation")))));
                });
        var newest = new LinkedHashMap<UUID, Session>();
        jdbc.sql("select * from toxin_session where child_id = ? order by version desc")
                .param(child.value())
                .query(row -> {
                    var key = new Key(row.getObject("session_id", UUID.class), row.getLong("version"));
                    newest.putIfAbsent(
                            key.session(),
                            new Session(
                                    new SessionId(key.session()),
                                    child,
                                    key.version(),
                                    State.valueOf(row.getString("state")),
                                    row.getObject("session_on", LocalDate.class),
                                    places.getOrDefault(key, List.of()),
                                    row.getString("given_by"),
                                    row.getString("note"),
                                    row.getString("early"),
                                    new AccountId(row.getObject("recorded_by", UUID.class)),
                                    row.getObject("recorded_at", OffsetDateTime.class)
                                            .toInstant()));
                });
        return newest.values().stream()
                .sorted(java.util.Comparator.comparing(Session::on).reversed())
                .toList();
    }

    void add(Session session) {
        try {
            jdbc.sql("""
                            insert into toxin_session (session_id, child_id, version, state, session_on, given_by, note,
                              early, recorded_by, recorded_at)
                            values (:id, :child, :version, :state, :day, :given_by, :note, :early, :by, :at)
                            """)
                    .param("id", session.id().value())
                    .param("child", session.child().value())
                    .param("version", session.version())
                    .param("state", session.state().name())
                    .param("day", session.on())
                    .param("given_by", session.givenBy())
                    .param("note", session.note())
                    .param("early", session.early())
                    .param("by", session.by().value())
                    .param("at", session.at().atOffset(ZoneOffset.UTC))
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new Overtaken();
        }
        var number = 0;
        for (var injection : session.injections()) {
            jdbc.sql("""
                            insert into toxin_injection (session_id, child_id, version, place_number, muscle, side,
                              units, preparation) values (?, ?, ?, ?, ?, ?, ?, ?)
                            """)
                    .param(session.id().value())
                    .param(session.child().value())
                    .param(session.version())
                    .param(number++)
                    .param(injection.muscle())
                    .param(injection.side().name())
                    .param(injection.units().amount())
                    .param(injection.units().preparation().name())
                    .update();
        }
    }
}
