package org.hearthway.laws;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.HearthwayApplication;
import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

/** Which module may use which. */
class ModulesTests {

    /** Each may use what has a smaller number; of its own number only the others' events. */
    private static final Map<String, Integer> ORDER = Map.ofEntries(
            Map.entry("base", 0),
            Map.entry("words", 1),
            Map.entry("parts", 2),
            Map.entry("content", 3),
            Map.entry("clinic", 4),
            Map.entry("audit", 4),
            Map.entry("child", 5),
            Map.entry("access", 6),
            Map.entry("path", 7),
            Map.entry("figure", 7),
            Map.entry("pump", 8),
            Map.entry("stimulator", 8),
            Map.entry("medicine", 8),
            Map.entry("program", 8),
            Map.entry("sign", 8),
            Map.entry("visit", 8),
            Map.entry("task", 8),
            Map.entry("equipment", 8),
            Map.entry("surveillance", 8),
            Map.entry("choosing", 8),
            Map.entry("reminder", 9),
            Map.entry("paper", 9),
            Map.entry("family", 10),
            Map.entry("desk", 10),
            Map.entry("caseload", 10),
            Map.entry("shell", 10),
            Map.entry("demo", 11),
            Map.entry("", 12));

    private static final Set<String> FRAME_MAY_USE = Set.of("base", "words", "parts", "clinic", "access");

    @Test
    void keepTheirInsidesAndHaveNoCycles() {
        ApplicationModules.of(HearthwayApplication.class).verify();
    }

    @Test
    void useOnlyWhatStandsBelowThem() {
        classes()
                .should(Code.that("use only modules below", (type, wrong) -> {
                    var from = Code.module(type);
                    for (var dependency : type.getDirectDependenciesFromSelf()) {
                        var target = dependency.getTargetClass().getBaseComponentType();
                        var to = Code.module(target);
                        if (target.getPackageName().startsWith(Code.ROOT)
                                && !mayUse(from, to, target.getPackageName())) {
                            wrong.accept(from + " must not use " + to + ": " + dependency.getDescription());
                        }
                    }
                }))
                .check(Code.PROGRAM);
    }

    private static boolean mayUse(String from, String to, String targetPackage) {
        if (from.equals(to)) {
            return true;
        }
        if (from.equals("shell")) {
            return FRAME_MAY_USE.contains(to);
        }
        if (from.equals("caseload") && targetPackage.equals(Code.ROOT + ".shell")) {
            // a child's folder is a frame inside the frame of the staff pages
            return true;
        }
        int above = ORDER.getOrDefault(from, -1);
        int below = ORDER.getOrDefault(to, 99);
        return below < above || below == above && targetPackage.endsWith(".events");
    }

    @Test
    void haveOneSentenceOfPurposeAndNullnessInEveryPackage() {
        var main = Path.of("src/main/java");
        var test = Path.of("src/test/java");
        packages(main).forEach(ModulesTests::saysWhatItIsFor);
        packages(test).stream()
                .filter(p -> !Files.exists(main.resolve(test.relativize(p))))
                .forEach(ModulesTests::saysWhatItIsFor);
    }

    private static Set<Path> packages(Path folder) {
        return Code.texts(folder.toString(), ".java").keySet().stream()
                .map(Path::getParent)
                .collect(Collectors.toSet());
    }

    private static void saysWhatItIsFor(Path folder) {
        var info = folder.resolve("package-info.java");
        assertThat(info).as("every package says what it is for").exists();
        assertThat(info).content().as(info.toString()).contains("/**", "NullMarked");
    }

    @Test
    void haveNothingElseAtTheTop() throws Exception {
        try (var top = Files.list(Path.of("src/main/java/org/hearthway"))) {
            var modules = top.filter(Files::isDirectory)
                    .map(p -> p.getFileName().toString())
                    .toList();
            assertThat(ORDER.keySet()).containsAll(modules);
        }
    }
}
