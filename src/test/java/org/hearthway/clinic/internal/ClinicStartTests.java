package org.hearthway.clinic.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.core.env.MapPropertySource;
import org.springframework.core.env.StandardEnvironment;
import org.springframework.jdbc.core.simple.JdbcClient;

class ClinicStartTests {

    private static final Map<String, Object> SET = Map.ofEntries(
            Map.entry("hearthway.clinic.name", "Elmbrook"),
            Map.entry("hearthway.clinic.sender-name", "Elmbrook Office"),
            Map.entry("hearthway.clinic.sender-address", "office@elmbrook.example"),
            Map.entry("hearthway.clinic.zone", "America/Chicago"),
            Map.entry("hearthway.clinic.emergency-number", "555-0100"),
            Map.entry("hearthway.clinic.urgent-line", "+1 555-0121"),
            Map.entry("hearthway.clinic.office-line", "555-0134"),
            Map.entry("hearthway.clinic.office-days", "monday, tuesday,friday"),
            Map.entry("hearthway.clinic.office-opens", "08:00"),
            Map.entry("hearthway.clinic.office-closes", "16:30"),
            Map.entry("hearthway.clinic.base-url", "https://care.elmbrook.example/"));

    private static org.hearthway.clinic.ClinicSettings read(Map<String, Object> properties) {
        var environment = new StandardEnvironment();
        environment.getPropertySources().addFirst(new MapPropertySource("test", properties));
        return new ClinicConfiguration().clinicSettings(environment);
    }

    private static Map<String, Object> with(String name, String text) {
        var all = new HashMap<>(SET);
        all.put("hearthway.clinic." + name, text);
        return all;
    }

    @Test
    void takesACompleteSetting() {
        var settings = read(SET);

        assertThat(settings.demo()).isFalse();
        assertThat(settings.officeDays())
                .containsExactlyInAnyOrder(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.FRIDAY);
        assertThat(settings.officeCloses()).isEqualTo(LocalTime.of(16, 30));
        assertThat(settings.baseUrl()).isEqualTo("https://care.elmbrook.example");
    }

    @Test
    void namesEverySettingThatIsMissingAtOnce() {
        var broken = catchThrowableOfType(SettingsBroken.class, () -> read(Map.of()));

        assertThat(broken.lines()).hasSameSizeAs(SET.keySet());
        SET.keySet()
                .forEach(
                        name -> assertThat(broken.lines()).anyMatch(line -> line.startsWith(name + ": it is missing")));
        assertThat(new SettingsBrokenAnalyzer().analyze(broken).getDescription())
                .contains("hearthway.clinic.urgent-line");
    }

    @ParameterizedTest
    @CsvSource({
        "zone, UTC+2",
        "zone, Elmbrook",
        "sender-address, office at elmbrook",
        "emergency-number, call us",
        "urgent-line, 5",
        "office-days, 'monday,someday'",
        "office-opens, eight",
        "office-closes, 07:00",
        "base-url, http://care.elmbrook.example",
        "base-url, care.elmbrook.example",
        "base-url, https://care.elmbrook.example/?a=b"
    })
    void refusesAWrongSettingByName(String name, String text) {
        assertThatThrownBy(() -> read(with(name, text)))
                .isInstanceOf(SettingsBroken.class)
                .hasMessageStartingWith("hearthway.clinic." + name + ": ");
    }

    private static DataSource database() {
        var source = new JdbcDataSource();
        source.setURL("jdbc:h2:mem:" + UUID.randomUUID()
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
        source.setUser("sa");
        return source;
    }

    private static void start(DataSource database, String kind) {
        var clock = Clock.fixed(Instant.parse("2026-03-12T14:00:00Z"), ZoneOffset.UTC);
        new ClinicMark(clock, kind)
                .migrate(Flyway.configure()
                        .dataSource(database)
                        .locations("classpath:db/migration")
                        .load());
    }

    @ParameterizedTest
    @CsvSource({"demo,clinic", "clinic,demo"})
    void neverStartsOnADatabaseOfTheOtherKind(String marked, String started) {
        var database = database();
        start(database, marked);
        start(database, marked);

        var wrong = catchThrowableOfType(WrongDatabase.class, () -> start(database, started));

        assertThat(new WrongDatabaseAnalyzer().analyze(wrong).getDescription())
                .contains("the demo clinic", "a real clinic", "did not start");
        assertThat(JdbcClient.create(database)
                        .sql("select kind from clinic_mark")
                        .query(String.class)
                        .single())
                .isEqualTo(marked);
    }

    /** Holds a database file open until its input ends: another program on the same file. */
    static final class Holder {

        private Holder() {}

        public static void main(String[] args) throws Exception {
            try (var open = DriverManager.getConnection(args[0], "sa", "")) {
                System.out.println(open.isValid(1) ? "open" : "closed");
                System.out.flush();
                System.in.read();
            }
        }
    }

    /** DB4: one process a file; the second says so, and starts once the first has gone. */
    @Test
    void saysPlainlyThatAnotherOneRunsOnTheSameFile(@TempDir Path folder) throws Exception {
        var database = new JdbcDataSource();
        database.setURL("jdbc:h2:file:" + folder.resolve("clinic") + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE");
        database.setUser("sa");
        start(database, "clinic");

        var other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Holder.class.getName(),
                        database.getURL())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (var says = other.inputReader()) {
            assertThat(says.readLine()).isEqualTo("open");

            var failure = catchThrowable(() -> start(database, "clinic"));

            assertThat(new DatabaseInUseAnalyzer().analyze(failure)).isNotNull().satisfies(analysis -> {
                assertThat(analysis.getDescription()).contains("already running on this database file");
                assertThat(analysis.getAction()).contains("--hearthway.data=");
            });
            other.getOutputStream().close();
            assertThat(other.waitFor(1, TimeUnit.MINUTES)).isTrue();
            start(database, "clinic");
        } finally {
            other.destroyForcibly();
        }
        assertThat(new DatabaseInUseAnalyzer().analyze(new IllegalStateException()))
                .isNull();
    }
}
