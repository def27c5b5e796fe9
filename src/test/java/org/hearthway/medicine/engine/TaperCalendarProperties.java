package org.hearthway.medicine.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hearthway.medicine.engine.TaperCalendar.Step;

class TaperCalendarProperties {

    private static final LocalDate START = LocalDate.of(2026, 1, 1);

    private static List<Step> steps(List<Integer> days) {
        return days.stream()
                .map(day -> new Step(START.plusDays(day), "dose of day " + day))
                .toList();
    }

    @Property
    void takesExactlyTheDaysThatAscend(@ForAll @Size(min = 1, max = 8) List<@IntRange(max = 20) Integer> days) {
        if (days.equals(List.copyOf(new TreeSet<>(days)))) {
            assertThat(new TaperCalendar(steps(days), Optional.empty()).steps()).hasSize(days.size());
        } else {
            assertThatIllegalArgumentException().isThrownBy(() -> new TaperCalendar(steps(days), Optional.empty()));
        }
    }

    @Property
    void theDoseOfADayIsOneThatWasWrittenAndTheLatestThatBegan(
            @ForAll @Size(min = 1, max = 8) List<@IntRange(max = 60) Integer> typed,
            @ForAll @IntRange(max = 90) int day) {
        var days = List.copyOf(new TreeSet<>(typed));
        var calendar = new TaperCalendar(steps(days), Optional.empty());
        var expected = days.stream().filter(begun -> begun <= day).reduce((a, b) -> b);
        assertThat(calendar.on(START.plusDays(day)).map(Step::dose))
                .isEqualTo(expected.map(begun -> "dose of day " + begun));
    }
}
