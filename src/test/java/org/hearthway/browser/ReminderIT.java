package org.hearthway.browser;

import java.util.regex.Pattern;
import org.hearthway.base.Viewer;
import org.hearthway.reminder.Outbox;
import org.junit.jupiter.api.Test;

/** A coordinator sends a reminder; the family answers by its link; both sides then see the same. */
class ReminderIT {

    private static final Viewer MACHINE = new Viewer.Machine("walk");
    private static final Pattern LINK = Pattern.compile("http://localhost:\\d+/v/[A-Za-z0-9_-]+");

    @Test
    void isSentByHandAndAnsweredByItsLink() throws Exception {
        try (var clinic = RunningClinic.demo();
                var desk = Browser.desk(clinic);
                var phone = Browser.phone(clinic)) {
            var outbox = clinic.part(Outbox.class);
            var planned = outbox.board(MACHINE).stream()
                    .filter(m -> m.state() == Outbox.State.PLANNED && m.channel() == Outbox.Channel.MAIL)
                    .filter(m -> m.visit().isPresent())
                    .min(java.util.Comparator.comparing(Outbox.Message::due))
                    .orElseThrow();

            Tour.signIn(desk, Tour.Person.COORDINATOR.mail).open("/staff/desk?show=GOING_OUT");
            desk.picture(java.nio.file.Path.of("target/screens/walk-desk.png"));
            System.out.println("PLANNED " + planned + "\n" + desk.text() + desk.run("return location.href"));
            outbox.board(MACHINE)
                    .forEach(m -> System.out.println("MSG " + m.state() + " " + m.channel() + " " + m.personName() + " "
                            + m.about() + " " + m.due()));
        }
    }
}
