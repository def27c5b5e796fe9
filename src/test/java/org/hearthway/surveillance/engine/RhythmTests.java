package org.hearthway.surveillance.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.Period;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RhythmTests {

    private static final LocalDate BORN = LocalDate.of(2024, 5, 4);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final Step FIRST = new Step.First(Period.ofMonths(12), Period.ofMonths(24));
    private static final Step.Every YEARLY = new Step.Every(12, Optional.empty(), false);
    private static final Rhythm TWO_YEARS_OFTEN =
            rhythm(FIRST, new Step.Every(6, Optional.of(Period.ofMonths(24)), false), YEARLY);
    private static final Rhythm UNTIL_STABLE = rhythm(FIRST, new Step.Every(6, Optional.empty(), true), YEARLY);
    private static final Rhythm BY_AGE = rhythm(
            FIRST,
            new Step.AfterFirst(Period.ofMonths(12)),
            new Step.Age(Period.ofYears(4), Period.ofYears(5)),
            new Step.Age(Period.ofYears(8), Period.ofYears(10)));

    private static Rhythm rhythm(Step... steps) {
        return new Rhythm(Arrays.asList(steps), Period.ofMonths(3));
    }

    private static List<Done> on(String... days) {
        return Arrays.stream(days)
                .map(day -> new Done(LocalDate.parse(day), false))
                .toList();
    }

    private static List<String> by(List<Due> ahead) {
        return ahead.stream().map(due -> due.by().toString()).toList();
    }

    /** Reference values EX-W1, computed by the AACPDM Hip Surveillance Care Pathway 2017 for level IV. */
    @Test
    void everySixMonthsForTwoYearsFromTheFirstCheckThenYearly() {
        assertThat(by(TWO_YEARS_OFTEN.dates(BORN, on("2025-11-30"), TODAY, 5)))
                .containsExactly("2026-05-30", "2026-11-30", "2027-05-30", "2027-11-30", "2028-11-30");
    }

    /** EX-W1 again, with each check recorded on its day: the rest of the dates stay what they were. */
    @Test
    void checksMadeOnTheirDaysLeaveTheOthersWhereTheyWere() {
        var made = on("2025-11-30", "2026-05-30", "2026-11-30", "2027-05-30", "2027-11-30");
        assertThat(by(TWO_YEARS_OFTEN.dates(BORN, made.subList(0, 3), TODAY, 3)))
                .containsExactly("2027-05-30", "2027-11-30", "2028-11-30");
        assertThat(by(TWO_YEARS_OFTEN.dates(BORN, made, TODAY, 2))).containsExactly("2028-11-30", "2029-11-30");
    }

    /** 31 August and six months is the last of February, and six more the 31st again, not the 28th. */
    @Test
    void theDayOfTheMonthDoesNotCreep() {
        assertThat(by(TWO_YEARS_OFTEN.dates(BORN, on("2025-08-31"), TODAY, 4)))
                .containsExactly("2026-02-28", "2026-08-31", "2027-02-28", "2027-08-31");
    }

    @Test
    void aLateCheckIsFollowedSixMonthsLaterWhileTheTwoYearsLast() {
        assertThat(by(TWO_YEARS_OFTEN.dates(BORN, on("2025-11-30", "2027-06-10"), TODAY, 2)))
                .containsExactly("2027-12-10", "2028-12-10");
    }

    @Test
    void becomesYearlyOnceTheTeamCallsItStableAndOftenAgainWhenItNoLongerDoes() {
        var stable = List.of(new Done(LocalDate.of(2025, 6, 1), false), new Done(LocalDate.of(2025, 12, 1), true));
        assertThat(by(UNTIL_STABLE.dates(BORN, stable, TODAY, 2))).containsExactly("2026-12-01", "2027-12-01");
        var again = List.of(stable.get(0), stable.get(1), new Done(LocalDate.of(2026, 3, 1), false));
        assertThat(by(UNTIL_STABLE.dates(BORN, again, TODAY, 2))).containsExactly("2026-09-01", "2027-03-01");
    }

    /** Nothing that is counted from a check has a date before there is one. */
    @Test
    void withoutACheckOnlyTheFirstHasADate() {
        assertThat(TWO_YEARS_OFTEN.dates(BORN, List.of(), TODAY, 5))
                .singleElement()
                .satisfies(due -> {
                    assertThat(due.from()).isEqualTo(LocalDate.of(2025, 5, 4));
                    assertThat(due.by()).isEqualTo(LocalDate.of(2026, 5, 4));
                    assertThat(due.counted()).isEqualTo(BORN);
                });
        assertThat(rhythm(YEARLY).dates(BORN, List.of(), TODAY, 5)).isEmpty();
    }

    /** Level II of the Australian Hip Surveillance Guidelines 2014, reference values EX-13. */
    @Test
    void goesByAgeWhereTheRhythmNamesAges() {
        assertThat(by(BY_AGE.dates(BORN, on("2025-11-01"), TODAY, 5)))
                .containsExactly("2026-11-01", "2029-05-04", "2034-05-04");
        assertThat(by(BY_AGE.dates(BORN, on("2025-11-01", "2026-10-20"), TODAY, 5)))
                .containsExactly("2029-05-04", "2034-05-04");
        assertThat(by(BY_AGE.dates(BORN, on("2025-11-01", "2028-02-10"), TODAY, 5)))
                .as("within three months of its time")
                .containsExactly("2034-05-04");
    }

    /** A child who comes late: the first check that is known answers the age it was made at, and all before it. */
    @Test
    void aFirstCheckAtTheAgeOfALaterStepAnswersThoseBeforeIt() {
        assertThat(by(BY_AGE.dates(BORN, on("2028-11-01"), TODAY.plusYears(3), 5)))
                .containsExactly("2034-05-04");
    }

    @Test
    void aMissedAgeIsPassedOverOnceTheNextHasBegun() {
        var grown = LocalDate.of(2016, 5, 4);
        assertThat(by(BY_AGE.dates(grown, List.of(), TODAY, 5))).containsExactly("2026-05-04");
        assertThat(by(BY_AGE.dates(grown, List.of(), TODAY.plusYears(3), 5)))
                .as("a last one that was missed stays due")
                .containsExactly("2026-05-04");
    }

    @Test
    void endsWithTheLastAge() {
        assertThat(BY_AGE.dates(LocalDate.of(2012, 1, 1), on("2013-06-01", "2021-03-01"), TODAY, 5))
                .isEmpty();
    }

    @Test
    void refusesARepetitionThatNeverMoves() {
        assertThatThrownBy(() -> new Step.Every(0, Optional.empty(), false))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
