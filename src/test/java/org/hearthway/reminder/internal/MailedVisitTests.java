package org.hearthway.reminder.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.head;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.MessagingException;
import jakarta.mail.Multipart;
import jakarta.mail.Part;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
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
import java.util.regex.Pattern;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Names;
import org.hearthway.pump.PumpBook;
import org.hearthway.reminder.Outbox;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.PumpBooks;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.Team;
import org.hearthway.testing.WebTest;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * From an invited caregiver and a booking to a mail at a server that speaks SMTP, and back by its link: the whole
 * program, nothing replaced but the clock.
 */
@WebTest
@DirtiesContext
class MailedVisitTests {

    private static final GreenMail SERVER = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final ChildData QUILLON =
            ChildData.plain(Names.plain("Quillon", "Marchetti"), LocalDate.of(2019, 5, 4), Optional.of(3), 2);
    private static final LocalDateTime TUESDAY = LocalDateTime.of(2026, 3, 24, 10, 30);
    private static final Pattern LINK = Pattern.compile("http\\S+");

    @DynamicPropertySource
    static void aServerAndTablesOfItsOwn(DynamicPropertyRegistry settings) {
        SERVER.start();
        settings.add("spring.mail.host", () -> "127.0.0.1");
        settings.add("spring.mail.port", () -> SERVER.getSmtp().getPort());
        settings.add("hearthway.outbox.loop", () -> "false");
        settings.add(
                "spring.datasource.url",
                () ->
                        "jdbc:h2:mem:mailed;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
    }

    @AfterAll
    static void stopTheServer() {
        SERVER.stop();
    }

    @Autowired
    private MockMvc web;

    @Autowired
    private Accounts accounts;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Visits visits;

    @Autowired
    private PumpBook pumps;

    @Autowired
    private Outbox outbox;

    @Autowired
    private Delivery delivery;

    @Autowired
    private Planning planning;

    @Autowired
    private TransactionTemplate inTransaction;

    @Autowired
    private BannedWords banned;

    @Autowired
    private SettableClock clock;

    @BeforeEach
    void emptyTheBox() throws Exception {
        SERVER.purgeEmailFromAllMailboxes();
    }

    @AfterEach
    void backToTheStart() {
        clock.set(HearthwayTest.START);
    }

    /** A child with one caregiver, invited, linked, and reading this language by this clock. */
    private ChildId childOf(String email, Language language, ZoneId zone) {
        var child = register.enter(ADMINISTRATOR, QUILLON);
        var parent = accounts.invite(
                ADMINISTRATOR,
                new NewAccount("Pat Somebody", email, "555-0142", Set.of(Role.CAREGIVER), language, zone));
        households.link(ADMINISTRATOR, child, parent.account(), Households.Reach.FULL);
        return child;
    }

    private VisitId book(ChildId child, String kind, LocalDateTime start) {
        return visits.book(DESK, child, new Visits.Booking(kind, start, 45, "Room 2", Optional.empty()));
    }

    private Visit now(VisitId visit) {
        return visits.get(DESK, visit);
    }

    /** The mails that reached this address when the clock stood there and the outbox turned. */
    private List<MimeMessage> at(String instant, String email) throws Exception {
        clock.set(Instant.parse(instant));
        delivery.round();
        var mails = new ArrayList<MimeMessage>();
        for (var mail : Arrays.asList(SERVER.getReceivedMessages())) {
            if (mail.getAllRecipients()[0].toString().equals(email)) {
                mails.add(mail);
            }
        }
        return mails;
    }

    private static String text(Part part, String type) throws MessagingException, IOException {
        if (part.isMimeType(type)) {
            return ((String) part.getContent()).replace("\r\n", "\n");
        }
        if (part.getContent() instanceof Multipart many) {
            for (int i = 0; i < many.getCount(); i++) {
                var inside = text(many.getBodyPart(i), type);
                if (!inside.isEmpty()) {
                    return inside;
                }
            }
        }
        return "";
    }

    private static String plain(MimeMessage mail) throws Exception {
        return text(mail, "text/plain");
    }

    private static List<String> links(String text) {
        return LINK.matcher(text).results().map(found -> found.group()).toList();
    }

    private static String page(MimeMessage mail) throws Exception {
        return links(plain(mail)).get(0).replace("http://localhost:8080", "");
    }

    @Test
    void anInvitedCaregiverIsWrittenToAndAnswersByTheLink() throws Exception {
        var email = People.freshEmail();
        var visit = book(childOf(email, Language.ES, ZoneId.of("America/Chicago")), "therapy", TUESDAY);

        var mail = at("2026-03-17T14:30:00Z", email).get(0);

        assertThat(mail.getSubject()).isEqualTo("Cita el martes, 24 de marzo: ¿vienen?");
        assertThat(mail.getHeader("Content-Language")).containsExactly("es");
        assertThat(mail.getFrom()[0].toString()).isEqualTo("Test Office <office@clinic.example>");
        // 10:30 at the clinic, said to be the clinic's, for a family that lives an hour behind
        assertThat(plain(mail)).containsPattern("10:30\\ha\\.\\hm\\. \\(hora de la clínica\\)");
        for (int scans = 0; scans < 20; scans++) {
            web.perform(scans % 2 == 0 ? get(page(mail)) : head(page(mail))).andExpect(status().isOk());
        }
        assertThat(now(visit).version()).isEqualTo(1);
        web.perform(post(page(mail) + "/yes").param("sequence", "0").with(csrf()))
                .andExpect(redirectedUrl(page(mail)));
        assertThat(now(visit).answer()).isEqualTo(Visit.Answer.CONFIRMED);
        assertThat(outbox.board(DESK))
                .filteredOn(message -> message.visit().equals(Optional.of(visit)))
                .extracting(Outbox.Message::state)
                .containsExactlyInAnyOrder(Outbox.State.SENT, Outbox.State.PLANNED);
    }

    @Test
    void afterAMoveTheMailCarriesTheNewTimeAndTheOldLinkShowsItAndAsksAgain() throws Exception {
        var email = People.freshEmail();
        var visit = book(childOf(email, Language.EN, People.ZONE), "therapy", TUESDAY);
        var old = page(at("2026-03-17T14:30:00Z", email).get(0));
        web.perform(post(old + "/yes").param("sequence", "0").with(csrf()));
        visits.move(DESK, visit, LocalDateTime.of(2026, 4, 1, 14, 0), now(visit).version());

        var mails = at("2026-03-25T18:00:00Z", email);

        assertThat(mails).hasSize(2);
        assertThat(plain(mails.get(1)))
                .contains("Wednesday, April 1", "2:00", "Do you come?")
                .doesNotContain("March 24");
        assertThat(page(mails.get(1))).isEqualTo(old);
        web.perform(get(old))
                .andExpect(content().string(containsString("Your visit has a new time")))
                .andExpect(content().string(containsString("Wednesday, April 1")))
                .andExpect(content().string(containsString("Yes, we come")));
        web.perform(post(old + "/yes").param("sequence", "0").with(csrf())).andExpect(status().isConflict());
        assertThat(now(visit).answer()).isEqualTo(Visit.Answer.NONE);
        web.perform(post(old + "/yes").param("sequence", "1").with(csrf())).andExpect(redirectedUrl(old));
        assertThat(now(visit).answer()).isEqualTo(Visit.Answer.CONFIRMED);
    }

    @Test
    void whoChoseAnotherLanguageIsWrittenToInItFromTheNextMailOn() throws Exception {
        var email = People.freshEmail();
        var child = childOf(email, Language.EN, People.ZONE);
        var visit = book(child, "therapy", TUESDAY);
        assertThat(subject(at("2026-03-17T14:30:00Z", email).get(0))).startsWith("Visit on");
        var parent = households.caregivers(DESK, child).get(0).account();

        accounts.speak(People.as(parent, Role.CAREGIVER), Language.ES);
        // as the loop does that looks every hour whether all messages still fit
        inTransaction.executeWithoutResult(status -> planning.visit(visit));

        assertThat(at("2026-03-23T14:30:00Z", email))
                .extracting(MailedVisitTests::subject)
                .last(org.assertj.core.api.InstanceOfAssertFactories.STRING)
                .contains("24 de marzo");
    }

    /**
     * Every kind of visit in every standing and the words for a refill, in both languages: what arrives names neither
     * the child nor what it has, and holds one link at most.
     */
    @Test
    void noMailInAnyStandingTellsAboutTheChildOrHoldsTwoLinks() throws Exception {
        for (var language : Language.values()) {
            var email = People.freshEmail();
            var child = childOf(email, language, People.ZONE);
            clock.set(HearthwayTest.START);
            for (var kind : visits.kinds()) {
                book(child, kind.id(), TUESDAY);
                visits.confirm(DESK, book(child, kind.id(), TUESDAY), 0);
                visits.askToMove(DESK, book(child, kind.id(), TUESDAY), 0, "any day but Quillon’s birthday");
                var moved = book(child, kind.id(), TUESDAY.minusDays(1));
                visits.move(DESK, moved, TUESDAY, 1);
            }
            PumpBooks.refilled(
                    pumps,
                    Team.colleague(accounts, "Iris Vale", Role.NURSE),
                    Team.colleague(accounts, "Dr. Otto Brand", Role.PHYSICIAN),
                    child,
                    LocalDate.of(2026, 3, 11),
                    LocalDate.of(2026, 5, 20));
            var last = Instant.parse("2026-05-20T00:00:00Z");
            for (var day = clock.instant(); day.isBefore(last); day = day.plus(Duration.ofDays(1))) {
                clock.set(day);
                while (delivery.round() > 0) {
                    continue;
                }
            }

            var mails = at(last.toString(), email);

            assertThat(mails).hasSizeGreaterThan(visits.kinds().size());
            for (var mail : mails) {
                look(mail);
            }
            assertThat(mails).extracting(MailedVisitTests::subject).hasSizeGreaterThan(3);
        }
    }

    private static String subject(MimeMessage mail) {
        try {
            return mail.getSubject();
        } catch (MessagingException e) {
            throw new IllegalStateException(e);
        }
    }

    private void look(MimeMessage mail) throws Exception {
        var plain = plain(mail);
        var html = text(mail, "text/html");
        assertThat(links(plain)).as(plain).hasSizeLessThanOrEqualTo(1);
        assertThat(html.split("<a ", -1)).hasSize(1 + links(plain).size());
        var seen = LINK.matcher(html.replaceAll("<[^>]*>", " ")).replaceAll("");
        for (var said : List.of(mail.getSubject(), LINK.matcher(plain).replaceAll(""), seen)) {
            assertThat(banned.firstIn(said)).as(said).isEmpty();
            assertThat(said).doesNotContainIgnoringCase("quillon").doesNotContainIgnoringCase("marchetti");
        }
        assertThat(String.join(" ", names(mail))).doesNotContainIgnoringCase("quillon");
    }

    private static List<String> names(MimeMessage mail) throws MessagingException {
        var headers = new ArrayList<String>();
        mail.getAllHeaderLines().asIterator().forEachRemaining(headers::add);
        return headers;
    }
}
