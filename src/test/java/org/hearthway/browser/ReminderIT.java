package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** A coordinator sends a reminder; the family answers by its link; both sides then see the same. */
@Order(WalkOrder.KEEPS_THE_LOG)
class ReminderIT {

    private static final Pattern LINK = Pattern.compile("http://localhost:\\d+/v/[A-Za-z0-9_-]+");

    private RunningClinic.Held hold;

    @BeforeEach
    void holdTheLog() {
        hold = RunningClinic.holdTheLog();
    }

    @AfterEach
    void letGo() {
        hold.close();
    }

    @Test
    void isSentByHandAndAnsweredByItsLink() throws Exception {
        try (var clinic = RunningClinic.demo(KeptLog.AT_DEBUG);
                var log = new KeptLog();
                var desk = Browser.desk(clinic);
                var phone = Browser.phone(clinic)) {
            // this family reads Spanish and lives by another clock than the clinic
            var mateo = new Tour(clinic).child("Mateo");
            Tour.signIn(desk, Tour.Person.COORDINATOR.mail).open("/staff/desk").press("Book a visit");
            desk.type("Child", "Mateo Quispe").type("Kind of visit", "Therapy visit");
            desk.type("Day", "3/18/2026").type("Time", "2:00 PM").type("Place", "Gym");
            desk.picture(picture("reminder-booking"));
            desk.press("Book").see("Booked for Mateo Quispe");

            desk.open("/staff/desk?show=going-out").press("Mateo Quispe");
            desk.see("rosario@family.example").see("miércoles, 18 de marzo");
            desk.picture(picture("reminder-desk"));
            desk.press("Send now").see("On its way.");
            desk.waitFor(
                    "the mail", () -> !sentTo(clinic, "rosario@family.example").isEmpty());
            var said = text(sentTo(clinic, "rosario@family.example").get(0)).replace('\u00a0', ' ');
            assertThat(said).contains("miércoles, 18 de marzo").contains("2:00 p. m. (hora de la clínica)");

            desk.open("/staff/desk?show=waiting").see("Mateo Quispe");

            var link = LINK.matcher(said);
            assertThat(link.find()).isTrue();
            phone.open(link.group()).see("miércoles, 18 de marzo").picture(picture("reminder-link"));
            phone.accessible("the page behind the link").press("Sí, vamos").see("Ya dijeron que sí");
            phone.picture(picture("reminder-yes"));

            Tour.signIn(phone, "rosario@family.example").open("/my/" + mateo + "/dates");
            phone.see("mar. 18 Mié. Visita de terapia").see("Gym").see("Usted dijo que sí");
            phone.picture(picture("reminder-dates"));
            // nobody waits for an answer any more, and the folder says which it was
            desk.open("/staff/desk?show=waiting").see("Noor Castellanos").seeNoMore("Mateo Quispe");
            desk.open("/staff/child/" + mateo + "/path").see("Wed, Mar 18 · Therapy visit, confirmed");

            var token = link.group().substring(link.group().lastIndexOf('/') + 1);
            log.tellsNothingOf(token, "Mateo", "Quispe", "Rosario", "rosario@", Tour.PASS_PHRASE, "de marzo");
        }
    }

    private static List<MimeMessage> sentTo(RunningClinic clinic, String address) {
        return Stream.of(clinic.mail().getReceivedMessages())
                .filter(mail -> recipients(mail).contains(address))
                .toList();
    }

    private static String recipients(MimeMessage mail) {
        try {
            return List.of(mail.getAllRecipients()).toString();
        } catch (MessagingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(Part part) throws Exception {
        var content = part.getContent();
        return content instanceof MimeMultipart parts ? text(parts.getBodyPart(0)) : String.valueOf(content);
    }

    private static Path picture(String name) {
        return Path.of("target", "screens", name + ".png");
    }
}
