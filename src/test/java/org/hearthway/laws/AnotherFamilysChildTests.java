package org.hearthway.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.access.Accounts;
import org.hearthway.audit.AuditTrail;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.reminder.Outbox;
import org.hearthway.sign.Signs;
import org.hearthway.task.Assignee;
import org.hearthway.task.TaskId;
import org.hearthway.task.Tasks;
import org.hearthway.testing.Children;
import org.hearthway.testing.People;
import org.hearthway.testing.SignInRequests;
import org.hearthway.testing.WebTest;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * AC2: a caregiver who asks for another family's child, through any method of any face and any page, gets the answer
 * that a child gets who does not exist; and the trail keeps it though the request rolls back. AC5: a page that is open
 * when the relation or the account ends shows nothing more.
 */
@WebTest
@Import(SignInRequests.class)
class AnotherFamilysChildTests {

    private static final Viewer.Person DESK = People.with(Role.COORDINATOR);
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);

    /** Asked by a caregiver without a child: what is the caregiver's own, and no child's. */
    private static final Set<String> ONES_OWN =
            Set.of("ChildRegister.mine", "Helpers.mine", "Accounts.speak", "Tally.count");

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
    private Visits visits;

    @Autowired
    private Signs signs;

    @Autowired
    private Needs needs;

    @Autowired
    private Tasks tasks;

    @Autowired
    private Outbox outbox;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private TransactionTemplate request;

    private ChildId anothers = ChildId.random();
    private Viewer.Person itsParent = People.with(Role.CAREGIVER);

    @BeforeEach
    void aChildOfSomebodyElse() {
        anothers = Children.enter(register);
        itsParent = People.as(people.fresh(Role.CAREGIVER).account(), Role.CAREGIVER);
        households.link(ADMINISTRATOR, anothers, itsParent.account(), Reach.FULL);
    }

    @AfterEach
    void signOut() {
        Pages.leave();
    }

    private List<Viewer.Person> strangers() {
        var ofAnother = Children.caregiver(households, Children.enter(register), Reach.FULL);
        var ended = Children.caregiver(households, anothers, Reach.FULL);
        households.unlink(ADMINISTRATOR, anothers, ended.account());
        return List.of(ofAnother, ended, People.with(Role.CAREGIVER));
    }

    /** The faces of all features: interfaces at a feature's root, told on whose behalf. */
    private static List<Method> methods() {
        return Code.PROGRAM.stream()
                .filter(type -> type.isInterface()
                        && type.getModifiers().contains(JavaModifier.PUBLIC)
                        && type.getPackageName().equals(Code.ROOT + "." + Code.module(type))
                        && !type.isEquivalentTo(Gate.class)
                        && !type.isEquivalentTo(AuditTrail.class))
                .map(JavaClass::reflect)
                .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
                .filter(method -> !java.lang.reflect.Modifier.isStatic(method.getModifiers()))
                .filter(method ->
                        method.getParameterCount() > 0 && Viewer.class.isAssignableFrom(method.getParameterTypes()[0]))
                .toList();
    }

    private static String name(Method method) {
        return method.getDeclaringClass().getSimpleName() + "." + method.getName();
    }

    private static boolean asksFor(Method method, Class<?> type) {
        return Arrays.asList(method.getParameterTypes()).contains(type);
    }

    /** What the method answers within a request that fails in the end, as one that was refused does. */
    private Throwable answer(Method method, Viewer.Person who, Map<Class<?>, Object> known) {
        var arguments = Arrays.stream(method.getParameterTypes())
                .map(type -> Viewer.class.isAssignableFrom(type) ? who : known.getOrDefault(type, nothing(type)))
                .toArray();
        var face = program.getBean(method.getDeclaringClass());
        return catchThrowable(() -> request.executeWithoutResult(status -> {
            try {
                method.setAccessible(true);
                method.invoke(face, arguments);
            } catch (InvocationTargetException e) {
                status.setRollbackOnly();
                sneak(e.getCause());
            } catch (IllegalAccessException e) {
                throw new IllegalStateException(e);
            }
        }));
    }

    private static void sneak(Throwable thrown) {
        if (thrown instanceof RuntimeException unchecked) {
            throw unchecked;
        }
        throw new IllegalStateException(thrown);
    }

    /** The decision comes before anything else is looked at, so nothing is enough for the rest. */
    private static Object nothing(Class<?> type) {
        if (type == long.class) {
            return 0L;
        }
        if (type == int.class) {
            return 0;
        }
        return type == boolean.class ? Boolean.FALSE : null;
    }

    private void saysTheSame(Method method, Throwable ofAnothers, Throwable ofNobodys) {
        assertThat(ofAnothers).as(name(method)).isInstanceOf(NotAvailable.class).hasNoCause();
        assertThat(ofNobodys).as(name(method)).isInstanceOf(NotAvailable.class).hasMessage(ofAnothers.getMessage());
    }

    private long refusals(Viewer.Person who, ChildId child) {
        return trail.newest(ADMINISTRATOR, 2000).stream()
                .filter(line -> line.actor().equals(who.tag())
                        && line.child().equals(Optional.of(child))
                        && line.what().startsWith("refused: "))
                .count();
    }

    @Test
    void everyMethodAboutAChildAnswersAsIfItDidNotExistAndTheTrailKeepsIt() {
        var about = methods().stream()
                .filter(method -> asksFor(method, ChildId.class))
                .toList();
        assertThat(about).extracting(AnotherFamilysChildTests::name).contains("ChildRegister.get", "Programs.save");
        for (var who : strangers()) {
            for (var method : about) {
                var before = refusals(who, anothers);
                var nobodys = ChildId.random();

                saysTheSame(
                        method,
                        answer(method, who, Map.of(ChildId.class, anothers)),
                        answer(method, who, Map.of(ChildId.class, nobodys)));

                assertThat(refusals(who, anothers)).as(name(method)).isEqualTo(before + 1);
                assertThat(refusals(who, nobodys)).as(name(method)).isEqualTo(1);
            }
        }
    }

    @Test
    void everyMethodAboutAThingOfAChildAnswersAsIfItDidNotExistAndTheTrailKeepsIt() {
        var visit = visits.book(
                DESK,
                anothers,
                new Visits.Booking("therapy", LocalDateTime.of(2026, 3, 24, 10, 30), 45, "", Optional.empty()));
        signs.report(itsParent, anothers, new Signs.ReportData(UUID.randomUUID(), List.of(), true, "a note"));
        var message = outbox.of(DESK, anothers).get(0).id();
        var item = needs.open(People.with(Role.NURSE)).stream()
                .filter(open -> open.child().equals(anothers))
                .findFirst()
                .orElseThrow()
                .id();
        var task = tasks.give(
                DESK,
                anothers,
                new Tasks.Asked(
                        new Assignee.Family(), "Bring the film.", "", LocalDate.of(2026, 3, 20), Optional.empty()));
        var things = Map.<Class<?>, Map<Class<?>, Object>>of(
                Visits.class, Map.of(VisitId.class, visit),
                Outbox.class, Map.of(UUID.class, message),
                Needs.class, Map.of(UUID.class, item),
                Tasks.class, Map.of(TaskId.class, task));
        var about = methods().stream()
                .filter(method -> !asksFor(method, ChildId.class))
                .filter(method ->
                        asksFor(method, VisitId.class) || asksFor(method, UUID.class) || asksFor(method, TaskId.class))
                .toList();
        assertThat(about)
                .extracting(AnotherFamilysChildTests::name)
                .contains("Visits.confirm", "Outbox.sendNow", "Needs.take", "Tasks.tick");
        for (var who : strangers()) {
            for (var method : about) {
                var before = refusals(who, anothers);
                var known = Objects.requireNonNull(things.get(method.getDeclaringClass()), name(method));

                saysTheSame(
                        method,
                        answer(method, who, known),
                        answer(
                                method,
                                who,
                                Map.of(
                                        VisitId.class,
                                        VisitId.random(),
                                        UUID.class,
                                        UUID.randomUUID(),
                                        TaskId.class,
                                        TaskId.random())));

                assertThat(refusals(who, anothers)).as(name(method)).isEqualTo(before + 1);
            }
        }
    }

    @Test
    void everyListOfManyChildrenIsClosedToCaregivers() {
        var lists = methods().stream()
                .filter(method -> !asksFor(method, ChildId.class)
                        && !asksFor(method, VisitId.class)
                        && !asksFor(method, UUID.class)
                        && !asksFor(method, TaskId.class))
                .filter(method -> !ONES_OWN.contains(name(method)))
                .toList();
        assertThat(lists)
                .extracting(AnotherFamilysChildTests::name)
                .contains("Visits.between", "Needs.open", "Outbox.board");
        var known = Map.<Class<?>, Object>of(
                LocalDate.class,
                LocalDate.of(2026, 3, 12),
                AccountId.class,
                itsParent.account(),
                java.util.Collection.class,
                List.of(itsParent.account()),
                List.class,
                List.of());
        for (var method : lists) {
            assertThat(answer(method, itsParent, known)).as(name(method)).isInstanceOf(NotAvailable.class);
        }
    }

    /** The pages about a child, by their routes. */
    private static List<Class<?>> pages() {
        return Code.PROGRAM.stream()
                .filter(type -> type.isAnnotatedWith(Route.class))
                .filter(type -> type.getAnnotationOfType(Route.class).value().contains(":child"))
                .<Class<?>>map(JavaClass::reflect)
                .toList();
    }

    @Test
    void everyPageAboutAChildAnswersAsIfItDidNotExistAndTheTrailKeepsIt() throws Exception {
        var opened = new Pages(program, web);
        var parent = people.fresh(Role.CAREGIVER);
        var viewer = People.as(parent.account(), Role.CAREGIVER);
        households.link(ADMINISTRATOR, Children.enter(register), parent.account(), Reach.FULL);
        opened.signedIn(parent);
        assertThat(pages()).hasSizeGreaterThan(10);
        for (var page : pages()) {
            if (page.getSimpleName().equals("FolderStart")) {
                // leads on to a page of the folder, which asks
                continue;
            }
            var before = refusals(viewer, anothers);
            var answers = new ArrayList<Throwable>();
            for (var child : List.of(anothers.toString(), ChildId.random().toString(), "1", "'; --")) {
                answers.add(catchThrowable(() -> Pages.enter(opened.made(page), child)));
            }
            assertThat(answers)
                    .as(page.getSimpleName())
                    .allSatisfy(answer -> assertThat(answer).isInstanceOf(NotAvailable.class))
                    .extracting(Throwable::getMessage)
                    .containsOnly("not available");
            assertThat(refusals(viewer, anothers)).as(page.getSimpleName()).isGreaterThan(before);
        }
    }

    /** AC7: and before that, nobody of a family comes as far as a page of the clinic. */
    @Test
    void noPageOfTheClinicLetsACaregiverIn() {
        var staff = Code.PROGRAM.stream()
                .filter(type -> type.isAnnotatedWith(Route.class))
                .filter(type -> type.getAnnotationOfType(Route.class).value().startsWith("staff/"))
                .toList();
        assertThat(staff)
                .isNotEmpty()
                .allSatisfy(page -> assertThat(
                                page.getAnnotationOfType(RolesAllowed.class).value())
                        .as(page.getName())
                        .doesNotContain("CAREGIVER"));
    }

    @Test
    void aFamilysPageThatIsOpenEndsWithTheRelationAndWithTheAccount() throws Exception {
        var opened = new Pages(program, web);
        for (var page : pages()) {
            if (!page.getAnnotation(Route.class).value().startsWith("my/")
                    || page.getSimpleName().equals("ExerciseView")) {
                continue;
            }
            var parent = people.fresh(Role.CAREGIVER);
            households.link(ADMINISTRATOR, anothers, parent.account(), Reach.VIEW_ONLY);
            opened.signedIn(parent);
            var open = opened.made(page);
            assertThatCode(() -> Pages.enter(open, anothers.toString()))
                    .as(page.getSimpleName())
                    .doesNotThrowAnyException();

            households.unlink(ADMINISTRATOR, anothers, parent.account());
            assertThat(catchThrowable(() -> Pages.enter(open, anothers.toString())))
                    .as(page.getSimpleName())
                    .isInstanceOf(NotAvailable.class);

            households.link(ADMINISTRATOR, anothers, parent.account(), Reach.VIEW_ONLY);
            Pages.enter(open, anothers.toString());
            accounts.disable(ADMINISTRATOR, parent.account());
            assertThat(catchThrowable(() -> Pages.enter(open, anothers.toString())))
                    .as(page.getSimpleName())
                    .isInstanceOf(NotAvailable.class);
        }
    }
}
