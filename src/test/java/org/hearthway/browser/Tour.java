package org.hearthway.browser;

import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.type.filter.AnnotationTypeFilter;

/** All screens of the demo clinic, found by their routes, and the people of the demo who look at them. */
final class Tour {

    static final String PASS_PHRASE = "lantern on the porch step";

    /** A role, who plays it in the demo, and whose pages are opened. */
    enum Person {
        THERAPIST("therapist@larkmoor.example", "Juno"),
        PHYSICIAN("physician@larkmoor.example", "Juno"),
        NURSE("nurse@larkmoor.example", "Teo"),
        COORDINATOR("coordinator@larkmoor.example", "Juno"),
        ADMINISTRATOR("administrator@larkmoor.example", "Juno"),
        PARENT("dana@family.example", "Juno"),
        PARENT_OF_TWO("marisol@family.example", "Noor"),
        VIEW_ONLY("ruth@family.example", "Juno"),
        TWO_HOMES("folake@family.example", "Bram"),
        HELPER("odile@school.example", "Bram");

        final String mail;
        final String child;

        Person(String mail, String child) {
            this.mail = mail;
            this.child = child;
        }

        /** Whether nobody before has the same role: what is for others depends on the role alone. */
        boolean isFirstOfTheRole() {
            return this != PARENT_OF_TWO && this != VIEW_ONLY && this != TWO_HOMES;
        }

        boolean isFamily() {
            return mail.endsWith("@family.example") || this == HELPER;
        }
    }

    private static final List<Class<?>> SCREENS = screens();

    private final RunningClinic clinic;

    Tour(RunningClinic clinic) {
        this.clinic = clinic;
    }

    /** Signs a person in. */
    static Browser signIn(Browser browser, String mail) {
        browser.open("/sign-in").type("email", mail).type("password", PASS_PHRASE);
        browser.pressAt("main form button[type=submit]");
        browser.waitFor("signing in", () -> !browser.path().equals("/sign-in"));
        return browser.settle();
    }

    ChildId child(String name) {
        return clinic.part(ChildRegister.class).all(new Viewer.Machine("tour")).stream()
                .filter(child -> child.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    /** The places of a person's role, by a short name for each: the family's for families, the clinic's for staff. */
    Map<String, String> places(Person person) {
        return places(person, screen -> isFor(person, screen));
    }

    /** The clinic's places of the other roles, with the same child. Staff may look at a family's places. */
    Map<String, String> placesOfOthers(Person person) {
        return places(person, screen -> !isFor(person, screen) && (person == Person.HELPER || !isFamilys(screen)));
    }

    /** Every place of the program, once. */
    Collection<String> everyPlace() {
        return places(Person.NURSE, screen -> true).values();
    }

    private Map<String, String> places(Person person, Predicate<Class<?>> wanted) {
        var places = new LinkedHashMap<String, String>();
        for (var screen : SCREENS) {
            var route = screen.getAnnotation(Route.class).value();
            var place = route.replace(":child", child(person.child).toString())
                    .replace(":exercise", exercise(person.child));
            if (!place.contains(":") && wanted.test(screen)) {
                places.put(name(route), "/" + place);
            }
        }
        return places;
    }

    /** One that is planned every day. */
    private static String exercise(String child) {
        return switch (child) {
            case "Noor" -> "butterfly";
            case "Bram" -> "calf-wall";
            default -> "bridge";
        };
    }

    private static boolean isFor(Person person, Class<?> screen) {
        if (person == Person.HELPER) {
            return isHelpers(screen);
        }
        if (person.isFamily()) {
            return isFamilys(screen);
        }
        var roles = screen.getAnnotation(RolesAllowed.class);
        return roles != null && List.of(roles.value()).contains(person.name());
    }

    private static boolean isFamilys(Class<?> screen) {
        return screen.getAnnotation(Route.class).value().startsWith("my/");
    }

    private static boolean isHelpers(Class<?> screen) {
        return screen.getAnnotation(Route.class).value().startsWith("help/");
    }

    private static String name(String route) {
        return route.replaceAll("/?:\\w+[?*]?", "")
                .replaceAll("^(my|staff|help)/?", "")
                .replace('/', '-');
    }

    private static List<Class<?>> screens() {
        var scan = new ClassPathScanningCandidateComponentProvider(false);
        scan.addIncludeFilter(new AnnotationTypeFilter(Route.class));
        var screens = new ArrayList<Class<?>>();
        for (var found : scan.findCandidateComponents("org.hearthway")) {
            try {
                screens.add(Class.forName(found.getBeanClassName()));
            } catch (ClassNotFoundException e) {
                throw new IllegalStateException(e);
            }
        }
        screens.sort(
                Comparator.comparing(screen -> screen.getAnnotation(Route.class).value()));
        return screens;
    }
}
