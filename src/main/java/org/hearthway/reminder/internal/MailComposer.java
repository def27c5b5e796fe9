package org.hearthway.reminder.internal;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Date;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.hearthway.access.Links;
import org.hearthway.clinic.ClinicSettings;
import org.springframework.mail.javamail.MimeMessageHelper;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** Makes the mail of a kept message: plain text and the same words as a simple page, under a Message-ID that stays. */
@Component
class MailComposer {

    private static final int ID_BYTES = 16;

    /** Where the team finds what waits for it, after signing in. */
    private static final String NEEDS = "/staff/needs";

    /** Where a family finds what waits for it, after signing in. */
    private static final String HOME = "/";

    private final ClinicSettings clinic;
    private final Links links;
    private final ITemplateEngine templates;

    MailComposer(ClinicSettings clinic, Links links, ITemplateEngine templates) {
        this.clinic = clinic;
        this.links = links;
        this.templates = templates;
    }

    /** A message that keeps its identifier however often it is written out. */
    private static class KeyedMessage extends MimeMessage {

        private final String id;

        KeyedMessage(String id) {
            super(Session.getInstance(new Properties()));
            this.id = id;
        }

        @Override
        protected void updateMessageID() throws MessagingException {
            setHeader("Message-ID", id);
        }
    }

    /**
     * The mail.
     *
     * @throws MessagingException when an address cannot be one
     */
    MimeMessage compose(OutboxRow row, String address, Instant now) throws MessagingException {
        var draft = row.draft();
        var message = new KeyedMessage(messageId(draft.idem()));
        var url = row.toTeam()
                ? Optional.of(clinic.baseUrl() + NEEDS)
                : row.link()
                        .map(link -> clinic.baseUrl() + "/v/" + links.token(link))
                        .or(() -> Optional.of(clinic.baseUrl() + HOME)
                                .filter(home -> draft.body().contains(MessageTexts.LINK)));
        var body = url.map(to -> draft.body().replace(MessageTexts.LINK, to)).orElse(draft.body());
        var helper = new MimeMessageHelper(message, true, StandardCharsets.UTF_8.name());
        helper.setFrom(sender());
        helper.setTo(new InternetAddress(oneLine(address), true));
        helper.setSubject(oneLine(draft.subject()));
        helper.setSentDate(Date.from(now));
        helper.setText(body, page(draft, body, url.orElse("")));
        // holiday notes and other machines need not answer (RFC 3834)
        message.setHeader("Auto-Submitted", "auto-generated");
        message.setHeader("Content-Language", draft.language().tag());
        message.saveChanges();
        return message;
    }

    private InternetAddress sender() throws MessagingException {
        try {
            var from = new InternetAddress(oneLine(clinic.senderAddress()), true);
            from.setPersonal(oneLine(clinic.senderName()), StandardCharsets.UTF_8.name());
            return from;
        } catch (UnsupportedEncodingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private String page(Draft draft, String body, String url) {
        var context = new Context(draft.language().locale());
        context.setVariable("language", draft.language().tag());
        context.setVariable("url", url);
        context.setVariable(
                "paragraphs",
                Stream.of(body.strip().split("\n\\s*\n"))
                        .map(paragraph -> url.isEmpty()
                                ? paragraph
                                : paragraph.replace(url, "").strip())
                        .toList());
        context.setVariable("linkAfter", linkAfter(body, url));
        return templates.process("reminder/mail", context);
    }

    /** Number of the paragraph that the link belongs to; -1 for none. */
    private static int linkAfter(String body, String url) {
        var paragraphs = body.strip().split("\n\\s*\n");
        for (int i = 0; i < paragraphs.length; i++) {
            if (!url.isEmpty() && paragraphs[i].contains(url)) {
                return i;
            }
        }
        return -1;
    }

    /** The same for the same reminder, whatever process sends it; tells nothing of it. */
    String messageId(String idem) {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(idem.getBytes(StandardCharsets.UTF_8));
            var domain = clinic.senderAddress().substring(clinic.senderAddress().indexOf('@') + 1);
            return "<" + HexFormat.of().formatHex(digest, 0, ID_BYTES) + "@" + oneLine(domain) + ">";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A header is one line: whatever could end it becomes a space. */
    private static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\u0085\\u2028\\u2029]+", " ").strip();
    }
}
