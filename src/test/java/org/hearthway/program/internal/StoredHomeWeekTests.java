package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.events.SessionLogged;
import org.hearthway.program.events.SessionTakenBack;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.HostileStrings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class StoredHomeWeekTests extends OnAProgram {

    @BeforeEach
    void reset() {
        save(0, Lines.line("bridge"), Lines.with(Lines.line("clam"), ProgramLine.Side.EACH));
        heard.changes.clear();
    }

    private void save(int seen, ProgramLine... lines) {
        programs.save(therapist, child, new Draft(TODAY, List.of(lines), "because"), seen);
    }

    private static Entry said(Outcome outcome) {
        return new Entry(
                UUID.randomUUID(),
                "bridge",
                TODAY,
                outcome,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    private static Entry pain(int pain) {
        return new Entry(
                UUID.randomUUID(),
                "bridge",
                TODAY,
                Outcome.DONE,
                Optional.empty(),
                Optional.of(4),
                Optional.of(pain),
                Optional.of(RatedBy.CHILD),
                "");
    }

    private Optional<Logged> ofBridge(LocalDate day) {
        return week.days(parent, child, day, 1).get(0).planned().stream()
                .filter(p -> p.exercise().id().equals("bridge"))
                .findFirst()
                .orElseThrow()
                .logged();
    }

    @Test
    void laysTheProgramOutWithMinutes() {
        var days = week.days(parent, child, TODAY.minusDays(1), 3);
        assertThat(days).extracting(HomeWeek.Day::date).containsExactly(TODAY.minusDays(1), TODAY, TODAY.plusDays(1));
        assertThat(days.get(0).planned()).isEmpty();
        assertThat(days.get(1).planned()).extracting(p -> p.exercise().id()).containsExactly("bridge", "clam");
        assertThat(days.get(1).planned()).extracting(HomeWeek.Planned::minutes).containsExactly(2, 3);
    }

    @Test
    void theSameTickSentTwiceCountsOnce() {
        var tick = said(Outcome.DONE);
        week.log(parent, child, tick);
        clock.advance(Duration.ofHours(3));
        week.log(parent, child, tick);
        assertThat(week.entries(parent, child, TODAY, TODAY))
                .extracting(Logged::at)
                .containsExactly(HearthwayTest.START);
        assertThat(heard.changes).hasSize(1);
    }

    @Test
    void theSameTickSentTwiceAtOnceCountsOnce() throws Exception {
        var tick = said(Outcome.DONE);
        var pool = Executors.newFixedThreadPool(8);
        try {
            var jobs = Collections.<Callable<Boolean>>nCopies(8, () -> week.log(parent, child, tick));
            for (var answer : pool.invokeAll(jobs)) {
                assertThat(answer.get()).isFalse();
            }
        } finally {
            pool.shutdown();
        }
        assertThat(week.entries(parent, child, TODAY, TODAY)).hasSize(1);
    }

    @Test
    void aKeyOfAnotherChildsTickIsRefused() {
        var tick = said(Outcome.DONE);
        week.log(parent, child, tick);
        assertThatThrownBy(() -> week.log(parent, ChildId.random(), tick)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void aLaterEntrySupersedes() {
        week.log(parent, child, said(Outcome.SOME));
        week.log(parent, child, said(Outcome.DONE));
        assertThat(ofBridge(TODAY)).hasValueSatisfying(logged -> {
            assertThat(logged.entry().outcome()).isEqualTo(Outcome.DONE);
            assertThat(logged.by()).isEqualTo("Parent");
        });
        assertThat(week.entries(parent, child, TODAY, TODAY)).hasSize(1);
    }

    @Test
    void takesBackAndLetsItBeSaidAgain() {
        week.log(parent, child, said(Outcome.DONE));
        week.takeBack(parent, child, "bridge", TODAY);
        assertThat(ofBridge(TODAY)).isEmpty();
        assertThat(week.entries(parent, child, TODAY, TODAY)).isEmpty();
        week.takeBack(parent, child, "bridge", TODAY);
        assertThat(heard.changes).hasExactlyElementsOfTypes(SessionLogged.class, SessionTakenBack.class);
        week.log(parent, child, said(Outcome.SOME));
        assertThat(ofBridge(TODAY)).isPresent();
    }

    @Test
    void painOfSevenOrMoreAsksForTheCallFirst() {
        assertThat(week.log(parent, child, pain(6))).isFalse();
        assertThat(week.log(parent, child, pain(7))).isTrue();
        assertThat(heard.changes)
                .map(change -> ((SessionLogged) change).isSevere())
                .containsExactly(false, true);
    }

    @Test
    void painOfSevenSentTwiceShowsTheCallTwiceAndIsToldOnce() {
        var bad = pain(9);
        assertThat(week.log(parent, child, bad)).isTrue();
        assertThat(week.log(parent, child, bad)).isTrue();
        assertThat(heard.changes).hasSize(1);
    }

    @Test
    void refusesWhatIsOutOfBounds() {
        assertThat(fields(pain(11))).containsExactly("pain");
        assertThat(fields(pain(-1))).containsExactly("pain");
        assertThat(fields(said(Outcome.COULD_NOT))).containsExactly("reason");
        var done = said(Outcome.DONE);
        assertThat(fields(with(done, "bridge", TODAY.plusDays(1), ""))).containsExactly("day");
        assertThat(fields(with(done, "bridge", TODAY.minusDays(32), ""))).containsExactly("day");
        assertThat(fields(with(done, "moon-walk", TODAY, ""))).containsExactly("exercise");
        assertThat(fields(with(done, "bridge", TODAY, "x".repeat(10_000)))).containsExactly("note");
        assertThat(fields(new Entry(
                        UUID.randomUUID(),
                        "bridge",
                        TODAY,
                        Outcome.DONE,
                        Optional.of(Reason.TIRED),
                        Optional.of(3),
                        Optional.empty(),
                        Optional.empty(),
                        "")))
                .containsExactly("reason", "ratedBy");
        assertThat(week.entries(parent, child, TODAY.minusDays(60), TODAY)).isEmpty();
    }

    private static Entry with(Entry entry, String exercise, LocalDate day, String note) {
        return new Entry(
                entry.key(),
                exercise,
                day,
                entry.outcome(),
                entry.reason(),
                entry.effort(),
                entry.pain(),
                entry.ratedBy(),
                note);
    }

    private List<String> fields(Entry entry) {
        return catchThrowableOfType(Invalid.class, () -> week.log(parent, child, entry)).problems().stream()
                .map(Problem::field)
                .toList();
    }

    @Test
    void aHostileNoteIsText() {
        for (var hostile : HostileStrings.all().toList()) {
            var note = hostile.substring(0, Math.min(2000, hostile.length()));
            week.log(parent, child, with(said(Outcome.DONE), "bridge", TODAY, note));
            assertThat(ofBridge(TODAY).orElseThrow().entry().note())
                    .isEqualTo(note.replace("\u0000", "").strip());
        }
    }

    /** 03:30 UTC on March 13 is 20:30 on March 12 in Los Angeles, where this parent lives. */
    @Test
    void todayIsTheFamilysToday() {
        clock.set(java.time.Instant.parse("2026-03-13T03:30:00Z"));
        var west = new Viewer.Person(
                AccountId.random(),
                "Parent",
                Set.of(Role.CAREGIVER),
                Language.EN,
                java.time.ZoneId.of("America/Los_Angeles"));
        assertThat(catchThrowableOfType(
                                Invalid.class,
                                () -> week.log(west, child, with(said(Outcome.DONE), "bridge", TODAY.plusDays(1), "")))
                        .problems())
                .hasSize(1);
    }

    @Test
    void aCaregiverWhoOnlySeesIsRefused() {
        gate.deny(Action.LOG_SESSION);
        assertThatThrownBy(() -> week.log(parent, child, said(Outcome.DONE))).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> week.takeBack(parent, child, "bridge", TODAY)).isInstanceOf(NotAvailable.class);
        assertThat(week.days(parent, child, TODAY, 1).get(0).planned()).hasSize(2);
        gate.deny(Action.SEE_WEEK);
        assertThatThrownBy(() -> week.days(parent, child, TODAY, 1)).isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_FAMILY_PAGES);
        assertThatThrownBy(() -> week.entries(parent, child, TODAY, TODAY)).isInstanceOf(NotAvailable.class);
    }

    @Test
    void familiesSeeOnlyWhatTheClinicHasAccepted() {
        accepted.hidden.add("clam");
        assertThat(week.days(parent, child, TODAY, 1).get(0).planned())
                .extracting(p -> p.exercise().id())
                .containsExactly("bridge");
        assertThat(week.days(therapist, child, TODAY, 1).get(0).planned()).hasSize(2);
    }

    /** Reference values, EX-12: a rule of care overrides the program, also one that came after it. */
    @Test
    void whatTheStageForbidsIsNotInTheDay() {
        save(1, Lines.line("bridge"), Lines.with(Lines.line("roll-helper"), ProgramLine.Side.EACH));
        path.rule("passive-trunk-twist", true, TODAY.minusDays(30), TODAY.plusDays(2));
        assertThat(week.days(parent, child, TODAY, 4))
                .extracting(day -> day.planned().size())
                .containsExactly(1, 1, 2, 2);
        path.rule("passive-trunk-twist", false, TODAY.minusDays(30), TODAY.plusDays(2));
        assertThat(week.days(parent, child, TODAY, 1).get(0).planned()).hasSize(2);
    }

    @Test
    void aNewVersionDoesNotChangeDaysGoneBy() {
        clock.advance(Duration.ofDays(1));
        programs.save(
                therapist,
                child,
                new Draft(
                        TODAY.plusDays(1),
                        List.of(Lines.with(Lines.line("bridge"), new Dose(3, 12, 0, 0, 1))),
                        "stronger"),
                1);
        var days = week.days(parent, child, TODAY, 2);
        assertThat(days.get(0).planned()).hasSize(2);
        assertThat(days.get(1).planned()).hasSize(1);
        assertThat(days.get(1).planned().get(0).line().dose().repetitions()).isEqualTo(12);
    }
}
