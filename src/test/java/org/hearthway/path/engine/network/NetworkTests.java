package org.hearthway.path.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.path.engine.network.Condition.Apart;
import org.hearthway.path.engine.network.Condition.Between;
import org.hearthway.path.engine.network.Condition.Gap;
import org.hearthway.path.engine.network.Condition.On;
import org.hearthway.path.engine.network.Point.Aim;
import org.junit.jupiter.api.Test;

class NetworkTests {

    private static final LocalDate ZERO = LocalDate.of(2026, 1, 1);
    private static final Span HORIZON = new Span(ZERO.minusYears(2), ZERO.plusYears(20));

    private static Network network(List<Point> points, Condition... conditions) {
        return new Network(points, List.of(conditions), HORIZON);
    }

    private static List<Point> points(String... ids) {
        return Stream.of(ids).map(id -> new Point(id, Optional.empty())).toList();
    }

    private static Point aims(String id, String from, String usual) {
        return new Point(id, Optional.of(new Aim(from, Period.parse(usual))));
    }

    private static Gap gap(String from, String to, String least, String most) {
        return new Gap(from + "-" + to, from, to, Optional.of(Period.parse(least)), Optional.of(Period.parse(most)));
    }

    private static Between on(String point, String day) {
        return Between.on(point, point, LocalDate.parse(day));
    }

    private static Span days(int first, int last) {
        return new Span(ZERO.plusDays(first), ZERO.plusDays(last));
    }

    /** The commuting example and its minimal network: Dechter, Meiri and Pearl 1991, with minutes read as days. */
    @Test
    void narrowsThePublishedExampleToItsMinimalNetwork() {
        var network = network(
                points("x0", "x1", "x2", "x3", "x4"),
                on("x0", "2026-01-01"),
                gap("x0", "x1", "P10D", "P20D"),
                gap("x1", "x2", "P30D", "P40D"),
                gap("x3", "x2", "P10D", "P20D"),
                gap("x3", "x4", "P40D", "P50D"),
                gap("x0", "x4", "P60D", "P70D"));

        assertThat(network.bounds())
                .contains(Map.of(
                        "x0", days(0, 0),
                        "x1", days(10, 20),
                        "x2", days(40, 50),
                        "x3", days(20, 30),
                        "x4", days(60, 70)));
    }

    /** Six months are 181 to 184 days, and are counted from their anchor: the month-end values of a worked calendar. */
    @Test
    void countsMonthsFromTheirAnchor() {
        var network = network(
                List.of(
                        new Point("operation", Optional.empty()),
                        aims("six-months", "operation", "P6M"),
                        aims("a-year", "operation", "P12M")),
                on("operation", "2025-08-31"));

        var schedule = network.schedule().orElseThrow();

        assertThat(schedule.day("six-months")).isEqualTo("2026-02-28");
        assertThat(schedule.day("a-year")).isEqualTo("2026-08-31").isNotEqualTo("2026-08-28");
    }

    @Test
    void boundsWhatACalendarMonthBoundsBackwards() {
        var network = network(
                points("early", "late"),
                gap("early", "late", "P1M", "P1M"),
                new Between("late", "late", LocalDate.of(2026, 2, 28), LocalDate.of(2026, 2, 28)));

        assertThat(network.bounds().orElseThrow())
                .containsEntry("early", new Span(LocalDate.of(2026, 1, 28), LocalDate.of(2026, 1, 31)));
    }

    @Test
    void choosesTheAllowedDayNearestToTheUsualGapAndOfTwoTheLater() {
        var weekdays = Days.where(
                ZERO, ZERO.plusYears(1), day -> day.getDayOfWeek().getValue() <= DayOfWeek.FRIDAY.getValue());
        var points = List.of(
                new Point("operation", Optional.empty()),
                aims("saturday", "operation", "P2D"),
                aims("sunday", "operation", "P3D"));
        var network = network(
                points,
                on("operation", "2026-01-01"),
                new On("weekdays", "saturday", weekdays),
                new On("weekdays", "sunday", weekdays));

        var schedule = network.schedule().orElseThrow();

        assertThat(schedule.day("saturday")).isEqualTo("2026-01-02");
        assertThat(schedule.day("sunday")).isEqualTo("2026-01-05");
        assertThat(schedule.of("saturday").wanted()).contains(LocalDate.of(2026, 1, 3));
        assertThat(schedule.of("saturday").pushed()).isEmpty();
    }

    @Test
    void saysWhichRuleKeptAPointFromTheDayAimedAt() {
        var network = network(
                List.of(
                        new Point("tests", Optional.empty()),
                        aims("consent", "tests", "P2W"),
                        aims("operation", "tests", "P4W")),
                on("tests", "2026-01-01"),
                new Gap(
                        "three weeks of thinking",
                        "consent",
                        "operation",
                        Optional.of(Period.ofWeeks(3)),
                        Optional.empty()));

        var operation = network.schedule().orElseThrow().of("operation");

        assertThat(operation.day()).isEqualTo("2026-02-05");
        assertThat(operation.pushed()).contains("three weeks of thinking");
    }

    @Test
    void takesTheOtherWayRoundWhereOneIsClosed() {
        var network = network(
                List.of(
                        new Point("start", Optional.empty()),
                        aims("casting", "start", "P30D"),
                        aims("injection", "start", "P32D")),
                on("start", "2026-01-01"),
                gap("start", "casting", "P28D", "P40D"),
                gap("start", "injection", "P30D", "P36D"),
                new Apart("apart", "casting", "injection", 5));

        var schedule = network.schedule().orElseThrow();

        assertThat(schedule.day("casting")).isEqualTo("2026-01-31");
        assertThat(schedule.day("injection")).isEqualTo("2026-02-05");
        assertThat(network.bounds().orElseThrow())
                .containsEntry("casting", days(28, 40))
                .containsEntry("injection", days(30, 36));
        assertThat(network.without("start-injection")
                        .with(gap("start", "injection", "P30D", "P32D"))
                        .schedule()
                        .orElseThrow()
                        .day("casting"))
                .isEqualTo("2026-02-05");
    }

    @Test
    void namesRulesThatCannotAllHoldAndWaysOut() {
        var tuesdays = Days.where(ZERO, ZERO.plusYears(1), day -> day.getDayOfWeek() == DayOfWeek.TUESDAY);
        var network = network(
                points("operation", "casting", "review"),
                on("operation", "2026-04-01"),
                gap("operation", "casting", "P4W", "P5W"),
                on("casting", "2026-04-29"),
                new Gap("at most 14 days", "casting", "review", Optional.empty(), Optional.of(Period.ofDays(14))),
                new Gap("not before the review", "casting", "review", Optional.of(Period.ofDays(1)), Optional.empty()),
                on("review", "2026-05-15"),
                new On("review days", "operation", tuesdays));
        var without = network.without("review days");

        var conflict = without.conflict();

        assertThat(conflict).containsExactly("casting", "at most 14 days", "review");
        assertThat(WaysOut.of(without, conflict, rule -> rule.equals("review")))
                .containsExactly(
                        new WayOut.Move("review", "review", LocalDate.of(2026, 5, 15), LocalDate.of(2026, 5, 13)),
                        new WayOut.Give("at most 14 days", WayOut.Side.LONGER, 2));
        assertThat(WaysOut.of(without, conflict, rule -> false)).hasSize(1);
    }

    @Test
    void refusesWhatHasNoAllowedDayWithinAMaximum() {
        var never = Days.where(ZERO, ZERO.plusDays(60), day -> day.isAfter(ZERO.plusDays(20)));
        var network = network(
                points("start", "visit"),
                on("start", "2026-01-01"),
                gap("start", "visit", "P0D", "P14D"),
                new On("closed", "visit", never));

        assertThat(network.bounds()).isEmpty();
        assertThat(network.schedule()).isEmpty();
        assertThat(network.conflict()).isEqualTo(Set.of("start", "start-visit", "closed"));
    }

    @Test
    void findsThatThingsCannotLieApartEitherWay() {
        var network = network(
                points("start", "one", "other"),
                on("start", "2026-01-01"),
                gap("start", "one", "P0D", "P3D"),
                gap("start", "other", "P0D", "P3D"),
                new Apart("apart", "one", "other", 5));

        assertThat(network.isPossible()).isFalse();
        assertThat(network.conflict()).contains("apart");
        assertThat(WaysOut.of(network, network.conflict(), rule -> false))
                .contains(new WayOut.Give("apart", WayOut.Side.SHORTER, 2));
    }

    @Test
    void refusesAConditionAboutAPointThatIsNotThere() {
        assertThatThrownBy(() -> network(points("a"), on("b", "2026-01-01")).isPossible())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("b");
    }

    @Test
    void seesThatACycleWithoutSlackNeverEnds() {
        var network = network(
                points("a", "b"),
                on("a", "2026-01-01"),
                new Gap("onward", "a", "b", Optional.of(Period.ofDays(3)), Optional.empty()),
                new Gap("back", "b", "a", Optional.of(Period.ofDays(-2)), Optional.empty()));

        assertThat(network.conflict()).isEqualTo(Set.of("onward", "back"));
    }
}
