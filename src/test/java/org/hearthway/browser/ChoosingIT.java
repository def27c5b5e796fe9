package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Names;
import org.hearthway.choosing.Choosing;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;

/** A physician lays facts on the table, sees what they say, writes down what was decided, and the path has begun. */
@Order(WalkOrder.SHARED)
@ResourceLock(RunningClinic.SHARED)
class ChoosingIT {

    private static final Viewer SETUP = new Viewer.Machine("test");
    private static final Path PICTURES = Path.of("target", "screens");

    private static ChildId child(RunningClinic clinic, String name) {
        return clinic.part(ChildRegister.class)
                .enter(
                        SETUP,
                        ChildData.plain(Names.plain(name, "Ashgrove"), LocalDate.of(2021, 2, 3), Optional.of(3), 2));
    }

    @Test
    void factsChangeTheLinesAndTheDecisionBeginsThePath() {
        var clinic = RunningClinic.shared();
        var child = child(clinic, "Linnea");
        try (var desk = Browser.desk(clinic)) {
            Tour.signIn(desk, Tour.Person.PHYSICIAN.mail).open("/staff/child/" + child + "/choosing");
            desk.see("The team and the family decide.")
                    .see("Walking and device: not known.")
                    .see("Kind of tone problem: not known.")
                    .seeNoMore("Walks at least with a device.");
            desk.fitsItsWidth("choosing").accessible("choosing");

            // by mouse, and by keys alone
            desk.pressAt("#fact-walking").press("Walks with a walker").see("Walks at least with a device.");
            desk.seeNoMore("Walking and device: not known.").see("Not saved");
            desk.run("document.querySelector('#fact-tone').focus()");
            desk.pressKeys("s").see("Spasticity alone.");
            assertThat(clinic.part(Choosing.class).talk(SETUP, child).version()).isZero();
            desk.press("Save the facts").see("Saved.").see("Dr. Amara Nwosu");
            assertThat(clinic.part(Choosing.class).talk(SETUP, child).answers()).containsOnlyKeys("walking", "tone");

            // a fact that is not known after all
            desk.pressAt("#fact-tone")
                    .pressAt("vaadin-select-list-box vaadin-select-item")
                    .see("Kind of tone problem: not known.");
            desk.press("Save the facts").seeNoMore("Not saved");
            desk.reload().see("Kind of tone problem: not known.").see("Walks at least with a device.");
            desk.picture(PICTURES.resolve("choosing-1280.png"));

            // what is missing is named, and what was typed stays
            desk.press("Write down the decision").type("Who was there", "The mother, the surgeon, the therapist");
            desk.press("Save the decision").see("Choose what was decided, or none for now.");
            assertThat(desk.value("Who was there")).isEqualTo("The mother, the surgeon, the therapist");
            desk.pressAt("#decision vaadin-radio-button")
                    .press("Save the decision")
                    .see("Say why in 3 to 500 characters");
            desk.type("Why", "She walks with a walker and wants to walk to school")
                    .accessible("a decision")
                    .picture(PICTURES.resolve("choosing-decision-1280.png"));
            desk.press("Save the decision").see("Written down.").see("Written down by Dr. Amara Nwosu");
            desk.see("She walks with a walker and wants to walk to school");

            desk.go("/staff/child/" + child + "/path")
                    .see("Nerve-root surgery (SDR)")
                    .see("She walks with a walker and wants to walk to school");
        }
    }

    @Test
    void onAPhoneItStandsInOneColumnAndSpeaksToTherapistsToo() {
        var clinic = RunningClinic.shared();
        var child = child(clinic, "Soren");
        try (var phone = Browser.phone(clinic)) {
            Tour.signIn(phone, Tour.Person.THERAPIST.mail).open("/staff/child/" + child + "/choosing");
            phone.see("Facts about the child").seeNoMore("Write down the decision");
            phone.fitsItsWidth("choosing on a phone").accessible("choosing on a phone");
            phone.picture(PICTURES.resolve("choosing-390.png"));
        }
    }

    @Test
    void theCoordinatorsFolderHasNoSuchTab() {
        var clinic = RunningClinic.shared();
        var child = child(clinic, "Idris");
        try (var desk = Browser.desk(clinic)) {
            Tour.signIn(desk, Tour.Person.COORDINATOR.mail).open("/staff/child/" + child + "/tasks");
            desk.see("Tasks").seeNoMore("Choosing");
        }
    }
}
