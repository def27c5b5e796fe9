package org.hearthway.pump.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Devices;
import org.hearthway.child.Devices.PumpNow;
import org.hearthway.pump.PumpSettings;
import org.hearthway.pump.PumpSettings.SettingData;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.testing.LeanClinic;
import org.hearthway.testing.People;
import org.hearthway.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

/** The clinic's clock stands at Thursday, March 12, 2026. */
@SpringJUnitConfig(CopiedSettingsTests.Setting.class)
class CopiedSettingsTests {

    @Import(LeanClinic.class)
    @ComponentScan("org.hearthway.pump.internal")
    static class Setting {
        @Bean
        Devices devices() {
            return mock();
        }
    }

    private static final LocalDate PRINTED = LocalDate.of(2026, 3, 3);

    @Autowired
    private PumpSettings settings;

    @Autowired
    private Devices devices;

    @Autowired
    private LeanClinic.OpenGate gate;

    @Autowired
    private Words words;

    private final Viewer nurse = People.with(Role.NURSE);
    private final Viewer physician = People.with(Role.PHYSICIAN);
    private final ChildId child = ChildId.random();

    @BeforeEach
    void openTheGate() {
        gate.deny();
    }

    private static SettingData typed(String strength, String dose) {
        return new SettingData(new BigDecimal(strength), new BigDecimal(dose), PRINTED);
    }

    private List<Problem> refusal(Runnable act) {
        var refused = catchThrowableOfType(Invalid.class, act::run).problems();
        refused.forEach(problem -> assertThat(words.say(Language.ES, problem)).doesNotContain("{"));
        return refused;
    }

    @Test
    void waitsForASecondPersonWhoTypesTheSameNumbers() {
        settings.enter(nurse, child, typed("500", "120.5"), 0);
        assertThat(settings.current(nurse, child).orElseThrow().check()).isEmpty();
        settings.confirm(physician, child, typed("500.0", "120.50"), 1);
        assertThat(settings.current(nurse, child).orElseThrow().check()).isPresent();
    }

    @Test
    void saysNothingOfAPumpThatCameInAfterThePrintOutNorOfOneThatIsOut() {
        settings.enter(nurse, child, typed("500", "120.5"), 0);
        when(devices.pump(child)).thenReturn(Optional.empty());
        assertThat(settings.ofThisPump(nurse, child)).isPresent();
        when(devices.pump(child)).thenReturn(Optional.of(new PumpNow(true, PRINTED)));
        assertThat(settings.ofThisPump(nurse, child)).isPresent();
        when(devices.pump(child)).thenReturn(Optional.of(new PumpNow(true, PRINTED.plusDays(1))));
        assertThat(settings.ofThisPump(nurse, child)).isEmpty();
        when(devices.pump(child)).thenReturn(Optional.of(new PumpNow(false, PRINTED.plusDays(1))));
        assertThat(settings.ofThisPump(nurse, child)).isEmpty();
        assertThat(settings.current(nurse, child)).isPresent();
    }

    @Test
    void isNotConfirmedByOtherNumbersNorTellsWhichTheFirstWere() {
        settings.enter(nurse, child, typed("500", "120"), 0);
        var problems = refusal(() -> settings.confirm(physician, child, typed("2000", "120"), 1));
        assertThat(problems).extracting(Problem::field).containsExactly("strength");
        assertThat(words.say(Language.EN, problems.get(0))).doesNotContain("500");
        assertThat(settings.current(nurse, child).orElseThrow().check()).isEmpty();
    }

    @Test
    void nobodyIsTheirOwnSecond() {
        settings.enter(nurse, child, typed("500", "120"), 0);
        assertThat(refusal(() -> settings.confirm(nurse, child, typed("500", "120"), 1)))
                .extracting(Problem::key)
                .containsExactly("pump.problem.same-person");
    }

    @Test
    void aNewSettingIsUnconfirmedAgainAndTheOldOneStays() {
        settings.enter(nurse, child, typed("500", "120"), 0);
        settings.confirm(physician, child, typed("500", "120"), 1);
        settings.enter(nurse, child, typed("1000", "130"), 1);
        assertThat(settings.current(nurse, child).orElseThrow().check()).isEmpty();
        assertThat(settings.history(nurse, child))
                .extracting(PumpSettings.Setting::strength)
                .containsExactly(new Concentration(new BigDecimal("1000")), new Concentration(new BigDecimal("500")));
        assertThatThrownBy(() -> settings.confirm(physician, child, typed("500", "120"), 1))
                .isInstanceOf(Overtaken.class);
    }

    @Test
    void ofTwoWhoEnterOrConfirmAtOnceTheSecondIsTold() {
        settings.enter(nurse, child, typed("500", "120"), 0);
        assertThatThrownBy(() -> settings.enter(physician, child, typed("500", "120"), 0))
                .isInstanceOf(Overtaken.class);
        settings.confirm(physician, child, typed("500", "120"), 1);
        assertThatThrownBy(() -> settings.confirm(physician, child, typed("500", "120"), 1))
                .isInstanceOf(Overtaken.class);
    }

    /** Half a milligram typed as 0.5 instead of 500 micrograms is a unit slip (reference table ITB-10). */
    @ParameterizedTest
    @CsvSource({
        "0.5, 120, strength",
        "49.999, 120, strength",
        "5000.001, 120, strength",
        "500, 4.9, dose",
        "500, 2001, dose",
        "500, 0.12, dose",
        "500, 120.0001, dose"
    })
    void refusesAmountsThatNoPrintOutShows(String strength, String dose, String field) {
        assertThat(refusal(() -> settings.enter(nurse, child, typed(strength, dose), 0)))
                .extracting(Problem::field)
                .containsExactly(field);
    }

    @Test
    void refusesAPrintOutOfTheFuture() {
        var tomorrow = new SettingData(new BigDecimal("500"), new BigDecimal("120"), LocalDate.of(2026, 3, 13));
        assertThat(refusal(() -> settings.enter(nurse, child, tomorrow, 0)))
                .extracting(Problem::field)
                .containsExactly("on");
    }

    @Test
    void askTheGate() {
        gate.deny(Action.RECORD_PUMP);
        assertThatThrownBy(() -> settings.enter(nurse, child, typed("500", "120"), 0))
                .isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> settings.confirm(nurse, child, typed("500", "120"), 1))
                .isInstanceOf(NotAvailable.class);
        gate.deny(Action.SEE_FAMILY_PAGES, Action.SEE_FOLDER);
        assertThatThrownBy(() -> settings.current(nurse, child)).isInstanceOf(NotAvailable.class);
        assertThatThrownBy(() -> settings.history(nurse, child)).isInstanceOf(NotAvailable.class);
    }
}
