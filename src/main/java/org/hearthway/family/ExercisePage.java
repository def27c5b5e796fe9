package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.NotAvailable;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Planned;

/** One exercise on one day: how it is done, how much, a hand with the time, and how it went. */
abstract class ExercisePage extends FamilyPage {

    private final transient HomeWeek week;
    private final transient ExerciseLibrary library;
    private transient String name = "";
    private transient String below = "";

    ExercisePage(Readers readers, HomeWeek week, ExerciseLibrary library) {
        super(readers);
        this.week = week;
        this.library = library;
    }

    /** The rules of care that this reader is told of on that day. */
    abstract List<Plan.Care> cautions(Reader reader, LocalDate date);

    /** Whether this reader says how it went. */
    abstract boolean mayLog(Reader reader);

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
        var cautions = cautions(reader, date).stream()
                .filter(care -> here.exercise().tags().contains(care.rule().tag()))
                .toList();
        var page = Tags.div("hw-stack hw-exercise", new Stage(reader, here), what(reader, here), dose(reader, here));
        HoldRing.of(reader, here, library.pace().restSeconds()).ifPresent(page::add);
        page.add(how(reader, here, cautions), outcome(reader, here, date));
        add(page);
    }

    private Component outcome(Reader reader, Planned here, LocalDate date) {
        if (!mayLog(reader)) {
            return Bits.strip("quiet", Icon.LOCK, reader.say("family.view-only"));
        }
        if (date.isAfter(reader.today())) {
            return Bits.strip("quiet", Icon.INFO, reader.say("family.today.to-come"));
        }
        var back = reader.address("today") + (date.equals(reader.today()) ? "" : "?d=" + date);
        return new OutcomeForm(reader, here, date, entry -> {
            // severe pain needs no word here: the day itself shows the call first
            var before = here.logged().map(HomeWeek.Logged::turn).orElse(0L);
            week.log(reader.viewer(), reader.id(), entry, before);
            UI.getCurrent().navigate(back);
        });
    }

    private static Component what(Reader reader, Planned here) {
        return Tags.div(
                "",
                Bits.el("h1", "u-2xl", reader.text(here.exercise().name())),
                Tags.p("hw-quiet u-mt1", reader.text(here.exercise().purpose())));
    }

    private static Component dose(Reader reader, Planned here) {
        var dose = Tags.div("hw-dose");
        var cells = DoseWords.cells(reader, here.line());
        cells.forEach(cell -> dose.add(Tags.div("", Bits.el("b", "", cell.large()), Tags.span("", cell.small()))));
        dose.addClassName("of" + cells.size());
        return dose;
    }

    private static Component how(Reader reader, Planned here, List<Plan.Care> cautions) {
        var section = Tags.section("hw-stack u-gap2", reader.say("family.exercise.how"));
        section.add(Tags.h2("u-l", reader.say("family.exercise.how")));
        if (!here.line().note().isBlank()) {
            section.add(Bits.strip(
                    "",
                    Icon.PERSON,
                    Bits.led(reader.say("family.exercise.note"), here.line().note())));
        }
        var steps = Bits.el("ol", "hw-steps");
        here.exercise().steps().forEach(step -> steps.add(Bits.el("li", "", Tags.span("", reader.text(step)))));
        section.add(steps);
        for (var care : cautions) {
            var until = reader.say("family.exercise.until", reader.monthDay(care.until()));
            section.add(Bits.strip(
                    "ember", Icon.INFO, Bits.led(until, reader.text(care.rule().says()))));
        }
        section.add(Bits.strip(
                "quiet",
                Icon.PAUSE,
                Bits.led(
                        reader.say("family.exercise.stop"),
                        reader.text(here.exercise().stop()))));
        return section;
    }
}
