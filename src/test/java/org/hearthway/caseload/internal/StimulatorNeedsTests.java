package org.hearthway.caseload.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hearthway.stimulator.Readings.SERIAL;
import static org.hearthway.stimulator.Readings.again;
import static org.hearthway.stimulator.Readings.on;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.hearthway.access.Accounts;
import org.hearthway.access.Passwords;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.Needs.Outcome;
import org.hearthway.caseload.engine.Gone;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Device;
import org.hearthway.child.Devices;
import org.hearthway.stimulator.Generator.About;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Readings;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.testing.Team;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What a stimulator asks for comes onto the list and leaves it, from Thursday, March 12, 2026 on. */
@HearthwayTest
class StimulatorNeedsTests {

    private static final LocalDate THURSDAY = LocalDate.of(2026, 3, 12);

    @Autowired
    private Stimulators stimulators;

    @Autowired
    private Devices devices;

    @Autowired
    private Visits visits;

    @Autowired
    private Needs needs;

    @Autowired
    private NeedsWatch watch;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Passwords passwords;

    @Autowired
    private SettableClock clock;

    private Viewer.Person nurse = People.with(Role.NURSE);
    private Viewer.Person physician = People.with(Role.PHYSICIAN);
    private ChildId child = ChildId.random();

    @BeforeEach
    void aChildOfTwoColleagues() {
        nurse = Team.member(accounts, passwords, "Nell Rowan", Role.NURSE);
        physician = Team.member(accounts, passwords, "Dr. Ames", Role.PHYSICIAN);
        child = Children.enter(register);
    }

    private void implanted(LocalDate day, Charge charge) {
        devices.enter(
                nurse,
                child,
                Device.Kind.STIMULATOR,
                List.of(new Device.Part(Device.What.GENERATOR, SERIAL, day, Optional.empty())));
        stimulators.describe(nurse, child, SERIAL, new About(charge, Optional.empty(), Optional.empty(), 0));
    }

    private Reading read(Readings reading) {
        return stimulators.enter(
                nurse, child, reading.data(), stimulators.record(nurse, child).seen());
    }

    private void at(String local) {
        clock.set(LocalDateTime.parse(local).atZone(People.ZONE).toInstant());
        watch.look(child);
    }

    private List<Needs.Item> open(Rule rule) {
        return needs.open(nurse).stream()
                .filter(item -> item.child().equals(child) && item.cause().rule() == rule)
                .toList();
    }

    private Needs.Item only(Rule rule) {
        assertThat(open(rule)).hasSize(1);
        return open(rule).get(0);
    }

    private List<Gone> gone(Rule rule) {
        return needs.left(nurse, HearthwayTest.START).stream()
                .filter(item -> item.child().equals(child) && item.cause().rule() == rule)
                .flatMap(item -> item.left().flatMap(Needs.Left::gone).stream())
                .toList();
    }

    private void book(String kind, LocalDate day) {
        visits.book(
                People.with(Role.COORDINATOR),
                child,
                new Visits.Booking(kind, day.atTime(10, 30), 60, "", Optional.empty()));
    }

    /** 13 months after the implant, Lumsden 2012; four weeks before that are common practice, no source. */
    @Test
    void aBatteryToBeReadStandsThereFromFourWeeksBeforeUntilAVisitIsBooked() {
        implanted(LocalDate.of(2025, 3, 9), Charge.NEVER);
        at("2026-03-11T10:00:00");
        assertThat(open(Rule.GENERATOR)).isEmpty();
        at("2026-03-12T10:00:00");
        var item = only(Rule.GENERATOR);
        assertThat(item.cause().subject()).isEqualTo("READ/" + SERIAL);
        assertThat(item.cause().day()).isEqualTo("2026-04-09");
        assertThatThrownBy(() -> needs.close(nurse, item.id(), Outcome.NOTHING, "they will come", item.version()))
                .isInstanceOf(Invalid.class);

        book("programming", LocalDate.of(2026, 4, 8));
        assertThat(open(Rule.GENERATOR)).isEmpty();
        assertThat(gone(Rule.GENERATOR)).containsExactly(Gone.VISIT_BOOKED);
    }

    @Test
    void aVisitTooLateOrOfAnotherKindDoesNotAnswerForTheBattery() {
        implanted(LocalDate.of(2025, 3, 9), Charge.NEVER);
        at("2026-03-12T10:00:00");
        book("programming", LocalDate.of(2026, 4, 24));
        book("therapy", LocalDate.of(2026, 4, 8));
        assertThat(open(Rule.GENERATOR)).hasSize(1);
    }

    @Test
    void anOpenWindowForANewGeneratorStandsThereAlsoWhileTheReadingIsUnchecked() {
        implanted(LocalDate.of(2025, 9, 1), Charge.NEVER);
        at("2026-03-12T10:00:00");
        read(on(LocalDate.of(2026, 3, 3), "40").estimating(LocalDate.of(2026, 4, 9)));
        assertThat(open(Rule.GENERATOR))
                .extracting(item -> item.cause().subject())
                .containsExactlyInAnyOrder("READ/" + SERIAL, "REPLACE/" + SERIAL);
        book("team-meeting", LocalDate.of(2026, 3, 20));
        assertThat(open(Rule.GENERATOR))
                .extracting(item -> item.cause().subject())
                .containsExactly("READ/" + SERIAL);
    }

    @Test
    void aSuddenFallStandsThereAtOnceAndUntilSomebodyAnsweredOrReadAnew() {
        implanted(LocalDate.of(2025, 9, 1), Charge.NEVER);
        at("2026-03-12T10:00:00");
        read(on(LocalDate.of(2025, 9, 10), "100"));
        read(on(LocalDate.of(2025, 11, 10), "99"));
        read(on(LocalDate.of(2026, 1, 10), "98"));
        assertThat(open(Rule.DEVICE_WARNING)).isEmpty();
        var fallen = read(on(LocalDate.of(2026, 3, 10), "60"));
        assertThat(only(Rule.DEVICE_WARNING).cause().subject()).isEqualTo("DROP");
        assertThat(only(Rule.DEVICE_WARNING).cause().dueDay()).isEqualTo(THURSDAY);
        stimulators.correct(
                nurse,
                child,
                fallen.number(),
                Optional.of(on(LocalDate.of(2026, 3, 10), "96").data()),
                "misread",
                stimulators.record(nurse, child).seen());
        assertThat(open(Rule.DEVICE_WARNING)).isEmpty();
        assertThat(gone(Rule.DEVICE_WARNING)).containsExactly(Gone.READ_ANEW);
    }

    @Test
    void aLateChargeIsNamedWithItsDays() {
        implanted(LocalDate.of(2025, 9, 1), Charge.AT_HOME);
        at("2026-03-12T10:00:00");
        read(on(LocalDate.of(2026, 3, 10), "20").charged(7, LocalDate.of(2026, 2, 27)));
        var item = only(Rule.DEVICE_WARNING);
        assertThat(item.cause().subject()).isEqualTo("CHARGE");
        assertThat(item.cause().count()).isEqualTo(4);
        needs.close(nurse, item.id(), Outcome.SPOKE, "the charger was broken", item.version());
        at("2026-03-13T10:00:00");
        assertThat(open(Rule.DEVICE_WARNING)).isEmpty();
    }

    @Test
    void aReadingThatNobodyCheckedStandsThereFromTheNextOpenDay() {
        implanted(LocalDate.of(2025, 9, 1), Charge.NEVER);
        at("2026-03-12T10:00:00");
        var reading = read(on(LocalDate.of(2026, 3, 10), "98"));
        assertThat(open(Rule.SECOND_CHECK)).isEmpty();
        at("2026-03-13T08:00:00");
        assertThat(only(Rule.SECOND_CHECK).cause().subject()).isEqualTo("STIMULATOR/1/1");
        stimulators.confirm(physician, child, again(reading.data()), reading.revision());
        assertThat(open(Rule.SECOND_CHECK)).isEmpty();
        assertThat(gone(Rule.SECOND_CHECK)).containsExactly(Gone.TYPED_AGAIN);
    }
}
