package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.program.FamilyTimes.Busy;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Planned;

/** A page with the exercises of a day, each with its tick, and a voice for those who do not see the tick change. */
abstract class TickPage extends FamilyPage {

    private final transient HomeWeek week;
    private final Span status = new Span();

    TickPage(Readers readers, HomeWeek week) {
        super(readers);
        this.week = week;
        status.addClassName("hw-vh");
        status.getElement().setAttribute("role", "status");
    }

    @Override
    Place place() {
        return Place.TODAY;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.place.today");
    }

    @Override
    final void draw(Reader reader) {
        add(status);
        drawDay(reader);
    }

    /** Draws the page below the status. */
    abstract void drawDay(Reader reader);

    /** The exercises of a day in their order, the next one lit when the day is today. */
    final HtmlContainer exercises(Reader reader, DayStory day, boolean mayTick) {
        return exercises(reader, day, mayTick, List.of());
    }

    /** The same, in the family's times beside what takes up time in its week. */
    final HtmlContainer exercises(Reader reader, DayStory day, boolean mayTick, List<Busy> busy) {
        var date = day.day().date();
        var ticked = mayTick && !date.isAfter(reader.today())
                ? Optional.<ExerciseRow.Ticked>of((planned, done) -> tick(reader, planned, date, done))
                : Optional.<ExerciseRow.Ticked>empty();
        var list = Tags.section("hw-stack u-gap2", reader.say("family.today.exercises"));
        var next = day.next().filter(planned -> date.equals(reader.today()));
        var times = day.day().times();
        if (times.isEmpty()) {
            day.planned().forEach(planned -> list.add(row(reader, planned, next, date, ticked)));
            return list;
        }
        for (var time : times) {
            list.add(DayTimes.head(reader, day, time, busy));
            DayTimes.in(day, time).forEach(planned -> list.add(row(reader, planned, next, date, ticked)));
            DayTimes.again(day, time).forEach(planned -> list.add(DayTimes.once(reader, planned)));
        }
        DayTimes.untimed(day).forEach(planned -> list.add(row(reader, planned, next, date, ticked)));
        return list;
    }

    private static ExerciseRow row(
            Reader reader,
            Planned planned,
            Optional<Planned> next,
            LocalDate date,
            Optional<ExerciseRow.Ticked> ticked) {
        var lit = next.filter(planned::equals).isPresent();
        return new ExerciseRow(reader, planned, lit, address(reader, planned, date), ticked);
    }

    private static String address(Reader reader, Planned planned, LocalDate date) {
        var address = reader.address("exercise/" + planned.exercise().id());
        return date.equals(reader.today()) ? address : address + "?d=" + date;
    }

    /** Ticks an exercise, or takes the tick back, and draws the page anew. */
    final void tick(Reader reader, Planned planned, LocalDate date, boolean done) {
        var exercise = planned.exercise().id();
        try {
            if (done) {
                var before = planned.logged().map(HomeWeek.Logged::turn).orElse(0L);
                week.log(reader.viewer(), reader.id(), quickTick(exercise, date), before);
            } else {
                week.takeBack(reader.viewer(), reader.id(), exercise, date);
            }
        } catch (Invalid invalid) {
            Told.couldNot(reader.say(invalid.problems().get(0)));
            return;
        } catch (NotAvailable notAvailable) {
            refused(reader, notAvailable);
            return;
        }
        refresh();
        status.setText(reader.say(
                done ? "family.ticked" : "family.taken-back",
                reader.text(planned.exercise().name())));
        rows().filter(row -> row.isTickOf(exercise)).findFirst().ifPresent(ExerciseRow::focusTick);
    }

    /** What happens when a tick is not this person's to change. */
    void refused(Reader reader, NotAvailable notAvailable) {
        throw notAvailable;
    }

    private static HomeWeek.Entry quickTick(String exercise, LocalDate date) {
        return new HomeWeek.Entry(
                UUID.randomUUID(),
                exercise,
                date,
                HomeWeek.Outcome.DONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    private Stream<ExerciseRow> rows() {
        return getChildren()
                .flatMap(Component::getChildren)
                .filter(ExerciseRow.class::isInstance)
                .map(ExerciseRow.class::cast);
    }
}
