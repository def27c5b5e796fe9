package org.hearthway.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.hearthway.base.Language;
import org.hearthway.program.engine.Span;
import org.hearthway.program.engine.UsualDose;
import org.hearthway.program.engine.week.Ask;
import org.hearthway.words.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ExerciseWordsTests {

    private final ExerciseWords words = new ExerciseWords(new Words());

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyTraitHasItsWord(Language language) {
        for (var joint : Exercise.Joint.values()) {
            assertThat(words.joint(language, joint)).isNotBlank();
        }
        for (var position : Exercise.Position.values()) {
            assertThat(words.position(language, position)).isNotBlank();
        }
        for (var help : Exercise.Help.values()) {
            assertThat(words.help(language, help)).isNotBlank();
        }
        for (var phase : Ask.Phase.values()) {
            assertThat(words.phase(language, phase)).isNotBlank();
        }
        assertThat(words.level(language, 5)).isEqualTo("GMFCS V");
    }

    @org.junit.jupiter.api.Test
    void theUsualDoseIsToldWithItsAgesAndItsSource() {
        var usual = new UsualDose(
                new Span(7, 18),
                Optional.of(new Span(1, 3)),
                Optional.of(new Span(6, 15)),
                Optional.of(new Span(5, 5)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Span(2, 4)),
                "a book");
        assertThat(words.usual(Language.EN, usual))
                .isEqualTo("Usual at 7 to 18 years: rounds 1 to 3, times 6 to 15, hold 5 s, days a week 2 to 4."
                        + " Source: a book");
        assertThat(words.usual(Language.ES, usual))
                .isEqualTo("Lo usual de 7 a 18 años: rondas 1 a 3, veces 6 a 15, sostén 5 s, días a la semana 2 a 4."
                        + " Fuente: a book");
    }
}
