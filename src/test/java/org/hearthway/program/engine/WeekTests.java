package org.hearthway.program.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.program.engine.Lines.DAY;
import static org.hearthway.program.engine.Lines.line;
import static org.hearthway.program.engine.Lines.with;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.hearthway.program.engine.Adherence.Said;
import org.hearthway.program.engine.Adherence.Session;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.WeekSchedule.Dated;
import org.junit.jupiter.api.Test;

class WeekTests {

    private static List<Session> sessions(int done, int excused, int notDone, int nothing, int extra) {
        var all = new ArrayList<Session>();
        all.addAll(Collections.nCopies(done, new Session(true, Said.DONE)));
        all.addAll(Collections.nCopies(excused, new Session(true, Said.EXCUSED)));
        all.addAll(Collections.nCopies(notDone, new Session(true, Said.NOT_DONE)));
        all.addAll(Collections.nCopies(nothing, new Session(true, Said.NOTHING)));
        all.addAll(Collections.nCopies(extra, new Session(false, Said.DONE)));
        return all;
    }

    /** Reference values, EX-10: 17 of 20 = 85 %. Common practice, no source. */
    @Test
    void adherenceIsDoneOfPlanned() {
        assertThat(Adherence.of(sessions(17, 0, 3, 0, 0)).percent()).hasValue(85.0);
    }

    /** Reference values, EX-10 and its worked example: 13 done, 4 excused, 2 not done, 1 unreported of 20 = 81.25 %. */
    @Test
    void aGoodReasonLeavesThePlannedOnes() {
        var adherence = Adherence.of(sessions(13, 4, 2, 1, 0));
        assertThat(adherence.percent()).hasValue(81.25);
        assertThat(adherence.notReported()).isEqualTo(1);
    }

    /** Reference values, EX-10: planned 0 is "none planned", not 0 % and not 100 %. */
    @Test
    void nothingPlannedHasNoAdherence() {
        assertThat(Adherence.of(List.of()).percent()).isEmpty();
        assertThat(Adherence.of(sessions(0, 3, 0, 0, 0)).percent()).isEmpty();
    }

    /** Reference values, EX-11: 22 done of 20 = 100 % and 2 extra. Common practice, no source. */
    @Test
    void extraSessionsStandApart() {
        var adherence = Adherence.of(sessions(20, 0, 0, 0, 2));
        assertThat(adherence.percent()).hasValue(100.0);
        assertThat(adherence.extra()).isEqualTo(2);
    }

    @Test
    void aDayBeforeTheFirstVersionHasNothing() {
        var versions = List.of(new Dated(1, DAY, List.of(line("bridge"))));
        assertThat(WeekSchedule.days(versions, DAY.minusDays(1), 2))
                .extracting(day -> day.lines().size())
                .containsExactly(0, 1);
    }

    @Test
    void aVersionSavedLaterForAnEarlierDayCounts() {
        var versions = List.of(
                new Dated(1, DAY.plusDays(5), List.of(line("bridge"))), new Dated(2, DAY, List.of(line("clam"))));
        assertThat(WeekSchedule.days(versions, DAY.plusDays(6), 1).get(0).lines())
                .extracting(ProgramLine::exercise)
                .containsExactly("clam");
    }

    /** March 12, 2026 is a Thursday. */
    @Test
    void findsTheFirstDayOfALineWithinASpan() {
        var mondays = with(line("bridge"), EnumSet.of(DayOfWeek.MONDAY));
        assertThat(mondays.firstDayWithin(DAY, DAY.plusDays(4))).isEmpty();
        assertThat(mondays.firstDayWithin(DAY, DAY.plusDays(5))).contains(DAY.plusDays(4));
        assertThat(mondays.firstDayWithin(DAY.minusDays(30), DAY)).isEmpty();
        assertThat(Lines.between(mondays, DAY, DAY.plusDays(3)).firstDayWithin(DAY, DAY.plusDays(90)))
                .isEmpty();
    }

    /** 2 rounds of 8 at 4 s and 30 s of rest between: 94 s; with both sides 158 s. Common practice, no source. */
    @Test
    void minutesAreRoundedUp() {
        var pace = new Pace(4, 30);
        assertThat(pace.minutes(line("bridge"))).isEqualTo(2);
        assertThat(pace.minutes(with(line("clam"), Side.EACH))).isEqualTo(3);
        assertThat(pace.minutes(with(line("bridge"), new Dose(1, 0, 0, 10, 2)))).isEqualTo(20);
        assertThat(pace.minutes(with(line("bridge"), new Dose(1, 1, 0, 0, 1)))).isEqualTo(1);
        assertThat(pace.minutes(with(line("bridge"), new Dose(1, 0, 0, 1, 1)))).isEqualTo(1);
    }

    @Test
    void differencesNameTheFields() {
        var before = List.of(line("bridge"), line("clam"), line("step-up"));
        var after = List.of(
                with(with(line("clam"), "slowly"), Side.LEFT),
                with(line("bridge"), new Dose(2, 10, 0, 0, 1)),
                line("bridge"));
        var diff = ProgramDiff.between(before, after);
        assertThat(diff.lines().get(0).fields()).containsExactly(ProgramDiff.Field.SIDE, ProgramDiff.Field.NOTE);
        assertThat(diff.lines().get(1).fields()).containsExactly(ProgramDiff.Field.REPETITIONS);
        assertThat(diff.lines().get(2).isNew()).isTrue();
        assertThat(diff.lines().get(3).isTakenOut()).isTrue();
        assertThat(diff.lines().get(3).before()).isEqualTo(Optional.of(line("step-up")));
    }
}
