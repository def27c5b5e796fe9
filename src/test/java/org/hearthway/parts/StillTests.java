package org.hearthway.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One pose out of a picture with two. */
class StillTests {

    static Stream<Path> pictures() throws IOException {
        try (var files = Files.list(Path.of("frontend/figure/stills"))) {
            return files.filter(file -> file.toString().endsWith(".svg")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void liesWithinEveryPictureWeShip(Path picture) throws IOException {
        var frames = Still.Frames.of(Files.readString(picture));
        assertThat(frames.second()).isBetween(frames.width() * 0.45, frames.width() * 0.65);
        assertThat(frames.ratio()).isBetween(0.4, 3.0);
    }

    @Test
    void cutsOffTheRowOfMarksBecauseThePageSaysSideAndSecondsItself() {
        var frames = Still.Frames.of("<svg viewBox=\"-10 -100 300 200\"><g transform=\"translate(160 0)\"/>"
                + "<g transform=\"translate(-4 -96)\"/></svg>");
        assertThat(frames.view(Still.Pose.END)).isEqualTo("#svgView(viewBox(150,-66,140,166))");
        assertThat(frames.view(Still.Pose.START)).isEqualTo("#svgView(viewBox(-10,-66,140,166))");
    }

    @Test
    void keepsTheWholeHeightWhereThereAreNoMarks() {
        var frames = Still.Frames.of("<svg viewBox=\"-10 -100 300 200\"><g transform=\"translate(160 0)\"/></svg>");
        assertThat(frames.view(Still.Pose.END)).isEqualTo("#svgView(viewBox(150,-100,140,200))");
    }
}
