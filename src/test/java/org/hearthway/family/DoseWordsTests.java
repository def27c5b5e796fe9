package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.base.Language.EN;
import static org.hearthway.base.Language.ES;
import static org.hearthway.family.Samples.line;
import static org.hearthway.family.Samples.reader;

import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.ProgramLine.Side;
import org.junit.jupiter.api.Test;

/** A dose in words. */
class DoseWordsTests {

    @Test
    void saysHoldsWithTheSide() {
        var line = line("a", new Dose(1, 3, 30, 0, 1), Side.EACH);
        assertThat(DoseWords.said(reader(EN), line, 8)).isEqualTo("3 holds of 30 seconds, each side · 8\u00a0minutes");
        assertThat(DoseWords.said(reader(ES), line, 8)).isEqualTo("3 veces 30 segundos, cada lado · 8\u00a0minutos");
    }

    @Test
    void saysRoundsOnlyWhenThereAreSeveral() {
        assertThat(DoseWords.amount(reader(EN), line("a", new Dose(2, 10, 0, 0, 1), Side.NONE)))
                .isEqualTo("2 rounds of 10");
        assertThat(DoseWords.amount(reader(EN), line("a", new Dose(1, 10, 0, 0, 1), Side.NONE)))
                .isEqualTo("10 times");
        assertThat(DoseWords.amount(reader(EN), line("a", new Dose(1, 1, 0, 0, 1), Side.LEFT)))
                .isEqualTo("once, left side");
    }

    @Test
    void doesNotSayMinutesTwice() {
        var line = line("a", new Dose(1, 0, 0, 10, 1), Side.NONE);
        assertThat(DoseWords.said(reader(EN), line, 10)).isEqualTo("10\u00a0minutes");
    }

    @Test
    void saysHowOftenADay() {
        var line = line("a", new Dose(2, 0, 0, 15, 3), Side.NONE);
        assertThat(DoseWords.amount(reader(EN), line)).isEqualTo("2 times 15\u00a0minutes, 3 times a day");
        assertThat(DoseWords.amount(reader(ES), line)).isEqualTo("2 veces 15\u00a0minutos, 3 veces al día");
    }

    @Test
    void saysWhatItIsDoneAgainst() {
        var line = line("a", new Dose(2, 10, 0, 0, 1), Side.NONE);
        assertThat(DoseWords.amount(reader(EN), line.with(line.prescription().with(new Load.Weight(500)))))
                .isEqualTo("2 rounds of 10, with 500 g");
        assertThat(DoseWords.amount(reader(EN), line.with(line.prescription().with(new Load.Weight(2000)))))
                .isEqualTo("2 rounds of 10, with 2 kg");
        assertThat(DoseWords.amount(reader(ES), line.with(line.prescription().with(new Load.Band(2)))))
                .endsWith("con la banda 2");
    }

    @Test
    void neverNeedsMoreThanThreeCells() {
        var line = line("a", new Dose(2, 3, 20, 0, 2), Side.EACH);
        assertThat(DoseWords.cells(reader(EN), line))
                .containsExactly(
                        new DoseWords.Cell("20", "seconds each"),
                        new DoseWords.Cell("3", "times"),
                        new DoseWords.Cell("2", "rounds"));
    }
}
