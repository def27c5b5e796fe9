package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A program written by screen: what the family gets of it, and what two who write at once get of each other. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ProgramIT {

    private RunningClinic clinic;
    private Browser desk;

    @BeforeAll
    void begin() {
        clinic = RunningClinic.demo();
        desk = Browser.desk(clinic);
    }

    @AfterAll
    void end() {
        desk.close();
        clinic.close();
    }

    @Test
    void aLoweredDoseReachesTheFamilyAndTheirPainReachesTheClinic() {
        var juno = new Tour(clinic).child("Juno");
        try (var phone = Browser.phone(clinic)) {
            Tour.signIn(desk.forget(), Tour.Person.THERAPIST.mail).open("/staff/child/" + juno + "/program");
            desk.type("Rounds of Bridge", "1").type("Times of Bridge", "4").see("1 change");
            desk.picture(picture("program-writing"));
            desk.type("Reason, kept with version", "Tired after school").press("Save version");
            desk.see("is saved. The family sees it.").see("Tired after school");

            Tour.signIn(phone, Tour.Person.PARENT.mail).open("/my/" + juno + "/week");
            phone.see("Bridge is now 4 times. It was 2 rounds of 10.").see("changed");
            phone.picture(picture("program-week"));

            phone.open("/my/" + juno + "/exercise/bridge").see("Did it hurt?");
            phone.pressAt("[aria-label='Did it hurt?'] [aria-label='8 of 10']").press("Save and go on");
            phone.see("Stop here. Call.").see("Bridge: pain 8 of 10").see("No more exercises now.");
            assertThat(phone.all("a[href^='tel:']"))
                    .as("numbers to call")
                    .extracting(link -> link.getDomAttribute("href"))
                    .contains("tel:5550100", "tel:5550121");
            phone.accessible("the page that says stop").picture(picture("program-stop"));

            desk.open("/staff/needs").see("Juno Albrecht").see("Pain 8 of 10");
            desk.picture(picture("program-needs"));
        }
    }

    /** IN1, IN2 */
    @Test
    void twoWhoWriteAtOnceAreShownBothAndLoseNothing() {
        var bram = new Tour(clinic).child("Bram");
        var place = "/staff/child/" + bram + "/program";
        try (var other = Browser.desk(clinic)) {
            Tour.signIn(desk.forget(), Tour.Person.THERAPIST.mail).open(place);
            Tour.signIn(other, Tour.Person.PHYSICIAN.mail).open(place);
            desk.type("Times of Step up", "6").see("1 change");
            desk.type("Reason, kept with version", "Fewer steps");
            other.type("Rounds of Squat at the table", "1").see("1 change");
            other.type("Reason, kept with version", "Knees are tired").press("Save version 3");
            other.see("Version 3 is saved");

            desk.press("Save version 3").see("Dr. Amara Nwosu saved version 3 while you were writing.");
            desk.see("Knees are tired").see("Theirs, version 3").see("Mine, not saved yet");
            desk.accessible("both versions").picture(picture("program-both"));
            assertThat(desk.value("Times of Step up")).isEqualTo("6");
            assertThat(desk.value("Reason, kept with version")).isEqualTo("Fewer steps");

            desk.press("Take their line for Squat at the table");
            desk.waitFor(
                    "their line",
                    () -> desk.value("Rounds of Squat at the table").equals("1"));
            desk.press("Save version 4").see("Version 4 is saved");
            desk.reload();
            assertThat(desk.value("Times of Step up")).isEqualTo("6");
            assertThat(desk.value("Rounds of Squat at the table")).isEqualTo("1");
            desk.see("Knees are tired").see("Fewer steps");
        }
    }

    private static Path picture(String name) {
        return Path.of("target", "screens", name + ".png");
    }
}
