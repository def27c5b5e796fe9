package org.hearthway.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device;
import org.hearthway.paper.EmergencySheet.PlanData;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Reading.Again;
import org.hearthway.stimulator.Reading.Found;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.Reading.Setting;
import org.hearthway.stimulator.Reading.Side;
import org.hearthway.stimulator.engine.AmplitudeUnit;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.ImpedanceRule.Pair;

/** The stimulator of a story: entered from its card, its emergency plan signed, read by one and by a second person. */
record Stimulator(
        ChildhoodFactory services,
        DemoDays days,
        Function<String, Viewer.Person> person,
        Supplier<ChildId> child,
        Story.Stimulated story) {

    private static final LocalTime AFTER_THE_VISIT = LocalTime.of(13, 40);

    void addTo(Acts acts) {
        acts.at(days.atWork(story.day(), AFTER_THE_VISIT), this::enter);
        acts.at(days.atWork(story.day(), AFTER_THE_VISIT.plusMinutes(25)), this::sign);
        story.readings().forEach(reading -> {
            acts.at(days.atWork(reading.day(), AFTER_THE_VISIT), () -> read(reading));
            reading.checked()
                    .ifPresent(second -> acts.at(
                            days.atWork(reading.day(), AFTER_THE_VISIT.plusMinutes(12)),
                            () -> confirm(second, reading)));
        });
    }

    private void enter() {
        var in = days.open(story.day());
        var parts = new ArrayList<Device.Part>();
        parts.add(new Device.Part(Device.What.GENERATOR, story.generator(), in, Optional.empty()));
        story.leads().forEach(lead -> parts.add(new Device.Part(Device.What.LEAD, lead, in, Optional.empty())));
        services.devices().enter(person.apply(story.by()), child.get(), Device.Kind.STIMULATOR, parts);
        services.stimulators()
                .describe(
                        person.apply(story.by()),
                        child.get(),
                        story.generator(),
                        new Generator.About(story.charge(), story.life(), Optional.empty(), 0));
    }

    private void read(Story.Reading reading) {
        var by = person.apply(reading.by());
        var seen = services.stimulators().record(by, child.get()).seen();
        services.stimulators().enter(by, child.get(), data(reading), seen);
    }

    private void confirm(String second, Story.Reading reading) {
        var by = person.apply(second);
        var data = data(reading);
        services.stimulators()
                .confirm(
                        by,
                        child.get(),
                        new Again(data.level(), data.unit(), data.chargeEveryDays(), data.settings()),
                        services.stimulators().record(by, child.get()).seen());
    }

    private ReadingData data(Story.Reading reading) {
        var settings = new ArrayList<Setting>();
        reading.left().ifPresent(tenths -> settings.add(side(Side.LEFT, tenths)));
        reading.right().ifPresent(tenths -> settings.add(side(Side.RIGHT, tenths)));
        return new ReadingData(
                story.generator(),
                days.open(reading.day()).atTime(AFTER_THE_VISIT.minusMinutes(20)),
                Optional.of(BigDecimal.valueOf(reading.battery())),
                BatteryUnit.PERCENT,
                reading.estimate().map(days::on),
                Found.ON,
                List.of(new Pair("C-1", 1180), new Pair("C-9", 1240)),
                settings,
                List.of(),
                reading.every(),
                reading.charged().map(day -> chargedBy(reading, day)),
                reading.note(),
                false);
    }

    /** The visit lies earlier than its day when the clinic was closed then, and nobody charged after it. */
    private LocalDate chargedBy(Story.Reading reading, int day) {
        var charged = days.on(day);
        var visit = days.open(reading.day());
        return charged.isAfter(visit) ? visit : charged;
    }

    private static Setting side(Side side, int tenths) {
        return new Setting(
                side,
                side == Side.LEFT ? "C+ 1-" : "C+ 9-",
                BigDecimal.valueOf(tenths, 1),
                AmplitudeUnit.MILLIAMPERE,
                90,
                BigDecimal.valueOf(130));
    }

    private void sign() {
        var plan = story.storm();
        services.sheets()
                .sign(
                        person.apply(plan.by()),
                        child.get(),
                        new PlanData(plan.line(), plan.lies(), "", plan.words()),
                        0);
    }
}
