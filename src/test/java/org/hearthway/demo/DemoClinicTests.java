package org.hearthway.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.browser.RunningClinic;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.Programs;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Refill;
import org.hearthway.reminder.Outbox;
import org.hearthway.testing.People;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's dates count from today; they must make sense together on whatever weekday that is. */
class DemoClinicTests {

    private static final Viewer MACHINE = new Viewer.Machine("test");
    private static final int MANY = 500;

    static Stream<Instant> threeWeeksOfMornings() {
        return IntStream.range(0, 21)
                .mapToObj(day -> Instant.parse("2026-11-16T15:00:00Z").plus(day, ChronoUnit.DAYS));
    }

    /** Weekends and holidays move what counts back from them, each in its own way. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("threeWeeksOfMornings")
    void itStartsOnWhateverDay(Instant now) {
        try (var clinic = RunningClinic.demoAt(now)) {
            assertThat(clinic.part(ChildRegister.class).all(MACHINE)).hasSizeGreaterThanOrEqualTo(9);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-03-12T14:00:00Z", "2026-03-15T22:00:00Z"})
    void everyStoryFitsTogether(Instant now) {
        try (var clinic = RunningClinic.demoAt(now)) {
            var today = LocalDate.ofInstant(now, ZoneId.of("America/New_York"));
            var plans = clinic.part(Plans.class).all(MACHINE);
            var children = clinic.part(ChildRegister.class).all(MACHINE);
            assertThat(children).hasSizeGreaterThanOrEqualTo(9);
            assertThat(plans).hasSizeGreaterThanOrEqualTo(8);
            SoftAssertions.assertSoftly(softly -> children.forEach(child -> {
                var visits = visits(clinic.part(Visits.class), child);
                worksOnWeekdays(softly, clinic, child);
                for (var plan : plans.getOrDefault(child.id(), List.of())) {
                    keepsItsWindows(softly, child, plan, visits, today);
                    missesNothing(softly, child, plan, visits, today);
                    exercisesOnlyAtHome(softly, clinic, child, plan);
                }
            }));
            refillIsTwelveDaysAwayAndNotBooked(clinic, children, today);
            nobodyIsRemindedOfDaysBeforeTheDemoBegan(clinic, now);
            oneDateRestsOnAValueOfTheClinicsOwnAndSaysSo(clinic, children);
        }
    }

    private static List<Visit> visits(Visits visits, Child child) {
        return Stream.concat(
                        visits.upcoming(MACHINE, child.id()).stream(), visits.past(MACHINE, child.id(), MANY).stream())
                .toList();
    }

    private static void worksOnWeekdays(SoftAssertions softly, RunningClinic clinic, Child child) {
        var weekend = List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
        var decided = clinic.part(Plans.class).decisions(MACHINE, child.id()).stream()
                .map(d -> LocalDate.ofInstant(d.at(), ZoneId.of("America/New_York")));
        softly.assertThat(decided).as(child.name()).noneMatch(day -> weekend.contains(day.getDayOfWeek()));
    }

    /** What is booked for the plan lies where the plan wants it, so that the desk has no quarrel with it. */
    private static void keepsItsWindows(
            SoftAssertions softly, Child child, Plan plan, List<Visit> visits, LocalDate today) {
        for (var visit : visits) {
            var day = visit.start().toLocalDate();
            windows(plan)
                    .filter(window ->
                            visit.purpose().filter(window.purpose()::equals).isPresent())
                    .filter(window -> !day.isBefore(today))
                    .forEach(window -> softly.assertThat(day)
                            .as(child.name() + " " + window.purpose())
                            .isBetween(window.from(), window.until()));
        }
    }

    /** What the present stage asked for in the past was attended; of a visit that comes again, the last time. */
    private static void missesNothing(
            SoftAssertions softly, Child child, Plan plan, List<Visit> visits, LocalDate today) {
        var now = plan.now().orElseThrow();
        var last = new LinkedHashMap<String, Plan.VisitWindow>();
        now.visits().stream()
                .filter(window -> window.until().isBefore(today))
                .forEach(window -> last.put(window.purpose().replaceAll("/\\d+$", ""), window));
        last.values()
                .forEach(window -> softly.assertThat(visits)
                        .as(child.name() + " " + window.purpose())
                        .anyMatch(visit -> visit.state() == Visit.State.ATTENDED
                                && visit.purpose()
                                        .filter(window.purpose()::equals)
                                        .isPresent()));
    }

    /** After an operation the home program begins when the child is at home again. */
    private static void exercisesOnlyAtHome(SoftAssertions softly, RunningClinic clinic, Child child, Plan plan) {
        plan.stage("hospital")
                .ifPresent(hospital -> softly.assertThat(
                                clinic.part(Programs.class).history(MACHINE, child.id()))
                        .as(child.name())
                        .noneMatch(version -> !version.effective().isBefore(hospital.start())
                                && !version.effective().isAfter(hospital.end())));
    }

    /** One date: the pump's record, and nothing booked that keeps it. */
    private static void refillIsTwelveDaysAwayAndNotBooked(
            RunningClinic clinic, List<Child> children, LocalDate today) {
        var teo = children.stream()
                .filter(c -> c.name().equals("Teo"))
                .findFirst()
                .orElseThrow();
        assertThat(clinic.part(Pumps.class).refill(MACHINE, teo.id()).flatMap(Refill::day))
                .contains(today.plusDays(12));
        assertThat(clinic.part(Visits.class).upcoming(MACHINE, teo.id()))
                .noneMatch(visit -> visit.kind().id().equals("refill"));
    }

    /** Of tasks, looks at home and steps of a calendar; a visit or a refill to come is still told of. */
    private static void nobodyIsRemindedOfDaysBeforeTheDemoBegan(RunningClinic clinic, Instant now) {
        assertThat(clinic.part(Outbox.class).board(MACHINE))
                .filteredOn(message -> message.visit().isEmpty()
                        && message.channel() == Outbox.Channel.MAIL
                        && !message.about().equals("Pump refill"))
                .isNotEmpty()
                .allMatch(message -> !message.due().isBefore(now));
    }

    /** Six weeks instead of four from the referral to the tests: Anouk is the one whose tests are still to come. */
    private static void oneDateRestsOnAValueOfTheClinicsOwnAndSaysSo(RunningClinic clinic, List<Child> children) {
        var sdr = clinic.part(ClinicValues.class).all(People.with(Role.ADMINISTRATOR)).stream()
                .filter(path -> path.pathway().equals("sdr"))
                .findFirst()
                .orElseThrow();
        assertThat(sdr.ownValues()).isEqualTo(1);
        assertThat(sdr.leftOut()).isEmpty();
        var anouk = children.stream()
                .filter(c -> c.name().equals("Anouk"))
                .findFirst()
                .orElseThrow();
        var plans = clinic.part(Plans.class);
        var plan = plans.plans(MACHINE, anouk.id()).get(0).plan();
        var tests = plan.stage("assessment").orElseThrow();
        assertThat(tests.why().base().orElseThrow().plusWeeks(6))
                .isBetween(tests.start().minusDays(4), tests.start());
        assertThat(plans.why(plan, tests).en())
                .contains("6 weeks", "That is our clinic’s own rule since", "The path as it came says 4 weeks.");
    }

    private static Stream<Plan.VisitWindow> windows(Plan plan) {
        return plan.stages().stream().flatMap(stage -> stage.visits().stream());
    }
}
