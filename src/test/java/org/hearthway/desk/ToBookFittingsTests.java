package org.hearthway.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Casts;
import org.hearthway.equipment.Equipment;
import org.hearthway.equipment.Fittings;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Item.Look;
import org.hearthway.equipment.Item.Outcome;
import org.hearthway.equipment.Item.What;
import org.hearthway.equipment.Place;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** From casts and looks to what is to book, on Thursday, March 12, 2026. */
@HearthwayTest
class ToBookFittingsTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final Viewer.Person THERAPIST = People.with(Role.THERAPIST);
    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);

    @Autowired
    private Casts casts;

    @Autowired
    private Equipment equipment;

    @Autowired
    private Fittings fittings;

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
    void aChild() {
        child = Children.enter(register);
    }

    private List<Board.Row> toBook() {
        return desk.board(DESK).in(Board.Group.TO_BOOK).stream()
                .filter(row -> row.child().equals(child))
                .toList();
    }

    private static CastSeries.Data weekly(Optional<LocalDate> ended, LocalDate... putOn) {
        return new CastSeries.Data(
                Place.FOOT_ANKLE,
                Place.Side.BOTH,
                putOn[0],
                7,
                Optional.of(TODAY.plusDays(20)),
                ended,
                List.of(putOn).stream()
                        .map(on -> new CastSeries.Cast(on, Optional.empty(), Optional.empty(), ""))
                        .toList());
    }

    private static Item.Data splint(Optional<LocalDate> back, Look... looks) {
        return new Item.Data(
                "ankle-foot-splint",
                Optional.of(Place.FOOT_ANKLE),
                Optional.of(Place.Side.LEFT),
                TODAY.minusDays(60),
                Optional.empty(),
                Item.Wear.NOT_SAID,
                Optional.of(28),
                Optional.of(90),
                back,
                List.of(looks));
    }

    private static Look look(What what, int day, Outcome outcome) {
        return new Look(what, TODAY.plusDays(day), outcome, Optional.empty(), "");
    }

    @Test
    void aCastIsToBookForItsNextDayUntilAVisitKeepsItOrTheSeriesIsOver() {
        var series = casts.enter(THERAPIST, child, weekly(Optional.empty(), TODAY.minusDays(5)));
        assertThat(toBook()).singleElement().satisfies(row -> {
            assertThat(row.id()).isEqualTo("book/" + child + "/cast/" + series);
            assertThat(row.wanted().orElseThrow().kind()).isEqualTo("cast-change");
            assertThat(row.wanted().orElseThrow().until()).isEqualTo(TODAY.plusDays(2));
        });
        visits.book(
                DESK,
                child,
                new Visits.Booking(
                        "cast-change", TODAY.plusDays(1).atTime(9, 0), 60, "", Optional.of("cast/" + series)));
        assertThat(toBook()).isEmpty();

        casts.change(THERAPIST, child, series, weekly(Optional.empty(), TODAY.minusDays(5), TODAY), 1);
        assertThat(toBook())
                .as("the next one, a week later")
                .singleElement()
                .satisfies(row -> assertThat(row.wanted().orElseThrow().until()).isEqualTo(TODAY.plusDays(7)));
        casts.change(THERAPIST, child, series, weekly(Optional.of(TODAY), TODAY.minusDays(5), TODAY), 2);
        assertThat(toBook()).isEmpty();
    }

    @Test
    void whatDoesNotFitIsToBookUntilALookFindsItWell() {
        var adjust = look(What.SKIN, -3, Outcome.ADJUST);
        var splint = equipment.enter(THERAPIST, child, splint(Optional.empty(), adjust));
        assertThat(toBook()).singleElement().satisfies(row -> {
            assertThat(row.id()).isEqualTo("book/" + child + "/mend/" + splint);
            assertThat(row.wanted().orElseThrow().kind()).isEqualTo("orthotics");
            assertThat(row.wanted().orElseThrow().until()).isEqualTo(TODAY.plusDays(11));
        });
        equipment.change(
                THERAPIST, child, splint, splint(Optional.empty(), adjust, look(What.GROWTH, -1, Outcome.FITS)), 1);
        assertThat(toBook()).as("the skin was not looked at").hasSize(1);
        equipment.change(
                THERAPIST,
                child,
                splint,
                splint(
                        Optional.empty(),
                        adjust,
                        look(What.GROWTH, -1, Outcome.FITS),
                        look(What.SKIN, -3, Outcome.FITS)),
                2);
        assertThat(toBook()).as("mended the same day").isEmpty();
    }

    @Test
    void whatWasGivenBackOrOfAChildInHospitalAsksForNothing() {
        var replace = look(What.GROWTH, -2, Outcome.REPLACE);
        var splint = equipment.enter(THERAPIST, child, splint(Optional.empty(), replace));
        var nurse = People.with(Role.NURSE);
        standings.say(nurse, child, new Standings.Saying(Status.AWAY, "in hospital", Optional.empty()), 0);
        assertThat(toBook()).isEmpty();
        standings.say(nurse, child, new Standings.Saying(Status.ACTIVE, "home again", Optional.empty()), 1);
        assertThat(toBook()).hasSize(1);
        equipment.change(THERAPIST, child, splint, splint(Optional.of(TODAY), replace), 1);
        assertThat(toBook()).isEmpty();
    }

    @Test
    void familiesAreNotToldOfAllChildren() {
        assertThatThrownBy(() -> fittings.all(People.with(Role.CAREGIVER))).isInstanceOf(NotAvailable.class);
    }
}
