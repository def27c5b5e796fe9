package org.hearthway.access.internal;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.Links;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class LinkRows implements Links {

    private static final int ID_BYTES = 16;
    /** 192 bits that nobody can guess without the key. */
    private static final int PROOF_BYTES = 24;

    private final JdbcClient jdbc;
    private final SecretKey key;
    private final Clock clock;

    LinkRows(JdbcClient jdbc, SecretKey key, Clock clock) {
        this.jdbc = jdbc;
        this.key = key;
        this.clock = clock;
    }

    @Override
    @Transactional
    public Link create(Purpose purpose, UUID subject, Instant expires) {
        var link = new Link(UUID.randomUUID(), purpose, subject, expires.truncatedTo(ChronoUnit.MICROS));
        jdbc.sql("""
                        insert into access_link (id, purpose, subject, created_at, expires_at)
                        values (:id, :purpose, :subject, :now, :expires)
                        """)
                .param("id", link.id())
                .param("purpose", purpose.name())
                .param("subject", subject)
                .param("now", now())
                .param("expires", utc(link.expires()))
                .update();
        return link;
    }

    @Override
    public String token(UUID link) {
        var bytes = ByteBuffer.allocate(ID_BYTES + PROOF_BYTES)
                .putLong(link.getMostSignificantBits())
                .putLong(link.getLeastSignificantBits())
                .put(proof(link))
                .array();
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private byte[] proof(UUID link) {
        return Arrays.copyOf(key.digest("link:" + link), PROOF_BYTES);
    }

    @Override
    public Optional<Link> open(Purpose purpose, String token) {
        return identifier(token).flatMap(this::find).filter(link -> link.purpose() == purpose);
    }

    private Optional<UUID> identifier(String token) {
        byte[] bytes;
        try {
            bytes = Base64.getUrlDecoder().decode(token);
        } catch (IllegalArgumentException notWhole) {
            return Optional.empty();
        }
        if (bytes.length != ID_BYTES + PROOF_BYTES) {
            return Optional.empty();
        }
        var buffer = ByteBuffer.wrap(bytes);
        var id = new UUID(buffer.getLong(), buffer.getLong());
        var proof = Arrays.copyOfRange(bytes, ID_BYTES, bytes.length);
        return MessageDigest.isEqual(proof, proof(id)) ? Optional.of(id) : Optional.empty();
    }

    private Optional<Link> find(UUID id) {
        return jdbc.sql("""
                        select id, purpose, subject, expires_at from access_link
                        where id = :id and used_at is null and revoked_at is null and expires_at > :now
                        """)
                .param("id", id)
                .param("now", now())
                .query((row, n) -> new Link(
                        row.getObject("id", UUID.class),
                        Purpose.valueOf(row.getString("purpose")),
                        row.getObject("subject", UUID.class),
                        row.getObject("expires_at", OffsetDateTime.class).toInstant()))
                .optional();
    }

    @Override
    @Transactional
    public boolean use(UUID link) {
        return jdbc.sql("""
                                update access_link set used_at = :now
                                where id = :id and used_at is null and revoked_at is null and expires_at > :now
                                """).param("id", link).param("now", now()).update() == 1;
    }

    @Override
    @Transactional
    public void extend(UUID link, Instant expires) {
        jdbc.sql("update access_link set expires_at = :expires where id = :id and revoked_at is null")
                .param("id", link)
                .param("expires", utc(expires))
                .update();
    }

    @Override
    @Transactional
    public void revoke(Purpose purpose, UUID subject) {
        jdbc.sql("""
                        update access_link set revoked_at = :now
                        where subject = :subject and purpose = :purpose and revoked_at is null and used_at is null
                        """)
                .param("subject", subject)
                .param("purpose", purpose.name())
                .param("now", now())
                .update();
    }

    private OffsetDateTime now() {
        return utc(clock.instant());
    }

    private static OffsetDateTime utc(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }
}
