package org.hearthway.path.engine;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Span;

/**
 * The days on which a stage may begin, its rules about gaps aside.
 *
 * @param days on which the clinic is open, where the stage needs it
 * @param away on which the family cannot come, where the stage needs it
 */
record OpenDays(Days days, List<Span> away) {

    /** How far from the day wanted one is looked for. */
    private static final int MOST_DAYS = 366;

    static OpenDays of(Stage stage, Calendar calendar, Course course) {
        return stage.timing().onOpenDays()
                ? new OpenDays(calendar.clinic(), course.away())
                : new OpenDays(Days.ALL, List.of());
    }

    boolean allow(LocalDate day) {
        return days.allow(day) && !isAway(day);
    }

    boolean isAway(LocalDate day) {
        return away.stream().anyMatch(span -> span.holds(day));
    }

    /** The allowed day nearest to the one wanted, of two the later, between a first and a last. */
    Optional<LocalDate> nearest(LocalDate first, LocalDate wanted, LocalDate last) {
        return Stream.iterate(0, n -> n + 1)
                .limit(MOST_DAYS)
                .flatMap(n -> Stream.of(wanted.plusDays(n), wanted.minusDays(n)))
                .filter(day -> !day.isBefore(first) && !day.isAfter(last) && allow(day))
                .findFirst();
    }
}
