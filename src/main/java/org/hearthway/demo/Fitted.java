package org.hearthway.demo;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Item;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.Surveillance.Outlook;

/** What the child of a story wears and uses, and its checks of hips and spine, recorded as people would have. */
record Fitted(
        ChildhoodFactory services,
        DemoDays days,
        Function<String, Viewer.Person> person,
        Supplier<ChildId> child,
        Story story) {

    private static final LocalTime AFTER_NOON = LocalTime.of(14, 10);

    void addTo(Acts acts) {
        story.things().forEach(thing -> add(thing, acts));
        story.casts().forEach(cast -> acts.at(days.atWork(last(cast), AFTER_NOON), () -> enter(cast)));
        // what was done before the child came here is told on the day after it came
        story.checks()
                .forEach(check -> acts.at(
                        days.atWork(
                                Math.min(-1, Math.max(check.day(), story.entered() + 1)), AFTER_NOON.plusMinutes(9)),
                        () -> record(check)));
    }

    private static int last(Story.Cast cast) {
        return cast.worn().stream().mapToInt(Story.Worn::on).max().orElse(cast.day());
    }

    private void add(Story.Thing thing, Acts acts) {
        var id = new UUID[1];
        acts.at(
                days.atWork(thing.day(), AFTER_NOON),
                () -> id[0] = services.equipment().enter(person.apply(thing.by()), child.get(), data(thing)));
        thing.looks()
                .forEach(look -> acts.at(
                        days.atWork(look.day(), AFTER_NOON.plusMinutes(20)), () -> look(id[0], look, thing.by())));
    }

    private Item.Data data(Story.Thing thing) {
        var kind = services.equipment().kinds().stream()
                .filter(known -> known.id().equals(thing.kind()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("content/demo: no equipment " + thing.kind()));
        return new Item.Data(
                thing.kind(),
                thing.place(),
                thing.side(),
                days.open(thing.day()),
                thing.lentUntil().map(days::on),
                new Item.Wear(thing.byDay(), thing.byNight(), thing.schedule(), thing.buildUp()),
                kind.skinEvery(),
                kind.growthEvery(),
                Optional.empty(),
                List.of());
    }

    private void look(UUID id, Story.Look look, String by) {
        var item = services.equipment().of(person.apply(by), child.get()).stream()
                .filter(known -> known.id().equals(id))
                .findFirst()
                .orElseThrow();
        var looked = new Item.Look(look.what(), days.open(look.day()), look.outcome(), Optional.empty(), look.note());
        services.equipment().change(person.apply(by), child.get(), id, item.with(looked), item.version());
    }

    private void enter(Story.Cast cast) {
        var worn = cast.worn().stream()
                .map(one ->
                        new CastSeries.Cast(days.open(one.on()), one.off().map(days::open), one.degrees(), one.skin()))
                .toList();
        services.casts()
                .enter(
                        person.apply(cast.by()),
                        child.get(),
                        new CastSeries.Data(
                                cast.place(),
                                cast.side(),
                                days.open(cast.day()),
                                cast.everyDays(),
                                Optional.of(days.open(cast.lastOff())),
                                Optional.empty(),
                                worn));
    }

    private void record(Story.Watch check) {
        var by = person.apply(check.by());
        long seen = services.surveillance().outlook(by, child.get()).stream()
                .filter(outlook -> outlook.matter().watched() == check.watched())
                .mapToLong(Outlook::seen)
                .sum();
        services.surveillance()
                .record(
                        by,
                        child.get(),
                        new CheckData(
                                check.watched(),
                                days.open(check.day()),
                                check.who(),
                                check.left().map(BigDecimal::valueOf),
                                check.right().map(BigDecimal::valueOf),
                                check.cobb(),
                                check.stable(),
                                ""),
                        seen);
    }
}
