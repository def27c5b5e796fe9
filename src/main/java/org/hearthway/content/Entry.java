package org.hearthway.content;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A block of a content file, read strictly: every key is asked for by name, and what was not asked for is a mistake.
 * A missing or wrong value is noted with its line and a harmless stand-in is returned, so that one pass finds
 * every mistake; nothing of a broken content is ever used.
 */
public final class Entry {

    private static final String STAND_IN = "?";

    private final String file;
    private final int line;
    private final Mistakes mistakes;
    private final Map<String, NodeTuple> values = new LinkedHashMap<>();
    private final Set<String> asked = new HashSet<>();

    Entry(String file, Node node, Mistakes mistakes) {
        this.file = file;
        this.line = lineOf(node);
        this.mistakes = mistakes;
        if (node instanceof MappingNode mapping) {
            for (var tuple : mapping.getValue()) {
                if (!(tuple.getKeyNode() instanceof ScalarNode named)) {
                    mistakes.add(
                            file, lineOf(tuple.getKeyNode()), "a key is " + describe(tuple.getKeyNode()), "a name");
                    continue;
                }
                var key = named.getValue();
                if (values.put(key, tuple) != null) {
                    mistakes.add(file, lineOf(tuple.getKeyNode()), "\"" + key + "\" stands twice", "each key once");
                }
            }
        } else {
            mistakes.add(file, line, "this is " + describe(node), "a block of keys");
        }
    }

    private static int lineOf(Node node) {
        return node.getStartMark().getLine() + 1;
    }

    private static String describe(Node node) {
        if (node instanceof ScalarNode scalar) {
            return "\"" + scalar.getValue() + "\"";
        }
        return node instanceof SequenceNode ? "a list" : "a block of keys";
    }

    /** The file's name below {@code content/}. */
    public String file() {
        return file;
    }

    /** The file's name without folder and ending, which serves as an identifier. */
    public String id() {
        var name = file.substring(file.lastIndexOf('/') + 1);
        return name.substring(0, name.lastIndexOf('.'));
    }

    /** Whether the key stands there. */
    public boolean has(String key) {
        return values.containsKey(key);
    }

    /** Whether a block of keys stands at the key, and not a single text or a list. */
    public boolean isBlock(String key) {
        var tuple = values.get(key);
        return tuple != null && tuple.getValueNode() instanceof MappingNode;
    }

    /** All keys of the block, for blocks whose keys are data; marks them as asked for. */
    public List<String> keys() {
        asked.addAll(values.keySet());
        return List.copyOf(values.keySet());
    }

    private @Nullable Node find(String key) {
        asked.add(key);
        var tuple = values.get(key);
        return tuple == null ? null : tuple.getValueNode();
    }

    private @Nullable Node need(String key, String expected) {
        var node = find(key);
        if (node == null) {
            mistakes.add(file, line, "\"" + key + "\" is missing", expected);
        }
        return node;
    }

    /** Notes a mistake at a key, or at the block when the key is not there. */
    public void wrong(String key, String wrong, String expected) {
        var tuple = values.get(key);
        mistakes.add(file, tuple == null ? line : lineOf(tuple.getValueNode()), wrong, expected);
    }

    /** Whether no mistake was noted in this file so far. */
    public boolean isSound() {
        return mistakes.areNoneIn(file);
    }

    /** A text that must be there. */
    public String text(String key) {
        var node = need(key, "a text");
        if (node == null) {
            return STAND_IN;
        }
        return scalar(key, node, "a text").orElse(STAND_IN);
    }

    private Optional<String> scalar(String key, Node node, String expected) {
        if (node instanceof ScalarNode scalar && !scalar.getValue().isBlank()) {
            return Optional.of(scalar.getValue().strip());
        }
        mistakes.add(
                file,
                lineOf(node),
                "\"" + key + "\" is " + (node instanceof ScalarNode ? "empty" : describe(node)),
                expected);
        return Optional.empty();
    }

    /** A text that may be there. */
    public Optional<String> maybeText(String key) {
        var node = find(key);
        return node == null ? Optional.empty() : scalar(key, node, "a text");
    }

    /** A text in both languages: {@code key: {en: …, es: …}}. */
    public Bilingual bilingual(String key) {
        var node = need(key, "a text in en and es");
        if (node == null) {
            return Bilingual.same(STAND_IN);
        }
        var both = new Entry(file, node, mistakes);
        var text = new Bilingual(both.text("en"), both.text("es"));
        both.done();
        return text;
    }

    /** A text in both languages that may be there. */
    public Optional<Bilingual> maybeBilingual(String key) {
        return has(key) ? Optional.of(bilingual(key)) : Optional.empty();
    }

    /** A list of texts in both languages; empty when the key is not there. */
    public List<Bilingual> bilinguals(String key) {
        return list(key).stream()
                .map(both -> {
                    var text = new Bilingual(both.text("en"), both.text("es"));
                    both.done();
                    return text;
                })
                .collect(Collectors.toList());
    }

    /** A whole number within bounds, both allowed. */
    public int integer(String key, int min, int max) {
        var expected = "a whole number from " + min + " to " + max;
        var node = need(key, expected);
        var text = node == null ? Optional.<String>empty() : scalar(key, node, expected);
        return text.map(t -> {
                    try {
                        var number = Integer.parseInt(t);
                        if (number >= min && number <= max) {
                            return number;
                        }
                    } catch (NumberFormatException notANumber) {
                        // told below
                    }
                    wrong(key, "\"" + key + "\" is " + t, expected);
                    return min;
                })
                .orElse(min);
    }

    /** A whole number within bounds that may be there. */
    public Optional<Integer> maybeInteger(String key, int min, int max) {
        return has(key) ? Optional.of(integer(key, min, max)) : Optional.empty();
    }

    /** A number within bounds, both allowed; {@code unit} is said in what was expected. */
    public double number(String key, double min, double max, String unit) {
        var expected = plain(min) + " to " + plain(max) + " " + unit;
        var node = need(key, expected);
        return node == null ? min : number(key, node, min, max, expected);
    }

    private double number(String key, Node node, double min, double max, String expected) {
        return scalar(key, node, expected)
                .map(text -> {
                    try {
                        var number = Double.parseDouble(text);
                        if (number >= min && number <= max) {
                            return number;
                        }
                    } catch (NumberFormatException notANumber) {
                        // told below
                    }
                    mistakes.add(file, lineOf(node), "\"" + key + "\" is " + text, expected);
                    return min;
                })
                .orElse(min);
    }

    private static String plain(double bound) {
        return bound == Math.rint(bound) ? String.valueOf((long) bound) : String.valueOf(bound);
    }

    /** A number within bounds that may be there. */
    public Optional<Double> maybeNumber(String key, double min, double max, String unit) {
        return has(key) ? Optional.of(number(key, min, max, unit)) : Optional.empty();
    }

    /** A list of so many numbers. */
    public List<Double> numbers(String key, int count) {
        var expected = "a list of " + count + " numbers";
        var node = need(key, expected);
        if (node instanceof SequenceNode sequence && sequence.getValue().size() == count) {
            return sequence.getValue().stream()
                    .map(one -> number(key, one, -Double.MAX_VALUE, Double.MAX_VALUE, "a number"))
                    .collect(Collectors.toList());
        }
        if (node != null) {
            wrong(key, "\"" + key + "\" is " + describe(node), expected);
        }
        return Collections.nCopies(count, 0.0);
    }

    /** Whether exactly this text stands at the key; marks the key as asked for. */
    public boolean isText(String key, String text) {
        return find(key) instanceof ScalarNode scalar && scalar.getValue().equals(text);
    }

    /** {@code yes} or {@code no}; no when the key is not there. */
    public boolean yes(String key) {
        var text = maybeText(key);
        if (text.isPresent() && !Set.of("yes", "no", "true", "false").contains(text.get())) {
            wrong(key, "\"" + key + "\" is " + text.get(), "yes or no");
        }
        return text.filter(t -> t.equals("yes") || t.equals("true")).isPresent();
    }

    /** One of an enum's names, written in lower case with hyphens. */
    public <E extends Enum<E>> E choice(String key, Class<E> type) {
        var names = Arrays.stream(type.getEnumConstants()).map(Entry::written).collect(Collectors.toList());
        var first = type.getEnumConstants()[0];
        var node = need(key, "one of " + String.join(", ", names));
        if (node == null) {
            return first;
        }
        var text = scalar(key, node, "one of " + String.join(", ", names)).orElse(written(first));
        return chosen(key, type, text, names).orElse(first);
    }

    /** One of an enum's names that may be there. */
    public <E extends Enum<E>> Optional<E> maybeChoice(String key, Class<E> type) {
        return has(key) ? Optional.of(choice(key, type)) : Optional.empty();
    }

    /** Some of an enum's names; empty when the key is not there. */
    public <E extends Enum<E>> List<E> choices(String key, Class<E> type) {
        var names = Arrays.stream(type.getEnumConstants()).map(Entry::written).collect(Collectors.toList());
        return texts(key).stream()
                .flatMap(text -> chosen(key, type, text, names).stream())
                .collect(Collectors.toList());
    }

    private <E extends Enum<E>> Optional<E> chosen(String key, Class<E> type, String text, List<String> names) {
        var at = names.indexOf(text);
        if (at < 0) {
            wrong(key, "\"" + key + "\" is " + text, "one of " + String.join(", ", names));
            return Optional.empty();
        }
        return Optional.of(type.getEnumConstants()[at]);
    }

    private static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A calendar gap in ISO-8601: {@code P6W}, {@code P3M}, {@code P1Y}, {@code P0D}. */
    public Period period(String key) {
        var text = text(key);
        try {
            return text.equals(STAND_IN) ? Period.ZERO : Period.parse(text);
        } catch (DateTimeParseException e) {
            wrong(key, "\"" + key + "\" is " + text, "a gap such as P10D, P6W, P3M or P1Y");
            return Period.ZERO;
        }
    }

    /** A calendar gap that may be there. */
    public Optional<Period> maybePeriod(String key) {
        return has(key) ? Optional.of(period(key)) : Optional.empty();
    }

    /** A date: {@code 2026-03-17}. */
    public LocalDate date(String key) {
        var text = text(key);
        try {
            return text.equals(STAND_IN) ? LocalDate.EPOCH : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            wrong(key, "\"" + key + "\" is " + text, "a date such as 2026-03-17");
            return LocalDate.EPOCH;
        }
    }

    /** Weekdays by their English names in lower case; empty when the key is not there. */
    public List<DayOfWeek> weekdays(String key) {
        return choices(key, DayOfWeek.class);
    }

    /** A list of plain texts; empty when the key is not there. */
    public List<String> texts(String key) {
        var node = find(key);
        if (node == null) {
            return List.of();
        }
        if (!(node instanceof SequenceNode sequence)) {
            wrong(key, "\"" + key + "\" is " + describe(node), "a list");
            return List.of();
        }
        var all = new ArrayList<String>();
        for (var item : sequence.getValue()) {
            scalar(key, item, "a text").ifPresent(all::add);
        }
        return all;
    }

    /** A block that must be there. */
    public Entry block(String key) {
        var node = need(key, "a block of keys");
        return new Entry(file, node == null ? empty() : node, mistakes);
    }

    /** A block that may be there. */
    public Optional<Entry> maybeBlock(String key) {
        var node = find(key);
        return node == null ? Optional.empty() : Optional.of(new Entry(file, node, mistakes));
    }

    private static Node empty() {
        var mark = new org.yaml.snakeyaml.error.Mark("", 0, 0, 0, new int[0], 0);
        return new MappingNode(
                org.yaml.snakeyaml.nodes.Tag.MAP,
                true,
                List.of(),
                mark,
                mark,
                org.yaml.snakeyaml.DumperOptions.FlowStyle.BLOCK);
    }

    /** A list of blocks; empty when the key is not there. */
    public List<Entry> list(String key) {
        var node = find(key);
        if (node == null) {
            return List.of();
        }
        if (!(node instanceof SequenceNode sequence)) {
            wrong(key, "\"" + key + "\" is " + describe(node), "a list");
            return List.of();
        }
        return sequence.getValue().stream()
                .map(item -> new Entry(file, item, mistakes))
                .collect(Collectors.toList());
    }

    /** A block, or a list of blocks; empty when the key is not there. */
    public List<Entry> blocks(String key) {
        return isBlock(key) ? List.of(block(key)) : list(key);
    }

    /**
     * Something named, with what is said of it.
     *
     * @param settings empty when only the name stands there
     */
    public record Named(String name, Entry settings) {}

    /** A list of names, some with a block of settings: {@code [mat, {bench: {half: 0.2}}]}. */
    public List<Named> named(String key) {
        var node = find(key);
        if (node == null) {
            return List.of();
        }
        if (!(node instanceof SequenceNode sequence)) {
            wrong(key, "\"" + key + "\" is " + describe(node), "a list");
            return List.of();
        }
        var all = new ArrayList<Named>();
        for (var item : sequence.getValue()) {
            if (item instanceof MappingNode) {
                var entry = new Entry(file, item, mistakes);
                entry.keys().forEach(name -> all.add(new Named(name, entry.block(name))));
            } else {
                scalar(key, item, "a name")
                        .ifPresent(name -> all.add(new Named(name, new Entry(file, empty(), mistakes))));
            }
        }
        return all;
    }

    /**
     * Source, version and reviews: {@code source}, {@code version}, and {@code reviewed: {en: …, es: …}} where each
     * language has {@code none} or {@code {by: …, on: …}}.
     */
    public Provenance provenance() {
        var source = text("source");
        var version = integer("version", 1, 9_999);
        var reviewed = block("reviewed");
        var both = new Provenance(source, version, review(reviewed, "en"), review(reviewed, "es"));
        reviewed.done();
        return both;
    }

    private static Optional<Provenance.Review> review(Entry reviewed, String language) {
        var node = reviewed.need(language, "none, or by and on");
        if (node == null) {
            return Optional.empty();
        }
        if (node instanceof ScalarNode scalar) {
            if (!scalar.getValue().equals("none")) {
                reviewed.wrong(language, "\"" + language + "\" is " + scalar.getValue(), "none, or by and on");
            }
            return Optional.empty();
        }
        var review = reviewed.block(language);
        var result = new Provenance.Review(review.text("by"), review.date("on"));
        review.done();
        return Optional.of(result);
    }

    /** Ends the reading of this block: a key nobody asked for is a mistake, most often a slip of the pen. */
    public void done() {
        values.forEach((key, tuple) -> {
            if (!asked.contains(key)) {
                mistakes.add(
                        file,
                        lineOf(tuple.getKeyNode()),
                        "\"" + key + "\" is not known here",
                        "one of " + asked.stream().sorted().collect(Collectors.joining(", ")));
            }
        });
    }
}
