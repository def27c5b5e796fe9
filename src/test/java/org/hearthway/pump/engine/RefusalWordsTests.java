package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.EnumSet;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A refusal names its bounds exactly, with the unit, in both languages. */
class RefusalWordsTests {

    private final Words words = new Words();

    private String said(Language language, ThrowingCallable refused) {
        var invalid = catchThrowableOfType(Invalid.class, refused);
        return words.say(language, invalid.problems().get(0));
    }

    @Test
    void theBoundsAreNotRounded() {
        assertThat(said(Language.EN, () -> VolumePerLength.millilitresPerCentimetre("2.5")))
                .isEqualTo("Enter 0.0005 to 0.05 mL for each cm, with at most 6 places after the point."
                        + " Check the unit on the print-out or label. Bounds: common practice.");
        assertThat(said(Language.EN, () -> RefillRules.usual().withMargin(2)))
                .startsWith("Enter 3 to 14 days, a whole number.");
        assertThat(said(Language.ES, () -> DailyDose.microgramsPerDay("0.11")))
                .contains("mcg al día, con 3 cifras decimales como máximo");
    }

    @Test
    void aGapNamesItsTime() {
        assertThat(said(Language.EN, () -> DayPattern.of(Step.of("00:00", "21:59", "5"))))
                .isEqualTo("No step runs at 9:59 PM. Let the steps fill all 24 hours.");
    }

    @ParameterizedTest
    @EnumSource
    void everyUnitHasAWord(Unit unit) {
        for (var language : EnumSet.allOf(Language.class)) {
            var bound = Bounds.of("field", "1", "2", 0, unit);
            var said = said(language, () -> bound.typed(new java.math.BigDecimal("3")));
            assertThat(said).doesNotContain(unit.name()).doesNotContain("{");
            assertThat(said.contains("1 a 2,") || said.contains("1 to 2,")).isEqualTo(unit == Unit.ONE);
        }
    }
}
