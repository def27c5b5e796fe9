package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Arrival;
import org.hearthway.program.HomeWeek.Arrived;
import org.hearthway.program.HomeWeek.Became;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.HomeWeek.Tick;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.HostileStrings;
import org.hearthway.testing.LeanClinic;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What phones bring days later. The clock stands at Thursday, March 12, 2026, 10:00 in New York, or moves on from there. */
class BroughtTicksTests extends OnAProgram {

    private final Viewer.Person dana = person("Dana", Role.CAREGIVER);
    private final Viewer.Person ruth = person("Ruth", Role.CAREGIVER);

    @BeforeEach
    void reset() {
        save(
                0,
                Lines.line("bridge"),
                Lines.with(Lines.line("clam"), ProgramLine.Side.EACH),
                Lines.with(Lines.line("roll-helper"), ProgramLine.Side.EACH));
        heard.changes.clear();
    }

    private void save(int seen, ProgramLine... lines) {
        programs.save(
                therapist,
                child,
                new Draft(LocalDate.ofInstant(clock.instant(), LeanClinic.NEW_YORK), List.of(lines), "because"),
                seen);
    }

    private static Entry entry(String exercise, LocalDate day, Outcome outcome, @Nullable Integer pain, String note) {
        return new Entry(
                UUID.randomUUID(),
                exercise,
                day,
                outcome,
                outcome == Outcome.COULD_NOT ? Optional.of(Reason.TIRED) : Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(pain),
                Optional.ofNullable(pain).map(p -> RatedBy.CHILD),
                note);
    }

    private Tick done(String exercise, LocalDate day) {
        return tick(entry(exercise, day, Outcome.DONE, null, ""));
    }

    private Tick tick(Entry entry) {
        return new Tick(entry, clock.instant(), Optional.of(1), 0);
    }

    private Arrived bring(Viewer.Person who, Tick tick) {
        return week.bring(who, child, List.of(tick)).get(0);
    }

    private Logged counted(String exercise, LocalDate day) {
        return week.entries(dana, child, day, day).stream()
                .filter(logged -> logged.entry().exercise().equals(exercise))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTickKeepsItsOwnTimeBesideTheTimeItCame() {
        var tick = done("bridge", TODAY);
        clock.advance(Duration.ofDays(3));
        assertThat(bring(dana, tick).arrival()).isEqualTo(Arrival.KEPT);

        var counted = counted("bridge", TODAY);
        assertThat(counted.at()).isEqualTo(HearthwayTest.START);
        assertThat(counted.received()).isEqualTo(HearthwayTest.START.plus(Duration.ofDays(3)));
        assertThat(counted.version()).contains(1);
        assertThat(counted.became()).isEmpty();
    }

    @Test
    void aTickSentAgainIsKnownAndCountsOnce() throws Exception {
        var tick = done("bridge", TODAY);
        var pool = Executors.newFixedThreadPool(8);
        try {
            var jobs = Collections.<Callable<Arrival>>nCopies(
                    8, () -> bring(dana, tick).arrival());
            var answers = pool.invokeAll(jobs).stream()
                    .map(answer -> {
                        try {
                            return answer.get();
                        } catch (Exception e) {
                            throw new IllegalStateException(e);
                        }
                    })
                    .toList();
            assertThat(answers).containsOnly(Arrival.KEPT, Arrival.KNOWN).containsOnlyOnce(Arrival.KEPT);
        } finally {
            pool.shutdown();
        }
        assertThat(week.entries(dana, child, TODAY, TODAY)).hasSize(1);
        assertThat(heard.changes).hasSize(1);
    }

    @Test
    void oneThatIsRefusedHoldsNoOtherBack() {
        var answers = week.bring(
                dana,
                child,
                List.of(
                        done("bridge", TODAY.plusDays(1)),
                        done("clam", TODAY),
                        tick(entry("bridge", TODAY, Outcome.DONE, 11, "x".repeat(3000)))));
        assertThat(answers)
                .extracting(Arrived::arrival)
                .containsExactly(Arrival.REFUSED, Arrival.KEPT, Arrival.REFUSED);
        assertThat(answers.get(0).problems())
                .containsExactly(Problem.at("day", "program.said.day", TODAY.minusDays(31), TODAY));
        assertThat(answers.get(2).problems()).extracting(Problem::field).containsExactly("pain", "note");
        assertThat(week.entries(dana, child, TODAY.minusDays(40), TODAY)).hasSize(1);
    }

    @Test
    void aTimeThatCannotHaveBeenIsTheNearestThatCan() {
        clock.advance(Duration.ofDays(2));
        var early = new Tick(entry("bridge", TODAY, Outcome.DONE, null, ""), Instant.EPOCH, Optional.empty(), 0);
        var late = new Tick(
                entry("clam", TODAY, Outcome.DONE, null, ""),
                Instant.parse("2031-01-01T00:00:00Z"),
                Optional.empty(),
                0);
        assertThat(week.bring(dana, child, List.of(early, late)))
                .extracting(Arrived::arrival)
                .containsOnly(Arrival.KEPT);

        assertThat(counted("bridge", TODAY).at())
                .isEqualTo(TODAY.atStartOfDay(LeanClinic.NEW_YORK).toInstant());
        assertThat(counted("clam", TODAY).at()).isEqualTo(clock.instant());
    }

    @Test
    void whatIsForbiddenByNowIsFlaggedAndNotDropped() {
        var tick = done("roll-helper", TODAY);
        clock.advance(Duration.ofDays(2));
        path.rule("passive-trunk-twist", true, TODAY.plusDays(1), TODAY.plusDays(30));
        assertThat(bring(dana, tick)).isEqualTo(new Arrived(Arrival.KEPT, Optional.of(Became.FORBIDDEN), List.of()));

        assertThat(counted("roll-helper", TODAY).became()).contains(Became.FORBIDDEN);
        assertThat(bring(dana, done("clam", TODAY)).became()).isEmpty();
    }

    @Test
    void whatWasTakenOutOfTheProgramIsFlaggedAndATickOfAnOlderVersionSaysWhich() {
        var gone = done("clam", TODAY);
        var stays = done("bridge", TODAY);
        clock.advance(Duration.ofDays(1));
        save(1, Lines.line("bridge"));
        assertThat(bring(dana, gone).became()).contains(Became.TAKEN_OUT);
        assertThat(bring(dana, stays).became()).isEmpty();
        assertThat(counted("bridge", TODAY).version()).contains(1);
        assertThat(counted("clam", TODAY).became()).contains(Became.TAKEN_OUT);
    }

    @Test
    void refusesAnExerciseThatWasNeverInTheProgramAndAVersionThatNeverWas() {
        assertThat(bring(dana, done("calf-wall", TODAY)).problems())
                .containsExactly(Problem.at("exercise", "program.said.never"));
        assertThat(bring(dana, new Tick(done("bridge", TODAY).entry(), clock.instant(), Optional.of(2), 0))
                        .problems())
                .containsExactly(Problem.at("version", "program.said.version"));
    }

    @Test
    void whatTwoPeopleSaidWithoutKnowingOfEachOtherCountsTogether() {
        var first = tick(entry("bridge", TODAY, Outcome.COULD_NOT, 5, "He was tired."));
        clock.advance(Duration.ofHours(1));
        var second = tick(entry("bridge", TODAY, Outcome.DONE, 2, "Ten, with a song."));
        bring(ruth, second);
        bring(dana, first);

        var counted = counted("bridge", TODAY);
        assertThat(counted.names()).containsExactly("Ruth", "Dana");
        assertThat(counted.entry().outcome()).isEqualTo(Outcome.DONE);
        assertThat(counted.entry().reason()).isEmpty();
        assertThat(counted.entry().pain()).contains(5);
        assertThat(counted.entry().note()).isEqualTo("Ten, with a song.\nHe was tired.");
        assertThat(counted.voices()).hasSize(2);
        assertThat(week.days(dana, child, TODAY, 1).get(0).planned().get(0).logged())
                .contains(counted);
    }

    @Test
    void numbersOfAChildAndOfAGrownUpAreNotJoined() {
        week.log(ruth, child, rated(9, 2, RatedBy.CHILD), 0);
        week.log(dana, child, rated(3, 4, RatedBy.ADULT), 0);

        var entry = counted("bridge", TODAY).entry();
        assertThat(entry.pain()).contains(4);
        assertThat(entry.ratedBy()).contains(RatedBy.ADULT);
        assertThat(entry.effort()).contains(3);
    }

    private static Entry rated(int effort, int pain, RatedBy by) {
        return new Entry(
                UUID.randomUUID(),
                "bridge",
                TODAY,
                Outcome.DONE,
                Optional.empty(),
                Optional.of(effort),
                Optional.of(pain),
                Optional.of(by),
                "");
    }

    @Test
    void whoSawWhatTheOtherSaidStandsInItsPlace() {
        bring(ruth, done("bridge", TODAY));
        var seen = counted("bridge", TODAY).turn();
        bring(dana, new Tick(entry("bridge", TODAY, Outcome.SOME, null, ""), clock.instant(), Optional.of(1), seen));

        assertThat(counted("bridge", TODAY).names()).containsExactly("Dana");
        assertThat(counted("bridge", TODAY).entry().outcome()).isEqualTo(Outcome.SOME);
    }

    @Test
    void aPageThatWasDrawnBeforeTheOtherSpokeAddsAVoice() {
        week.log(ruth, child, entry("bridge", TODAY, Outcome.DONE, null, ""), 0);
        week.log(dana, child, entry("bridge", TODAY, Outcome.DONE, null, ""), 0);
        assertThat(counted("bridge", TODAY).names()).containsExactly("Ruth", "Dana");

        week.takeBack(dana, child, "bridge", TODAY);
        assertThat(week.entries(dana, child, TODAY, TODAY)).isEmpty();
    }

    @Test
    void aPersonsLaterWordStandsInThePlaceOfTheEarlierAlone() {
        bring(ruth, tick(entry("bridge", TODAY, Outcome.DONE, 1, "")));
        bring(dana, tick(entry("bridge", TODAY, Outcome.SOME, 8, "")));
        bring(dana, tick(entry("bridge", TODAY, Outcome.SOME, 3, "")));

        var counted = counted("bridge", TODAY);
        assertThat(counted.entry().pain()).contains(3);
        assertThat(counted.names()).containsExactly("Ruth", "Dana");
    }

    @Test
    void aHelperTakesBackTheOwnVoiceAlone() {
        var odile = person("Odile", Role.HELPER);
        bring(ruth, done("bridge", TODAY));
        bring(odile, done("bridge", TODAY));
        gate.deny(Action.SEE_FAMILY_PAGES);
        week.takeBack(odile, child, "bridge", TODAY);
        gate.deny();

        assertThat(counted("bridge", TODAY).names()).containsExactly("Ruth");
    }

    @Test
    void aKeyOfAnotherChildsTickIsRefusedAndTellsNothing() {
        var tick = done("bridge", TODAY);
        bring(dana, tick);
        var other = ChildId.random();
        programs.save(therapist, other, new Draft(TODAY, List.of(Lines.line("bridge")), "because"), 0);
        assertThat(week.bring(dana, other, List.of(tick)))
                .containsExactly(
                        new Arrived(Arrival.REFUSED, Optional.empty(), List.of(Problem.at("key", "program.said.key"))));
        assertThat(week.entries(dana, other, TODAY, TODAY)).isEmpty();
    }

    @Test
    void aHostileNoteIsText() {
        for (var note : HostileStrings.all().filter(n -> n.length() <= 2000).toList()) {
            bring(dana, tick(entry("bridge", TODAY, Outcome.DONE, null, note)));
            assertThat(counted("bridge", TODAY).entry().note())
                    .isEqualTo(note.replace("\u0000", "").strip());
        }
    }

    @Test
    void refusesMoreThanABatchAndWhoMayNotLog() {
        var many = Collections.nCopies(HomeWeek.MOST_TICKS + 1, done("bridge", TODAY));
        assertThatThrownBy(() -> week.bring(dana, child, many)).isInstanceOf(Invalid.class);
        gate.deny(Action.LOG_SESSION);
        assertThatThrownBy(() -> week.bring(dana, child, List.of())).isInstanceOf(NotAvailable.class);
    }

    @Test
    void tellsAPhoneTheVersionAndFromWhichDayAnExerciseIsForbidden() {
        path.rule("passive-trunk-twist", true, TODAY.plusDays(2), TODAY.plusDays(30));
        var carried = week.carry(dana, child, TODAY.minusDays(1), 9);
        assertThat(carried.version()).isEqualTo(1);
        assertThat(carried.days()).hasSize(9);
        assertThat(carried.forbiddenFrom())
                .containsOnlyKeys("roll-helper")
                .containsEntry("roll-helper", TODAY.plusDays(2));
        assertThat(carried.days().get(2).planned()).hasSize(3);
    }
}
