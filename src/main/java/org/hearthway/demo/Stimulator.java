package org.hearthway.demo;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device;
import org.hearthway.paper.EmergencySheet.PlanData;

/** The stimulator of a story: entered from its card, its emergency plan signed. */
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
    }

    private void enter() {
        var in = days.open(story.day());
        var parts = new ArrayList<Device.Part>();
        parts.add(new Device.Part(Device.What.GENERATOR, story.generator(), in, Optional.empty()));
        story.leads().forEach(lead -> parts.add(new Device.Part(Device.What.LEAD, lead, in, Optional.empty())));
        services.devices().enter(person.apply(story.by()), child.get(), Device.Kind.STIMULATOR, parts);
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
