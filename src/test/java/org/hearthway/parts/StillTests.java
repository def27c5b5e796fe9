package org.hearthway.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StillTests {

    @Test
    void tellsItsShapeBeforeItComesSoThatThePageDoesNotJump() {
        var still = Still.of("figure/0/bridge.svg", 2.5, Still.Pose.END, "lying");
        assertThat(still.getStyle().get("--ratio")).isEqualTo("2.5");
        assertThat(still.getElement().getAttribute("alt")).isEqualTo("lying");
        assertThat(still.getClassNames()).contains("end");
    }
}
