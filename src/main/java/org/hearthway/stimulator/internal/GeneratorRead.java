package org.hearthway.stimulator.internal;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hearthway.child.Device;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Generator.About;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.StimulatorRules;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.stimulator.engine.DropRule.Drop;
import org.hearthway.stimulator.engine.ImpedanceRule.Unusual;
import org.hearthway.stimulator.engine.Level;
import org.hearthway.stimulator.engine.Recharging;
import org.hearthway.stimulator.engine.Window;

/** Puts together what the readings of one generator say. */
record GeneratorRead(StimulatorRules rules) {

    /**
     * What is known of a generator.
     *
     * @param part in the body
     * @param standing the readings of the child that stand, the one taken last first
     */
    Generator of(Device.Part part, About about, List<Reading> standing) {
        var own =
                standing.stream().filter(reading -> isOf(part, reading.data())).toList();
        var all = window(part, about, own.stream().map(Reading::data).toList());
        var counted = window(
                part,
                about,
                own.stream()
                        .filter(reading -> reading.check().isPresent())
                        .map(Reading::data)
                        .toList());
        var last = own.stream().map(reading -> reading.data().day()).findFirst();
        return new Generator(
                part.serial(),
                part.implanted(),
                about,
                own,
                counted,
                all,
                Generator.earlier(counted, all).nextReading(last, rules.everyDays()),
                drop(about, own),
                unusual(own),
                recharging(about, own));
    }

    /** The window that a generator would have with one more reading. */
    Window with(ReadingData more, Device.Part part, About about, List<Reading> standing) {
        return window(
                part,
                about,
                Stream.concat(Stream.of(more), standing.stream().map(Reading::data))
                        .filter(data -> isOf(part, data))
                        .sorted(Comparator.comparing(ReadingData::taken).reversed())
                        .toList());
    }

    private static boolean isOf(Device.Part part, ReadingData data) {
        return data.generator().equals(part.serial()) && !data.day().isBefore(part.implanted());
    }

    private Window window(Device.Part part, About about, List<ReadingData> newestFirst) {
        var levels = levels(newestFirst);
        var volts = levels.stream().anyMatch(level -> level.unit() == BatteryUnit.VOLT);
        var known = new Window.Known(
                part.implanted(),
                about.charge(),
                about.lifeYears(),
                newestFirst.stream().flatMap(data -> data.estimate().stream()).findFirst(),
                volts ? about.endVolts().map(BigDecimal::doubleValue) : Optional.of((double) rules.endPercent()));
        return Window.of(known, levels, rules.firstCheckMonths());
    }

    /** In the unit of the newest, in ascending order; of several on one day the last. */
    private static List<Level> levels(List<ReadingData> newestFirst) {
        var unit = newestFirst.stream()
                .filter(data -> data.level().isPresent())
                .map(ReadingData::unit)
                .findFirst();
        var byDay = new TreeMap<LocalDate, Level>();
        newestFirst.stream()
                .filter(data -> data.level().isPresent()
                        && unit.filter(newest -> newest == data.unit()).isPresent())
                .forEach(data -> byDay.putIfAbsent(
                        data.day(), new Level(data.day(), data.level().orElseThrow(), data.unit())));
        return new ArrayList<>(byDay.values());
    }

    /** What a generator shows that is charged is how full it is: it falls and rises with every charge. */
    private Optional<Drop> drop(About about, List<Reading> own) {
        return about.charge() == Charge.AT_HOME
                ? Optional.empty()
                : rules.drop().in(levels(own.stream().map(Reading::data).toList()));
    }

    private List<Unusual> unusual(List<Reading> own) {
        if (own.isEmpty()) {
            return List.of();
        }
        var before = own.stream()
                .skip(1)
                .filter(reading -> !reading.data().impedances().isEmpty())
                .findFirst()
                .map(reading -> reading.data().impedances())
                .orElse(List.of());
        return rules.impedances().in(own.get(0).data().impedances(), before);
    }

    private static Optional<Recharging> recharging(About about, List<Reading> own) {
        if (about.charge() == Charge.NEVER) {
            return Optional.empty();
        }
        return own.stream()
                .flatMap(reading -> reading.data().chargeEveryDays().stream())
                .findFirst()
                .map(every -> new Recharging(
                        every,
                        own.stream()
                                .flatMap(reading -> reading.data().lastCharge().stream())
                                .findFirst()));
    }
}
