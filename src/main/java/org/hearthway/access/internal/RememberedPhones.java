package org.hearthway.access.internal;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.Viewer;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The phones on which a caregiver stays signed in. A phone holds a token, the database its SHA-256. Each use hands
 * the phone a new token; the one before stays good, for requests under way and for an answer that never arrived.
 * A token older than that can only be a copy: the phone is forgotten.
 */
@Component
class RememberedPhones {

    static final Duration LASTS = Duration.ofDays(90);
    /** So long the former token opens without a new one being made: requests that left the phone together. */
    static final Duration TOGETHER = Duration.ofSeconds(60);

    private static final int SERIES_BYTES = 16;
    private static final int TOKEN_BYTES = 20;

    /** Whose phone it is, and the token to hand it now, if it is due a new one. */
    record Known(AccountId account, Optional<String> fresh) {}

    private record Row(
            UUID series,
            AccountId account,
            String hash,
            @Nullable String former,
            OffsetDateTime rotated,
            long version) {}

    private final JdbcClient jdbc;
    private final AuditTrail trail;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    RememberedPhones(JdbcClient jdbc, AuditTrail trail, Clock clock) {
        this.jdbc = jdbc;
        this.trail = trail;
        this.clock = clock;
    }

    /** Remembers a phone and returns the token to hand it. */
    @Transactional
    String remember(AccountId account) {
        var series = UUID.randomUUID();
        var secret = secret();
        jdbc.sql("""
                        insert into remembered_phone
                          (series, account, token_hash, rotated_at, created_at, expires_at, version)
                        values (:series, :account, :hash, :now, :now, :expires, 1)
                        """)
                .param("series", series)
                .param("account", account.value())
                .param("hash", hash(secret))
                .param("now", now())
                .param("expires", now().plus(LASTS))
                .update();
        return token(series, secret);
    }

    /** Whom a token lets in; empty when it does not hold. */
    @Transactional
    Optional<Known> present(String token) {
        return parse(token).flatMap(parsed -> find(parsed.series()).flatMap(row -> judge(row, parsed.hash())));
    }

    private Optional<Known> judge(Row row, String hash) {
        if (hash.equals(row.hash())) {
            return Optional.of(rotate(row, hash));
        }
        if (hash.equals(row.former())) {
            var together = now().isBefore(row.rotated().plus(TOGETHER));
            return Optional.of(together ? new Known(row.account(), Optional.empty()) : rotate(row, hash));
        }
        end(row.series());
        trail.happened(
                new Viewer.Machine("stay-signed-in"), "phone forgotten, an old token came: account " + row.account());
        return Optional.empty();
    }

    /** The presented token stays good as the former one. Of two at once one makes the new token, both are let in. */
    private Known rotate(Row row, String presented) {
        var secret = secret();
        var moved = jdbc.sql("""
                        update remembered_phone
                        set token_hash = :fresh, former_hash = :presented, rotated_at = :now, version = version + 1
                        where series = :series and version = :seen
                        """)
                .param("fresh", hash(secret))
                .param("presented", presented)
                .param("now", now())
                .param("series", row.series())
                .param("seen", row.version())
                .update();
        return new Known(row.account(), moved == 1 ? Optional.of(token(row.series(), secret)) : Optional.empty());
    }

    private Optional<Row> find(UUID series) {
        return jdbc.sql("""
                        select series, account, token_hash, former_hash, rotated_at, version
                        from remembered_phone
                        where series = :series and revoked_at is null and expires_at > :now
                        """)
                .param("series", series)
                .param("now", now())
                .query((row, n) -> new Row(
                        row.getObject("series", UUID.class),
                        new AccountId(row.getObject("account", UUID.class)),
                        row.getString("token_hash"),
                        row.getString("former_hash"),
                        Objects.requireNonNull(row.getObject("rotated_at", OffsetDateTime.class)),
                        row.getLong("version")))
                .optional();
    }

    /** Forgets the phone that holds the token. */
    @Transactional
    void forget(String token) {
        parse(token).ifPresent(parsed -> end(parsed.series()));
    }

    private void end(UUID series) {
        jdbc.sql("""
                        update remembered_phone set revoked_at = :now, version = version + 1
                        where series = :series and revoked_at is null
                        """).param("series", series).param("now", now()).update();
    }

    /** Ends staying signed in on every phone of the account. */
    @Transactional
    void forgetAll(AccountId account) {
        jdbc.sql("""
                        update remembered_phone set revoked_at = :now, version = version + 1
                        where account = :account and revoked_at is null
                        """).param("account", account.value()).param("now", now()).update();
    }

    private byte[] secret() {
        var secret = new byte[TOKEN_BYTES];
        random.nextBytes(secret);
        return secret;
    }

    private record Parsed(UUID series, String hash) {}

    private static String token(UUID series, byte[] secret) {
        return Base64.getUrlEncoder()
                .withoutPadding()
                .encodeToString(ByteBuffer.allocate(SERIES_BYTES + TOKEN_BYTES)
                        .putLong(series.getMostSignificantBits())
                        .putLong(series.getLeastSignificantBits())
                        .put(secret)
                        .array());
    }

    private static Optional<Parsed> parse(String token) {
        try {
            var bytes = Base64.getUrlDecoder().decode(token);
            if (bytes.length != SERIES_BYTES + TOKEN_BYTES) {
                return Optional.empty();
            }
            var buffer = ByteBuffer.wrap(bytes);
            return Optional.of(new Parsed(
                    new UUID(buffer.getLong(), buffer.getLong()),
                    hash(Arrays.copyOfRange(bytes, SERIES_BYTES, bytes.length))));
        } catch (IllegalArgumentException notAToken) {
            return Optional.empty();
        }
    }

    private static String hash(byte[] secret) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(secret));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private OffsetDateTime now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }
}
