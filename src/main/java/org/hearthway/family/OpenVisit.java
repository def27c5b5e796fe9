package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Article;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan.VisitWindow;

/** A visit that the path asks for and that has no day yet. */
class OpenVisit extends Article {

    OpenVisit(Reader reader, VisitWindow window, String name, PathNews news) {
        addClassName("hw-visit");
        var from = window.from().isBefore(reader.today()) ? reader.today() : window.from();
        var when = Tags.p("meta", when(reader, window) + " ");
        was(reader, window, news).ifPresent(when::add);
        add(leaf(reader, from, window.until()), Tags.div("", Bits.el("h2", "name u-plain", name), when));
    }

    /** The days in which it was to be, struck, when they are others now. */
    static Optional<Component> was(Reader reader, VisitWindow window, PathNews news) {
        return news.was(window)
                .map(old -> when(reader, old))
                .filter(old -> !old.equals(when(reader, window)))
                .map(old -> PathNews.struck(reader, old));
    }

    /** "on April 23" or "between April 23 and May 7"; days that have passed are left out. */
    static String when(Reader reader, VisitWindow window) {
        var from = window.from().isBefore(reader.today()) ? reader.today() : window.from();
        return from.isBefore(window.until())
                ? reader.say(
                        "family.dates.between",
                        PathWords.from(reader, from, window.until()),
                        PathWords.date(reader, window.until()))
                : reader.say("family.dates.on", PathWords.date(reader, window.until()));
    }

    /** The month over the days, "4–22"; a window that ends in another month shows where it begins. */
    private static Component leaf(Reader reader, LocalDate from, LocalDate until) {
        var month = reader.words().shortMonth(reader.language(), from);
        var first = reader.say("family.number", from.getDayOfMonth());
        var sameMonth = from.getMonth() == until.getMonth() && from.getYear() == until.getYear();
        if (!sameMonth) {
            return leaf(reader, reader.say("family.dates.from"), reader.words().shortMonthDay(reader.language(), from));
        }
        return leaf(
                reader,
                month,
                from.equals(until)
                        ? first
                        : reader.say("family.dates.span", first, reader.say("family.number", until.getDayOfMonth())));
    }

    private static Component leaf(Reader reader, String over, String large) {
        return Tags.div(
                "hw-leaf",
                Tags.span("", over),
                Bits.el("b", "long", large),
                Tags.span("", reader.say("family.dates.no-day")));
    }
}
