package org.hearthway.access.internal;

import java.time.Clock;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import org.hearthway.base.AccountId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The phones on which a caregiver stays signed in. */
@Component
class RememberedPhones {

    private final JdbcClient jdbc;
    private final Clock clock;

    RememberedPhones(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Ends staying signed in on every phone of the account. */
    @Transactional
    void forgetAll(AccountId account) {
        jdbc.sql("""
                        update remembered_phone set revoked_at = :now, version = version + 1
                        where account = :account and revoked_at is null
                        """)
                .param("account", account.value())
                .param("now", clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC))
                .update();
    }
}
