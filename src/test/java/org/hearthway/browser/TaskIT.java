package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;

/** A coordinator asks a family something; a parent says on the phone that it is done; the coordinator sees it. */
@Order(WalkOrder.SHARED)
@ResourceLock(RunningClinic.SHARED)
class TaskIT {

    @Test
    void isGivenAtTheDeskTickedOnThePhoneAndSeenAtTheDesk() {
        var clinic = RunningClinic.shared();
        try (var desk = Browser.desk(clinic);
                var phone = Browser.phone(clinic);
                var looking = Browser.phone(clinic)) {
            var child = new Tour(clinic).child("Juno");
            Tour.signIn(desk, Tour.Person.COORDINATOR.mail).open("/staff/child/" + child + "/tasks");
            desk.see("Send us the film of the walk.").fitsItsWidth("the tasks").accessible("the tasks");

            // what is missing is named, and what was typed stays
            desk.type("What is to be done, in English", "Bring the blue folder.")
                    .press("Give a task");
            desk.see("Choose the day by which it should be done.");
            assertThat(desk.value("What is to be done, in English")).isEqualTo("Bring the blue folder.");
            desk.type("By", "3/20/2026").press("Give a task").see("Given.").see("By Fri, Mar 20");
            desk.picture(Path.of("target", "screens", "task-given.png"));

            Tour.signIn(phone, Tour.Person.PARENT.mail).open("/my/" + child + "/today");
            phone.see("For you to do").see("Bring the blue folder.").see("by Friday, March 20");
            phone.press("Done: Bring the blue folder.").see("Done. Thank you; the clinic sees it.");
            phone.fitsItsWidth("a day with tasks").accessible("a day with tasks");
            phone.press("Not done after all: Bring the blue folder.").see("by Friday, March 20");
            phone.open("/my/" + child + "/dates").see("Bring the blue folder.");
            phone.press("Done: Bring the blue folder.").see("Done. Thank you; the clinic sees it.");
            phone.picture(Path.of("target", "screens", "task-ticked.png"));

            // who may only look sees what is asked, and nothing to press
            Tour.signIn(looking, Tour.Person.VIEW_ONLY.mail).open("/my/" + child + "/today");
            looking.see("For you to do").see("Send us the film of the walk.").seeNoMore("Done");

            desk.open("/staff/child/" + child + "/tasks").press("Ended: 2 tasks");
            desk.see("Ticked by the family: Dana Albrecht").accessible("tasks that ended");

            desk.open("/staff/needs").see("past its day:").press("My tasks").see("Book an interpreter");
            desk.see("Ask the other hospital for its operation report.").accessible("my tasks");
            desk.pressAt(".hw-looks tbody tr:first-child button");
            desk.seeNoMore("Ask the other hospital for its operation report.");
            desk.open("/staff/needs?show=left").see("the task was done, ended");
        }
    }
}
