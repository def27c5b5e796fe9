package org.hearthway.medicine.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotEmpty;

class ToxinIntervalProperties {

    private static final LocalDate START = LocalDate.of(2025, 1, 1);

    private static List<LocalDate> days(List<Integer> numbers) {
        return numbers.stream().map(START::plusDays).toList();
    }

    @Property
    void theNextDayLiesTheWholeIntervalAfterTheLatestSession(
            @ForAll @IntRange(min = 1, max = 730) int interval,
            @ForAll @NotEmpty List<@IntRange(max = 1000) Integer> given) {
        var next = new ToxinInterval(interval).notBefore(days(given)).orElseThrow();
        assertThat(days(given))
                .allSatisfy(
                        day -> assertThat(ChronoUnit.DAYS.between(day, next)).isGreaterThanOrEqualTo(interval));
        assertThat(days(given))
                .anySatisfy(day -> assertThat(day.plusDays(interval)).isEqualTo(next));
    }

    @Property
    void aDayIsTooNearExactlyWhenASessionOnEitherSideLiesWithinTheInterval(
            @ForAll @IntRange(min = 1, max = 200) int interval,
            @ForAll List<@IntRange(max = 600) Integer> others,
            @ForAll @IntRange(max = 600) int day) {
        var near = others.stream().anyMatch(other -> Math.abs(other - day) < interval);
        assertThat(new ToxinInterval(interval).tooNear(START.plusDays(day), days(others)))
                .matches(found -> found.isPresent() == near);
    }
}
