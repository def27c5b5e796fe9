package org.hearthway.path.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LabelsTests {

    private final Labels labels = new Labels(List.of(118.0, 56.0), 1000);

    @Test
    void movesANameToTheNextRowWhenItWouldLieOnAnother() {
        assertThat(labels.row(100, "Getting ready")).hasValue(118);
        assertThat(labels.row(120, "Surgery")).hasValue(56);
        assertThat(labels.row(130, "Hospital")).isEmpty();
        assertThat(labels.row(300, "Six-week check")).hasValue(118);
    }

    @Test
    void keepsANameInThePicture() {
        assertThat(labels.middle(0, "Surgery")).isGreaterThan(20);
        assertThat(labels.middle(1000, "Surgery")).isLessThan(980);
        assertThat(labels.middle(500, "Surgery")).isEqualTo(500);
    }
}
