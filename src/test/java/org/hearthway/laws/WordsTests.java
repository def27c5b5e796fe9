package org.hearthway.laws;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.MessageFormat;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The words of the screens: none in code, each in every language, each of use. */
class WordsTests {

    private static final String BUNDLES = "src/main/resources/messages";

    /** A literal in Java that is a key, or the beginning of one that is finished at run time. */
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

    private static final Pattern KEY = Pattern.compile("[a-z]+(\\.[A-Za-z0-9_-]+)+\\.?");

    private static final Pattern KEY_IN_TEMPLATE =
            Pattern.compile("['\\{\\s(]([a-z]+(?:\\.[A-Za-z0-9_-]+)+\\.?)['}\\s(,)]");

    private static Map<String, String> bundle(Path file, String text) {
        try {
            var properties = new Properties();
            properties.load(new StringReader(text));
            return properties.stringPropertyNames().stream()
                    .collect(Collectors.toMap(k -> k, properties::getProperty, (a, b) -> a, TreeMap::new));
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    private static Map<String, String> all(String language) {
        var all = new TreeMap<String, String>();
        Code.texts(BUNDLES, "_" + language + ".properties").forEach((file, text) -> all.putAll(bundle(file, text)));
        return all;
    }

    @Test
    void standInBothLanguagesUnderTheFeaturesName() {
        Code.texts(BUNDLES, "_en.properties").forEach((file, text) -> {
            var name = file.getFileName().toString().replace("_en.properties", "");
            var other = file.resolveSibling(name + "_es.properties");
            assertThat(other).exists();
            var english = bundle(file, text);
            assertThat(english.keySet())
                    .as(file + " against " + other)
                    .isEqualTo(all("es").keySet().stream()
                            .filter(k -> k.startsWith(name + "."))
                            .collect(Collectors.toCollection(TreeSet::new)));
            assertThat(english.keySet()).as(file.toString()).allMatch(k -> k.startsWith(name + "."));
        });
        assertThat(all("es").keySet()).isEqualTo(all("en").keySet());
    }

    @Test
    void areWellFormedAndTakeTheSameArgumentsInBothLanguages() {
        var spanish = all("es");
        all("en").forEach((key, english) -> {
            var other = spanish.getOrDefault(key, "");
            assertThat(english).as(key).isNotBlank();
            assertThat(other).as(key).isNotBlank();
            assertThat(arguments(key, other))
                    .as(key + " takes the same arguments")
                    .isEqualTo(arguments(key, english));
        });
    }

    private static Set<String> arguments(String key, String pattern) {
        assertThat(pattern.replace("''", ""))
                .as(key + ": write ’, a lone ' starts a quotation")
                .doesNotContain("'");
        return new TreeSet<>(new MessageFormat(pattern).getArgumentNames());
    }

    @Test
    void areThereForEveryKeyThatIsAskedFor() {
        var known = all("en").keySet();
        askedFor()
                .forEach((key, where) -> assertThat(known)
                        .as(where + " asks for " + key)
                        .anyMatch(k -> key.endsWith(".") ? k.startsWith(key) : k.equals(key)));
    }

    @Test
    void areAllAskedForBySomebody() {
        var asked = askedFor().keySet();
        assertThat(all("en").keySet())
                .as("words that nobody says")
                .allMatch(k -> asked.contains(k) || asked.stream().anyMatch(a -> a.endsWith(".") && k.startsWith(a)));
    }

    /** Keys in code and templates, with the file; a key that ends with a dot is finished at run time. */
    private static Map<String, Path> askedFor() {
        var features = all("en").keySet().stream()
                .map(k -> k.substring(0, k.indexOf('.')))
                .collect(Collectors.toSet());
        var asked = new TreeMap<String, Path>();
        Code.source().forEach((file, text) -> {
            var literal = LITERAL.matcher(Code.uncommented(text));
            while (literal.find()) {
                note(asked, features, literal.group(1), file);
            }
        });
        Code.texts("src/main/resources/templates", ".html").forEach((file, text) -> {
            var key = KEY_IN_TEMPLATE.matcher(text);
            for (int at = 0; key.find(at); at = key.end() - 1) {
                note(asked, features, key.group(1), file);
            }
        });
        return asked;
    }

    private static void note(Map<String, Path> asked, Set<String> features, String literal, Path file) {
        if (KEY.matcher(literal).matches() && features.contains(literal.substring(0, literal.indexOf('.')))) {
            asked.put(literal, file);
        }
    }

    /** A sentence or a capitalised word in a screen's code; style classes, addresses and keys look otherwise. */
    private static final Pattern SAYS_SOMETHING =
            Pattern.compile("[\\p{Lu}¿¡][\\p{Ll}’]+([ .,:;!?…].*)?|.*\\p{Ll}{2,}[.!?…:](?:\\s.*)?|.*[áéíóúñ¿¡].*");

    /** The program’s own name, values of the HTTP standard, the scheme of a telephone address. */
    private static final Set<String> NO_WORDS = Set.of("Hearthway", "Lax", "tel:");

    @Test
    void standNowhereInTheCodeOfScreens() {
        Code.source().forEach((file, text) -> {
            if (!file.toString().matches(".*/(parts|family|desk|caseload|shell|ui)/.*")) {
                return;
            }
            var code = Code.uncommented(text)
                    .replaceAll("(?s)\"\"\".*?\"\"\"", "")
                    .replaceAll("new (IllegalState|IllegalArgument|NullPointer)Exception\\(.*", "")
                    .replaceAll("(?m)^\\s*(log|LOG)\\.\\w+\\(.*$", "");
            var literal = LITERAL.matcher(code);
            while (literal.find()) {
                if (NO_WORDS.contains(literal.group(1))
                        || literal.group(1).matches("/\\S*")
                        || KEY.matcher(literal.group(1)).matches()) {
                    continue;
                }
                assertThat(literal.group(1))
                        .as(file + " says something to people; it belongs in a bundle")
                        .doesNotMatch(SAYS_SOMETHING.pattern());
            }
        });
    }
}
