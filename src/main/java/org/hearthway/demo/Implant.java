package org.hearthway.demo;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device;
import org.hearthway.paper.EmergencySheet.PlanData;
import org.hearthway.pump.PumpSettings.SettingData;

/** The pump of a story: entered from its card, its setting typed once or twice, its emergency plan signed. */
record Implant(
        ChildhoodFactory services,
        DemoDays days,
        Function<String, Viewer.Person> person,
        Supplier<ChildId> child,
        Story.Implanted story) {

    private static final LocalTime AFTER_THE_FILL = LocalTime.of(11, 30);

    void addTo(Acts acts) {
        acts.at(days.atWork(story.printed(), AFTER_THE_FILL), this::enter);
        story.checked()
                .ifPresent(second -> acts.at(
                        days.atWork(story.printed(), AFTER_THE_FILL.plusMinutes(9)),
                        () -> services.settings().confirm(person.apply(second), child.get(), typed(), 1)));
        story.plan()
                .ifPresent(plan ->
                        acts.at(days.atWork(story.printed(), AFTER_THE_FILL.plusMinutes(20)), () -> sign(plan)));
    }

    private void enter() {
        var nurse = person.apply(story.by());
        var in = days.open(story.day());
        services.devices()
                .enter(
                        nurse,
                        child.get(),
                        Device.Kind.PUMP,
                        List.of(
                                new Device.Part(Device.What.RESERVOIR, story.pump(), in, Optional.empty()),
                                new Device.Part(Device.What.CATHETER, story.catheter(), in, Optional.empty())));
        services.settings().enter(nurse, child.get(), typed(), 0);
    }

    private SettingData typed() {
        return new SettingData(
                BigDecimal.valueOf(story.strength()), BigDecimal.valueOf(story.dose()), days.open(story.printed()));
    }

    private void sign(Story.Plan plan) {
        services.sheets()
                .sign(
                        person.apply(plan.by()),
                        child.get(),
                        new PlanData(plan.line(), plan.lies(), plan.words(), ""),
                        0);
    }
}
