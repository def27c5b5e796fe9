package org.hearthway.caseload.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.caseload.engine.Samples.TODAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.program.engine.Adherence.Said;
import org.hearthway.program.engine.trend.Trends.Log;
import org.hearthway.program.engine.trend.Trends.Rater;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Today is a Thursday; the Monday of its week is March 9. */
class HomeRulesTests {

    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 9);

    /** Thirty days: median 3, thirteen below it in a row, then ten above, one crossing; the means of the halves are 26/15 and 60/15. */
    private static final int[] RISING = {
        1, 2, 1, 0, 2, 1, 2, 2, 1, 3, 2, 1, 3, 2, 3, 3, 2, 4, 3, 3, 4, 3, 5, 4, 4, 5, 4, 6, 5, 5
    };

    private static Log log(LocalDate day, Said said, Optional<String> reason) {
        return new Log("bridge", day, true, said, reason, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Log rated(LocalDate day, int effort, int pain, Rater rater) {
        return new Log(
                "bridge",
                day,
                true,
                Said.DONE,
                Optional.empty(),
                Optional.of(effort),
                Optional.of(pain),
                Optional.of(rater));
    }

    /** A rating a day, the last one on the given day. */
    private static List<Log> pains(int[] pains, LocalDate last, Rater rater) {
        return IntStream.range(0, pains.length)
                .mapToObj(i -> rated(last.minusDays(pains.length - 1L - i), 3, pains[i], rater))
                .toList();
    }

    private static List<Cause> causes(List<Log> logs, Map<Rule, LocalDate> answered, Map<Figure, Integer> own) {
        var home = new Facts.OfHome(logs, List.of(), List.of(), answered);
        return new HomeRules(Samples.book(7, 3, 14).with(own), Samples.OFFICE, home, TODAY).causes();
    }

    private static List<Cause> causes(List<Log> logs) {
        return causes(logs, Map.of(), Map.of());
    }

    /** The limits for 23 useful points, 8 in a row and 7 crossings: the table in Anhøj and Olesen 2014. */
    @Test
    void painThatRisesIsFoundAndTheItemSaysTheNumbers() {
        var found = causes(pains(RISING, TODAY.minusDays(1), Rater.CHILD));
        assertThat(found).extracting(Cause::rule).containsExactly(Rule.PAIN_RISING);
        assertThat(found.get(0).count()).isEqualTo(13);
        assertThat(found.get(0).subject()).isEqualTo("CHILD/8/3.0/1/7/2.3");
        assertThat(found.get(0).key()).isEqualTo("pain-rising/CHILD");
    }

    /** The item is as old as the finding: a week later it is due as before. */
    @Test
    void theDayOfAFindingStaysWhileItHolds() {
        var logs = pains(RISING, TODAY.minusDays(1), Rater.CHILD);
        var today = causes(logs).get(0);
        var home = new Facts.OfHome(logs, List.of(), List.of(), Map.of());
        var later = new HomeRules(Samples.book(7, 3, 14), Samples.OFFICE, home, TODAY.plusDays(7)).causes();
        assertThat(later)
                .filteredOn(cause -> cause.rule() == Rule.PAIN_RISING)
                .extracting(Cause::day)
                .containsExactly(today.day());
        assertThat(today.day()).isBefore(TODAY);
    }

    @Test
    void theNumbersOfChildAndGrownUpAreNeverJoined() {
        int[] child = {1, 2, 1, 0, 2, 1, 2, 0, 1, 3, 2, 1, 0, 2, 1};
        int[] adult = {5, 4, 5, 6, 4, 5, 4, 6, 5, 4, 6, 5, 5, 4, 6};
        var half = new ArrayList<>(pains(child, TODAY.minusDays(16), Rater.CHILD));
        half.addAll(pains(adult, TODAY.minusDays(1), Rater.ADULT));
        assertThat(causes(half))
                .as("joined they would be a rise; each alone goes up and down")
                .extracting(Cause::key)
                .containsExactly("pain-often/ADULT");
    }

    @Test
    void aRiseSmallerThanTheClinicAsksForIsNone() {
        var logs = pains(RISING, TODAY.minusDays(1), Rater.CHILD);
        assertThat(causes(logs, Map.of(), Map.of(Figure.RISING_BY, 2)))
                .extracting(Cause::rule)
                .containsExactly(Rule.PAIN_RISING);
        assertThat(causes(logs, Map.of(), Map.of(Figure.RISING_BY, 3)))
                .extracting(Cause::rule)
                .doesNotContain(Rule.PAIN_RISING);
    }

    @Test
    void painThatCameAndWentIsNoRiseHoweverSmallAStepTheClinicAsksFor() {
        int[] cameAndWent = {0, 0, 0, 0, 2, 2, 2, 2, 2, 2, 2, 2, 0, 0, 0, 0};
        var logs = pains(cameAndWent, TODAY, Rater.CHILD);
        assertThat(causes(logs, Map.of(), Map.of(Figure.RISING_BY, 0))).isEmpty();
    }

    /** Mostly without pain, then ten days of 3: the median is 0, and the halves are compared (Fisher's exact test). */
    @Test
    void aRiseFromMostlyNothingIsFoundByItsShares() {
        var pains = new int[30];
        Arrays.fill(pains, 20, 30, 3);
        var found = causes(pains(pains, TODAY, Rater.ADULT));
        assertThat(found).extracting(Cause::rule).containsExactly(Rule.PAIN_RISING);
        assertThat(found.get(0).count()).isEqualTo(10);
        assertThat(found.get(0).subject()).isEqualTo("ADULT/share/10/0.0/2.0");
    }

    @Test
    void whatTheTeamAnsweredCountsNoMore() {
        var logs = pains(RISING, TODAY.minusDays(1), Rater.CHILD);
        var answered = Map.of(Rule.PAIN_RISING, TODAY.minusDays(1));
        assertThat(causes(logs, answered, Map.of())).as("nor as many sore days").isEmpty();
        var on = pains(RISING, TODAY.plusDays(40), Rater.CHILD);
        var home = new Facts.OfHome(Stream.concat(logs.stream(), on.stream()).toList(), List.of(), List.of(), answered);
        assertThat(new HomeRules(Samples.book(7, 3, 14), Samples.OFFICE, home, TODAY.plusDays(40)).causes())
                .extracting(Cause::key)
                .containsExactly("pain-rising/CHILD/2026-03-11");
    }

    /**
     * Children whose pain goes up and down around one level for eight weeks. A run chart of random points signals in about
     * one of twenty (Anhøj and Olesen 2014), half of them upward, and fewer rise by a point.
     */
    @Test
    void aNoisyChildIsNotFlagged() {
        var random = new Random(7);
        var flagged = IntStream.range(0, 1000)
                .filter(child -> {
                    var pains =
                            IntStream.range(0, 50).map(day -> random.nextInt(4)).toArray();
                    return !causes(pains(pains, TODAY, Rater.CHILD)).isEmpty();
                })
                .count();
        assertThat(flagged).isLessThan(20);
    }

    @ParameterizedTest
    @CsvSource({"4,false", "5,true", "6,true"})
    void soreDaysAreCountedWithinTheLastDays(int days, boolean flagged) {
        var logs = new ArrayList<Log>();
        for (int i = 0; i < 14; i++) {
            logs.add(rated(TODAY.minusDays(13 - i), 3, i < days ? 4 : 3, Rater.ADULT));
        }
        logs.add(rated(TODAY.minusDays(14), 3, 9, Rater.ADULT));
        logs.add(rated(TODAY, 3, 2, Rater.ADULT));
        assertThat(causes(logs)).extracting(Cause::subject).isEqualTo(flagged ? List.of("ADULT/4/5/14") : List.of());
        assertThat(causes(logs)).extracting(Cause::count).isEqualTo(flagged ? List.of(days) : List.of());
    }

    @ParameterizedTest
    @CsvSource({"3,8,0", "4,8,1", "4,7,0"})
    void effortThatIsTooHardIsCountedAlike(int days, int effort, int found) {
        var logs = IntStream.range(0, 10)
                .mapToObj(i -> rated(TODAY.minusDays(i), i < days ? effort : 2, 0, Rater.CHILD))
                .toList();
        assertThat(causes(logs)).hasSize(found).allMatch(cause -> cause.rule() == Rule.TOO_HARD);
    }

    @ParameterizedTest
    @CsvSource({"2,0", "3,1"})
    void whatCouldNotBeBecauseOfPainIsCounted(int times, int found) {
        var logs = new ArrayList<Log>();
        for (int i = 0; i < times; i++) {
            logs.add(log(TODAY.minusDays(2L * i), Said.EXCUSED, Optional.of("PAIN")));
        }
        logs.add(log(TODAY.minusDays(1), Said.EXCUSED, Optional.of("ILL")));
        logs.add(log(TODAY.minusDays(15), Said.EXCUSED, Optional.of("PAIN")));
        assertThat(causes(logs)).hasSize(found).allMatch(cause -> cause.rule() == Rule.STOPPED);
    }

    /** Seven planned a week over the three whole weeks before this one. */
    private static List<Log> weeks(int done, int excused, int notDone) {
        return IntStream.range(0, 21)
                .mapToObj(i -> {
                    var said = i < done
                            ? Said.DONE
                            : i < done + excused
                                    ? Said.EXCUSED
                                    : i < done + excused + notDone ? Said.NOT_DONE : Said.NOTHING;
                    return log(MONDAY.minusWeeks(3).plusDays(i * 8 % 21), said, Optional.empty());
                })
                .toList();
    }

    /** Reference values, EX-10: what is excused leaves the denominator. 8 of 21 less 4 is 47 %, 9 of 21 less 4 is 53 %. */
    @ParameterizedTest
    @CsvSource({"8,4,9,1", "9,4,8,0", "8,0,5,1", "8,0,4,0", "0,21,0,0"})
    void littleDoneIsFoundWhereEnoughWasReported(int done, int excused, int notDone, int found) {
        assertThat(causes(weeks(done, excused, notDone)))
                .hasSize(found)
                .allMatch(cause -> cause.rule() == Rule.FEW_DONE);
    }

    @Test
    void theItemSaysHowLittleAndHowMuchWasReported() {
        var cause = causes(weeks(8, 4, 9)).get(0);
        assertThat(cause.count()).as("8 of 17").isEqualTo(47);
        assertThat(cause.subject()).isEqualTo("50/3/100");
    }

    @Test
    void aWeekWithNothingPlannedIsNoWeekOfLittle() {
        var logs = weeks(5, 0, 16).stream()
                .filter(log -> !log.day().isBefore(MONDAY.minusWeeks(2)))
                .toList();
        assertThat(causes(logs)).isEmpty();
        assertThat(causes(logs, Map.of(), Map.of(Figure.DONE_WEEKS, 2))).hasSize(1);
    }

    @Test
    void weeksThatTheTeamHasAnsweredForCountNoMore() {
        assertThat(causes(weeks(5, 0, 16), Map.of(Rule.FEW_DONE, MONDAY.minusWeeks(3)), Map.of()))
                .isEmpty();
        assertThat(causes(
                        weeks(5, 0, 16),
                        Map.of(Rule.FEW_DONE, MONDAY.minusWeeks(3).minusDays(1)),
                        Map.of()))
                .hasSize(1);
    }

    @Test
    void moreThatIsProposedIsAnItemOfItsVersion() {
        var more = new Facts.MoreProposed("bridge", 4, List.of(TODAY.minusDays(5), TODAY.minusDays(3)));
        var home = new Facts.OfHome(List.of(), List.of(more), List.of(), Map.of());
        var causes = new HomeRules(Samples.book(7, 3, 14), Samples.OFFICE, home, TODAY).causes();
        assertThat(causes).extracting(Cause::key).containsExactly("more/bridge/4");
        assertThat(causes.get(0).count()).isEqualTo(2);
        assertThat(causes.get(0).day()).isEqualTo(TODAY.minusDays(3));
    }

    @Test
    void whatARuleOfCareShutsOffStandsFromItsDayOn() {
        var turn = new Facts.CareTurn(TODAY, true, List.of("roll-helper", "prone-elbows"));
        var home = new Facts.OfHome(List.of(), List.of(), List.of(turn), Map.of());
        assertThat(new HomeRules(Samples.book(7, 3, 14), Samples.OFFICE, home, TODAY).causes())
                .singleElement()
                .satisfies(cause -> {
                    assertThat(cause.rule()).isEqualTo(Rule.CARE_TURN);
                    assertThat(cause.day()).isEqualTo(TODAY);
                    assertThat(cause.count()).isEqualTo(2);
                    assertThat(cause.subject()).isEqualTo("shut");
                });
    }
}
