package org.hearthway.path.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
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
import org.hearthway.child.Names;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A nurse sets dates of a path. The clinic's clock stands at Thursday, March 12, 2026. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(WalkOrder.LONG)
class FolderDatesIT {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final String PASSWORD = "seven quiet stones by the river";
    private static final Path PICTURES = Path.of("target", "screens", "folder");

    private RunningClinic clinic;
    private Browser desk;

    @BeforeAll
    void open() {
        clinic = RunningClinic.real();
        account("nurse", Role.NURSE, Language.EN);
        desk = Browser.desk(clinic);
        signIn(desk, "nurse");
    }

    @AfterAll
    void close() {
        desk.close();
        clinic.close();
    }

    @BeforeEach
    void atTheDesk() {
        desk.resize(1280, 800, false);
    }

    private void account(String name, Role role, Language language) {
        var zone = ZoneId.of("America/New_York");
        var invitation = clinic.part(Accounts.class)
                .invite(SETUP, new NewAccount(name, name + "@clinic.example", "", Set.of(role), language, zone));
        var token = invitation.url().substring(invitation.url().lastIndexOf('/') + 1);
        clinic.part(Passwords.class).set(token, PASSWORD);
    }

    private static void signIn(Browser browser, String name) {
        browser.open("/sign-in")
                .type("Email", name + "@clinic.example")
                .type("Password", PASSWORD)
                .press("Sign in");
    }

    private ChildId child(String name) {
        return clinic.part(ChildRegister.class)
                .enter(
                        SETUP,
                        ChildData.plain(Names.plain(name, "Ferrow"), LocalDate.of(2020, 8, 3), Optional.of(3), 2));
    }

    private ChildId afterSurgery(String name) {
        var child = child(name);
        var plans = clinic.part(Plans.class);
        plans.begin(SETUP, child, "sdr", Plans.Beginning.INSTEAD, LocalDate.of(2025, 9, 8), "referred by the school");
        plans.apply(SETUP, child, "sdr", new Change.Fix("operation", LocalDate.of(2026, 1, 29)), "done as planned", 1);
        return child;
    }

    @Test
    void aNurseSeesWhatMovesBeforeItIsSavedAndThenMovesIt() {
        var child = afterSurgery("Wren");
        desk.open("/staff/child/" + child + "/path")
                .see("Nerve-root surgery (SDR)")
                .see("today, Thu, Mar 12");
        desk.accessible("the path").picture(PICTURES.resolve("path-1280.png"));
        desk.press("Six-month check").see("Why Wed, Jul 29?");
        desk.press("A plan, chosen by hand")
                .type("Day", "8/20/2026")
                .see("Nothing is saved yet.")
                .see("moves to Thu, Aug 20");
        assertThat(clinic.part(Plans.class).decisions(SETUP, child)).hasSize(2);
        assertThat(desk.value("Day")).isEqualTo("8/20/2026");
        desk.accessible("the path with a preview").picture(PICTURES.resolve("path-preview-1280.png"));
        desk.type("Reason, kept with the change", "the family is away until August 16")
                .press("Save and tell the family")
                .see("Saved.")
                .see("the family is away until August 16");
        assertThat(clinic.part(Plans.class)
                        .plans(SETUP, child)
                        .get(0)
                        .plan()
                        .stage("six-month-review")
                        .orElseThrow()
                        .start())
                .isEqualTo(LocalDate.of(2026, 8, 20));
        desk.resize(390, 844, true);
        desk.open("/staff/child/" + child + "/path?stage=six-month-review").see("Six-month check");
        desk.fitsItsWidth("the path on a phone")
                .accessible("the path on a phone")
                .picture(PICTURES.resolve("path-390.png"));
        desk.run("document.querySelector('.hw-stages').scrollIntoView()");
        desk.picture(PICTURES.resolve("path-stages-390.png"));
    }

    @Test
    void aSecondPersonsChangeIsShownAndWhatWasTypedStays() {
        var child = afterSurgery("Tarn");
        desk.open("/staff/child/" + child + "/path?stage=six-month-review")
                .press("A plan, chosen by hand")
                .type("Day", "8/20/2026")
                .see("moves to Thu, Aug 20")
                .type("Reason, kept with the change", "away");
        clinic.part(Plans.class)
                .apply(
                        SETUP,
                        child,
                        "sdr",
                        new Change.SetByHand("three-month-review", LocalDate.of(2026, 5, 5)),
                        "room",
                        2);
        desk.press("Save and tell the family").see("Somebody else changed this path in between");
        assertThat(desk.value("Reason, kept with the change")).isEqualTo("away");
        desk.see("Three-month check: planned by hand on Tue, May 5");
        desk.press("Save and tell the family").see("Six-month check: planned by hand on Thu, Aug 20");
        assertThat(clinic.part(Plans.class).decisions(SETUP, child)).hasSize(4);
    }

    @Test
    void aGapThatCannotBeIsRefusedInWordsAndOneThatCanIsTheChildsOwn() {
        var child = afterSurgery("Rowan");
        desk.open("/staff/child/" + child + "/path?stage=six-week-check")
                .press("This child needs another gap")
                .type("At the latest after", "20")
                .type("Usually after", "20")
                .type("At the earliest after", "20")
                .see("No day fits for");
        desk.accessible("a gap that cannot be").picture(PICTURES.resolve("path-gap-refused-1280.png"));
        desk.type("Reason, kept with the change", "slow to heal").press("Save and tell the family");
        assertThat(clinic.part(Plans.class).decisions(SETUP, child)).hasSize(2);
        desk.type("At the latest after", "-3")
                .press("Save and tell the family")
                .see("Type whole numbers from 0 to 3,650");
        assertThat(clinic.part(Plans.class).decisions(SETUP, child)).hasSize(2);
        desk.type("At the earliest after", "6")
                .type("Usually after", "8")
                .type("At the latest after", "9")
                .seeNoMore("No day fits for")
                .see("moves to Thu, Mar 26");
        assertThat(desk.value("Reason, kept with the change")).isEqualTo("slow to heal");
        desk.press("Save and tell the family").see("Six-week check: another gap for this child");
        desk.open("/staff/child/" + child + "/path?stage=six-week-check&compare=yes")
                .see("The team set this gap for this child.")
                .see("path alone: Thu, Mar 12, 14 days later here")
                .see("It can begin when");
        desk.accessible("a stage beside the path alone", false).picture(PICTURES.resolve("path-compared-1280.png"));
        desk.resize(390, 844, true);
        desk.fitsItsWidth("a stage beside the path alone").picture(PICTURES.resolve("path-compared-390.png"));
    }

    @Test
    void aSecondPathGoesBesideTheFirstAndDaysAwayHoldForBoth() {
        var child = afterSurgery("Linden");
        desk.open("/staff/child/" + child + "/path")
                .press("Begin another path")
                .press("Intensive rehab block")
                .type("Reason, kept with the change", "weeks of therapy")
                .press("Begin and tell the family")
                .see("Path begun beside the others: Intensive rehab block");
        desk.accessible("two paths", false).picture(PICTURES.resolve("path-two-1280.png"));
        desk.press("Days the family cannot come")
                .type("First day away", "3/20/2026")
                .type("Last day away", "4/10/2026")
                .see("Goals and tests");
        desk.accessible("days away", false).picture(PICTURES.resolve("path-away-1280.png"));
        desk.type("Last day away", "3/19/2026").see("The last day lies before the first.");
        desk.type("Last day away", "4/10/2026")
                .type("Reason, kept with the change", "with the grandparents")
                .press("Save and tell the family")
                .see("The family cannot come from Fri, Mar 20 to Fri, Apr 10");
        var plans = clinic.part(Plans.class).plans(SETUP, child);
        assertThat(plans).hasSize(2);
        assertThat(plans.get(1).plan().stage("goals").orElseThrow().start()).isEqualTo(LocalDate.of(2026, 3, 19));
        desk.press("End the path “Intensive rehab block”").see("Leaves the plan: ");
        desk.type("Reason, kept with the change", "no place free")
                .press("End it and tell the family")
                .see("ended by the team on Thu, Mar 12");
        desk.press("Three months").see("Nerve-root surgery (SDR)");
        desk.accessible("three months of two paths", false).picture(PICTURES.resolve("path-months-1280.png"));
        desk.resize(390, 844, true);
        desk.fitsItsWidth("two paths").picture(PICTURES.resolve("path-two-390.png"));
    }

    @Test
    void howAStageEndedIsRecordedWithWhatLeavesThePlanAndTakenBack() {
        var child = child("Sage");
        clinic.part(Plans.class)
                .begin(SETUP, child, "itb", Plans.Beginning.INSTEAD, LocalDate.of(2025, 12, 1), "referred");
        desk.open("/staff/child/" + child + "/path?stage=test-dose")
                .press("It ended")
                .press("No response to the largest test dose")
                .type("Day", "3/10/2026")
                .see("Nothing is saved yet.")
                .see("Leaves the plan: ");
        desk.accessible("how a stage ended", false).picture(PICTURES.resolve("path-ended-1280.png"));
        desk.press("Save and tell the family").see("Say why, in 3 to 500 characters");
        desk.type("Reason, kept with the change", "no response at 100 mcg")
                .press("Save and tell the family")
                .see("ended on Tue, Mar 10");
        assertThat(clinic.part(Plans.class).plans(SETUP, child).get(0).plan().over())
                .isPresent();
        desk.resize(390, 844, true);
        desk.fitsItsWidth("a path that ended")
                .accessible("a path that ended", false)
                .picture(PICTURES.resolve("path-over-390.png"));
        desk.resize(1280, 800, false);
        desk.press("Take back").see("Comes on the plan: ");
        desk.accessible("taking back", false).picture(PICTURES.resolve("path-take-back-1280.png"));
        desk.type("Reason, kept with the change", "entered for another child")
                .pressAt(".u-preview .hw-button.main")
                .see("taken back");
        assertThat(clinic.part(Plans.class).plans(SETUP, child).get(0).plan().over())
                .isEmpty();
        desk.press("Put on the plan").see("Nothing is saved yet.");
        desk.accessible("a stage that is there only if needed", false).picture(PICTURES.resolve("path-add-1280.png"));
    }

    @Test
    void aDayOutOfOrderIsRefusedWithAWayOut() {
        var child = afterSurgery("Brook");
        desk.open("/staff/child/" + child + "/path?stage=six-month-review")
                .type("Day", "2/2/2026")
                .see("Set “")
                .press("Save and tell the family");
        assertThat(clinic.part(Plans.class).decisions(SETUP, child)).hasSize(2);
    }

    @Test
    void aPathIsBegunByHand() {
        var child = child("Lark");
        desk.open("/staff/child/" + child + "/path").see("No path has begun").press("Begin and tell the family");
        desk.see("Choose a path from the list");
        desk.accessible("no path yet").picture(PICTURES.resolve("path-none-1280.png"));
        desk.press("Medicine pump (ITB)")
                .type("Reason, kept with the change", "decided with the family")
                .press("Begin and tell the family")
                .see("Trial day");
    }

    @Test
    void oneMoreClosedDayMovesThePlanThatUsesItAndGivesItBack() {
        var child = afterSurgery("Reed");
        account("administrator", Role.ADMINISTRATOR, Language.EN);
        clinic.part(Visits.class)
                .book(
                        SETUP,
                        child,
                        new Visits.Booking("review", LocalDate.of(2026, 7, 29).atTime(9, 0), 30, "", Optional.empty()));
        desk.open("/staff/child/" + child + "/path?stage=six-month-review").see("Why Wed, Jul 29?");
        try (var office = Browser.desk(clinic)) {
            signIn(office, "administrator");
            office.waitFor("signing in", () -> office.path().startsWith("/staff"));
            office.open("/staff/clinic/calendar").see("Good Friday").press("Close this day");
            office.see("Choose a day from today on, at most 3 years ahead.");
            office.type("Day", "7/29/2026")
                    .see("Wednesday")
                    .see("The plan of one child uses this day")
                    .press("Reed Ferrow")
                    .see("Jul 30, 2026")
                    .see("One visit is booked on this day.")
                    .see("Reed Ferrow: Review");
            office.accessible("closing a day, before it is done", false)
                    .picture(PICTURES.resolve("closed-day-preview-1280.png"));
            office.resize(390, 844, true);
            office.fitsItsWidth("closing a day on a phone").picture(PICTURES.resolve("closed-day-preview-390.png"));
            office.resize(1280, 800, false);
            desk.reload().see("Why Wed, Jul 29?");
            office.type("Name in English", "Town fair")
                    .type("Name in Spanish", "Feria del pueblo")
                    .press("Close this day")
                    .see("Open again");
            office.accessible("closed days").picture(PICTURES.resolve("closed-days-1280.png"));
            office.resize(390, 844, true);
            office.fitsItsWidth("closed days on a phone")
                    .accessible("closed days on a phone")
                    .picture(PICTURES.resolve("closed-days-390.png"));
            desk.reload().see("Why Thu, Jul 30?").see("Town fair");
            desk.picture(PICTURES.resolve("path-closed-day-1280.png"));
            office.resize(1280, 800, false);
            office.press("Open again").see("The plan of one child changes");
            desk.reload().see("Why Thu, Jul 30?");
            office.accessible("opening a day again, before it is done", false)
                    .picture(PICTURES.resolve("closed-day-opening-1280.png"));
            office.press("Open this day again").seeNoMore("Town fair");
            desk.reload().see("Why Wed, Jul 29?").seeNoMore("Town fair");
        }
    }

    @Test
    void theFolderSpeaksSpanish() {
        var child = afterSurgery("Luz");
        account("enfermera", Role.NURSE, Language.ES);
        try (var other = Browser.desk(clinic)) {
            signIn(other, "enfermera");
            other.open("/staff/child/" + child + "/path?stage=six-month-review").see("Revisión de los seis meses");
            other.type("Día", "20/8/2026").see("jueves").see("Todavía no se ha guardado nada.");
            other.accessible("the path in Spanish").picture(PICTURES.resolve("path-es-1280.png"));
        }
    }
}
