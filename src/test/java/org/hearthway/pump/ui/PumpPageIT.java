package org.hearthway.pump.ui;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Period;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
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
import org.hearthway.child.Names;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpBook.NewEntry;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Implant;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.Bolus;
import org.hearthway.pump.engine.BolusMode;
import org.hearthway.pump.engine.Catheter;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DayPattern;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.FlowRange;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Length;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.Step;
import org.hearthway.pump.engine.Volume;
import org.hearthway.pump.engine.VolumePerLength;
import org.hearthway.testing.PumpBooks;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What a nurse reads on the page of a pump, on a desk and on a phone. It is Thursday, March 12, 2026. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(WalkOrder.LONG)
class PumpPageIT {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final Path PICTURES = Path.of("target", "screens", "pump");
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final LocalDate IMPLANTED = LocalDate.of(2023, 5, 2);
    private static final Dosing SCHEDULE = Dosing.cycle(DayPattern.of(
                    Step.of("06:00", "14:00", "4"), Step.of("14:00", "22:00", "5.5"), Step.of("22:00", "06:00", "6"))
            .with(BolusMode.REPLACES_BASAL, Bolus.of("18:00", "12", 30)));

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

    private ChildId childWithPump(String name) {
        var child = clinic.part(ChildRegister.class)
                .enter(
                        SETUP,
                        ChildData.plain(Names.plain(name, "Ferrow"), LocalDate.of(2014, 8, 3), Optional.of(4), 2));
        clinic.part(Devices.class)
                .enter(
                        SETUP,
                        child,
                        Device.Kind.PUMP,
                        List.of(
                                new Part(What.RESERVOIR, "R1", IMPLANTED, Optional.empty()),
                                new Part(What.CATHETER, "C1", IMPLANTED, Optional.empty())));
        return child;
    }

    private static Implant implant() {
        return new Implant(
                "reservoir-20",
                PumpModel.programmable(
                        Volume.millilitres("20"),
                        Volume.millilitres("2"),
                        Volume.millilitres("0.25"),
                        new FlowRange(FlowRate.millilitresPerDay("0.024"), FlowRate.millilitresPerDay("24")),
                        Period.ofYears(7)),
                Catheter.of(Length.centimetres("60"), VolumePerLength.millilitresPerCentimetre("0.0022")));
    }

    private static Refill refill(Optional<String> withdrawn, Dosing dosing, LocalDate printed) {
        return new Refill(
                false,
                new RefillDetails(
                        "baclofen for the spinal canal",
                        "K 2231",
                        Optional.of(LocalDate.of(2027, 5, 31)),
                        "clear",
                        1,
                        Optional.empty(),
                        true,
                        "nurse",
                        ""),
                withdrawn.map(Volume::millilitres),
                Optional.empty(),
                Optional.of(Volume.millilitres("20")),
                Optional.of(Volume.millilitres("19.9")),
                Optional.empty(),
                Optional.of(new Setting(Concentration.microgramsPerMillilitre("500"), dosing)),
                Optional.of(printed),
                5);
    }

    private PumpEntry enter(ChildId child, LocalDateTime at, PumpEntry.What what) {
        var book = clinic.part(PumpBook.class);
        return book.enter(
                nurse,
                child,
                new NewEntry(at, what, Optional.empty(), false, "looked at together with the physician"),
                book.history(nurse, child).size());
    }

    private void checked(ChildId child, LocalDateTime at, PumpEntry.What what) {
        PumpBooks.check(clinic.part(PumpBook.class), physician, child, enter(child, at, what));
    }

    /** Filled twice, the second time with more left than expected, and a print-out four days before our date. */
    private ChildId withHistory(String name) {
        var child = childWithPump(name);
        checked(child, LocalDateTime.of(2025, 11, 4, 9, 0), implant());
        checked(
                child,
                LocalDateTime.of(2025, 11, 4, 9, 30),
                refill(Optional.empty(), Dosing.constant("120"), LocalDate.of(2026, 1, 18)));
        checked(
                child,
                LocalDateTime.of(2026, 1, 15, 10, 0),
                refill(Optional.of("6.4"), SCHEDULE, LocalDate.of(2026, 3, 19)));
        return child;
    }

    private void bothSizes(String place, String words, String picture) {
        desk.resize(1280, 800, false);
        desk.open(place).see(words);
        desk.accessible(picture).picture(PICTURES.resolve(picture + "-1280.png"));
        desk.resize(390, 844, true);
        desk.open(place).see(words).fitsItsWidth(picture + " on a phone");
        desk.accessible(picture + " on a phone").picture(PICTURES.resolve(picture + "-390.png"));
        desk.resize(1280, 800, false);
    }

    @Test
    void tellsHowThePumpStandsAndAsksWhyTheDatesAreApart() {
        var place = "/staff/child/" + withHistory("Moss") + "/pump";
        bothSizes(place, "Step schedule", "page");
        desk.see("one hour off until the next programming")
                .see("look into it: more left")
                .see("the catheter: kinked")
                .press("Show the table")
                .see("the refill window opens");
        desk.accessible("the forecast as a table");
        desk.press("Pump stopped or refill missed").see("Do not wait for signs").see("Time left to the alarm");
        desk.accessible("a pump that stopped").picture(PICTURES.resolve("stopped-1280.png"));
        desk.press("Close").seeNoMore("Do not wait for signs");
        desk.type("Why they differ", "alarm volume of the device is 3 mL")
                .press("Keep the explanation")
                .see("Explained: “alarm volume of the device is 3 mL” (nurse");
        bothSizes(place + "/how", "What the letters mean", "how");
    }

    @Test
    void tellsNoFigureOfARefillThatIsBeingChecked() {
        var child = withHistory("Fern");
        enter(
                child,
                LocalDateTime.of(2026, 3, 12, 7, 30),
                refill(Optional.of("5.7"), Dosing.constant("132"), LocalDate.of(2026, 5, 19)));
        var other = Browser.desk(clinic);
        try (other) {
            Colleagues.signIn(other, "physician");
            other.open("/staff/child/" + child + "/pump")
                    .see("Refilled on Mar 12, 2026; the next date is being checked.")
                    .see("Its figures stay hidden")
                    .seeNoMore("132")
                    .seeNoMore("May 19");
            other.accessible("a refill in check").picture(PICTURES.resolve("in-check-1280.png"));
        }
        bothSizes("/staff/child/" + child + "/pump", "the next date is being checked", "own-in-check");
    }
}
