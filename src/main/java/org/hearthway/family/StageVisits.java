package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.VisitWindow;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;

/** The visits of a stage: those that are booked with their hour, those without a day with their window, what to bring. */
@org.springframework.stereotype.Component
class StageVisits {

    private static final int PAST_READ = 60;

    private final Visits visits;

    StageVisits(Visits visits) {
        this.visits = visits;
    }

    /** The list; empty when no visit of the stage lies ahead. */
    Optional<Component> list(Reader reader, Planned stage, PathNews news) {
        if (stage.visits().isEmpty()) {
            return Optional.empty();
        }
        var coming = visits.upcoming(reader.viewer(), reader.id());
        var past = visits.past(reader.viewer(), reader.id(), PAST_READ);
        var rows = new ArrayList<HtmlContainer>();
        for (var window : stage.visits()) {
            var booked = of(coming, window);
            if (booked.isPresent()) {
                rows.add(booked(reader, booked.get(), news));
            } else if (of(past, window).isEmpty() && !window.until().isBefore(reader.today())) {
                kind(window).ifPresent(kind -> rows.add(open(reader, window, kind, news)));
            }
        }
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        var list = Bits.el("ul", "hw-tasks dated");
        list.getElement().setAttribute("role", "list");
        rows.forEach(list::add);
        return Optional.of(Tags.div("hw-need", Bits.el("h4", "", reader.say("family.path.visits")), list));
    }

    /** The booked day of a stage that lasts a day, where it lies among the days that the stage can have. */
    Optional<LocalDate> day(Reader reader, Planned stage) {
        if (!stage.start().equals(stage.end())) {
            return Optional.empty();
        }
        var coming = visits.upcoming(reader.viewer(), reader.id());
        return stage.visits().stream()
                .filter(window -> window.from().equals(stage.start()))
                .flatMap(window -> of(coming, window).stream())
                .map(visit -> visit.start().toLocalDate())
                .filter(day -> !day.isBefore(stage.earliest())
                        && stage.latest().filter(day::isAfter).isEmpty())
                .findFirst();
    }

    private static Optional<Visit> of(List<Visit> some, VisitWindow window) {
        return some.stream()
                .filter(visit -> visit.purpose().filter(window.purpose()::equals).isPresent())
                .findFirst();
    }

    private Optional<VisitKind> kind(VisitWindow window) {
        return visits.kinds().stream()
                .filter(kind -> kind.id().equals(window.kind()))
                .findFirst();
    }

    private HtmlContainer booked(Reader reader, Visit visit, PathNews news) {
        var name = reader.text(visit.kind().name());
        var said = visit.answer() == Visit.Answer.CONFIRMED;
        var at = Bits.el("small", "", VisitCard.at(reader, visit.start()) + " ");
        was(reader, visit, news)
                .map(old -> PathNews.struck(reader, VisitCard.at(reader, old)))
                .ifPresent(at::add);
        var words = Tags.div("", Bits.el("b", "says", name), at);
        words.add(
                said
                        ? Bits.el("small", "", reader.say("family.dates.said-yes"))
                        : Tags.link("", reader.address("dates"), reader.say("family.path.visit.answer")));
        bring(reader, visit.kind()).ifPresent(words::add);
        return Bits.el("li", "", (said ? Icon.CHECK : Icon.DATES).draw("sm"), words);
    }

    /** When a booked visit was to start, if it moved and that is new. */
    Optional<LocalDateTime> was(Reader reader, Visit visit, PathNews news) {
        return visits.startAsOf(reader.viewer(), visit.id(), news.since()).filter(old -> !old.equals(visit.start()));
    }

    private static HtmlContainer open(Reader reader, VisitWindow window, VisitKind kind, PathNews news) {
        var words = Tags.div("", Bits.el("b", "says", reader.text(kind.name())));
        var when = Bits.el("small", "", OpenVisit.when(reader, window) + " ");
        OpenVisit.was(reader, window, news).ifPresent(when::add);
        words.add(when, Bits.el("small", "", reader.say("family.path.visit.open")));
        bring(reader, kind).ifPresent(words::add);
        return Bits.el("li", "", Icon.DATES.draw("sm"), words);
    }

    private static Optional<Component> bring(Reader reader, VisitKind kind) {
        return kind.bring().isEmpty()
                ? Optional.empty()
                : Optional.of(Bits.el(
                        "small",
                        "",
                        reader.say(
                                "family.dates.bring",
                                kind.bring().stream()
                                        .map(reader::text)
                                        .collect(Collectors.joining(" · ")))));
    }
}
