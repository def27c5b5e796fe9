package org.hearthway.family;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.RouteParameters;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Objects;
import java.util.Optional;
import org.hearthway.figure.Figure;
import org.jspecify.annotations.Nullable;

/** What the family's pages share: they are made for one reader and made afresh each time something changed. */
abstract class FamilyPage extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private final transient Readers readers;
    private transient @Nullable Reader reader;
    private RouteParameters parameters = RouteParameters.empty();
    private QueryParameters query = QueryParameters.empty();

    FamilyPage(Readers readers) {
        this.readers = readers;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = event.getRouteParameters();
        query = event.getLocation().getQueryParameters();
        var goesOn = readers.goesOnAs(parameter("child"));
        if (goesOn.isPresent()) {
            event.forwardTo(event.getLocation()
                    .getPath()
                    .replace(parameter("child"), goesOn.get().toString()));
            return;
        }
        refresh();
    }

    /** Reads everything again and draws the page again. */
    final void refresh() {
        reader = read(readers, parameter("child"));
        removeAll();
        draw(reader);
    }

    /** For whom the page is made; who may not see the child gets no page. */
    Reader read(Readers from, String child) {
        return from.read(child);
    }

    /** The picture of a child at rest. */
    final Figure resting() {
        return readers.resting();
    }

    /** Draws the page into this empty element. */
    abstract void draw(Reader reader);

    /** The place in the bottom bar that this page belongs to. */
    abstract Place place();

    /** What the browser calls the page. */
    abstract String title(Reader reader);

    /** The line beside the way back, on a page that lies below a place. */
    Optional<String> below() {
        return Optional.empty();
    }

    @Override
    public final String getPageTitle() {
        return title(reader()) + " · Hearthway";
    }

    final Reader reader() {
        return Objects.requireNonNull(reader, "asked before the page was entered");
    }

    final String parameter(String name) {
        return parameters.get(name).orElse("");
    }

    /** A word of the address after the question mark. */
    final Optional<String> asked(String name) {
        return query.getSingleParameter(name);
    }

    /** The day that the address names, else today. */
    final LocalDate askedDay(Reader reader) {
        try {
            return asked("d").map(LocalDate::parse).orElseGet(reader::today);
        } catch (DateTimeParseException notADay) {
            return reader.today();
        }
    }
}
