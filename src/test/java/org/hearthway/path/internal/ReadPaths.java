package org.hearthway.path.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentReading;
import org.hearthway.path.SignNames;
import org.hearthway.path.VisitKindNames;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/** Reads the shipped paths, with the names that other shipped content gives them. */
final class ReadPaths {

    private static final Pattern ID = Pattern.compile("\\bid: ([a-z0-9-]+)");

    private static final Pattern TAG = Pattern.compile("(?m)^([a-z0-9-]+):");

    private ReadPaths() {}

    /** An empty kind that knows what the other shipped files name. */
    static PathKind kind() {
        var seasons = new SeasonKind();
        assertThat(ContentReading.shipped(seasons)).isEmpty();
        var visits = files("visits").map(ReadPaths::name).collect(Collectors.toSet());
        var tags = tags();
        var signs = files("signs").flatMap(ReadPaths::ids).collect(Collectors.toSet());
        return new PathKind(
                new VisitKindNames() {
                    @Override
                    public Set<String> names() {
                        return visits;
                    }

                    @Override
                    public Optional<Bilingual> name(String kind) {
                        return Optional.empty();
                    }

                    @Override
                    public Set<DayOfWeek> weekdays(String kind) {
                        return Set.of();
                    }
                },
                new ObjectProvider<SignNames>() {
                    @Override
                    public SignNames getObject() {
                        return () -> signs;
                    }
                },
                () -> tags,
                seasons);
    }

    /** All shipped paths, read once. */
    static PathKind shipped() {
        return Shipped.PATHS;
    }

    private static final class Shipped {
        static final PathKind PATHS = read();

        private static PathKind read() {
            var kind = kind();
            assertThat(ContentReading.shipped(kind)).isEmpty();
            return kind;
        }
    }

    private static Stream<Resource> files(String place) {
        try {
            return Stream.of(
                    new PathMatchingResourcePatternResolver().getResources("classpath:/content/" + place + "/*.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> tags() {
        try {
            return TAG.matcher(new ClassPathResource("content/precautions.yaml")
                            .getContentAsString(StandardCharsets.UTF_8))
                    .results()
                    .map(found -> found.group(1))
                    .collect(Collectors.toSet());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String name(Resource file) {
        return Objects.requireNonNull(file.getFilename()).replace(".yaml", "");
    }

    private static Stream<String> ids(Resource file) {
        try {
            return ID.matcher(file.getContentAsString(StandardCharsets.UTF_8))
                    .results()
                    .map(found -> found.group(1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
