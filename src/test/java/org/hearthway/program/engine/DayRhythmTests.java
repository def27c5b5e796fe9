package org.hearthway.program.engine;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hearthway.program.engine.Rhythm.Spread;
import org.junit.jupiter.api.Test;

class DayRhythmTests {

    /** Verschuren and others 2016 (reference values, EX-03, from memory): strength on days that do not touch. */
    @Test
    void sundayAndMondayTouch() {
        assertThat(Rhythm.touch(Set.of(MONDAY, WEDNESDAY, FRIDAY))).isFalse();
        assertThat(Rhythm.touch(Set.of(MONDAY, TUESDAY))).isTrue();
        assertThat(Rhythm.touch(Set.of(SUNDAY, MONDAY))).isTrue();
        assertThat(Rhythm.touch(Set.of(MONDAY))).isFalse();
        assertThat(Rhythm.touch(Set.of())).isFalse();
    }

    @Test
    void everyOtherDayHasOneLongerGapAtMost() {
        var alternate = new Rhythm(3, Spread.ALTERNATE);
        assertThat(alternate.allows(Set.of(MONDAY, WEDNESDAY, FRIDAY))).isTrue();
        assertThat(alternate.allows(Set.of(SATURDAY, MONDAY, WEDNESDAY))).isTrue();
        assertThat(alternate.allows(Set.of(MONDAY, THURSDAY))).isFalse();
        assertThat(new Rhythm(3, Spread.NOT_FOLLOWING).allows(Set.of(MONDAY, THURSDAY)))
                .isTrue();
        assertThat(alternate.allows(Set.of(MONDAY, WEDNESDAY, SATURDAY))).isTrue();
        assertThat(alternate.allows(Set.of(MONDAY, WEDNESDAY, FRIDAY, SUNDAY))).isFalse();
    }

    @Test
    void ofSevenDaysThreeDoNotTouch() {
        assertThat(new Rhythm(7, Spread.NOT_FOLLOWING).most(EnumSet.allOf(DayOfWeek.class)))
                .isEqualTo(3);
        assertThat(new Rhythm(4, Spread.NOT_FOLLOWING).most(Set.of(SUNDAY, MONDAY, WEDNESDAY)))
                .isEqualTo(2);
        assertThat(new Rhythm(7, Spread.DAILY).most(Set.of(SUNDAY, MONDAY))).isEqualTo(2);
    }

    @Test
    void dailyIsSevenDays() {
        assertThatThrownBy(() -> new Rhythm(5, Spread.DAILY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Rhythm(0, Spread.ANY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Rhythm(8, Spread.ANY)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A week turned by some days is the same week. */
    @Property
    void whatIsAllowedDoesNotDependOnTheDayThatAWeekBegins(
            @ForAll Set<DayOfWeek> days,
            @ForAll Spread spread,
            @ForAll @IntRange(min = 1, max = 7) int count,
            @ForAll @IntRange(min = 1, max = 6) int turn) {
        var rhythm = new Rhythm(spread == Spread.DAILY ? 7 : count, spread);
        var turned = EnumSet.noneOf(DayOfWeek.class);
        days.forEach(day -> turned.add(day.plus(turn)));
        assertThat(rhythm.allows(turned)).isEqualTo(rhythm.allows(days));
    }

    @Example
    void nothingIsAlwaysAllowed() {
        for (var spread : Spread.values()) {
            assertThat(new Rhythm(7, spread).allows(Set.of())).isTrue();
        }
    }
}
