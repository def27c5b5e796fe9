package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.base.Language.EN;
import static org.hearthway.base.Language.ES;
import static org.hearthway.family.Samples.THURSDAY;
import static org.hearthway.family.Samples.day;
import static org.hearthway.family.Samples.logged;
import static org.hearthway.family.Samples.open;
import static org.hearthway.family.Samples.reader;
import static org.hearthway.family.Samples.said;

import java.time.LocalTime;
import java.util.Optional;
import org.hearthway.program.HomeWeek.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What Today says of a day. */
class DayWordsTests {

    private static final Optional<Integer> NO_PAIN = Optional.empty();

    @Test
    void spellsOutWhatIsDoneAndWhatIsLeft() {
        var day = day(said("a", Outcome.DONE, NO_PAIN), said("b", Outcome.DONE, NO_PAIN), open("c", 8), open("d", 6));
        assertThat(DayWords.headline(reader(EN), day)).isEqualTo("Two done, two to go.");
        assertThat(DayWords.headline(reader(ES), day)).isEqualTo("Dos hechos, faltan dos.");
    }

    @Test
    void bendsWordsForOne() {
        var day = day(said("a", Outcome.DONE, NO_PAIN), open("c", 8));
        assertThat(DayWords.headline(reader(EN), day)).isEqualTo("One done, one to go.");
        assertThat(DayWords.headline(reader(ES), day)).isEqualTo("Uno hecho, falta uno.");
    }

    @Test
    void saysWhatTheDayAsksForBeforeItBegan() {
        assertThat(DayWords.headline(reader(EN), day(open("a", 5), open("b", 5))))
                .isEqualTo("Two to do today.");
        assertThat(DayWords.headline(reader(ES), day(open("a", 5)))).isEqualTo("Hoy toca uno.");
    }

    @Test
    void doesNotCallDoneWhatCouldNotBe() {
        var none = day(said("a", Outcome.COULD_NOT, NO_PAIN));
        assertThat(DayWords.headline(reader(EN), none)).isEqualTo("Enough for today.");
        var some = day(said("a", Outcome.COULD_NOT, NO_PAIN), said("b", Outcome.DONE, NO_PAIN));
        assertThat(DayWords.headline(reader(EN), some)).isEqualTo("One done. That is it for today.");
        var left = day(said("a", Outcome.COULD_NOT, NO_PAIN), open("b", 5));
        assertThat(DayWords.headline(reader(EN), left)).isEqualTo("One to go.");
    }

    @Test
    void saysStopAfterSeverePain() {
        var day = day(said("a", Outcome.DONE, Optional.of(8)), open("b", 5));
        assertThat(DayWords.headline(reader(EN), day)).isEqualTo("Stop here. Call.");
        assertThat(DayWords.headline(reader(ES), day)).isEqualTo("Pare aquí. Llame.");
    }

    @ParameterizedTest
    @CsvSource({
        "00:00, night",
        "03:59, night",
        "04:00, morning",
        "11:59, morning",
        "12:00, afternoon",
        "17:59, afternoon",
        "18:00, evening",
        "23:59, evening"
    })
    void greetsByTheFamilysClock(LocalTime time, String part) {
        assertThat(DayWords.partOfDay(time)).isEqualTo(part);
    }

    @Test
    void tellsTheHourOnThePersonsClock() {
        assertThat(DayWords.said(reader(EN), logged("a", Outcome.DONE, NO_PAIN)))
                .isEqualTo("Done at 7:40 AM");
    }

    @Test
    void leavesTheHourOutWhenATickCameOnALaterDay() {
        var late = logged("a", Outcome.DONE, NO_PAIN);
        var later = new org.hearthway.program.HomeWeek.Logged(
                late.entry(), late.by(), Samples.at(THURSDAY.plusDays(1).atTime(8, 0)));
        assertThat(DayWords.said(reader(EN), later)).isEqualTo("Done");
    }

    @Test
    void comfortsWhenItCouldNotBeButNotBesidePain() {
        assertThat(DayWords.said(reader(EN), logged("a", Outcome.COULD_NOT, NO_PAIN)))
                .isEqualTo("Could not: too tired. That is fine.");
        assertThat(DayWords.said(reader(EN), logged("a", Outcome.COULD_NOT, Optional.of(5))))
                .isEqualTo("Could not: too tired · pain 5 of 10");
    }

    @ParameterizedTest
    @CsvSource({"0, none", "1, little", "3, little", "4, fair", "6, fair", "7, all", "10, all"})
    void bandsTheNumbers(int rating, String band) {
        assertThat(DayWords.band(rating)).isEqualTo(band);
    }
}
