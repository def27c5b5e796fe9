package org.hearthway.browser;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A real clinic from nothing, all by screen: from the administrator's link to a parent's first tick. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(WalkOrder.KEEPS_THE_LOG)
class EmptyClinicIT {

    private static final String PASSWORD = "seven quiet herons walk";
    private RunningClinic.Held hold;
    private RunningClinic clinic;
    private Browser desk;
    private Browser phone;
    private KeptLog log;
    private String firstLink = "";

    @BeforeAll
    void begin() {
        hold = RunningClinic.holdTheLog();
        var console = System.out;
        var said = new ByteArrayOutputStream();
        System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            clinic = RunningClinic.real(KeptLog.AT_DEBUG);
        } finally {
            System.setOut(console);
        }
        var link = Pattern.compile(Pattern.quote(clinic.url()) + "/welcome/\\S+")
                .matcher(said.toString(StandardCharsets.UTF_8));
        if (link.find()) {
            firstLink = link.group();
        }
        log = new KeptLog();
        desk = Browser.desk(clinic);
        phone = Browser.phone(clinic);
    }

    @AfterAll
    void end() {
        log.close();
        phone.close();
        desk.close();
        clinic.close();
        hold.close();
    }

    @Test
    void comesByScreenFromTheFirstLinkToAFirstTick() {
        desk.open(firstLink).picture(picture("empty-first"));
        desk.type("Your name", "Greta Lund").type("Email", "greta@clinic.example");
        desk.type("New password", PASSWORD).press("Open the clinic");
        signIn(desk, "greta@clinic.example");
        desk.open("/staff/clinic").see("Invite a person").picture(picture("empty-people"));
        var physician = invite("Amara Nwosu", "amara@clinic.example", "Physician");
        var therapist = invite("Ines Valdemar", "ines@clinic.example", "Therapist");
        var caregiver = invite("Dana Albrecht", "dana@family.example", "Caregiver");
        desk.picture(picture("empty-invited"));

        desk.open("/staff/clinic/children").see("No child yet");
        desk.type("Name used", "Juno").type("Family name or names", "Albrecht").type("Birth date", "11/4/2020");
        desk.picture(picture("empty-child"));
        desk.press("Enter").see("Nobody yet: no family sees this child.");
        desk.type("Caregiver", "Dana Albrecht · dana@family.example");
        desk.press("Link this caregiver").seeNoMore("Nobody yet").see("1 caregiver");
        desk.picture(picture("empty-linked"));

        desk.open("/staff/clinic/texts")
                .pressAt(".hw-clinic-side vaadin-checkbox label")
                .press("Accept ")
                .see("texts accepted");
        desk.picture(picture("empty-texts"));

        setPassword(desk, physician, "amara@clinic.example");
        desk.open("/staff/children")
                .press("Juno Albrecht")
                .see("No path has begun")
                .picture(picture("empty-path"));
        desk.press("Nerve-root surgery (SDR)").type("First day, the day of the referral", "11/3/2025");
        desk.type("Reason, kept with the change", "Agreed with the family").press("Begin and tell the family");
        desk.see("The path has begun.")
                .seeNoMore("No path yet")
                .press("Surgery")
                .see("What is there to say?");
        desk.press("It happened, or the clinic has fixed it").type("Day", "1/29/2026");
        desk.type("Reason, kept with the change", "Room is booked").picture(picture("empty-operation"));
        desk.press("Save and tell the family").see("Saved. The family sees the change.");
        desk.picture(picture("empty-path-begun"));

        setPassword(desk, therapist, "ines@clinic.example");
        desk.open("/staff/children").press("Juno Albrecht").press("Program").see("No version yet");
        desk.type("Add an exercise", "Bridge").press("Bridge").see("1 change");
        desk.type("Reason, kept with version 1", "First weeks at home").picture(picture("empty-program"));
        desk.press("Save version 1").see("Version 1 is saved. The family sees it.");

        setPassword(phone, caregiver, "dana@family.example");
        phone.see("One to do today.").see("Bridge").picture(picture("empty-today"));
        phone.press("Bridge").press("Save and go on").see("Done for today.").picture(picture("empty-done"));

        desk.reload().open("/staff/children").see("Juno Albrecht").see("today").picture(picture("empty-children"));
        log.tellsNothingOf(
                PASSWORD,
                token(firstLink),
                token(physician),
                token(caregiver),
                "Albrecht",
                "Juno",
                "Nwosu",
                "Valdemar",
                "@clinic.example",
                "@family.example",
                "2020-11-04",
                "11/4/2020",
                "Room is booked",
                "First weeks at home");
    }

    private static String token(String link) {
        return link.substring(link.lastIndexOf('/') + 1);
    }

    private String invite(String name, String email, String role) {
        desk.type("Name", name).type("Email", email).press(role).press("Invite").see("Link for " + name);
        return desk.value("Link for " + name);
    }

    private static void setPassword(Browser browser, String link, String email) {
        browser.forget().open(link).type("New password", PASSWORD).press("Save my password");
        signIn(browser, email);
    }

    private static void signIn(Browser browser, String email) {
        browser.waitFor("the way in", () -> browser.path().equals("/sign-in"));
        browser.settle().type("Email", email).type("Password", PASSWORD).press("Sign in");
        browser.waitFor("signing in", () -> !browser.path().equals("/sign-in"));
        browser.settle();
    }

    private static Path picture(String name) {
        return Path.of("target", "screens", name + ".png");
    }
}
