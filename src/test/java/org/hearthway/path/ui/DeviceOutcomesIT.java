package org.hearthway.path.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
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
import org.hearthway.child.Device;
import org.hearthway.child.Device.Part;
import org.hearthway.child.Device.What;
import org.hearthway.child.Devices;
import org.hearthway.child.Names;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Change;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A nurse says on the path that a pump came out, and is led to the record of devices. It is Thursday, March 12, 2026. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(WalkOrder.LONG)
class DeviceOutcomesIT {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final String PASSWORD = "seven quiet stones by the river";
    private static final Path PICTURES = Path.of("target", "screens", "devices-behind");
    private static final LocalDate OPERATION = LocalDate.of(2025, 9, 15);

    private RunningClinic clinic;
    private Browser desk;

    @BeforeAll
    void open() {
        clinic = RunningClinic.real();
        var invitation = clinic.part(Accounts.class)
                .invite(
                        SETUP,
                        new NewAccount(
                                "nurse",
                                "nurse@clinic.example",
                                "",
                                Set.of(Role.NURSE),
                                Language.EN,
                                ZoneId.of("America/New_York")));
        var token = invitation.url().substring(invitation.url().lastIndexOf('/') + 1);
        clinic.part(Passwords.class).set(token, PASSWORD);
        desk = Browser.desk(clinic);
        desk.open("/sign-in")
                .type("Email", "nurse@clinic.example")
                .type("Password", PASSWORD)
                .press("Sign in");
        desk.waitFor("signing in", () -> desk.path().startsWith("/staff"));
    }

    @AfterAll
    void close() {
        desk.close();
        clinic.close();
    }

    private ChildId withPump(String name) {
        var child = clinic.part(ChildRegister.class)
                .enter(
                        SETUP,
                        ChildData.plain(Names.plain(name, "Ferrow"), LocalDate.of(2016, 8, 3), Optional.of(4), 2));
        var plans = clinic.part(Plans.class);
        plans.begin(SETUP, child, "itb", Plans.Beginning.INSTEAD, LocalDate.of(2025, 3, 3), "referred by the school");
        plans.apply(SETUP, child, "itb", new Change.Fix("operation", OPERATION), "done as planned", 1);
        clinic.part(Devices.class)
                .enter(
                        SETUP,
                        child,
                        Device.Kind.PUMP,
                        List.of(
                                new Part(What.RESERVOIR, "R1", OPERATION, Optional.empty()),
                                new Part(What.CATHETER, "C1", OPERATION, Optional.empty())));
        return child;
    }

    private void onAPhone(String place, String words, String picture) {
        desk.resize(390, 844, true);
        desk.open(place).see(words).fitsItsWidth(picture + " on a phone");
        desk.accessible(picture + " on a phone", false).picture(PICTURES.resolve(picture + "-390.png"));
        desk.resize(1280, 800, false);
    }

    @Test
    void whoSaysThatThePumpIsOutIsLedToTheRecordOfDevicesUntilItSaysSoToo() {
        var child = withPump("Moss");
        var path = "/staff/child/" + child + "/path";
        desk.open(path + "?stage=finding-the-dose")
                .press("It ended")
                .press("Pump taken out for good")
                .type("Day", "3/12/2026")
                .see("Nothing is saved yet.")
                .see("which still holds this pump. Enter the removal there.");
        desk.accessible("the record of devices in a preview", false).picture(PICTURES.resolve("preview-1280.png"));
        desk.type("Reason, kept with the change", "infected, and the family wants no other")
                .press("Save and tell the family")
                .see("The record of devices still holds this pump: enter the removal there.");
        desk.accessible("a record of devices that is behind", false).picture(PICTURES.resolve("behind-1280.png"));
        onAPhone(path, "The record of devices still holds this pump", "behind");
        desk.open("/staff/needs?show=paths").see("Pump out by the path, still in by the record of devices");
        desk.picture(PICTURES.resolve("needs-1280.png"));
        onAPhone("/staff/needs?show=paths", "Pump out by the path", "needs");
        desk.open("/staff/needs").press("See the devices").see("In the child’s body");
        desk.press("Enter its parts anew");
        desk.type("Taken out, if so", "3/12/2026").press("Save the device").see("Saved.");
        desk.open("/staff/needs").seeNoMore("Pump out by the path");
        desk.open(path).see("ended on Thu, Mar 12").seeNoMore("The record of devices");
        assertThat(clinic.part(Devices.class).pump(child).orElseThrow().isIn()).isFalse();
    }

    @Test
    void endingThePathItselfSaysWhatItLeaves() {
        var child = withPump("Fern");
        desk.open("/staff/child/" + child + "/path")
                .press("End the path “Medicine pump (ITB)”")
                .see("Ending the path changes nothing there: if the pump came out, enter the removal.");
        desk.accessible("ending a path with a pump in", false).picture(PICTURES.resolve("closing-1280.png"));
    }
}
