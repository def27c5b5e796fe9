package org.hearthway.program.engine.week;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.program.engine.week.Weeks.EVENING;
import static org.hearthway.program.engine.week.Weeks.ask;
import static org.hearthway.program.engine.week.Weeks.evenings;
import static org.hearthway.program.engine.week.Weeks.helped;
import static org.hearthway.program.engine.week.Weeks.strength;
import static org.hearthway.program.engine.week.Weeks.with;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.week.MissedSessions.Offer;
import org.hearthway.program.engine.week.MissedSessions.Why;
import org.junit.jupiter.api.Test;

class MissedSessionsTests {

    private static Placed on(String exercise, DayOfWeek day) {
        return new Placed(exercise, day, EVENING);
    }

    private static List<Offer> offers(
            FamilyWeek week, List<Ask> asks, List<Placed> planned, List<Placed> missed, DayOfWeek today) {
        return MissedSessions.offers(week, asks, planned, missed, today, LocalTime.NOON);
    }

    @Test
    void aMissedSessionIsOfferedTheNextTimeThatHasRoom() {
        var planned = List.of(on("walk", MONDAY), on("walk", WEDNESDAY));
        assertThat(offers(evenings(30), List.of(ask("walk", 20, 2)), planned, planned.subList(0, 1), TUESDAY))
                .containsExactly(new Offer.Move(on("walk", MONDAY), on("walk", TUESDAY)));
    }

    @Test
    void aTimeOfTodayThatHasBegunIsOver() {
        var planned = List.of(on("walk", MONDAY));
        assertThat(MissedSessions.offers(
                        evenings(30), List.of(ask("walk", 20, 1)), planned, planned, TUESDAY, LocalTime.of(17, 1)))
                .containsExactly(new Offer.Move(on("walk", MONDAY), on("walk", WEDNESDAY)));
    }

    @Test
    void aDailyExerciseIsNeverDoubled() {
        var planned = new ArrayList<Placed>();
        for (var day : DayOfWeek.values()) {
            planned.add(on("walk", day));
        }
        assertThat(offers(evenings(60), List.of(ask("walk", 10, 7)), planned, planned.subList(0, 2), WEDNESDAY))
                .containsExactly(
                        new Offer.Skip(on("walk", MONDAY), Why.ENOUGH),
                        new Offer.Skip(on("walk", TUESDAY), Why.ENOUGH));
    }

    /** Days that do not touch (reference values, EX-03): before Wednesday and Friday, and before Monday to come. */
    @Test
    void strengthIsSkippedRatherThanDoneOnDaysThatTouch() {
        var bridge = strength("bridge", 10, 3, "hip");
        var planned = List.of(on("bridge", MONDAY), on("bridge", WEDNESDAY), on("bridge", FRIDAY));
        assertThat(offers(evenings(60), List.of(bridge), planned, planned.subList(0, 1), TUESDAY))
                .containsExactly(new Offer.Skip(on("bridge", MONDAY), Why.REST));
        assertThat(offers(evenings(60), List.of(bridge), planned, planned.subList(1, 2), THURSDAY))
                .containsExactly(new Offer.Skip(on("bridge", WEDNESDAY), Why.REST));
    }

    @Test
    void aMissedFridayMayMoveToSaturdayButNotToTheDayBeforeMonday() {
        var bridge = strength("bridge", 10, 3, "hip");
        var planned = List.of(on("bridge", MONDAY), on("bridge", WEDNESDAY), on("bridge", FRIDAY));
        assertThat(offers(evenings(60), List.of(bridge), planned, planned.subList(2, 3), SATURDAY))
                .containsExactly(new Offer.Move(on("bridge", FRIDAY), on("bridge", SATURDAY)));
        assertThat(offers(evenings(60), List.of(bridge), planned, planned, SUNDAY))
                .extracting(offer -> ((Offer.Skip) offer).why())
                .containsOnly(Why.REST);
    }

    @Test
    void aMissedSaturdayMayMoveToSundayWhenMondayIsFree() {
        var bridge = strength("bridge", 10, 2, "hip");
        var planned = List.of(on("bridge", WEDNESDAY), on("bridge", SATURDAY));
        assertThat(offers(evenings(60), List.of(bridge), planned, planned.subList(1, 2), SUNDAY))
                .containsExactly(new Offer.Move(on("bridge", SATURDAY), on("bridge", SUNDAY)));
    }

    @Test
    void theMoreImportantOneGetsTheRoom() {
        var asks = List.of(with(ask("a", 20, 1), Priority.THIRD), with(ask("b", 20, 1), Priority.FIRST));
        var planned = List.of(on("a", SATURDAY), on("b", SATURDAY));
        assertThat(offers(evenings(25), asks, planned, planned, SUNDAY))
                .containsExactly(
                        new Offer.Move(on("b", SATURDAY), on("b", SUNDAY)),
                        new Offer.Skip(on("a", SATURDAY), Why.NO_ROOM));
    }

    @Test
    void saysWhenNobodyHelpsOrTheWeekIsOver() {
        var lift = helped(ask("lift", 10, 1), "aunt");
        var planned = List.of(on("lift", MONDAY));
        assertThat(offers(evenings(30), List.of(lift), planned, planned, TUESDAY))
                .containsExactly(new Offer.Skip(on("lift", MONDAY), Why.NO_HELPER));
        assertThat(MissedSessions.offers(evenings(30), List.of(lift), planned, planned, SUNDAY, LocalTime.of(20, 0)))
                .containsExactly(new Offer.Skip(on("lift", MONDAY), Why.WEEK_OVER));
    }

    /** Whoever takes all offers breaks no rule of the week, with what was done and with the week to come. */
    @Test
    void allOffersHoldTogether() {
        var moved = 0;
        for (int seed = 0; seed < 150; seed++) {
            var random = new Random(seed);
            var one = Weeks.any(random, 6, 12);
            var planned = one.plan().placed();
            var today = DayOfWeek.of(1 + random.nextInt(7));
            var missed = planned.stream()
                    .filter(session -> session.day().compareTo(today) < 0 && random.nextBoolean())
                    .toList();
            var after = new ArrayList<>(planned);
            after.removeAll(missed);
            var broken = Weeks.broken(one.week(), one.asks(), after);
            var offers = MissedSessions.offers(one.week(), one.asks(), planned, missed, today, LocalTime.MIN);
            assertThat(offers).extracting(Offer::missed).containsExactlyInAnyOrderElementsOf(missed);
            for (var offer : offers) {
                if (offer instanceof Offer.Move move) {
                    moved++;
                    after.add(move.to());
                    assertThat(move.to().day()).isGreaterThanOrEqualTo(today);
                }
            }
            // a rhythm may be broken already by what was missed
            assertThat(broken).as("week " + seed).containsAll(Weeks.broken(one.week(), one.asks(), after));
            assertSundayRestsForMonday(one, planned, after);
        }
        assertThat(moved).isGreaterThan(50);
    }

    private static void assertSundayRestsForMonday(Weeks.Case one, List<Placed> planned, List<Placed> after) {
        for (var ask : one.asks()) {
            for (var other : one.asks()) {
                var shared = new HashSet<>(ask.muscles());
                shared.retainAll(other.muscles());
                assertThat(!shared.isEmpty()
                                && Weeks.daysOf(ask, after).contains(SUNDAY)
                                && Weeks.daysOf(other, planned).contains(MONDAY))
                        .isFalse();
            }
        }
    }
}
