package org.hearthway.stimulator.ui;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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
import org.hearthway.child.Devices;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Names;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * A nurse records what a stimulator showed, a physician reads the device and types the same, and only then the family is
 * told. It is Thursday, March 12, 2026.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(WalkOrder.LONG)
class StimulatorIT {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final Path PICTURES = Path.of("target", "screens", "stimulator");

    private RunningClinic clinic;
    private Browser desk;

    @BeforeAll
    void open() {
        clinic = RunningClinic.real();
        Colleagues.account(clinic, "nurse", Role.NURSE);
        Colleagues.account(clinic, "physician", Role.PHYSICIAN);
        desk = Browser.desk(clinic);
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

    private void bothSizes(String place, String words, String picture) {
        desk.open(place).see(words);
        desk.accessible(picture).picture(PICTURES.resolve(picture + "-1280.png"));
        desk.resize(390, 844, true);
        desk.open(place).see(words).fitsItsWidth(picture + " on a phone");
        desk.accessible(picture + " on a phone").picture(PICTURES.resolve(picture + "-390.png"));
        desk.resize(1280, 800, false);
        desk.open(place).see(words);
    }

    private void figures(String form, String battery) {
        put(form + "-level", battery);
        put(form + "-left-amplitude", "2.5");
        put(form + "-left-pulse", "90");
        put(form + "-left-rate", "130");
    }

    /** Two forms may stand on the page with the same words, so the fields are found by their form. */
    private void put(String field, String text) {
        desk.pressAt("#" + field + " input").run("""
                const field = document.querySelector('#' + arguments[0] + ' input');
                field.select();
                """, field);
        desk.pressKeys(text, "\t").settle();
    }

    @Test
    void aReadingCountsOnceASecondPersonTypedTheSame() {
        var child = child("Wyn");
        var parent = Colleagues.account(clinic, "parent", Role.CAREGIVER);
        clinic.part(Households.class).link(SETUP, child, parent, Reach.FULL);
        var place = "/staff/child/" + child + "/stimulator";
        Colleagues.signIn(desk, "nurse");
        bothSizes(place, "No stimulator on record", "none");
        clinic.part(Devices.class)
                .enter(
                        SETUP,
                        child,
                        Device.Kind.STIMULATOR,
                        List.of(new Device.Part(
                                Device.What.GENERATOR, "SG-11807", LocalDate.of(2025, 9, 1), Optional.empty())));
        bothSizes(place, "Nobody entered whether this generator is charged at home.", "empty");
        desk.see("Oct 1, 2026").see("13 months after the implant");

        figures("reading", "880");
        desk.see("A battery shows 0 to 100 per cent");
        put("reading-level", "88");
        put("reading-left-amplitude", "250");
        desk.press("Record the reading").see("A strength is 0.1 to 25.5 milliampere");
        put("reading-left-amplitude", "2.5");
        desk.press("Record the reading")
                .see("Recorded. It waits for a second person.")
                .see("not confirmed");
        bothSizes(place, "A second person reads the device", "waits");

        desk.forget();
        Colleagues.signIn(desk, "physician");
        bothSizes(place, "kept back until you have read the device", "second");
        desk.seeNoMore("88 %");
        figures("again", "87");
        desk.press("Confirm the same figures").see("This differs from what the first person typed.");
        desk.accessible("a figure differs").picture(PICTURES.resolve("differs-1280.png"));
        put("again-level", "88");
        desk.press("Confirm the same figures")
                .see("Confirmed. The reading counts now.")
                .see("88 %");
        bothSizes(place, "Settings that two people confirmed", "confirmed");

        try (var phone = Browser.phone(clinic)) {
            Colleagues.signIn(phone, "parent");
            phone.open("/my/" + child + "/dates")
                    .see("We read the battery on Mar 12, 2026")
                    .see("Next battery check: by Oct 1, 2026");
            phone.fitsItsWidth("dates").accessible("dates").picture(PICTURES.resolve("family-390.png"));
        }
    }
}
