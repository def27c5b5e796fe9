package org.hearthway.figure.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Clinical angles mean what clinicians mean by them. Neutral: upright, facing right, arms down, thumbs forward. */
class BodyTests {

    private static Body body(Object... angles) {
        var pose = Pose.of(Posture.STANDING);
        for (int i = 0; i < angles.length; i += 2) {
            pose = pose.with(Pose.index(Side.RIGHT, (Joint) angles[i]), ((Number) angles[i + 1]).doubleValue());
        }
        return new Body(pose, Proportions.at(6));
    }

    @Test
    void flexedHipPointsTheThighForward() {
        var leg = body(Joint.HIP, 90).leg(Side.RIGHT);
        assertThat(leg.knee().x() - leg.hip().x()).isCloseTo(.232, within(1e-9));
        assertThat(leg.knee().y()).isCloseTo(leg.hip().y(), within(1e-9));
    }

    @Test
    void flexedKneePutsTheHeelBehind() {
        var leg = body(Joint.KNEE, 90).leg(Side.RIGHT);
        assertThat(leg.ankle().x() - leg.knee().x()).isCloseTo(-.233, within(1e-9));
    }

    @Test
    void abductedHipPutsTheRightFootToTheRight() {
        var leg = body(Joint.HIP_ABD, 30).leg(Side.RIGHT);
        assertThat(leg.ankle().z()).isGreaterThan(leg.hip().z() + .2);
    }

    @Test
    void dorsiflexedAnkleLiftsTheToes() {
        var leg = body(Joint.ANKLE, 20).leg(Side.RIGHT);
        assertThat(leg.ball().y()).isGreaterThan(body().leg(Side.RIGHT).ball().y() + .02);
    }

    @Test
    void externallyRotatedHipTurnsTheFootOut() {
        var leg = body(Joint.HIP_ROT, 45).leg(Side.RIGHT);
        assertThat(leg.ball().z()).isGreaterThan(leg.ankle().z() + .04);
    }

    @Test
    void flexedShoulderRaisesTheArmInFrontAndThenOverhead() {
        var front = body(Joint.SHOULDER, 90).arm(Side.RIGHT);
        assertThat(front.wrist().x() - front.shoulder().x()).isCloseTo(.178 + .139, within(1e-9));
        assertThat(body(Joint.SHOULDER, 180).arm(Side.RIGHT).wrist().y())
                .isGreaterThan(body().head.y());
    }

    @Test
    void pronatedForearmTurnsThePalmDownWhenTheElbowIsBent() {
        var arm = body(Joint.ELBOW, 90, Joint.PRON, 90).arm(Side.RIGHT);
        assertThat(arm.palmward().y()).isCloseTo(-1, within(1e-9));
    }

    @Test
    void extendedWristBendsTheHandAwayFromThePalm() {
        var arm = body(Joint.WRIST, 60).arm(Side.RIGHT);
        assertThat(arm.knuckle().z()).isGreaterThan(arm.wrist().z() + .02);
    }

    /** The clinical check of the design: tailor sitting brings the feet to the middle. */
    @Test
    void tailorSittingBringsTheFeetTogether() {
        var leg = body(Joint.HIP, 90, Joint.HIP_ABD, 45, Joint.HIP_ROT, 45, Joint.KNEE, 120)
                .leg(Side.RIGHT);
        assertThat(leg.ankle().z()).isCloseTo(0, within(.06));
        assertThat(leg.knee().z()).isGreaterThan(.15);
    }

    @Test
    void closedHandBringsTheFingertipsToThePalm() {
        var open = body().arm(Side.RIGHT);
        var closed = body(Joint.FINGERS, 90, Joint.THUMB, 65).arm(Side.RIGHT);
        assertThat(closed.tip().minus(closed.wrist()).length())
                .isLessThan(open.tip().minus(open.wrist()).length() * .75);
        assertThat(closed.thumbTip().minus(closed.bend()).length()).isLessThan(.04);
    }
}
