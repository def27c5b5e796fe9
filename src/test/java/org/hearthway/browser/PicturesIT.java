package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.base.Viewer;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Test;

/** A parent who reads little goes through the day by pictures alone. */
class PicturesIT {

    private static final String SMALLEST = """
            return Math.min(...[...document.querySelectorAll('.hw-pics .turns a, .hw-pics .turns button, .hw-pics .show button')]
              .filter(e => e.getClientRects().length).flatMap(e => [e.getBoundingClientRect().width, e.getBoundingClientRect().height]))""";

    @Test
    void leadThroughTheDayWithoutAWordThatMustBeRead() {
        try (var clinic = RunningClinic.demo();
                var phone = Browser.phone(clinic)) {
            var child = new Tour(clinic).child("Juno");
            var machine = new Viewer.Machine("walk");
            var today = LocalDate.ofInstant(
                    clinic.clock().instant(), clinic.part(ClinicSettings.class).zone());
            Tour.signIn(phone, Tour.Person.PARENT.mail).open("/my/" + child + "/today");
            phone.press("Today in pictures").at("/my/" + child + "/pictures");
            var planned = clinic.part(HomeWeek.class)
                    .days(machine, child, today, 1)
                    .get(0)
                    .planned();
            for (var one : planned) {
                // what is pictured is the dose of the program
                var dose = one.line().dose();
                var sides = one.line().side() == Side.EACH ? 2 : 1;
                var marks = sides * dose.sets() * Math.max(dose.repetitions(), dose.minutes());
                phone.waitFor(
                        marks + " marks for " + one.exercise().id(),
                        () -> phone.all(".hw-marks .mk").size() == marks);
                assertThat(phone.all(".hw-marks .mk-sun")).hasSize(dose.timesADay() > 1 ? dose.timesADay() : 0);
                assertThat(((Number) phone.run(SMALLEST)).intValue()).isGreaterThanOrEqualTo(64);
                phone.fitsItsWidth(one.exercise().id())
                        .accessible("the picture of " + one.exercise().id());
                phone.pressAt("#picture-tick");
                phone.waitFor(
                        "the tick",
                        () -> !phone.all("#picture-tick[aria-checked=true]").isEmpty());
                phone.picture(Path.of(
                        "target", "screens", "pictures-" + one.exercise().id() + ".png"));
                phone.press(one == planned.get(planned.size() - 1) ? "Back to Today" : "Next exercise");
            }
            assertThat(clinic.part(HomeWeek.class)
                            .days(machine, child, today, 1)
                            .get(0)
                            .planned())
                    .allMatch(one -> one.logged().isPresent());

            phone.open("/my/" + child + "/pictures").pressAt(".turns .call");
            phone.at("/my/" + child + "/call");

            var nurse = People.with(org.hearthway.base.Role.NURSE);
            var standings = clinic.part(Standings.class);
            standings.say(nurse, child, new Standings.Saying(Status.AWAY, "In hospital", Optional.empty()), 0);
            phone.open("/my/" + child + "/pictures");
            assertThat(phone.all(".hw-hearth")).hasSize(1);
            assertThat(phone.all("#picture-tick, .hw-marks, .hw-rest")).isEmpty();
            phone.accessible("a quiet day in pictures");
        }
    }
}
