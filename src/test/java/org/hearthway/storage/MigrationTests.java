package org.hearthway.storage;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.sql.SQLException;
import java.util.Locale;
import java.util.TreeSet;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.Test;

/** The same migrations run on the database that ships and on the one a clinic network may choose. */
class MigrationTests {

    @Test
    void bothDatabasesEndWithTheSameTablesAndColumns() throws Exception {
        var h2 = new JdbcDataSource();
        h2.setURL("jdbc:h2:mem:" + UUID.randomUUID()
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
        try (var postgres = EmbeddedPostgres.builder().start()) {
            var other = postgres.getPostgresDatabase();
            migrate(h2);
            migrate(other);
            assertThat(columns(other)).isNotEmpty().isEqualTo(columns(h2));
        }
    }

    private static void migrate(DataSource database) {
        Flyway.configure()
                .dataSource(database)
                .locations("classpath:db/migration")
                .load()
                .migrate();
    }

    private static TreeSet<String> columns(DataSource database) throws SQLException {
        var found = new TreeSet<String>();
        try (var connection = database.getConnection();
                var rows = connection.getMetaData().getColumns(null, "public", "%", "%")) {
            while (rows.next()) {
                found.add((rows.getString("TABLE_NAME") + "." + rows.getString("COLUMN_NAME") + " "
                                + rows.getString("IS_NULLABLE"))
                        .toLowerCase(Locale.ROOT));
            }
        }
        return found;
    }
}
