package org.hearthway.pump.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Period;
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
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Names;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpBook.NewEntry;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Implant;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.Catheter;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.FlowRange;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Length;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.Volume;
import org.hearthway.pump.engine.VolumePerLength;
import org.hearthway.testing.PumpBooks;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openqa.selenium.Keys;

/**
 * A nurse refills a pump, a physician checks it, the family reads the new days. It is Thursday, March 12, 2026; the pump
 * was filled on January 15 with 20 mL of 500 mcg/mL and gives 120 mcg a day, so 6.56 mL are expected (pocket calculator).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(WalkOrder.LONG)
class PumpIT {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final Path PICTURES = Path.of("target", "screens", "pump");
    private static final LocalDate IMPLANTED = LocalDate.of(2024, 5, 1);
    private static final String SEND = "Ask for second check";

    private RunningClinic clinic;
    private Browser desk;
    private Browser second;
    private Viewer.Person nurse = Colleagues.person(AccountId.random(), Role.NURSE);
    private Viewer.Person physician = Colleagues.person(AccountId.random(), Role.PHYSICIAN);

    @BeforeAll
    void open() {
        clinic = RunningClinic.real();
        nurse = Colleagues.person(Colleagues.account(clinic, "nurse", Role.NURSE), Role.NURSE);
        physician = Colleagues.person(Colleagues.account(clinic, "physician", Role.PHYSICIAN), Role.PHYSICIAN);
        desk = Browser.desk(clinic);
        Colleagues.signIn(desk, "nurse");
        second = Browser.desk(clinic);
        Colleagues.signIn(second, "physician");
    }

    @AfterAll
    void close() {
        second.close();
        desk.close();
        clinic.close();
    }

    private ChildId child(String name) {
        var child = clinic.part(ChildRegister.class)
                .enter(
                        SETUP,
                        ChildData.plain(Names.plain(name, "Ferrow"), LocalDate.of(2016, 8, 3), Optional.of(4), 2));
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

    private ChildId filled(String name) {
        var child = child(name);
        var model = PumpModel.programmable(
                Volume.millilitres("20"),
                Volume.millilitres("2"),
                Volume.millilitres("0.25"),
                new FlowRange(FlowRate.millilitresPerDay("0.048"), FlowRate.millilitresPerDay("24")),
                Period.ofYears(7));
        var catheter = Catheter.of(Length.centimetres("60"), VolumePerLength.millilitresPerCentimetre("0.0025"));
        write(child, LocalDate.of(2024, 5, 1).atTime(12, 0), new Implant("reservoir-20", model, catheter));
        write(
                child,
                LocalDate.of(2026, 1, 15).atTime(9, 40),
                new Refill(
                        false,
                        RefillDetails.NONE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Volume.millilitres("20")),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Setting(
                                new Concentration(new BigDecimal("500")),
                                Dosing.constant(new DailyDose(new BigDecimal("120"))))),
                        Optional.empty(),
                        5));
        return child;
    }

    private void write(ChildId child, LocalDateTime at, PumpEntry.What what) {
        var book = clinic.part(PumpBook.class);
        var seen = book.history(nurse, child).size();
        var entry = book.enter(nurse, child, new NewEntry(at, what, Optional.empty(), false, ""), seen);
        PumpBooks.check(book, physician, child, entry);
    }

    private static String place(ChildId child) {
        return "/staff/child/" + child + "/pump";
    }

    private static Browser refill(Browser browser, ChildId child) {
        return browser.open(place(child)).press("Record a refill").see("In the order of the work");
    }

    @Test
    void theWholeRefillByTwoPeopleUntilTheFamilyReadsTheNewDays() {
        var child = filled("Moss");
        clinic.part(Households.class)
                .link(SETUP, child, Colleagues.account(clinic, "parent", Role.CAREGIVER), Reach.FULL);
        refill(desk, child)
                .type("Drawn out", "6.2")
                .see("Drawn out against expected")
                .type("Filled in", "20")
                .type("Dose of a day", "132")
                .see("+10 %")
                .see("100 × (132 mcg/day − 120 mcg/day) ÷ 120 mcg/day")
                .type("Alarm date on the print-out", "5/19/2026")
                .see("Thursday, Apr 30, 2026 to Thursday, May 14, 2026")
                .seeNoMore("What is out of the usual");
        desk.accessible("refill").picture(PICTURES.resolve("refill-1280.png"));
        desk.resize(390, 844, true);
        desk.fitsItsWidth("refill on a phone").accessible("refill on a phone");
        desk.picture(PICTURES.resolve("refill-390.png"));
        desk.resize(1280, 800, false);
        desk.field("Note, if any").sendKeys(Keys.chord(Keys.CONTROL, Keys.ENTER));
        desk.see("waits for the second check").see("Refilled on Mar 12, 2026; the next date is being checked.");

        try (var phone = Browser.phone(clinic)) {
            Colleagues.signIn(phone, "parent");
            phone.open("/my/" + child + "/dates")
                    .see("The next date is being checked")
                    .seeNoMore("May 14");

            // who entered it is offered no check
            assertThat(desk.all("button")).noneMatch(button -> button.getText().equals("Check"));

            second.open(place(child))
                    .see("Its figures stay hidden until a second person has typed them again.")
                    .press("Check")
                    .see("nurse asked for the check");
            assertThat(second.value("Strength")).isEmpty();
            assertThat(second.value("Dose of a day")).isEmpty();
            assertThat(second.text()).doesNotContain("6.2").doesNotContain("132");
            second.type("Strength", "500")
                    .type("Dose of a day", "120")
                    .type("Drawn out", "6.1")
                    .type("Filled in", "20")
                    .type("Alarm date on the print-out", "5/19/2026");
            second.accessible("second check").picture(PICTURES.resolve("again-1280.png"));
            second.press("Confirm: I read the same").see("This differs from what the first person typed.");
            assertThat(second.text()).doesNotContain("6.2").doesNotContain("132");
            assertThat(second.value("Drawn out")).isEqualTo("6.1");
            phone.open("/my/" + child + "/dates").see("The next date is being checked");

            second.type("Dose of a day", "132")
                    .type("Drawn out", "6.2")
                    .press("Confirm: I read the same")
                    .see("Checked by physician");
            phone.open("/my/" + child + "/dates").see("Come between April 30 and May 14");
        }
    }

    @Test
    void whatIsOutOfTheUsualWantsWordsUnlessItIsAnEmergency() {
        var child = filled("Fern");
        desk.open(place(child))
                .press("Change the dose")
                .type("Dose of a day", "180")
                .type("Reason for the change", "evening stiffness")
                .see("50 % in one step may be too much: more than 20 %.")
                .see("What is out of the usual, and why")
                .press(SEND)
                .see("Say in a few words what it is and why.");
        desk.press("This is an emergency entry").press(SEND).see("emergency").see("waits for the second check");
    }

    @Test
    void aChangeOfStrengthShowsItsBridgeHourByHourAndWhatIsMissingForIt() {
        var child = filled("Reed");
        refill(desk, child)
                .type("Filled in", "20")
                .type("Strength", "2000")
                // 0.25 mL + 60 cm × 0.0025 mL/cm at 500 mcg/mL; 200 mcg at 120 mcg a day
                .see("200 mcg over 40 h")
                .see("If tubing and catheter hold another volume than entered");
        desk.accessible("bridge").picture(PICTURES.resolve("bridge-1280.png"));
        desk.press("Hour by hour").see("Without it");
    }

    @Test
    void aStepScheduleTellsItsTotalAndWhereItDoesNotFit() {
        var child = filled("Lark");
        desk.open(place(child)).press("Change the dose").press("step schedule");
        desk.type("To", "6:00 AM").type("Rate", "5").see("No step runs at 6:00 AM.");
        desk.type("To", "12:00 AM").see("Total of the day: 120 mcg/day");
        desk.press("Add a bolus")
                .type("Bolus at", "2:00 PM")
                .type("Gives", "10")
                .type("Over", "60")
                // 23 hours of the step and the bolus in place of the hour
                .see("Total of the day: 125 mcg/day");
        desk.accessible("step schedule").picture(PICTURES.resolve("steps-1280.png"));
    }

    @Test
    void whatCannotBeIsRefusedAtItsFieldWithTheBoundAndStays() {
        var child = filled("Wren");
        refill(desk, child)
                .type("Drawn out", "21")
                .see("20 mL were in the pump after the last fill")
                .type("Filled in", "25")
                .see("This reservoir holds 20 mL.")
                .type("Strength", "0")
                .see("Enter 50 to 5,000 mcg/mL")
                .type("Dose of a day", "0.12")
                .see("Enter 5 to 2,000 mcg a day")
                .see("0.12 mg is 120 mcg")
                .type("Days kept before the alarm", "99")
                .see("The margin is 3 to 14 days.");
        assertThat(desk.value("Drawn out")).isEqualTo("21");
        assertThat(desk.value("Strength")).isEqualTo("0");
        assertThat(desk.value("Dose of a day")).isEqualTo("0.12");
        desk.type("Day", "3/13/2026")
                .see("This lies in the future.")
                .type("Day", "4/1/2024")
                .see("The pump is in since Wed, May 1, 2024");
        desk.accessible("refused refill").picture(PICTURES.resolve("refused-1280.png"));
        desk.open(place(child))
                .press("Figures of the pump")
                .see("All sums rest on them.")
                .type("Reservoir holds", "5")
                .type("Alarm volume", "6")
                .see("The alarm volume must be less than the reservoir holds.");
        assertThat(desk.value("Alarm volume")).isEqualTo("6");
    }

    @Test
    void figuresOfTheCardsAreCorrectedWithAReasonAndTypedAgain() {
        var child = filled("Ash");
        desk.open(place(child));
        desk.waitFor("the book", () -> desk.text().contains("1. Figures of pump and catheter"));
        desk.run("[...document.querySelectorAll('button')].filter(b => b.innerText === 'Correct').pop().click()");
        desk.see("Why the earlier entry is wrong").type("Catheter length as trimmed", "58");
        desk.press(SEND).see("Say why, in a few words.");
        desk.type("Why the earlier entry is wrong", "read from another card")
                .press(SEND)
                .see("waits for the second check");
        second.open(place(child))
                .press("Check")
                .see("Read the label of the pump")
                .type("Reservoir holds", "20")
                .type("Alarm volume", "2")
                .type("Inner tubing holds", "0.25")
                .type("Catheter length as trimmed", "58")
                .type("Catheter holds per cm", "0.0025")
                .press("Confirm: I read the same")
                .see("superseded");
    }

    @Test
    void aRefillElsewhereNeedsTheDayAndThePrintOutAlone() {
        var child = child("Pine");
        desk.open(place(child))
                .press("Refill done elsewhere")
                .see("Only what is known")
                .press(SEND)
                .see("Enter the alarm date of the print-out or the volume")
                .type("Alarm date on the print-out", "5/19/2026")
                .press(SEND)
                .see("waits for the second check");
        desk.accessible("waiting").picture(PICTURES.resolve("waiting-1280.png"));
        second.open(place(child)).press("Check").type("Alarm date on the print-out", "5/19/2026");
        second.press("Confirm: I read the same").see("May 14, 2026");
    }

    @Test
    void whatWasTypedStaysWhenSomebodyElseEnteredSomethingInBetween() {
        var child = filled("Sage");
        desk.open(place(child)).press("Change the dose").type("Dose of a day", "132");
        desk.type("Reason for the change", "evening stiffness");
        var change = new PumpEntry.Change(
                new Setting(
                        new Concentration(new BigDecimal("500")),
                        Dosing.constant(new DailyDose(new BigDecimal("126")))),
                "morning stiffness",
                Optional.empty());
        write(child, LocalDateTime.of(2026, 3, 12, 9, 0), change);
        desk.press(SEND).see("Somebody else entered something in between").see("3. Change of dose or strength");
        assertThat(desk.value("Dose of a day")).isEqualTo("132");
        assertThat(desk.value("Reason for the change")).isEqualTo("evening stiffness");
        desk.press(SEND).see("Say in a few words what it is and why.");
        desk.type("What is out of the usual, and why", "asked for on the ward")
                .press(SEND)
                .see("waits for the second check");
    }

    @Test
    void aPumpOfFixedFlowShowsItsFlowAndAsksForNoDose() {
        var child = child("Teal");
        desk.open(place(child)).press("Figures of the pump").see("All sums rest on them.");
        desk.press("Begin from a general kind");
        desk.press("Fixed flow").see("Flow set when it was made").press(SEND).see("waits for the second check");
        second.open(place(child))
                .press("Check")
                .type("Reservoir holds", "40")
                .type("Alarm volume", "3")
                .type("Inner tubing holds", "0.25")
                .type("Catheter holds per cm", "0.0025")
                .press("Confirm: I read the same")
                .see("checked");
        refill(desk, child)
                .see("Fixed flow: 0.5 mL/day")
                .seeNoMore("Dose of a day")
                .type("Filled in", "40")
                .type("Strength", "500")
                .see("250 mcg/day");
        desk.accessible("fixed flow").picture(PICTURES.resolve("fixed-1280.png"));
    }
}
