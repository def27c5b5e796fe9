package org.hearthway.figure.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.hearthway.figure.internal.ShippedFigures;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Every shipped picture settles as it did when somebody last looked at it. A change of the engine or of a file that
 * moves a body is looked at on the contact sheet first; {@code -Dhearthway.poses.keep=true} then keeps the new poses.
 */
class KeptPosesTests {

    private static final Path KEPT = Path.of("src/test/resources/figure/poses.csv");
    private static final List<String> POINTS =
            List.of("hip", "c7", "nose", "Rwrist", "Lwrist", "Rknee", "Lknee", "Rtoe", "Ltoe");

    /** Of the body's height: what nobody sees, and more than two processors differ by. */
    private static final double SEEN = .012;

    private static final TreeMap<String, List<Double>> NOW = new TreeMap<>();

    @BeforeAll
    static void settle() throws IOException {
        for (var sheet : ShippedFigures.sheets()) {
            var picture = new Picture(sheet);
            for (int time : new int[] {0, 1}) {
                var places = new ArrayList<Double>();
                var body = picture.scenery().body(time);
                for (var name : POINTS) {
                    var at = body.point(name).orElseThrow();
                    places.addAll(List.of(at.x(), at.y(), at.z()));
                }
                NOW.put(sheet.id() + (time == 0 ? " start" : " end"), places);
            }
        }
        if (Boolean.getBoolean("hearthway.poses.keep")) {
            keep();
        }
    }

    private static void keep() throws IOException {
        var lines = new ArrayList<>(List.of("# picture and position, then x y z in body heights of " + POINTS));
        NOW.forEach((name, places) -> lines.add(name + ","
                + String.join(
                        ",",
                        places.stream()
                                .map(place -> String.format(Locale.ROOT, "%.3f", place))
                                .toList())));
        Files.createDirectories(KEPT.getParent());
        Files.write(KEPT, lines);
    }

    private static TreeMap<String, List<Double>> kept() throws IOException {
        var kept = new TreeMap<String, List<Double>>();
        for (var line : Files.readAllLines(KEPT)) {
            if (!line.startsWith("#")) {
                var cells = List.of(line.split(","));
                kept.put(
                        cells.get(0),
                        cells.subList(1, cells.size()).stream()
                                .map(Double::valueOf)
                                .toList());
            }
        }
        return kept;
    }

    @Test
    void everyPictureIsKept() throws IOException {
        assertThat(kept().keySet()).isEqualTo(NOW.keySet());
    }

    @Test
    void everyPictureSettlesAsItWasLookedAt() throws IOException {
        var kept = kept();
        NOW.forEach((name, places) -> {
            var was = kept.getOrDefault(name, places);
            for (int i = 0; i < places.size(); i++) {
                assertThat(Math.abs(places.get(i) - was.get(i)))
                        .as("%s: %s moved", name, POINTS.get(i / 3))
                        .isLessThan(SEEN);
            }
        });
    }
}
