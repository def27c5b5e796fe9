package org.hearthway.path.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hearthway.path.engine.Plan.VisitWindow;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.VisitNeed;

/** Unfolds the visits of a stage, each counted from the stage's first day and never from each other. */
final class VisitSeries {

    /** What goes on until another stage is unfolded so often at most. */
    static final int MOST_TIMES = 520;

    private final Template template;
    private final Calendar calendar;
    private final Function<String, LocalDate> cut;
    private final LocalDate over;

    /**
     * Visits of a path.
     *
     * @param cut says the day before which a visit that goes on until a stage has its last time
     * @param over the day after which there are none
     */
    VisitSeries(Template template, Calendar calendar, Function<String, LocalDate> cut, LocalDate over) {
        this.template = template;
        this.calendar = calendar;
        this.cut = cut;
        this.over = over;
    }

    List<VisitWindow> of(Stage stage, LocalDate start) {
        return of(stage, start, 1);
    }

    /** The visits of a later time of a stage that repeats; single ones are numbered as the stage is. */
    List<VisitWindow> of(Stage stage, LocalDate start, int round) {
        var windows = new ArrayList<VisitWindow>();
        for (var visit : stage.visits()) {
            int times = visit.until().isPresent() ? MOST_TIMES : visit.times();
            var until = visit.until().map(cut).orElse(LocalDate.MAX);
            for (int n = 0; n < times; n++) {
                var window = window(stage, visit, start, n, round);
                if (!window.from().isBefore(until) || window.from().isAfter(over)) {
                    break;
                }
                windows.add(window);
            }
        }
        return windows;
    }

    private VisitWindow window(Stage stage, VisitNeed visit, LocalDate start, int n, int round) {
        var again = visit.every().map(gap -> gap.multipliedBy(n)).orElse(Period.ZERO);
        var from = start.plus(visit.after().plus(again));
        var until = start.plus(visit.after().plus(again).plus(visit.within()));
        int number = Math.max(n + 1, round);
        var purpose = template.id() + "/" + stage.id() + "/" + visit.id();
        var days = calendar.visit(visit.kind());
        return new VisitWindow(
                number == 1 ? purpose : purpose + "/" + number,
                visit.kind(),
                from,
                until,
                from.datesUntil(until.plusDays(1)).filter(days::allow).findFirst());
    }
}
