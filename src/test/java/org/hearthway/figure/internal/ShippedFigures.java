package org.hearthway.figure.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hearthway.content.ContentReading;
import org.hearthway.figure.Figures;
import org.hearthway.figure.engine.FigureSheet;
import org.hearthway.words.Words;

/** The pictures of the content, for tests of other packages. */
public final class ShippedFigures {

    private ShippedFigures() {}

    /** Read once: settling a hundred pictures takes its time, and nothing changes them. */
    private static final class Once {
        static final FigureKind READ = new FigureKind();

        static {
            assertThat(ContentReading.shipped(READ)).isEmpty();
        }
    }

    static FigureKind read() {
        return Once.READ;
    }

    static DrawnFigures drawn() {
        return new DrawnFigures(read(), new FigureWords(new Words()));
    }

    /** All of them, to be drawn. */
    public static Figures all() {
        return drawn();
    }

    /** All as their authors wrote them, by name. */
    public static List<FigureSheet> sheets() {
        var kind = read();
        try (var files = Files.list(Path.of("content/figures"))) {
            return files.map(file -> file.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .map(id -> kind.find(id).orElseThrow())
                    .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
