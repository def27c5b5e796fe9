package org.hearthway.stimulator;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.hearthway.stimulator.Reading.Again;
import org.hearthway.stimulator.Reading.Found;
import org.hearthway.stimulator.Reading.Other;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.Reading.Setting;
import org.hearthway.stimulator.Reading.Side;
import org.hearthway.stimulator.engine.AmplitudeUnit;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.ImpedanceRule.Pair;

/** Readings to begin a test with, changed piece by piece. */
public record Readings(ReadingData data) {

    /** The serial number of the generator that is read. */
    public static final String SERIAL = "SG-11807";

    /** A reading with both sides set, at ten in the morning. */
    public static Readings on(LocalDate day, String level) {
        return new Readings(new ReadingData(
                SERIAL,
                day.atTime(10, 0),
                Optional.of(new BigDecimal(level)),
                BatteryUnit.PERCENT,
                Optional.empty(),
                Found.ON,
                List.of(new Pair("C-1", 1180), new Pair("C-2", 1240)),
                List.of(side(Side.LEFT, "2.5"), side(Side.RIGHT, "2.7")),
                List.of(new Other("group", "B", "")),
                Optional.empty(),
                Optional.empty(),
                "",
                false));
    }

    /** A side with usual figures. */
    public static Setting side(Side side, String amplitude) {
        return new Setting(
                side, "C+ 1-", new BigDecimal(amplitude), AmplitudeUnit.MILLIAMPERE, 90, BigDecimal.valueOf(130));
    }

    /** What a second person types who reads the same. */
    public static Again again(ReadingData data) {
        return new Again(data.level(), data.unit(), data.chargeEveryDays(), data.settings());
    }

    /** Of another generator. */
    public Readings of(String serial) {
        return with(serial, data.taken(), data.level(), data.settings(), data.emergency());
    }

    /** At another moment. */
    public Readings at(LocalDateTime taken) {
        return with(data.generator(), taken, data.level(), data.settings(), data.emergency());
    }

    /** Without what the battery shows. */
    public Readings withoutLevel() {
        return with(data.generator(), data.taken(), Optional.empty(), data.settings(), data.emergency());
    }

    /** With other settings. */
    public Readings set(Setting... settings) {
        return with(data.generator(), data.taken(), data.level(), List.of(settings), data.emergency());
    }

    /** Of an emergency. */
    public Readings inAnEmergency() {
        return with(data.generator(), data.taken(), data.level(), data.settings(), true);
    }

    private Readings with(
            String serial, LocalDateTime taken, Optional<BigDecimal> level, List<Setting> settings, boolean emergency) {
        return new Readings(new ReadingData(
                serial,
                taken,
                level,
                data.unit(),
                data.estimate(),
                data.found(),
                data.impedances(),
                settings,
                data.others(),
                data.chargeEveryDays(),
                data.lastCharge(),
                data.note(),
                emergency));
    }

    /** With what else it may hold. */
    public Readings showing(
            BatteryUnit unit, Optional<LocalDate> estimate, List<Pair> impedances, List<Other> others, String note) {
        return new Readings(new ReadingData(
                data.generator(),
                data.taken(),
                data.level(),
                unit,
                estimate,
                data.found(),
                impedances,
                data.settings(),
                others,
                data.chargeEveryDays(),
                data.lastCharge(),
                note,
                data.emergency()));
    }

    /** With the device's own estimate. */
    public Readings estimating(LocalDate day) {
        return showing(data.unit(), Optional.of(day), data.impedances(), data.others(), data.note());
    }

    /** With a rhythm of charging and the last charge. */
    public Readings charged(int everyDays, LocalDate last) {
        return new Readings(new ReadingData(
                data.generator(),
                data.taken(),
                data.level(),
                data.unit(),
                data.estimate(),
                data.found(),
                data.impedances(),
                data.settings(),
                data.others(),
                Optional.of(everyDays),
                Optional.of(last),
                data.note(),
                data.emergency()));
    }
}
