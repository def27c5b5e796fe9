package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.sign.CallLines;

/** What a helper sees of a child: the exercises of a day with a tick for each, and the week. */
@Route("help/:child/today")
@RolesAllowed("HELPER")
class HelpView extends FamilyPage {

    private static final int DAYS = 7;

    private final transient HomeWeek week;
    private final transient CallLines lines;
    private final Span status = new Span();

    HelpView(Readers readers, HomeWeek week, CallLines lines) {
        super(readers);
        this.week = week;
        this.lines = lines;
        status.addClassName("hw-vh");
        status.getElement().setAttribute("role", "status");
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
        return reader.say("family.place.today");
    }

    @Override
    void draw(Reader reader) {
        var date = askedDay(reader);
        var present = date.equals(reader.today());
        var day = new DayStory(week.days(reader.viewer(), reader.id(), date, 1).get(0));
        add(status);
        if (day.mood() == DayStory.Mood.CALL_FIRST && present) {
            add(new StopPage(reader, day, lines.lines()));
            return;
        }
        var headline = day.planned().isEmpty() ? reader.say("family.help.nothing") : DayWords.headline(reader, day);
        add(Bits.hero(reader.large(reader.words().longDate(reader.language(), date)), headline));
        if (!present) {
            add(Tags.link("hw-button plain wide u-mb3", reader.address("today"), reader.say("family.today.back")));
        }
        var list = Tags.section("hw-stack u-gap2", reader.say("family.today.exercises"));
        var ticked = date.isAfter(reader.today())
                ? Optional.<ExerciseRow.Ticked>empty()
                : Optional.<ExerciseRow.Ticked>of((planned, done) -> tick(reader, planned, date, done));
        var next = day.next().filter(planned -> present);
        day.planned()
                .forEach(planned -> list.add(new ExerciseRow(
                        reader,
                        planned,
                        next.filter(planned::equals).isPresent(),
                        address(reader, planned, date),
                        ticked)));
        add(
                list,
                Bits.strip(
                        "quiet u-mt5",
                        Icon.INFO,
                        reader.say("family.help.name", reader.viewer().name())));
        add(days(reader, date));
    }

    private Component days(Reader reader, LocalDate date) {
        var monday = date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        var list = Bits.el("ol", "hw-days");
        week.days(reader.viewer(), reader.id(), monday, DAYS)
                .forEach(day -> list.add(WeekView.day(reader, new DayStory(day), ChangedLines.NONE, Optional.empty())));
        var title = reader.say("family.help.week");
        return Tags.section("u-mt5", title, Tags.h2("hw-h2", title), list);
    }

    private static String address(Reader reader, Planned planned, LocalDate date) {
        var address = reader.address("exercise/" + planned.exercise().id());
        return date.equals(reader.today()) ? address : address + "?d=" + date;
    }

    private void tick(Reader reader, Planned planned, LocalDate date, boolean done) {
        var exercise = planned.exercise().id();
        try {
            if (done) {
                week.log(reader.viewer(), reader.id(), TodayView.quickTick(exercise, date, UUID.randomUUID()));
            } else {
                week.takeBack(reader.viewer(), reader.id(), exercise, date);
            }
        } catch (Invalid invalid) {
            Told.couldNot(reader.say(invalid.problems().get(0)));
            return;
        } catch (NotAvailable saidByTheFamily) {
            // or this person helps no more: then the page itself is gone with the next line
            refresh();
            Told.couldNot(reader.say("family.help.not-yours"));
            return;
        }
        refresh();
        status.setText(reader.say(
                done ? "family.ticked" : "family.taken-back",
                reader.text(planned.exercise().name())));
    }
}
