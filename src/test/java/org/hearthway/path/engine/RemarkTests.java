package org.hearthway.path.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Advice.Ages;
import org.hearthway.path.engine.Remark.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Surgery lies on Tuesday, February 10, 2026. */
class RemarkTests {

    private static final String SURGERY = "2026-02-10";

    private static Advice ages(int from, Optional<Integer> to) {
        return new Advice(
                "age", Optional.of(new Ages(from, to, "operation")), levels(), Bilingual.same("ages"), "test");
    }

    private static Advice atLevels(Integer... levels) {
        return new Advice("level", Optional.empty(), levels(levels), Bilingual.same("levels"), "test");
    }

    private static SortedSet<Integer> levels(Integer... levels) {
        return new TreeSet<>(Set.of(levels));
    }

    private static Plan plan(Advice... advice) {
        var stages =
                List.of(Paths.stage("first", Paths.begins()), Paths.stage("operation", Paths.after("first", "P4W")));
        var template = new Template("test", 1, Bilingual.same("test"), Optional.empty(), stages, List.of(advice));
        return Paths.plan(
                template, Paths.begun("2026-01-05", "operation", SURGERY), Paths.EVERY_DAY, Paths.day("2026-01-20"));
    }

    private static Remark only(Plan plan, String born, Optional<Integer> level) {
        return Remark.on(plan, LocalDate.parse(born), level).get(0);
    }

    @ParameterizedTest(name = "born {0}: {1}, {2}")
    @CsvSource({
        "2023-02-11, 2, OUTSIDE",
        "2023-02-10, 3, USUAL",
        "2020-06-01, 5, USUAL",
        // 9 years and 11 months, the eve of the tenth birthday, and the birthday itself
        "2016-03-10, 9, USUAL",
        "2016-02-11, 9, USUAL",
        "2016-02-10, 10, OUTSIDE",
        "2008-01-01, 18, OUTSIDE"
    })
    void anAgeCountsInCompletedYearsOnTheStagesFirstDay(String born, int years, Answer answer) {
        var remark = only(plan(ages(3, Optional.of(9))), born, Optional.empty());
        assertThat(remark.answer()).isEqualTo(answer);
        assertThat(remark.own()).contains(years);
        assertThat(remark.on()).contains(LocalDate.parse(SURGERY));
    }

    @ParameterizedTest(name = "born {0}: {1}")
    @CsvSource({"2022-02-11, OUTSIDE", "2022-02-10, USUAL", "2005-01-01, USUAL"})
    void withoutAnUpperAgeOnlyTheLowerOneCounts(String born, Answer answer) {
        assertThat(only(plan(ages(4, Optional.empty())), born, Optional.empty()).answer())
                .isEqualTo(answer);
    }

    /** A child born on February 29 completes a year on March 1 of a common year, as java.time counts. */
    @Test
    void aLeapDayChildIsNotMadeOlderByAShortFebruary() {
        var plan = Paths.plan(
                plan(ages(3, Optional.empty())).template(),
                Paths.begun("2027-01-05", "operation", "2027-02-28"),
                Paths.EVERY_DAY,
                Paths.day("2027-01-05"));
        assertThat(only(plan, "2024-02-29", Optional.empty()).own()).contains(2);
    }

    @ParameterizedTest(name = "GMFCS {0}: {1}")
    @CsvSource({"1, OUTSIDE", "2, USUAL", "3, USUAL", "4, OUTSIDE", "5, OUTSIDE"})
    void aLevelIsUsualOrOutside(int level, Answer answer) {
        var remark = only(plan(atLevels(2, 3)), "2020-01-01", Optional.of(level));
        assertThat(remark.answer()).isEqualTo(answer);
        assertThat(remark.own()).contains(level);
    }

    @Test
    void aLevelThatWasNotRecordedIsSaidAndNotGuessed() {
        var remark = only(plan(atLevels(2, 3)), "2020-01-01", Optional.empty());
        assertThat(remark.answer()).isEqualTo(Answer.NOT_RECORDED);
        assertThat(remark.own()).isEmpty();
    }

    @Test
    void whatNoRecordAnswersIsLeftToTheTeam() {
        var remark = only(plan(atLevels()), "2020-01-01", Optional.of(2));
        assertThat(remark.answer()).isEqualTo(Answer.TEAM_JUDGES);
    }

    @Test
    void refusesAnAdviceAboutTwoThingsAndFiguresOutOfBounds() {
        assertThatThrownBy(() -> new Advice(
                        "both",
                        Optional.of(new Ages(3, Optional.empty(), "operation")),
                        levels(2),
                        Bilingual.same("both"),
                        "test"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> atLevels(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> atLevels(6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ages(-1, Optional.empty())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ages(4, Optional.of(3))).isInstanceOf(IllegalArgumentException.class);
    }
}
