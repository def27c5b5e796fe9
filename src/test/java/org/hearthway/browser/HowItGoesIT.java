package org.hearthway.browser;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What six weeks of ticks teach: who is found, by which rule, at whose number, and what the child sees of it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HowItGoesIT {

    private RunningClinic clinic;
    private Browser desk;

    @BeforeAll
    void begin() {
        clinic = RunningClinic.demo("hearthway.needs.first=PT1S", "hearthway.needs.numbers=PT1S");
        desk = Browser.desk(clinic);
    }

    @AfterAll
    void end() {
        desk.close();
        clinic.close();
    }

    @Test
    void risingPainIsFoundAndTheClinicsOwnNumberLetsItGo() {
        Tour.signIn(desk.forget(), Tour.Person.THERAPIST.mail);
        listShows("Marlow Vance");
        desk.see("Pain is rising, by the child’s own numbers")
                .see("Anhøj and Olesen 2014; asks for a look, is no finding");
        desk.picture(picture("going-needs"));

        desk.open("/staff/child/" + new Tour(clinic).child("Marlow") + "/program/how");
        desk.see("A signal: it is rising.").see("in a row on one side of the median; more than");
        desk.accessible("how it goes").fitsItsWidth("how it goes").picture(picture("going"));
        desk.pressAt("[aria-label='Numbers of: Pain, 0 to 10, Rated by the child']")
                .see("Hide the numbers");
        desk.picture(picture("going-numbers"));

        Tour.signIn(desk.forget(), Tour.Person.ADMINISTRATOR.mail).open("/staff/clinic/needs");
        desk.see("As it came").accessible("the numbers of needs a look");
        desk.pressAt("[aria-label='Change: Points by which the later half lies higher']");
        desk.type("Number, 0 to 5", "5").press("Save for the clinic").see("Write 3 to 500 characters");
        desk.type("Reason", "We look at larger steps")
                .press("Save for the clinic")
                .see("1 became 5");
        desk.picture(picture("going-figures"));

        Tour.signIn(desk.forget(), Tour.Person.THERAPIST.mail);
        desk.waitFor(
                "the list without the rise",
                () -> !desk.open("/staff/needs?show=programs")
                        .see("Elias")
                        .text()
                        .contains("Pain is rising"));

        Tour.signIn(desk.forget(), Tour.Person.ADMINISTRATOR.mail).open("/staff/clinic/needs");
        desk.pressAt("[aria-label='Change: Points by which the later half lies higher']");
        desk.type("Reason", "Too few were found").press("Back to 1, as it came").see("5 taken back, as it came");
        Tour.signIn(desk.forget(), Tour.Person.THERAPIST.mail);
        listShows("Pain is rising");
    }

    @Test
    void aProposalGoesIntoTheDraftWithOnePressAndNoFurther() {
        Tour.signIn(desk.forget(), Tour.Person.THERAPIST.mail);
        var program = "/staff/child/" + new Tour(clinic).child("Elias") + "/program";
        desk.open(program + "/how").see("Proposed for Band pull-apart: 3 rounds of 10");
        desk.open(program).see("Proposed for Band pull-apart: 3 rounds of 10").see("Its rule for more was kept on");
        desk.picture(picture("going-proposed"));
        desk.press("Put it into the draft").see("1 change").seeNoMore("Proposed for Band pull-apart");
    }

    @Test
    void theFamilySeesTodayInPicturesAndTheQuilt() {
        try (var phone = Browser.phone(clinic)) {
            var juno = new Tour(clinic).child("Juno");
            Tour.signIn(phone, Tour.Person.PARENT.mail).open("/my/" + juno + "/today");
            phone.press("The quilt").see("Juno’s quilt").see("Getting strong");
            phone.waitFor(
                    "the quilt", () -> phone.all("[aria-label^='A quilt with']").size() == 1);
            phone.accessible("the quilt").fitsItsWidth("the quilt").picture(picture("quilt"));
        }
    }

    private void listShows(String words) {
        desk.waitFor(words, () -> desk.open("/staff/needs?show=programs").text().contains(words));
    }

    private static Path picture(String name) {
        return Path.of("target", "screens", name + ".png");
    }
}
