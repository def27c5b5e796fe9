package org.hearthway.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.yaml.snakeyaml.Yaml;

/**
 * Every word of a screen comes from a bundle or from the content. The program runs with all words of the bundles in
 * brackets; what is left outside them must stand in the content, which holds the demo's names and notes too.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Order(WalkOrder.LONG)
class WordsIT {

    /** Visible text, and what assistive technology reads. */
    private static final String READ = """
            // what belongs to no language, as the letters of a formula, says so
            const letters = [...document.querySelectorAll('[translate=no]')];
            letters.forEach(e => e.style.visibility = 'hidden');
            const said = [document.body.innerText];
            letters.forEach(e => e.style.visibility = '');
            document.querySelectorAll('[aria-label],[placeholder],[title],[alt]').forEach(e =>
              ['aria-label', 'placeholder', 'title', 'alt'].forEach(a => e.hasAttribute(a) && said.push(e.getAttribute(a))));
            return said.join('\\n');""";

    private static final Pattern INNERMOST = Pattern.compile("\\[[^\\[\\]]*]");
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

    private static final Pattern ADDRESS = Pattern.compile("http://\\S+");

    /** Where days, times and numbers stand in a text of the content; a paragraph ends a piece too. */
    private static final String GAP = "\\{[a-z-]+}|\\n";

    /** The program's own name. */
    private static final Set<String> NAMES = Set.of("Hearthway");

    /** A text of the content, and where it stands as words of its own. */
    private record Known(String text, Pattern place) {}

    private RunningClinic clinic;
    private Browser browser;
    private List<Known> content;

    @BeforeAll
    void begin() {
        content = content();
        clinic = RunningClinic.demo("hearthway.words.bracketed=true");
        browser = Browser.desk(clinic);
    }

    @AfterAll
    void end() {
        browser.close();
        clinic.close();
    }

    @ParameterizedTest
    @EnumSource(names = {"PARENT", "THERAPIST", "NURSE", "COORDINATOR", "ADMINISTRATOR"})
    void comeFromABundleOrTheContent(Tour.Person person) {
        Tour.signIn(browser.forget(), person.mail);
        var strange = new ArrayList<String>();
        new Tour(clinic).places(person).forEach((name, place) -> {
            browser.go(place);
            strange.addAll(strangeOn(name, String.valueOf(browser.run(READ))));
        });
        assertThat(strange).isEmpty();
    }

    private List<String> strangeOn(String page, String said) {
        var left = ADDRESS.matcher(said).replaceAll(" ");
        for (var before = ""; !before.equals(left); ) {
            before = left;
            left = INNERMOST.matcher(left).replaceAll(" ");
        }
        for (var known : content) {
            // thousands of texts, of which a page holds a few
            if (left.contains(known.text())) {
                left = known.place().matcher(left).replaceAll(" ");
            }
        }
        return left.lines()
                .filter(line -> WORD.matcher(line).results().anyMatch(word -> !NAMES.contains(word.group())))
                .map(line -> page + ": " + line.strip())
                .distinct()
                .toList();
    }

    /** All texts of the content, the longest first. */
    private static List<Known> content() {
        var all = new HashSet<String>();
        try (var files = Files.walk(Path.of("content"))) {
            for (var file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                collect(new Yaml().load(Files.readString(file)), all);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all.stream()
                .flatMap(text -> Stream.of(text.split(GAP)))
                .map(String::strip)
                .filter(text -> text.length() > 1)
                .sorted(Comparator.comparing(String::length).reversed())
                .map(text -> new Known(text, Pattern.compile("(?<!\\p{L})" + Pattern.quote(text) + "(?!\\p{L})")))
                .toList();
    }

    private static void collect(Object part, Set<String> all) {
        if (part instanceof Iterable<?> list) {
            list.forEach(one -> collect(one, all));
        } else if (part instanceof java.util.Map<?, ?> block) {
            block.values().forEach(one -> collect(one, all));
        } else if (part != null) {
            all.add(part.toString());
        }
    }
}
