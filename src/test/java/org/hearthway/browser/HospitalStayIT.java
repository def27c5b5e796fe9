package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;

/**
 * A teenager with a pump goes to hospital: the emergency sheet is opened by his mother in two presses and by a nurse
 * in one; the nurse says that he is away, the family's page turns quiet, and it all comes back.
 */
@Order(WalkOrder.SHARED)
@ResourceLock(RunningClinic.SHARED)
class HospitalStayIT {

    @Test
    void takesTheSheetAlongAndLeavesTheFamilyInPeace() {
        var clinic = RunningClinic.shared();
        try (var nurse = Browser.desk(clinic);
                var phone = Browser.phone(clinic)) {
            var child = new Tour(clinic).child("Elias");
            Tour.signIn(phone, "aminata@family.example");
            Tour.signIn(nurse, Tour.Person.NURSE.mail);

            phone.open("/my/" + child + "/today").press("When to call").press("Open the emergency sheet");
            phone.see("What must never be done").see("mcg a day, one rate").see("Signed by");
            phone.fitsItsWidth("the emergency sheet").accessible("the emergency sheet");
            assertThat(phone.path()).startsWith("/emergency/");

            nurse.open("/staff/child/" + child + "/device").see("PK-30418");
            nurse.fitsItsWidth("the devices").accessible("the devices");
            nurse.press("Emergency sheet").see("500 mcg/mL");
            nurse.fitsItsWidth("the emergency sheet at the clinic");

            nurse.open("/staff/child/" + child + "/path").press("Status: cared for here");
            nurse.pressAt("#status-to").press("in hospital or away");
            nurse.type("Why", "Fever, admitted last night").press("Set the status");
            nurse.see("In hospital or away").accessible("a folder of a child that is away");

            phone.open("/my/" + child + "/today").see("is in the hospital or away");
            phone.seeNoMore("Good ").accessible("a quiet day");

            nurse.press("Status: in hospital or away").type("Why", "Home again, a slip before");
            nurse.press("Take the last one back").see("Status: cared for here");
            phone.open("/my/" + child + "/today").seeNoMore("is in the hospital or away");
        }
    }
}
