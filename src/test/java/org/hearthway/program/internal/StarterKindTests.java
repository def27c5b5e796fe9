package org.hearthway.program.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.stream.Collectors;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.StarterSets;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

@SpringJUnitConfig(ProgramSetting.class)
class StarterKindTests {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 12);

    @Autowired
    StarterSets starters;

    @Autowired
    ExerciseLibrary library;

    @Test
    void thereIsABeginningForEachLevel() {
        assertThat(starters.all().stream().flatMap(set -> set.levels().stream()).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(1, 2, 3, 4, 5);
    }

    @Test
    void itsLinesBeginOnTheDayOnWhichTheyAreTakenWithTheUsualDose() {
        assertThat(starters.all())
                .allSatisfy(set -> assertThat(set.from(DAY)).allSatisfy(line -> {
                    assertThat(line.from()).isEqualTo(DAY);
                    assertThat(line.dose())
                            .isEqualTo(
                                    library.find(line.exercise()).orElseThrow().usual());
                }));
    }

    /**
     * Strength for young people on 2 to 4 days a week that do not touch, Sunday and Monday included: Verschuren and others
     * 2016, Faigenbaum and others 2009 (reference values, EX-03 and EX-05; the figures from memory).
     */
    @Test
    void strengthLeavesADayBetween() {
        assertThat(starters.all())
                .allSatisfy(set -> assertThat(set.from(DAY)).allSatisfy(line -> {
                    var kind = library.find(line.exercise()).orElseThrow().kind();
                    if (kind == Exercise.Kind.STRENGTH) {
                        assertThat(line.prescription().rhythm().days()).isBetween(2, 4);
                        assertThat(line.prescription().rhythm().allows(EnumSet.of(DayOfWeek.SUNDAY, DayOfWeek.MONDAY)))
                                .as("%s in %s", line.exercise(), set.id())
                                .isFalse();
                    }
                }));
    }
}
