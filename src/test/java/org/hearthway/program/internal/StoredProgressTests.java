package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Action;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.Programs.Draft;
import org.hearthway.program.Progress;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Lines;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.Prescription;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.Progression;
import org.hearthway.program.engine.trend.Quilt.Patch;
import org.hearthway.program.engine.trend.RunChart.Point;
import org.hearthway.program.engine.trend.Trends.Given;
import org.hearthway.program.engine.trend.Trends.Rater;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.LeanClinic;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Today is Thursday, March 12, 2026; the program began on Thursday, February 19. */
class StoredProgressTests extends OnAProgram {

    private static final LocalDate BEGAN = LocalDate.of(2026, 2, 19);
    private static final Dose NEXT = new Dose(2, 10, 0, 0, 1);

    @Autowired
    Progress progress;

    @BeforeEach
    void reset() {
        standOn(BEGAN);
    }

    private void standOn(LocalDate day) {
        clock.set(HearthwayTest.START.minus(Duration.ofDays(ChronoUnit.DAYS.between(day, TODAY))));
    }

    /** The bridge has no sides; the other two have. */
    private static ProgramLine line(String exercise, LocalDate until) {
        var line = Lines.between(Lines.line(exercise), BEGAN, until);
        return exercise.equals("bridge") ? line : Lines.with(line, ProgramLine.Side.EACH);
    }

    private void save(int seen, ProgramLine... lines) {
        programs.save(
                therapist,
                child,
                new Draft(LocalDate.now(clock.withZone(LeanClinic.NEW_YORK)), List.of(lines), "because"),
                seen);
    }

    private void said(String exercise, LocalDate day, Outcome outcome, Reason reason) {
        log(exercise, day, outcome, Optional.of(reason), Optional.empty(), Optional.empty(), RatedBy.CHILD);
    }

    private void done(String exercise, LocalDate day) {
        log(exercise, day, Outcome.DONE, Optional.empty(), Optional.empty(), Optional.empty(), RatedBy.CHILD);
    }

    private void rated(String exercise, LocalDate day, int effort, int pain, RatedBy by) {
        log(exercise, day, Outcome.DONE, Optional.empty(), Optional.of(effort), Optional.of(pain), by);
    }

    private void log(
            String exercise,
            LocalDate day,
            Outcome outcome,
            Optional<Reason> reason,
            Optional<Integer> effort,
            Optional<Integer> pain,
            RatedBy by) {
        standOn(day);
        week.log(
                parent,
                child,
                new Entry(
                        UUID.randomUUID(), exercise, day, outcome, reason, effort, pain, effort.map(number -> by), ""));
        standOn(TODAY);
    }

    /** Twenty days planned, as worked out in the reference values: 13 done, 4 excused, 2 not done, 1 not reported. */
    private void twentyDays() {
        save(0, line("bridge", BEGAN.plusDays(19)));
        for (int day = 0; day < 13; day++) {
            done("bridge", BEGAN.plusDays(day));
        }
        said("bridge", BEGAN.plusDays(13), Outcome.COULD_NOT, Reason.ILL);
        said("bridge", BEGAN.plusDays(14), Outcome.COULD_NOT, Reason.ILL);
        said("bridge", BEGAN.plusDays(15), Outcome.COULD_NOT, Reason.PAIN);
        said("bridge", BEGAN.plusDays(16), Outcome.COULD_NOT, Reason.ILL);
        said("bridge", BEGAN.plusDays(17), Outcome.COULD_NOT, Reason.TIRED);
        said("bridge", BEGAN.plusDays(18), Outcome.COULD_NOT, Reason.NO_TIME);
        done("bridge", BEGAN.plusDays(20));
    }

    /** Reference values, EX-10 and EX-11: 13 of 20 with 4 excused is 81.25 % and not 65 %; what is besides stands apart. */
    @Test
    void adherenceIsTheFormulaOfTheReferenceValues() {
        twentyDays();
        var weeks = progress.weeks(therapist, child, 6);
        assertThat(weeks.all().whole().percent()).hasValue(81.25);
        assertThat(weeks.all().whole().notReported()).isEqualTo(1);
        assertThat(weeks.all().whole().extra()).isEqualTo(1);
        assertThat(weeks.all().reasons())
                .containsExactly(
                        new Given("ILL", 3), new Given("NO_TIME", 1), new Given("PAIN", 1), new Given("TIRED", 1));
    }

    /** By hand, weeks from Monday: none planned twice; 4 of 4; 7 of 7; 2 done and 4 excused of 7, so 2 of 3; 0 of 2. */
    @Test
    void weeksBeginOnMondayAndEndWithThisOne() {
        twentyDays();
        var weeks = progress.weeks(therapist, child, 6);
        assertThat(weeks.from()).isEqualTo("2026-02-02");
        assertThat(weeks.all().weeks())
                .extracting(week -> week.begins().toString())
                .containsExactly("2026-02-02", "2026-02-09", "2026-02-16", "2026-02-23", "2026-03-02", "2026-03-09");
        assertThat(weeks.all().weeks())
                .extracting(week -> week.adherence().percent())
                .extracting(percent -> percent.isPresent() ? Math.round(percent.getAsDouble()) : -1)
                .containsExactly(-1L, -1L, 100L, 100L, 67L, 0L);
    }

    @Test
    void ofTodayOnlyWhatWasSaidCounts() {
        standOn(TODAY.minusDays(1));
        save(0, Lines.between(Lines.line("bridge"), TODAY.minusDays(1), TODAY), line("clam", TODAY));
        standOn(TODAY);
        assertThat(progress.weeks(therapist, child, 1).all().whole().planned())
                .as("yesterday, both")
                .isEqualTo(2);
        done("bridge", TODAY);
        var whole = progress.weeks(therapist, child, 1).all().whole();
        assertThat(whole.planned()).as("and of today the one").isEqualTo(3);
        assertThat(whole.done()).isEqualTo(1);
    }

    @Test
    void whatTheFamilyIsNotShownIsNobodysToDo() {
        save(0, line("bridge", TODAY), line("clam", TODAY));
        standOn(TODAY);
        accepted.hidden.add("clam");
        assertThat(progress.weeks(therapist, child, 6).exercises())
                .extracting(Progress.OfExercise::exercise)
                .containsExactly("bridge");
    }

    @Test
    void numbersOfChildAndGrownUpAreRowsOfTheirOwnAndADayCountsItsHighest() {
        save(0, line("bridge", TODAY), line("clam", TODAY));
        rated("bridge", BEGAN, 3, 2, RatedBy.CHILD);
        rated("clam", BEGAN, 6, 4, RatedBy.CHILD);
        rated("bridge", BEGAN.plusDays(1), 5, 7, RatedBy.ADULT);
        var all = progress.weeks(therapist, child, 6).all();
        assertThat(all.pain().get(Rater.CHILD).points()).containsExactly(new Point(BEGAN, 4));
        assertThat(all.effort().get(Rater.CHILD).points()).containsExactly(new Point(BEGAN, 6));
        assertThat(all.pain().get(Rater.ADULT).points()).containsExactly(new Point(BEGAN.plusDays(1), 7));
        assertThat(progress.weeks(therapist, child, 6)
                        .exercises()
                        .get(0)
                        .going()
                        .pain()
                        .get(Rater.CHILD)
                        .points())
                .as("of the bridge alone")
                .containsExactly(new Point(BEGAN, 2));
    }

    private static ProgramLine withRule(ProgramLine line) {
        var asked = line.prescription();
        return line.with(new Prescription(
                asked.dose(),
                asked.restSeconds(),
                asked.side(),
                asked.load(),
                asked.rhythm(),
                asked.effort(),
                Optional.of(new Progression(4, 5, 4, NEXT, new Load.Body()))));
    }

    private void ruleIsKept() {
        save(0, withRule(line("bridge", TODAY.plusDays(30))), line("clam", TODAY.plusDays(30)));
        for (int day = 0; day < 4; day++) {
            rated("bridge", BEGAN.plusDays(2L * day), 4, 1, RatedBy.CHILD);
        }
    }

    @Test
    void moreIsProposedWithTheDaysThatCarryIt() {
        ruleIsKept();
        var proposed = progress.proposed(therapist, child);
        assertThat(proposed).hasSize(1);
        assertThat(proposed.get(0).then().dose()).isEqualTo(NEXT);
        assertThat(proposed.get(0).then().prescription().progression())
                .as("its rule is spent")
                .isEmpty();
        assertThat(proposed.get(0).days())
                .containsExactly(BEGAN, BEGAN.plusDays(2), BEGAN.plusDays(4), BEGAN.plusDays(6));
        assertThat(programs.latest(therapist, child)
                        .orElseThrow()
                        .lines()
                        .get(0)
                        .dose())
                .as("and nothing changes by itself")
                .isNotEqualTo(NEXT);
    }

    @Test
    void aHardDayTakesTheProposalAway() {
        ruleIsKept();
        rated("bridge", BEGAN.plusDays(8), 5, 1, RatedBy.CHILD);
        assertThat(progress.proposed(therapist, child)).isEmpty();
    }

    @Test
    void whatIsForbiddenNowIsNotProposed() {
        ruleIsKept();
        accepted.hidden.add("bridge");
        assertThat(progress.proposed(therapist, child)).isEmpty();
    }

    @Test
    void anotherDoseBeginsTheCountAnewAndAnotherLineDoesNot() {
        ruleIsKept();
        save(1, withRule(line("bridge", TODAY.plusDays(30))));
        assertThat(progress.proposed(therapist, child))
                .extracting(Progress.Proposed::version)
                .containsExactly(2);
        save(2, withRule(Lines.with(line("bridge", TODAY.plusDays(30)), new Dose(2, 9, 0, 0, 1))));
        assertThat(progress.proposed(therapist, child)).isEmpty();
    }

    @Test
    void takenUpItStandsInTheDraftAlone() {
        ruleIsKept();
        var proposed = progress.proposed(therapist, child).get(0);
        progress.takeUp(therapist, child, proposed);
        var kept = programs.keptDraft(therapist, child).orElseThrow();
        assertThat(kept.draft().lines())
                .extracting(ProgramLine::dose)
                .containsExactly(NEXT, Lines.line("clam").dose());
        assertThat(kept.seen()).isEqualTo(1);
        assertThat(programs.latest(therapist, child).orElseThrow().number()).isEqualTo(1);
        assertThatThrownBy(() -> progress.takeUp(therapist, child, proposed))
                .as("the draft has the line otherwise now")
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void takenUpOverADraftItLeavesTheRestOfItAlone() {
        ruleIsKept();
        var lines = programs.latest(therapist, child).orElseThrow().lines();
        var other = Lines.with(lines.get(1), new Dose(3, 3, 0, 0, 1));
        programs.keepDraft(therapist, child, new Draft(TODAY, List.of(lines.get(0), other), "typed", "to them"), 1);
        progress.takeUp(therapist, child, progress.proposed(therapist, child).get(0));
        var kept = programs.keptDraft(therapist, child).orElseThrow().draft();
        assertThat(kept.lines()).extracting(ProgramLine::dose).containsExactly(NEXT, other.dose());
        assertThat(kept.reason()).isEqualTo("typed");
        assertThat(kept.toFamily()).isEqualTo("to them");
    }

    @Test
    void aProposalThatStandsNoLongerIsNotTakenUp() {
        ruleIsKept();
        var proposed = progress.proposed(therapist, child).get(0);
        rated("bridge", BEGAN.plusDays(8), 9, 1, RatedBy.CHILD);
        assertThatThrownBy(() -> progress.takeUp(therapist, child, proposed)).isInstanceOf(Overtaken.class);
        assertThat(programs.keptDraft(therapist, child)).isEmpty();
    }

    @Test
    void theQuiltHasAPatchForEachWeekInWhichAnythingWasPracticed() {
        save(0, line("bridge", TODAY), line("calf-wall", TODAY));
        done("bridge", BEGAN);
        log(
                "calf-wall",
                BEGAN.plusDays(1),
                Outcome.SOME,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                RatedBy.CHILD);
        said("bridge", BEGAN.plusDays(5), Outcome.COULD_NOT, Reason.ILL);
        done("bridge", TODAY);
        var quilt = progress.quilt(parent, child);
        assertThat(quilt).extracting(Patch::number).containsExactly(1, 2);
        assertThat(quilt).extracting(patch -> patch.week().toString()).containsExactly("2026-02-16", "2026-03-09");
        assertThat(quilt.get(0).kinds()).containsExactlyInAnyOrder("STRENGTH", "STRETCH");
        assertThat(quilt.get(1).kinds()).containsExactly("STRENGTH");
    }

    @Test
    void whoMayNotSeeTheFolderSeesNoTrendAndWhoMayNotWriteTakesNothingUp() {
        ruleIsKept();
        var proposed = progress.proposed(therapist, child).get(0);
        gate.deny(Action.SEE_FOLDER, Action.CHANGE_PROGRAM, Action.SEE_FAMILY_PAGES);
        assertThatThrownBy(() -> progress.weeks(parent, child, 6)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> progress.logs(parent, child, BEGAN, TODAY)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> progress.proposed(parent, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> progress.takeUp(parent, child, proposed)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> progress.quilt(parent, child)).isInstanceOf(NotAvailable.class);
    }
}
