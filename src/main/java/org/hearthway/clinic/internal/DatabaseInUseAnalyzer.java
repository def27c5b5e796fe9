package org.hearthway.clinic.internal;

import org.h2.api.ErrorCode;
import org.h2.jdbc.JdbcSQLNonTransientConnectionException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says plainly that another Hearthway already runs on the same database file. */
class DatabaseInUseAnalyzer extends AbstractFailureAnalyzer<JdbcSQLNonTransientConnectionException> {

    @Override
    protected @Nullable FailureAnalysis analyze(Throwable root, JdbcSQLNonTransientConnectionException failure) {
        if (failure.getErrorCode() != ErrorCode.DATABASE_ALREADY_OPEN_1) {
            return null;
        }
        return new FailureAnalysis(
                "Another Hearthway is already running on this database file, and only one can.",
                "Stop the other one first, or give this one a folder of its own with --hearthway.data=./other-folder.",
                failure);
    }
}
