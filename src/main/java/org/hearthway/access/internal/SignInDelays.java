package org.hearthway.access.internal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Makes the next try wait after wrong passwords in a row: the first few at once, then 5 seconds, doubling up to a
 * quarter of an hour. The hundredth wrong one in a row is the last that is looked at (NIST SP 800-63B); from then on a
 * known device or a new link lets the person in, so that nobody is shut out for good. Mail addresses without an account
 * wait alike, or the waiting would tell who has one. Tries from one network wait too, however many accounts they are
 * spread over; a known device does not.
 */
@Component
class SignInDelays {

    private static final int AT_ONCE = 4;
    private static final Duration FIRST = Duration.ofSeconds(5);
    private static final Duration LONGEST = Duration.ofMinutes(15);
    static final int MOST = 100;
    /** Many families and a whole clinic may share one network. */
    private static final int AT_ONCE_FROM_A_NETWORK = 30;

    private record Count(int failures, Instant next) {}

    private final JdbcClient jdbc;
    private final Clock clock;
    private final TriesInMemory strangers;
    private final TriesInMemory networks;

    SignInDelays(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
        this.strangers = new TriesInMemory(SignInDelays::after, MOST, clock);
        this.networks = new TriesInMemory(
                failures -> after(failures - AT_ONCE_FROM_A_NETWORK + AT_ONCE), Integer.MAX_VALUE, clock);
    }

    /** The wait after so many wrong passwords in a row. */
    static Duration after(int failures) {
        if (failures <= AT_ONCE) {
            return Duration.ZERO;
        }
        var doublings = Math.min(failures - AT_ONCE - 1, 16);
        var wait = FIRST.multipliedBy(1L << doublings);
        return wait.compareTo(LONGEST) > 0 ? LONGEST : wait;
    }

    /** Counts a try before its password is looked at; false when it must wait and is not to be looked at. */
    boolean begin(AccountId account, boolean knownDevice) {
        // of several tries at once each counts: the ones that lose look again
        for (int round = 0; round < 10; round++) {
            var found = find(account, knownDevice);
            if (found.isEmpty()) {
                if (insert(account, knownDevice)) {
                    return true;
                }
                continue;
            }
            var count = found.get();
            if (count.failures() >= MOST || clock.instant().isBefore(count.next())) {
                return false;
            }
            if (count(account, knownDevice, count.failures())) {
                return true;
            }
        }
        return false;
    }

    private Optional<Count> find(AccountId account, boolean knownDevice) {
        return jdbc.sql("""
                        select failures, next_try from sign_in_delay
                        where account = :account and known_device = :known
                        """)
                .param("account", account.value())
                .param("known", knownDevice)
                .query((row, n) -> new Count(
                        row.getInt("failures"),
                        Objects.requireNonNull(row.getObject("next_try", OffsetDateTime.class))
                                .toInstant()))
                .optional();
    }

    private boolean insert(AccountId account, boolean knownDevice) {
        try {
            jdbc.sql("""
                            insert into sign_in_delay (account, known_device, failures, next_try)
                            values (:account, :known, 1, :next)
                            """)
                    .param("account", account.value())
                    .param("known", knownDevice)
                    .param("next", next(1))
                    .update();
            return true;
        } catch (DuplicateKeyException anotherWasFirst) {
            return false;
        }
    }

    private boolean count(AccountId account, boolean knownDevice, int seen) {
        return jdbc.sql("""
                                update sign_in_delay set failures = :failures, next_try = :next
                                where account = :account and known_device = :known and failures = :seen
                                """)
                        .param("failures", seen + 1)
                        .param("next", next(seen + 1))
                        .param("account", account.value())
                        .param("known", knownDevice)
                        .param("seen", seen)
                        .update()
                == 1;
    }

    private OffsetDateTime next(int failures) {
        return clock.instant()
                .plus(after(failures))
                .truncatedTo(ChronoUnit.MICROS)
                .atOffset(ZoneOffset.UTC);
    }

    /** The same for a mail address that has no account. */
    boolean begin(String email) {
        return strangers.begin(email);
    }

    /** The same for a network. */
    boolean beginFrom(String network) {
        return networks.begin(network);
    }

    /** The password was right: counting begins anew; on a known device for strangers' tries, too. */
    @Transactional
    public void succeeded(AccountId account, boolean knownDevice, String network) {
        networks.succeeded(network);
        forget(account, false);
        if (knownDevice) {
            forget(account, true);
        }
    }

    /** The person has set a new password: counting begins anew. */
    @Transactional
    public void forget(AccountId account) {
        forget(account, false);
        forget(account, true);
    }

    private void forget(AccountId account, boolean knownDevice) {
        jdbc.sql("""
                        update sign_in_delay set failures = 0, next_try = :now
                        where account = :account and known_device = :known
                        """)
                .param("now", next(0))
                .param("account", account.value())
                .param("known", knownDevice)
                .update();
    }
}
