package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;

/** In a real clinic families read a sign once it is accepted, in the clinic's own words, and not once it is sent back. */
class TextsIT {

    private static final String PASSWORD = "seven quiet herons walk";
    private static final String BEEP = "The pump makes a sound: any beep, even once.";
    private static final String OWN = "The pump beeps, even once.";
    private static final String OWN_SPANISH = "La bomba suena, aunque sea una vez.";

    @Test
    void aSignIsAcceptedRewordedAndSentBackByScreen() {
        try (var clinic = RunningClinic.real();
                var desk = Browser.desk(clinic);
                var phone = Browser.phone(clinic)) {
            signIn(clinic, desk);
            desk.open("/staff/clinic/texts").see("Families do not see").see("0 of ");
            assertThat(callPage(phone)).doesNotContain(BEEP);

            open(desk).press("Accept this text").see("1 text accepted").see("look again by Mar 12, 2027");
            assertThat(callPage(phone)).contains(BEEP);

            desk.press("Reword")
                    .type("Our words, English", "The pump beeps. Wait for a day.")
                    .press("Save our words")
                    .see("This tells a family to wait.");
            assertThat(desk.value("Our words, English")).isEqualTo("The pump beeps. Wait for a day.");
            assertThat(callPage(phone)).contains(BEEP);
            desk.accessible("own words that are refused").picture(picture("texts-refused"));
            desk.type("Our words, English", OWN)
                    .type("Our words, Spanish", OWN_SPANISH)
                    .press("Save our words")
                    .see("with the clinic’s own words");
            assertThat(callPage(phone)).contains(OWN).doesNotContain(BEEP);
            assertThat(phone.open("/call?lang=es").text()).contains(OWN_SPANISH);
            desk.accessible("own words").picture(picture("texts-own"));

            desk.press("Send back").press("Send back").see("Say why, in 3 to 500 characters.");
            desk.type("Why it goes back", "The nurses say it otherwise.")
                    .press("Send back")
                    .see("sent back by Ada Okoro");
            assertThat(callPage(phone)).doesNotContain(OWN).doesNotContain(BEEP);
            desk.see("The nurses say it otherwise.").picture(picture("texts-sent-back"));
            desk.resize(390, 844, false);
            desk.fitsItsWidth("a text opened").picture(picture("texts-sent-back-390"));
        }
    }

    private static Browser open(Browser desk) {
        desk.run(
                "[...document.querySelectorAll('.hw-text summary')]"
                        + ".find(line => line.textContent.includes(arguments[0])).click()",
                BEEP);
        return desk.see("Accept this text");
    }

    private static String callPage(Browser phone) {
        return phone.open("/call?lang=en").text();
    }

    private static void signIn(RunningClinic clinic, Browser browser) {
        var invitation = clinic.part(Accounts.class)
                .invite(
                        People.with(Role.ADMINISTRATOR),
                        new NewAccount(
                                "Ada Okoro",
                                "ada@clinic.example",
                                "",
                                Set.of(Role.ADMINISTRATOR),
                                Language.EN,
                                People.ZONE));
        browser.open(invitation.url()).type("New password", PASSWORD).press("Save my password");
        browser.type("Email", "ada@clinic.example").type("Password", PASSWORD).press("Sign in");
        browser.waitFor("signing in", () -> browser.path().startsWith("/staff"));
    }

    private static Path picture(String name) {
        return Path.of("target", "screens", name + ".png");
    }
}
