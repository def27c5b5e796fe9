package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hearthway.content.ContentReading;
import org.hearthway.figure.Figures;
import org.hearthway.figure.internal.ShippedFigures;
import org.hearthway.program.Exercise;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a library of exercises is refused for. */
class ExerciseCheckTests {

    private static final Figures FIGURES = ShippedFigures.all();

    private final PrecautionTags tags = new PrecautionTags();
    private final MuscleGroups groups = new MuscleGroups();
    private final HomeThings things = new HomeThings();
    private final PaceSetting pace = new PaceSetting();
    private final ExerciseKind library = new ExerciseKind(tags, groups, things, pace, FIGURES);

    @BeforeEach
    void readWhatExercisesReferTo() {
        for (var kind : List.of(tags, groups, things, pace)) {
            assertThat(ContentReading.shipped(kind)).isEmpty();
        }
        assertThat(ContentReading.shipped(library)).isEmpty();
    }

    private static String shipped(String id) throws IOException {
        return Files.readString(Path.of("content/exercises", id + ".yaml"));
    }

    private static String changed(String text, String from, String to) {
        assertThat(text).contains(from);
        return text.replace(from, to);
    }

    /** The whole library again with one file in other words. */
    private List<String> mistakes(String id, String text) {
        return ContentReading.text(library, "exercises/" + id + ".yaml", text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bridge | muscle-groups: [buttocks | muscle-groups: [bum | \"bum\" is not in content/muscles.yaml",
                "bridge | muscle-groups: [buttocks, hamstrings] | muscle-groups: [] | \"muscle-groups\" names nothing",
                "bridge | [buttocks, hamstrings] | [buttocks, buttocks] | \"muscle-groups\" names one twice",
                "bridge | equipment: [mat] | equipment: [matt] | \"matt\" is not in content/home-things.yaml",
                "bridge | equipment: [mat] | # | \"equipment\" is missing",
                "bridge | joints: [hip, knee] | joints: [hip, nose] | \"joints\" is nose",
                "bridge | joints: [hip, knee] | joints: [] | \"joints\" names nothing",
                "bridge | positions: [back] | positions: [] | \"positions\" names nothing",
                "bridge | positions: [back] | positions: [flat] | \"positions\" is flat",
                "bridge | helper: none | helper: no | \"helper\" is no",
                "bridge | levels: [1, 2, 3, 4] | levels: [1, 6] | \"levels\" has 6",
                "bridge | levels: [1, 2, 3, 4] | levels: [1, 1] | \"levels\" has 1",
                "bridge | levels: [1, 2, 3, 4] | levels: [] | \"levels\" names nothing",
                "bridge | phase: strength | phase: after | \"phase\" is after",
                "bridge | dose: {sets: 2 | dose: {sets: 3 | \"dose\" has 3 for sets, expected 1-2",
                "bridge | repetitions: 8, | minutes: 8, | differ in kind",
                "bridge | ages: 7-18 | ages: 8-18 | the year after the block above ends, 7",
                "bridge | ages: 7-18 | ages: 18-7 | \"ages\" is 18-7",
                "bridge | ages: 2-6, |  | \"ages\" is missing",
                "bridge | sets: 1-3 | sets: 1-30 | \"sets\" is 1-30, expected a number or a range such as 2-5, within 1 to 10",
                "bridge | days: 2-4 | days: 2-5 | more than 4 days a week",
                "bridge | , days: 2-4 |  | \"days\" is missing",
                "walker-walk | minutes: 5-30, |  | repetitions and minutes, or neither",
                "hamstring-helper | helper: hands | helper: near | a passive movement has no helper",
                "hamstring-helper | , forced-passive-range |  | carries no passive tag",
                "sit-to-stand | tags: [standing] | tags: [] | ask for the tag \"standing\"",
                "walker-walk | tags: [standing] | tags: [] | ask for the tag \"standing\"",
                "prone-elbows | tags: [prone-on-pump] | tags: [] | ask for the tag \"prone-on-pump\"",
                "long-sit-reach | [long-sitting, | [ | ask for the tag \"long-sitting\"",
                "hamstring-chair | [hamstring-stretch, | [ | asks for the tag \"hamstring-stretch\"",
                "butterfly | tags: [hip-forced-abduction] | tags: [] | asks for the tag \"hip-forced-abduction\"",
                "bridge | Hold. Keep breathing. | Maintain respiratory regularity during isometric contraction of the gluteal musculature, continuously and deliberately, notwithstanding considerable accumulating fatigue. | the English text reads at grade",
                "bridge | Mantener. Seguir respirando. | Mantener la respiración diafragmática coordinadamente durante la contracción isométrica prolongada de la musculatura glútea, procurando constantemente una adecuada estabilización lumbopélvica durante aproximadamente el tiempo correspondiente indicado previamente por el fisioterapeuta responsable del tratamiento domiciliario. | the Spanish text has a reading ease",
                "bridge | figure: bridge | figure: brigde | there is no picture brigde",
                "bridge | harder: bridge-march | harder: bridge | \"harder\" is bridge",
                "bridge | harder: bridge-march | harder: toe-lift-sit | \"harder\" is toe-lift-sit, which leads to nothing easier",
                "tall-kneel | easier: bridge | easier: heel-raise-single | \"easier\" is heel-raise-single, which leads to nothing harder",
                "bridge | en: \"Bridge\" | en: \"clam\" | is the name of",
                "bridge | es: \"Puente\" | es: \"Almeja\" | is the name of",
            })
    void refusesTheFileThatIsWrong(String id, String from, String to, String says) throws IOException {
        assertThat(mistakes(id, changed(shipped(id), from, to == null ? "" : to)))
                .anySatisfy(line -> assertThat(line).contains(says));
    }

    /** Sit-to-stand is easier than the squat, and the squat than the step: turned round, the way leads in a circle. */
    @Test
    void refusesLinksThatLeadRoundInACircle() throws IOException {
        var text = changed(shipped("sit-to-stand"), "easier: bridge", "easier: step-up");
        assertThat(mistakes("sit-to-stand", text))
                .anySatisfy(line ->
                        assertThat(line).contains("sit-to-stand.yaml", "by its links it is harder than itself"));
    }

    @Test
    void namesMuscleGroupsAndThingsInBothLanguages() {
        var bridge = library.find("bridge").orElseThrow();
        assertThat(bridge.muscles().en()).isEqualTo("bottom, back of the thigh");
        assertThat(bridge.muscles().es()).isEqualTo("glúteos, parte de atrás del muslo");
        assertThat(bridge.traits().things())
                .extracting(thing -> thing.name().es())
                .containsExactly("colchoneta o alfombra");
    }

    /** Faigenbaum 2009 speaks of youth from about seven years on (EX-05, from memory). */
    @ParameterizedTest
    @CsvSource({"0,2-6", "2,2-6", "6,2-6", "7,7-18", "18,7-18", "20,7-18"})
    void findsTheUsualDoseForAnAge(int years, String ages) {
        assertThat(library.find("bridge").orElseThrow().usualFor(years).ages()).hasToString(ages);
    }

    @Test
    void aGrownUpsHandsAreNeededByHandsAndByTwoAlone() throws IOException {
        assertThat(List.of("none", "near", "hands", "two"))
                .map(help -> changed(shipped("clam"), "helper: none", "helper: " + help))
                .map(text -> {
                    assertThat(mistakes("clam", text)).isEmpty();
                    return library.find("clam").map(Exercise::helper).orElseThrow();
                })
                .containsExactly(false, false, true, true);
    }
}
