package org.hearthway.figure.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.hearthway.figure.engine.Norms.Beyond;
import org.hearthway.figure.engine.Norms.Years;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Angles beside the norms of the child's age. */
class NormsTests {

    private static Pose pose(Joint joint, double angle) {
        return Pose.of(Posture.STANDING).with(Pose.index(Side.RIGHT, joint), angle);
    }

    // CDC study (Soucie 2011), of girls and boys the smaller: hip, knee and dorsiflexion at 2 to 8 read in an indexed
    // copy, the rest from memory; AAOS for adults and hip abduction, from memory, and for the wrist, read
    @ParameterizedTest
    @CsvSource({
        "HIP,6,131.1",
        "HIP,12,134.9",
        "HIP,20,120",
        "HIP,6,-26.2",
        "HIP,12,-18.2",
        "KNEE,6,147.8",
        "KNEE,12,142.2",
        "KNEE,6,-1.6",
        "ANKLE,6,22.8",
        "ANKLE,12,16.3",
        "ANKLE,12,-52.8",
        "SHOULDER,12,170.9",
        "ELBOW,6,151.4",
        "PRON,12,79.8",
        "HIP_ABD,6,45",
        "HIP_ABD,12,-30",
        "WRIST,6,70",
    })
    void tellsAnAngleADegreeBeyondTheNormAndNoneWithin(Joint joint, double age, double norm) {
        assertThat(Norms.beyond(pose(joint, norm), age)).isEmpty();
        assertThat(Norms.beyond(pose(joint, norm + Math.signum(norm)), age))
                .singleElement()
                .satisfies(beyond -> {
                    assertThat(beyond.side()).isEqualTo(Side.RIGHT);
                    assertThat(beyond.joint()).isEqualTo(joint);
                    assertThat(beyond.more()).isEqualTo(norm > 0);
                    assertThat(beyond.norm()).isEqualTo(Math.abs(norm));
                });
    }

    @ParameterizedTest
    @CsvSource({"2,TWO_TO_EIGHT", "8.9,TWO_TO_EIGHT", "9,NINE_TO_NINETEEN", "19,NINE_TO_NINETEEN", "20,GROWN"})
    void takesTheNormOfTheAge(double age, Years years) {
        assertThat(Norms.beyond(pose(Joint.HIP, 139), age))
                .extracting(Beyond::years)
                .containsExactly(years);
    }

    /** What cannot be drawn at all is refused, not warned of; the engine's bound for a flexed hip is 140. */
    @Test
    void lieWithinWhatCanBeDrawn() {
        for (var joint : Joint.values()) {
            for (double age : new double[] {6, 12, 20}) {
                assertThat(Norms.beyond(pose(joint, joint.max()), age))
                        .allSatisfy(beyond -> assertThat(beyond.norm()).isLessThanOrEqualTo(joint.max()));
            }
        }
    }
}
