package org.hearthway.equipment.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Kind;
import org.hearthway.equipment.Kind.Sort;
import org.hearthway.equipment.Place;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;

/** Enters a splint or a piece of equipment, or changes what was entered. */
final class ItemForm extends Asked {

    private final transient Optional<Item> known;
    private final Select<Kind> kind = named("kind", new Select<>());
    private final Select<Place> place;
    private final Select<Place.Side> side;
    private final DayField given;
    private final DayField lentUntil;
    private final DayField back;
    private final IntegerField byDay;
    private final IntegerField byNight;
    private final TextArea schedule;
    private final TextArea buildUp;
    private final IntegerField skinEvery;
    private final IntegerField growthEvery;

    ItemForm(
            Labels labels,
            LocalDate today,
            List<Kind> kinds,
            Optional<Item> known,
            Consumer<Item.Data> save,
            Runnable leave) {
        super(labels, labels.say(known.isPresent() ? "equipment.change" : "equipment.new"));
        this.known = known;
        var was = known.map(Item::data);
        var wear = was.map(Item.Data::wear).orElse(Item.Wear.NOT_SAID);
        var worn = kinds.stream().anyMatch(one -> one.sort() == Sort.WORN);
        kind.setLabel(say("equipment.field.kind"));
        kind.setItems(kinds);
        kind.setItemLabelGenerator(one -> one.name().in(labels.language()));
        place = choice("place", "equipment.field.place", "equipment.place.", List.of(Place.values()));
        place.setEmptySelectionAllowed(true);
        side = choice("side", "equipment.field.side", "equipment.side.", List.of(Place.Side.values()));
        side.setEmptySelectionAllowed(true);
        given = day(
                "given",
                worn ? "equipment.field.fitted" : "equipment.field.given",
                Optional.of(was.map(Item.Data::given).orElse(today)));
        lentUntil = day("lentUntil", "equipment.field.lent", was.flatMap(Item.Data::lentUntil));
        back = day("back", "equipment.field.back", was.flatMap(Item.Data::back));
        byDay = number("byDay", "equipment.field.by-day", wear.byDay());
        byNight = number("byNight", "equipment.field.by-night", wear.byNight());
        schedule = text("schedule", "equipment.field.schedule", wear.schedule());
        buildUp = text("buildUp", "equipment.field.build-up", wear.buildUp());
        skinEvery = number("skinEvery", "equipment.field.skin-every", was.flatMap(Item.Data::skinEvery));
        growthEvery = number("growthEvery", "equipment.field.growth-every", was.flatMap(Item.Data::growthEvery));
        var where = Tags.div("u-two", place, side);
        where.setVisible(worn);
        var times = Tags.div("hw-stack", Tags.div("u-two", byDay, byNight), schedule, buildUp);
        times.setVisible(worn);
        lentUntil.setVisible(!worn);
        back.setVisible(known.isPresent());
        was.flatMap(Item.Data::place).ifPresent(place::setValue);
        was.flatMap(Item.Data::side).ifPresent(side::setValue);
        known.flatMap(item -> kinds.stream()
                        .filter(one -> one.id().equals(item.kind().id()))
                        .findFirst())
                .ifPresent(kind::setValue);
        // a kind brings its usual intervals along; what was entered for a child stays
        kind.addValueChangeListener(chosen -> usual(chosen.getValue()));
        add(kind, where, Tags.div("u-two", given, lentUntil, back), times);
        add(Tags.div("u-two", skinEvery, growthEvery), Tags.p("hw-sub u-my2", say("equipment.interval.source")));
        end(leave, () -> save.accept(data()));
    }

    private void usual(Kind chosen) {
        skinEvery.setValue(chosen.skinEvery().orElse(null));
        growthEvery.setValue(chosen.growthEvery().orElse(null));
    }

    private Item.Data data() {
        if (kind.getValue() == null) {
            throw new Invalid(Problem.at("kind", "equipment.problem.kind"));
        }
        return new Item.Data(
                kind.getValue().id(),
                place.getOptionalValue(),
                side.getOptionalValue(),
                needed("given", given),
                lentUntil.getOptionalValue(),
                new Item.Wear(
                        byDay.getOptionalValue(), byNight.getOptionalValue(), schedule.getValue(), buildUp.getValue()),
                skinEvery.getOptionalValue(),
                growthEvery.getOptionalValue(),
                back.getOptionalValue(),
                known.map(item -> item.data().looks()).orElse(List.of()));
    }
}
