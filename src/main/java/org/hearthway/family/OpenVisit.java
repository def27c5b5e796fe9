package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Article;
import java.time.LocalDate;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan.VisitWindow;

/** A visit that the path asks for and that has no day yet. */
class OpenVisit extends Article {

    OpenVisit(Reader reader, VisitWindow window, String name) {
        addClassName("hw-visit");
        var from = window.from().isBefore(reader.today()) ? reader.today() : window.from();
        add(
                leaf(reader, from, window.until()),
                Tags.div("", Bits.el("h2", "name u-plain", name), when(reader, from, window)));
    }

    private static Component when(Reader reader, LocalDate from, VisitWindow window) {
        return Tags.p(
                "meta",
                from.equals(window.until())
                        ? reader.say("family.dates.on", PathWords.date(reader, from))
                        : reader.say(
                                "family.dates.between",
                                PathWords.date(reader, from),
                                PathWords.date(reader, window.until())));
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
