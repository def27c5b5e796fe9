package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.HomeWeek.Time;
import org.hearthway.program.Programs;

/** Seven days: what is done, some of it, could not be, still open, and what the newest program changed. */
@Route("my/:child/week")
@PermitAll
class WeekView extends FamilyPage {

    private static final int DAYS = 7;

    private final transient HomeWeek week;
    private final transient Programs programs;
    private final transient ExerciseLibrary library;
    private final transient TwoHouses homes;
    private final transient FamilyTimes times;
    private final transient MissedCard missed;
    private final transient LeftOut leftOut;

    WeekView(
            Readers readers,
            HomeWeek week,
            Programs programs,
            ExerciseLibrary library,
            TwoHouses homes,
            FamilyTimes times,
            MissedCard missed,
            LeftOut leftOut) {
        super(readers);
        this.week = week;
        this.programs = programs;
        this.library = library;
        this.homes = homes;
        this.times = times;
        this.missed = missed;
        this.leftOut = leftOut;
    }

    @Override
    Place place() {
        return Place.WEEK;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.place.week");
    }

    @Override
    void draw(Reader reader) {
        var monday = askedDay(reader).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        var days = week.days(reader.viewer(), reader.id(), monday, DAYS).stream()
                .map(DayStory::new)
                .toList();
        var newest = programs.latest(reader.viewer(), reader.id());
        var changes = ChangedLines.of(newest, programs.former(reader.viewer(), reader.id()));
        add(hero(reader, days, newest.isPresent()));
        changed(reader, changes, days);
        newest.flatMap(version -> TeamWord.strip(reader, version, days)).ifPresent(this::add);
        leftOut.strip(reader, monday.isBefore(reader.today()) ? reader.today() : monday)
                .filter(strip -> !monday.plusDays(DAYS - 1).isBefore(reader.today()))
                .ifPresent(this::add);
        var list = Bits.el("ol", "hw-days");
        var away = times.away(reader.viewer(), reader.id());
        var nights = homes.of(reader);
        days.forEach(day -> list.add(day(
                reader,
                day,
                changes,
                nights.on(reader, day.day().date(), false),
                gone(reader, away, day.day().date()))));
        add(list);
        if (days.stream().anyMatch(day -> day.day().date().equals(reader.today()))) {
            var moved = days.stream().flatMap(day -> day.day().moved().stream()).toList();
            missed.draw(reader, moved, Integer.MAX_VALUE, this::refresh).ifPresent(this::add);
        }
        add(others(reader, monday));
        add(Tags.link("hw-button plain wide u-mt3", reader.address("our-week"), reader.say("family.ours.link")));
        add(Tags.link("hw-button plain wide u-mt3", reader.address("rest"), reader.say("family.resting.way")));
    }

    /** Why a day has nothing: the child is away. */
    private static Optional<String> gone(Reader reader, List<FamilyTimes.Away> away, LocalDate day) {
        return away.stream()
                .filter(one -> !day.isBefore(one.first()) && !day.isAfter(one.last()))
                .findFirst()
                .map(one -> reader.say("family.week.away." + one.reason()));
    }

    private static Component hero(Reader reader, List<DayStory> days, boolean begun) {
        var planned = days.stream().mapToInt(day -> day.planned().size()).sum();
        var done = days.stream().mapToInt(DayStory::done).sum();
        var inPart = days.stream().mapToInt(DayStory::inPart).sum();
        var span = reader.say(
                "family.week.span",
                PathWords.date(reader, days.get(0).day().date()),
                PathWords.date(reader, days.get(DAYS - 1).day().date()));
        var title = planned == 0
                ? reader.say(begun ? "family.week.empty" : "family.today.none")
                : reader.say("family.week.done", done, planned);
        return Bits.hero(
                reader.large(span),
                title,
                WeekWay.of(reader, days),
                Tags.p(
                        "hw-s hw-quiet",
                        reader.say(
                                planned == 0
                                        ? "family.week.empty.then"
                                        : done == 0 ? "family.week.start" : "family.week.praise",
                                inPart)));
    }

    private void changed(Reader reader, ChangedLines changes, List<DayStory> days) {
        if (days.stream().noneMatch(day -> changes.isFresh(day.day().date()))) {
            return;
        }
        var lines = Tags.div("", Bits.el("b", "", reader.say("family.week.changed.from", changes.from())));
        days.stream()
                .filter(day -> changes.isFresh(day.day().date()))
                .flatMap(day -> day.planned().stream())
                .filter(planned ->
                        changes.before().containsKey(planned.exercise().id()))
                .map(planned -> difference(reader, planned, changes))
                .distinct()
                .forEach(words -> lines.add(Bits.el("span", "u-block", words)));
        changes.gone().stream()
                .flatMap(line -> library.find(line.exercise()).stream())
                .map(exercise -> reader.say("family.week.gone", reader.text(exercise.name())))
                .forEach(words -> lines.add(Bits.el("span", "u-block", words)));
        add(Bits.strip("u-mb3", Icon.INFO, lines));
    }

    private static String difference(Reader reader, Planned planned, ChangedLines changes) {
        var name = reader.text(planned.exercise().name());
        var now = DoseWords.amount(reader, planned.line());
        return changes.former(planned.exercise().id())
                .map(old -> DoseWords.amount(reader, old))
                .map(old -> old.equals(now)
                        ? reader.say("family.week.other-days", name)
                        : reader.say("family.week.now-was", name, now, old))
                .orElseGet(() -> reader.say("family.week.new", name, now));
    }

    static HtmlContainer day(
            Reader reader, DayStory day, ChangedLines changes, Optional<String> home, Optional<String> away) {
        var date = day.day().date();
        var present = date.equals(reader.today());
        var past = date.isBefore(reader.today());
        var row = Bits.el("li", "hw-day" + (present ? " lit" : past ? " past" : ""));
        row.add(Tags.div(
                "d",
                Tags.span("", reader.large(reader.words().shortWeekday(reader.language(), date))),
                Bits.el("b", "", reader.say("family.number", date.getDayOfMonth()))));
        if (day.planned().isEmpty()) {
            if (!present) {
                row.addClassName("rest");
            }
            var gone = Bits.el("ul", "");
            moved(reader, day).forEach(gone::add);
            row.add(
                    Tags.div(
                            "",
                            Tags.p("hw-quiet u-pt1", away.orElseGet(() -> reader.say("family.week.rest"))),
                            gone,
                            where(home)),
                    Tags.div("m"));
            return row;
        }
        var list = Bits.el("ul", "");
        items(reader, day, changes).forEach(list::add);
        moved(reader, day).forEach(list::add);
        row.add(Tags.div("", list, where(home)), Tags.div("m hw-num", minutes(reader, day, present, past)));
        if (!present) {
            row.add(open(reader, date));
        }
        return row;
    }

    /** What was moved away from the day. */
    private static List<HtmlContainer> moved(Reader reader, DayStory day) {
        return day.day().moved().stream()
                .filter(moved -> moved.from().equals(day.day().date()))
                .map(moved -> Bits.el(
                        "li",
                        "t",
                        Tags.span(
                                "",
                                reader.say(
                                        "family.week.moved",
                                        reader.text(moved.exercise().name()),
                                        MissedCard.when(reader, moved.to(), moved.start())))))
                .toList();
    }

    /** In which home the child sleeps that night, when two are known. */
    private static Component where(Optional<String> home) {
        var where = Tags.p("hw-at", home.orElse(""));
        where.setVisible(home.isPresent());
        return where;
    }

    private static Component open(Reader reader, LocalDate date) {
        var link = Tags.link("hw-cover", reader.address("today") + "?d=" + date, "");
        link.getElement()
                .setAttribute(
                        "aria-label",
                        reader.say("family.week.open", reader.words().longDate(reader.language(), date)));
        return link;
    }

    private static List<HtmlContainer> items(Reader reader, DayStory day, ChangedLines changes) {
        var date = day.day().date();
        var settled = day.planned().stream()
                .filter(p -> DayStory.outcome(p).filter(Outcome.DONE::equals).isPresent())
                .toList();
        var whole = settled.size() == day.planned().size() && date.isBefore(reader.today());
        if (whole && settled.size() > 1) {
            return List.of(
                    Bits.el("li", "", Bits.pip("done"), Tags.span("", reader.say("family.week.all", settled.size()))));
        }
        var next = date.equals(reader.today()) ? day.next() : Optional.<Planned>empty();
        var items = new ArrayList<HtmlContainer>();
        for (var time : day.day().times()) {
            items.add(head(reader, day, time));
            DayTimes.in(day, time).forEach(planned -> items.add(item(reader, planned, day, next, changes)));
            DayTimes.again(day, time).forEach(planned -> items.add(Bits.el("li", "a", DayTimes.once(reader, planned))));
        }
        DayTimes.untimed(day).forEach(planned -> items.add(item(reader, planned, day, next, changes)));
        return items;
    }

    /** The line over what is done in a time. */
    private static HtmlContainer head(Reader reader, DayStory day, Time time) {
        return Bits.el(
                "li",
                "t",
                Tags.span(
                        "",
                        reader.say(
                                "family.week.time",
                                reader.time(day.day().date().atTime(time.start())),
                                DayTimes.minutes(day, time))));
    }

    private static HtmlContainer item(
            Reader reader, Planned planned, DayStory day, Optional<Planned> following, ChangedLines changes) {
        var date = day.day().date();
        var past = date.isBefore(reader.today());
        var next = following.filter(planned::equals).isPresent();
        var changed = changes.marks(planned.exercise().id(), date);
        var name = reader.text(planned.exercise().name());
        var words = Tags.span("", next ? Bits.el("b", "hw-b", name) : Tags.span("", name));
        if (changed) {
            words.add(Tags.span("hw-changed", reader.say("family.week.changed")));
        }
        planned.logged()
                .map(logged -> DayWords.said(reader, logged))
                .filter(says ->
                        DayStory.outcome(planned).filter(Outcome.DONE::equals).isEmpty())
                .or(() -> next ? Optional.of(reader.say("family.week.next", planned.minutes())) : Optional.empty())
                .ifPresent(says -> words.add(Bits.el("small", "", says)));
        var state = DayStory.outcome(planned)
                .map(outcome -> switch (outcome) {
                    case DONE -> "done";
                    case SOME -> "some";
                    case COULD_NOT -> "miss";
                })
                .orElse(next ? "now" : "");
        var item = Bits.el("li", "", Bits.pip(state));
        var spoken = state.isEmpty() ? (past ? "blank" : "open") : state;
        item.add(Tags.span("hw-vh", reader.say("family.week.state." + spoken)), words);
        return item;
    }

    private static Component[] minutes(Reader reader, DayStory day, boolean present, boolean past) {
        if (past) {
            return new Component[] {
                Tags.span(
                        "",
                        reader.say("family.week.of", day.done(), day.planned().size()))
            };
        }
        if (present && day.open() > 0) {
            return new Component[] {
                Tags.span("", reader.say("family.minutes.short", day.minutesLeft())),
                Bits.el("small", "", reader.say("family.today.minutes-left"))
            };
        }
        return new Component[] {Tags.span("", reader.say("family.minutes.short", day.minutes()))};
    }

    private static Component others(Reader reader, LocalDate monday) {
        var pair = Tags.div("hw-pair u-mt5");
        pair.add(Tags.link(
                "hw-button plain",
                reader.address("week") + "?d=" + monday.minusDays(DAYS),
                Icon.BACK.draw("sm"),
                Tags.span("", reader.say("family.week.before"))));
        pair.add(Tags.link(
                "hw-button plain",
                reader.address("week") + "?d=" + monday.plusDays(DAYS),
                Tags.span("", reader.say("family.week.after")),
                Icon.NEXT.draw("sm")));
        return pair;
    }
}
