package org.hearthway.laws;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hearthway.base.Viewer;
import org.junit.jupiter.api.Test;
import org.springframework.stereotype.Service;

/** AC3: no service method escapes the access decision: each is told on whose behalf, or stands here with a reason. */
class FacesTests {

    /** Method, as face and name, and why it asks nobody. */
    private static final Map<String, String> ASK_NOBODY = Map.ofEntries(
            Map.entry("Households.reach", "the access decision itself asks it"),
            Map.entry("Households.hold", "the access decision itself asks it"),
            Map.entry("Helpers.hold", "the access decision itself asks it"),
            Map.entry("Households.exists", "the access decision itself asks it"),
            Map.entry("Helpers.reaches", "the access decision itself asks it"),
            Map.entry("Safeguarding.isNamed", "the access decision itself asks it, and it tells nothing of a child"),
            Map.entry("Devices.pumps", "says only whether and since when, to rules that were let in"),
            Map.entry("Devices.pump", "says only whether and since when, to rules that were let in"),
            Map.entry("Devices.generators", "says only which and since when, to rules that were let in"),
            Map.entry("Devices.anyInPlace", "says only whether, to rules that were let in"),
            Map.entry("Links.create", "makes a link that nobody has yet; the caller was let in"),
            Map.entry("Links.token", "works on a link's identifier, which only services hold"),
            Map.entry("Links.open", "the token is the proof"),
            Map.entry("Links.use", "works on a link that was opened by its token"),
            Map.entry("Links.extend", "works on a link's identifier, which only services hold"),
            Map.entry("Links.revoke", "can only close"),
            Map.entry("Passwords.opens", "the token is the proof"),
            Map.entry("Passwords.set", "the token is the proof"),
            Map.entry("SignOff.isShown", "says only whether a text of the content may be shown"),
            Map.entry("SignOff.shownAmong", "says only whether texts of the content may be shown"),
            Map.entry("SignOff.ownWords", "the clinic's words for a text of the content, no child's data"),
            Map.entry("Plans.pathways", "content, no child's data"),
            Map.entry("Choosing.facts", "content, no child's data"),
            Map.entry("Choosing.ways", "content, no child's data"),
            Map.entry("Plans.way", "words for a clash the caller already has"),
            Map.entry("Plans.why", "words for a date the caller already has"),
            Map.entry("ClinicValues.why", "words for a rule of care the caller already has"),
            Map.entry("Casts.kind", "content, no child's data"),
            Map.entry("Equipment.kinds", "content, no child's data"),
            Map.entry("ExerciseLibrary.all", "content, no child's data"),
            Map.entry("ExerciseLibrary.find", "content, no child's data"),
            Map.entry("Signs.all", "content, on a page without sign-in"),
            Map.entry("Signs.find", "content, on a page without sign-in"),
            Map.entry("Visits.kinds", "content, no child's data"),
            Map.entry("Needs.conduct", "content: what to do about such an item"),
            Map.entry("ToxinSessions.interval", "a setting of the clinic"),
            Map.entry("ToxinSessions.muscles", "content, no child's data"),
            Map.entry("Stimulators.rules", "settings of the clinic, no child's data"),
            Map.entry("PumpBook.rules", "settings of the clinic, no child's data"),
            Map.entry("Tally.place", "an address"),
            Map.entry("Outbox.sendsMail", "a setting of the clinic"));

    private static Set<JavaMethod> publicMethods(JavaClass type) {
        return type.getMethods().stream()
                .filter(m -> m.getModifiers().contains(JavaModifier.PUBLIC))
                .filter(m -> !m.getModifiers().contains(JavaModifier.STATIC)
                        && !m.getModifiers().contains(JavaModifier.SYNTHETIC)
                        && !m.getModifiers().contains(JavaModifier.BRIDGE))
                .collect(Collectors.toSet());
    }

    private static Set<JavaMethod> services() {
        return Code.PROGRAM.stream()
                .filter(type -> type.isAnnotatedWith(Service.class) || isFace(type))
                .flatMap(type -> publicMethods(type).stream())
                .collect(Collectors.toSet());
    }

    /** A public interface at a feature's root with a method that is told on whose behalf. */
    private static boolean isFace(JavaClass type) {
        return type.isInterface()
                && type.getModifiers().contains(JavaModifier.PUBLIC)
                && type.isTopLevelClass()
                && type.getPackageName().equals(Code.ROOT + "." + Code.module(type))
                && publicMethods(type).stream().anyMatch(FacesTests::takesAViewerFirst)
                && !type.isAssignableFrom(org.hearthway.base.Gate.class);
    }

    private static boolean takesAViewerFirst(JavaMethod method) {
        var parameters = method.getRawParameterTypes();
        return !parameters.isEmpty() && parameters.get(0).isAssignableTo(Viewer.class);
    }

    /** The names under which a service's method may stand on the list: its own class's and its faces'. */
    private static Set<String> names(JavaMethod method) {
        var owners = new TreeSet<String>();
        owners.add(method.getOwner().getSimpleName());
        method.getOwner().getAllRawInterfaces().forEach(face -> owners.add(face.getSimpleName()));
        return owners.stream().map(owner -> owner + "." + method.getName()).collect(Collectors.toSet());
    }

    @Test
    void everyServiceMethodIsToldOnWhoseBehalf() {
        var escaped = services().stream()
                .filter(method -> !takesAViewerFirst(method))
                .filter(method -> names(method).stream().noneMatch(ASK_NOBODY::containsKey))
                .map(JavaMethod::getFullName)
                .sorted()
                .toList();

        assertThat(escaped).isEmpty();
    }

    @Test
    void theListOfReasonsNamesNothingThatIsGone() {
        var there = Code.PROGRAM.stream()
                .flatMap(type -> type.getMethods().stream())
                .filter(method -> !takesAViewerFirst(method))
                .map(method -> method.getOwner().getSimpleName() + "." + method.getName())
                .collect(Collectors.toSet());

        assertThat(there).containsAll(ASK_NOBODY.keySet());
    }
}
