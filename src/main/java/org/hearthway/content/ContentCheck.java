package org.hearthway.content;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Reads all content before the first request and stops the start with every mistake at once. Content is the copy in
 * the program's own archive, or the folder named by {@code hearthway.content}.
 */
@Component
class ContentCheck implements SmartInitializingSingleton {

    private final List<ContentKind> kinds;
    private final String place;

    ContentCheck(List<ContentKind> kinds, @Value("${hearthway.content:}") String folder) {
        this.kinds = kinds;
        this.place = folder.isBlank()
                ? "classpath:/content/"
                : "file:" + Path.of(folder).toAbsolutePath().normalize().toUri().getRawPath();
    }

    @Override
    public void afterSingletonsInstantiated() {
        var mistakes = new Mistakes();
        files().forEach((name, file) -> {
            var kind = kinds.stream().filter(k -> takes(k, name)).findFirst();
            if (kind.isEmpty()) {
                mistakes.add(name, 1, "no part of the program reads this file", "a file in a folder of a known kind");
            } else {
                read(name, file, kind.get(), mistakes);
            }
        });
        kinds.forEach(ContentKind::check);
        if (!mistakes.lines().isEmpty()) {
            throw new ContentBroken(mistakes.lines());
        }
    }

    private static boolean takes(ContentKind kind, String name) {
        return name.equals(kind.place()) || name.startsWith(kind.place() + "/");
    }

    private static void read(String name, Resource file, ContentKind kind, Mistakes mistakes) {
        try (var reader = new InputStreamReader(file.getInputStream(), StandardCharsets.UTF_8)) {
            var root = new Yaml(new LoaderOptions()).compose(reader);
            if (root == null) {
                mistakes.add(name, 1, "the file is empty", "a block of keys");
                return;
            }
            var entry = new Entry(name, root, mistakes);
            kind.read(entry);
            entry.done();
        } catch (MarkedYAMLException e) {
            mistakes.add(name, e.getProblemMark().getLine() + 1, e.getProblem(), "well-formed YAML");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Map<String, Resource> files() {
        try {
            var found = new TreeMap<String, Resource>(Comparator.naturalOrder());
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
}
