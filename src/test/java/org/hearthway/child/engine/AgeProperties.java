package org.hearthway.child.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class AgeProperties {

    @Property
    void theCorrectedAgeIsNeverMoreThanThatByTheCalendarAndGoneFromTwoYearsOn(
            @ForAll @IntRange(min = 0, max = 8000) int born,
            @ForAll @IntRange(min = 20, max = 44) int weeks,
            @ForAll @IntRange(min = 0, max = 6) int days,
            @ForAll @IntRange(min = 0, max = 1500) int lived) {
        var birth = LocalDate.of(2005, 1, 1).plusDays(born);
        var day = birth.plusDays(lived);
        var age = Age.on(birth, Optional.of(new Gestation(weeks, days)), day);

        assertThat(age.corrected().isPresent()).isEqualTo(weeks < 37 && day.isBefore(birth.plusYears(2)));
        age.corrected().ifPresent(corrected -> assertThat(day.minus(corrected)).isAfterOrEqualTo(birth));
    }
}
