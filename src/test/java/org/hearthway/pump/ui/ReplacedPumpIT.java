package org.hearthway.pump.ui;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.browser.Browser;
import org.hearthway.browser.Colleagues;
import org.hearthway.browser.RunningClinic;
import org.hearthway.browser.WalkOrder;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Device;
import org.hearthway.child.Device.Part;
import org.hearthway.child.Device.What;
import org.hearthway.child.Devices;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Names;
import org.hearthway.pump.PumpBook;
import org.hearthway.testing.PumpBooks;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A pump is taken out, another one is replaced: what the nurse and the family read. It is Thursday, March 12, 2026. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(WalkOrder.LONG)
class ReplacedPumpIT {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final Path PICTURES = Path.of("target", "screens", "pump");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDate OLD = LocalDate.of(2020, 3, 2);

    /** Day to refill by of the pump that leaves. */
    private static final String OLD_DAY = "May 12";

    private RunningClinic clinic;
    private Browser desk;
    private Viewer.Person nurse = Colleagues.person(AccountId.random(), Role.NURSE);
    private Viewer.Person physician = Colleagues.person(AccountId.random(), Role.PHYSICIAN);

    @BeforeAll
    void open() {
        clinic = RunningClinic.real();
        nurse = Colleagues.person(Colleagues.account(clinic, "nurse", Role.NURSE), Role.NURSE);
        physician = Colleagues.person(Colleagues.account(clinic, "physician", Role.PHYSICIAN), Role.PHYSICIAN);
        desk = Browser.desk(clinic);
        Colleagues.signIn(desk, "nurse");
    }

    @AfterAll
    void close() {
        desk.close();
        clinic.close();
    }

    private ChildId child(String name) {
        return clinic.part(ChildRegister.class)
                .enter(
                        SETUP,
                        ChildData.plain(Names.plain(name, "Ferrow"), LocalDate.of(2014, 8, 3), Optional.of(4), 2));
    }

    private static Part part(What what, String serial, LocalDate in, Optional<LocalDate> out) {
        return new Part(what, serial, in, out);
    }

    private UUID withPump(ChildId child) {
        var device = clinic.part(Devices.class)
                .enter(
                        SETUP,
                        child,
                        Device.Kind.PUMP,
                        List.of(
                                part(What.RESERVOIR, "R1", OLD, Optional.empty()),
                                part(What.CATHETER, "C1", OLD, Optional.empty())));
        refilled(child, TODAY.minusDays(30), LocalDate.of(2026, 5, 17));
        return device;
    }

    private void refilled(ChildId child, LocalDate filled, LocalDate alarm) {
        PumpBooks.refilled(clinic.part(PumpBook.class), nurse, physician, child, filled, alarm);
    }

    private void change(ChildId child, UUID device, List<Part> parts) {
        clinic.part(Devices.class).change(SETUP, child, device, parts, 1);
    }

    private void bothSizes(Browser browser, String place, String words, String picture) {
        browser.resize(1280, 800, false);
        browser.open(place).see(words);
        browser.accessible(picture).picture(PICTURES.resolve(picture + "-1280.png"));
        browser.resize(390, 844, true);
        browser.open(place).see(words).fitsItsWidth(picture + " on a phone");
        browser.accessible(picture + " on a phone").picture(PICTURES.resolve(picture + "-390.png"));
        browser.resize(1280, 800, false);
    }

    @Test
    void aPumpThatWasTakenOutSaysSoWithTheDayAndItsHistoryStays() {
        var child = child("Moss");
        var device = withPump(child);
        desk.open("/staff/child/" + child + "/pump").see(OLD_DAY + ", 2026").see("checked");
        change(
                child,
                device,
                List.of(
                        part(What.RESERVOIR, "R1", OLD, Optional.of(TODAY.minusDays(2))),
                        part(What.CATHETER, "C1", OLD, Optional.empty())));
        bothSizes(
                desk,
                "/staff/child/" + child + "/pump",
                "taken out on Mar 10, 2026. No refill is asked for.",
                "taken-out");
        desk.open("/staff/child/" + child + "/pump")
                .see("Refill done elsewhere")
                .see("checked")
                .seeNoMore(OLD_DAY)
                .seeNoMore("Record a refill");
    }

    @Test
    void aNewPumpHasNoDayUntilItsFirstFillAndTheFamilyIsToldNoneOfTheOldOne() {
        var child = child("Fern");
        var parent = Colleagues.account(clinic, "parent", Role.CAREGIVER);
        clinic.part(Households.class).link(SETUP, child, parent, Reach.FULL);
        try (var phone = Browser.phone(clinic)) {
            Colleagues.signIn(phone, "parent");
            phone.open("/my/" + child + "/today").see("Fern");
            clinic.clock().advance(Duration.ofMinutes(5));
            var device = withPump(child);
            phone.open("/my/" + child + "/today").see("refilled by Tue, " + OLD_DAY);
            phone.open("/my/" + child + "/dates").see("Come between April 28 and May 12");
            change(
                    child,
                    device,
                    List.of(
                            part(What.RESERVOIR, "R1", OLD, Optional.of(TODAY.minusDays(1))),
                            part(What.RESERVOIR, "R2", TODAY.minusDays(1), Optional.empty()),
                            part(What.CATHETER, "C1", OLD, Optional.empty())));
            bothSizes(phone, "/my/" + child + "/dates", "The clinic will set the day", "family-unfilled");
            phone.seeNoMore(OLD_DAY);
            // what changed names the old day no more
            phone.open("/my/" + child + "/today").see("Fern").seeNoMore(OLD_DAY);
            phone.picture(PICTURES.resolve("family-today-1280.png"));
        }
        var place = "/staff/child/" + child + "/pump";
        bothSizes(desk, place, "New pump since Mar 11, 2026: its first fill is not recorded yet.", "unfilled");
        desk.open("/staff/needs?show=pump").see("Pump in since Mar 11, 2026, no fill recorded");
        desk.picture(PICTURES.resolve("needs-unfilled-1280.png"));
        desk.press("See the pump").see("New pump since");
        refilled(child, TODAY.minusDays(1), LocalDate.of(2026, 7, 20));
        desk.open(place).see("Jul 15, 2026").seeNoMore("New pump since");
        desk.open("/staff/needs?show=pump").seeNoMore("no fill recorded");
    }
}
