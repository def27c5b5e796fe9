package org.hearthway.path;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Device;
import org.hearthway.child.Device.Part;
import org.hearthway.child.Device.What;
import org.hearthway.child.Devices;
import org.hearthway.content.FamilyText;
import org.hearthway.content.SignOff;
import org.hearthway.paper.EmergencySheet;
import org.hearthway.paper.EmergencySheets;
import org.hearthway.path.PathDevices.Behind;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Template.DeviceFate;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

/** What a path says of a device, and what the record of devices says of it. It is Thursday, March 12, 2026. */
@HearthwayTest
class DeviceOutcomesTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final LocalDate OPERATION = LocalDate.of(2025, 9, 15);
    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);
    private static final Viewer.Person NURSE = People.with(Role.NURSE);

    @Autowired
    private Plans plans;

    @Autowired
    private PathDevices followed;

    @Autowired
    private Devices devices;

    @Autowired
    private EmergencySheets sheets;

    @Autowired
    private Needs needs;

    @Autowired
    private ChildRegister register;

    @Autowired
    private SignOff signOff;

    @Autowired
    private ClosedDayEffects closing;

    private ChildId child = ChildId.random();

    @BeforeEach
    void aChild() {
        signOff.accept(
                People.with(Role.ADMINISTRATOR),
                signOff.all(People.with(Role.ADMINISTRATOR)).stream()
                        .map(FamilyText::item)
                        .filter(item -> item.kind().equals("emergency"))
                        .toList());
        child = Children.enter(register);
    }

    private void operated(String path) {
        plans.begin(PHYSICIAN, child, path, Plans.Beginning.INSTEAD, OPERATION.minusMonths(6), "as agreed");
        say(path, new Change.Fix("operation", OPERATION));
    }

    private void say(String path, Change change) {
        var seen = plans.plans(PHYSICIAN, child).get(0).version();
        plans.apply(PHYSICIAN, child, path, change, "as agreed", seen);
    }

    private void ended(String path, String stage, String outcome) {
        say(path, new Change.End(stage, outcome, TODAY));
    }

    private static Part in(What what, LocalDate day) {
        return new Part(what, what.name(), day, Optional.empty());
    }

    private static Part out(What what, LocalDate day) {
        return new Part(what, what.name(), OPERATION, Optional.of(day));
    }

    private UUID withPump() {
        return devices.enter(
                NURSE, child, Device.Kind.PUMP, List.of(in(What.RESERVOIR, OPERATION), in(What.CATHETER, OPERATION)));
    }

    private UUID withStimulator() {
        return devices.enter(
                NURSE, child, Device.Kind.STIMULATOR, List.of(in(What.GENERATOR, OPERATION), in(What.LEAD, OPERATION)));
    }

    private List<DeviceFate> behind() {
        var stands = followed.behind(NURSE, child);
        var listed = needs.open(NURSE).stream()
                .filter(item -> item.child().equals(child) && item.cause().rule() == Rule.DEVICE_BEHIND)
                .map(item -> item.cause().subject())
                .toList();
        // what stands is on the list, and nothing else
        assertThat(listed)
                .containsExactlyInAnyOrderElementsOf(stands.stream()
                        .map(Behind::decision)
                        .map(String::valueOf)
                        .toList());
        return stands.stream().map(Behind::fate).toList();
    }

    private List<Plan.Care> heat(LocalDate day) {
        return plans.precautions(NURSE, child, day).stream()
                .filter(care -> care.rule().tag().equals("heat-treatment")
                        && care.rule().forbids())
                .toList();
    }

    private boolean isHeatForbidden(LocalDate day) {
        return !heat(day).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"infected", "removed"})
    void aPumpThatIsOutByThePathStandsUntilTheRecordSaysSo(String outcome) {
        operated("itb");
        var pump = withPump();
        assertThat(behind()).isEmpty();
        assertThat(followed.ifSaid(PHYSICIAN, child, "itb", new Change.End("finding-the-dose", outcome, TODAY)))
                .contains(DeviceFate.PUMP_OUT);

        ended("itb", "finding-the-dose", outcome);
        assertThat(behind()).containsExactly(DeviceFate.PUMP_OUT);

        // the tube may stay
        devices.change(NURSE, child, pump, List.of(out(What.RESERVOIR, TODAY), in(What.CATHETER, OPERATION)), 1);
        assertThat(behind()).isEmpty();
    }

    @Test
    void aDecisionThatIsTakenBackAsksForNothing() {
        operated("itb");
        withPump();
        ended("itb", "finding-the-dose", "removed");
        var last = plans.decisions(PHYSICIAN, child).get(0).version();
        plans.undo(PHYSICIAN, child, last, "entered for another child", last);
        assertThat(behind()).isEmpty();
    }

    @Test
    void anEndThatIsSaidAnewStandsForTheOneBefore() {
        operated("itb");
        withPump();
        ended("itb", "finding-the-dose", "removed");
        ended("itb", "finding-the-dose", "found");
        assertThat(behind()).isEmpty();
    }

    @Test
    void asksForNothingWhereNoDeviceIsRecorded() {
        operated("itb");
        assertThat(followed.ifSaid(PHYSICIAN, child, "itb", new Change.End("finding-the-dose", "removed", TODAY)))
                .isEmpty();
        ended("itb", "finding-the-dose", "removed");
        assertThat(behind()).isEmpty();
    }

    @Test
    void aNewPartIsAskedForOnceTheOperationTookPlace() {
        operated("itb");
        var pump = withPump();
        var told = LocalDate.of(2026, 1, 20);
        say("itb", new Change.End("finding-the-dose", "replaced", told));
        assertThat(behind()).isEmpty();
        say("itb", new Change.Fix("operation", TODAY));
        assertThat(behind()).containsExactly(DeviceFate.PUMP_RENEWED);

        devices.change(
                NURSE,
                child,
                pump,
                List.of(in(What.RESERVOIR, OPERATION), out(What.CATHETER, TODAY), in(What.CATHETER, TODAY)),
                1);
        assertThat(behind()).isEmpty();
    }

    @Test
    void anyPartOfAStimulatorThatCameOutSinceTheStageBeganAnswersForAnInfection() {
        operated("dbs");
        var stimulator = withStimulator();
        ended("dbs", "first-months", "infected");
        assertThat(behind()).containsExactly(DeviceFate.STIMULATOR_PART_OUT);
        devices.change(
                NURSE,
                child,
                stimulator,
                List.of(out(What.GENERATOR, TODAY.minusDays(1)), in(What.LEAD, OPERATION)),
                1);
        assertThat(behind()).isEmpty();
    }

    @Test
    void heatStaysForbiddenOnThePathAndOnTheSheetWhileLeadsStayIn() {
        operated("dbs");
        var stimulator = withStimulator();
        ended("dbs", "first-months", "leads-stay");
        assertThat(behind()).containsExactly(DeviceFate.GENERATOR_OUT);
        assertThat(isHeatForbidden(TODAY.plusYears(3))).isTrue();

        devices.change(NURSE, child, stimulator, List.of(out(What.GENERATOR, TODAY), in(What.LEAD, OPERATION)), 1);
        assertThat(behind()).isEmpty();
        assertThat(sheets.sheet(NURSE, child).warnings())
                .extracting(EmergencySheet.Warning::says)
                .anyMatch(says -> says.en().startsWith("NO heat treatment"));
        assertThat(isHeatForbidden(TODAY)).isTrue();
        assertThat(isHeatForbidden(TODAY.plusYears(3))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"infected", "replaced"})
    void heatStaysForbiddenWhileThePathGoesBackWithPartsIn(String outcome) {
        operated("dbs");
        withStimulator();
        assertThat(isHeatForbidden(TODAY)).isTrue();
        ended("dbs", "first-months", outcome);
        assertThat(heat(TODAY)).hasSize(1);
        // told once, also when the next operation forbids it anew
        var again = plans.plans(NURSE, child).get(0).plan().stage("operation").orElseThrow();
        assertThat(again.start()).isAfter(TODAY);
        TODAY.datesUntil(again.start().plusYears(1), Period.ofWeeks(1))
                .forEach(day -> assertThat(heat(day)).as(day.toString()).hasSize(1));
    }

    @Test
    void whatAnEarlierRoundForbidsHindersNoPreviewForTheWholeClinic() {
        operated("dbs");
        ended("dbs", "first-months", "infected");
        var again = plans.plans(NURSE, child).get(0).plan().stage("operation").orElseThrow();
        var administrator = People.with(Role.ADMINISTRATOR);
        assertThat(closing.ifClosed(administrator, again.start()).children())
                .filteredOn(effect -> effect.child().equals(child))
                .singleElement()
                .satisfies(effect -> assertThat(effect.moves()).isNotEmpty());
    }

    @Test
    void heatStaysForbiddenWhenTheNextOperationIsCalledOff() {
        operated("dbs");
        withStimulator();
        say("dbs", new Change.End("first-months", "infected", TODAY.minusDays(30)));
        ended("dbs", "getting-ready", "called-off");
        assertThat(heat(TODAY.plusYears(1))).hasSize(1);
    }

    @Test
    void everyPartOfTheStimulatorIsAskedForWhenAllCameOut() {
        operated("dbs");
        var stimulator = withStimulator();
        ended("dbs", "first-months", "all-out");
        assertThat(behind()).containsExactly(DeviceFate.STIMULATOR_OUT);
        devices.change(NURSE, child, stimulator, List.of(out(What.GENERATOR, TODAY), in(What.LEAD, OPERATION)), 1);
        assertThat(behind()).containsExactly(DeviceFate.STIMULATOR_OUT);
        devices.change(NURSE, child, stimulator, List.of(out(What.GENERATOR, TODAY), out(What.LEAD, TODAY)), 2);
        assertThat(behind()).isEmpty();
    }
}
