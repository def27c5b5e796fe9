package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;
import org.hearthway.base.NotAvailable;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.program.HomeWeek;
import org.hearthway.sign.CallLines;

/** What a helper sees of a child: the exercises of a day with a tick for each, and the week. */
@Route("help/:child/today")
@RolesAllowed("HELPER")
class HelpView extends TickPage {

    private static final int DAYS = 7;

    private final transient HomeWeek week;
    private final transient CallLines lines;

    HelpView(Readers readers, HomeWeek week, CallLines lines) {
        super(readers, week);
        this.week = week;
        this.lines = lines;
    }

    @Override
    Reader read(Readers from, String child) {
        return from.helping(child);
    }

    @Override
    void drawDay(Reader reader) {
        var date = askedDay(reader);
        var present = date.equals(reader.today());
        var day = new DayStory(week.days(reader.viewer(), reader.id(), date, 1).get(0));
        if (day.mood() == DayStory.Mood.CALL_FIRST && present) {
            add(new StopPage(reader, day, lines.lines()));
            return;
        }
        var headline = day.planned().isEmpty() ? reader.say("family.help.nothing") : DayWords.headline(reader, day);
        add(Bits.hero(reader.large(reader.words().longDate(reader.language(), date)), headline));
        if (!present) {
            add(Tags.link("hw-button plain wide u-mb3", reader.address("today"), reader.say("family.today.back")));
        }
        if (present && !day.planned().isEmpty()) {
            add(Tags.div("hw-ways", TodayView.pictures(reader)));
            add(SessionLink.of(reader));
        }
        add(
                exercises(reader, day, true),
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
                .forEach(day -> list.add(WeekView.day(
                        reader, new DayStory(day), ChangedLines.NONE, Optional.empty(), Optional.empty())));
        var title = reader.say("family.help.week");
        return Tags.section("u-mt5", title, Tags.h2("hw-h2", title), list);
    }

    /** Somebody of the family ticked it, or this person helps no more: then the page itself is gone with the first line. */
    @Override
    void refused(Reader reader, NotAvailable notAvailable) {
        refresh();
        Told.couldNot(reader.say("family.help.not-yours"));
    }
}
