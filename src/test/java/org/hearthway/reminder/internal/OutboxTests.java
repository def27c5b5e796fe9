package org.hearthway.reminder.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.Mockito.mock;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.Links;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households;
import org.hearthway.child.events.CaregiverUnlinked;
import org.hearthway.content.ContentKind;
import org.hearthway.content.ContentReading;
import org.hearthway.equipment.events.EquipmentRecorded;
import org.hearthway.medicine.events.TaperConfirmed;
import org.hearthway.medicine.events.TaperSigned;
import org.hearthway.path.Plans;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.engine.RefillRules;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.events.PumpEntryChecked;
import org.hearthway.reminder.Outbox;
import org.hearthway.reminder.Outbox.Channel;
import org.hearthway.reminder.Outbox.Message;
import org.hearthway.reminder.Outbox.State;
import org.hearthway.reminder.events.MessageSettled;
import org.hearthway.surveillance.events.CheckRecorded;
import org.hearthway.task.Tasks;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.hearthway.visit.events.VisitAnswered;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mail.javamail.JavaMailSenderImpl;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.thymeleaf.ITemplateEngine;

/** From a booking to a mail at a real server, by the clinic's clock of Thursday, March 12, 2026, 10:00 in New York. */
@SpringJUnitConfig(OutboxTests.Setting.class)
@DirtiesContext(classMode = DirtiesContext.ClassMode.AFTER_EACH_TEST_METHOD)
class OutboxTests {

    @Import({
        LeanClinic.class,
        RuleBook.class,
        MessageTexts.class,
        BannedWords.class,
        SendingRules.class,
        Wording.class,
        Family.class,
        Planner.class,
        Planning.class,
        Causes.class,
        OutboxRows.class,
        DeliveryQueue.class,
        MailComposer.class,
        Delivery.class,
        DeskOutbox.class
    })
    @ComponentScan("org.hearthway.visit.internal")
    static class Setting {
        /** No child is on a path here. */
        @Bean
        Plans plans() {
            return mock();
        }

        @Bean
        KnownFamily known() {
            return new KnownFamily();
        }

        @Bean
        Households households(KnownFamily known) {
            return known.households();
        }

        @Bean
        Accounts accounts(KnownFamily known) {
            return known.accounts();
        }

        @Bean
        Links links(KnownFamily known) {
            return known.links();
        }

        @Bean
        Pumps pumps(KnownFamily known) {
            return known.pumps();
        }

        @Bean
        Tasks tasks() {
            return mock(Tasks.class);
        }

        @Bean
        DueDays dueDays(KnownFamily known) {
            return known.dueDays();
        }

        @Bean
        ITemplateEngine templates() {
            return MailTemplates.shipped();
        }

        @Bean
        TransactionTemplate inTransaction(PlatformTransactionManager manager) {
            return new TransactionTemplate(manager);
        }

        @Bean(destroyMethod = "stop")
        GreenMail server() {
            var server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
            server.start();
            return server;
        }

        @Bean
        JavaMailSenderImpl sender(GreenMail server) {
            var sender = new JavaMailSenderImpl();
            sender.setHost("127.0.0.1");
            sender.setPort(server.getSmtp().getPort());
            return sender;
        }

        @Bean
        Postman postman(JavaMailSenderImpl sender) {
            return new SmtpPostman(sender);
        }

        @Bean
        Settled settled() {
            return new Settled();
        }
    }

    static class Settled {
        final List<String> states = new ArrayList<>();

        @EventListener
        void on(MessageSettled settled) {
            states.add(settled.state());
        }
    }

    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);
    private static final ZoneId NEW_YORK = LeanClinic.NEW_YORK;
    private static final LocalDateTime JUNE = LocalDateTime.parse("2026-06-18T14:30");

    @Autowired
    private Visits visits;

    @Autowired
    private Outbox outbox;

    @Autowired
    private Delivery delivery;

    @Autowired
    private DeliveryQueue queue;

    @Autowired
    private KnownFamily known;

    @Autowired
    private SettableClock clock;

    @Autowired
    private GreenMail server;

    @Autowired
    private JavaMailSenderImpl sender;

    @Autowired
    private Settled settled;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private TransactionTemplate inTransaction;

    @Autowired
    private ApplicationEventPublisher events;

    @Autowired
    private JdbcClient db;

    @Autowired
    private OutboxRows rows;

    private final ChildId child = ChildId.random();
    private Account parent;

    @BeforeEach
    void readContent(@Autowired List<ContentKind> all) {
        all.forEach(ContentReading::shipped);
        // nothing leaves for a child that is not there
        db.sql("insert into child (id, version, entered_at) values (?, 1, ?)")
                .params(child.value(), clock.instant().atOffset(java.time.ZoneOffset.UTC))
                .update();
        parent = known.caregiver(child, "pat@family.example", Language.EN, NEW_YORK);
    }

    @AfterEach
    void openTheGate() {
        gate.deny();
    }

    private VisitId book(String kind, LocalDateTime start) {
        return visits.book(DESK, child, new Visits.Booking(kind, start, 45, "", Optional.empty()));
    }

    private List<Message> messages() {
        return outbox.of(DESK, child).stream()
                .sorted(java.util.Comparator.comparing(Message::due))
                .toList();
    }

    private List<Message> live() {
        return messages().stream().filter(m -> m.state() != State.CANCELLED).toList();
    }

    private void at(String instant) {
        clock.set(Instant.parse(instant));
        delivery.round();
    }

    private List<MimeMessage> mails() {
        return Arrays.asList(server.getReceivedMessages());
    }

    private static String plain(MimeMessage mail) throws Exception {
        var part = mail.getContent();
        while (part instanceof MimeMultipart many) {
            part = many.getBodyPart(0).getContent();
        }
        return ((String) part).replace("\r\n", "\n");
    }

    @Test
    void sendsAMailWithTheTimeByTheClinicsWallClockAndALinkToAnswer() throws Exception {
        var visit = book("therapy", JUNE);
        at("2026-06-11T18:29:59Z");
        assertThat(mails()).isEmpty();
        at("2026-06-11T18:30:00Z");
        var mail = mails().get(0);
        assertThat(mail.getSubject()).isEqualTo("Visit on Thursday, June 18: do you come?");
        assertThat(mail.getFrom()[0]).hasToString("Test Office <office@clinic.example>");
        assertThat(mail.getAllRecipients()[0]).hasToString("pat@family.example");
        assertThat(mail.getSentDate()).isEqualTo(Instant.parse("2026-06-11T18:30:00Z"));
        var link = db.sql("select link from outbox_message where visit = ? limit 1")
                .param(visit.value())
                .query(UUID.class)
                .single();
        assertThat(plain(mail))
                .contains("on Thursday, June 18 at 2:30 PM.", "http://localhost:8080/v/token-of-" + link, "555-0134")
                .doesNotContain("{", "Therapy", "Pat");
        assertThat(messages().get(0).state()).isEqualTo(State.SENT);
        assertThat(settled.states).containsExactly("SENT");
        at("2026-06-11T18:30:01Z");
        assertThat(mails()).hasSize(1);
    }

    @Test
    void keepsNoWayInBesideTheMail() {
        book("therapy", JUNE);
        assertThat(db.sql("select body from outbox_message").query(String.class).list())
                .allSatisfy(body -> assertThat(body).contains("{link}").doesNotContain("token-of"));
        assertThat(messages().get(0).body())
                .contains("http://localhost:8080/v/…")
                .doesNotContain("token-of");
    }

    @Test
    void writesToEachPersonInTheirLanguageAndByTheirClock() throws Exception {
        known.caregiver(child, "ana@family.example", Language.ES, ZoneId.of("Europe/Madrid"));
        book("therapy", JUNE);
        // 14:30 in New York is 20:30 in Madrid: still before the quiet hours there
        at("2026-06-11T18:30:00Z");
        assertThat(mails()).hasSize(2);
        var spanish = mails().stream()
                .filter(m -> subject(m).startsWith("Cita"))
                .findFirst()
                .orElseThrow();
        assertThat(plain(spanish)).contains("jueves, 18 de junio, 2:30", "(hora de la clínica)");
        assertThat(spanish.getHeader("Content-Language")).containsExactly("es");
    }

    @Test
    void endsASpanishSentenceWithOnePoint() {
        known.caregivers.clear();
        known.caregiver(child, "ana@family.example", Language.ES, NEW_YORK);
        book("therapy", JUNE);
        assertThat(messages().get(0).body())
                .containsPattern("18 de junio, 2:30 p\\.\\hm\\.\n")
                .doesNotContain("..");
    }

    private static String subject(MimeMessage mail) {
        try {
            return mail.getSubject();
        } catch (jakarta.mail.MessagingException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void sendsOnlyWhatIsStillAheadOfALateBooking() {
        clock.set(Instant.parse("2026-06-13T15:00:00Z"));
        book("therapy", JUNE);
        assertThat(live()).extracting(Message::due).containsExactly(Instant.parse("2026-06-17T18:30:00Z"));
    }

    @Test
    void sendsNothingAfterACancellation() {
        var visit = book("therapy", JUNE);
        clock.set(Instant.parse("2026-06-17T14:00:00Z"));
        visits.cancel(DESK, visit, visits.get(DESK, visit).version());
        at("2026-06-17T18:30:00Z");
        at("2026-06-18T12:00:00Z");
        assertThat(mails()).isEmpty();
        assertThat(live()).isEmpty();
    }

    @Test
    void plansAnewAndLengthensTheLinkWhenTheVisitMoves() {
        var visit = book("therapy", JUNE);
        visits.move(DESK, visit, JUNE.plusDays(4), 1);
        assertThat(live())
                .extracting(Message::due)
                .containsExactly(Instant.parse("2026-06-15T18:30:00Z"), Instant.parse("2026-06-21T18:30:00Z"));
        assertThat(messages()).hasSize(4);
        assertThat(known.linkEnds).hasSize(1).containsValue(Instant.parse("2026-06-22T19:15:00Z"));
    }

    @Test
    void changesItsWordsWithTheAnswer() throws Exception {
        var visit = book("therapy", JUNE);
        visits.confirm(DESK, visit, 0);
        assertThat(live()).extracting(Message::subject).containsOnly("See you on Thursday, June 18");
        visits.askToMove(DESK, visit, 0, "later");
        at("2026-06-17T18:30:00Z");
        assertThat(plain(mails().get(0))).contains("You asked for another time", "June 18 at 2:30 PM");
    }

    @Test
    void callsWhenNobodyAnsweredACriticalVisitAndNotOnceItIsConfirmed() {
        var visit = book("operation", JUNE);
        clock.set(Instant.parse("2026-06-15T18:30:00Z"));
        delivery.round();
        var call = live().stream()
                .filter(m -> m.channel() == Channel.CALL)
                .findFirst()
                .orElseThrow();
        assertThat(call.state()).isEqualTo(State.TO_CALL);
        assertThat(call.address()).isEqualTo("555-0142");
        visits.confirm(DESK, visit, 0);
        assertThat(live()).noneMatch(m -> m.channel() == Channel.CALL);
        visits.askToMove(DESK, visit, 0, "");
        assertThat(live())
                .filteredOn(m -> m.channel() == Channel.CALL)
                .singleElement()
                .satisfies(again -> {
                    assertThat(again.subject()).contains("asked to move");
                    assertThat(again.id()).isEqualTo(call.id());
                });
    }

    @Test
    void escalatesARefillAndFallsSilentWhenItIsRecorded() {
        refillBy(LocalDate.of(2026, 6, 18));
        assertThat(live())
                .extracting(m -> m.channel() + " " + LocalDateTime.ofInstant(m.due(), NEW_YORK))
                .containsExactlyInAnyOrder(
                        "MAIL 2026-06-04T09:00",
                        "MAIL 2026-06-11T09:00",
                        "CALL 2026-06-11T09:00",
                        "MAIL 2026-06-15T09:00",
                        "MAIL 2026-06-17T09:00",
                        "CALL 2026-06-19T00:00");
        var visit = book("refill", LocalDateTime.parse("2026-06-17T10:00"));
        assertThat(live())
                .filteredOn(m -> m.visit().isEmpty() && m.channel() == Channel.MAIL)
                .isEmpty();
        visits.confirm(DESK, visit, 0);
        assertThat(live())
                .filteredOn(m -> m.channel() == Channel.CALL)
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.urgent()).isTrue());
        clock.set(Instant.parse("2026-06-19T04:00:00Z"));
        delivery.round();
        assertThat(live()).anyMatch(m -> m.urgent() && m.state() == State.TO_CALL);
        refillBy(LocalDate.of(2026, 11, 20));
        assertThat(live()).noneMatch(m -> m.state() == State.TO_CALL);
    }

    private void looked() {
        inTransaction.executeWithoutResult(status ->
                events.publishEvent(new EquipmentRecorded(child, DESK, clock.instant(), new Bilingual("a", "b"))));
    }

    @Test
    void aDayToLookAtSomethingGivesOneNeutralMailTheDayBefore() {
        known.looksAtHome.put(child, Set.of(LocalDate.of(2026, 3, 20), LocalDate.of(2026, 4, 10)));
        looked();
        assertThat(live())
                .extracting(m -> m.channel() + " " + LocalDateTime.ofInstant(m.due(), NEW_YORK))
                .containsExactlyInAnyOrder("MAIL 2026-03-19T09:00", "MAIL 2026-04-09T09:00");
        assertThat(live()).allSatisfy(m -> assertThat(m.subject()).startsWith("Something to look at on"));
        known.looksAtHome.put(child, Set.of(LocalDate.of(2026, 4, 10)));
        looked();
        assertThat(live()).singleElement();
    }

    @Test
    void aCheckWithoutAVisitIsWrittenAboutUntilOneIsBooked() {
        known.checks.put(child, List.of(new DueDays.Check("hip-xray", LocalDate.of(2026, 5, 29))));
        inTransaction.executeWithoutResult(status ->
                events.publishEvent(new CheckRecorded(child, DESK, clock.instant(), new Bilingual("a", "b"))));
        assertThat(live())
                .extracting(m -> m.channel() + " " + LocalDateTime.ofInstant(m.due(), NEW_YORK))
                .containsExactlyInAnyOrder("MAIL 2026-05-15T09:00");
        book("hip-xray", LocalDateTime.parse("2026-05-27T10:00"));
        assertThat(live()).isNotEmpty().allSatisfy(m -> assertThat(m.visit()).isPresent());
    }

    private void refillBy(LocalDate day) {
        var filled = day.minusDays(100);
        known.refills.put(
                child,
                RefillWindow.of(
                        filled,
                        Optional.empty(),
                        Optional.of(day.plusDays(5)),
                        Optional.empty(),
                        RefillRules.usual(),
                        open -> true));
        inTransaction.executeWithoutResult(status -> events.publishEvent(
                new PumpEntryChecked(child, DESK, clock.instant(), Optional.of(new Bilingual("a", "b")))));
    }

    /** OB1. */
    @Test
    void keepsNeitherVisitNorMessageWhenTheChangeFailsBeforeItsCommit() {
        assertThatThrownBy(() -> inTransaction.executeWithoutResult(status -> {
                    book("therapy", JUNE);
                    assertThat(rows.ofChild(child)).hasSize(2);
                    throw new IllegalStateException("before the commit");
                }))
                .hasMessage("before the commit");
        assertThat(rows.ofChild(child)).isEmpty();
        at("2026-06-11T18:30:00Z");
        assertThat(mails()).isEmpty();
    }

    @Test
    void writesToNobodyWhoseCareEnded() {
        book("therapy", JUNE);
        known.caregivers.clear();
        inTransaction.executeWithoutResult(
                status -> events.publishEvent(new CaregiverUnlinked(child, DESK, clock.instant(), parent.id())));
        assertThat(live()).isEmpty();
    }

    @Test
    void keepsAMailWhileTheServerIsDownAndWaitsLongerEachTime() throws Exception {
        book("therapy", JUNE);
        var port = sender.getPort();
        sender.setPort(1);
        at("2026-06-11T18:30:00Z");
        var waits = new ArrayList<Duration>();
        for (int i = 0; i < 5; i++) {
            var waiting = messages().get(0);
            assertThat(waiting.state()).isEqualTo(State.RETRYING);
            assertThat(waiting.tries()).isEqualTo(i + 1);
            assertThat(waiting.note()).isEqualTo("The mail server did not answer.");
            waits.add(Duration.between(clock.instant(), waiting.due()));
            clock.set(waiting.due());
            delivery.round();
        }
        assertThat(waits).isSorted();
        assertThat(waits.get(4)).isGreaterThan(waits.get(0).multipliedBy(8));
        sender.setPort(port);
        clock.set(messages().get(0).due());
        delivery.round();
        assertThat(messages().get(0).state()).isEqualTo(State.SENT);
        assertThat(mails()).hasSize(1);
    }

    @Test
    void neverTriesInAQuietHourAndGivesUpWhenItIsOfNoMoreUse() {
        book("therapy", JUNE);
        sender.setPort(1);
        at("2026-06-11T18:30:00Z");
        while (messages().get(0).state() == State.RETRYING) {
            var due = messages().get(0).due();
            assertThat(LocalDateTime.ofInstant(due, NEW_YORK).getHour()).isBetween(8, 20);
            clock.set(due);
            delivery.round();
        }
        var lost = messages().get(0);
        assertThat(lost.state()).isEqualTo(State.NOT_REACHED);
        assertThat(lost.note()).isEqualTo("The mail server did not answer.");
        assertThat(clock.instant()).isBeforeOrEqualTo(Instant.parse("2026-06-13T18:30:00Z"));
        assertThat(outbox.board(DESK)).extracting(Message::id).contains(lost.id());
        assertThat(settled.states).containsExactly("NOT_REACHED");
    }

    @Test
    void waitsForTheMorningWhenTheProgramWasDownAtTheHour() {
        book("therapy", JUNE);
        at("2026-06-12T02:00:00Z");
        assertThat(mails()).isEmpty();
        assertThat(messages().get(0).due()).isEqualTo(Instant.parse("2026-06-12T12:00:00Z"));
        at("2026-06-12T12:00:00Z");
        assertThat(mails()).hasSize(1);
    }

    @Test
    void sendsAtOnceWhenTheCoordinatorSaysSoWhateverTheHour() {
        book("therapy", JUNE);
        clock.set(Instant.parse("2026-06-01T03:00:00Z"));
        var first = messages().get(0);
        outbox.sendNow(DESK, first.id(), first.version());
        delivery.round();
        assertThat(mails()).hasSize(1);
        var seen = first.version();
        assertThatThrownBy(() -> outbox.sendNow(DESK, first.id(), seen)).isInstanceOf(Overtaken.class);
        var sent = messages().stream()
                .filter(m -> m.id().equals(first.id()))
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> outbox.sendNow(DESK, sent.id(), sent.version()))
                .isInstanceOf(Invalid.class);
    }

    @Test
    void holdsAMessageBackUntilItIsLetGo() {
        book("therapy", JUNE);
        var first = messages().get(0);
        outbox.hold(DESK, first.id(), true, first.version());
        at("2026-06-11T18:30:00Z");
        assertThat(mails()).isEmpty();
        assertThat(messages().get(0).state()).isEqualTo(State.HELD);
        outbox.hold(DESK, first.id(), false, messages().get(0).version());
        delivery.round();
        assertThat(mails()).hasSize(1);
    }

    @Test
    void settlesTheCallForTheWholeHouseholdWhenOneAnswers() {
        known.caregiver(child, "ana@family.example", Language.ES, NEW_YORK);
        book("operation", JUNE);
        at("2026-06-15T18:30:00Z");
        var calls = live().stream().filter(m -> m.channel() == Channel.CALL).toList();
        assertThat(calls).hasSize(2);
        outbox.called(DESK, calls.get(0).id(), false, "voicemail", calls.get(0).version());
        assertThat(live())
                .filteredOn(m -> m.id().equals(calls.get(0).id()))
                .singleElement()
                .satisfies(m -> {
                    assertThat(m.state()).isEqualTo(State.NOT_REACHED);
                    assertThat(m.note()).isEqualTo("voicemail");
                });
        var tooLong = "x".repeat(501);
        assertThatThrownBy(() -> outbox.called(
                        DESK, calls.get(1).id(), true, tooLong, calls.get(1).version()))
                .isInstanceOf(Invalid.class);
        outbox.called(DESK, calls.get(1).id(), true, "they come", calls.get(1).version());
        assertThat(live())
                .filteredOn(m -> m.channel() == Channel.CALL)
                .extracting(Message::state)
                .containsExactly(State.CALLED);
    }

    @Test
    void takesACallInPlaceOfAMailOnlyWhenTheMailReachedNobody() {
        book("therapy", JUNE);
        var waiting = messages().get(0);
        assertThatThrownBy(() -> outbox.called(DESK, waiting.id(), true, "", waiting.version()))
                .isInstanceOf(Invalid.class);
        known.accounts.clear();
        at("2026-06-11T18:30:00Z");
        var lost = messages().get(0);
        assertThat(lost.state()).isEqualTo(State.NOT_REACHED);

        outbox.called(DESK, lost.id(), true, "they come", lost.version());

        assertThat(messages().get(0).state()).isEqualTo(State.CALLED);
    }

    @Test
    void sendsAgainUnderTheSameIdentifierWhatWasInFlightAndSaysSo() throws Exception {
        book("therapy", JUNE);
        at("2026-06-11T18:30:00Z");
        var first = mails().get(0).getMessageID();
        // the server took it and the program died before it could write that down
        db.sql("update outbox_message set state = 'SENDING', worker = 'gone', settled_at = null where state = 'SENT'")
                .update();
        delivery.takeBackAll();
        delivery.round();
        assertThat(mails()).hasSize(2);
        assertThat(mails().get(1).getMessageID()).isEqualTo(first);
        assertThat(messages().get(0).state()).isEqualTo(State.MAY_HAVE_GONE_TWICE);
    }

    @Test
    void doesNotSendWithALeaseThatRanOut() {
        book("therapy", JUNE);
        clock.set(Instant.parse("2026-06-11T18:30:00Z"));
        var now = clock.instant();
        var frozen = queue.claim("frozen", now, now.plus(Delivery.LEASE), 1).get(0);
        delivery.round();
        assertThat(mails()).as("claimed by another").isEmpty();
        clock.advance(Delivery.LEASE.plusSeconds(1));
        assertThat(queue.begin(frozen.id(), "frozen", clock.instant()))
                .as("wakes too late")
                .isFalse();
        delivery.round();
        assertThat(mails()).as("taken over").hasSize(1);
        assertThat(queue.begin(frozen.id(), "frozen", clock.instant()))
                .as("the frozen worker wakes")
                .isFalse();
    }

    @Test
    void doesNotBeginAMessageWhoseCauseFellAwayAfterItWasClaimed() {
        var visit = book("therapy", JUNE);
        clock.set(Instant.parse("2026-06-11T18:30:00Z"));
        var now = clock.instant();
        var claimed = queue.claim("worker", now, now.plus(Delivery.LEASE), 1).get(0);
        visits.cancel(DESK, visit, 1);
        assertThat(queue.begin(claimed.id(), "worker", now)).isFalse();
    }

    @Test
    void repeatsNothingWhenDoneTwice() {
        var visit = book("therapy", JUNE);
        for (int i = 0; i < 3; i++) {
            inTransaction.executeWithoutResult(status ->
                    events.publishEvent(new VisitAnswered(child, DESK, clock.instant(), visit.value(), false)));
        }
        assertThat(messages()).hasSize(2);
        assertThat(db.sql("select count(distinct idem) from outbox_message")
                        .query(Integer.class)
                        .single())
                .isEqualTo(2);
    }

    @Test
    void showsTheDeskOnlyToThoseWhoWorkIt() {
        book("therapy", JUNE);
        assertThat(outbox.board(DESK)).hasSize(2);
        gate.deny(Action.WORK_DESK);
        assertThat(outbox.board(DESK)).isEmpty();
        var message = rows.ofChild(child).get(0);
        assertThatThrownBy(() -> outbox.of(DESK, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> outbox.sendNow(DESK, message.id(), 1)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> outbox.hold(DESK, message.id(), true, 1)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> outbox.called(DESK, message.id(), true, "", 1)).isInstanceOf(NotAvailable.class);
        gate.deny(Action.LIST_CHILDREN);
        assertThatThrownBy(() -> outbox.board(DESK)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void goesToNobodyWhoseAccountIsClosedMeanwhile() {
        book("therapy", JUNE);
        known.accounts.clear();
        at("2026-06-11T18:30:00Z");
        assertThat(mails()).isEmpty();
        assertThat(messages().get(0).state()).isEqualTo(State.NOT_REACHED);
    }

    @Test
    void remindsTheDayBeforeAStepAndFallsSilentWhenTheCalendarIsInDoubt() throws Exception {
        known.steps.put(child, Set.of(LocalDate.of(2026, 3, 20), LocalDate.of(2026, 3, 27)));
        tell(new TaperConfirmed(child, DESK, clock.instant(), new Bilingual("a", "b")));
        at("2026-03-19T19:59:59Z");
        assertThat(mails()).isEmpty();
        at("2026-03-19T20:00:00Z");
        assertThat(mails()).hasSize(1);
        assertThat(mails().get(0).getSubject()).isEqualTo("Please look at your page before Friday, March 20");
        assertThat(plain(mails().get(0)))
                .contains("changes on Friday, March 20")
                .doesNotContain("{");
        assertThat(outbox.board(DESK)).extracting(Message::about).containsOnly("Step of a taper calendar");

        known.steps.put(child, Set.of());
        tell(new TaperSigned(child, DESK, clock.instant()));
        at("2026-03-26T20:00:00Z");
        assertThat(mails()).hasSize(1);
        assertThat(live()).allMatch(message -> message.state() == State.SENT);
    }

    private void tell(Object change) {
        inTransaction.executeWithoutResult(status -> events.publishEvent(change));
    }
}
