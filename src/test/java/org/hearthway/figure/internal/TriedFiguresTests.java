package org.hearthway.figure.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentFolder;
import org.hearthway.content.TriedFile.Mistake;
import org.hearthway.figure.FigureTrials;
import org.hearthway.figure.FigureTrials.Trial;
import org.hearthway.figure.engine.Joint;
import org.hearthway.figure.engine.Side;
import org.hearthway.testing.LeanClinic;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What an author types, drawn and kept nowhere. */
class TriedFiguresTests {

    private static final Viewer AUTHOR = new Viewer.Machine("author");
    private static final Path FIGURES = Path.of("content/figures");

    private final FigureKind content = ShippedFigures.read();
    private final LeanClinic.OpenGate gate = new LeanClinic.OpenGate();
    private final ContentFolder folder = mock(ContentFolder.class);
    private final FigureTrials trials = new TriedFigures(content, folder, new FigureWords(new Words()), gate);

    @BeforeEach
    void findFilesInTheirFolder() {
        when(folder.text(any()))
                .thenAnswer(asked -> Optional.of(read(Path.of("content").resolve(asked.<String>getArgument(0)))));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String changed(String figure, String from, String to) {
        var text = read(FIGURES.resolve(figure + ".yaml"));
        assertThat(text).contains(from);
        return text.replace(from, to);
    }

    private Trial tried(String text) {
        return trials.of(AUTHOR, text);
    }

    static Stream<Path> files() throws IOException {
        try (var files = Files.list(FIGURES)) {
            return files.toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyShippedFileIsGoodAndDrawn(Path file) {
        var trial = tried(read(file));
        assertThat(trial.mistakes()).isEmpty();
        assertThat(trial.sides()).isNotEmpty().allSatisfy(side -> {
            assertThat(side.start()).startsWith("<svg");
            assertThat(side.moving()).contains("<animate");
            assertThat(side.words().es()).isNotEqualTo(side.words().en());
        });
    }

    @Test
    void bothSidesAreDrawnWhereASideMattersAndOneElse() {
        assertThat(tried(read(FIGURES.resolve("clam.yaml"))).sides())
                .extracting(FigureTrials.Drawn::side)
                .containsExactly(Optional.of(Side.RIGHT), Optional.of(Side.LEFT));
        assertThat(tried(read(FIGURES.resolve("bridge.yaml"))).sides())
                .extracting(FigureTrials.Drawn::side)
                .containsExactly(Optional.empty());
    }

    @Test
    void aMistakeIsToldByItsLineAndNothingIsDrawn() {
        var trial = tried(changed("bridge", "hip: 52", "hip: 152"));
        assertThat(trial.sides()).isEmpty();
        assertThat(trial.mistakes()).containsExactly(new Mistake(11, "\"hip\" is 152, expected -28 to 140 degrees"));
    }

    @Test
    void aBodyThatDoesNotReachIsDrawnAndToldAtItsEnd() {
        var trial = tried(changed("hamstring-helper", "R hand to child R knee", "'R hand to [4, 4, 0]'"));
        assertThat(trial.sides()).hasSize(2);
        assertThat(trial.mistakes())
                .isNotEmpty()
                .allSatisfy(mistake -> assertThat(mistake.says()).startsWith("the helper reaches short"));
    }

    /** 138 degrees can be drawn; the norm of a child of six is 131.1 (Soucie 2011, boys of 2 to 8, read). */
    @Test
    void anAngleBeyondTheNormIsAWarningAndNoRefusal() {
        var trial = tried(changed("hamstring-helper", "hip: 76", "hip: 138"));
        assertThat(trial.mistakes()).isEmpty();
        assertThat(trial.beyond()).singleElement().satisfies(beyond -> {
            assertThat(beyond.joint()).isEqualTo(Joint.HIP);
            assertThat(beyond.side()).isEqualTo(Side.RIGHT);
            assertThat(Math.round(beyond.degrees())).isEqualTo(138);
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   ",
                "bridge",
                "[1, 2]",
                "id: [",
                "? [a]\n: b",
                "id: &a [*a]",
                "id: bridge\nid: bridge",
                "\u0000",
                "id: x\nstart: !!java.net.URL [\"http://localhost\"]",
                "\t",
            })
    void whateverIsTypedIsAnsweredWithALine(String text) {
        var trial = tried(text);
        assertThat(trial.sides()).isEmpty();
        assertThat(trial.mistakes()).isNotEmpty().allSatisfy(mistake -> {
            assertThat(mistake.line()).isPositive();
            assertThat(mistake.says()).isNotBlank();
        });
    }

    @Test
    void aTextBeyondEveryFileIsRefusedWithItsBound() {
        assertThatThrownBy(() -> tried("x".repeat(FigureTrials.LONGEST + 1)))
                .isInstanceOfSatisfying(
                        Invalid.class,
                        refused -> assertThat(refused.problems().get(0).args())
                                .isEqualTo(List.of(FigureTrials.LONGEST, FigureTrials.LONGEST + 1)));
    }

    @Test
    void noFileOutsideTheFolderIsRead() {
        assertThat(trials.text(AUTHOR, "../pace")).isEmpty();
        assertThat(trials.text(AUTHOR, "bridge"))
                .hasValueSatisfying(text -> assertThat(text).startsWith("id: bridge"));
    }

    @Test
    void whoMayNotTryIsRefused() {
        gate.deny(Action.TRY_PICTURE);
        assertThatThrownBy(() -> trials.names(AUTHOR)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> trials.text(AUTHOR, "bridge")).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> tried("")).isInstanceOf(NotAvailable.class);
    }
}
