package org.hearthway.path.engine;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.network.Days;

/** The days on which a stage may begin, its rules about gaps aside. */
record OpenDays(Days days) {

    /** How far from the day wanted one is looked for. */
    private static final int MOST_DAYS = 366;

    static OpenDays of(Stage stage, Calendar calendar) {
        return new OpenDays(stage.timing().onOpenDays() ? calendar.clinic() : Days.ALL);
    }

    boolean allow(LocalDate day) {
        return days.allow(day);
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
