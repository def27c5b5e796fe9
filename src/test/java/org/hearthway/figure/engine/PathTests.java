package org.hearthway.figure.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class PathTests {

    @Test
    void ofADiscReachesItsRadiusOnEverySide() {
        var disc = Path.hull(List.of(new Blob(new Point(50, 20), 100, 0, 100)));
        assertThat(disc.left()).isCloseTo(40, within(.1));
        assertThat(disc.right()).isCloseTo(60, within(.1));
        assertThat(disc.top()).isCloseTo(10, within(.1));
        assertThat(disc.bottom()).isCloseTo(30, within(.1));
    }

    @Test
    void hasTheSameCommandsWhateverTheBodiesSoThatPosesCanGoOver() {
        var one = Path.hull(List.of(new Blob(new Point(0, 0), 100, 0, 100)));
        var two = Path.hull(List.of(new Blob(new Point(0, 0), 4, 1, 9), new Blob(new Point(80, -30), 400, 0, 25)));
        assertThat(one.data().replaceAll("[-. \\d]", "")).isEqualTo(two.data().replaceAll("[-. \\d]", ""));
    }

    @Test
    void writesTenthsWithoutLettingRoundingAddUp() {
        var points = List.of(new Point(0.04, 0), new Point(0.08, 0), new Point(0.12, 0), new Point(0.16, -1.25));
        assertThat(Path.polyline(points).data()).isEqualTo("M0 0l.1 0 0 0 .1-1.2");
    }

    @Test
    void ofAnEllipsoidIsItsShadow() {
        var lump = new Lump(Vec.ZERO, Frame.UPRIGHT, .1, .2, .05);
        var shadow = Path.hull(List.of(new View(0, 0).page(lump)));
        assertThat(shadow.right()).isCloseTo(40, within(1e-6));
        assertThat(shadow.bottom()).isCloseTo(80, within(1e-6));
        var front = Path.hull(List.of(new View(90, 0).page(lump)));
        assertThat(front.right()).isCloseTo(20, within(1e-6));
    }
}
