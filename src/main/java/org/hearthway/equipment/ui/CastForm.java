package org.hearthway.equipment.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Place;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;

/** Plans a series of casts, and records each cast that was put on and taken off. */
final class CastForm extends Asked {

    private static final int WEEK = 7;

    /** The fields of one cast. */
    private record Row(DayField on, DayField off, IntegerField degrees, TextArea skin) {}

    private final Select<Place> place;
    private final Select<Place.Side> side;
    private final DayField from;
    private final IntegerField everyDays;
    private final DayField lastOff;
    private final DayField ended;
    private final List<Row> rows = new ArrayList<>();
    private final Div casts = Tags.div("hw-stack");

    CastForm(
            Labels labels,
            LocalDate today,
            Optional<CastSeries> known,
            Consumer<CastSeries.Data> save,
            Runnable leave) {
        super(labels, labels.say(known.isPresent() ? "equipment.cast.record" : "equipment.cast.new"));
        var was = known.map(CastSeries::data);
        place = choice("place", "equipment.field.place", "equipment.place.", List.of(Place.values()));
        place.setValue(was.map(CastSeries.Data::place).orElse(Place.FOOT_ANKLE));
        side = choice("side", "equipment.field.side", "equipment.side.", List.of(Place.Side.values()));
        side.setValue(was.map(CastSeries.Data::side).orElse(Place.Side.BOTH));
        from = day(
                "from",
                "equipment.field.from",
                Optional.of(was.map(CastSeries.Data::from).orElse(today)));
        everyDays = number(
                "everyDays",
                "equipment.field.every-days",
                Optional.of(was.map(CastSeries.Data::everyDays).orElse(WEEK)));
        lastOff = day("lastOff", "equipment.field.last-off", was.flatMap(CastSeries.Data::lastOff));
        ended = day("ended", "equipment.field.ended", was.flatMap(CastSeries.Data::ended));
        ended.setVisible(known.isPresent());
        var more =
                Tags.button("text", say("equipment.cast.more"), pressed -> row(Optional.empty(), Optional.of(today)));
        more.setId("cast-more");
        was.map(CastSeries.Data::casts).orElse(List.of()).forEach(cast -> row(Optional.of(cast), Optional.empty()));
        add(
                Tags.div("u-two", place, side),
                Tags.div("u-two", from, everyDays),
                Tags.div("u-two", lastOff, ended),
                casts,
                Tags.div("u-row", more));
        end(leave, () -> save.accept(data()));
    }

    private void row(Optional<CastSeries.Cast> cast, Optional<LocalDate> putOn) {
        var number = rows.size();
        var row = new Row(
                day(
                        "on" + number,
                        "equipment.field.on",
                        cast.map(CastSeries.Cast::on).or(() -> putOn)),
                day("off" + number, "equipment.field.off", cast.flatMap(CastSeries.Cast::off)),
                number("degrees" + number, "equipment.field.degrees", cast.flatMap(CastSeries.Cast::degrees)),
                text(
                        "skin" + number,
                        "equipment.field.skin",
                        cast.map(CastSeries.Cast::skin).orElse("")));
        rows.add(row);
        casts.add(Tags.div("hw-part", Tags.div("u-two", row.on(), row.off()), row.degrees(), row.skin()));
    }

    /** A row whose day was emptied is left out; problems name the place among those that are left. */
    private CastSeries.Data data() {
        var filled = rows.stream().filter(row -> !row.on().isEmpty()).toList();
        var worn = new ArrayList<CastSeries.Cast>();
        for (var row : filled) {
            var number = worn.size();
            named("on" + number, row.on());
            named("off" + number, row.off());
            named("degrees" + number, row.degrees());
            named("skin" + number, row.skin());
            worn.add(new CastSeries.Cast(
                    row.on().getValue(),
                    row.off().getOptionalValue(),
                    row.degrees().getOptionalValue(),
                    row.skin().getValue()));
        }
        return new CastSeries.Data(
                place.getValue(),
                side.getValue(),
                needed("from", from),
                everyDays.getOptionalValue().orElse(0),
                lastOff.getOptionalValue(),
                ended.getOptionalValue(),
                worn);
    }
}
