package org.hearthway.figure.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hearthway.content.ContentReading;
import org.hearthway.figure.engine.Joint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The strict reader of pose files. */
class FigureKindTests {

    private static final String STANDING = """
            id: made-up
            title: {en: "Made up", es: "Inventada"}
            kind: function
            view: side
            side: both
            start:
              posture: standing
              R: {%s}
              contact: [feet on floor]
            end:
              both: {shoulder: 60}
            """;

    private static List<String> mistakes(String yaml) {
        return ContentReading.text(new FigureKind(), "figures/made-up.yaml", yaml);
    }

    private static String changed(String from, String to) throws IOException {
        var text = Files.readString(Path.of("content/figures/hamstring-helper.yaml"));
        assertThat(text).contains(from);
        return text.replace(from, to).replace("id: hamstring-helper", "id: made-up");
    }

    @Test
    void readsEveryShippedFileInBothLanguages() {
        assertThat(ContentReading.shipped(new FigureKind())).isEmpty();
        assertThat(ShippedFigures.sheets())
                .hasSizeGreaterThanOrEqualTo(29)
                .allSatisfy(sheet -> assertThat(sheet.title().es())
                        .isNotEqualTo(sheet.title().en()));
    }

    static Stream<Arguments> pushedTooFar() {
        return Stream.of(Joint.values())
                .flatMap(
                        joint -> Stream.of(Arguments.of(joint, joint.max() + 1), Arguments.of(joint, joint.min() - 1)));
    }

    @ParameterizedTest
    @MethodSource("pushedTooFar")
    void refusesAJointOneDegreePastItsRangeByFileLineAndJoint(Joint joint, double angle) {
        assertThat(mistakes(STANDING.formatted(joint.key() + ": " + angle)))
                .singleElement()
                .asString()
                .startsWith("content/figures/made-up.yaml:8:")
                .contains("\"" + joint.key() + "\" is " + angle);
    }

    @Test
    void refusesAnUnknownJointByItsLine() {
        assertThat(mistakes(STANDING.formatted("knees: 10")))
                .singleElement()
                .asString()
                .contains("made-up.yaml:8:", "\"knees\" is not known here");
    }

    /** What the author wrote is possible, what the contacts make of it is not: hands cannot reach so far. */
    @Test
    void refusesABodyThatCannotReachWhatItHolds() throws IOException {
        assertThat(mistakes(changed("R hand to child R knee", "'R hand to [4, 4, 0]'")))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).contains("made-up.yaml:16:", "the helper reaches short"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "supports: [mat] | supports: [carpet] | \"carpet\" is no support",
                "hands on mat | hands on table | \"table\" is not in this picture",
                "hands on mat | wings on mat | \"wings\" is no part of the body",
                "of: Rankle | of: Rfin | \"Rfin\" is no point of the body",
                "view: side | view: above | \"view\" is above",
                "side: R | side: L | \"side\" is L",
                "hold: 30 | hold: 0 | \"hold\" is 0",
                "free: [neck] | free: [nose] | \"nose\" is no joint",
                "kind: stretch | kind: dance | \"kind\" is dance",
                "posture: supine | posture: upside-down | \"posture\" is upside-down",
                "facing: left | facing: up | \"facing\" is up",
                "x: 0.62 | x: far | \"x\" is far",
                "kind: stretch | music: loud | \"music\" is not known",
            })
    void refusesWhatItDoesNotKnow(String from, String to, String says) throws IOException {
        assertThat(mistakes(changed(from, to)))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("content/figures/made-up.yaml:")
                        .contains(says));
    }

    /** A chair without armrests has none to hold, stairs have a rail whose height can be said. */
    @Test
    void offersOnlyTheHoldsThatAreThere() throws IOException {
        var chair =
                Files.readString(Path.of("content/figures/chair-push-up.yaml")).replace("chair-push-up", "made-up");
        assertThat(mistakes(chair)).isEmpty();
        assertThat(mistakes(chair.replace(", arms: true", "")))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).containsAnyOf("\"arm.R\" is not", "\"arm.L\" is not"));
        var stairs =
                Files.readString(Path.of("content/figures/stairs-down.yaml")).replace("stairs-down", "made-up");
        assertThat(mistakes(stairs)).isEmpty();
        assertThat(mistakes(stairs.replace("rail-height: 0.64", "rail-height: high")))
                .anySatisfy(line -> assertThat(line).contains("\"rail-height\" is high"));
    }

    @Test
    void drawsAWheelchairShoesAndSplints() {
        var yaml = """
                id: made-up
                title: {en: "Made up", es: "Inventada"}
                kind: strength
                view: {yaw: 24, pitch: 10}
                side: both
                supports: [{wheelchair: {}}]
                look: {shoes: yes, splints: [R]}
                start:
                  posture: sitting
                  both: {hip: 88, knee: 90, shoulder: 20, elbow: 40}
                  contact: [buttocks on seat, feet on floor]
                end:
                  both: {shoulder: 90, elbow: 5}
                """;
        var kind = new FigureKind();
        assertThat(ContentReading.text(kind, "figures/made-up.yaml", yaml)).isEmpty();
        var svg = new org.hearthway.figure.engine.Picture(kind.find("made-up").orElseThrow())
                .end(new org.hearthway.figure.engine.Dress(false, 0), "");
        assertThat(svg).contains("f-shoe", "f-splint", "f-metal-b");
    }
}
