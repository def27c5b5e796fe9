package org.hearthway.content;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Where content lies: the copy in the program's own archive, or the folder named by {@code hearthway.content}.
 */
@Component
public class ContentFolder {

    private final String place;

    ContentFolder(@Value("${hearthway.content:}") String folder) {
        this.place = folder.isBlank()
                ? "classpath:/content/"
                : "file:" + Path.of(folder).toAbsolutePath().normalize().toUri().getRawPath();
    }

    /**
     * Reads one file ahead of all others, for what other parts need before they can be built.
     *
     * @param name the file's name below {@code content/}
     * @throws ContentBroken when the file is missing or has mistakes
     */
    public <T> T readAhead(String name, Function<Entry, T> reader) {
        var mistakes = new Mistakes();
        var file = files().get(name);
        if (file == null) {
            mistakes.add(name, 1, "the file is missing", "the file");
            throw new ContentBroken(mistakes.lines());
        }
        var result = read(name, file, mistakes).map(entry -> {
            var read = reader.apply(entry);
            entry.done();
            return read;
        });
        if (!mistakes.lines().isEmpty()) {
            throw new ContentBroken(mistakes.lines());
        }
        return result.orElseThrow();
    }

    /** The text of a file as it lies there; empty when it is gone. */
    public Optional<String> text(String name) {
        return Optional.ofNullable(files().get(name)).map(file -> {
            try {
                return file.getContentAsString(StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    Map<String, Resource> files() {
        try {
            var found = new TreeMap<String, Resource>();
            for (var file : new PathMatchingResourcePatternResolver().getResources(place + "**/*.yaml")) {
                var url = file.getURL().toString();
                var marker = place.startsWith("classpath:") ? "/content/" : place;
                found.put(url.substring(url.lastIndexOf(marker) + marker.length()), file);
            }
            return found;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file's block, or empty with the mistake noted when it holds none. */
    static Optional<Entry> read(String name, Resource file, Mistakes mistakes) {
        try (var reader = new InputStreamReader(file.getInputStream(), StandardCharsets.UTF_8)) {
            var root = new Yaml(new LoaderOptions()).compose(reader);
            if (root == null) {
                mistakes.add(name, 1, "the file is empty", "a block of keys");
                return Optional.empty();
            }
            return Optional.of(new Entry(name, root, mistakes));
        } catch (MarkedYAMLException e) {
            mistakes.add(name, e.getProblemMark().getLine() + 1, e.getProblem(), "well-formed YAML");
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
