package org.hearthway.reminder.internal;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * OB2: kills a real process that keeps and sends messages, again and again, at moments that nobody chose: what it had said
 * was kept is compared with what the mail server holds in the end.
 */
class KilledDeliveryTests {

    private static final int MOST_LINES = 16;
    private static final int MOST_TURNS = 300_000;
    /** Where the kills fall; another number with {@code -Dhearthway.kills=…}. */
    private static final long SEED = Long.getLong("hearthway.kills", 20_260_312);

    @TempDir
    private Path folder;

    private final GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private final MailComposer composer = KilledDelivery.composer();
    /** The processes live at noon of a winter day in New York, so that no hour is quiet. */
    private final Duration ahead = Duration.between(Instant.now(), Instant.parse("2026-03-12T16:00:00Z"));

    private final Set<String> kept = new HashSet<>();

    @BeforeEach
    void startTheServerAndLayOutTheTables() throws Exception {
        server.start();
        Flyway.configure()
                .dataSource(url(), "sa", "")
                .locations("classpath:db/migration")
                .load()
                .migrate();
    }

    @AfterEach
    void stopTheServer() {
        server.stop();
    }

    @Test
    void losesNothingAndRepeatsOnlyWhatWasInFlightInTwentyKills() throws Exception {
        killAndCheck(20);
    }

    @Test
    @Tag("long")
    void losesNothingAndRepeatsOnlyWhatWasInFlightInTwoHundredKills() throws Exception {
        killAndCheck(200);
    }

    /** DB1. */
    @ParameterizedTest
    @ValueSource(strings = {"demo", "clinic"})
    void writesEveryCommitThroughInTheShippedSettings(String profile) throws Exception {
        assertThat(shippedUrl(profile)).contains(";WRITE_DELAY=0");
    }

    private void killAndCheck(int kills) throws Exception {
        var chance = new Random(SEED);
        for (int i = 0; i < kills; i++) {
            // every fourth when the server has just taken a mail, which the process may not have written down yet
            runAndKill(1 + chance.nextInt(MOST_LINES), chance.nextInt(MOST_TURNS), i % 4 == 3);
        }
        drain();
        var counts = delivered();
        var expected = kept.stream().map(composer::messageId).collect(Collectors.toSet());
        var doubtful = query("select idem from outbox_message where state = 'MAY_HAVE_GONE_TWICE'").stream()
                .map(composer::messageId)
                .collect(Collectors.toSet());
        var lost = expected.stream().filter(id -> !counts.containsKey(id)).count();
        var twice = counts.values().stream().mapToInt(count -> count - 1).sum();
        System.out.printf(
                "%d kills (seed %d): %d kept, %d lost, %d sent twice, %d doubtful%n",
                kills, SEED, kept.size(), lost, twice, doubtful.size());
        assertThat(kept).hasSizeGreaterThan(kills);
        assertThat(counts.keySet()).as("lost, with seed %d", SEED).containsAll(expected);
        assertThat(twice)
                .as("in flight: one message a process, with seed %d", SEED)
                .isLessThanOrEqualTo(kills);
        assertThat(doubtful)
                .as("whatever went twice says so, with seed %d", SEED)
                .containsAll(twice(counts));
        assertThat(query("select idem from outbox_message where state not in ('SENT', 'MAY_HAVE_GONE_TWICE')"))
                .isEmpty();
    }

    private static List<String> twice(Map<String, Integer> counts) {
        return counts.entrySet().stream()
                .filter(entry -> entry.getValue() > 1)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Lets the process say so many lines and live so many more turns of a loop, or until a mail came, then kills it. */
    private void runAndKill(int lines, int turns, boolean whenTaken) throws Exception {
        var process = start("forever");
        try (var out = reader(process)) {
            for (int i = 0; i < lines; i++) {
                var line = out.readLine();
                assertThat(line).as("the process lives until it is killed").isNotNull();
                note(line);
            }
            if (whenTaken) {
                assertThat(server.waitForIncomingEmail(60_000, server.getReceivedMessages().length + 1))
                        .isTrue();
            }
            for (int i = 0; i < turns && !whenTaken; i++) {
                Thread.onSpinWait();
            }
            // through its handle, which leaves the pipe open: what was said before the kill counts
            process.toHandle().destroyForcibly();
            process.waitFor();
            out.lines().forEach(this::note);
        } finally {
            process.destroyForcibly();
        }
    }

    private void drain() throws Exception {
        var process = start("drain");
        try (var out = reader(process)) {
            assertThat(out.lines()).last().isEqualTo("drained");
            assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        } finally {
            process.destroyForcibly();
        }
    }

    /** A line cut short by the kill promises nothing. */
    private void note(String line) {
        if (line.matches("kept kept/[0-9a-f-]{36}")) {
            kept.add(line.substring("kept ".length()));
        }
    }

    private Process start(String how) throws IOException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        var quiet = Path.of("src/test/resources/logback-quiet.xml").toAbsolutePath();
        return new ProcessBuilder(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx128m",
                        "-Dlogback.configurationFile=" + quiet,
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledDelivery.class.getName(),
                        url(),
                        String.valueOf(server.getSmtp().getPort()),
                        how,
                        ahead.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static BufferedReader reader(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    private String url() throws IOException {
        return shippedUrl("clinic").replace("${hearthway.data}", folder.toString());
    }

    private static String shippedUrl(String profile) throws IOException {
        var settings = new Properties();
        try (var in = KilledDeliveryTests.class.getResourceAsStream("/application-" + profile + ".properties")) {
            settings.load(in);
        }
        return settings.getProperty("spring.datasource.url");
    }

    private Map<String, Integer> delivered() throws Exception {
        var counts = new HashMap<String, Integer>();
        for (var mail : Arrays.asList(server.getReceivedMessages())) {
            counts.merge(mail.getMessageID(), 1, Integer::sum);
        }
        return counts;
    }

    private List<String> query(String sql) throws Exception {
        try (var connection = DriverManager.getConnection(url(), "sa", "");
                var statement = connection.createStatement();
                var found = statement.executeQuery(sql)) {
            var all = new ArrayList<String>();
            while (found.next()) {
                all.add(found.getString(1));
            }
            return all;
        }
    }
}
