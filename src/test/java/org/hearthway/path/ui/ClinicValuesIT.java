package org.hearthway.path.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.access.Passwords;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.browser.Browser;
import org.hearthway.browser.RunningClinic;
import org.hearthway.browser.WalkOrder;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Names;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** An administrator lets care rules end after four weeks in this clinic. The clock stands at Thursday, March 12, 2026. */
@Order(WalkOrder.LONG)
class ClinicValuesIT {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final String PASSWORD = "seven quiet stones by the river";
    private static final Path PICTURES = Path.of("target", "screens", "clinic");
    private static final String TWIST = "Change: Surgery, Do not twist the back for your child (passive twist)."
            + " What your child does alone is fine.";

    @Test
    void aChangeForTheClinicIsSeenBeforeItIsSavedExplainedAndTakenBackInOneStep() {
        try (var clinic = RunningClinic.real();
                var desk = Browser.desk(clinic);
                var ward = Browser.desk(clinic);
                var phone = Browser.phone(clinic)) {
            var child = operated(clinic, LocalDate.of(2026, 3, 2));
            account(clinic, "greta", Role.ADMINISTRATOR);
            account(clinic, "callum", Role.NURSE);
            clinic.part(Households.class)
                    .link(ADMINISTRATOR, child, account(clinic, "dana", Role.CAREGIVER), Reach.FULL);
            acceptPaths(clinic);
            signIn(ward, "callum");
            signIn(phone, "dana");
            phone.open("/my/" + child + "/today").see("Thursday, March 12");
            clinic.clock().advance(Duration.ofMinutes(5));
            signIn(desk, "greta");
            var before = clinic.part(Plans.class).all(SETUP);

            desk.open("/staff/clinic/paths?path=sdr").see("Every value of this path is as it came.");
            desk.accessible("a path as it came").picture(PICTURES.resolve("paths-1280.png"));
            open(desk, "Surgery").press(TWIST);
            desk.type("until", "4")
                    .press("The same for the 7 other care rules that end after 6 weeks")
                    .see("The plan of one child changes, of 1 on this path");
            open(desk, "Six-week check").press("Change: Six-week check, Begins after the first day of “Surgery”");
            desk.type("usual", "4").see("it must not be shorter than “earliest”, which is 5 weeks");
            assertThat(desk.value("usual")).isEqualTo("4");
            desk.accessible("a value that cannot be").picture(PICTURES.resolve("paths-refused-1280.png"));
            desk.type("earliest", "3").see("dates · 8 care rules");
            assertThat(clinic.part(Plans.class).all(SETUP)).isEqualTo(before);
            desk.press("Save for the clinic").see("Say why, in 3 to 500 characters.");
            desk.type("Reason, kept with the change", "our surgeons end them after four weeks");
            desk.resize(390, 844, false);
            desk.fitsItsWidth("a change of values").picture(PICTURES.resolve("paths-change-390.png"));
            desk.resize(1280, 800, false);
            desk.press("Save for the clinic").see("Saved. The plans follow.").see("10 own values");
            desk.accessible("what differs here").picture(PICTURES.resolve("paths-own-1280.png"));

            ward.open("/staff/child/" + child + "/path?stage=six-week-check")
                    .see("That is our clinic’s own rule since March 12, 2026. The path as it came says 6 weeks.");
            phone.open("/my/" + child + "/today").see("The clinic changed its own rules for this path.");
            phone.open("/my/" + child + "/path").see("our clinic’s own rule since March 12, 2026");

            desk.press("Take back the change of Mar 12, 2026")
                    .see("The plan of one child changes, of 1 on this path")
                    .type("Reason, kept with the change", "the guidance says six")
                    .pressAt(".hw-values-form .hw-button.main")
                    .see("Every value of this path is as it came.");
            assertThat(clinic.part(Plans.class).all(SETUP)).isEqualTo(before);
            desk.see("our surgeons end them after four weeks").see("the guidance says six");
        }
    }

    private static Browser open(Browser desk, String stage) {
        desk.run(
                "[...document.querySelectorAll('.hw-stage-values > summary')]"
                        + ".find(line => line.textContent.startsWith(arguments[0])).click()",
                stage);
        return desk;
    }

    private static ChildId operated(RunningClinic clinic, LocalDate day) {
        var child = clinic.part(ChildRegister.class)
                .enter(
                        SETUP,
                        ChildData.plain(Names.plain("Wren", "Ferrow"), LocalDate.of(2020, 8, 3), Optional.of(3), 2));
        var plans = clinic.part(Plans.class);
        plans.begin(SETUP, child, "sdr", Plans.Beginning.INSTEAD, LocalDate.of(2025, 10, 6), "referred by the school");
        plans.apply(SETUP, child, "sdr", new Change.Fix("operation", day), "done as planned", 1);
        return child;
    }

    private static org.hearthway.base.AccountId account(RunningClinic clinic, String name, Role role) {
        var invitation = clinic.part(Accounts.class)
                .invite(
                        SETUP,
                        new NewAccount(name, name + "@clinic.example", "", Set.of(role), Language.EN, People.ZONE));
        var token = invitation.url().substring(invitation.url().lastIndexOf('/') + 1);
        clinic.part(Passwords.class).set(token, PASSWORD);
        return invitation.account();
    }

    private static void acceptPaths(RunningClinic clinic) {
        var signOff = clinic.part(SignOff.class);
        signOff.accept(
                ADMINISTRATOR,
                List.copyOf(signOff.all(ADMINISTRATOR).stream()
                        .map(text -> text.item())
                        .filter(item -> item.kind().equals("paths"))
                        .toList()));
    }

    private static void signIn(Browser browser, String name) {
        browser.open("/sign-in")
                .type("Email", name + "@clinic.example")
                .type("Password", PASSWORD)
                .press("Sign in");
        browser.waitFor("signing in", () -> !browser.path().startsWith("/sign-in"));
    }
}
