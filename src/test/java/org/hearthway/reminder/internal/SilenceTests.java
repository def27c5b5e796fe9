package org.hearthway.reminder.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.reminder.Outbox;
import org.hearthway.sign.Signs;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.transaction.support.TransactionTemplate;

/** A child's status is said while mails wait: from that commit on nothing leaves, and taking it back restores all. */
@HearthwayTest
@DirtiesContext
class SilenceTests {

    private static final GreenMail SERVER = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private static final Viewer.Person NURSE = People.with(Role.NURSE);
    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);

    /** All three mails of the first steps are due by then. */
    private static final Instant ALL_DUE = Instant.parse("2026-03-17T19:00:00Z");

    @DynamicPropertySource
    static void aServerAndTablesOfItsOwn(DynamicPropertyRegistry settings) {
        SERVER.start();
        settings.add("spring.mail.host", () -> "127.0.0.1");
        settings.add("spring.mail.port", () -> SERVER.getSmtp().getPort());
        settings.add("hearthway.outbox.loop", () -> "false");
        settings.add(
                "spring.datasource.url",
                () ->
                        "jdbc:h2:mem:silence;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=60000");
    }

    @AfterAll
    static void stopTheServer() {
        SERVER.stop();
    }

    @Autowired
    private Accounts accounts;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Standings standings;

    @Autowired
    private Visits visits;

    @Autowired
    private Signs signs;

    @Autowired
    private Needs needs;

    @Autowired
    private Outbox outbox;

    @Autowired
    private Delivery delivery;

    @Autowired
    private TransactionTemplate inTransaction;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private SettableClock clock;

    @AfterEach
    void backToTheStart() throws Exception {
        clock.set(HearthwayTest.START);
        SERVER.purgeEmailFromAllMailboxes();
    }

    private record Family(ChildId child, Viewer.Person parent, String email) {}

    private Family withThreeMailsWaiting() {
        var child = Children.enter(register);
        var email = People.freshEmail();
        var account = accounts.invite(
                        People.with(Role.ADMINISTRATOR),
                        new NewAccount(
                                "Pat Somebody", email, "555-0142", Set.of(Role.CAREGIVER), Language.EN, People.ZONE))
                .account();
        households.link(People.with(Role.ADMINISTRATOR), child, account, Households.Reach.FULL);
        for (var hour : List.of(9, 11, 13)) {
            visits.book(
                    DESK,
                    child,
                    new Visits.Booking(
                            "therapy", LocalDateTime.of(2026, 3, 24, hour, 30), 45, "Room 2", Optional.empty()));
        }
        return new Family(child, People.as(account, Role.CAREGIVER), email);
    }

    private void say(ChildId child, Status status, long seen) {
        standings.say(NURSE, child, new Standings.Saying(status, "told by telephone", Optional.empty()), seen);
    }

    private List<MimeMessage> sentTo(Family family) throws Exception {
        var all = new java.util.ArrayList<MimeMessage>();
        for (var mail : SERVER.getReceivedMessages()) {
            if (mail.getAllRecipients()[0].toString().equals(family.email())) {
                all.add(mail);
            }
        }
        return all;
    }

    /** Every column of the messages that people or time could have changed. */
    private List<Map<String, Object>> stored(ChildId child) {
        return jdbc.sql("""
                        select idem, state, due, tries, reason, note, by_hand, doubtful, unwanted, settled_at
                        from outbox_message where child = :child order by idem
                        """).param("child", child.value()).query().listOfRows();
    }

    private List<String> waiting(ChildId child) {
        return outbox.board(DESK).stream()
                .filter(message -> message.child().equals(child))
                .map(message -> message.state().name())
                .collect(Collectors.toList());
    }

    @Test
    void afterADeathNothingLeavesAndTakingItBackRestoresExactly() throws Exception {
        var family = withThreeMailsWaiting();
        var before = stored(family.child());
        assertThat(before).hasSizeGreaterThanOrEqualTo(3);

        say(family.child(), Status.DIED, 0);
        clock.set(ALL_DUE);
        delivery.round();

        assertThat(sentTo(family)).isEmpty();
        assertThat(stored(family.child())).isEqualTo(before);
        assertThat(waiting(family.child())).isEmpty();

        standings.takeBack(NURSE, family.child(), "wrong child", 1);
        assertThat(stored(family.child())).isEqualTo(before);
        delivery.round();
        assertThat(sentTo(family)).hasSize(3);
    }

    @Test
    void aLateReportIsKeptAndTriggersNothing() {
        var family = withThreeMailsWaiting();
        say(family.child(), Status.DIED, 0);

        signs.report(
                family.parent(),
                family.child(),
                new Signs.ReportData(UUID.randomUUID(), List.of(), true, "written before we knew"));

        assertThat(signs.of(NURSE, family.child())).hasSize(1);
        assertThat(needs.open(NURSE)).noneMatch(item -> item.child().equals(family.child()));

        standings.takeBack(NURSE, family.child(), "wrong child", 1);
        assertThat(needs.open(NURSE)).anyMatch(item -> item.child().equals(family.child()));
    }

    @Test
    void aChildInHospitalIsStillWatched() {
        var family = withThreeMailsWaiting();
        say(family.child(), Status.AWAY, 0);

        signs.report(
                family.parent(),
                family.child(),
                new Signs.ReportData(UUID.randomUUID(), List.of(), true, "the pump beeps here"));

        assertThat(needs.open(NURSE)).anyMatch(item -> item.child().equals(family.child()));
    }

    @Test
    void aVisitBookedInTheSilenceIsRemindedOfOnceItEnds() throws Exception {
        var family = withThreeMailsWaiting();
        say(family.child(), Status.AWAY, 0);
        var before = stored(family.child()).size();
        visits.book(
                DESK,
                family.child(),
                new Visits.Booking("therapy", LocalDateTime.of(2026, 3, 27, 10, 30), 45, "Room 2", Optional.empty()));
        assertThat(stored(family.child())).hasSize(before);

        say(family.child(), Status.ACTIVE, 1);

        assertThat(stored(family.child()).size()).isGreaterThan(before);
    }

    @Test
    void nobodySendsByHandInTheSilence() {
        var family = withThreeMailsWaiting();
        var message = outbox.board(DESK).stream()
                .filter(each -> each.child().equals(family.child()))
                .findFirst()
                .orElseThrow();
        say(family.child(), Status.LEFT, 0);
        assertThatThrownBy(() -> outbox.sendNow(DESK, message.id(), message.version()))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        refused -> assertThat(refused.problems().get(0).key()).isEqualTo("reminder.problem.quiet"));
    }

    /**
     * The status is said but not yet committed when the delivery turns: it waits for that commit and then sends nothing,
     * although it had claimed the mails already.
     */
    @Test
    void aDeliveryUnderWayWaitsForTheWordAndThenSendsNothing() throws Exception {
        var family = withThreeMailsWaiting();
        clock.set(ALL_DUE);
        var said = new CountDownLatch(1);
        var go = new CountDownLatch(1);
        var saying = CompletableFuture.runAsync(() -> inTransaction.executeWithoutResult(status -> {
            say(family.child(), Status.DIED, 0);
            said.countDown();
            await(go);
        }));
        await(said);
        var round = CompletableFuture.runAsync(delivery::round);
        waitUntil(() ->
                stored(family.child()).stream().anyMatch(row -> row.get("state").equals("SENDING")));
        go.countDown();
        saying.get(30, TimeUnit.SECONDS);
        round.get(30, TimeUnit.SECONDS);

        assertThat(sentTo(family)).isEmpty();
        assertThat(stored(family.child())).extracting(row -> row.get("state")).doesNotContain("SENT", "SENDING");
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void waitUntil(java.util.function.BooleanSupplier state) {
        var end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (!state.getAsBoolean()) {
            assertThat(System.nanoTime()).as("waited half a minute").isLessThan(end);
            Thread.onSpinWait();
        }
    }
}
