package org.hearthway.medicine.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AsWrittenTests {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5 mg three times a day | 5 MG  three times a day",
                "5 mg, three times a day. | 5mg three times a day",
                "2,5 mL | 2,5 ml"
            })
    void capitalsSpacesAndCommasBetweenWordsMakeNoDifference(String first, String second) {
        assertThat(AsWritten.same(first, second)).isTrue();
    }

    /** A point lost is a tenfold dose. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2.5 mg | 25 mg",
                "2,5 mL | 2.5 mL",
                "1 0 mg | 10 mg",
                "5 mg | 5 mcg",
                "5 mg at night | 5 mg in the morning",
                "10 mg three times a day | 10 mg two times a day"
            })
    void everyDigitPointAndWordDoes(String first, String second) {
        assertThat(AsWritten.same(first, second)).isFalse();
    }
}
