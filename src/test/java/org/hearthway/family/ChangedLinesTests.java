package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.family.Samples.THURSDAY;
import static org.hearthway.family.Samples.line;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.program.Programs.Version;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;
import org.junit.jupiter.api.Test;

/** What the newest program changed. */
class ChangedLinesTests {

    private static final ProgramLine EIGHT = line("bridge", new Dose(2, 8, 0, 0, 1), Side.NONE);
    private static final ProgramLine TEN = line("bridge", new Dose(2, 10, 0, 0, 1), Side.NONE);
    private static final ProgramLine CLAM = line("clam", new Dose(2, 8, 0, 0, 1), Side.EACH);

    private static Optional<Version> version(int number, LocalDate effective, ProgramLine... lines) {
        return Optional.of(new Version(
                number,
                effective,
                List.of(lines),
                AccountId.random(),
                Samples.at(effective.atTime(9, 0)),
                "because",
                ""));
    }

    @Test
    void marksAnotherDoseFromItsFirstDayForAWeek() {
        var changes = ChangedLines.of(version(2, THURSDAY, TEN, CLAM), version(1, THURSDAY.minusDays(20), EIGHT, CLAM));
        assertThat(changes.marks("bridge", THURSDAY.minusDays(1))).isFalse();
        assertThat(changes.marks("bridge", THURSDAY)).isTrue();
        assertThat(changes.marks("bridge", THURSDAY.plusDays(6))).isTrue();
        assertThat(changes.marks("bridge", THURSDAY.plusDays(7))).isFalse();
        assertThat(changes.marks("clam", THURSDAY)).isFalse();
        assertThat(changes.former("bridge")).contains(EIGHT);
    }

    @Test
    void tellsNewFromGone() {
        var changes = ChangedLines.of(version(2, THURSDAY, CLAM), version(1, THURSDAY.minusDays(20), EIGHT));
        assertThat(changes.marks("clam", THURSDAY)).isTrue();
        assertThat(changes.former("clam")).isEmpty();
        assertThat(changes.gone()).containsExactly(EIGHT);
    }

    @Test
    void saysNothingOfAFirstProgram() {
        assertThat(ChangedLines.of(version(1, THURSDAY, TEN), Optional.empty()).isFresh(THURSDAY))
                .isFalse();
        assertThat(ChangedLines.of(Optional.empty(), Optional.empty()).isFresh(THURSDAY))
                .isFalse();
    }
}
