package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.program.Programs;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.ProgramLine;
import org.junit.jupiter.api.Test;

/** A lowered dose reaches the family; a strong pain reaches the call first, then the clinic. */
class LowerDoseIT {

    @Test
    void reachesTheFamilyAndTheirPainReachesTheClinic() {
        try (var clinic = RunningClinic.demo();
                var phone = Browser.phone(clinic);
                var desk = Browser.desk(clinic)) {
            var juno = new Tour(clinic).child("Juno");
            lowerTheBridge(clinic, juno);

            Tour.signIn(phone, Tour.Person.PARENT.mail).open("/my/" + juno + "/week");
            phone.see("Bridge is now 1 round of 4").see("It was 2 rounds of 10").see("changed");

            phone.open("/my/" + juno + "/exercise/bridge").see("Did it hurt?");
            phone.pressAt("[aria-label='Did it hurt?'] [aria-label='8 of 10']").press("Save and go on");
            phone.see("Stop here. Call.").see("Bridge: pain 8 of 10").see("No more exercises now.");
            assertThat(phone.all("a[href^='tel:']"))
                    .as("numbers to call")
                    .extracting(link -> link.getDomAttribute("href"))
                    .contains("tel:555-0100", "tel:555-0121");
            phone.accessible("the page that says stop");

            Tour.signIn(desk, Tour.Person.THERAPIST.mail).open("/staff/needs");
            desk.see("Juno Albrecht").see("Pain 8 of 10");
        }
    }

    /** As the therapist saves it. */
    private static void lowerTheBridge(RunningClinic clinic, ChildId juno) {
        var programs = clinic.part(Programs.class);
        var therapist = therapist(clinic);
        var before = programs.latest(therapist, juno).orElseThrow();
        var lines = before.lines().stream()
                .map(line -> line.exercise().equals("bridge") ? lowered(line) : line)
                .toList();
        var today = LocalDate.ofInstant(clinic.clock().instant(), java.time.ZoneId.of("America/New_York"));
        programs.save(therapist, juno, new Programs.Draft(today, lines, "Tired after school"), before.number());
    }

    private static ProgramLine lowered(ProgramLine line) {
        return new ProgramLine(
                line.exercise(),
                new Dose(1, 4, 0, 0, 1),
                line.side(),
                Set.copyOf(List.of(java.time.DayOfWeek.values())),
                line.from(),
                line.until(),
                line.note());
    }

    private static Viewer.Person therapist(RunningClinic clinic) {
        Account account = clinic.part(Accounts.class).all(new Viewer.Machine("walk")).stream()
                .filter(a -> a.email().equals(Tour.Person.THERAPIST.mail))
                .findFirst()
                .orElseThrow();
        return new Viewer.Person(account.id(), account.name(), account.roles(), account.language(), account.zone());
    }
}
