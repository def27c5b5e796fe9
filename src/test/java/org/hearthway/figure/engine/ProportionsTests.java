package org.hearthway.figure.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProportionsTests {

    /** Drillis and Contini 1966, as in Winter 2009, figure 4.1. The hand is drawn as published, other ages shortened. */
    @Test
    void areThePublishedOnesOfAnAdult() {
        var adult = Proportions.at(30);
        assertThat(adult.hip()).isEqualTo(.530);
        assertThat(adult.thigh()).isEqualTo(.530 - .285, within(1e-9));
        assertThat(adult.shank()).isEqualTo(.285 - .039, within(1e-9));
        assertThat(adult.ankle()).isEqualTo(.039);
        assertThat(adult.hip() + adult.trunk()).isEqualTo(.818, within(1e-9));
        assertThat(adult.hip() + adult.trunk() + adult.neck()).isEqualTo(.870, within(1e-9));
        assertThat(adult.upperArm()).isEqualTo(.186);
        assertThat(adult.forearm()).isEqualTo(.146);
        assertThat(adult.hand()).isEqualTo(.108);
        assertThat(adult.foot()).isEqualTo(.152);
    }

    /** Sitting height over height falls through childhood: Khadilkar 2019 (the value at 3 to 17 years is .52). */
    @Test
    void haveLegsThatGrowFasterThanTheBody() {
        assertThat(Proportions.at(3).hip()).isLessThan(Proportions.at(6).hip());
        assertThat(Proportions.at(6).hip()).isLessThan(Proportions.at(10).hip());
        assertThat(Proportions.at(15).hip()).isEqualTo(.53 * (1 - .52) / .48, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 3, 4.5, 6, 8, 10, 12.5, 15, 18, 20, 40})
    void addUpToTheWholeHeight(double years) {
        var size = Proportions.at(years);
        assertThat(size.ankle() + size.shank() + size.thigh()).isEqualTo(size.hip(), within(.002));
        assertThat(size.hip() + size.trunk() + size.neck() + size.head()).isEqualTo(1, within(.002));
    }

    /** What drawing and solving rest on: standing, the head's top is at the whole height but for the drawn head's size. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 6, 10, 15})
    void standAsTallAsTheyAre(double years) {
        var size = Proportions.at(years);
        var body = new Body(Pose.of(Posture.STANDING).with(Pose.index(Axis.Y), size.hip()), size);
        assertThat(body.head.y() + .5 * body.unit()).isEqualTo(1, within(.03));
        assertThat(body.leg(Side.RIGHT).heel().y() - .0195).isEqualTo(0, within(.002));
    }
}
