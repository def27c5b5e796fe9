package org.hearthway.browser;

import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.internet.MimeMultipart;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.reminder.Outbox;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/**
 * The refill that nobody has booked, from the Desk to the family's next date: booked, reminded of, done, checked. It is
 * Thursday, March 12, 2026, and a week later.
 */
@Order(WalkOrder.LONG)
class DemoRefillIT {

    private static final Viewer MACHINE = new Viewer.Machine("test");
    private static final Instant DONE = Instant.parse("2026-03-19T15:30:00Z");
    private static final Pattern LINK = Pattern.compile("http://localhost:\\d+/v/[\\w-]+");
    private static final Path PICTURES = Path.of("target", "screens", "refill");

    @Test
    void goesFromTheDeskThroughTwoPairsOfEyesToTheFamily() {
        try (var clinic = RunningClinic.demo();
                var desk = Browser.desk(clinic);
                var folder = Browser.desk(clinic);
                var phone = Browser.phone(clinic)) {
            var teo = new Tour(clinic).child("Teo");
            Tour.signIn(desk, Tour.Person.COORDINATOR.mail);
            desk.open("/staff/desk?show=to-book&row=book/" + teo + "/refill").see("Book for Teo");
            desk.see("pump sounds in 17 days").picture(PICTURES.resolve("1-to-book.png"));
            desk.type("Day", "3/19/2026").type("Time", "11:00 AM").press("Book").see("Booked for Teo");

            desk.open("/staff/desk?show=going-out&row=message/" + messageOfTheRefill(clinic, teo))
                    .see("Thursday, March 19")
                    .press("Send now")
                    .see("On its way.");
            desk.waitFor("the mail", () -> linkIn(clinic).isPresent());
            phone.open(linkIn(clinic).orElseThrow()).press("Yes, we come").see("You said yes");
            Tour.signIn(phone, "paola@family.example").open("/my/" + teo + "/dates");
            phone.see("Booked: Thursday, March 19").picture(PICTURES.resolve("2-booked.png"));

            clinic.clock().set(DONE);
            Tour.signIn(folder.forget(), Tour.Person.NURSE.mail);
            folder.open("/staff/child/" + teo + "/pump").press("Record a refill");
            folder.type("Drawn out", "3.5")
                    .type("Filled in", "20")
                    .type("Alarm date on the print-out", "7/18/2026")
                    .see("within the window")
                    .seeNoMore("What is out of the usual");
            folder.press("Ask for second check").see("waits for the second check");
            folder.picture(PICTURES.resolve("3-waits.png"));

            Tour.signIn(phone.forget(), "paola@family.example").open("/my/" + teo + "/dates");
            phone.see("Pump refilled on March 19").see("The next date is being checked");
            Tour.signIn(desk.forget(), Tour.Person.COORDINATOR.mail).open("/staff/desk?show=to-book");
            desk.see("The next date is being checked; nothing to book yet");

            Tour.signIn(folder.forget(), Tour.Person.PHYSICIAN.mail);
            folder.open("/staff/child/" + teo + "/pump").press("Check");
            folder.type("Strength", "2000")
                    .type("Dose of a day", "296.5")
                    .type("Drawn out", "3.5")
                    .type("Filled in", "20")
                    .type("Alarm date on the print-out", "7/18/2026");
            folder.press("Confirm: I read the same").see("Checked by Dr. Amara Nwosu");

            // 121 days to the alarm, five of margin: Monday, July 13
            phone.open("/my/" + teo + "/dates")
                    .see("Come between June 29 and July 13")
                    .see("no time booked yet");
            phone.picture(PICTURES.resolve("4-next.png"));
            desk.open("/staff/desk?show=to-book").seeNoMore("The next date is being checked");
        }
    }

    private static String messageOfTheRefill(RunningClinic clinic, ChildId teo) {
        return clinic.part(Outbox.class).of(MACHINE, teo).stream()
                .filter(message ->
                        message.about().equals("Pump refill") && message.visit().isPresent())
                .filter(message -> message.state() == Outbox.State.PLANNED)
                .findFirst()
                .orElseThrow()
                .id()
                .toString();
    }

    private static Optional<String> linkIn(RunningClinic clinic) {
        return Stream.of(clinic.mail().getReceivedMessages())
                .map(DemoRefillIT::text)
                .flatMap(said -> LINK.matcher(said).results())
                .map(MatchResult::group)
                .findFirst();
    }

    private static String text(Part part) {
        try {
            var content = part.getContent();
            return content instanceof MimeMultipart parts ? text(parts.getBodyPart(0)) : String.valueOf(content);
        } catch (IOException | MessagingException e) {
            throw new IllegalStateException(e);
        }
    }
}
