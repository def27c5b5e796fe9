package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.hearthway.browser.Browser;
import org.hearthway.browser.RunningClinic;
import org.hearthway.browser.WalkOrder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.springframework.security.core.session.SessionInformation;
import org.springframework.security.core.session.SessionRegistry;

/** What a parent types outlives the session, and is never another person's to read. */
@Order(WalkOrder.SHARED)
@ResourceLock(RunningClinic.SHARED)
class DraftIT {

    private static final String PASS_PHRASE = "lantern on the porch step";
    private static final String EVERY_VALUE =
            "return document.body.innerText + [...document.querySelectorAll('textarea')].map(t => t.value)";
    private static final String NOTE = "Two bad nights. Is the smaller dose to blame?";

    private static RunningClinic clinic;

    @BeforeAll
    static void begin() {
        clinic = RunningClinic.shared();
    }

    @Test
    void aNoteIsThereAfterTheSessionWasLostAndGoneOnceSentOrSignedOut() {
        try (var phone = Browser.phone(clinic)) {
            signIn(phone, "dana@family.example");
            var notes = childsPage(phone, "notes");
            phone.open(notes).type("Your note", NOTE).waitFor("the draft", () -> drafts(phone) == 1);
            endAllSessions(clinic);
            phone.press("Send").see("You were away for a while");
            signIn(phone, "ruth@family.example");
            phone.open(notes).see("Notes to the team");
            assertThat(String.valueOf(phone.run(EVERY_VALUE))).doesNotContain(NOTE);
            phone.open("/sign-out").see("Sign in");

            signIn(phone, "dana@family.example");
            phone.open(notes)
                    .waitFor("the words", () -> phone.value("Your note").equals(NOTE));
            phone.see("It is not sent yet").fitsItsWidth("the note").accessible("the note that came back");
            phone.picture(Path.of("target", "screens", "note-kept-390.png"));
            phone.press("Send").see("We will read it");
            phone.waitFor("no draft", () -> drafts(phone) == 0);
            assertThat(phone.open(notes).value("Your note")).isEmpty();

            phone.type("Your note", "Something else").waitFor("the draft", () -> drafts(phone) == 1);
            phone.press("Juno").press("Sign out").see("Sign in");
            assertThat(drafts(phone)).isZero();
        }
    }

    @Test
    void aReportAWishAndTheWordsOfALogComeBackInTheirPlaces() {
        try (var phone = Browser.phone(clinic)) {
            signIn(phone, "dana@family.example");
            var call = childsPage(phone, "call");
            var dates = childsPage(phone, "dates");
            phone.open(call).type("Tell it in your words. You may leave this out.", "The scar is red.");
            phone.waitFor("one draft", () -> drafts(phone) == 1);
            phone.open(dates).press("Ask to move").type("What suits you better?", "Any morning.");
            phone.waitFor("two drafts", () -> drafts(phone) == 2);
            endAllSessions(clinic);

            signIn(phone, "dana@family.example");
            phone.open(call)
                    .waitFor(
                            "the report",
                            () -> phone.value("Tell it in your words. You may leave this out.")
                                    .equals("The scar is red."));
            phone.open(dates)
                    .waitFor(
                            "the wish",
                            () -> phone.value("What suits you better?").equals("Any morning."));
            phone.press("Go back").seeNoMore("What suits you better?");
            phone.waitFor("one draft", () -> drafts(phone) == 1);
        }
    }

    private static void endAllSessions(RunningClinic clinic) {
        var sessions = clinic.part(SessionRegistry.class);
        sessions.getAllPrincipals().stream()
                .flatMap(person -> sessions.getAllSessions(person, false).stream())
                .forEach(SessionInformation::expireNow);
    }

    private static Browser signIn(Browser phone, String email) {
        return phone.open("/sign-in")
                .type("Email", email)
                .type("Password", PASS_PHRASE)
                .press("Sign in")
                .see("When to call");
    }

    private static String childsPage(Browser phone, String page) {
        return phone.path().replaceAll("/[^/]*$", "/" + page);
    }

    private static int drafts(Browser phone) {
        return ((Number) phone.run("return Object.keys(localStorage).filter(k => k.startsWith('hw-draft|')).length"))
                .intValue();
    }
}
