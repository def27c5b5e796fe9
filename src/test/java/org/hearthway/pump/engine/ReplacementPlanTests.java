package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthway.pump.engine.Sample.refused;

import java.time.LocalDate;
import java.time.Period;
import org.hearthway.pump.engine.ReplacementRule.DaysBefore;
import org.hearthway.pump.engine.ReplacementRule.MonthsBefore;
import org.hearthway.pump.engine.ReplacementRule.YearsAfter;
import org.junit.jupiter.api.Test;

class ReplacementPlanTests {

    private static final LocalDate IMPLANTED = LocalDate.parse("2021-09-14");

    private static ReplacementPlan plan(ReplacementRule rule) {
        return ReplacementPlan.of(IMPLANTED, Period.ofYears(7), rule);
    }

    /** Reference example ITB-W11, computed by script; 90 days and 3 months are not the same day. */
    @Test
    void everyRuleHasItsOwnDay() {
        assertThat(plan(new DaysBefore(90)).end()).isEqualTo("2028-09-14");
        assertThat(plan(new DaysBefore(90)).planFrom()).isEqualTo("2028-06-16").isNotEqualTo("2028-06-14");
        assertThat(plan(new MonthsBefore(3)).planFrom()).isEqualTo("2028-06-14");
        assertThat(plan(new YearsAfter(5)).planFrom()).isEqualTo("2026-09-14");
    }

    @Test
    void planningNeverBeginsAfterTheEnd() {
        assertThat(plan(new YearsAfter(9)).planFrom()).isEqualTo("2028-09-14");
    }

    /** java.time: the last valid day of the month, which is the earlier one. */
    @Test
    void anImplantOnALeapDayEndsOnTheLastOfFebruary() {
        var plan = ReplacementPlan.of(LocalDate.parse("2024-02-29"), Period.ofYears(7), new DaysBefore(90));
        assertThat(plan.end()).isEqualTo("2031-02-28");
        assertThat(plan.planFrom()).isEqualTo("2030-11-30");
    }

    @Test
    void rulesKeepTheirBounds() {
        refused("days", "outside", () -> new DaysBefore(29));
        refused("months", "outside", () -> new MonthsBefore(0));
        refused("years", "outside", () -> new YearsAfter(16));
        refused("marginDays", "outside", () -> RefillRules.usual().withMargin(2));
        refused("marginDays", "outside", () -> RefillRules.usual().withMargin(15));
        refused("lifeDays", "outside", () -> new RefillRules(5, 14, 181, 7, 1));
        refused(
                "percent",
                "outside",
                () -> ResidualRules.usual().with(Sample.ml("2"), ResidualRules.Basis.PLANNED_DELIVERY, 0));
        refused(
                "volume",
                "outside",
                () -> ResidualRules.usual().with(Sample.ml("0"), ResidualRules.Basis.PLANNED_DELIVERY, 15));
        refused("effectHours", "outside", () -> DoseRules.usual().withEffectHours(3));
    }
}
