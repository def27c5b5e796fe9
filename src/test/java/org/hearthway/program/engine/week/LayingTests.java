package org.hearthway.program.engine.week;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.program.engine.week.Weeks.ask;
import static org.hearthway.program.engine.week.Weeks.strength;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.week.FamilyWeek.Slot;
import org.junit.jupiter.api.Test;

/** Monday is March 9, 2026. */
class LayingTests {

    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 9);
    private static final LocalTime SCHOOL_IS_OUT = LocalTime.of(16, 0);
    private static final Function<LocalDate, List<Placed>> NOTHING = day -> List.of();
    private static final Predicate<LocalDate> HOME = day -> false;

    private static FamilyWeek everyDay(int minutes) {
        return new FamilyWeek(
                Arrays.stream(DayOfWeek.values())
                        .map(day -> new Slot(day, SCHOOL_IS_OUT, minutes, Set.of()))
                        .toList(),
                Map.of());
    }

    private static Demand demand(Ask ask) {
        return new Demand(ask, MONDAY.minusDays(100), Optional.empty());
    }

    private static Standing timed(int minutes, Ask... asks) {
        return new Standing(
                true,
                everyDay(minutes),
                Arrays.stream(asks).map(LayingTests::demand).toList());
    }

    private static List<Stretch> from(
            LocalDate first, Standing standing, Predicate<LocalDate> away, Function<LocalDate, List<Placed>> before) {
        return Laying.from(first, MONDAY.plusDays(28), day -> standing, away, before);
    }

    private static List<Placed> on(List<Stretch> laid, LocalDate day) {
        return laid.stream()
                .filter(stretch -> stretch.holds(day))
                .findFirst()
                .map(stretch -> stretch.layout().on(day.getDayOfWeek()))
                .orElse(List.of());
    }

    private static Set<LocalDate> days(List<Stretch> laid, String exercise, LocalDate from, int count) {
        var days = new HashSet<LocalDate>();
        IntStream.range(0, count).mapToObj(from::plusDays).forEach(day -> {
            if (on(laid, day).stream().anyMatch(one -> one.exercise().equals(exercise))) {
                days.add(day);
            }
        });
        return days;
    }

    @Test
    void weeksThatAreAlikeAreLaidOutOnce() {
        var laid = from(MONDAY, timed(30, ask("roll", 10, 3), ask("reach", 5, 5)), HOME, NOTHING);
        assertThat(laid).singleElement().satisfies(stretch -> {
            assertThat(stretch.from()).isEqualTo(MONDAY);
            assertThat(stretch.until()).isEmpty();
            assertThat(stretch.layout().kind()).isEqualTo(Layout.Kind.BY_TIME);
        });
        assertThat(days(laid, "roll", MONDAY, 7)).hasSize(3);
    }

    @Test
    void linesThatNameTheirDaysNeedNoPlanWhereTheFamilyNamesNoTimes() {
        var standing = new Standing(false, Standing.OPEN, List.of(demand(on("roll", 10, DayOfWeek.TUESDAY))));
        assertThat(from(MONDAY, standing, HOME, NOTHING))
                .singleElement()
                .satisfies(one -> assertThat(one.layout().kind()).isEqualTo(Layout.Kind.AS_WRITTEN));
    }

    private static Ask on(String name, int minutes, DayOfWeek first, DayOfWeek... others) {
        var days = EnumSet.of(first, others);
        var plain = ask(name, minutes, days.size());
        return new Ask(
                name,
                plain.priority(),
                minutes,
                1,
                new Rhythm(days.size(), Rhythm.Spread.ANY),
                days,
                Set.of(),
                plain.phase(),
                "",
                Set.of());
    }

    /** The week solver's own tests hold the plan to the fewest moves; here: nothing but Tuesday's moves, in that week alone. */
    @Test
    void takingAwayTuesdayMovesOnlyWhatMustMove() {
        var standing = timed(30, ask("roll", 10, 3), ask("reach", 10, 4), strength("bridge", 10, 2, "hips"));
        var first = from(MONDAY, standing, HOME, NOTHING);
        var tuesday = MONDAY.plusDays(8);
        var laid = from(MONDAY.plusDays(7), standing, tuesday::equals, day -> on(first, day));

        assertThat(on(laid, tuesday)).isEmpty();
        for (int i = 7; i < 14; i++) {
            var day = MONDAY.plusDays(i);
            if (!day.equals(tuesday)) {
                assertThat(on(laid, day)).as("%s", day).containsAll(on(first, day));
            }
        }
        for (var name : List.of("roll", "reach", "bridge")) {
            assertThat(days(laid, name, MONDAY.plusDays(7), 7))
                    .as(name)
                    .hasSameSizeAs(days(first, name, MONDAY.plusDays(7), 7));
            assertThat(days(laid, name, MONDAY.plusDays(14), 7)).isEqualTo(days(first, name, MONDAY.plusDays(14), 7));
        }
    }

    @Test
    void whatFallsOnADayAwayThatIsToldInItsWeekFindsAnotherDay() {
        var standing = timed(30, ask("roll", 10, 2));
        var tuesday = MONDAY.plusDays(1);
        var before = List.of(
                new Placed("roll", DayOfWeek.TUESDAY, SCHOOL_IS_OUT),
                new Placed("roll", DayOfWeek.THURSDAY, SCHOOL_IS_OUT));
        var laid = from(
                tuesday,
                standing,
                tuesday::equals,
                day -> before.stream()
                        .filter(one -> one.day() == day.getDayOfWeek())
                        .toList());
        assertThat(days(laid, "roll", tuesday, 6)).hasSize(2).contains(MONDAY.plusDays(3));
    }

    @Test
    void whatHasBeenThisWeekIsNotAskedForAgain() {
        var before = List.of(new Placed("roll", DayOfWeek.MONDAY, SCHOOL_IS_OUT));
        var thursday = MONDAY.plusDays(3);
        var laid = from(thursday, timed(30, ask("roll", 10, 2)), HOME, day -> day.equals(MONDAY) ? before : List.of());
        assertThat(days(laid, "roll", thursday, 4)).hasSize(1);
        assertThat(days(laid, "roll", MONDAY.plusDays(7), 7)).hasSize(2);
    }

    @Test
    void aWeekBegunInItsMiddleAsksForItsShare() {
        var laid = from(MONDAY.plusDays(4), timed(30, ask("roll", 10, 5), ask("reach", 5, 7)), HOME, NOTHING);
        assertThat(days(laid, "roll", MONDAY.plusDays(4), 3)).hasSize(2);
        assertThat(days(laid, "reach", MONDAY.plusDays(4), 3)).hasSize(3);
        assertThat(laid.get(0).layout().out()).isEmpty();
    }

    @Test
    void strengthRestsOverTheBorderOfWhatIsAndWhatComes() {
        var yesterday = MONDAY.plusDays(2);
        var thursday = MONDAY.plusDays(3);
        var standing = timed(30, strength("bridge", 10, 3, "hips"));
        var laid = from(
                thursday,
                standing,
                HOME,
                day -> day.equals(yesterday)
                        ? List.of(new Placed("bridge", DayOfWeek.WEDNESDAY, SCHOOL_IS_OUT))
                        : List.of());
        var days = days(laid, "bridge", thursday, 40);
        assertThat(days).doesNotContain(thursday);
        assertThat(days).noneMatch(day -> days.contains(day.plusDays(1)));
    }

    @Test
    void aLineThatEndsLeavesItsPlaceInTheWeekAfter() {
        var ends = new Demand(ask("roll", 10, 7), MONDAY, Optional.of(MONDAY.plusDays(9)));
        var standing = new Standing(true, everyDay(10), List.of(ends, demand(third("reach", 10, 7))));
        var laid = from(MONDAY, standing, HOME, NOTHING);
        assertThat(days(laid, "roll", MONDAY, 21)).hasSize(10);
        assertThat(days(laid, "reach", MONDAY, 7)).isEmpty();
        assertThat(days(laid, "reach", MONDAY.plusDays(14), 7)).hasSize(7);
    }

    private static Ask third(String name, int minutes, int days) {
        var plain = ask(name, minutes, days);
        return new Ask(
                name, Priority.THIRD, minutes, 1, plain.rhythm(), plain.days(), Set.of(), plain.phase(), "", Set.of());
    }

    @Test
    void aWholeWeekAwayHasNothingAndSaysNothingIsMissing() {
        var laid = from(
                MONDAY,
                timed(30, ask("roll", 10, 3)),
                day -> !day.isBefore(MONDAY.plusDays(7)) && day.isBefore(MONDAY.plusDays(14)),
                NOTHING);
        assertThat(days(laid, "roll", MONDAY.plusDays(7), 7)).isEmpty();
        assertThat(days(laid, "roll", MONDAY.plusDays(14), 7)).hasSize(3);
        assertThat(laid)
                .allSatisfy(stretch -> assertThat(stretch.layout().out()).isEmpty());
    }

    @Test
    void whatDoesNotFitIsKeptWithTheWeek() {
        var laid = from(MONDAY, timed(10, ask("roll", 10, 7), third("reach", 10, 2)), HOME, NOTHING);
        assertThat(laid.get(0).layout().out()).singleElement().satisfies(out -> {
            assertThat(out.exercise()).isEqualTo("reach");
            assertThat(out.sessions()).isEqualTo(2);
            assertThat(out.ways()).isNotEmpty();
        });
    }
}
