package org.hearthway.content.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hearthway.content.ContentReading;
import org.hearthway.testing.LeanClinic;
import org.junit.jupiter.api.Test;

class HazardKindTests {

    private static final String SOUND = """
            name: {en: Doors, es: Puertas}
            hazards:
              - id: open-door
                hazard: {en: Somebody walks in, es: Alguien entra}
                cause: {en: The door is open, es: La puerta está abierta}
                control: {en: It closes by itself, es: Se cierra sola}
                tests: [DoorTests#closesByItself]
            """;

    private static List<String> mistakes(String yaml) {
        return ContentReading.text(new HazardKind(new LeanClinic.OpenGate()), "hazards/doors.yaml", yaml);
    }

    @Test
    void readsTheShippedHazardsWithoutAMistake() {
        assertThat(ContentReading.shipped(new HazardKind(new LeanClinic.OpenGate())))
                .isEmpty();
    }

    @Test
    void takesASoundOne() {
        assertThat(mistakes(SOUND)).isEmpty();
    }

    @Test
    void refusesAHazardThatNothingProves() {
        assertThat(mistakes(SOUND.replace("    tests: [DoorTests#closesByItself]\n", "")))
                .singleElement()
                .asString()
                .startsWith("content/hazards/doors.yaml:3: \"tests\" is missing");
    }

    @Test
    void refusesWhatIsNoTestsNameAndATestNamedTwice() {
        for (var tests : List.of("DoorTests", "Door#closes", "DoorTests#Closes", "DoorTests.closes")) {
            assertThat(mistakes(SOUND.replace("DoorTests#closesByItself", "\"" + tests + "\"")))
                    .singleElement()
                    .asString()
                    .startsWith("content/hazards/doors.yaml:7: \"tests\" names " + tests);
        }
        assertThat(mistakes(SOUND.replace("[DoorTests#closes", "[DoorTests#closesByItself, DoorTests#closes")))
                .singleElement()
                .asString()
                .contains("names a test twice");
    }

    @Test
    void refusesAnIdentifierThatStandsTwiceAnEmptyFieldAndAMissingLanguage() {
        assertThat(mistakes(SOUND + SOUND.substring(SOUND.indexOf("  - id"))))
                .singleElement()
                .asString()
                .startsWith("content/hazards/doors.yaml:8: \"id\" is open-door");
        assertThat(mistakes("name: {en: Doors, es: Puertas}\n"))
                .singleElement()
                .asString()
                .contains("\"hazards\" is missing or empty");
        assertThat(mistakes(SOUND.replace(", es: Se cierra sola", "")))
                .singleElement()
                .asString()
                .startsWith("content/hazards/doors.yaml:6: \"es\" is missing");
    }
}
