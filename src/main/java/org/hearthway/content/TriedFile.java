package org.hearthway.content;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;

/**
 * A text read as a file of content would be, and kept nowhere.
 *
 * @param read what it says; empty where a mistake stands in the way
 * @param mistakes all of them, by line
 */
public record TriedFile<T>(Optional<T> read, List<Mistake> mistakes) {

    /**
     * What is wrong.
     *
     * @param line counted from 1
     * @param says what is wrong and what was expected
     */
    public record Mistake(int line, String says) {}

    public TriedFile {
        mistakes = List.copyOf(mistakes);
    }

    /**
     * Reads the text.
     *
     * @param name that the file would have below {@code content/}
     * @param reader of its block of keys
     */
    public static <T> TriedFile<T> read(String name, String text, Function<Entry, T> reader) {
        var found = new Mistakes();
        Optional<T> read = Optional.empty();
        try {
            var root = new Yaml(new LoaderOptions()).compose(new java.io.StringReader(text));
            if (root == null) {
                found.add(name, 1, "the file is empty", "a block of keys");
            } else {
                var entry = new Entry(name, root, found);
                var value = reader.apply(entry);
                entry.done();
                read = found.areNoneIn(name) ? Optional.of(value) : Optional.empty();
            }
        } catch (MarkedYAMLException e) {
            found.add(name, e.getProblemMark().getLine() + 1, e.getProblem(), "well-formed YAML");
        } catch (YAMLException e) {
            found.add(name, 1, String.valueOf(e.getMessage()), "well-formed YAML");
        }
        return new TriedFile<>(read, found.byLine());
    }
}
