package org.hearthway.program.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.AccountId;
import org.hearthway.program.Programs.Version;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.ProgramRules;
import org.junit.jupiter.api.Test;

class EditingTests {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 12);
    private static final ProgramLine BRIDGE = line("bridge", 8);
    private static final ProgramLine CLAM = line("clam", 10);

    @Test
    void showsTheFamilyNothingOfADoseThatIsRefused() {
        var editing = Editing.of(Optional.of(version(BRIDGE)), DAY);
        editing.lines().get(0).type(Amount.REPETITIONS, "0");
        assertThat(sound(editing)).containsExactly(BRIDGE);

        editing.lines().get(0).type(Amount.REPETITIONS, "12");
        assertThat(sound(editing)).extracting(line -> line.dose().repetitions()).containsExactly(12);
    }

    @Test
    void leavesANewLineOutWhileItsDoseIsRefused() {
        var editing = Editing.of(Optional.of(version(BRIDGE)), DAY);
        editing.add(CLAM);
        editing.lines().get(1).type(Amount.REPETITIONS, "10000");
        assertThat(sound(editing)).containsExactly(BRIDGE);
    }

    private static List<ProgramLine> sound(Editing editing) {
        return editing.soundLines(ProgramRules.check(editing.programLines(), Map.of("bridge", false, "clam", false)));
    }

    private static Version version(ProgramLine line) {
        return new Version(1, DAY, List.of(line), AccountId.random(), Instant.EPOCH, "begins", "");
    }

    private static ProgramLine line(String exercise, int repetitions) {
        return ProgramLine.of(
                exercise,
                new Dose(2, repetitions, 0, 0, 1),
                Side.NONE,
                Set.of(DayOfWeek.MONDAY),
                DAY,
                Optional.empty(),
                "");
    }
}
