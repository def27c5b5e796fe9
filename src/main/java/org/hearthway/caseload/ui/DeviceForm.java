package org.hearthway.caseload.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.child.Device;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** Enters a device with its parts, or the parts of a known one anew. */
final class DeviceForm extends Section {

    /** What the form asks of its page. */
    interface Acts {
        /** Saves; refuses with {@link Invalid}. */
        void save(Device.Kind kind, List<Device.Part> parts);

        /** Drops what was typed. */
        void leave();
    }

    /** The fields of one part. */
    private record Row(Select<Device.What> what, TextField serial, DayField implanted, DayField removed) {}

    private final transient Words words;
    private final Language language;
    private final transient Acts acts;
    private final Select<Device.Kind> kind = new Select<>();
    private final List<Row> rows = new ArrayList<>();
    private final Div places = Tags.div("hw-stack");

    DeviceForm(Words words, Language language, Optional<Device> known, Acts acts) {
        this.words = words;
        this.language = language;
        this.acts = acts;
        addClassNames("hw-sheet", "u-edged", "u-onpaper", "hw-fields");
        var title = say(known.isPresent() ? "caseload.device.change" : "caseload.device.new");
        getElement().setAttribute("aria-label", title);
        kind.setLabel(say("caseload.device.kind"));
        kind.setItems(Device.Kind.values());
        kind.setItemLabelGenerator(k -> say("paper.device." + k));
        kind.setValue(known.map(Device::kind).orElse(Device.Kind.PUMP));
        kind.setVisible(known.isEmpty());
        kind.setId("device-kind");
        kind.addValueChangeListener(changed -> startAnew());
        add(Tags.div("hw-colh", Tags.h2("", title)), kind, places);
        known.ifPresentOrElse(
                device -> device.parts().forEach(part -> row(Optional.of(part), part.what())), this::startAnew);
        var more = Tags.button("text", say("caseload.device.part.add"), pressed -> row(Optional.empty(), first()));
        more.setId("device-more");
        var save = Tags.button("main", say("caseload.device.save"), pressed -> save());
        save.setId("device-save");
        add(
                Tags.div("u-row", more),
                Tags.p("hw-sub u-my2", say("caseload.device.card")),
                Tags.div(
                        "u-row u-end",
                        Tags.button("plain", say("caseload.device.leave"), pressed -> acts.leave()),
                        save));
    }

    private Device.What first() {
        return kind.getValue().parts().iterator().next();
    }

    /** A device of another kind has other parts: one row for each of them. */
    private void startAnew() {
        rows.clear();
        places.removeAll();
        kind.getValue().parts().forEach(what -> row(Optional.empty(), what));
    }

    private void row(Optional<Device.Part> part, Device.What chosen) {
        var what = new Select<Device.What>();
        what.setLabel(say("caseload.device.part"));
        what.setItems(kind.getValue().parts());
        what.setItemLabelGenerator(w -> say("paper.part." + w));
        what.setValue(chosen);
        var serial = new TextField(say("caseload.device.serial"));
        serial.setValue(part.map(Device.Part::serial).orElse(""));
        var implanted = new DayField(say("caseload.device.implanted"), words, language);
        part.map(Device.Part::implanted).ifPresent(implanted::setValue);
        var removed = new DayField(say("caseload.device.removed"), words, language);
        part.flatMap(Device.Part::removed).ifPresent(removed::setValue);
        var row = new Row(what, serial, implanted, removed);
        var place = Tags.div("hw-part", Tags.div("u-two", what, serial), Tags.div("u-two", implanted, removed));
        var number = rows.size();
        serial.setId("part-serial-" + number);
        implanted.setId("part-implanted-" + number);
        removed.setId("part-removed-" + number);
        if (part.isEmpty()) {
            place.add(Tags.div("u-row u-end", Tags.button("text", say("caseload.device.part.drop"), pressed -> {
                rows.remove(row);
                places.remove(place);
            })));
        }
        rows.add(row);
        places.add(place);
    }

    private Map<String, HasValidation> fields() {
        var fields = new HashMap<String, HasValidation>();
        for (var place = 0; place < rows.size(); place++) {
            var row = rows.get(place);
            fields.put("what" + place, row.what());
            fields.put("serial" + place, row.serial());
            fields.put("implanted" + place, row.implanted());
            fields.put("removed" + place, row.removed());
        }
        return fields;
    }

    private void save() {
        fields().values().forEach(field -> field.setInvalid(false));
        try {
            acts.save(kind.getValue(), parts());
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields(), words, language);
        }
    }

    private List<Device.Part> parts() {
        var problems = new ArrayList<Problem>();
        var parts = new ArrayList<Device.Part>();
        for (var place = 0; place < rows.size(); place++) {
            var row = rows.get(place);
            var implanted = row.implanted().getOptionalValue();
            if (implanted.isEmpty()) {
                problems.add(Problem.at("implanted" + place, "caseload.device.implanted.missing"));
            }
            parts.add(new Device.Part(
                    row.what().getValue(),
                    row.serial().getValue(),
                    implanted.orElse(LocalDate.EPOCH),
                    row.removed().getOptionalValue()));
        }
        Invalid.ifAny(problems);
        return parts;
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
