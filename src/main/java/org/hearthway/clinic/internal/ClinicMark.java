package org.hearthway.clinic.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.flyway.FlywayMigrationStrategy;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcUtils;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.stereotype.Component;

/**
 * Looks at whose database this is before the first migration touches it, and marks an empty one. Runs before any
 * other part can write.
 */
@Component
class ClinicMark implements FlywayMigrationStrategy {

    private static final String TABLE = "clinic_mark";
    private static final String DEMO = "demo";

    private final Clock clock;
    private final String kind;

    ClinicMark(Clock clock, @Value("${hearthway.kind}") String kind) {
        this.clock = clock;
        this.kind = kind;
    }

    @Override
    public void migrate(Flyway flyway) {
        var database = flyway.getConfiguration().getDataSource();
        if (hasTable(database)) {
            check(database);
            if (isYesterdaysDemo(database)) {
                // the demo's dates are counted from today: an older one is thrown away and laid out afresh
                Flyway.configure()
                        .configuration(flyway.getConfiguration())
                        .cleanDisabled(false)
                        .load()
                        .clean();
            }
        }
        flyway.migrate();
        if (marked(database).isEmpty()) {
            JdbcClient.create(database)
                    .sql("insert into clinic_mark (only_row, kind, marked_on) values (1, :kind, :today)")
                    .param("kind", kind)
                    .param("today", LocalDate.now(clock))
                    .update();
        }
    }

    private void check(DataSource database) {
        marked(database).filter(mark -> !mark.equals(kind)).ifPresent(mark -> {
            throw new WrongDatabase(mark, kind);
        });
    }

    private boolean isYesterdaysDemo(DataSource database) {
        return kind.equals(DEMO)
                && JdbcClient.create(database)
                        .sql("select marked_on from clinic_mark where kind = :kind")
                        .param("kind", DEMO)
                        .query(LocalDate.class)
                        .optional()
                        .filter(markedOn -> markedOn.isBefore(LocalDate.now(clock)))
                        .isPresent();
    }

    private static Optional<String> marked(DataSource database) {
        return JdbcClient.create(database)
                .sql("select kind from clinic_mark")
                .query(String.class)
                .optional();
    }

    private static boolean hasTable(DataSource database) {
        try {
            return JdbcUtils.extractDatabaseMetaData(database, meta -> {
                var connection = meta.getConnection();
                try (var tables = meta.getTables(connection.getCatalog(), schema(connection), TABLE, null)) {
                    return tables.next();
                }
            });
        } catch (MetaDataAccessException e) {
            // keeps the driver's reason, for the analyzer that explains a file already in use
            throw new DataAccessResourceFailureException("the database cannot be opened", e);
        }
    }

    private static String schema(Connection connection) throws SQLException {
        return connection.getSchema();
    }
}
