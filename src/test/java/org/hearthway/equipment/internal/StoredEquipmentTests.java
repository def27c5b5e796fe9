package org.hearthway.equipment.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.audit.WhatChanged;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Casts;
import org.hearthway.equipment.Equipment;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Item.Look;
import org.hearthway.equipment.Item.Outcome;
import org.hearthway.equipment.Item.What;
import org.hearthway.equipment.Place;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@HearthwayTest
class StoredEquipmentTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final Viewer.Person THERAPIST = People.with(Role.THERAPIST);

    @Autowired
    private Equipment equipment;

    @Autowired
    private Casts casts;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private WhatChanged changed;

    @Autowired
    private Words words;

    private ChildId child = ChildId.random();

    @BeforeEach
    void aChild() {
        child = Children.enter(register);
    }

    private static Item.Data splint(LocalDate given, Optional<LocalDate> back, Look... looks) {
        return new Item.Data(
                "ankle-foot-splint",
                Optional.of(Place.FOOT_ANKLE),
                Optional.of(Place.Side.LEFT),
                given,
                Optional.empty(),
                new Item.Wear(Optional.of(6), Optional.of(0), "at school", "1 hour\n2 hours"),
                Optional.of(28),
                Optional.of(90),
                back,
                List.of(looks));
    }

    private Item only() {
        var all = equipment.of(THERAPIST, child);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    @Test
    void everythingComesBackAsItWasTyped() {
        var look = new Look(What.SKIN, TODAY, Outcome.ADJUST, Optional.of(TODAY.plusDays(5)), "red heel");
        var data = splint(TODAY.minusDays(60), Optional.empty(), look);
        equipment.enter(THERAPIST, child, data);
        assertThat(only().data()).isEqualTo(data);
        assertThat(only().kind().name().en()).isEqualTo("Foot and ankle brace");
        assertThat(only().due(What.SKIN)).contains(TODAY.plusDays(5));
        assertThat(only().due(What.GROWTH)).contains(TODAY.plusDays(30));
    }

    @Test
    void aLookMovesOnlyItsOwnNextDay() {
        equipment.enter(THERAPIST, child, splint(TODAY.minusDays(60), Optional.empty()));
        var before = only();
        assertThat(before.due(What.SKIN)).contains(TODAY.minusDays(32));
        var look = new Look(What.SKIN, TODAY, Outcome.FITS, Optional.empty(), "");
        equipment.change(THERAPIST, child, before.id(), before.with(look), before.version());
        assertThat(only().due(What.SKIN)).contains(TODAY.plusDays(28));
        assertThat(only().due(What.GROWTH)).isEqualTo(before.due(What.GROWTH));
    }

    @Test
    void whatWasGivenBackIsLookedAtNoMoreAndStaysOnRecord() {
        var id = equipment.enter(THERAPIST, child, splint(TODAY.minusDays(60), Optional.empty()));
        equipment.change(THERAPIST, child, id, splint(TODAY.minusDays(60), Optional.of(TODAY)), 1);
        assertThat(only().isInUse()).isFalse();
        assertThat(only().due(What.SKIN)).isEmpty();
        assertThat(only().due(What.GROWTH)).isEmpty();
    }

    @Test
    void aStaleChangeIsRefusedAndAnotherChildsThingIsNotThere() {
        var id = equipment.enter(THERAPIST, child, splint(TODAY, Optional.empty()));
        equipment.change(THERAPIST, child, id, splint(TODAY.minusDays(1), Optional.empty()), 1);
        assertThatThrownBy(() -> equipment.change(THERAPIST, child, id, splint(TODAY, Optional.empty()), 1))
                .isInstanceOf(Overtaken.class);
        var other = Children.enter(register);
        assertThatThrownBy(() -> equipment.change(THERAPIST, other, id, splint(TODAY, Optional.empty()), 2))
                .isInstanceOf(NotAvailable.class);
        assertThat(only().data().given()).isEqualTo(TODAY.minusDays(1));
    }

    @Test
    void namesEachFieldThatIsWrong() {
        var wrong = new Item.Data(
                "nothing-known",
                Optional.empty(),
                Optional.empty(),
                TODAY.plusDays(1),
                Optional.of(TODAY),
                new Item.Wear(Optional.of(25), Optional.of(-1), "s".repeat(501), "b".repeat(501)),
                Optional.of(0),
                Optional.of(401),
                Optional.of(TODAY.plusDays(2)),
                List.of(new Look(What.SKIN, TODAY.plusDays(1), Outcome.FITS, Optional.of(TODAY), "n".repeat(501))));
        says(
                catchThrowableOfType(Invalid.class, () -> equipment.enter(THERAPIST, child, wrong)),
                "kind",
                "given",
                "lentUntil",
                "back",
                "byDay",
                "byNight",
                "schedule",
                "buildUp",
                "skinEvery",
                "growthEvery",
                "day0",
                "next0",
                "note0");
    }

    private void says(Invalid refused, String... fields) {
        assertThat(refused.problems()).extracting(Problem::field).containsExactly(fields);
        for (var language : Language.values()) {
            assertThat(refused.problems())
                    .allSatisfy(problem -> assertThat(words.say(language, problem))
                            .isNotBlank()
                            .doesNotContain("{"));
        }
    }

    private static CastSeries.Data series(Optional<LocalDate> ended, CastSeries.Cast... worn) {
        return new CastSeries.Data(
                Place.FOOT_ANKLE,
                Place.Side.BOTH,
                TODAY.minusDays(10),
                7,
                Optional.of(TODAY.plusDays(3)),
                ended,
                List.of(worn));
    }

    @Test
    void aSeriesSaysItsNextDayUntilItIsOver() {
        var first = new CastSeries.Cast(
                TODAY.minusDays(10), Optional.of(TODAY.minusDays(3)), Optional.of(-5), "light mark, left heel");
        var second = new CastSeries.Cast(TODAY.minusDays(3), Optional.empty(), Optional.empty(), "");
        var id = casts.enter(THERAPIST, child, series(Optional.empty(), first));
        assertThat(casts.of(THERAPIST, child)).singleElement().satisfies(one -> {
            assertThat(one.next()).contains(TODAY.minusDays(3));
            assertThat(one.nextIsLast()).isFalse();
        });
        casts.change(THERAPIST, child, id, series(Optional.empty(), first, second), 1);
        assertThat(casts.of(THERAPIST, child)).singleElement().satisfies(one -> {
            assertThat(one.data()).isEqualTo(series(Optional.empty(), first, second));
            assertThat(one.next()).contains(TODAY.plusDays(3));
            assertThat(one.nextIsLast()).isTrue();
        });
        casts.change(THERAPIST, child, id, series(Optional.of(TODAY), first, second), 2);
        assertThat(casts.of(THERAPIST, child).get(0).next()).isEmpty();
        assertThatThrownBy(() -> casts.change(THERAPIST, child, id, series(Optional.empty(), first), 2))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void namesEachFieldOfASeriesThatIsWrong() {
        var cast = new CastSeries.Cast(
                TODAY.plusDays(1), Optional.of(TODAY.minusDays(1)), Optional.of(181), "s".repeat(501));
        var wrong = new CastSeries.Data(
                Place.KNEE,
                Place.Side.LEFT,
                TODAY.plusDays(91),
                61,
                Optional.of(TODAY),
                Optional.of(TODAY.plusDays(1)),
                List.of(cast));
        says(
                catchThrowableOfType(Invalid.class, () -> casts.enter(THERAPIST, child, wrong)),
                "from",
                "everyDays",
                "lastOff",
                "ended",
                "on0",
                "off0",
                "degrees0",
                "skin0");
    }

    @Test
    void theFamilyIsToldAndReadsButOnlyTheTeamRecords() {
        var parent = Children.caregiver(households, child, Households.Reach.FULL);
        equipment.enter(THERAPIST, child, splint(TODAY, Optional.empty()));
        casts.enter(People.with(Role.NURSE), child, series(Optional.empty()));
        assertThat(changed.since(parent, child, HearthwayTest.START.minusSeconds(1)))
                .extracting(told -> told.words().en())
                .contains("Days or times changed for: Foot and ankle brace.", "The days of the cast changed.");
        assertThat(equipment.of(parent, child)).hasSize(1);
        for (var role : List.of(Role.COORDINATOR, Role.ADMINISTRATOR)) {
            assertThatThrownBy(() -> equipment.enter(People.with(role), child, splint(TODAY, Optional.empty())))
                    .as(role.name())
                    .isInstanceOf(NotAvailable.class);
        }
        assertThatThrownBy(() -> casts.enter(parent, child, series(Optional.empty())))
                .isInstanceOf(NotAvailable.class);
    }

    /** In a real clinic words that nobody accepted stay hidden; the name of the thing does not. */
    @Test
    void wordsThatNobodyAcceptedAreHidden() {
        equipment.enter(THERAPIST, child, splint(TODAY, Optional.empty()));
        assertThat(only().kind().says()).isEmpty();
        assertThat(casts.kind())
                .hasValueSatisfying(kind -> assertThat(kind.says()).isEmpty());
    }
}
