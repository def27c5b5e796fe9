package org.hearthway.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hearthway.base.Language;
import org.hearthway.browser.RunningClinic;
import org.hearthway.path.Plans;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.sign.Signs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stage, an exercise and a sign are added, and a text is lost, by editing files alone. */
class ContentAsDataTests {

    @TempDir
    Path content;

    @BeforeEach
    void copyTheShippedContent() throws IOException {
        try (var all = Files.walk(Path.of("content"))) {
            for (var from : (Iterable<Path>) all::iterator) {
                var to = content.resolve(Path.of("content").relativize(from));
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(from, to);
                }
            }
        }
    }

    @Test
    void aNewStageExerciseAndSignShowInBothLanguages() throws Exception {
        append("paths/sdr.yaml", """
              - id: grown-up
                name: {en: Grown up, es: Ya es mayor}
                says: {en: A clinic for adults takes over., es: Sigue una clínica para personas adultas.}
                who: physician
                begins: [{after: growing, edge: start, earliest: P9Y, usual: P10Y}]
                lasts: P0D
                why: {en: Your child has grown up., es: Su hijo o hija ya creció.}
                source: common practice, no source
            """);
        var bridge = Files.readString(content.resolve("exercises/bridge.yaml"));
        write(
                "exercises/high-bridge.yaml",
                bridge.replace("en: \"Bridge\", es: \"Puente\"", "en: \"High bridge\", es: \"Puente alto\""));
        append("signs/pump.yaml", """
              - id: pump-light
                urgency: urgent
                says: {en: The pump glows., es: La bomba brilla.}
                source: common practice, no source
                version: 1
                reviewed: {en: none, es: none}
            """);

        try (var clinic = RunningClinic.demo("hearthway.content=" + content)) {
            var sdr = clinic.part(Plans.class).pathways().stream()
                    .filter(path -> path.id().equals("sdr"))
                    .findFirst()
                    .orElseThrow();
            assertThat(sdr.stage("grown-up").orElseThrow().name().in(Language.ES))
                    .isEqualTo("Ya es mayor");
            var exercise =
                    clinic.part(ExerciseLibrary.class).find("high-bridge").orElseThrow();
            assertThat(exercise.name().en()).isEqualTo("High bridge");
            assertThat(exercise.name().es()).isEqualTo("Puente alto");
            assertThat(clinic.part(Signs.class).find("pump-light")).isPresent();
            assertThat(page(clinic.url() + "/call?lang=en")).contains("The pump glows.");
            assertThat(page(clinic.url() + "/call?lang=es")).contains("La bomba brilla.");
        }
    }

    @Test
    void oneLostSpanishTextStopsTheStartWithItsLine() throws Exception {
        var file = content.resolve("exercises/bridge.yaml");
        var lines = Files.readAllLines(file);
        write("exercises/bridge.yaml", String.join("\n", lines).replace(", es: \"Puente\"", ""));
        var line = 1 + firstLine(lines, "name:");

        var stopped = catchThrowable(() -> RunningClinic.demo("hearthway.content=" + content));

        assertThat(broken(stopped).lines())
                .containsExactly("content/exercises/bridge.yaml:" + line + ": \"es\" is missing, expected a text");
    }

    @Test
    void everyMistakeIsToldAtOnce() throws Exception {
        append("signs/pump.yaml", """
              - id: pump-odd
                urgency: soon
                says: {en: Odd., es: Raro.}
                source: common practice, no source
                version: 0
                reviewed: {en: none, es: none}
                colour: red
            """);
        write("exercises/bridge.yaml", "name: [");

        var stopped = catchThrowable(() -> RunningClinic.demo("hearthway.content=" + content));

        assertThat(broken(stopped).lines())
                .hasSizeGreaterThanOrEqualTo(4)
                .anyMatch(line -> line.contains("\"urgency\" is soon, expected one of now, urgent, hours"))
                .anyMatch(line -> line.contains("\"version\" is 0, expected a whole number from 1"))
                .anyMatch(line -> line.contains("\"colour\" is not known here"))
                .anyMatch(line -> line.startsWith("content/exercises/bridge.yaml:1:"));
    }

    private static ContentBroken broken(Throwable stopped) {
        for (var cause = stopped; cause != null; cause = cause.getCause()) {
            if (cause instanceof ContentBroken broken) {
                return broken;
            }
        }
        throw new AssertionError("the start was not stopped by its content", stopped);
    }

    private static int firstLine(List<String> lines, String start) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(start)) {
                return i;
            }
        }
        throw new AssertionError("no line starts with " + start);
    }

    private void append(String file, String block) throws IOException {
        var before = Files.readString(content.resolve(file));
        write(file, before.stripTrailing() + "\n" + block.stripTrailing() + "\n");
    }

    private void write(String file, String text) throws IOException {
        Files.writeString(content.resolve(file), text);
    }

    private static String page(String address) {
        try {
            return HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString())
                    .body();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
