package org.hearthway.path.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.path.engine.Advice;
import org.hearthway.path.engine.Advice.Ages;
import org.hearthway.path.engine.Template;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures of the shipped paths against published ones; each check names where its figure was published. */
class PublishedFiguresTests {

    private final PathKind paths = ReadPaths.shipped();

    private Advice advice(String path, String id) {
        return paths.find(path).orElseThrow().advice().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private Template.Stage stage(String path, String id) {
        return paths.find(path).orElseThrow().stage(id).orElseThrow();
    }

    private static List<Period> gaps(Template.Stage stage) {
        var begins = stage.timing().begins().get(0);
        return Stream.of(Optional.of(begins.earliest()), begins.usual(), begins.latest())
                .flatMap(Optional::stream)
                .toList();
    }

    @Test
    void everyPathAdvisesWithSourceAndBothLanguages() {
        assertThat(paths.all())
                .isNotEmpty()
                .allSatisfy(path -> assertThat(path.advice()).isNotEmpty().allSatisfy(advice -> {
                    assertThat(advice.source()).isNotBlank();
                    assertThat(advice.says().en()).isNotEqualTo(advice.says().es());
                }));
    }

    /** NICE CG145 (2012, updated 2016): consider nerve-root surgery to improve walking at GMFCS II or III. */
    @Test
    void nerveRootSurgeryIsUsualAtLevelsTwoAndThree() {
        assertThat(advice("sdr", "level").levels()).containsExactly(2, 3);
        assertThat(advice("sdr", "level").source()).contains("NICE CG145");
    }

    /**
     * NICE CG145, research recommendation, and Summers et al. 2019: age 3 to 9 years. NHS England, July 2014, says
     * "between three and 10": a child of 9 years and 11 months is within both, the tenth birthday is where they part.
     */
    @Test
    void nerveRootSurgeryIsUsualFromThreeToNine() {
        var ages = advice("sdr", "age").ages().orElseThrow();
        assertThat(ages).isEqualTo(new Ages(3, Optional.of(9), "operation"));
        assertThat(ages.include(2)).isFalse();
        assertThat(ages.include(9)).isTrue();
        assertThat(ages.include(10)).isFalse();
        // both conflicting texts are told, with the series that began at 2.5 years (BMC Pediatr 2008;8:54)
        assertThat(advice("sdr", "age").says().en()).contains("3 to 9", "between three and 10", "2½");
        assertThat(advice("sdr", "age").source()).contains("Summers", "NHS England", "BMC Pediatr 2008;8:54");
    }

    /** NICE CG145, research recommendation: for and against. */
    @Test
    void nerveRootSurgeryNamesWhatSpeaksForAndAgainst() {
        assertThat(advice("sdr", "speaks-for").says().en())
                .contains("spasticity alone", "strength", "selective control", "shortening", "not overweight");
        assertThat(advice("sdr", "speaks-against").says().en()).contains("dystonia", "scoliosis", "hip dislocation");
    }

    /** NICE IPG373 (2010): what families must be told. */
    @Test
    void nerveRootSurgeryNamesWhatFamiliesMustBeTold() {
        assertThat(advice("sdr", "must-be-told").says().en())
                .contains("cannot be undone", "Walking", "bladder", "spine", "aftercare", "more surgery");
        assertThat(advice("sdr", "must-be-told").source()).contains("IPG373");
    }

    /** US prescribing information, pediatric use: safety under 4 years not established; no upper age. */
    @Test
    void thePumpIsAdvisedAgainstYoungAgeOnly() {
        assertThat(advice("itb", "age").ages()).contains(new Ages(4, Optional.empty(), "operation"));
        // no source gives GMFCS levels for the pump, so none are told
        assertThat(paths.find("itb").orElseThrow().advice())
                .allSatisfy(advice -> assertThat(advice.levels()).isEmpty());
    }

    /** US prescribing information, screening: no response to 100 micrograms is no candidate. */
    @Test
    void thePumpNeedsATrialThatWorked() {
        assertThat(advice("itb", "trial-needed").says().en()).contains("100 mcg");
        var itb = paths.find("itb").orElseThrow().stages().stream()
                .map(Template.Stage::id)
                .toList();
        assertThat(itb.indexOf("test-dose")).isBetween(0, itb.indexOf("operation") - 1);
    }

    /** US boxed warning and WHO Drug Information 16(2) 2002: refills on time, alarms, early signs, those who cannot tell. */
    @Test
    void thePumpNamesTheFourPartsOfTheBoxedWarning() {
        assertThat(advice("itb", "must-be-told").says().en())
                .contains("sudden stop", "Refill visits", "alarms", "early signs", "cannot say");
    }

    /**
     * US prescribing information, screening: 50, then 75, then 100 micrograms, each at least 24 hours after the one
     * before, and 8 hours of watch after each. Two further doses do not fit in a stage of a single day.
     */
    @Test
    void theTrialLeavesRoomForThreeDosesADayApart() {
        var whole = Duration.ofHours(24 + 24 + 8);
        var stage = stage("itb", "test-dose");
        var days = LocalDate.EPOCH.plus(stage.timing().lasts().usual()).toEpochDay() + 1;
        assertThat(Duration.ofDays(days)).isGreaterThanOrEqualTo(whole);
    }

    /** National (Scotland) guidance for professionals: up to 3 weeks in hospital with daily physiotherapy for walkers. */
    @Test
    void theHospitalStayAfterNerveRootSurgeryIsAtMostThreeWeeks() {
        var stage = stage("sdr", "hospital");
        var leaves = LocalDate.EPOCH
                .plus(stage.timing().begins().get(0).usual().orElseThrow())
                .plus(stage.timing().lasts().usual());
        assertThat(leaves).isBeforeOrEqualTo(LocalDate.EPOCH.plusWeeks(3));
        assertThat(stage.timing().begins().get(0).stage()).contains("operation");
    }

    /** A UK children's service page: reviews at 3, 6, 12 (and 24) months, counted from surgery and never chained. */
    @ParameterizedTest
    @CsvSource({"three-month-review, P3M", "six-month-review, P6M", "twelve-month-review, P1Y"})
    void reviewsAfterNerveRootSurgeryCountFromSurgery(String id, String gap) {
        var begins = stage("sdr", id).timing().begins().get(0);
        assertThat(begins.stage()).contains("operation");
        assertThat(begins.usual()).contains(Period.parse(gap));
    }

    /** National (Scotland) guidance, in weeks: rules end after 4 to 6; pool from 2 to 3; swimming from 4; sports after 6. */
    @ParameterizedTest
    @CsvSource({
        "passive-hip-flexion-past-90, 4, 6",
        "passive-trunk-twist, 4, 6",
        "passive-trunk-side-bend, 4, 6",
        "hamstring-stretch, 4, 6",
        "pool, 2, 3",
        "swimming, 4, 4",
        "riding, 6, 6",
        "contact-sport, 6, 6",
        "electrical-stimulation, 6, 6"
    })
    void careAfterNerveRootSurgeryEndsWithinThePublishedWeeks(String tag, int least, int most) {
        var ends = stage("sdr", "operation").precautions().stream()
                .filter(p -> p.tag().equals(tag))
                .map(p -> LocalDate.EPOCH.plus(p.until().orElseThrow()))
                .toList();
        assertThat(ends)
                .hasSize(1)
                .allSatisfy(end ->
                        assertThat(end).isBetween(LocalDate.EPOCH.plusWeeks(least), LocalDate.EPOCH.plusWeeks(most)));
    }

    /** National (Scotland) guidance: odd or tender feet usually settle in 6 to 8 weeks; splints for all standing. */
    @Test
    void theTextsKeepThePublishedWeeks() {
        var hospital = stage("sdr", "hospital").duties().family().stream()
                .map(task -> task.does().en() + " " + task.does().es())
                .collect(Collectors.joining(" "));
        assertThat(hospital).contains("6 to 8 weeks", "6 a 8 semanas");
        assertThat(stage("sdr", "operation").precautions())
                .anyMatch(p -> p.tag().equals("standing"));
    }

    /** A maker's patient page: pumps commonly last 5 to 7 years; Boster et al. 2016: plan at least 3 months ahead. */
    @Test
    void theTalkAboutANewPumpComesBeforeAPumpCommonlyEnds() {
        var talk = stage("itb", "growing").visits().stream()
                .filter(visit -> visit.id().equals("new-pump-talk"))
                .findFirst()
                .orElseThrow();
        // the stage begins a year after surgery
        var fromSurgery = LocalDate.EPOCH.plusYears(1);
        var until = fromSurgery.plus(talk.after()).plus(talk.within());
        assertThat(fromSurgery.plus(talk.after())).isEqualTo(LocalDate.EPOCH.plusYears(5));
        assertThat(until).isBefore(LocalDate.EPOCH.plusYears(7).minusMonths(3));
    }

    /** Common practice, no source: what no published figure bounds still names that it has none. */
    @Test
    void everyGapThatIsNotPublishedSaysSo() {
        var unnamed = paths.all().stream()
                .flatMap(path -> path.stages().stream())
                .filter(stage -> gaps(stage).stream().anyMatch(gap -> !gap.isZero()))
                .flatMap(stage -> Stream.of(stage.source()))
                .filter(source -> !source.matches(
                        "(?s).*(no source|NICE|guidance|prescribing information|Boster|service page|therapist).*"));
        assertThat(unnamed).isEmpty();
    }
}
