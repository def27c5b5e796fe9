package org.hearthway.caseload.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.access.Accounts;
import org.hearthway.access.OnCall;
import org.hearthway.access.Passwords;
import org.hearthway.base.ChildId;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.Needs.Outcome;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Standing;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.Team;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

/**
 * A sign reported in a night on which the clocks change, from the report to the answer: what the family sees, who is told
 * when. The clocks change on March 8 and November 1, 2026, at 02:00 (15 U.S.C. 260a).
 */
@HearthwayTest
@DirtiesContext
@TestPropertySource(
        properties = {
            "spring.datasource.url=jdbc:h2:mem:nights;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=60000",
            "hearthway.outbox.loop=false",
            "hearthway.on-call.first=P1D",
            "hearthway.needs.first=P1D"
        })
class EscalationNightTests {

    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);

    @Autowired
    private OnCall onCall;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Passwords passwords;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Standings standings;

    @Autowired
    private Signs signs;

    @Autowired
    private Needs needs;

    @Autowired
    private EscalationLoop loop;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private SettableClock clock;

    private Viewer.Person ana;
    private Viewer.Person ben;
    private ChildId child;
    private Viewer.Person parent;

    @BeforeEach
    void twoOnCall() {
        ana = Team.member(accounts, passwords, "Ana Night", Role.NURSE);
        ben = Team.member(accounts, passwords, "Ben Night", Role.PHYSICIAN);
        var order = List.of(ana.account(), ben.account());
        onCall.say(
                ADMINISTRATOR,
                new OnCall.Order(15, order, order, Optional.empty()),
                onCall.now(ADMINISTRATOR).version());
        child = Children.enter(register);
        parent = Children.caregiver(households, child, Households.Reach.FULL);
    }

    @AfterEach
    void settle() {
        open().ifPresent(item -> needs.close(ana, item.id(), Outcome.SPOKE, "end of the test", item.version()));
    }

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(People.ZONE).toInstant();
    }

    private UUID report(Instant at, Sign.Urgency urgency) {
        clock.set(at);
        var sign = urgency == Sign.Urgency.NOW ? "hard-to-wake" : "baclofen-ran-out";
        assertThat(signs.find(sign)).map(Sign::urgency).contains(urgency);
        var key = UUID.randomUUID();
        signs.report(parent, child, new Signs.ReportData(key, List.of(sign), true, "since supper"));
        return key;
    }

    private Optional<Needs.Item> open() {
        return needs.open(ana).stream()
                .filter(item -> item.child().equals(child) && item.handed().isPresent())
                .findFirst();
    }

    private Needs.Item item() {
        return open().orElseThrow();
    }

    private Needs.Handed handed() {
        return item().handed().orElseThrow();
    }

    /** The loop turns every ten seconds of the night until a moment. */
    private void nightUntil(Instant end) {
        for (var now = clock.instant(); now.isBefore(end); now = now.plusSeconds(10)) {
            clock.set(now);
            loop.turn();
        }
        clock.set(end);
        loop.turn();
    }

    private List<String> told() {
        return handed().told().stream()
                .map(turn -> turn.with().name() + " " + turn.since())
                .toList();
    }

    private List<String> mails(String state) {
        return jdbc.sql("select person, due from outbox_message where to_team and child = ? and state = ? order by due")
                .params(child.value(), state)
                .query((row, n) -> row.getString("person"))
                .list();
    }

    private Optional<Signs.Read> familySees(UUID key) {
        return signs.of(parent, child).stream()
                .filter(report -> report.key().equals(key))
                .findFirst()
                .flatMap(Signs.Report::read);
    }

    @ParameterizedTest
    @CsvSource({
        // the hour from two to three is left out: two o'clock is three o'clock
        "2026-03-08T02:00:00, 2026-03-08T07:00:00Z",
        // the hour from one to two came twice and is over
        "2026-11-01T02:00:00, 2026-11-01T07:00:00Z",
        // ten minutes before the clock goes back
        "2026-11-01T01:50:00, 2026-11-01T05:50:00Z"
    })
    void overTheNightOfTheChangeEachHasAQuarterOfAnHour(String local, Instant instant) {
        var reported = at(local);
        assertThat(reported).isEqualTo(instant);
        var key = report(reported, Sign.Urgency.URGENT);

        assertThat(told()).containsExactly("Ana Night " + reported);
        assertThat(mails("PLANNED")).containsExactly(ana.account().toString());
        assertThat(handed().next()).hasValueSatisfying(next -> {
            assertThat(next.with().name()).isEqualTo("Ben Night");
            assertThat(next.since()).isEqualTo(reported.plusSeconds(900));
        });
        assertThat(familySees(key)).isEmpty();

        nightUntil(reported.plusSeconds(899));
        assertThat(told()).hasSize(1);
        nightUntil(reported.plusSeconds(905));
        assertThat(told()).containsExactly("Ana Night " + reported, "Ben Night " + reported.plusSeconds(900));
        assertThat(handed().startedOver()).isFalse();
        assertThat(familySees(key)).isEmpty();

        nightUntil(reported.plusSeconds(1_805));
        assertThat(told()).last().isEqualTo("Ana Night " + reported.plusSeconds(1_800));
        assertThat(handed().startedOver()).isTrue();
        assertThat(needs.open(ana).get(0).id()).as("at the top").isEqualTo(item().id());

        clock.set(reported.plusSeconds(1_860));
        needs.see(ben, item().id(), item().version());
        assertThat(familySees(key)).hasValueSatisfying(read -> {
            assertThat(read.by()).isEqualTo("Ben Night");
            assertThat(read.at()).isEqualTo(reported.plusSeconds(1_860));
        });
        assertThat(mails("PLANNED")).isEmpty();
        assertThat(mails("CANCELLED")).hasSize(3);
        nightUntil(reported.plusSeconds(7_200));
        assertThat(told()).hasSize(3);
        assertThat(handed().next()).isEmpty();
    }

    @Test
    void takingItUpEndsItAtOnce() {
        var reported = at("2026-03-12T22:00:00");
        report(reported, Sign.Urgency.NOW);
        needs.take(ben, item().id(), item().version());
        assertThat(mails("PLANNED")).isEmpty();
        nightUntil(reported.plusSeconds(3_600));
        assertThat(told()).hasSize(1);
    }

    @Test
    void ofTwoWhoTakeItUpAtOnceOneHasIt() throws Exception {
        report(at("2026-03-12T23:00:00"), Sign.Urgency.URGENT);
        var seen = item();
        var pool = Executors.newFixedThreadPool(3);
        try {
            var done = new ArrayList<String>();
            var all = new ArrayList<Callable<String>>();
            for (var person : List.of(ana, ben)) {
                all.add(() -> {
                    try {
                        needs.take(person, seen.id(), seen.version());
                        return "has it";
                    } catch (Overtaken overtaken) {
                        return "overtaken";
                    }
                });
            }
            for (var each : pool.invokeAll(all)) {
                done.add(each.get());
            }
            assertThat(done).containsExactlyInAnyOrder("has it", "overtaken");
        } finally {
            pool.shutdownNow();
        }
        assertThat(item().owner()).isPresent();
        nightUntil(at("2026-03-12T23:40:00"));
        assertThat(told()).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(
            value = Status.class,
            names = {"DIED", "LEFT"})
    void itStandsStillWhileNobodyWatchesAndGoesOnWhenThatIsTakenBack(Status status) {
        var reported = at("2026-03-13T02:00:00");
        report(reported, Sign.Urgency.URGENT);
        var before = item();
        clock.set(reported.plusSeconds(300));
        standings.say(ana, child, new Standings.Saying(status, "told by telephone", Optional.empty()), 0);
        nightUntil(reported.plusSeconds(600));
        assertThat(open()).isEmpty();
        standings.takeBack(ana, child, "wrong child", 1);
        assertThat(item()).as("exactly as it was").isEqualTo(before);

        standings.say(ana, child, new Standings.Saying(status, "told by telephone", Optional.empty()), 2);
        nightUntil(reported.plusSeconds(4_000));
        assertThat(mails("PLANNED")).as("nobody else was told").hasSize(1);
        standings.takeBack(ana, child, "wrong child", 3);
        assertThat(told())
                .as("the next is told in the moment it is taken back")
                .containsExactly("Ana Night " + reported, "Ben Night " + reported.plusSeconds(4_000));
    }

    /** The whole way: reported and read while nobody watched the child, who then comes back. */
    @ParameterizedTest
    @EnumSource(
            value = Status.class,
            names = {"MOVED", "LEFT"})
    void aReportReadWhileNobodyWatchedGoesToNobodyWhenTheChildComesBack(Status status) {
        var reported = at("2026-03-14T02:00:00");
        clock.set(reported.minusSeconds(3_600));
        var to = status.needsReceivingService()
                ? Optional.of(new Standing.Handover("Harbour Clinic", Optional.empty()))
                : Optional.<Standing.Handover>empty();
        standings.say(ana, child, new Standings.Saying(status, "told by telephone", to), 0);
        var key = report(reported, Sign.Urgency.NOW);
        var unread = report(reported.plusSeconds(60), Sign.Urgency.URGENT);
        nightUntil(reported.plusSeconds(600));
        assertThat(open()).isEmpty();

        clock.set(reported.plusSeconds(700));
        signs.read(ben, child, key);
        assertThat(familySees(key)).map(Signs.Read::by).contains("Ben Night");
        nightUntil(reported.plusSeconds(1_000));
        assertThat(mails("PLANNED")).isEmpty();

        standings.takeBack(ana, child, "the family stays with us", 1);
        nightUntil(reported.plusSeconds(2_000));
        var items = needs.open(ana).stream()
                .filter(item -> item.child().equals(child))
                .collect(Collectors.toMap(item -> item.cause().subject(), Function.identity()));
        var read = Objects.requireNonNull(items.get(key.toString()));
        assertThat(read.seen()).hasValueSatisfying(seen -> {
            assertThat(seen.by().name()).isEqualTo("Ben Night");
            assertThat(seen.at()).isEqualTo(reported.plusSeconds(700));
        });
        assertThat(read.handed().orElseThrow().told()).as("was read").isEmpty();
        assertThat(read.handed().orElseThrow().waits()).isFalse();
        var other = Objects.requireNonNull(items.get(unread.toString()));
        assertThat(other.handed().orElseThrow().told())
                .as("nobody has read this one")
                .extracting(turn -> turn.with().name())
                .containsExactly("Ana Night", "Ben Night");
        assertThat(mails("PLANNED")).hasSize(2);

        needs.close(ben, read.id(), Outcome.SPOKE, "spoke with the mother", read.version());
        needs.close(ben, other.id(), Outcome.SPOKE, "spoke with the mother", other.version());
        nightUntil(reported.plusSeconds(3_000));
        assertThat(needs.open(ana))
                .noneMatch(item -> item.child().equals(child) && item.cause().rule() == Rule.SIGN);
    }

    @Test
    void aChildInHospitalIsStillCaredFor() {
        var reported = at("2026-03-13T04:00:00");
        standings.say(ana, child, new Standings.Saying(Status.AWAY, "on the ward", Optional.empty()), 0);
        report(reported, Sign.Urgency.URGENT);
        nightUntil(reported.plusSeconds(905));
        assertThat(told()).hasSize(2);
        assertThat(mails("PLANNED")).hasSize(2);
    }

    @Test
    void whoWasShutOutIsPassedOver() {
        accounts.disable(ADMINISTRATOR, ana.account());
        report(at("2026-03-13T05:00:00"), Sign.Urgency.URGENT);
        assertThat(told()).singleElement().asString().startsWith("Ben Night");
    }

    @Test
    void withNobodyOnCallTheListSaysSo() {
        accounts.disable(ADMINISTRATOR, ana.account());
        accounts.disable(ADMINISTRATOR, ben.account());
        report(at("2026-03-13T05:30:00"), Sign.Urgency.URGENT);
        assertThat(handed().waits()).isTrue();
        assertThat(handed().at()).isEmpty();
        assertThat(handed().next()).isEmpty();
    }

    @Test
    void aSignForOfficeHoursGoesToNobody() {
        clock.set(at("2026-03-13T06:00:00"));
        var key = UUID.randomUUID();
        signs.report(parent, child, new Signs.ReportData(key, List.of(), true, "a note for the team"));
        assertThat(open()).isEmpty();
        assertThat(mails("PLANNED")).isEmpty();
    }
}
