package org.hearthway.child.internal;

import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Locks what was said of one person and one child. Whoever acts on it and whoever changes it lock the same rows, so that
 * of two at the same moment one waits for the other. Not the child's own row: a message is handed over under that one.
 */
final class Held {

    private Held() {}

    static void rows(JdbcClient jdbc, String table, AccountId account, ChildId child) {
        if (TransactionSynchronizationManager.isActualTransactionActive()
                && !TransactionSynchronizationManager.isCurrentTransactionReadOnly()) {
            jdbc.sql("select child from %s where child = :child and account = :account for update".formatted(table))
                    .param("child", child.value())
                    .param("account", account.value())
                    .query(UUID.class)
                    .list();
        }
    }
}
