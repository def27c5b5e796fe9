package org.hearthway.visit;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.VisitWindow;

/**
 * A visit that a plan asks for and that is not booked in its window.
 *
 * @param stage the stage that asks for it
 * @param window the days it may lie on
 * @param misplaced the visit booked for it on another day, if there is one
 */
public record Unbooked(Planned stage, VisitWindow window, Optional<Visit> misplaced) {

    private static final int NEED_PARTS = 3;

    /**
     * What a plan asks for and nobody booked, in the plan's order. A path that is over asks for nothing, and nor does a
     * stage without a day. A visit that took place answers its purpose on whatever day; a booked one must lie within
     * the window.
     */
    public static Stream<Unbooked> of(Plan plan, List<Visit> visits, LocalDate today) {
        if (plan.over().isPresent()) {
            return Stream.empty();
        }
        var counting = visits.stream()
                .filter(visit -> visit.state() == Visit.State.BOOKED || visit.state() == Visit.State.ATTENDED)
                .toList();
        return plan.stages().stream()
                .filter(stage -> stage.clash().isEmpty())
                .flatMap(stage -> stage.visits().stream()
                        .filter(window -> !isSuperseded(window, stage.visits(), today))
                        .flatMap(window -> unless(stage, window, counting)));
    }

    /** Of a visit that comes again, the time that was missed counts no more once the next one has come. */
    private static boolean isSuperseded(VisitWindow window, List<VisitWindow> all, LocalDate today) {
        return all.stream()
                .anyMatch(other -> need(other).equals(need(window))
                        && other.from().isAfter(window.from())
                        && !other.from().isAfter(today));
    }

    /** Path, stage and visit, without the number that later times of a visit carry. */
    private static List<String> need(VisitWindow window) {
        return Arrays.stream(window.purpose().split("/")).limit(NEED_PARTS).toList();
    }

    private static Stream<Unbooked> unless(Planned stage, VisitWindow window, List<Visit> visits) {
        var found = visits.stream()
                .filter(visit ->
                        visit.purpose().filter(window.purpose()::equals).isPresent())
                .toList();
        return found.stream().anyMatch(visit -> visit.state() == Visit.State.ATTENDED || keeps(visit, window))
                ? Stream.empty()
                : Stream.of(new Unbooked(stage, window, found.stream().findFirst()));
    }

    private static boolean keeps(Visit visit, VisitWindow window) {
        var day = visit.start().toLocalDate();
        return !day.isBefore(window.from()) && !day.isAfter(window.until());
    }
}
