package org.hearthway.path.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.clinic.ClosedDays;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.ClosedDayEffects;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.hearthway.testing.SettableClock;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** One more day on which the clinic is closed, and what it moves; from Thursday, March 12, 2026. */
@HearthwayTest
class ClosedDayPlansTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final Viewer.Person SURGEON = People.with(Role.PHYSICIAN);
    private static final Viewer.Person ADMINISTRATOR = People.with(Role.ADMINISTRATOR);

    @Autowired
    private Plans plans;

    @Autowired
    private ClosedDays closed;

    @Autowired
    private ClosedDayEffects effects;

    @Autowired
    private Visits visits;

    @Autowired
    private ChildRegister register;

    @Autowired
    private SettableClock clock;

    @Autowired
    private JdbcClient jdbc;

    private final Map<String, ChildId> children = new HashMap<>();

    /** Three paths that begin on different days, so that their dates fall on different days, too. */
    @BeforeEach
    void begin() {
        var days = Map.of("sdr", TODAY, "itb", TODAY.minusDays(2), "rehab", TODAY.minusDays(6));
        days.forEach((path, day) -> {
            var child = Children.enter(register);
            plans.begin(SURGEON, child, path, Plans.Beginning.INSTEAD, day, "agreed with the family");
            children.put(path, child);
        });
    }

    private record Moved(ChildId child, String stage, LocalDate from, LocalDate to) {}

    private Set<Moved> between(Map<String, Plan> before, Map<String, Plan> after) {
        var moved = new HashSet<Moved>();
        children.forEach((path, child) -> after.get(path)
                .stages()
                .forEach(is -> before.get(path)
                        .stage(is.point())
                        .filter(was -> !was.start().equals(is.start()))
                        .ifPresent(was -> moved.add(new Moved(child, is.point(), was.start(), is.start())))));
        return moved;
    }

    private Set<Moved> told(ClosedDayEffects.Preview preview) {
        return preview.children().stream()
                .filter(effect -> children.containsValue(effect.child()))
                .flatMap(effect -> effect.moves().stream()
                        .map(move -> new Moved(effect.child(), move.stage(), move.from(), move.to())))
                .collect(Collectors.toSet());
    }

    @Test
    void thePreviewTellsWhatClosingAndOpeningThenDoAndSavesNothing() {
        var day = dayOf("sdr");
        var before = all();
        var closing = effects.ifClosed(ADMINISTRATOR, day);
        assertThat(all()).isEqualTo(before);
        closed.close(ADMINISTRATOR, day, "Town fair", "Feria del pueblo");
        var after = all();
        assertThat(told(closing)).isNotEmpty().isEqualTo(between(before, after));
        assertThat(effects.ifClosed(ADMINISTRATOR, day).children()).isEmpty();

        var opening = effects.ifOpened(ADMINISTRATOR, day);
        assertThat(all()).isEqualTo(after);
        assertThat(told(opening)).isEqualTo(between(after, before));
    }

    @Test
    void thePreviewNamesEachChildOnceAndWhatIsBookedOnTheDay() {
        var day = dayOf("sdr");
        var child = children.get("sdr");
        plans.begin(SURGEON, child, "rehab", Plans.Beginning.BESIDE, TODAY, "agreed with the family");
        visits.book(
                People.with(Role.COORDINATOR),
                child,
                new Visits.Booking("review", day.atTime(9, 0), 30, "", Optional.empty()));
        var told = effects.ifClosed(ADMINISTRATOR, day);
        assertThat(told.children())
                .extracting(ClinicValues.ChildEffect::child)
                .doesNotHaveDuplicates()
                .contains(child);
        assertThat(told.visits())
                .filteredOn(visit -> visit.child().equals(child))
                .extracting(visit -> visit.start().toLocalDate())
                .containsExactly(day);
    }

    @Test
    void onlyAnAdministratorIsToldWhoseDatesADayWouldMove() {
        assertThat(catchThrowableOfType(NotAvailable.class, () -> effects.ifClosed(SURGEON, TODAY.plusDays(1))))
                .isNotNull();
        assertThat(catchThrowableOfType(NotAvailable.class, () -> effects.ifOpened(SURGEON, TODAY.plusDays(1))))
                .isNotNull();
    }

    @AfterEach
    void openAgain() {
        closed.ahead(ADMINISTRATOR).forEach(day -> closed.open(ADMINISTRATOR, day.day(), day.version()));
    }

    private Plan plan(String path) {
        return plans.plans(SURGEON, children.get(path)).get(0).plan();
    }

    private Map<String, Plan> all() {
        var all = new HashMap<String, Plan>();
        children.keySet().forEach(path -> all.put(path, plan(path)));
        return all;
    }

    private static List<Plan.Planned> on(Plan plan, LocalDate day) {
        return plan.stages().stream()
                .filter(stage -> stage.start().equals(day)
                        && stage.stage().timing().onOpenDays()
                        && stage.why().origin() == Plan.Origin.RULE)
                .toList();
    }

    /** A day on which a stage of one path lies and none of the others'. */
    private LocalDate dayOf(String path) {
        var others =
                children.keySet().stream().filter(other -> !other.equals(path)).toList();
        return plan(path).stages().stream()
                .map(Plan.Planned::start)
                .filter(day -> day.isAfter(TODAY) && !on(plan(path), day).isEmpty())
                .filter(day -> others.stream().allMatch(other -> uses(plan(other), day)))
                .findFirst()
                .orElseThrow();
    }

    private static boolean uses(Plan plan, LocalDate day) {
        return plan.stages().stream()
                .noneMatch(stage -> stage.start().equals(day)
                        || stage.visits().stream()
                                .anyMatch(
                                        visit -> visit.day().filter(day::equals).isPresent()));
    }

    @Test
    void movesThePlanThatUsedTheDayAndNoOtherAndNamesTheHoliday() {
        var day = dayOf("rehab");
        var before = all();
        var stage = on(before.get("rehab"), day).get(0);

        closed.close(ADMINISTRATOR, day, "Town fair", "Feria del pueblo");

        var after = plan("rehab").stage(stage.point()).orElseThrow();
        assertThat(after.start()).isNotEqualTo(day);
        assertThat(after.why().shiftedFrom()).contains(day);
        assertThat(plans.why(plan("rehab"), after).en()).contains("Town fair");
        assertThat(plans.why(plan("rehab"), after).es()).contains("Feria del pueblo");
        assertThat(plan("sdr")).isEqualTo(before.get("sdr"));
        assertThat(plan("itb")).isEqualTo(before.get("itb"));
    }

    @Test
    void everythingIsAsBeforeOnceTheDayIsOpenAgain() {
        var day = dayOf("sdr");
        var before = all();
        closed.close(ADMINISTRATOR, day, "Town fair", "Feria del pueblo");
        assertThat(all()).isNotEqualTo(before);

        closed.open(ADMINISTRATOR, day, closed.ahead(ADMINISTRATOR).get(0).version());

        assertThat(all()).isEqualTo(before);
    }

    /** Another instance of the program has written to the same database. */
    @Test
    void whatAnotherInstanceWasToldCountsAfterSeconds() {
        var day = dayOf("sdr");
        var before = plan("sdr");
        jdbc.sql("insert into closed_day (closed_on, version, closed, name_en, name_es, said_by, said_at)"
                        + " values (:day, (select count(*) + 1 from closed_day where closed_on = :day), true, 'Town fair',"
                        + " 'Feria del pueblo', :by, current_timestamp)")
                .param("day", day)
                .param("by", UUID.randomUUID())
                .update();
        clock.advance(Duration.ofSeconds(2));
        assertThat(plan("sdr")).isNotEqualTo(before);
    }

    @Test
    void refusesADayOutOfBoundsOneThatIsClosedAlreadyAndANameThatIsMissing() {
        assertThat(problem(TODAY.minusDays(1), "Town fair", "Feria del pueblo")).startsWith("day clinic.closed.bounds");
        assertThat(problem(TODAY.plusYears(3).plusDays(1), "Town fair", "Feria del pueblo"))
                .startsWith("day clinic.closed.bounds");
        assertThat(problem(LocalDate.of(2026, 4, 3), "Town fair", "Feria del pueblo"))
                .as("Good Friday")
                .startsWith("day clinic.closed.already");
        assertThat(problem(LocalDate.of(2026, 3, 14), "Town fair", "Feria del pueblo"))
                .as("Saturday")
                .startsWith("day clinic.closed.already");
        assertThat(problem(LocalDate.of(2026, 3, 17), "Fair", " ")).startsWith("spanish clinic.closed.name");
        assertThat(problem(LocalDate.of(2026, 3, 17), "x".repeat(81), "Feria"))
                .startsWith("english clinic.closed.name");
        assertThat(closed.ahead(ADMINISTRATOR)).isEmpty();
    }

    private String problem(LocalDate day, String english, String spanish) {
        var problem = catchThrowableOfType(Invalid.class, () -> closed.close(ADMINISTRATOR, day, english, spanish))
                .problems()
                .get(0);
        return problem.field() + " " + problem.key();
    }

    @Test
    void isForAdministratorsAndForWhoSawHowItStands() {
        var day = LocalDate.of(2026, 3, 17);
        assertThat(catchThrowableOfType(
                        NotAvailable.class, () -> closed.close(SURGEON, day, "Town fair", "Feria del pueblo")))
                .isNotNull();
        closed.close(ADMINISTRATOR, day, "Town fair", "Feria del pueblo");
        var version = closed.ahead(ADMINISTRATOR).get(0).version();
        assertThat(catchThrowableOfType(NotAvailable.class, () -> closed.open(SURGEON, day, version)))
                .isNotNull();
        closed.open(ADMINISTRATOR, day, version);
        assertThat(catchThrowableOfType(Overtaken.class, () -> closed.open(ADMINISTRATOR, day, version)))
                .isNotNull();
        closed.close(ADMINISTRATOR, day, "Town fair", "Feria del pueblo");
        assertThat(closed.ahead(ADMINISTRATOR)).singleElement().satisfies(again -> {
            assertThat(again.version()).isEqualTo(version + 2);
            assertThat(again.by()).isEqualTo(ADMINISTRATOR.account());
        });
    }
}
