package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.VisitWindow;
import org.hearthway.visit.Visit;
import org.hearthway.visit.VisitKind;
import org.hearthway.visit.Visits;

/**
 * The visits of a child's stages: those that are booked with their hour, those without a day with their window, and what
 * to bring.
 */
final class StageVisits {

    private static final int PAST_READ = 60;

    /** Where the visits come from. */
    @org.springframework.stereotype.Component
    static class Source {

        private final Visits visits;

        Source(Visits visits) {
            this.visits = visits;
        }

        /** The visits as they are, for one drawing of a page. */
        StageVisits of(Reader reader, PathNews news) {
            return new StageVisits(visits, reader, news);
        }
    }

    private final Visits visits;
    private final Reader reader;
    private final PathNews news;
    private final List<Visit> coming;
    private final List<Visit> past;

    private StageVisits(Visits visits, Reader reader, PathNews news) {
        this.visits = visits;
        this.reader = reader;
        this.news = news;
        coming = visits.upcoming(reader.viewer(), reader.id());
        past = visits.past(reader.viewer(), reader.id(), PAST_READ);
    }

    /** The list; empty when no visit of the stage lies ahead. */
    Optional<Component> list(Planned stage) {
        var rows = new TreeMap<LocalDateTime, List<HtmlContainer>>();
        var asked = new HashSet<String>();
        for (var window : stage.visits()) {
            var booked = of(coming, window);
            if (booked.isPresent()) {
                asked.add(series(window));
                add(rows, booked.get().start(), booked(booked.get(), fits(stage, window, booked.get())));
            } else if (isOpen(window) && asked.add(series(window))) {
                kind(window).ifPresent(kind -> add(rows, window.from().atStartOfDay(), open(window, kind)));
            }
        }
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        var list = Bits.el("ul", "hw-tasks dated");
        list.getElement().setAttribute("role", "list");
        rows.values().forEach(some -> some.forEach(list::add));
        return Optional.of(Tags.div("hw-need", Bits.el("h4", "", reader.say("family.path.visits")), list));
    }

    private static void add(Map<LocalDateTime, List<HtmlContainer>> rows, LocalDateTime at, HtmlContainer row) {
        rows.computeIfAbsent(at, first -> new ArrayList<>()).add(row);
    }

    private boolean isOpen(VisitWindow window) {
        return of(past, window).isEmpty() && !window.until().isBefore(reader.today());
    }

    /** A visit that comes again is told once: the booked ones, or the next that has no day. */
    private static String series(VisitWindow window) {
        return String.join("/", List.of(window.purpose().split("/")).subList(0, 3));
    }

    /** The booked day of a stage that lasts a day, while it fits the plan. */
    Optional<LocalDate> day(Planned stage) {
        if (!stage.start().equals(stage.end())) {
            return Optional.empty();
        }
        return stage.visits().stream()
                .filter(window -> window.from().equals(stage.start()))
                .flatMap(window -> of(coming, window).filter(visit -> fits(stage, window, visit)).stream())
                .map(visit -> visit.start().toLocalDate())
                .findFirst();
    }

    /** Whether the visit lies where the plan can have it: while no day stands, anywhere the stage can still be. */
    private static boolean fits(Planned stage, VisitWindow window, Visit visit) {
        var day = visit.start().toLocalDate();
        var before = ChronoUnit.DAYS.between(stage.start(), window.from());
        var behind = ChronoUnit.DAYS.between(stage.start(), window.until());
        return !day.isBefore(stage.possible().first().plusDays(before))
                && !day.minusDays(behind).isAfter(stage.possible().last());
    }

    private static Optional<Visit> of(List<Visit> some, VisitWindow window) {
        return some.stream()
                .filter(visit ->
                        visit.purpose().filter(window.purpose()::equals).isPresent())
                .findFirst();
    }

    private Optional<VisitKind> kind(VisitWindow window) {
        return visits.kinds().stream()
                .filter(kind -> kind.id().equals(window.kind()))
                .findFirst();
    }

    private HtmlContainer booked(Visit visit, boolean fits) {
        var said = visit.answer() == Visit.Answer.CONFIRMED;
        var at = Bits.el("small", "", VisitCard.at(reader, visit.start()) + " ");
        was(visit)
                .map(old -> PathNews.struck(reader, VisitCard.at(reader, old)))
                .ifPresent(at::add);
        var words = Tags.div("", Bits.el("b", "says", reader.text(visit.kind().name())), at);
        if (!fits) {
            words.add(Bits.el("small", "hw-b", reader.say("family.path.visit.before")));
        } else if (said) {
            words.add(Bits.el("small", "", reader.say("family.dates.said-yes")));
        } else {
            words.add(Tags.link("", reader.address("dates"), reader.say("family.path.visit.answer")));
        }
        bring(visit.kind()).ifPresent(words::add);
        return Bits.el("li", "", (said && fits ? Icon.CHECK : Icon.DATES).draw("sm"), words);
    }

    /** When a booked visit was to start, if it moved and that is new. */
    Optional<LocalDateTime> was(Visit visit) {
        return visits.startAsOf(reader.viewer(), visit.id(), news.since()).filter(old -> !old.equals(visit.start()));
    }

    private HtmlContainer open(VisitWindow window, VisitKind kind) {
        var words = Tags.div("", Bits.el("b", "says", reader.text(kind.name())));
        if (window.from().isAfter(reader.today().plusDays(DatesView.DAYS_AHEAD))) {
            words.add(Bits.el("small", "", PathWords.about(reader, window.from())));
        } else {
            var when = Bits.el("small", "", OpenVisit.when(reader, window) + " ");
            OpenVisit.was(reader, window, news).ifPresent(when::add);
            words.add(when, Bits.el("small", "", reader.say("family.path.visit.open")));
            bring(kind).ifPresent(words::add);
        }
        return Bits.el("li", "", Icon.DATES.draw("sm"), words);
    }

    private Optional<Component> bring(VisitKind kind) {
        return kind.bring().isEmpty()
                ? Optional.empty()
                : Optional.of(Bits.el(
                        "small",
                        "",
                        reader.say(
                                "family.dates.bring",
                                kind.bring().stream().map(reader::text).collect(Collectors.joining(" · ")))));
    }
}
