package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.testing.People;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A family's week on a phone: its times in a few presses, the day by time, a day away, a session missed and moved. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OurWeekIT {

    private static final String PAOLA = "paola@family.example";

    private RunningClinic clinic;
    private Browser phone;
    private LocalDate monday;

    @BeforeAll
    void begin() {
        clinic = RunningClinic.demo();
        monday = LocalDate.ofInstant(
                        clinic.clock().instant(),
                        clinic.part(ClinicSettings.class).zone())
                .with(TemporalAdjusters.next(DayOfWeek.MONDAY));
        at(monday, 10);
        phone = Browser.phone(clinic);
    }

    @AfterAll
    void end() {
        phone.close();
        clinic.close();
    }

    private void at(LocalDate day, int hour) {
        clinic.clock()
                .set(day.atTime(LocalTime.of(hour, 0))
                        .atZone(clinic.part(ClinicSettings.class).zone())
                        .toInstant());
    }

    private ProgramLine often(String exercise, ProgramLine.Side side, int days) {
        var line = ProgramLine.of(
                exercise, new Dose(2, 8, 0, 0, 1), side, EnumSet.allOf(DayOfWeek.class), monday, Optional.empty(), "");
        return new ProgramLine(
                exercise,
                line.prescription().with(new Rhythm(days, Rhythm.Spread.ANY)),
                line.days(),
                monday,
                Optional.empty(),
                "",
                line.priority(),
                "Two days are enough here",
                List.of());
    }

    private void prescribe(ChildId child) {
        var programs = clinic.part(Programs.class);
        var therapist = People.with(Role.THERAPIST);
        var seen =
                programs.latest(therapist, child).map(Programs.Version::number).orElse(0);
        programs.save(
                therapist,
                child,
                new Draft(
                        monday,
                        List.of(
                                often("overhead-ball", ProgramLine.Side.NONE, 2),
                                often("wrist-stretch", ProgramLine.Side.EACH, 2)),
                        "A small program"),
                seen);
    }

    private List<HomeWeek.Day> days(ChildId child) {
        return clinic.part(HomeWeek.class).days(new Viewer.Machine("walk"), child, monday, 7);
    }

    @Test
    void aParentEntersTheTimesIsAwayMissesAndMoves() {
        var teo = new Tour(clinic).child("Teo");
        prescribe(teo);
        var ours = "/my/" + teo + "/our-week";
        Tour.signIn(phone, PAOLA).open(ours);
        phone.accessible("our week before anything is entered").picture(picture("our-week-empty"));
        phone.pressAt("#quick-after").pressAt("#quick-after").press("Save our week");
        phone.see("This time begins before the one before it ends");
        phone.accessible("times that overlap").picture(picture("our-week-overlap"));
        phone.press("Take out").press("Save our week").see("Saved by Paola Marchetti");
        phone.fitsItsWidth("our week").accessible("our week").picture(picture("our-week"));

        var first = days(teo).stream()
                .filter(day -> !day.planned().isEmpty())
                .findFirst()
                .orElseThrow()
                .date();
        phone.open("/my/" + teo + "/today?d=" + first)
                .see("In the afternoon, 4:00 PM")
                .see("with Paola");
        phone.accessible("a day by its times").picture(picture("our-week-today"));

        phone.open(ours).press("Add days away").press("Holiday");
        phone.type("First day", DateTimeFormatter.ofPattern("M/d/yyyy").format(monday.plusDays(1)))
                .pressAt("#away-save")
                .see("Holiday:");
        phone.picture(picture("our-week-away"));
        phone.open("/my/" + teo + "/week").see("Holiday: nothing is planned").see("4:00 PM");
        assertThat(days(teo).get(1).planned()).isEmpty();
        assertThat(days(teo).stream().mapToInt(day -> day.planned().size()).sum())
                .isEqualTo(4);

        at(monday.plusDays(3), 9);
        var before = days(teo);
        Tour.signIn(phone.forget(), PAOLA).open("/my/" + teo + "/week").see("Missed this week");
        phone.see("Could be moved to").accessible("what was missed").picture(picture("our-week-missed"));
        phone.press("Move it").see("moved from");
        assertThat(days(teo)).isNotEqualTo(before);
        assertThat(days(teo).stream().mapToInt(day -> day.planned().size()).sum())
                .isEqualTo(4);
        phone.picture(picture("our-week-moved"));
        phone.press("Take back").see("Could be moved to").seeNoMore("moved from");
        assertThat(days(teo)).isEqualTo(before);
    }

    @Test
    void aTherapistSeesWhatDoesNotFitAndWhy() {
        var wren = new Tour(clinic).child("Wren");
        try (var desk = Browser.desk(clinic)) {
            Tour.signIn(desk, Tour.Person.THERAPIST.mail).open("/staff/child/" + wren + "/program");
            desk.see("Does not fit into the family’s times").see("Standing frame time, 4 times a week.");
            desk.see("Too few of the times are long enough.").picture(picture("our-week-panel"));
            desk.press("Change the family’s times").see("You enter this for Wren’s family.");
            desk.picture(picture("our-week-on-behalf"));
        }
    }

    private static Path picture(String name) {
        return Path.of("target", "screens", name + ".png");
    }
}
