package org.hearthway.caseload.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Gone;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildData;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Names;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.desk.Board;
import org.hearthway.desk.Desk;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.surveillance.engine.Watched;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** From a recorded check to the list, the desk and back, on Thursday, March 12, 2026. */
@HearthwayTest
class DueChecksTests {

    private static final Viewer.Person NURSE = People.with(Role.NURSE);
    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);

    @Autowired
    private Surveillance surveillance;

    @Autowired
    private Needs needs;

    @Autowired
    private NeedsWatch watch;

    @Autowired
    private Desk desk;

    @Autowired
    private Visits visits;

    @Autowired
    private Standings standings;

    @Autowired
    private ChildRegister register;

    private ChildId child = ChildId.random();

    @BeforeEach
    void aChildOfLevelFour() {
        child = register.enter(
                People.with(Role.ADMINISTRATOR),
                ChildData.plain(Names.plain("Tamsin", "Orbell"), LocalDate.of(2023, 5, 4), Optional.of(4), 2));
    }

    private void record(LocalDate day, long seen) {
        surveillance.record(
                NURSE,
                child,
                new CheckData(
                        Watched.HIPS,
                        day,
                        "Dr. Nwosu",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false,
                        ""),
                seen);
    }

    private List<Needs.Item> due() {
        return needs.open(NURSE).stream()
                .filter(item -> item.child().equals(child) && item.cause().rule() == Rule.CHECK)
                .toList();
    }

    private List<Board.Row> toBook() {
        return desk.board(DESK).in(Board.Group.TO_BOOK).stream()
                .filter(row -> row.child().equals(child))
                .toList();
    }

    @Test
    void aCheckThatIsDueStandsOnTheListUntilAVisitIsBooked() {
        record(LocalDate.of(2025, 9, 20), 0);
        assertThat(due()).singleElement().satisfies(item -> {
            assertThat(item.cause().day()).isEqualTo("2026-03-20");
            assertThat(item.cause().subject()).isEqualTo("HIPS");
        });
        assertThat(toBook())
                .singleElement()
                .satisfies(row -> assertThat(row.id()).isEqualTo("book/" + child + "/check/HIPS"));

        visits.book(
                DESK,
                child,
                new Visits.Booking(
                        "hip-xray", LocalDate.of(2026, 3, 19).atTime(9, 0), 30, "", Optional.of("check/HIPS")));

        assertThat(due()).isEmpty();
        assertThat(toBook()).isEmpty();
        assertThat(needs.left(NURSE, HearthwayTest.START))
                .filteredOn(item -> item.child().equals(child))
                .singleElement()
                .satisfies(item -> assertThat(item.left().orElseThrow().gone()).contains(Gone.VISIT_BOOKED));
    }

    @Test
    void itIsOutOfSightWhileTheChildIsInHospitalAndBackAsItWasAfterwards() {
        record(LocalDate.of(2025, 9, 20), 0);
        var before = due();
        standings.say(NURSE, child, new Standings.Saying(Status.AWAY, "in hospital", Optional.empty()), 0);
        assertThat(due()).isEmpty();
        assertThat(toBook()).isEmpty();
        standings.say(NURSE, child, new Standings.Saying(Status.ACTIVE, "home again", Optional.empty()), 1);
        assertThat(due()).isEqualTo(before).hasSize(1);
        assertThat(toBook())
                .singleElement()
                .satisfies(row ->
                        assertThat(row.wanted().orElseThrow().isToBeConfirmed()).isTrue());
    }

    @Test
    void aRecordOfTheCheckTakesItOff() {
        record(LocalDate.of(2025, 9, 20), 0);
        record(LocalDate.of(2026, 3, 10), 1);
        assertThat(due()).isEmpty();
        assertThat(toBook()).isEmpty();
    }

    /** A child of whom no check is known: the team finds out what was done before anything is booked. */
    @Test
    void aChildWithoutAnyRecordIsForTheTeamToLookAtAndNotYetToBook() {
        watch.look(child);
        assertThat(due())
                .singleElement()
                .satisfies(item -> assertThat(item.cause().day()).isEqualTo("2025-05-04"));
        assertThat(toBook()).isEmpty();
    }
}
