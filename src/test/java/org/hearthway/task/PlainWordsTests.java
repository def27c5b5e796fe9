package org.hearthway.task;

import static org.assertj.core.api.Assertions.assertThat;

import org.hearthway.base.Language;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By Flesch-Kincaid in English and Fernández-Huerta in Spanish, see ReadingLevelTests. */
class PlainWordsTests {

    @ParameterizedTest
    @CsvSource({
        "EN, Look at the wound every day.,false",
        "EN, Please document postoperative incisional abnormalities and communicate them immediately.,true",
        "ES, Mire la herida todos los días.,false",
        "ES, Documente inmediatamente las irregularidades postoperatorias correspondientes.,true",
        "EN, ' … ',false",
        "ES, '',false"
    })
    void tellsHardWordsFromPlainOnes(Language language, String text, boolean hard) {
        assertThat(PlainWords.areHard(language, text)).isEqualTo(hard);
    }
}
