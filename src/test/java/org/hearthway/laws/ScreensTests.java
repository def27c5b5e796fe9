package org.hearthway.laws;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaModifier;
import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.dependency.JavaScript;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.NpmPackage;
import com.vaadin.flow.router.Layout;
import com.vaadin.flow.router.PreserveOnRefresh;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.annotation.security.DenyAll;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What every screen keeps to. */
class ScreensTests {

    private static final Pattern SCRIPT_CALL = Pattern.compile("\\.\\s*(executeJs|executeJavaScript)\\s*\\(\\s*");
    private static final Pattern CONSTANT_SCRIPT =
            Pattern.compile("\\A(\"\"\"[\\s\\S]*?\"\"\"|\"(?:[^\"\\\\]|\\\\.)*\"|[A-Z][A-Z_]+)\\s*[,)]");

    /** AC7. */
    @Test
    void areHiddenInTheirPackageAndSayWhoMayOpenThem() {
        classes()
                .that()
                .areAnnotatedWith(Route.class)
                .or()
                .areAnnotatedWith(Layout.class)
                .should(Code.that("be package-private and carry an access annotation", (view, wrong) -> {
                    if (view.isAnnotatedWith(Route.class) && view.getModifiers().contains(JavaModifier.PUBLIC)) {
                        wrong.accept(view.getName() + " is public");
                    }
                    if (!view.isAnnotatedWith(PermitAll.class)
                            && !view.isAnnotatedWith(RolesAllowed.class)
                            && !view.isAnnotatedWith(AnonymousAllowed.class)
                            && !view.isAnnotatedWith(DenyAll.class)) {
                        wrong.accept(view.getName() + " does not say who may open it");
                    }
                }))
                .allowEmptyShould(true)
                .check(Code.PROGRAM);
    }

    /** IO3. */
    @Test
    void setNoMarkupFromText() {
        noClasses().should().dependOnClassesThat().areAssignableTo(Html.class).check(Code.PROGRAM);
        Code.source().forEach((file, text) -> {
            // the one door for pictures of our own, behind which SvgText escapes whatever it is given
            if (!file.endsWith("parts/Drawing.java")) {
                refuse(file, text, "innerHTML");
            }
        });
        Code.texts("src/main/resources/templates", ".html").forEach((file, text) -> refuse(file, text, "utext", "[("));
        for (var ours : List.of("frontend/figure", "frontend/offline", "src/main/resources/META-INF/resources")) {
            Code.texts(ours, ".js", ".html")
                    .forEach((file, text) -> refuse(
                            file, text, "innerHTML", "outerHTML", "insertAdjacentHTML", "document.write", "eval("));
        }
    }

    private static void refuse(Path file, String text, String... words) {
        for (var word : words) {
            assertThat(text.contains(word)).as(file + " contains " + word).isFalse();
        }
    }

    @Test
    void buildNoScriptFromText() {
        Code.source().forEach((file, text) -> {
            var call = SCRIPT_CALL.matcher(text);
            while (call.find()) {
                assertThat(CONSTANT_SCRIPT.matcher(text.substring(call.end())).find())
                        .as(file + " builds a script from parts near: "
                                + text.substring(call.start(), Math.min(text.length(), call.end() + 60)))
                        .isTrue();
            }
        });
    }

    @Test
    void doNotOutliveAReload() {
        noClasses().should().beAnnotatedWith(PreserveOnRefresh.class).check(Code.PROGRAM);
    }

    @Test
    void askForNoBundleBuild() {
        noClasses()
                .should()
                .beAnnotatedWith(CssImport.class)
                .orShould()
                .beAnnotatedWith(NpmPackage.class)
                .check(Code.PROGRAM);
        classes()
                .should(Code.that("load scripts as static files", (type, wrong) -> {
                    type.tryGetAnnotationOfType(JsModule.class)
                            .filter(a -> !a.value().startsWith("context://"))
                            .ifPresent(a -> wrong.accept(type.getName() + " asks the bundle for " + a.value()));
                    type.tryGetAnnotationOfType(JavaScript.class)
                            .filter(a -> !a.value().startsWith("context://"))
                            .ifPresent(a -> wrong.accept(type.getName() + " asks the bundle for " + a.value()));
                }))
                .check(Code.PROGRAM);
        for (var trace : new String[] {"package.json", "package-lock.json", "node_modules"}) {
            assertThat(Files.exists(Path.of(trace)))
                    .as(trace + " is the trace of a bundle build")
                    .isFalse();
        }
        assertThat(Path.of("frontend/themes/hearthway/components")).doesNotExist();
    }
}
