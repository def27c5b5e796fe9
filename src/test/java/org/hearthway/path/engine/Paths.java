package org.hearthway.path.engine;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hearthway.base.Bilingual;
import org.hearthway.path.engine.Course.Given;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Duties;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Length;
import org.hearthway.path.engine.Template.Precaution;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.Timing;
import org.hearthway.path.engine.Template.VisitNeed;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Span;

/** Small paths for tests. */
final class Paths {

    static final Predicate<LocalDate> EVERY_DAY = day -> true;
    static final Predicate<LocalDate> WEEKDAYS = day -> day.getDayOfWeek().getValue() <= DayOfWeek.FRIDAY.getValue();

    private Paths() {}

    static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    static After begins() {
        return new After(Optional.empty(), Edge.START, Period.ZERO, Optional.of(Period.ZERO), Optional.of(Period.ZERO));
    }

    static After after(String stage, String usual) {
        return after(stage, Edge.START, usual, usual, usual);
    }

    static After after(String stage, Edge edge, String earliest, String usual, String latest) {
        return new After(
                Optional.of(stage),
                edge,
                Period.parse(earliest),
                Optional.of(Period.parse(usual)),
                Optional.of(Period.parse(latest)));
    }

    static Stage stage(String id, After begins) {
        return stage(id, begins, Period.ZERO, Optional.empty(), false, false);
    }

    static Stage stage(
            String id, After begins, Period lasts, Optional<String> until, boolean onOpenDays, boolean signal) {
        return stage(
                id,
                new Timing(
                        List.of(begins),
                        Length.about(lasts),
                        until,
                        onOpenDays,
                        Optional.empty(),
                        signal,
                        false,
                        Optional.empty(),
                        List.of()));
    }

    static Stage stage(String id, Timing timing) {
        return new Stage(
                id,
                Bilingual.same(id),
                Bilingual.same("says"),
                Bilingual.same("why"),
                "test",
                Template.Responsible.NURSE,
                timing,
                new Duties(List.of(), List.of(), List.of(), List.of()),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    static Stage with(Stage stage, List<VisitNeed> visits, List<Precaution> precautions) {
        return new Stage(
                stage.id(),
                stage.name(),
                stage.says(),
                stage.why(),
                stage.source(),
                stage.who(),
                stage.timing(),
                stage.duties(),
                visits,
                precautions,
                stage.outcomes(),
                stage.signs());
    }

    static Stage with(Stage stage, Template.Outcome... outcomes) {
        return new Stage(
                stage.id(),
                stage.name(),
                stage.says(),
                stage.why(),
                stage.source(),
                stage.who(),
                stage.timing(),
                stage.duties(),
                stage.visits(),
                stage.precautions(),
                List.of(outcomes),
                stage.signs());
    }

    static VisitNeed visit(String id, String kind, String after, String within) {
        return new VisitNeed(
                id,
                kind,
                Period.parse(after),
                Period.parse(within),
                Optional.empty(),
                1,
                Optional.empty(),
                Optional.empty());
    }

    static VisitNeed visit(String id, String kind, String after, String within, String every, int times) {
        return new VisitNeed(
                id,
                kind,
                Period.parse(after),
                Period.parse(within),
                Optional.of(Period.parse(every)),
                times,
                Optional.empty(),
                Optional.empty());
    }

    static Template path(Stage... stages) {
        return new Template("test", 1, Bilingual.same("test"), Optional.empty(), List.of(stages), List.of());
    }

    static Course begun(String day) {
        return Course.begun(day(day));
    }

    static Course begun(String day, String stage, String fixed) {
        return given(day, Map.of(stage, new Given(day(fixed), Origin.ACTUAL)));
    }

    static Course given(String day, Map<String, Given> given) {
        return given(day(day), given);
    }

    static Course given(LocalDate day, Map<String, Given> given) {
        return Course.begun(day).withGiven(given);
    }

    static Plan plan(Template template, Course course, Predicate<LocalDate> open, LocalDate today) {
        var known = new Span(today.minusYears(10), today.plusYears(30));
        var days = Days.where(known.first(), known.last(), open);
        return Planner.plan(template, course, Calendar.of(days, known), today);
    }

    static LocalDate start(Plan plan, String stage) {
        return plan.stage(stage).orElseThrow().start();
    }
}
