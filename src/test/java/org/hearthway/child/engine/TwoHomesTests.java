package org.hearthway.child.engine;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.AccountId;
import org.junit.jupiter.api.Test;

class TwoHomesTests {

    private static final LocalDate THE_MONDAY = LocalDate.of(2026, 3, 9);
    private static final AccountId ONE = AccountId.random();
    private static final AccountId OTHER = AccountId.random();

    @Test
    void layOutAWeekOnlyWhenBothHaveNights() {
        var one = Nights.everyWeek(EnumSet.allOf(DayOfWeek.class));

        assertThat(new TwoHomes(Map.of(ONE, one)).areKnown()).isFalse();
        assertThat(new TwoHomes(Map.of(ONE, one, OTHER, Nights.NONE)).areKnown())
                .isFalse();
        assertThat(new TwoHomes(Map.of(ONE, one, OTHER, Nights.NONE)).on(THE_MONDAY))
                .isEmpty();
    }

    @Test
    void putEachNightWhereItIsEntered() {
        var homes = new TwoHomes(Map.of(
                ONE, Nights.everyWeek(Set.of(MONDAY, TUESDAY, WEDNESDAY, THURSDAY)),
                OTHER, Nights.everyWeek(Set.of(FRIDAY, SATURDAY, SUNDAY))));

        assertThat(homes.on(THE_MONDAY)).containsExactly(ONE);
        assertThat(homes.on(THE_MONDAY.plusDays(4))).containsExactly(OTHER);
        assertThat(homes.on(THE_MONDAY.plusDays(6))).containsExactly(OTHER);
    }

    @Test
    void sayWhenTwoClaimANightAndWhenNobodyDoes() {
        var homes = new TwoHomes(Map.of(
                ONE, Nights.everyWeek(Set.of(MONDAY, TUESDAY)), OTHER, Nights.everyWeek(Set.of(TUESDAY, WEDNESDAY))));

        assertThat(homes.on(THE_MONDAY.plusDays(1))).containsExactlyInAnyOrder(ONE, OTHER);
        assertThat(homes.on(THE_MONDAY.plusDays(3))).isEmpty();
    }

    @Test
    void takeTurnsByTheWeekBeforeAndAfterTheWeekNamedOverANewYearOf53Weeks() {
        // any day of the week may name it: a Wednesday
        var nights = new Nights(Set.of(SATURDAY), Set.of(SUNDAY), Optional.of(THE_MONDAY.plusDays(2)));

        for (int week = -60; week <= 60; week++) {
            var monday = THE_MONDAY.plusWeeks(week);
            assertThat(nights.holdsOn(monday.plusDays(5)))
                    .as("Saturday " + week)
                    .isEqualTo(week % 2 == 0);
            assertThat(nights.holdsOn(monday.plusDays(6))).as("Sunday " + week).isEqualTo(week % 2 != 0);
        }
    }

    @Test
    void knowNothingOfAnOtherWeekWithoutTurns() {
        assertThat(new Nights(Set.of(), Set.of(MONDAY), Optional.empty()).isKnown())
                .isFalse();
        assertThat(new Nights(Set.of(), Set.of(MONDAY), Optional.of(THE_MONDAY)).isKnown())
                .isTrue();
    }
}
