package org.hearthway.laws;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.annotation.security.RolesAllowed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.access.Accounts;
import org.hearthway.access.NewAccount;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Helpers;
import org.hearthway.child.Homes;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Homes.Home;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Safeguarding;
import org.hearthway.child.engine.Nights;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.Helping;
import org.hearthway.testing.People;
import org.hearthway.testing.SignInRequests;
import org.hearthway.testing.WebTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.MockMvc;

/**
 * AC4 and AC6 over every page that a reader may open: what one home keeps from the other, what the team keeps from both
 * and what named staff keep from the rest stands on no page, however it is put together.
 */
@WebTest
@Import(SignInRequests.class)
class HiddenWordsTests {

    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);
    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);
    private static final LocalDate TODAY = LocalDate.ofInstant(HearthwayTest.START, People.ZONE);
    private static final String PHONE = "555-0187";
    private static final String ADDRESS = "4 Tern Row, beside the mill";
    private static final String INTERPRETER = "Kinyarwanda";
    private static final String NOTE = "Asks us to ring twice";
    private static final String WORRY = "A worry for named staff alone";

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc web;

    @Autowired
    private SignInRequests people;

    @Autowired
    private Accounts accounts;

    @Autowired
    private ChildRegister register;

    @Autowired
    private Households households;

    @Autowired
    private Homes homes;

    @Autowired
    private Helpers helpers;

    @Autowired
    private Safeguarding safeguarding;

    private ChildId child = ChildId.random();
    private String email = "";

    /** A child of two homes, of whom one shares nothing, with a flag. */
    @BeforeEach
    void aChildOfTwoHomes() {
        child = Children.enter(register);
        email = People.freshEmail();
        var quiet = accounts.invite(
                        ADMINISTRATOR,
                        new NewAccount("Wilma Grey", email, PHONE, Set.of(Role.CAREGIVER), Language.ES, People.ZONE))
                .account();
        households.link(ADMINISTRATOR, child, quiet, Reach.FULL);
        homes.enter(
                DESK,
                child,
                quiet,
                new Home("mother", Authority.YES, ADDRESS, INTERPRETER, Nights.NONE, false, false, NOTE),
                0);
        var named = People.with(Role.NURSE);
        safeguarding.name(ADMINISTRATOR, named.account(), true);
        safeguarding.say(named, child, true, WORRY, 0);
    }

    @AfterEach
    void signOut() {
        Pages.leave();
    }

    /** All that stands on every page of the program that this person is let into, hidden or not. */
    private String told(SignInRequests.Somebody somebody, Role role) throws Exception {
        var opened = new Pages(program, web);
        opened.signedIn(somebody);
        var told = new StringBuilder();
        var count = 0;
        for (var page : pages(role)) {
            var made = opened.made(page);
            Pages.enter(made, child.toString());
            elements(((Component) made).getElement())
                    .forEach(element -> told.append(words(element)).append('\n'));
            count++;
        }
        assertThat(count).as("pages for " + role).isPositive();
        return told.toString();
    }

    private static String words(Element element) {
        if (element.isTextNode()) {
            return element.getText();
        }
        var said = new ArrayList<String>();
        element.getAttributeNames().forEach(name -> said.add(String.valueOf(element.getAttribute(name))));
        element.getPropertyNames().forEach(name -> said.add(String.valueOf(element.getPropertyRaw(name))));
        return String.join(" ", said);
    }

    private static Stream<Element> elements(Element element) {
        return Stream.concat(Stream.of(element), element.getChildren().flatMap(HiddenWordsTests::elements));
    }

    private static List<Class<?>> pages(Role role) {
        return Code.PROGRAM.stream()
                .filter(type -> type.isAnnotatedWith(Route.class) && !type.isAnnotatedWith(AnonymousAllowed.class))
                .filter(type -> com.vaadin.flow.router.BeforeEnterObserver.class.isAssignableFrom(type.reflect()))
                .filter(type -> isFor(
                        role,
                        type.getAnnotationOfType(Route.class).value(),
                        type.tryGetAnnotationOfType(RolesAllowed.class).map(RolesAllowed::value)))
                // one leads on to another page; the other shows an exercise, which a clinic first has to accept
                .filter(type -> !type.getSimpleName().equals("FolderStart")
                        && !type.getSimpleName().contains("Exercise"))
                .<Class<?>>map(type -> type.reflect())
                .toList();
    }

    private static boolean isFor(Role role, String route, Optional<String[]> roles) {
        return switch (role) {
            case CAREGIVER -> route.startsWith("my/");
            case HELPER -> route.startsWith("help/");
            case THERAPIST, PHYSICIAN, NURSE, COORDINATOR, ADMINISTRATOR ->
                roles.filter(named -> List.of(named).contains(role.name())).isPresent();
        };
    }

    @Test
    void anotherHomeReadsNothingOfWhatThisOneKeeps() throws Exception {
        var other = people.fresh(Role.CAREGIVER);
        households.link(ADMINISTRATOR, child, other.account(), Reach.FULL);

        assertThat(told(other, Role.CAREGIVER))
                .contains("Wren")
                .doesNotContain(PHONE)
                .doesNotContain(email)
                .doesNotContain(ADDRESS)
                .doesNotContain(INTERPRETER)
                .doesNotContain(NOTE)
                .doesNotContain(WORRY);
    }

    @Test
    void aHelperReadsOfNoHome() throws Exception {
        var helper = people.fresh(Role.HELPER);
        Helping.until(TODAY.plusDays(30), helpers, households, child, helper.account());

        assertThat(told(helper, Role.HELPER))
                .contains("What you tick carries your name")
                .doesNotContain("Halloway")
                .doesNotContain("Wilma")
                .doesNotContain(PHONE)
                .doesNotContain(email)
                .doesNotContain(ADDRESS)
                .doesNotContain(NOTE)
                .doesNotContain(WORRY);
    }

    @ParameterizedTest
    @EnumSource(names = {"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR", "ADMINISTRATOR"})
    void whoIsNotNamedReadsOfNoFlagThoughTheHomesAreThere(Role role) throws Exception {
        var told = told(people.fresh(role), role);

        assertThat(told).contains(ADDRESS).contains(NOTE).doesNotContain(WORRY);
    }

    @Test
    void whoIsNamedReadsTheFlag() throws Exception {
        var named = people.fresh(Role.THERAPIST);
        safeguarding.name(ADMINISTRATOR, named.account(), true);

        assertThat(told(named, Role.THERAPIST)).contains(WORRY);
    }
}
