package org.hearthway.reminder.internal;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.access.Accounts;
import org.hearthway.access.Passwords;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.reminder.Outbox;
import org.hearthway.reminder.StaffMail;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.Team;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.transaction.support.TransactionTemplate;

/** Mail to people of the clinic: at any hour, neutral, and not for a child whom nobody watches. */
@HearthwayTest
@DirtiesContext
class StaffMailTests {

    private static final GreenMail SERVER = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private static final Viewer.Machine MACHINE = new Viewer.Machine("test");
    private static final Viewer.Person NURSE = People.with(Role.NURSE);

    /** 02:15 in New York. */
    private static final Instant AT_NIGHT = Instant.parse("2026-03-13T06:15:00Z");

    @DynamicPropertySource
    static void aServerAndTablesOfItsOwn(DynamicPropertyRegistry settings) {
        SERVER.start();
        settings.add("spring.mail.host", () -> "127.0.0.1");
        settings.add("spring.mail.port", () -> SERVER.getSmtp().getPort());
        settings.add("hearthway.outbox.loop", () -> "false");
        settings.add(
                "spring.datasource.url",
                () ->
                        "jdbc:h2:mem:staffmail;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
    }

    @AfterAll
    static void stopTheServer() {
        SERVER.stop();
    }

    @Autowired
    private StaffMail staffMail;

    @Autowired
    private Outbox outbox;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Passwords passwords;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Standings standings;

    @Autowired
    private Delivery delivery;

    @Autowired
    private BannedWords banned;

    @Autowired
    private TransactionTemplate inTransaction;

    @Autowired
    private SettableClock clock;

    private ChildId child;

    @BeforeEach
    void night() {
        clock.set(AT_NIGHT);
        child = Children.enter(register);
    }

    @AfterEach
    void noMailStays() throws Exception {
        SERVER.purgeEmailFromAllMailboxes();
    }

    private void send(String key, Viewer.Person to) {
        inTransaction.executeWithoutResult(status -> staffMail.send(
                MACHINE, child, new StaffMail.Note(key, "need:" + child, to.account(), "on-call", AT_NIGHT)));
    }

    private List<MimeMessage> sent() {
        return Stream.of(SERVER.getReceivedMessages()).collect(Collectors.toList());
    }

    private Viewer.Person member(Language language) {
        return Team.member(accounts, passwords, "Nell Somebody", Role.NURSE, language);
    }

    @Test
    void goesAtNightInTheReadersLanguageAndTellsNothingOfTheChild() throws Exception {
        send("night-en", member(Language.EN));
        send("night-es", member(Language.ES));
        delivery.round();
        assertThat(sent()).hasSize(2);
        for (var mail : sent()) {
            var all = mail.getSubject() + " " + GreenMailUtil.getBody(mail);
            assertThat(banned.firstIn(mail.getSubject())).isEmpty();
            assertThat(all).contains("/staff/needs").doesNotContain("Wren", "Halloway", "{");
        }
        assertThat(sent())
                .extracting(mail -> mail.getSubject().substring(0, 6))
                .containsExactlyInAnyOrder("Please", "Por fa");
    }

    @Test
    void theSameKeyGoesOnceAndTheDeskOfTheFamiliesShowsNone() {
        var nurse = member(Language.EN);
        send("once", nurse);
        send("once", nurse);
        assertThat(outbox.board(People.with(Role.COORDINATOR)))
                .noneMatch(message -> message.child().equals(child));
        delivery.round();
        assertThat(sent()).hasSize(1);
    }

    @Test
    void whatFellAwayBeforeItLeftStays() {
        send("fell-away", member(Language.EN));
        inTransaction.executeWithoutResult(status -> staffMail.noLonger(MACHINE, child, "need:" + child));
        delivery.round();
        assertThat(sent()).isEmpty();
    }

    @Test
    void waitsForAChildWhomNobodyWatchesAndGoesForOneInHospital() {
        send("died", member(Language.EN));
        standings.say(NURSE, child, new Standings.Saying(Status.DIED, "told by telephone", Optional.empty()), 0);
        delivery.round();
        assertThat(sent()).isEmpty();
        standings.takeBack(NURSE, child, "wrong child", 1);
        standings.say(NURSE, child, new Standings.Saying(Status.AWAY, "on the ward", Optional.empty()), 2);
        delivery.round();
        assertThat(sent()).hasSize(1);
    }
}
