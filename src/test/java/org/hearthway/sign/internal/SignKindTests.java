package org.hearthway.sign.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentReading;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Template;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Sign.Topic;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.words.ReadingLevel;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SignKindTests {

    private static SignKind kind(String... pathways) {
        var plans = mock(Plans.class);
        when(plans.pathways())
                .thenReturn(Stream.of(pathways)
                        .map(id -> new Template(id, 1, Bilingual.same(id), Optional.empty(), List.of(), List.of()))
                        .toList());
        return new SignKind(plans);
    }

    private static SignKind shipped() {
        var kind = kind("sdr", "itb", "dbs", "rehab", "followup");
        assertThat(ContentReading.shipped(kind)).isEmpty();
        return kind;
    }

    static Stream<Named<Sign>> signs() {
        return shipped().all().stream().map(sign -> Named.of(sign.id(), sign));
    }

    @ParameterizedTest
    @MethodSource("signs")
    void readsAtSixthGradeOrLower(Sign sign) {
        assertThat(ReadingLevel.english(sign.says().en()).fleschKincaidGrade()).isLessThanOrEqualTo(6.9);
        assertThat(ReadingLevel.spanish(sign.says().es()).fernandezHuertaEase()).isGreaterThanOrEqualTo(70);
    }

    @ParameterizedTest
    @MethodSource("signs")
    void isHonestThatNobodyHasReviewedYet(Sign sign) {
        assertThat(sign.provenance().english()).isEmpty();
        assertThat(sign.provenance().spanish()).isEmpty();
        assertThat(sign.provenance().source()).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("signs")
    void sharesNoTextWithTheOtherLanguage(Sign sign) {
        assertThat(sign.says().en()).isNotEqualTo(sign.says().es());
    }

    // The least urgency of each sign: a clinic may raise one, nobody lowers one without two people signing for it.
    // Levels are common practice, no source, unless the sign's own source says more.
    @ParameterizedTest
    @CsvSource({
        "hard-to-wake,NOW",
        "trouble-breathing,NOW",
        "long-fit,NOW",
        "head-blow,NOW",
        "life-at-risk,NOW",
        "pump-fever-tight,NOW",
        "pump-mixed-up,NOW",
        "pump-floppy,NOW",
        "pump-beep,URGENT",
        "pump-beep-unwell,NOW",
        "pump-stiff-again,URGENT",
        "pump-itch,URGENT",
        "pump-wound,URGENT",
        "pump-fluid,URGENT",
        "pump-refill-near,HOURS",
        "pump-refill-three-days,URGENT",
        "pump-refill-passed,URGENT",
        "pump-moved,HOURS",
        "pump-moved-refill-soon,URGENT",
        "pump-stiff-neck,NOW",
        "pump-two-signs,NOW",
        "surgery-weaker-legs,NOW",
        "surgery-no-pee,URGENT",
        "surgery-legs-and-bladder,NOW",
        "surgery-fluid,URGENT",
        "surgery-wound,URGENT",
        "surgery-stiff-neck,NOW",
        "surgery-pain,URGENT",
        "surgery-odd-feet,HOURS",
        "stimulator-hard-spells,NOW",
        "stimulator-spells-fever,NOW",
        "stimulator-stopped,URGENT",
        "stimulator-skin,URGENT",
        "stimulator-settings,URGENT",
        "stimulator-charge,URGENT",
        "stimulator-hit,HOURS",
        "stimulator-scan,HOURS",
        "stimulator-stiff-neck,NOW",
        "stimulator-one-side,NOW",
        "stimulator-mood,URGENT",
        "stimulator-self-harm,NOW",
        "hot-leg,URGENT",
        "bent-leg,NOW",
        "pain-seven,URGENT",
        "splint-skin,HOURS",
        "cast-blue-toes,NOW",
        "pain-next-day,HOURS",
        "tired-three-days,HOURS",
        "hip-less,HOURS",
        "toxin-swallow,NOW",
        "baclofen-ran-out,URGENT"
    })
    void isNeverLessUrgentThanAgreed(String id, Urgency least) {
        assertThat(shipped().find(id))
                .hasValueSatisfying(sign -> assertThat(sign.urgency()).isLessThanOrEqualTo(least));
    }

    // US label of intrathecal baclofen, boxed warning: a sudden stop has led to high fever, changed mental state,
    // rebound spasticity and rigid muscles; families are to know early signs, heed alarms and keep refill dates
    @Test
    void saysEveryElementOfTheBoxedWarning() {
        var elements = Map.of(
                "high fever", List.of("pump-fever-tight", "high fever", "fiebre alta"),
                "changed mental state", List.of("pump-mixed-up", "mixed up", "confusión"),
                "rebound spasticity", List.of("pump-stiff-again", "stiff muscles come back", "vuelve la rigidez"),
                "rigid muscles", List.of("pump-fever-tight", "very tight all at once", "muy duros de golpe"),
                "heed alarms", List.of("pump-beep", "any beep", "cualquier pitido"),
                "keep refill dates", List.of("pump-refill-passed", "refill date has passed", "ya pasó la fecha"));
        var kind = shipped();
        elements.forEach((element, where) -> assertThat(kind.find(where.get(0)))
                .as(element)
                .hasValueSatisfying(sign -> {
                    assertThat(sign.says().en()).containsIgnoringCase(where.get(1));
                    assertThat(sign.says().es()).containsIgnoringCase(where.get(2));
                }));
    }

    @Test
    void listsTheMostUrgentFirst() {
        assertThat(shipped().all()).extracting(Sign::urgency).isSorted();
    }

    @Test
    void choosesTopicsByPathway() {
        var kind = shipped();
        assertThat(kind.topics(List.of("sdr")))
                .containsExactlyInAnyOrder(Topic.ANY_CHILD, Topic.MEDICINE, Topic.SURGERY, Topic.REHAB);
        assertThat(kind.topics(List.of("itb")))
                .containsExactlyInAnyOrder(Topic.ANY_CHILD, Topic.MEDICINE, Topic.PUMP, Topic.REHAB);
        assertThat(kind.topics(List.of("dbs")))
                .containsExactlyInAnyOrder(Topic.ANY_CHILD, Topic.MEDICINE, Topic.STIMULATOR, Topic.REHAB);
        assertThat(kind.topics(List.of("rehab")))
                .containsExactlyInAnyOrder(Topic.ANY_CHILD, Topic.MEDICINE, Topic.REHAB);
        assertThat(kind.topics(List.of("followup")))
                .containsExactlyInAnyOrder(Topic.ANY_CHILD, Topic.MEDICINE, Topic.REHAB);
    }

    @Test
    void rulesNoTopicOutWhileNoPathIsKnown() {
        assertThat(shipped().topics(List.of())).isEqualTo(Set.of(Topic.values()));
    }

    private static String file(String en, String es) {
        return """
                topic: pump
                paths: [itb]
                signs:
                  - id: made-up
                    urgency: now
                    says: {en: "%s", es: "%s"}
                    source: a test
                    version: 1
                    reviewed: {en: none, es: none}
                """.formatted(en, es);
    }

    private static List<String> mistakes(String yaml) {
        return ContentReading.text(kind("itb"), "signs/made-up.yaml", yaml);
    }

    @Test
    void takesAPlainSign() {
        assertThat(mistakes(file("The pump beeps.", "La bomba suena."))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Wait and see.", "It beeps. You can wait until Monday.", "Just wait a day."})
    void refusesAnEnglishTextThatSaysToWait(String text) {
        assertThat(mistakes(file(text, "La bomba suena.")))
                .singleElement()
                .asString()
                .startsWith("content/signs/made-up.yaml:6: ")
                .contains("tells a family to wait");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Espere a ver.", "Puede esperar al lunes.", "Aguarde un día."})
    void refusesASpanishTextThatSaysToWait(String text) {
        assertThat(mistakes(file("The pump beeps.", text)))
                .singleElement()
                .asString()
                .contains("tells a family to wait");
    }

    @Test
    void letsATextSayNotToWait() {
        assertThat(mistakes(file("It beeps. Do not wait.", "Suena. No espere.")))
                .isEmpty();
    }

    @Test
    void refusesHardWords() {
        assertThat(mistakes(file(
                        "Deterioration of cardiorespiratory functioning accompanied by hyperthermia necessitates evaluation.",
                        "La bomba suena.")))
                .singleElement()
                .asString()
                .contains("reads at grade", "expected grade 6.9 or lower");
        assertThat(mistakes(file(
                        "The pump beeps.",
                        "Deterioro del funcionamiento cardiorrespiratorio acompañado de hipertermia generalizada.")))
                .singleElement()
                .asString()
                .contains("Spanish text has a reading ease of");
    }

    @Test
    void asksForASignThatCallsForHelpNow() {
        assertThat(mistakes(file("The pump beeps.", "La bomba suena.").replace("urgency: now", "urgency: hours")))
                .singleElement()
                .asString()
                .contains("no sign of this topic calls for help now");
    }

    @Test
    void refusesAPathwayThatIsNotThere() {
        assertThat(mistakes(file("The pump beeps.", "La bomba suena.").replace("[itb]", "[itb, itbb]")))
                .singleElement()
                .asString()
                .contains("there is no pathway itbb");
    }

    @Test
    void refusesToLeaveAPathwayWithoutSigns() {
        var yaml = file("The pump beeps.", "La bomba suena.");
        assertThat(ContentReading.text(kind("itb", "sdr"), "signs/made-up.yaml", yaml))
                .singleElement()
                .asString()
                .contains("no file of signs names the pathway sdr");
    }

    @Test
    void refusesTwoSignsOfOneName() {
        var yaml = file("The pump beeps.", "La bomba suena.");
        assertThat(mistakes(yaml + yaml.substring(yaml.indexOf("  - id"))))
                .singleElement()
                .asString()
                .contains("a sign \"made-up\" stands already");
    }

    @Test
    void refusesATextWithoutSpanish() {
        assertThat(mistakes(file("The pump beeps.", "La bomba suena.").replace(", es: \"La bomba suena.\"}", "}")))
                .anySatisfy(line -> assertThat(line).contains("\"es\" is missing"));
    }
}
