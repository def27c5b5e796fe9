package org.hearthway.access.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.Account;
import org.hearthway.access.NewAccount;
import org.hearthway.base.AccountId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The accounts as they lie in the database. Asks nobody: those who use it do. */
@Component
class AccountRows {

    /** An account with what only sign-in may see. */
    record Stored(Account account, @Nullable String passwordHash, long version) {}

    private static final String SELECT = """
            select a.id, a.name, a.email, a.phone, a.language, a.zone, a.state, a.password_hash, a.version, r.role
            from account a join account_role r on r.account = a.id
            """;

    private final JdbcClient jdbc;
    private final Clock clock;

    AccountRows(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    List<Stored> all() {
        return gathered(jdbc.sql(SELECT + " order by lower(a.name), a.id"));
    }

    Optional<Stored> find(AccountId id) {
        return gathered(jdbc.sql(SELECT + " where a.id = :id").param("id", id.value())).stream()
                .findFirst();
    }

    Optional<Stored> findByEmail(String email) {
        return gathered(jdbc.sql(SELECT + " where a.email = :email").param("email", normal(email))).stream()
                .findFirst();
    }

    List<Stored> findAll(Collection<AccountId> ids) {
        if (ids.isEmpty()) {
            return List.of();
        }
        return gathered(jdbc.sql(SELECT + " where a.id in (:ids) order by lower(a.name), a.id")
                .param("ids", ids.stream().map(AccountId::value).distinct().toList()));
    }

    /** The form in which addresses are kept and compared. */
    static String normal(String email) {
        return email.strip().toLowerCase(Locale.ROOT);
    }

    boolean anyActive(Role role) {
        return jdbc.sql("""
                                select count(*) from account a join account_role r on r.account = a.id
                                where a.state = 'ACTIVE' and r.role = :role
                                """).param("role", role.name()).query(Long.class).single() > 0;
    }

    void insert(AccountId id, NewAccount data) {
        jdbc.sql("""
                        insert into account (id, name, email, phone, language, zone, state, created_at, version)
                        values (:id, :name, :email, :phone, :language, :zone, 'INVITED', :now, 1)
                        """)
                .param("id", id.value())
                .param("name", data.name().strip())
                .param("email", normal(data.email()))
                .param("phone", data.phone().strip())
                .param("language", data.language().tag())
                .param("zone", data.zone().getId())
                .param("now", now())
                .update();
        for (var role : data.roles()) {
            jdbc.sql("insert into account_role (account, role) values (:id, :role)")
                    .param("id", id.value())
                    .param("role", role.name())
                    .update();
        }
    }

    /** Returns whether the account still had the version that was read. */
    boolean setState(Stored stored, Account.State state) {
        return jdbc.sql("update account set state = :state, version = version + 1 where id = :id and version = :seen")
                        .param("state", state.name())
                        .param("id", stored.account().id().value())
                        .param("seen", stored.version())
                        .update()
                == 1;
    }

    /** Returns whether the account still had the version that was read. */
    boolean setLanguage(Stored stored, Language language) {
        return jdbc.sql("""
                                update account set language = :language, version = version + 1
                                where id = :id and version = :seen
                                """)
                        .param("language", language.tag())
                        .param("id", stored.account().id().value())
                        .param("seen", stored.version())
                        .update()
                == 1;
    }

    /** Returns whether the account still had the version that was read. */
    boolean setPassword(Stored stored, String hash, Account.State state) {
        return jdbc.sql("""
                                update account set password_hash = :hash, state = :state, version = version + 1
                                where id = :id and version = :seen
                                """)
                        .param("hash", hash)
                        .param("state", state.name())
                        .param("id", stored.account().id().value())
                        .param("seen", stored.version())
                        .update()
                == 1;
    }

    private OffsetDateTime now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private record Row(Stored stored, Role role) {}

    private static List<Stored> gathered(JdbcClient.StatementSpec statement) {
        var byId = new LinkedHashMap<UUID, List<Row>>();
        for (var row : statement.query((r, n) -> row(r)).list()) {
            byId.computeIfAbsent(row.stored().account().id().value(), id -> new ArrayList<>())
                    .add(row);
        }
        return byId.values().stream().map(AccountRows::gathered).toList();
    }

    private static Stored gathered(List<Row> rows) {
        var first = rows.get(0).stored();
        var roles = EnumSet.noneOf(Role.class);
        rows.forEach(row -> roles.add(row.role()));
        var a = first.account();
        return new Stored(
                new Account(a.id(), a.name(), a.email(), a.phone(), roles, a.language(), a.zone(), a.state()),
                first.passwordHash(),
                first.version());
    }

    private static Row row(ResultSet row) throws SQLException {
        var role = Role.valueOf(row.getString("role"));
        var account = new Account(
                new AccountId(row.getObject("id", UUID.class)),
                row.getString("name"),
                row.getString("email"),
                row.getString("phone"),
                EnumSet.of(role),
                Language.of(Locale.forLanguageTag(row.getString("language"))),
                ZoneId.of(row.getString("zone")),
                Account.State.valueOf(row.getString("state")));
        return new Row(new Stored(account, row.getString("password_hash"), row.getLong("version")), role);
    }

    static Map<AccountId, Account> byId(List<Stored> all) {
        var map = new LinkedHashMap<AccountId, Account>();
        all.forEach(stored -> map.put(stored.account().id(), stored.account()));
        return map;
    }
}
