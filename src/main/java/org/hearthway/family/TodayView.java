package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.parts.DayWay;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.sign.CallLines;

/** Today: what to do now, how far the day has come, what is new, the next date and where we are. */
@Route("my/:child/today")
@PermitAll
class TodayView extends TickPage {

    /** How many tasks stand on the day; all of them stand under Dates. */
    private static final int TODOS = 3;

    /** How many missed sessions are offered another time; all of them are in the week. */
    private static final int MOVES = 2;

    private final transient HomeWeek week;
    private final transient Programs programs;
    private final transient Gate gate;
    private final transient CallLines lines;
    private final transient NewsStrip.Source news;
    private final transient Facts facts;
    private final transient Pause pauses;
    private final transient TwoHouses homes;
    private final transient Todos todos;
    private final transient MissedCard missed;
    private final transient FamilyTimes times;
    private final transient LateNews late;
    private final transient RestingProgram resting;

    TodayView(
            Readers readers,
            HomeWeek week,
            Programs programs,
            Gate gate,
            CallLines lines,
            NewsStrip.Source news,
            Facts facts,
            Pause pauses,
            TwoHouses homes,
            Todos todos,
            MissedCard missed,
            FamilyTimes times,
            LateNews late,
            RestingProgram resting) {
        super(readers, week);
        this.week = week;
        this.programs = programs;
        this.gate = gate;
        this.lines = lines;
        this.news = news;
        this.facts = facts;
        this.pauses = pauses;
        this.homes = homes;
        this.todos = todos;
        this.missed = missed;
        this.times = times;
        this.late = late;
        this.resting = resting;
    }

    @Override
    void drawDay(Reader reader) {
        var date = askedDay(reader);
        var days = week.days(reader.viewer(), reader.id(), date, 2);
        var day = new DayStory(days.get(0));
        var present = date.equals(reader.today());
        if (pauses.asksNothing(reader)) {
            // the sentence over the page says why; praise, rest and what is new would be out of place
            add(Tags.div(
                    "hw-hero",
                    Tags.p("when", reader.large(reader.words().longDate(reader.language(), date))),
                    Tags.h1(reader.name())));
            return;
        }
        if (day.mood() == DayStory.Mood.CALL_FIRST && present) {
            add(new StopPage(reader, day, lines.lines()));
            return;
        }
        var begun = !day.planned().isEmpty()
                || programs.latest(reader.viewer(), reader.id()).isPresent();
        add(hero(reader, day, present, begun));
        add(
                day.planned().isEmpty() || !present
                        ? new Aloud(reader)
                        : Tags.div("hw-ways", new Aloud(reader), pictures(reader)));
        homes.of(reader).on(reader, date, present).ifPresent(where -> add(Tags.p("hw-at today", where)));
        if (present) {
            news.strip(reader).ifPresent(this::add);
            late.strips(reader).forEach(this::add);
        } else {
            add(Tags.link("hw-button plain wide u-mb3", reader.address("today"), reader.say("family.today.back")));
        }
        var whole = resting.whole(reader, date);
        whole.ifPresent(this::add);
        resting.shut(reader, date).ifPresent(this::add);
        if (day.mood() == DayStory.Mood.REST) {
            add(new RestDay(reader, resting(), new DayStory(days.get(1)), why(reader, begun, whole.isPresent())));
        } else {
            if (present && day.open() > 0 && gate.allows(reader.viewer(), Action.LOG_SESSION, reader.id())) {
                add(SessionLink.of(reader));
            }
            add(listed(reader, day));
        }
        if (present) {
            missed.draw(reader, days.get(0).moved(), MOVES, this::refresh).ifPresent(this::add);
        }
        if (present) {
            todos.list(reader, TODOS, this::refresh).ifPresent(this::add);
            add(facts.pair(reader));
        }
    }

    private static String why(Reader reader, boolean begun, boolean paused) {
        if (!begun) {
            return reader.say("family.today.none.then");
        }
        return reader.say(paused ? "family.resting.then" : "family.rest.why");
    }

    /** The way through the day for whoever reads little. */
    static Component pictures(Reader reader) {
        var way = Tags.link("hw-picture", reader.address("pictures"), Icon.PICTURES.draw());
        way.getElement().setAttribute("aria-label", reader.say("family.pictures.title"));
        return way;
    }

    private static Component hero(Reader reader, DayStory day, boolean present, boolean begun) {
        var longDate = reader.words().longDate(reader.language(), day.day().date());
        var over = reader.large(longDate) + (present ? " · " + DayWords.greeting(reader) : "");
        var hero = Tags.div(
                "hw-hero",
                Tags.p("when", over),
                Tags.h1(begun ? DayWords.headline(reader, day) : reader.say("family.today.none")));
        switch (day.mood()) {
            case FRESH, UNDERWAY ->
                hero.add(DayWay.of(
                        day.stones(present),
                        stonesLabel(reader, day, present),
                        reader.say("family.minutes.short", day.minutesLeft()),
                        reader.say("family.today.minutes-left")));
            case OVER, SPENT ->
                hero.add(
                        DayWay.of(day.stones(present), DayWords.headline(reader, day), "", ""),
                        Tags.p(
                                "u-lead",
                                reader.say(
                                        day.mood() == DayStory.Mood.OVER
                                                ? "family.today.praise"
                                                : "family.today.comfort")));
            case REST, CALL_FIRST -> {}
        }
        return hero;
    }

    private static String stonesLabel(Reader reader, DayStory day, boolean present) {
        var label =
                reader.sentence("family.today.stones", day.done(), day.planned().size(), day.minutesLeft());
        return day.next()
                .filter(next -> present)
                .map(next -> label + " "
                        + reader.say(
                                "family.today.stones.next",
                                reader.text(next.exercise().name())))
                .orElse(label);
    }

    private Component listed(Reader reader, DayStory day) {
        var mayTick = gate.allows(reader.viewer(), Action.LOG_SESSION, reader.id());
        var busy = day.day().times().isEmpty()
                ? List.<FamilyTimes.Busy>of()
                : times.latest(reader.viewer(), reader.id())
                        .map(version -> version.times().busy())
                        .orElse(List.of());
        var list = exercises(reader, day, mayTick, busy);
        if (!mayTick) {
            list.add(Bits.strip("quiet", Icon.LOCK, reader.say("family.view-only")));
        } else if (day.day().date().isAfter(reader.today())) {
            list.add(Bits.strip("quiet", Icon.INFO, reader.say("family.today.to-come")));
        }
        return list;
    }
}
