package org.hearthway.choosing.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.base.Language;
import org.hearthway.choosing.engine.Criterion;
import org.hearthway.choosing.engine.Guide;
import org.hearthway.choosing.engine.Known;
import org.hearthway.choosing.engine.Mark;
import org.hearthway.choosing.engine.Truth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the trade holds, fact by fact, against the shipped guides; each row says where it comes from. */
class TradeFactsTests {

    private final ChoosingKind content = Shipped.content();

    private static Map<String, Set<String>> answers(String facts) {
        return facts == null
                ? Map.of()
                : Arrays.stream(facts.split(" "))
                        .map(each -> each.split("="))
                        .collect(Collectors.toMap(each -> each[0], each -> Set.of(each[1])));
    }

    private static List<Mark> marks(String marks) {
        return marks == null
                ? List.of()
                : Arrays.stream(marks.split(" ")).map(Mark::valueOf).toList();
    }

    @ParameterizedTest(name = "{0} {1} at {2}, {3}: {4} ({5})")
    @CsvSource({
        "sdr, age-practice, 2,  , TALK, about 3 to 12 suit best: common practice",
        "sdr, age-practice, 3,  , FOR, common practice",
        "sdr, age-practice, 12, , FOR, common practice",
        "sdr, age-practice, 13, , TALK, common practice",
        "sdr, age-nine, 2,  , TALK, 3 to 9 years: NICE CG145 and Summers 2019 (SDR-02 and SDR-05)",
        "sdr, age-nine, 9,  , FOR, SDR-02",
        "sdr, age-nine, 10, , TALK, SDR-02",
        "sdr, age-ten, 10,  , FOR, between three and 10: NHS England 2014 (SDR-05)",
        "sdr, age-ten, 11,  , TALK, SDR-05",
        "sdr, age-series, 2, , TALK, a series from 2.5 years: BMC Pediatr 2008;8:54 (SDR-07)",
        "sdr, limbs, 5, limbs=legs, FOR, legs more than arms: common practice",
        "sdr, limbs, 5, limbs=arms, AGAINST, common practice",
        "sdr, walking, 5, walking=walker, FOR, walks at least with a device: common practice",
        "sdr, walking, 5, walking=crutches, FOR, common practice",
        "sdr, walking, 5, walking=without, FOR, common practice",
        "sdr, walking, 5, walking=none, AGAINST, not able to walk: common practice",
        "sdr, level, 5, gmfcs=2, FOR, GMFCS II or III: NICE CG145 (SDR-01)",
        "sdr, level, 5, gmfcs=3, FOR, SDR-01",
        "sdr, level, 5, gmfcs=1, TALK, SDR-01: others ask the team",
        "sdr, level, 5, gmfcs=5, TALK, SDR-01 and SDR-08",
        "sdr, work, 5, motivation=ready, FOR, common practice",
        "sdr, work, 5, motivation=not-yet, AGAINST, common practice",
        "sdr, work-age, 3, , TALK, ready from about 3 or 4 years: common practice",
        "sdr, work-age, 4, , , common practice",
        "sdr, school, 8, , FOR, before the middle of grade school: common practice",
        "sdr, school, 9, , TALK, common practice",
        "sdr, tone, 5, tone=spastic, FOR, pure spasticity: NICE CG145 (SDR-02)",
        "sdr, tone, 5, tone=dystonic, AGAINST, mainly dystonia: NICE CG145 (SDR-02)",
        "sdr, hips, 5, hips=dislocated, AGAINST, hip dislocation: NICE CG145 (SDR-02)",
        "sdr, spine, 5, spine=severe, AGAINST, severe scoliosis: NICE CG145 (SDR-02)",
        "itb, walking, 5, walking=none, FOR, not able to walk: a pump more likely; common practice",
        "itb, secondary, 9, tone=dystonic cause=birth, FOR, secondary dystonia: pump more often; common practice",
        "itb, secondary, 9, tone=dystonic cause=genetic, , common practice",
        "itb, age, 3, , TALK, under 4 years not established: US label (ITB-08)",
        "itb, age, 4, , , ITB-08",
        "dbs, cause, 9, cause=genetic, FOR, primary dystonia works best: common practice",
        "dbs, cause, 9, cause=birth, TALK, secondary is less certain: common practice",
        "dbs, imaging, 9, imaging=normal, FOR, common practice",
        "dbs, imaging, 9, imaging=deep-grey, TALK, common practice",
        "dbs, birth, 9, birth=usual, FOR, common practice",
        "dbs, onset, 9, onset=late, FOR, well until about 7 or 8: common practice",
        "dbs, age, 7, , FOR, from about 7 years: common practice (DBS-01)",
        "dbs, age, 6, , TALK, DBS-01",
        "dbs, age-younger, 6, , TALK, younger children are treated too: Kaminska 2017 (DBS-02)",
        "dbs, age-younger, 7, , , DBS-02",
    })
    void meansWhatTheTradeHolds(String path, String criterion, int years, String facts, String marks, String source) {
        assertThat(source).isNotBlank();
        assertThat(Shipped.marks(Shipped.guide(content, path), criterion, years, answers(facts)))
                .containsExactlyElementsOf(marks(marks));
    }

    @Test
    void bothPublishedAgesStandBesideThePracticeEachWithItsSource() {
        var ages = Shipped.guide(content, "sdr").criteria().stream()
                .filter(criterion ->
                        Set.of("age-practice", "age-nine", "age-ten").contains(criterion.id()))
                .map(Criterion::source)
                .toList();
        assertThat(ages)
                .containsExactly(
                        "common practice, no source",
                        "NICE CG145, research recommendation; Summers et al., Lancet Child Adolesc Health 2019",
                        "NHS England, July 2014");
    }

    /** Common practice: one device level, and beside it that some do not change; not at GMFCS IV and V. */
    @Test
    void aStepOnTheLadderIsToldAtLevelsOneToThreeAlone() {
        var change = Shipped.guide(content, "sdr").change();
        for (var level : List.of("1", "2", "3")) {
            assertThat(change.shown().in(new Known(Map.of("gmfcs", Set.of(level)), 5)))
                    .isEqualTo(Truth.YES);
        }
        for (var level : List.of("4", "5")) {
            assertThat(change.shown().in(new Known(Map.of("gmfcs", Set.of(level)), 5)))
                    .isEqualTo(Truth.NO);
        }
        assertThat(change.shown().in(new Known(Map.of(), 5))).isEqualTo(Truth.UNKNOWN);
        assertThat(change.says().says().en()).contains("walker → canes or crutches → orthoses only → without");
        assertThat(change.beside().says().en()).isEqualTo("Some do not change, a few lose ability.");
    }

    /** In words alone: a number that a dose could be converted with stands nowhere. */
    @Test
    void theStrengthOfTheDrugInTheSpineIsToldInWordsAndConvertsNothing() {
        var points = Shipped.guide(content, "itb").points().stream()
                .map(Guide.Point::says)
                .toList();
        assertThat(points).anySatisfy(says -> {
            assertThat(says.en()).contains("about a thousand times more potent", "never convert");
            assertThat(says.es()).contains("unas mil veces más potente", "nunca se convierten");
        });
        assertThat(points).allSatisfy(says -> {
            for (var language : Language.values()) {
                assertThat(says.in(language)).doesNotContainPattern("\\d|mcg|mg");
            }
        });
    }

    /** A missing fact is never a no: with nothing known nothing but an age speaks, and nothing speaks against. */
    @Test
    void withNothingKnownNothingSpeaksAgainstAnyPath() {
        content.guides()
                .forEach(read -> assertThat(read.guide().read(new Known(Map.of(), 5)))
                        .isNotEmpty()
                        .noneMatch(line -> line.mark() == Mark.AGAINST)
                        .allMatch(line -> line.mark() == Mark.MISSING
                                || line.holds().orElseThrow().when().readsAge()));
    }

    @Test
    void withoutTheImagingTheLinesAboutItAloneBecomeUnknown() {
        var all = Map.<String, Set<String>>of(
                "tone", Set.of("dystonic"),
                "cause", Set.of("genetic"),
                "birth", Set.of("usual"),
                "onset", Set.of("late"),
                "imaging", Set.of("normal"));
        var less = new java.util.HashMap<>(all);
        less.remove("imaging");
        for (var read : content.guides()) {
            var before = read.guide().read(new Known(all, 9));
            var after = read.guide().read(new Known(less, 9));
            assertThat(after)
                    .filteredOn(line -> !line.criterion().equals("imaging"))
                    .containsExactlyElementsOf(before.stream()
                            .filter(line -> !line.criterion().equals("imaging"))
                            .toList());
            assertThat(after)
                    .filteredOn(line -> line.criterion().equals("imaging"))
                    .allMatch(line -> line.missing().equals(Set.of("imaging")));
        }
        assertThat(Shipped.marks(Shipped.guide(content, "dbs"), "imaging", 9, all))
                .containsExactly(Mark.FOR);
        assertThat(Shipped.marks(Shipped.guide(content, "dbs"), "imaging", 9, less))
                .containsExactly(Mark.MISSING);
    }
}
