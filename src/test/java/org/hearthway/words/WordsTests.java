package org.hearthway.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import org.hearthway.base.Language;
import org.junit.jupiter.api.Test;

class WordsTests {

    private final Words words = new Words();
    private final LocalDate tuesday = LocalDate.of(2026, 3, 17);

    @Test
    void everyKeyIsSaidInBothLanguages() {
        assertThat(words.keys(Language.ES)).isEqualTo(words.keys(Language.EN));
    }

    @Test
    void datesAreSaidAsPeopleSayThem() {
        assertThat(words.date(Language.EN, tuesday)).isEqualTo("Tue, Mar 17");
        assertThat(words.longDate(Language.EN, tuesday)).isEqualTo("Tuesday, March 17");
        assertThat(words.longDate(Language.ES, tuesday)).isEqualTo("martes, 17 de marzo");
        assertThat(words.dateWithYear(Language.EN, tuesday)).isEqualTo("Mar 17, 2026");
    }

    @Test
    void hoursFollowTheLanguage() {
        assertThat(words.time(Language.EN, LocalTime.of(14, 30))).isEqualTo("2:30 PM");
        assertThat(words.time(Language.ES, LocalTime.of(14, 30))).containsIgnoringCase("2:30");
    }

    @Test
    void thePointOfAnAbbreviationEndsTheSentenceToo() {
        var evening = LocalTime.of(16, 30);
        var hour = words.time(Language.ES, evening);
        assertThat(hour).endsWith(".");
        assertThat(words.say(Language.ES, "family.dates.on", evening)).isEqualTo("El " + hour);
        // what people typed is left as it is
        assertThat(words.say(Language.ES, "family.dates.on", "typed.")).isEqualTo("El typed..");
    }
}
