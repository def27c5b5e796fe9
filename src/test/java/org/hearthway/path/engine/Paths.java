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
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Precaution;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.VisitNeed;

/** Small paths for tests. */
final class Paths {

    static final Predicate<LocalDate> EVERY_DAY = day -> true;
    static final Predicate<LocalDate> WEEKDAYS = day -> day.getDayOfWeek().getValue() <= DayOfWeek.FRIDAY.getValue();

    private Paths() {}

    static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    static After begins() {
        return new After(Optional.empty(), Edge.START, Period.ZERO, Period.ZERO, Period.ZERO);
    }

    static After after(String stage, String usual) {
        return after(stage, Edge.START, usual, usual, usual);
    }

    static After after(String stage, Edge edge, String earliest, String usual, String latest) {
        return new After(Optional.of(stage), edge, Period.parse(earliest), Period.parse(usual), Period.parse(latest));
    }

    static Stage stage(String id, After begins) {
        return stage(id, begins, Period.ZERO, Optional.empty(), false, false);
    }

    static Stage stage(
            String id, After begins, Period lasts, Optional<String> until, boolean onOpenDays, boolean signal) {
        return new Stage(
                id,
                Bilingual.same(id),
                Bilingual.same("says"),
                begins,
                lasts,
                until,
                onOpenDays,
                signal,
                List.of(),
                List.of(),
                List.of(),
                Bilingual.same("why"),
                "test");
    }

    static Stage with(Stage stage, List<VisitNeed> visits, List<Precaution> precautions) {
        return new Stage(
                stage.id(),
                stage.name(),
                stage.says(),
                stage.begins(),
                stage.lasts(),
                stage.until(),
                stage.onOpenDays(),
                stage.signal(),
                visits,
                stage.tasks(),
                precautions,
                stage.why(),
                stage.source());
    }

    static Template path(Stage... stages) {
        return new Template("test", 1, Bilingual.same("test"), List.of(stages), List.of());
    }

    static Course begun(String day) {
        return new Course(day(day), Map.of());
    }

    static Course begun(String day, String stage, String fixed) {
        return new Course(day(day), Map.of(stage, new Given(day(fixed), Origin.ACTUAL)));
    }

    static LocalDate start(Plan plan, String stage) {
        return plan.stage(stage).orElseThrow().start();
    }
}
