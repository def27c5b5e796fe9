package org.hearthway.content;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;

/** Reads one kind of content without the rest of the program: the shipped files, or a text that a test makes up. */
public final class ContentReading {

    private ContentReading() {}

    /** Reads the shipped files of a kind and returns the mistakes found. */
    public static List<String> shipped(ContentKind kind) {
        try {
            var mistakes = new Mistakes();
            var pattern = kind.place().endsWith(".yaml") ? kind.place() : kind.place() + "/*.yaml";
            for (var file : new PathMatchingResourcePatternResolver().getResources("classpath:/content/" + pattern)) {
                var name = kind.place().endsWith(".yaml") ? kind.place() : kind.place() + "/" + file.getFilename();
                var reader = new InputStreamReader(file.getInputStream(), StandardCharsets.UTF_8);
                var entry = new Entry(name, new Yaml(new LoaderOptions()).compose(reader), mistakes);
                kind.read(entry);
                entry.done();
            }
            kind.check();
            return mistakes.lines();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads one made-up file of a kind and returns the mistakes found. */
    public static List<String> text(ContentKind kind, String name, String yaml) {
        var mistakes = new Mistakes();
        var entry = new Entry(name, new Yaml(new LoaderOptions()).compose(new StringReader(yaml)), mistakes);
        kind.read(entry);
        entry.done();
        kind.check();
        return mistakes.lines();
    }
}
