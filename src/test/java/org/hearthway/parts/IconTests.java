package org.hearthway.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class IconTests {

    @ParameterizedTest
    @EnumSource(Icon.class)
    void everyIconHasAShape(Icon icon) {
        assertThat(icon.draw().getElement().getProperty("innerHTML"))
                .contains("<svg")
                .contains("class=\"hw-icon");
    }
}
