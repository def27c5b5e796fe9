package org.hearthway.pump.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import java.time.ZoneId;
import java.util.List;
import org.hearthway.base.Language;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.Conversion;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.engine.Derivation;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.Filling;
import org.hearthway.pump.engine.FlowRange;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Formula;
import org.hearthway.pump.engine.Program;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.RefillForecast;
import org.hearthway.pump.engine.RefillRules;
import org.hearthway.pump.engine.Reservoir;
import org.hearthway.pump.engine.Residual;
import org.hearthway.pump.engine.ResidualRules;
import org.hearthway.pump.engine.Symbol;
import org.hearthway.pump.engine.TimeLeft;
import org.hearthway.pump.engine.Unit;
import org.hearthway.pump.engine.Volume;
import org.hearthway.words.Words;
import org.junit.jupiter.api.Test;

class DerivationListTests {

    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final Instant FILLED = Instant.parse("2026-01-15T15:00:00Z");

    private final Words words = new Words();

    private List<String> told(Language language, Derivation how, boolean letters) {
        var list = new DerivationList(new PumpFigures(new PumpWords(words, language), ZONE));
        if (letters) {
            list.withLetters(how);
        } else {
            list.derivation(how);
        }
        return list.getElement().getChildren().map(part -> part.getText()).toList();
    }

    private static Reservoir reservoir(String strength, String dose) {
        var pump = PumpModel.programmable(
                Volume.millilitres("20"),
                Volume.millilitres("2"),
                Volume.millilitres("0.25"),
                new FlowRange(FlowRate.millilitresPerDay("0.024"), FlowRate.millilitresPerDay("24")),
                Period.ofYears(7));
        return Reservoir.filled(
                pump,
                Filling.of(FILLED, Volume.millilitres("20")),
                Program.set(FILLED, ZONE, Concentration.microgramsPerMillilitre(strength), Dosing.constant(dose)));
    }

    @Test
    void tellsAResultWithItsFormulaFilledIn() {
        var how = Conversion.of(DailyDose.microgramsPerDay("120"), Concentration.microgramsPerMillilitre("500"))
                .how();
        assertThat(told(Language.EN, how, false))
                .containsExactly(
                        "Dose in an hour",
                        "5 mcg/h",
                        "120 mcg/day ÷ 24",
                        "Leaves the reservoir in a day",
                        "0.24 mL/day",
                        "120 mcg/day ÷ 500 mcg/mL",
                        "Flow",
                        "0.01 mL/h",
                        "120 mcg/day ÷ 500 mcg/mL ÷ 24");
        assertThat(told(Language.ES, how, false)).contains("0.24 mL/día", "120 mcg/día ÷ 24");
    }

    @Test
    void saysWhereAResultWasRoundedAndKeepsTheDigitsThatGoOn() {
        var how = Conversion.of(DailyDose.microgramsPerDay("110"), Concentration.microgramsPerMillilitre("1500"))
                .how();
        assertThat(told(Language.EN, how, false))
                .contains("0.07333 mL/day", "110 mcg/day ÷ 1500 mcg/mL ≈ 0.07333333 mL/day");
    }

    @Test
    void tellsLettersAndDatesInWords() {
        var forecast = RefillForecast.of(reservoir("500", "120"), RefillRules.usual(), ZONE, day -> true);
        assertThat(told(Language.EN, forecast.how(), true))
                .containsSubsequence("Leaves the reservoir in a day", "0.24 mL/day", "Vd = D ÷ C")
                .containsSubsequence("75 days", "t = (V − Va) ÷ Vd", "= (20 mL − 2 mL) ÷ 0.24 mL/day")
                .containsSubsequence(
                        "Alarm day to plan by",
                        "Tuesday, Mar 31, 2026",
                        "P = the earlier of A1 and A2",
                        "= the earlier of Mar 31, 2026 and Mar 31, 2026")
                .contains("A1 = F + n", "= Jan 15, 2026 + 75 days");
    }

    /** A day that is almost over is not told as the next one: the whole days under it would contradict it. */
    @Test
    void roundsDaysDown() {
        var forecast = RefillForecast.of(reservoir("500", "120.001"), RefillRules.usual(), ZONE, day -> true);
        assertThat(told(Language.EN, forecast.how(), false))
                .containsSubsequence("74.9 days", "(20 mL − 2 mL) ÷ 0.240002 mL/day ≈ 74.99937 days")
                .containsSubsequence("74 days", "the whole days of 74.99937 days");
    }

    @Test
    void afterAChangeOfDoseTheDaysBeforeItAreCountedToo() {
        var reservoir = reservoir("500", "100")
                .then(Program.set(
                        FILLED.plus(Duration.ofDays(14)),
                        ZONE,
                        Concentration.microgramsPerMillilitre("500"),
                        Dosing.constant("110")));
        var forecast = RefillForecast.of(reservoir, RefillRules.usual(), ZONE, day -> true);
        var told = told(Language.EN, forecast.how(), false);
        assertThat(told)
                .containsSubsequence("17.2 mL", "20 mL − 2.8 mL, not below 0")
                .containsSubsequence("69.0 days", "(17.2 mL − 2 mL) ÷ 0.22 mL/day ≈ 69.0909 days")
                .containsSubsequence("From the fill to the alarm", "83.0 days", "14 days + 69.0909 days ≈ 83.0909 days")
                .containsSubsequence("83 days", "the whole days of 83.0909 days");
        checked(told);
        var left = told(
                Language.EN,
                TimeLeft.of(reservoir, FILLED.plus(Duration.ofDays(28))).how(),
                false);
        assertThat(left).containsSubsequence("14.12 mL", "17.2 mL − 3.08 mL, not below 0");
        checked(left);
        assertThat(left).containsSubsequence("64.1 days", "14.12 mL ÷ 0.22 mL/day ≈ 64.18181 days");
    }

    @Test
    void everyFormulaAndEveryLetterHasItsWords() {
        for (var language : Language.values()) {
            for (var formula : Formula.values()) {
                assertThat(words.keys(language)).contains("pump.sums.what." + formula);
            }
            for (var symbol : Symbol.values()) {
                assertThat(words.keys(language)).contains("pump.sums.symbol." + symbol);
            }
            for (var unit : Unit.values()) {
                assertThat(words.keys(language)).contains("pump.sums.unit." + unit);
            }
        }
    }

    private static void checked(List<String> told) {
        for (var i = 0; i < told.size(); i += 3) {
            PocketCalculator.check(told.get(i + 1), told.get(i + 2));
        }
    }

    @Test
    void aTimeIsToldInDaysOf24HoursWithTheChangeOfTheClock() {
        var list = new DerivationList(new PumpFigures(new PumpWords(words, Language.EN), ZONE))
                .time(FILLED, Instant.parse("2026-03-12T13:40:00Z"));
        assertThat(list.getElement().getChildren().map(part -> part.getText()))
                .containsExactly(
                        "From Thursday, Jan 15, 2026, 10:00 AM to Thursday, Mar 12, 2026, 9:40 AM",
                        "55.9 days",
                        "55 days of 24 hours and 1,360 minutes: 55 + 1360 ÷ 1440 ≈ 55.94444 days",
                        "Clocks were put forward by an hour in between: one hour less passed than they show.");
    }

    @Test
    void whatIsShownReckonedAgainGivesWhatIsShown() {
        var visit = Instant.parse("2026-03-12T13:40:00Z");
        for (var strength : List.of("500", "1500", "2000", "333.333")) {
            for (var dose : List.of("95", "110", "123.457")) {
                var reservoir = reservoir(strength, dose);
                var lines = Residual.at(reservoir, visit, Volume.millilitres("9.7"), ResidualRules.usual())
                        .how();
                var forecast = RefillForecast.of(reservoir, RefillRules.usual(), ZONE, day -> true)
                        .how();
                for (var how : List.of(lines, forecast)) {
                    checked(told(Language.EN, how, false));
                }
            }
        }
    }
}
