package org.hearthway.program.internal;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.FamilyTimes.Busy;
import org.hearthway.program.FamilyTimes.Slot;
import org.hearthway.program.FamilyTimes.Times;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.Missed;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.Rhythm;
import org.hearthway.program.engine.week.MissedSessions.Why;
import org.hearthway.program.engine.week.WeekPlan;
import org.hearthway.program.events.BackFromAway;
import org.hearthway.program.events.DaysAwaySaid;
import org.hearthway.program.events.FamilyTimesSaved;
import org.hearthway.program.events.SessionMoveTakenBack;
import org.hearthway.program.events.SessionMoved;
import org.hearthway.testing.LeanClinic;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The clock stands at Thursday, March 12, 2026, 10:00 in New York; the program begins on Monday, March 16. */
class FamilyWeekTests extends OnAProgram {

    private static final LocalDate NEXT = LocalDate.of(2026, 3, 16);
    private static final LocalTime AFTER_SCHOOL = LocalTime.of(16, 0);

    @Autowired
    FamilyTimes times;

    @Autowired
    Missed missed;

    private static final Set<String> SIDED = Set.of("calf-wall", "hamstring-helper", "roll-helper", "clam");

    private static ProgramLine line(String exercise) {
        var line = Lines.line(exercise);
        return SIDED.contains(exercise) ? Lines.with(line, ProgramLine.Side.EACH) : line;
    }

    private static ProgramLine often(String exercise, int days) {
        return often(exercise, days, Rhythm.Spread.ANY);
    }

    private static ProgramLine often(String exercise, int days, Rhythm.Spread spread) {
        var line = line(exercise);
        return line.with(line.prescription().with(new Rhythm(days, spread)));
    }

    private void save(int seen, LocalDate effective, ProgramLine... lines) {
        programs.save(therapist, child, new Draft(effective, List.of(lines), "because"), seen);
    }

    private static Times daily(int minutes, DayOfWeek... days) {
        return new Times(
                Arrays.stream(days.length == 0 ? DayOfWeek.values() : days)
                        .map(day -> new Slot(day, AFTER_SCHOOL, minutes, List.of("Ana")))
                        .toList(),
                List.of(),
                Optional.empty());
    }

    private List<HomeWeek.Day> days(LocalDate from) {
        return week.days(parent, child, from, 7);
    }

    private static List<String> names(HomeWeek.Day day) {
        return day.planned().stream().map(p -> p.exercise().id()).toList();
    }

    private static List<LocalDate> daysOf(List<HomeWeek.Day> days, String exercise) {
        return days.stream()
                .filter(day -> names(day).contains(exercise))
                .map(HomeWeek.Day::date)
                .toList();
    }

    private void at(LocalDate day, int hour) {
        clock.set(day.atTime(hour, 0).atZone(LeanClinic.NEW_YORK).toInstant());
    }

    private void log(String exercise, LocalDate day, Outcome outcome, Reason... reason) {
        week.log(
                parent,
                child,
                new Entry(
                        UUID.randomUUID(),
                        exercise,
                        day,
                        outcome,
                        Stream.of(reason).findFirst(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        ""));
    }

    @Test
    void aProgramOfBeforeIsAsItWasWhereTheFamilyNamesNoTimes() {
        save(0, NEXT, Lines.line("bridge"), Lines.with(Lines.line("clam"), ProgramLine.Side.EACH));
        assertThat(days(NEXT)).allSatisfy(day -> {
            assertThat(names(day)).containsExactly("bridge", "clam");
            assertThat(day.times()).isEmpty();
            assertThat(day.planned())
                    .allSatisfy(planned -> assertThat(planned.times()).isEmpty());
        });
        assertThat(missed.offers(parent, child)).isEmpty();
    }

    @Test
    void aWeekIsTriedOutAsItWouldBeLaidOutAndNothingIsKept() {
        times.save(parent, child, daily(5, DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY), 0);
        var lines = List.of(often("bridge", 3), often("tall-kneel", 7));
        var trial = times.tryOut(therapist, child, NEXT, lines).orElseThrow();
        assertThat(trial.sessions())
                .filteredOn(tried -> tried.line() == 0)
                .hasSize(3)
                .allSatisfy(tried -> assertThat(tried.start()).contains(AFTER_SCHOOL));
        assertThat(trial.out()).extracting(out -> out.exercise().id()).contains("tall-kneel");
        assertThat(days(NEXT)).allSatisfy(day -> assertThat(day.planned()).isEmpty());

        save(0, NEXT, lines.toArray(ProgramLine[]::new));
        var laid = days(NEXT);
        assertThat(daysOf(laid, "bridge").stream().map(LocalDate::getDayOfWeek))
                .as("as it was tried out")
                .containsExactlyElementsOf(trial.sessions().stream()
                        .filter(tried -> tried.line() == 0)
                        .map(FamilyTimes.Tried::day)
                        .toList());
    }

    @Test
    void nothingIsTriedOutWhereTheLinesSayAll() {
        assertThat(times.tryOut(therapist, child, NEXT, List.of(Lines.line("bridge"))))
                .isEmpty();
        assertThat(times.tryOut(therapist, child, NEXT, List.of())).isEmpty();
    }

    @Test
    void aRhythmIsLaidOutByDayWhereTheFamilyNamesNoTimes() {
        save(0, NEXT, often("bridge", 3, Rhythm.Spread.NOT_FOLLOWING), often("calf-wall", 5));
        var days = days(NEXT);
        var bridge = daysOf(days, "bridge");
        assertThat(bridge).hasSize(3).noneMatch(day -> bridge.contains(day.plusDays(1)));
        assertThat(daysOf(days, "calf-wall")).hasSize(5);
        assertThat(days).allSatisfy(day -> assertThat(day.times()).isEmpty());
        assertThat(daysOf(days(NEXT.plusDays(7)), "bridge"))
                .containsExactlyElementsOf(
                        bridge.stream().map(day -> day.plusDays(7)).toList());
    }

    @Test
    void theFamilysTimesSayWhen() {
        save(0, NEXT, often("bridge", 3), often("calf-wall", 5));
        times.save(parent, child, daily(20, MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY), 0);
        var days = days(NEXT);
        assertThat(daysOf(days, "calf-wall")).hasSize(5);
        assertThat(names(days.get(5))).isEmpty();
        var monday = days.get(0);
        assertThat(monday.times()).containsExactly(new HomeWeek.Time(AFTER_SCHOOL, 20, List.of("Ana")));
        assertThat(monday.planned()).flatExtracting(Planned::times).containsOnly(AFTER_SCHOOL);
        assertThat(heard.changes).hasAtLeastOneElementOfType(FamilyTimesSaved.class);
    }

    @Test
    void strengthComesBeforeStretchingInATime() {
        save(0, NEXT, line("calf-wall"), Lines.with(Lines.line("bridge"), Set.of(MONDAY)));
        times.save(parent, child, daily(60), 0);
        assertThat(names(days(NEXT).get(0))).containsExactly("bridge", "calf-wall");
    }

    @Test
    void daysThatTheTherapistNamedAreKeptAlsoWhenTheyFollowEachOther() {
        save(0, NEXT, Lines.with(Lines.line("bridge"), Set.of(MONDAY, TUESDAY, WEDNESDAY)));
        times.save(parent, child, daily(20), 0);
        assertThat(daysOf(days(NEXT), "bridge")).containsExactly(NEXT, NEXT.plusDays(1), NEXT.plusDays(2));
    }

    @Test
    void schoolTakesTimeAway() {
        save(0, NEXT, often("bridge", 1), often("calf-wall", 1));
        var busy = List.of(new Busy(MONDAY, LocalTime.of(15, 0), LocalTime.of(16, 50), "Swimming"));
        times.save(parent, child, new Times(daily(60, MONDAY).slots(), busy, Optional.empty()), 0);
        assertThat(days(NEXT).get(0).times())
                .containsExactly(new HomeWeek.Time(LocalTime.of(16, 50), 10, List.of("Ana")));
    }

    @Test
    void aWeekWithNoFreeDayShowsTheExercisesByDay() {
        save(0, NEXT, often("bridge", 3), often("calf-wall", 5));
        var busy = List.of(new Busy(MONDAY, LocalTime.of(8, 0), LocalTime.of(18, 0), "School"));
        var full = new Times(daily(30, MONDAY).slots(), busy, Optional.empty());
        times.save(parent, child, full, 0);
        assertThat(full.minutesAWeek()).isZero();
        assertThat(daysOf(days(NEXT), "calf-wall")).hasSize(5);
        assertThat(days(NEXT)).allSatisfy(day -> assertThat(day.times()).isEmpty());
        assertThat(times.fit(therapist, child, NEXT)).isEmpty();
    }

    @Test
    void whatDoesNotFitIsToldWithWays() {
        save(0, NEXT, often("bridge", 3), often("calf-wall", 5));
        times.save(parent, child, daily(5, MONDAY, WEDNESDAY, FRIDAY), 0);
        var fit = times.fit(therapist, child, NEXT).orElseThrow();
        assertThat(fit.version()).isEqualTo(1);
        assertThat(fit.out()).isNotEmpty().anySatisfy(out -> {
            assertThat(out.exercise().id()).isEqualTo("calf-wall");
            assertThat(out.out().sessions()).isPositive();
        });
        times.save(parent, child, daily(60), 1);
        assertThat(times.fit(therapist, child, NEXT)).isEmpty();
    }

    @Test
    void anExerciseThatNeedsHandsIsOnlyWhereSomebodyIs() {
        save(0, NEXT, often("hamstring-helper", 2));
        var alone = new Times(
                Stream.concat(
                                daily(30, MONDAY, TUESDAY).slots().stream()
                                        .map(slot -> new Slot(slot.day(), slot.start(), slot.minutes(), List.of())),
                                daily(30, FRIDAY).slots().stream())
                        .toList(),
                List.of(),
                Optional.empty());
        times.save(parent, child, alone, 0);
        assertThat(daysOf(days(NEXT), "hamstring-helper")).containsExactly(NEXT.plusDays(4));
        assertThat(times.fit(parent, child, NEXT).orElseThrow().out())
                .singleElement()
                .satisfies(out -> {
                    assertThat(out.out().reason()).isEqualTo(WeekPlan.Reason.NO_HELPER);
                    assertThat(out.out().ways()).hasAtLeastOneElementOfType(WeekPlan.Way.Help.class);
                });
    }

    @Test
    void takingAwayTuesdayMovesOnlyWhatMustMove() {
        save(0, NEXT, often("bridge", 2), often("calf-wall", 4), often("ball-throw", 3));
        times.save(parent, child, daily(30), 0);
        var before = days(NEXT);
        var tuesday = NEXT.plusDays(1);
        times.goAway(parent, child, UUID.randomUUID(), tuesday, tuesday, FamilyTimes.Reason.HOLIDAY);
        var after = days(NEXT);
        for (int i = 0; i < 7; i++) {
            if (i == 1) {
                assertThat(names(after.get(i))).isEmpty();
            } else {
                assertThat(names(after.get(i))).containsAll(names(before.get(i)));
            }
        }
        assertThat(days(NEXT.plusDays(7)))
                .extracting(FamilyWeekTests::names)
                .isEqualTo(before.stream().map(FamilyWeekTests::names).toList());
    }

    @Test
    void theDaysAwayEndWhenTheChildIsBack() {
        save(0, NEXT, Lines.line("bridge"));
        times.save(parent, child, daily(30), 0);
        var key = UUID.randomUUID();
        times.goAway(parent, child, key, NEXT, NEXT.plusDays(6), FamilyTimes.Reason.ILL);
        times.goAway(parent, child, key, NEXT, NEXT.plusDays(6), FamilyTimes.Reason.ILL);
        assertThat(days(NEXT)).allSatisfy(day -> assertThat(day.planned()).isEmpty());
        assertThat(times.away(parent, child)).hasSize(1);

        at(NEXT.plusDays(2), 9);
        times.comeBack(parent, child, key);
        assertThat(daysOf(days(NEXT), "bridge"))
                .containsExactly(
                        NEXT.plusDays(2), NEXT.plusDays(3), NEXT.plusDays(4), NEXT.plusDays(5), NEXT.plusDays(6));
        assertThat(times.away(parent, child)).isEmpty();
        assertThatThrownBy(() -> times.comeBack(parent, child, key)).isInstanceOf(Overtaken.class);
        assertThat(heard.changes)
                .hasAtLeastOneElementOfType(DaysAwaySaid.class)
                .hasAtLeastOneElementOfType(BackFromAway.class);
    }

    @Test
    void aDayGoneByStaysAsItWas() {
        save(0, NEXT, often("bridge", 3), often("calf-wall", 4));
        times.save(parent, child, daily(30), 0);
        at(NEXT.plusDays(3), 12);
        var gone = week.days(parent, child, NEXT, 3);
        times.save(parent, child, daily(15, THURSDAY, FRIDAY, SATURDAY), 1);
        assertThat(week.days(parent, child, NEXT, 3)).isEqualTo(gone);
        save(1, NEXT.plusDays(3), Lines.line("ball-throw"));
        assertThat(week.days(parent, child, NEXT, 3)).isEqualTo(gone);
        times.goAway(parent, child, UUID.randomUUID(), NEXT.plusDays(3), NEXT.plusDays(9), FamilyTimes.Reason.OTHER);
        assertThat(week.days(parent, child, NEXT, 3)).isEqualTo(gone);
    }

    @Test
    void whatWasDoneThisWeekIsNotAskedForTwiceWhenTimesChange() {
        save(0, NEXT, often("calf-wall", 3));
        times.save(parent, child, daily(30, MONDAY, TUESDAY, WEDNESDAY), 0);
        at(NEXT.plusDays(3), 12);
        times.save(parent, child, daily(30), 1);
        assertThat(daysOf(days(NEXT), "calf-wall")).hasSize(3);
        assertThat(daysOf(days(NEXT.plusDays(7)), "calf-wall")).hasSize(3);
    }

    @Test
    void aDayOfWhichSomethingWasSaidIsNotLaidOutAnew() {
        save(0, TODAY, Lines.line("bridge"));
        log("bridge", TODAY, Outcome.DONE);
        assertThat(times.save(parent, child, daily(30), 0).effective()).isEqualTo(TODAY.plusDays(1));
        assertThat(week.days(parent, child, TODAY, 1).get(0).planned().get(0).times())
                .isEmpty();
        assertThat(week.days(parent, child, TODAY.plusDays(1), 1)
                        .get(0)
                        .planned()
                        .get(0)
                        .times())
                .hasSize(1);
    }

    @Test
    void whatIsLockedIsLeftOutAndMovesNothing() {
        save(0, NEXT, often("roll-helper", 4), often("bridge", 3));
        times.save(parent, child, daily(40), 0);
        var before = days(NEXT);
        path.rule("passive-trunk-twist", true, NEXT, NEXT.plusDays(7));
        assertThat(days(NEXT)).allSatisfy(day -> assertThat(names(day)).doesNotContain("roll-helper"));
        assertThat(daysOf(days(NEXT), "bridge")).isEqualTo(daysOf(before, "bridge"));
        assertThat(daysOf(days(NEXT.plusDays(7)), "roll-helper")).hasSize(4);
    }

    @Test
    void anotherVersionOfTheProgramStaysNearTheWeekThatIs() {
        save(0, NEXT, often("bridge", 3), often("calf-wall", 4));
        times.save(parent, child, daily(30), 0);
        var before = days(NEXT.plusDays(7));
        save(1, NEXT.plusDays(7), often("bridge", 3), often("calf-wall", 4), often("ball-throw", 2));
        var after = days(NEXT.plusDays(7));
        assertThat(daysOf(after, "bridge")).isEqualTo(daysOf(before, "bridge"));
        assertThat(daysOf(after, "calf-wall")).isEqualTo(daysOf(before, "calf-wall"));
        assertThat(daysOf(after, "ball-throw")).hasSize(2);
    }

    // bad input

    private List<String> fields(Times wrong) {
        return catchThrowableOfType(Invalid.class, () -> times.save(parent, child, wrong, 0)).problems().stream()
                .map(Problem::field)
                .toList();
    }

    private static Times slots(Slot... slots) {
        return new Times(List.of(slots), List.of(), Optional.empty());
    }

    @Test
    void refusesWhatIsOutOfBounds() {
        save(0, NEXT, Lines.line("bridge"));
        assertThat(fields(slots(
                        new Slot(MONDAY, AFTER_SCHOOL, 30, List.of()),
                        new Slot(MONDAY, AFTER_SCHOOL.plusMinutes(29), 30, List.of()))))
                .containsExactly("slots.1");
        assertThat(fields(slots(new Slot(MONDAY, AFTER_SCHOOL, 4, List.of())))).containsExactly("slots.0");
        assertThat(fields(slots(new Slot(MONDAY, LocalTime.of(23, 30), 60, List.of()))))
                .containsExactly("slots.0");
        assertThat(fields(slots(new Slot(MONDAY, AFTER_SCHOOL, 30, List.of("x".repeat(41))))))
                .containsExactly("slots.0");
        var many = new ArrayList<Slot>();
        for (int hour = 8; hour < 15; hour++) {
            many.add(new Slot(MONDAY, LocalTime.of(hour, 0), 10, List.of()));
        }
        assertThat(fields(new Times(many, List.of(), Optional.empty()))).containsExactly("slots.0");
        assertThat(fields(new Times(
                        List.of(),
                        List.of(new Busy(MONDAY, AFTER_SCHOOL, AFTER_SCHOOL.minusHours(1), "Club")),
                        Optional.of(300))))
                .containsExactly("busy.0", "most");
        assertThat(times.latest(parent, child)).isEmpty();
        assertThat(awayFields(TODAY.minusDays(1), TODAY)).containsExactly("first");
        assertThat(awayFields(TODAY, TODAY.minusDays(1))).containsExactly("last");
        assertThat(awayFields(TODAY, TODAY.plusDays(500))).containsExactly("last");
    }

    private List<String> awayFields(LocalDate first, LocalDate last) {
        return catchThrowableOfType(
                        Invalid.class,
                        () -> times.goAway(parent, child, UUID.randomUUID(), first, last, FamilyTimes.Reason.ILL))
                .problems()
                .stream()
                .map(Problem::field)
                .toList();
    }

    @Test
    void twoWhoSaveAtOnceDoNotOverwriteEachOther() {
        save(0, NEXT, Lines.line("bridge"));
        times.save(parent, child, daily(30), 0);
        assertThatThrownBy(() -> times.save(therapist, child, daily(20), 0)).isInstanceOf(Overtaken.class);
        var second = times.save(therapist, child, daily(20), 1);
        assertThat(second.onBehalf()).isTrue();
        assertThat(times.history(therapist, child))
                .extracting(FamilyTimes.Version::by)
                .containsExactly("Therapist", "Parent");
    }

    @Test
    void whoMayNotTickMayNotWriteTimes() {
        save(0, NEXT, Lines.line("bridge"));
        gate.deny(Action.LOG_SESSION);
        assertThatThrownBy(() -> times.save(parent, child, daily(30), 0)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> times.goAway(parent, child, UUID.randomUUID(), TODAY, TODAY, FamilyTimes.Reason.ILL))
                .isInstanceOf(NotAvailable.class);
        gate.deny(Action.CHANGE_PROGRAM);
        assertThatThrownBy(() -> times.save(therapist, child, daily(30), 0)).isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_FAMILY_PAGES);
        assertThatThrownBy(() -> times.latest(parent, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> missed.offers(parent, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> times.save(parent, child, daily(30), 0)).isInstanceOf(NotAvailable.class);
    }

    // missed sessions

    private Missed.Offer offer(String exercise) {
        return missed.offers(parent, child).stream()
                .filter(offer -> offer.exercise().id().equals(exercise))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aMissedSessionMovesInItsWeekAloneAndBack() {
        save(0, NEXT, often("calf-wall", 2));
        times.save(parent, child, daily(30, MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY), 0);
        var planned = daysOf(days(NEXT), "calf-wall");
        var day = planned.get(0);
        at(day.plusDays(1), 9);
        var offer = offer("calf-wall");
        assertThat(offer.day()).isEqualTo(day);
        var to = offer.to().orElseThrow();
        assertThat(to.day()).isAfter(day).isNotIn(planned);

        var key = UUID.randomUUID();
        missed.move(parent, child, key, offer);
        missed.move(parent, child, key, offer);
        assertThat(daysOf(days(NEXT), "calf-wall"))
                .hasSize(2)
                .contains(to.day())
                .doesNotContain(day);
        assertThat(daysOf(days(NEXT.plusDays(7)), "calf-wall"))
                .isEqualTo(planned.stream().map(one -> one.plusDays(7)).toList());
        assertThat(week.days(parent, child, day, 1).get(0).moved())
                .singleElement()
                .satisfies(moved -> {
                    assertThat(moved.to()).isEqualTo(to.day());
                    assertThat(moved.start()).contains(AFTER_SCHOOL);
                });
        assertThat(missed.offers(parent, child)).isEmpty();

        missed.takeBack(parent, child, key);
        assertThat(daysOf(days(NEXT), "calf-wall")).isEqualTo(planned);
        assertThat(heard.changes)
                .hasAtLeastOneElementOfType(SessionMoved.class)
                .hasAtLeastOneElementOfType(SessionMoveTakenBack.class);
    }

    @Test
    void nothingIsDoubled() {
        save(0, NEXT, Lines.line("bridge"));
        times.save(parent, child, daily(30), 0);
        at(NEXT.plusDays(2), 9);
        assertThat(missed.offers(parent, child)).hasSize(2).allSatisfy(offer -> {
            assertThat(offer.to()).isEmpty();
            assertThat(offer.why()).contains(Why.ENOUGH);
        });
        assertThatThrownBy(() -> missed.move(
                        parent,
                        child,
                        UUID.randomUUID(),
                        new Missed.Offer(
                                offer("bridge").exercise(),
                                "bridge",
                                NEXT,
                                AFTER_SCHOOL,
                                Optional.of(new Missed.To(NEXT.plusDays(3), AFTER_SCHOOL, true)),
                                Optional.empty())))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void aMoveEndsWhenTheSessionWasDoneOnItsOwnDayAfterAll() {
        save(0, NEXT, often("calf-wall", 2));
        times.save(parent, child, daily(30, MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY), 0);
        var planned = daysOf(days(NEXT), "calf-wall");
        at(planned.get(0).plusDays(1), 9);
        missed.move(parent, child, UUID.randomUUID(), offer("calf-wall"));
        log("calf-wall", planned.get(0), Outcome.DONE);
        assertThat(daysOf(days(NEXT), "calf-wall")).isEqualTo(planned);
    }

    @Test
    void whatHurtIsNotOfferedAgain() {
        save(0, NEXT, often("calf-wall", 2));
        times.save(parent, child, daily(30), 0);
        var day = daysOf(days(NEXT), "calf-wall").get(0);
        at(day, 17);
        log("calf-wall", day, Outcome.COULD_NOT, Reason.TIRED);
        assertThat(missed.offers(parent, child)).hasSize(1);
        log("calf-wall", day, Outcome.COULD_NOT, Reason.PAIN);
        assertThat(missed.offers(parent, child)).isEmpty();
    }

    @Test
    void aMoveThatWasOvertakenIsNotTakenBackOnceItsDayIsOver() {
        save(0, NEXT, often("calf-wall", 2));
        times.save(parent, child, daily(30, MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY), 0);
        at(daysOf(days(NEXT), "calf-wall").get(0).plusDays(1), 9);
        var key = UUID.randomUUID();
        var offer = offer("calf-wall");
        missed.move(parent, child, key, offer);
        clock.advance(Duration.ofDays(5));
        assertThatThrownBy(() -> missed.takeBack(parent, child, key)).isInstanceOf(Overtaken.class);
    }
}
