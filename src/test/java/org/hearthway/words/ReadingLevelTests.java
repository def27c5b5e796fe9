package org.hearthway.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingLevelTests {

    // Kincaid 1975; the first row is a published library example, the others are worked by hand
    @ParameterizedTest
    @CsvSource({"13,1,26,13.08", "120,10,168,5.61", "200,10,300,9.91", "14,2,15,-0.217"})
    void gradesEnglishByFleschKincaid(int words, int sentences, int syllables, double grade) {
        assertThat(new ReadingLevel(words, sentences, syllables).fleschKincaidGrade())
                .isCloseTo(grade, within(0.005));
    }

    // Fernández Huerta 1959 as corrected by Law 2011; 190.28 and 74.04 are what two widespread misprints give
    @ParameterizedTest
    @CsvSource({"150,10,315,65.54", "8,2,13,105.26", "120,6,276,48.44"})
    void easesSpanishByFernandezHuerta(int words, int sentences, int syllables, double ease) {
        assertThat(new ReadingLevel(words, sentences, syllables).fernandezHuertaEase())
                .isCloseTo(ease, within(0.005))
                .isNotCloseTo(190.28, within(1.0))
                .isNotCloseTo(74.04, within(1.0));
    }

    @Test
    void countsEnglishAsByHand() {
        assertThat(ReadingLevel.english("Call us now if the pump beeps. Do not wait for the next visit."))
                .isEqualTo(new ReadingLevel(14, 2, 15));
    }

    @Test
    void countsSpanishAsByHand() {
        assertThat(ReadingLevel.spanish("Llame ya si la bomba suena. No espere."))
                .isEqualTo(new ReadingLevel(8, 2, 13));
    }

    // counted by hand
    @ParameterizedTest
    @CsvSource({
        "beeped,1",
        "faces,2",
        "little,2",
        "your,1",
        "breathing,2",
        "seizure,2",
        "medicine,3",
        "again,2",
        "one,1",
        "child,1",
        "gets,1",
        "weaker,2",
        "tired,1",
        "7,1",
        "child’s,1",
        "emergency,4"
    })
    void countsEnglishSyllables(String word, int syllables) {
        assertThat(ReadingLevel.english(word).syllables()).isEqualTo(syllables);
    }

    // counted by hand
    @ParameterizedTest
    @CsvSource({
        "fuerte,2",
        "caída,3",
        "día,2",
        "muy,1",
        "ya,1",
        "y,1",
        "quiere,2",
        "guerra,2",
        "cuidado,3",
        "recarga,3",
        "aunque,2",
        "ahora,3",
        "líquido,3",
        "operación,4",
        "ciudad,2",
        "leer,2",
        "rey,1",
        "toxina,3",
        "baclofeno,4",
        "pingüino,3"
    })
    void countsSpanishSyllables(String word, int syllables) {
        assertThat(ReadingLevel.spanish(word).syllables()).isEqualTo(syllables);
    }

    @Test
    void refusesATextWithoutWords() {
        assertThatIllegalArgumentException().isThrownBy(() -> ReadingLevel.english(" … "));
    }
}
