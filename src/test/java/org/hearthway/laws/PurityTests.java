package org.hearthway.laws;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.regex.Pattern;
import org.hearthway.HearthwayApplication;
import org.junit.jupiter.api.Test;

/** Arithmetic that sees nothing but values, and time that comes in from one clock. */
class PurityTests {

    private static final Pattern A_DAY_AS_HOURS =
            Pattern.compile("(plusHours|minusHours|ofHours)\\(\\s*24\\b|(plusMinutes|minusMinutes)\\(\\s*1440\\b");

    private static boolean isOfTheLanguageOrBase(JavaClass target) {
        return target.getPackageName()
                        .matches("|java\\..*|org\\.jspecify\\..*|"
                                + "org\\.hearthway\\.base|org\\.springframework\\.modulith|"
                                + "org\\.hearthway\\.\\w+\\.engine(\\..*)?")
                && !target.getPackageName().startsWith("java.sql");
    }

    @Test
    void enginesSeeOnlyTheLanguageAndBaseValues() {
        classes()
                .that()
                .resideInAPackage("..engine..")
                .and()
                .resideOutsideOfPackage("org.hearthway.pump.engine")
                .should()
                .onlyDependOnClassesThat(
                        describe("java, base, nullness, or engines", PurityTests::isOfTheLanguageOrBase))
                .check(Code.PROGRAM);
    }

    /** One maths library an engine: the fractions that its amounts are held in. */
    @Test
    void theEngineOfThePumpSeesFractionsBesides() {
        classes()
                .that()
                .resideInAPackage("org.hearthway.pump.engine")
                .should()
                .onlyDependOnClassesThat(describe(
                        "java, base, nullness, engines, or fractions",
                        target -> isOfTheLanguageOrBase(target)
                                || target.getPackageName().equals("org.apache.commons.numbers.fraction")))
                .check(Code.PROGRAM);
    }

    /** TM1. */
    @Test
    void nowIsAskedOnlyOfTheInjectedClock() {
        classes()
                .that()
                .doNotHaveFullyQualifiedName(HearthwayApplication.class.getName())
                .should(Code.that(
                        "ask the injected clock",
                        (type, wrong) -> type.getMethodCallsFromSelf().forEach(call -> {
                            var target = call.getTarget();
                            var takesClock = target.getRawParameterTypes().size() == 1
                                    && target.getRawParameterTypes().get(0).isEquivalentTo(Clock.class);
                            var ownNow = target.getName().equals("now")
                                    && target.getOwner().getPackageName().startsWith("java.time")
                                    && (!takesClock || target.getOwner().isEquivalentTo(LocalDateTime.class));
                            var systemClock = target.getName().startsWith("system")
                                    && target.getOwner().isEquivalentTo(Clock.class);
                            var millis = target.getName().equals("currentTimeMillis");
                            if (ownNow || systemClock || millis) {
                                wrong.accept(call.getDescription());
                            }
                        })))
                .check(Code.PROGRAM);
        noClasses().should().callConstructor(Date.class).check(Code.PROGRAM);
    }

    /** TM1. */
    @Test
    void aDayIsNotTwentyFourHours() {
        Code.source()
                .forEach((file, text) -> assertThat(A_DAY_AS_HOURS.matcher(text).find())
                        .as(file + " counts a day as hours")
                        .isFalse());
    }

    @Test
    void enginesDoNotReadAnyClock() {
        noClasses()
                .that()
                .resideInAPackage("..engine..")
                .should()
                .dependOnClassesThat()
                .areAssignableTo(Clock.class)
                .check(Code.PROGRAM);
    }

    @Test
    void onlyScreensKnowTheComponentLibrary() {
        noClasses()
                .that(describe("are no screens", PurityTests::isNoScreen))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.vaadin..")
                .check(Code.PROGRAM);
    }

    private static boolean isNoScreen(JavaClass type) {
        var inPackage = type.getPackageName() + ".";
        return !type.isEquivalentTo(HearthwayApplication.class)
                // hands the library its rules of who may pass
                && !type.getName().startsWith("org.hearthway.access.internal.SecurityConfiguration")
                && !inPackage.matches("org\\.hearthway\\.(parts|family|desk|caseload|shell)\\..*")
                && !inPackage.contains(".ui.");
    }
}
