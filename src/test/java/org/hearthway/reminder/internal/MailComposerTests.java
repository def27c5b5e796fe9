package org.hearthway.reminder.internal;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.Header;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.reminder.Outbox.Channel;
import org.hearthway.reminder.Outbox.State;
import org.hearthway.testing.HostileStrings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MailComposerTests {

    private static final Instant NOW = Instant.parse("2026-03-12T14:00:00Z");
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    private static MailComposer composer(String senderName) {
        var clinic = new ClinicSettings(
                "Clinic",
                senderName,
                "office@clinic.example",
                NEW_YORK,
                "555-0100",
                "555-0121",
                "555-0134",
                Set.of(),
                LocalTime.of(8, 0),
                LocalTime.of(16, 0),
                "http://localhost:8080",
                false);
        return new MailComposer(clinic, new KnownFamily().links(), MailTemplates.shipped());
    }

    static OutboxRow row(String idem, String subject, String body) {
        var draft = new Draft(
                idem,
                "visit:1",
                ChildId.random(),
                AccountId.random(),
                Optional.empty(),
                Channel.MAIL,
                Language.EN,
                NEW_YORK,
                "therapy",
                "visit-please-answer",
                LocalDateTime.parse("2026-03-17T10:30"),
                NEW_YORK,
                false,
                subject,
                body,
                NOW,
                Optional.empty());
        var link = Optional.of(new UUID(1, 2));
        return new OutboxRow(UUID.randomUUID(), draft, link, State.PLANNED, 0, "", "", false, false, false, false, 1);
    }

    private static MimeMessage written(MimeMessage mail) throws Exception {
        var out = new ByteArrayOutputStream();
        mail.writeTo(out);
        return new MimeMessage(null, new ByteArrayInputStream(out.toByteArray()));
    }

    static java.util.stream.Stream<String> hostile() {
        return HostileStrings.all();
    }

    /** IO4. */
    @ParameterizedTest
    @MethodSource("hostile")
    void letsNoTextEndAHeaderLine(String text) throws Exception {
        var plain = written(composer("Office").compose(row("a", "Visit", "Hello"), "pat@family.example", NOW));
        var mail = written(composer(text).compose(row("a", text, "Hello"), "pat@family.example", NOW));
        assertThat(names(mail)).isEqualTo(names(plain));
        assertThat(mail.getAllRecipients()).hasSize(1);
        assertThat(mail.getFrom()).hasSize(1);
        assertThat(mail.getSubject()).doesNotContain("\n", "\r");
    }

    private static java.util.List<String> names(MimeMessage mail) throws Exception {
        return Collections.list(mail.getAllHeaders()).stream()
                .map(Header::getName)
                .sorted()
                .toList();
    }

    /** IO3. */
    @ParameterizedTest
    @MethodSource("hostile")
    void showsTextAsTextInThePage(String text) throws Exception {
        var mail = composer("Office").compose(row("a", "Visit", "Hello " + text), "pat@family.example", NOW);
        var out = new ByteArrayOutputStream();
        var page = page(mail);
        assertThat(page.replaceAll("</?(html|body|div|p|a)\\b[^<>]*>|<!doctype html>", ""))
                .doesNotContain("<");
        mail.writeTo(out);
        assertThat(out.size()).isPositive();
    }

    private static String page(MimeMessage mail) throws Exception {
        var part = mail.getContent();
        while (part instanceof jakarta.mail.internet.MimeMultipart many) {
            part = many.getBodyPart(many.getCount() - 1).getContent();
        }
        return (String) part;
    }

    @Test
    void keepsItsIdentifierHoweverOftenItIsMade() throws Exception {
        var first = written(composer("A").compose(row("one", "Visit", "Hello"), "a@family.example", NOW));
        var again =
                written(composer("B").compose(row("one", "Other", "Words"), "b@family.example", NOW.plusSeconds(9)));
        var other = written(composer("A").compose(row("two", "Visit", "Hello"), "a@family.example", NOW));
        assertThat(again.getMessageID()).isEqualTo(first.getMessageID()).endsWith("@clinic.example>");
        assertThat(other.getMessageID()).isNotEqualTo(first.getMessageID());
        assertThat(first.getMessageID()).doesNotContain("one");
    }

    @Test
    void makesTheLinkOneThatCanBePressed() throws Exception {
        var mail = composer("Office").compose(row("a", "Visit", "Hello\n\nHere:\n{link}\n\nBye"), "a@b.example", NOW);
        var url = "http://localhost:8080/v/token-of-" + new UUID(1, 2);
        assertThat(page(mail))
                .contains("href=\"" + url + "\"")
                .contains("Hello")
                .contains("Bye");
    }

    @Test
    void writesOneWholeFileHoweverOftenItIsDelivered(@TempDir Path folder) throws Exception {
        var postman = new FolderPostman(folder.resolve("outgoing"));
        var mail = composer("Office").compose(row("a", "Visit", "Hello"), "pat@family.example", NOW);
        postman.deliver(mail);
        postman.deliver(mail);
        assertThat(postman.sends()).isFalse();
        try (var files = Files.list(folder.resolve("outgoing"))) {
            var only = files.toList();
            assertThat(only).singleElement().asString().endsWith(".eml");
            assertThat(Files.readString(only.get(0))).contains("Subject: Visit", "To: pat@family.example", "Hello");
        }
    }
}
