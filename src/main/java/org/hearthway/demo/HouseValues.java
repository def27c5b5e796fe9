package org.hearthway.demo;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.path.ClinicValues;
import org.hearthway.path.ClinicValues.PathOfClinic;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.ValuePlace;
import org.springframework.stereotype.Component;

/**
 * What the demo clinic does otherwise than the paths as they came, as it stands in {@code content/demo/values.yaml}. Read
 * everywhere, used in the demo only.
 */
@Component
class HouseValues implements ContentKind {

    private static final int LONGEST_AGO = 3_700;
    private static final LocalTime SAID = LocalTime.of(9, 40);

    private final List<Said> all = new ArrayList<>();

    /** One value, on which day before today it was given, and by whose key. */
    private record Said(String path, ValuePlace place, Amount is, int day, String by, String reason) {}

    @Override
    public String place() {
        return "demo/values.yaml";
    }

    @Override
    public void read(Entry file) {
        for (var value : file.list("values")) {
            all.add(new Said(
                    value.text("path"),
                    new ValuePlace(
                            value.text("stage"),
                            value.choice("value", ValuePlace.Kind.class),
                            value.maybeText("part").orElse("")),
                    new Amount.Gap(value.period("is")),
                    value.integer("day", -LONGEST_AGO, -1),
                    value.text("by"),
                    value.text("reason")));
            value.done();
        }
    }

    void addTo(Acts acts, DemoDays days, ClinicValues values, Map<String, Viewer.Person> persons) {
        all.forEach(said -> acts.at(
                days.atWork(said.day(), SAID),
                () -> say(
                        values,
                        Optional.ofNullable(persons.get(said.by()))
                                .orElseThrow(() -> new IllegalStateException(
                                        "content/demo: nobody has the key \"" + said.by() + "\"")),
                        said)));
    }

    private static void say(ClinicValues values, Viewer.Person by, Said said) {
        var seen = values.all(by).stream()
                .filter(path -> path.pathway().equals(said.path()))
                .mapToLong(PathOfClinic::version)
                .sum();
        values.apply(by, said.path(), Map.of(said.place(), Optional.of(said.is())), said.reason(), seen);
    }
}
