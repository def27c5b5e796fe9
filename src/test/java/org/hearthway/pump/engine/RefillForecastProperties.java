package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Predicate;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import org.apache.commons.numbers.fraction.BigFraction;
import org.hearthway.base.Invalid;
import org.hearthway.pump.engine.AnyDosing.History;
import org.hearthway.pump.engine.RefillForecast.Caution;

/** What holds for every forecast. */
@Domain(AnyDosing.class)
@Domain(net.jqwik.api.domains.DomainContext.Global.class)
class RefillForecastProperties {

    private static final PumpModel PUMP = Sample.pump("20", "2");

    @Provide
    Arbitrary<ZoneId> everyZone() {
        return Arbitraries.of(ZoneId.getAvailableZoneIds()).map(ZoneId::of);
    }

    /** Rule P1 of the reference, for any zone: filled around midnight, for so many days and minutes. */
    @Property(tries = 500)
    void thePlanningDayIsNeverLaterThanTheLocalDayOfTheAlarm(
            @ForAll @IntRange(max = 900) int day,
            @ForAll @IntRange(min = -90, max = 90) int minute,
            @ForAll @IntRange(min = 6, max = 180) int days,
            @ForAll @IntRange(max = 90) int more,
            @ForAll("everyZone") ZoneId zone) {
        var midnight = LocalDate.of(2026, 1, 1).plusDays(day).atStartOfDay(zone);
        var filled = midnight.plusMinutes(minute).toInstant();
        // 9000 micrograms in just that time
        var dose = new DailyDose(BigFraction.of(9000L * 1440, 1440L * days + more));
        var reservoir = Sample.filled(PUMP, filled, "500", Dosing.constant(dose));
        var forecast = RefillForecast.of(reservoir, RefillRules.usual(), zone, open -> true);
        var alarm = forecast.alarm().orElseThrow();
        assertThat(alarm.at()).isEqualTo(filled.plusSeconds(60 * (1440L * days + more)));
        assertThat(forecast.planningDay().orElseThrow())
                .isBeforeOrEqualTo(alarm.at().atZone(zone).toLocalDate())
                .isBeforeOrEqualTo(filled.atZone(zone).toLocalDate().plusDays(days));
    }

    /** Rule P3 of the reference. */
    @Property(tries = 60)
    void theWindowIsNeverEmptyNeverBeforeTheFillAndNeverLate(
            @ForAll History history,
            @ForAll @IntRange(min = 3, max = 14) int margin,
            @ForAll @IntRange(max = 90) int window,
            @ForAll @IntRange(min = 1, max = 9) int openEvery) {
        var rules = new RefillRules(margin, window, 180, 10, 1);
        Predicate<LocalDate> open = day -> day.toEpochDay() % openEvery == 0;
        var forecast = RefillForecast.of(history.reservoir(PUMP), rules, history.zone(), open);
        var filled = history.filled().atZone(history.zone()).toLocalDate();
        assertThat(forecast.opens()).isBetween(filled, forecast.latest());
        assertThat(forecast.latest()).isBeforeOrEqualTo(forecast.lifeEnds());
        if (!forecast.cautions().contains(Caution.DUE_AT_ONCE)) {
            assertThat(forecast.planningDay().map(day -> day.minusDays(margin)).orElse(forecast.lifeEnds()))
                    .isAfterOrEqualTo(forecast.latest());
        }
        assertThat(open.test(forecast.latest()))
                .isNotEqualTo(forecast.cautions().contains(Caution.NO_OPEN_DAY));
    }

    /** A dose in milligrams for micrograms, or the other way round, is out of bounds whatever it was. */
    @Property(tries = 200)
    void aSlipOfAThousandIsAlwaysRefused(
            @ForAll @IntRange(min = 5, max = 2000) int dose, @ForAll @IntRange(min = 50, max = 5000) int strength) {
        var thousand = BigDecimal.valueOf(1000);
        for (var slipped : new BigDecimal[] {
            BigDecimal.valueOf(dose).multiply(thousand),
            BigDecimal.valueOf(dose).movePointLeft(3)
        }) {
            assertThat(DailyDose.isPossible(slipped)).isFalse();
            assertThatThrownBy(() -> new DailyDose(slipped)).isInstanceOf(Invalid.class);
        }
        for (var slipped : new BigDecimal[] {
            BigDecimal.valueOf(strength).multiply(thousand),
            BigDecimal.valueOf(strength).movePointLeft(3)
        }) {
            assertThat(Concentration.isPossible(slipped)).isFalse();
            assertThatThrownBy(() -> new Concentration(slipped)).isInstanceOf(Invalid.class);
        }
    }
}
