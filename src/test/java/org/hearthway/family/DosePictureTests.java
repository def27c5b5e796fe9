package org.hearthway.family;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hearthway.program.engine.Dose;
import org.junit.jupiter.api.Test;

/** What is pictured is what the program says: no mark more, no minute less. */
class DosePictureTests {

    private static int count(String picture, String mark) {
        return picture.split("class=\"" + mark + "[ \"]", -1).length - 1;
    }

    private static double minutes(Dose dose) {
        return DosePicture.rows(dose).stream()
                .flatMap(List::stream)
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    @Property(tries = 100)
    void pictureAMarkForEachTime(
            @ForAll @IntRange(min = 1, max = 10) int sets, @ForAll @IntRange(min = 1, max = 100) int times) {
        var dose = new Dose(sets, times, 0, 0, 1);
        assertThat(DosePicture.rows(dose)).hasSize(sets);
        var picture = DosePicture.marks(DosePicture.rows(dose)).toString();
        assertThat(count(picture, "mk")).isEqualTo(sets * times);
        assertThat(count(picture, "mk-full")).isZero();
    }

    @Property(tries = 100)
    void pictureTheTimeOfEachHold(
            @ForAll @IntRange(min = 1, max = 10) int sets,
            @ForAll @IntRange(min = 1, max = 20) int times,
            @ForAll @IntRange(min = 1, max = 600) int seconds) {
        var dose = new Dose(sets, times, seconds, 0, 1);
        assertThat(minutes(dose) * 60).isCloseTo((double) sets * times * seconds, within(0.001));
        // a hold of a minute or less is one clock, a longer one a row of clocks
        var holds = seconds <= 60
                ? DosePicture.rows(dose).stream().mapToInt(List::size).sum()
                : DosePicture.rows(dose).size();
        assertThat(holds).isEqualTo(sets * times);
    }

    @Property(tries = 100)
    void pictureAFullClockForEachMinute(
            @ForAll @IntRange(min = 1, max = 10) int sets, @ForAll @IntRange(min = 1, max = 240) int minutes) {
        var dose = new Dose(sets, 0, 0, minutes, 1);
        var picture = DosePicture.marks(DosePicture.rows(dose)).toString();
        assertThat(count(picture, "mk")).isEqualTo(sets * minutes);
        assertThat(count(picture, "mk-full")).isEqualTo(sets * minutes);
        assertThat(minutes(dose)).isEqualTo(sets * minutes);
    }

    @Test
    void picturesASunForEachTimeOfTheDay() {
        assertThat(count(DosePicture.suns(3).toString(), "mk-sun")).isEqualTo(3);
    }

    /** Half a minute ends at the foot of the clock, a quarter at its right. */
    @Test
    void fillsAClockAsAClockGoes() {
        var half = DosePicture.marks(DosePicture.rows(new Dose(1, 1, 30, 0, 1))).toString();
        var quarter =
                DosePicture.marks(DosePicture.rows(new Dose(1, 1, 15, 0, 1))).toString();
        assertThat(half).contains("0 0 1 16.67 26.55");
        assertThat(quarter).contains("0 0 1 26.55 16.67");
    }
}
