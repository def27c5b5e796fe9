package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hearthway.content.ContentBroken;
import org.hearthway.content.ContentFolder;
import org.hearthway.content.ContentKind;
import org.hearthway.content.ContentReading;
import org.hearthway.figure.Figures;
import org.hearthway.figure.internal.ShippedFigures;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.core.env.MapPropertySource;
import org.springframework.util.FileSystemUtils;

class ExerciseKindTests {

    private static final Path CONTENT = Path.of("content");
    private static final List<String> SMALL =
            List.of("precautions.yaml", "pace.yaml", "muscles.yaml", "home-things.yaml");

    /** Leaves the content of other features aside. */
    private static ExerciseLibrary read(Path folder) {
        try (var context = new AnnotationConfigApplicationContext()) {
            context.getEnvironment()
                    .getPropertySources()
                    .addFirst(new MapPropertySource("test", java.util.Map.of("hearthway.content", folder.toString())));
            context.registerBean(Figures.class, ShippedFigures::all);
            context.register(
                    ExerciseKind.class,
                    PrecautionTags.class,
                    MuscleGroups.class,
                    HomeThings.class,
                    PaceSetting.class,
                    ContentFolder.class,
                    contentCheck());
            context.refresh();
            return context.getBean(ExerciseLibrary.class);
        }
    }

    private static Class<?> contentCheck() {
        try {
            return Class.forName(ContentKind.class.getPackageName() + ".ContentCheck");
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    @TempDir
    Path folder;

    private Path copy() throws IOException {
        Files.createDirectories(folder);
        FileSystemUtils.copyRecursively(CONTENT.resolve("exercises"), folder.resolve("exercises"));
        for (var file : SMALL) {
            Files.copy(CONTENT.resolve(file), folder.resolve(file));
        }
        return folder;
    }

    private void change(String exercise, String from, String to) throws IOException {
        var file = folder.resolve("exercises").resolve(exercise + ".yaml");
        var text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    @Test
    void readsTwentyExercisesOrMore() throws IOException {
        assertThat(read(copy()).all())
                .hasSizeGreaterThanOrEqualTo(20)
                .extracting(e -> e.name().en())
                .isSorted();
    }

    static Stream<Exercise> exercises() throws IOException {
        var place = Files.createTempDirectory("content");
        FileSystemUtils.copyRecursively(CONTENT.resolve("exercises"), place.resolve("exercises"));
        for (var file : SMALL) {
            Files.copy(CONTENT.resolve(file), place.resolve(file));
        }
        return read(place).all().stream();
    }

    /** EX-03 and EX-05 of the reference values: 1 to 3 rounds of 6 to 15 (Verschuren 2016, Faigenbaum 2009). */
    @ParameterizedTest
    @MethodSource("exercises")
    void strengthDosesThatNameTheReviewsStayWithinThem(Exercise exercise) {
        if (exercise.provenance().source().startsWith("Verschuren 2016")
                && exercise.usual().holdSeconds() == 0) {
            assertThat(exercise.usual().sets()).isBetween(1, 3);
            assertThat(exercise.usual().repetitions()).isBetween(4, 15);
        }
    }

    /** EX-01 (Paleg 2013): the dose a day in a standing device for spasticity is 30 to 45 minutes, the least of all. */
    @Test
    void standingBeginsWithTheLeastThatTheReviewNames() throws IOException {
        assertThat(read(copy()).find("standing-frame").orElseThrow().usual().minutes())
                .isBetween(30, 45);
    }

    /** SDR-11: the rule after nerve-root surgery is about passive movement; what the child does alone is not locked. */
    @Test
    void onlyAHelpersTwistCarriesThePassiveTag() throws IOException {
        assertThat(read(copy()).all())
                .filteredOn(e -> e.tags().stream().anyMatch(tag -> tag.startsWith("passive-")))
                .isNotEmpty()
                .allMatch(Exercise::helper);
    }

    /** A slip of the pen in a path's tag would leave an exercise open that the path forbids. */
    @Test
    void everyTagThatAPathNamesIsKnown() throws IOException {
        var known = new PrecautionTags();
        assertThat(ContentReading.shipped(known)).isEmpty();
        try (var paths = Files.list(CONTENT.resolve("paths"))) {
            for (var path : paths.toList()) {
                var tags = java.util.regex.Pattern.compile("(?m)^\\s*- tag: (\\S+)$")
                        .matcher(Files.readString(path))
                        .results()
                        .map(found -> found.group(1))
                        .toList();
                assertThat(known.all()).as(path.toString()).containsAll(tags);
            }
        }
    }

    @Test
    void tellsEveryMistakeAtOnceWithFileAndLine() throws IOException {
        copy();
        change("bridge", "harder: bridge-march", "harder: nowhere");
        change("clam", "figure: clam", "figure: drawn-by-nobody");
        change("roll-helper", "tags: [passive-trunk-twist", "tags: [pasive-trunk-twist");
        change("step-up", "sets: 2, repetitions: 6", "sets: 2, repetitions: 600");
        change("tall-kneel", "kind: strength", "kind: power");
        assertThatThrownBy(() -> read(folder))
                .isInstanceOfSatisfying(
                        ContentBroken.class,
                        broken -> assertThat(broken.lines())
                                .hasSize(5)
                                .anySatisfy(line -> assertThat(line)
                                        .matches("content/exercises/bridge.yaml:\\d+: \"harder\" is nowhere, .*"))
                                .anySatisfy(
                                        line -> assertThat(line)
                                                .matches(
                                                        "content/exercises/clam.yaml:\\d+: there is no picture drawn-by-nobody, .*"))
                                .anySatisfy(line -> assertThat(line)
                                        .contains("roll-helper.yaml", "\"pasive-trunk-twist\" is no known precaution"))
                                .anySatisfy(line -> assertThat(line).contains("step-up.yaml", "from 1 to 100"))
                                .anySatisfy(line ->
                                        assertThat(line).contains("tall-kneel.yaml", "one of stretch, strength")));
    }

    @Test
    void aMissingSpanishStepStopsTheStartAtItsLine() throws IOException {
        copy();
        change("bridge", "    es: \"Mantener. Seguir respirando.\"\n", "");
        assertThatThrownBy(() -> read(folder))
                .isInstanceOfSatisfying(
                        ContentBroken.class,
                        broken -> assertThat(broken.lines())
                                .isEqualTo(List.of(
                                        "content/exercises/bridge.yaml:10: \"es\" is missing, expected a text")));
    }

    @Test
    void aDoseOfBothTimesAndMinutesIsRefused() throws IOException {
        copy();
        change("bridge", "dose: {sets: 2,", "dose: {minutes: 5, sets: 2,");
        assertThatThrownBy(() -> read(folder)).isInstanceOf(ContentBroken.class).hasMessageContaining("one of the two");
    }

    @Test
    void aNewExerciseIsAFileAndNothingElse() throws IOException {
        copy();
        Files.writeString(
                folder.resolve("exercises/bridge-one-leg.yaml"),
                Files.readString(CONTENT.resolve("exercises/bridge.yaml"))
                        .replace("Bridge", "One-leg bridge")
                        .replace("Puente", "Puente con una pierna"));
        assertThat(read(folder).find("bridge-one-leg"))
                .hasValueSatisfying(e -> assertThat(e.name().en()).isEqualTo("One-leg bridge"));
    }
}
