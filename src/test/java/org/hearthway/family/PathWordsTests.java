package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.base.Language.EN;
import static org.hearthway.base.Language.ES;
import static org.hearthway.family.Samples.THURSDAY;
import static org.hearthway.family.Samples.reader;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Dates as the family reads them. */
class PathWordsTests {

    @Test
    void leaveOutTheYearThatWeAreIn() {
        assertThat(PathWords.date(reader(EN), LocalDate.of(2026, 7, 30))).isEqualTo("July 30");
        assertThat(PathWords.date(reader(ES), LocalDate.of(2026, 7, 30))).isEqualTo("30 de julio");
    }

    @Test
    void nameAnotherYear() {
        assertThat(PathWords.date(reader(EN), LocalDate.of(2027, 1, 14))).isEqualTo("January 14, 2027");
        assertThat(PathWords.date(reader(ES), LocalDate.of(2027, 1, 14))).isEqualTo("14 de enero de 2027");
    }

    @Test
    void sayOfNewsWhenTheLastVisitWas() {
        assertThat(NewsStrip.since(reader(EN), THURSDAY)).isEqualTo("New today:");
        assertThat(NewsStrip.since(reader(EN), THURSDAY.minusDays(1))).isEqualTo("New since yesterday:");
        assertThat(NewsStrip.since(reader(EN), THURSDAY.minusDays(2))).isEqualTo("New since Tuesday:");
        assertThat(NewsStrip.since(reader(EN), THURSDAY.minusDays(7))).isEqualTo("New since March 5:");
        assertThat(NewsStrip.since(reader(ES), THURSDAY.minusDays(2))).isEqualTo("Nuevo desde el martes:");
    }
}
