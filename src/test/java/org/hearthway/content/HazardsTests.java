package org.hearthway.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.content.Hazards.Hazard;
import org.hearthway.content.Hazards.Proof;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.annotation.Testable;
import org.junit.platform.commons.support.AnnotationSupport;
import org.springframework.beans.factory.annotation.Autowired;

/** Every hazard has a control that a test of this build proves. */
@HearthwayTest
class HazardsTests {

    /** Tests that only run when they are asked for prove nothing of a usual build. */
    private static final Set<String> NOT_IN_EVERY_BUILD = Set.of("long", "screens");

    private static final Map<String, List<Class<?>>> TEST_CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.OnlyIncludeTests()).importPackages("org.hearthway").stream()
                    .filter(type -> type.isTopLevelClass())
                    .<Class<?>>map(type -> type.reflect())
                    .collect(Collectors.groupingBy(Class::getSimpleName));

    @Autowired
    private Hazards hazards;

    private List<Hazard> all() {
        return hazards.all(People.with(Role.ADMINISTRATOR)).stream()
                .flatMap(field -> field.hazards().stream())
                .toList();
    }

    @Test
    void areThirtyOrMoreEachProvedByTestsOfThisBuild() {
        assertThat(all()).hasSizeGreaterThanOrEqualTo(30);
        assertThat(all().stream()
                        .flatMap(hazard -> hazard.proofs().stream()
                                .filter(proof -> !whatIsWrongWith(proof).isEmpty())
                                .map(proof -> hazard.id() + " names " + proof + ": " + whatIsWrongWith(proof))))
                .isEmpty();
    }

    @Test
    void aTestThatIsGoneOrDoesNotRunProvesNothing() {
        assertThat(whatIsWrongWith(new Proof("HazardsTests", "aTestThatIsGoneOrDoesNotRunProvesNothing")))
                .isEmpty();
        assertThat(whatIsWrongWith(new Proof("NobodyTests", "isHere"))).isEqualTo("there is no such class");
        assertThat(whatIsWrongWith(new Proof("HazardsTests", "isHere"))).isEqualTo("there is no such method");
        assertThat(whatIsWrongWith(new Proof("HazardsTests", "all"))).isEqualTo("it is no test");
        assertThat(whatIsWrongWith(new Proof("HazardsTests", "runsOnlyInTheLongProofs")))
                .isEqualTo("it does not run in every build");
        assertThat(whatIsWrongWith(
                        new Proof("KilledDeliveryTests", "losesNothingAndRepeatsOnlyWhatWasInFlightInTwoHundredKills")))
                .isEqualTo("it does not run in every build");
        assertThat(whatIsWrongWith(new Proof("RefillWindowProperties", "aLargerMarginNeverGivesALaterDay")))
                .as("a property is a test, too")
                .isEmpty();
    }

    @Tag("long")
    @Test
    void runsOnlyInTheLongProofs() {
        assertThat(whatIsWrongWith(new Proof("HazardsTests", "runsOnlyInTheLongProofs")))
                .isNotEmpty();
    }

    private static String whatIsWrongWith(Proof proof) {
        var types = TEST_CLASSES.getOrDefault(proof.type(), List.of());
        if (types.size() != 1) {
            return types.isEmpty() ? "there is no such class" : "several classes have this name";
        }
        var methods = withNested(types.get(0))
                .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
                .filter(method -> method.getName().equals(proof.method()))
                .toList();
        if (methods.isEmpty()) {
            return "there is no such method";
        }
        if (methods.stream().noneMatch(method -> AnnotationSupport.isAnnotated(method, Testable.class))) {
            return "it is no test";
        }
        return methods.stream()
                        .anyMatch(method ->
                                isLeftOut(method) || isLeftOut(method.getDeclaringClass()) || isLeftOut(types.get(0)))
                ? "it does not run in every build"
                : "";
    }

    private static Stream<Class<?>> withNested(Class<?> type) {
        return Stream.concat(
                Stream.of(type), Arrays.stream(type.getDeclaredClasses()).flatMap(HazardsTests::withNested));
    }

    private static boolean isLeftOut(java.lang.reflect.AnnotatedElement place) {
        return AnnotationSupport.isAnnotated(place, Disabled.class)
                || AnnotationSupport.findRepeatableAnnotations(place, Tag.class).stream()
                        .anyMatch(tag -> NOT_IN_EVERY_BUILD.contains(tag.value()));
    }

    @Test
    void sayEachThingOnceAndInEachLanguage() {
        assertThat(all())
                .allSatisfy(hazard -> assertThat(List.of(hazard.says(), hazard.cause(), hazard.control()))
                        .as(hazard.id())
                        .allSatisfy(text -> assertThat(text.en()).isNotEqualTo(text.es()))
                        .doesNotHaveDuplicates());
        assertThat(all()).extracting(Hazard::says).doesNotHaveDuplicates();
    }

    @Test
    void areForAdministrators() {
        for (var role : Role.values()) {
            if (role != Role.ADMINISTRATOR) {
                assertThatThrownBy(() -> hazards.all(People.with(role)))
                        .as(role.name())
                        .isInstanceOf(NotAvailable.class);
            }
        }
    }
}
