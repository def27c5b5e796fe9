package org.hearthway.program.engine.trend;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.program.engine.Adherence.Said;
import org.hearthway.program.engine.trend.RunChart.Change;
import org.hearthway.program.engine.trend.Trends.Given;
import org.hearthway.program.engine.trend.Trends.Log;
import org.hearthway.program.engine.trend.Trends.Rater;
import org.junit.jupiter.api.Test;

class TrendsTests {

    /** A Monday. */
    private static final LocalDate MONDAY = LocalDate.of(2026, 2, 2);

    private static Log log(int day, boolean planned, Said said) {
        return new Log(
                "bridge",
                MONDAY.plusDays(day),
                planned,
                said,
                said == Said.NOT_DONE ? Optional.of("tired") : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Log rated(int day, int effort, int pain, Rater rater) {
        return new Log(
                "bridge",
                MONDAY.plusDays(day),
                true,
                Said.DONE,
                Optional.empty(),
                Optional.of(effort),
                Optional.of(pain),
                Optional.of(rater));
    }

    private static List<Log> logs(int done, int excused, int notDone, int nothing, int extra) {
        var logs = new ArrayList<Log>();
        for (int i = 0; i < done + excused + notDone + nothing + extra; i++) {
            var said = i < done || i >= done + excused + notDone + nothing
                    ? Said.DONE
                    : i < done + excused ? Said.EXCUSED : i < done + excused + notDone ? Said.NOT_DONE : Said.NOTHING;
            logs.add(log(i % 7, i < done + excused + notDone + nothing, said));
        }
        return logs;
    }

    /** Reference values, EX-10: 13 done of 20 planned with 4 excused is 81.25 %, not 65 %; one not reported stands apart. */
    @Test
    void whatIsExcusedLeavesTheWeeksCount() {
        var week = Trends.weeks(logs(13, 4, 2, 1, 0), MONDAY, 1);
        assertThat(week).hasSize(1);
        assertThat(week.get(0).adherence().percent()).hasValue(81.25);
        assertThat(week.get(0).adherence().notReported()).isEqualTo(1);
    }

    /** Reference values, EX-11: 22 done of 20 is 100 % and 2 extra. */
    @Test
    void extraSessionsOfAWeekStandApart() {
        var adherence = Trends.weeks(logs(20, 0, 0, 0, 2), MONDAY, 1).get(0).adherence();
        assertThat(adherence.percent()).hasValue(100.0);
        assertThat(adherence.extra()).isEqualTo(2);
    }

    @Test
    void aWeekWithoutLogsStandsBetweenTheOthersWithNonePlanned() {
        var weeks = Trends.weeks(
                List.of(log(0, true, Said.DONE), log(15, true, Said.NOT_DONE), log(6, true, Said.NOT_DONE)), MONDAY, 3);
        assertThat(weeks)
                .extracting(Trends.Week::begins)
                .containsExactly(MONDAY, MONDAY.plusWeeks(1), MONDAY.plusWeeks(2));
        assertThat(weeks.get(0).adherence().percent()).hasValue(50.0);
        assertThat(weeks.get(1).adherence().percent()).isEmpty();
        assertThat(weeks.get(2).adherence().percent()).hasValue(0.0);
        assertThat(Trends.weeks(List.of(), MONDAY, 2))
                .hasSize(2)
                .allMatch(week -> week.adherence().percent().isEmpty());
    }

    @Test
    void aWeekBeginsOnTheDayThatIsAskedFor() {
        var weeks = Trends.weeks(List.of(log(5, true, Said.DONE), log(6, true, Said.DONE)), MONDAY.minusDays(1), 2);
        assertThat(weeks).extracting(Trends.Week::begins).containsExactly(MONDAY.minusDays(1), MONDAY.plusDays(6));
        assertThat(weeks).allMatch(week -> week.adherence().done() == 1);
    }

    /** Six weeks, five days each: pain goes from 1 to 5 with the ups and downs of any child. */
    @Test
    void sixWeeksOfRisingPainAreFound() {
        int[] pain = {1, 2, 1, 0, 2, 1, 2, 2, 1, 3, 2, 1, 3, 2, 3, 3, 2, 4, 3, 3, 4, 3, 5, 4, 4, 5, 4, 6, 5, 5};
        var chart = Trends.pain(sixWeeks(pain), Rater.CHILD);
        assertThat(chart.points()).hasSize(30);
        assertThat(chart.change()).isEqualTo(Change.RISING);
    }

    /** The same six weeks of a child whose numbers are all over the place, and higher on average: no change. */
    @Test
    void sixWeeksOfANoisyChildAreNotFlagged() {
        int[] pain = {4, 1, 5, 2, 0, 6, 3, 1, 5, 5, 2, 0, 4, 6, 1, 2, 5, 3, 0, 4, 1, 6, 2, 5, 0, 3, 6, 1, 4, 2};
        assertThat(Trends.pain(sixWeeks(pain), Rater.CHILD).change()).isEqualTo(Change.NONE);
    }

    private static List<Log> sixWeeks(int... pain) {
        var logs = new ArrayList<Log>();
        for (int i = 0; i < pain.length; i++) {
            logs.add(rated(7 * (i / 5) + i % 5, 4, pain[i], Rater.CHILD));
        }
        return logs;
    }

    @Test
    void aRowIsOfOnePersonAndTheHighestOfADayCounts() {
        var logs = List.of(
                rated(0, 3, 2, Rater.CHILD),
                rated(0, 7, 5, Rater.CHILD),
                rated(0, 9, 9, Rater.ADULT),
                log(1, true, Said.DONE));
        assertThat(Trends.pain(logs, Rater.CHILD).points())
                .extracting(RunChart.Point::number)
                .containsExactly(5);
        assertThat(Trends.effort(logs, Rater.CHILD).points())
                .extracting(RunChart.Point::number)
                .containsExactly(7);
        assertThat(Trends.effort(logs, Rater.ADULT).points())
                .extracting(RunChart.Point::number)
                .containsExactly(9);
    }

    @Test
    void reasonsAreCountedTheMostFrequentFirst() {
        var logs = new ArrayList<>(logs(3, 0, 2, 0, 0));
        for (var reason : List.of("pain", "no-time", "pain", "pain")) {
            logs.add(new Log(
                    "clam",
                    MONDAY,
                    true,
                    Said.NOT_DONE,
                    Optional.of(reason),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
        }
        assertThat(Trends.reasons(logs))
                .containsExactly(new Given("pain", 3), new Given("tired", 2), new Given("no-time", 1));
    }
}
