package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hearthway.parts.DayWay;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.sign.CallLines;

/**
 * Today without a word that must be read: one exercise at a time as two large figures, its dose as marks to count, a
 * tick, the way on, and the telephone. Every control is named in the person's language for those who hear the page.
 */
abstract class PicturePage extends TickPage {

    private static final String NAME = "picture-name";
    private static final String TICK = "picture-tick";
    private static final String FOCUS = "document.getElementById($0)?.focus()";

    private final transient HomeWeek week;
    private final transient CallLines lines;
    private String asked = "";
    private int shown = -1;

    PicturePage(Readers readers, HomeWeek week, CallLines lines) {
        super(readers, week);
        this.week = week;
        this.lines = lines;
    }

    /** Whether this person ticks. */
    abstract boolean mayTick(Reader reader);

    /** Whether nothing is asked of the family now. */
    abstract boolean asksNothing(Reader reader);

    /** Where the telephone leads. */
    abstract Anchor call(Reader reader);

    @Override
    String title(Reader reader) {
        return reader.say("family.pictures.title");
    }

    @Override
    Optional<String> below() {
        return Optional.of(reader().say("family.pictures.title"));
    }

    @Override
    void drawDay(Reader reader) {
        var day = new DayStory(
                week.days(reader.viewer(), reader.id(), reader.today(), 1).get(0));
        addClassName("hw-pics");
        if (asksNothing(reader)) {
            add(
                    heading(reader),
                    RestDay.hearth(reader.say("family.pictures.calm")),
                    turns(reader, Optional.empty(), Optional.empty()));
        } else if (day.mood() == DayStory.Mood.CALL_FIRST) {
            add(new StopPage(reader, day, lines.lines()));
        } else if (day.planned().isEmpty()) {
            add(heading(reader), RestDay.figure(reader, resting()), turns(reader, Optional.empty(), Optional.empty()));
        } else {
            draw(reader, day, here(day));
        }
    }

    /** For those who hear the page; the picture says it to the others. */
    private static Component heading(Reader reader) {
        return Bits.el("h1", "hw-vh", reader.name());
    }

    /** The exercise that the address names, from 1; else the first of which nothing was said. A tick stays on its page. */
    private int here(DayStory day) {
        var now = asked("n").orElse("");
        if (shown < 0 || !asked.equals(now)) {
            asked = now;
            shown = IntStream.range(0, day.planned().size())
                    .filter(i -> now.equals(String.valueOf(i + 1)))
                    .findFirst()
                    .orElseGet(() -> day.next().map(day.planned()::indexOf).orElse(0));
        }
        return Math.min(shown, day.planned().size() - 1);
    }

    private void draw(Reader reader, DayStory day, int at) {
        var planned = day.planned().get(at);
        var count = day.planned().size();
        var stones = day.stones(false);
        var states = IntStream.range(0, count)
                .mapToObj(i -> i == at ? DayWay.State.NOW : stones.get(i))
                .toList();
        var name = Tags.div(
                "name", Bits.el("h1", "u-l", reader.text(planned.exercise().name())));
        name.setId(NAME);
        add(
                DayWay.of(states, reader.say("family.exercise.which", reader.name(), at + 1, count), "", ""),
                Tags.div("show", figures(reader, planned), new Aloud(reader, "#" + NAME, "family.pictures.say")),
                name,
                DosePicture.of(reader, planned));
        var before = at > 0 ? Optional.of(at) : Optional.<Integer>empty();
        var next = at + 1 < count ? Optional.of(at + 2) : Optional.<Integer>empty();
        var turns = turns(reader, before, next);
        turns.addComponentAtIndex(1, state(reader, planned));
        add(turns);
    }

    /** Both poses with an arrow from the first to the second; pressing them opens how it is done. */
    private static Component figures(Reader reader, Planned planned) {
        var name = reader.text(planned.exercise().name());
        var left = Side.isLeft(planned.line());
        var figures = Tags.link(
                "figs",
                reader.address("exercise/" + planned.exercise().id()),
                Tags.div("hw-well", Pictures.start(reader, planned.exercise().figure(), left)),
                Icon.NEXT.draw(),
                Tags.div("hw-well", Pictures.end(reader, planned.exercise(), left)));
        figures.getElement().setAttribute("aria-label", reader.say("family.pictures.how", name));
        return figures;
    }

    /** The tick where this person ticks and it makes sense; else the stone that says how it went. */
    private Component state(Reader reader, Planned planned) {
        var outcome = DayStory.outcome(planned);
        if (!mayTick(reader) || outcome.filter(said -> said != Outcome.DONE).isPresent()) {
            return outcome.<Component>map(said -> Bits.el("span", "hw-went large", Bits.pip(pip(said))))
                    .orElseGet(() -> new Span());
        }
        var done = outcome.isPresent();
        var button = new NativeButton();
        button.addClassNames("hw-tick", "large");
        button.setId(TICK);
        button.add(Icon.CHECK.draw());
        button.getElement()
                .setAttribute("type", "button")
                .setAttribute("role", "checkbox")
                .setAttribute("aria-checked", String.valueOf(done))
                .setAttribute("aria-label", reader.text(planned.exercise().name()));
        button.addClickListener(pressed -> {
            tick(reader, planned, reader.today(), !done);
            UI.getCurrent().getPage().executeJs(FOCUS, TICK);
        });
        return button;
    }

    private static String pip(Outcome outcome) {
        return switch (outcome) {
            case DONE -> "done";
            case SOME -> "some";
            case COULD_NOT -> "miss";
        };
    }

    /** The way back and on, and the telephone; past the last and without exercises the way leads back to Today. */
    private Div turns(Reader reader, Optional<Integer> before, Optional<Integer> next) {
        var phone = call(reader);
        phone.addClassNames("hw-picture", "call");
        phone.getElement().setAttribute("aria-label", reader.say("family.place.call"));
        var turns = Tags.div(
                "turns",
                before.map(n -> turn(reader, Icon.BACK, "pictures?n=" + n, "family.pictures.before"))
                        .orElseGet(() -> home(reader)));
        next.map(n -> turn(reader, Icon.NEXT, "pictures?n=" + n, "family.pictures.next"))
                .or(() -> before.map(n -> home(reader)))
                .ifPresent(turns::add);
        turns.add(phone);
        return turns;
    }

    private static Anchor home(Reader reader) {
        return turn(reader, Icon.TODAY, "today", "family.back.today");
    }

    private static Anchor turn(Reader reader, Icon icon, String place, String name) {
        var link = Tags.link("hw-picture", reader.address(place), icon.draw());
        link.getElement().setAttribute("aria-label", reader.say(name));
        return link;
    }
}
