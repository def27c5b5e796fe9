package org.hearthway.program.engine.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.hearthway.program.engine.trend.PainScore.Band;
import org.hearthway.program.engine.trend.PainScore.Bands;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PainScoreTests {

    /** Merkel and others, Pediatr Nurs 1997;23:293 (reference values, M-06): 1, 0, 1, 2, 1 is 5, the middle band. */
    @Test
    void fiveWatchedThingsAddUp() {
        assertThat(PainScore.watched(List.of(1, 0, 1, 2, 1))).isEqualTo(5);
        assertThat(Bands.USUAL.of(5)).isEqualTo(Band.MODERATE);
        assertThat(PainScore.watched(List.of(2, 2, 2, 2, 2))).isEqualTo(10);
    }

    @Test
    void aPartIsNoSum() {
        assertThatThrownBy(() -> PainScore.watched(List.of(1, 0, 1, 2))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PainScore.watched(List.of(1, 0, 1, 2, 3)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PainScore.watched(List.of(1, 0, 1, 2, -1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** The same source: 0, 1 to 3, 4 to 6, 7 to 10. */
    @ParameterizedTest
    @CsvSource({"0,NONE", "1,MILD", "3,MILD", "4,MODERATE", "6,MODERATE", "7,SEVERE", "10,SEVERE"})
    void bandsBeginWhereTheyAreSaidTo(int score, Band band) {
        assertThat(Bands.USUAL.of(score)).isEqualTo(band);
    }

    /** Another form in use begins the last band at 8 (reference values, open point 8). */
    @Test
    void aClinicMaySayOtherBands() {
        assertThat(new Bands(4, 8).of(7)).isEqualTo(Band.MODERATE);
        assertThat(new Bands(4, 8).of(8)).isEqualTo(Band.SEVERE);
        assertThatThrownBy(() -> new Bands(4, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Bands(1, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bands.USUAL.of(11)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bands.USUAL.of(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Hicks and others, Pain 2001;93:173 (reference values, M-07): 0, 2, 4, 6, 8, 10; a seventh face is none. */
    @Test
    void aFaceScoresTwiceItsPlace() {
        assertThat(List.of(0, 1, 2, 3, 4, 5).stream().map(PainScore::face)).containsExactly(0, 2, 4, 6, 8, 10);
        assertThatThrownBy(() -> PainScore.face(6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PainScore.face(7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PainScore.face(-1)).isInstanceOf(IllegalArgumentException.class);
    }
}
