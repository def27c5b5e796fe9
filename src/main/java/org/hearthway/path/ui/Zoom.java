package org.hearthway.path.ui;

import java.time.LocalDate;
import java.time.Period;
import java.util.Locale;
import java.util.Optional;
import org.hearthway.path.engine.network.Span;

/** How much of the time line is seen. */
enum Zoom {
    /** From the first stage to the last. */
    ALL(Optional.empty(), Optional.empty()),
    /** A year around today. */
    YEAR(Optional.of(Period.ofMonths(3)), Optional.of(Period.ofMonths(9))),
    /** The months next to today. */
    MONTHS(Optional.of(Period.ofWeeks(3)), Optional.of(Period.ofWeeks(10)));

    private final Optional<Period> back;
    private final Optional<Period> ahead;

    Zoom(Optional<Period> back, Optional<Period> ahead) {
        this.back = back;
        this.ahead = ahead;
    }

    /** The days seen; empty when all of them are. */
    Optional<Span> window(LocalDate today) {
        return back.flatMap(before -> ahead.map(after -> new Span(today.minus(before), today.plus(after))));
    }

    /** How it stands in an address. */
    String inAddress() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The one of an address; everything when there is none or an unknown one. */
    static Zoom of(Optional<String> address) {
        for (var zoom : values()) {
            if (address.filter(zoom.inAddress()::equals).isPresent()) {
                return zoom;
            }
        }
        return ALL;
    }
}
