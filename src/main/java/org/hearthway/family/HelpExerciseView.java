package org.hearthway.family;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.NotAvailable;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek;

/** One exercise on one day for a helper: how it is done, how much, and how it went. What is not allowed is not there. */
@Route("help/:child/exercise/:exercise")
@RolesAllowed("HELPER")
class HelpExerciseView extends FamilyPage {

    private final transient HomeWeek week;
    private transient String name = "";
    private transient String below = "";

    HelpExerciseView(Readers readers, HomeWeek week) {
        super(readers);
        this.week = week;
    }

    @Override
    Reader read(Readers from, String child) {
        return from.helping(child);
    }

    @Override
    Place place() {
        return Place.TODAY;
    }

    @Override
    String title(Reader reader) {
        return name;
    }

    @Override
    Optional<String> below() {
        return Optional.of(below);
    }

    @Override
    void draw(Reader reader) {
        var date = askedDay(reader);
        var planned = week.days(reader.viewer(), reader.id(), date, 1).get(0).planned();
        var here = planned.stream()
                .filter(p -> p.exercise().id().equals(parameter("exercise")))
                .findFirst()
                .orElseThrow(NotAvailable::new);
        name = reader.text(here.exercise().name());
        below = date.equals(reader.today())
                ? reader.say("family.exercise.which", reader.name(), planned.indexOf(here) + 1, planned.size())
                : reader.say("family.exercise.on", reader.name(), date);
        var page = Tags.div(
                "hw-stack hw-exercise",
                new Stage(reader, here),
                ExerciseView.what(reader, here),
                ExerciseView.dose(reader, here));
        HoldRing.of(reader, here).ifPresent(page::add);
        page.add(ExerciseView.how(reader, here, List.of()));
        if (date.isAfter(reader.today())) {
            page.add(Bits.strip("quiet", Icon.INFO, reader.say("family.today.to-come")));
        } else {
            var back = reader.address("today") + (date.equals(reader.today()) ? "" : "?d=" + date);
            page.add(new OutcomeForm(reader, here, date, entry -> {
                week.log(reader.viewer(), reader.id(), entry);
                UI.getCurrent().navigate(back);
            }));
        }
        add(page);
    }
}
