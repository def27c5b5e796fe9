package org.hearthway.pump.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import org.apache.commons.numbers.fraction.BigFraction;
import org.hearthway.pump.engine.AnyDosing.History;

/** Every line of every result comes to what it says, worked out from its figures alone. */
@Domain(AnyDosing.class)
@Domain(net.jqwik.api.domains.DomainContext.Global.class)
class DerivationProperties {

    private static final PumpModel PUMP = Sample.pump("20", "2");

    /** Lines that no calculator works out: open days, and months and years of a calendar. */
    private static final Set<Formula> OF_A_CALENDAR =
            EnumSet.of(Formula.OPEN_DAY, Formula.REPLACEMENT, Formula.PLAN_BEFORE, Formula.PLAN_AFTER);

    private static void comesOut(Derivation how) {
        assertThat(how.lines()).isNotEmpty();
        for (var line : how.lines()) {
            if (!OF_A_CALENDAR.contains(line.formula())) {
                assertThat(PocketCalculator.workOut(line))
                        .as(line.symbols())
                        .isEqualTo(PocketCalculator.value(line.result().value()));
            }
        }
    }

    @Property(tries = 60)
    void aForecastDoes(@ForAll History history, @ForAll @IntRange(min = 1, max = 400) int printed) {
        var filled = history.filled().atZone(history.zone()).toLocalDate();
        var reservoir = Reservoir.filled(
                PUMP,
                Filling.of(history.filled(), PUMP.reservoir()).usableUntil(filled.plusDays(printed)),
                history.programs().get(0));
        for (var program : history.programs().subList(1, history.programs().size())) {
            reservoir = reservoir.then(program);
        }
        var rules = RefillRules.usual();
        comesOut(
                RefillForecast.of(reservoir, rules, history.zone(), day -> true).how());
    }

    @Property(tries = 60)
    void whatIsLeftDoes(@ForAll History history, @ForAll @IntRange(min = 60, max = 6_000_000) int second) {
        var at = history.filled().plusSeconds(second);
        var reservoir = history.reservoir(PUMP);
        var lines = TimeLeft.of(reservoir, at).how();
        comesOut(lines);
        comesOut(Residual.at(reservoir, at, Sample.ml("3.3"), ResidualRules.usual())
                .how());
        var left = lines.lines().stream()
                .filter(line -> line.formula() == Formula.LEFT)
                .toList();
        for (var i = 1; i < left.size(); i++) {
            assertThat(figure(left.get(i), Symbol.VOLUME))
                    .isEqualTo(PocketCalculator.value(left.get(i - 1).result().value()));
        }
        assertThat(left.get(left.size() - 1).result().value()).isEqualTo(reservoir.at(at));
    }

    /** What is put into a line of whole days is whole rounds of the schedule. */
    @Property(tries = 60)
    void theRestOfAScheduleIsLessThanARound(
            @ForAll History history, @ForAll @IntRange(min = 60, max = 6_000_000) int second) {
        var reservoir = history.reservoir(PUMP);
        for (var line : TimeLeft.of(reservoir, history.filled().plusSeconds(second))
                .how()
                .lines()) {
            if (line.formula() == Formula.USED_BY_SCHEDULE) {
                var dose = figure(line, Symbol.DAILY_DOSE);
                assertThat(figure(line, Symbol.REST)).isLessThan(dose.multiply(7));
            }
        }
    }

    private static BigFraction figure(Derivation.Line line, Symbol symbol) {
        return line.figures().stream()
                .filter(figure -> figure.symbol() == symbol)
                .map(figure -> PocketCalculator.value(figure.value()))
                .findFirst()
                .orElseThrow();
    }

    @Property(tries = 60)
    void aScheduleDoes(@ForAll DayPattern day) {
        var total = ScheduleTotal.of(day);
        comesOut(total.how());
        var conversion = Conversion.of(total.dose(), Sample.strength("333.3"));
        comesOut(conversion.how());
        assertThat(conversion.how().lines())
                .extracting(Derivation.Line::formula)
                .containsExactly(Formula.HOURLY_DOSE, Formula.DAILY_VOLUME, Formula.FLOW);
    }

    @Property(tries = 60)
    void aBridgeDoes(
            @ForAll @IntRange(min = 50, max = 5000) int old,
            @ForAll @IntRange(min = 50, max = 5000) int fresh,
            @ForAll DailyDose dose) {
        var bridge = Bridge.of(
                PUMP,
                Sample.catheter(),
                new Concentration(BigDecimal.valueOf(old)),
                new Concentration(BigDecimal.valueOf(fresh)),
                dose,
                25);
        comesOut(bridge.how());
        bridge.wrong().forEach(wrong -> comesOut(wrong.how()));
        comesOut(Mixture.of(Sample.ml("1.3"), bridge.old(), Sample.ml("18"), bridge.fresh())
                .how());
        comesOut(Priming.after(Priming.Change.PUMP, PUMP, Sample.catheter(), bridge.fresh(), ClinicRules.usual())
                .how());
    }

    @Example
    void theOthersDo() {
        var today = LocalDate.parse("2026-05-04");
        comesOut(FirstDose.after(Mass.micrograms("50"), Elapsed.hours("6"), DoseRules.usual())
                .how());
        comesOut(DoseStep.check(
                        Sample.dose("132"),
                        Sample.dose("152"),
                        Sample.newYork("2026-05-04T09:00"),
                        DoseContext.child(9),
                        DoseRules.usual())
                .how());
        comesOut(Conversion.ofFlow(FlowRate.millilitresPerDay("0.5"), Sample.strength("500"))
                .how());
        comesOut(AfterFill.check(PUMP, Sample.ml("20"), Sample.ml("21.5"), ResidualRules.usual())
                .how());
        comesOut(
                PrintOutCheck.of(today, today.minusDays(3), RefillRules.usual()).how());
        comesOut(OrderBy.of(today, RefillRules.usual(), day -> true).how());
        comesOut(ReplacementPlan.of(today, PUMP.life(), new ReplacementRule.DaysBefore(90))
                .how());
    }
}
