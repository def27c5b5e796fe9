package org.hearthway.laws;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** What the laws look at: the compiled program, and its source text where class files no longer tell. */
final class Code {

    static final String ROOT = "org.hearthway";

    static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(ROOT);

    private Code() {}

    /** The module of a class: the package right below the root; empty for the application itself. */
    static String module(JavaClass type) {
        return module(type.getPackageName());
    }

    static String module(String packageName) {
        if (!packageName.startsWith(ROOT + ".")) {
            return "";
        }
        var below = packageName.substring(ROOT.length() + 1);
        return below.contains(".") ? below.substring(0, below.indexOf('.')) : below;
    }

    /** A condition told as a function that reports what is wrong with a class. */
    static ArchCondition<JavaClass> that(String says, BiConsumer<JavaClass, Consumer<String>> check) {
        return new ArchCondition<>(says) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                check.accept(type, wrong -> events.add(SimpleConditionEvent.violated(type, wrong)));
            }
        };
    }

    /** Every file under a folder of the project whose name ends so, with its text. */
    static Map<Path, String> texts(String folder, String... endings) {
        var root = Path.of(folder);
        if (!Files.exists(root)) {
            return Map.of();
        }
        try (var files = Files.walk(root)) {
            var all = new TreeMap<Path, String>();
            for (var file : files.filter(f -> List.of(endings).stream()
                            .anyMatch(e -> f.getFileName().toString().endsWith(e)))
                    .toList()) {
                all.put(file, Files.readString(file));
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The Java source of the program. */
    static Map<Path, String> source() {
        return texts("src/main/java", ".java");
    }

    /** The source without comments, so that words in them are not taken for code. */
    static String uncommented(String java) {
        return java.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)(^|[\\s;{}])//.*$", "");
    }
}
