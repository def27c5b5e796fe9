package org.hearthway.equipment;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.equipment.engine.CastDays;

/**
 * Casts worn one after the other.
 *
 * @param id identifier
 * @param data as it was entered last
 * @param version the version that was read
 */
public record CastSeries(UUID id, Data data, long version) {

    /**
     * What a person types.
     *
     * @param place where
     * @param side on which side
     * @param from first day; at most 90 days ahead and 2 years back
     * @param everyDays days from one cast to the next, 1 to 60
     * @param lastOff day on which the last cast is to come off
     * @param ended day on which the series was over
     * @param casts in order
     */
    public record Data(
            Place place,
            Place.Side side,
            LocalDate from,
            int everyDays,
            Optional<LocalDate> lastOff,
            Optional<LocalDate> ended,
            List<Cast> casts) {
        public Data {
            casts = List.copyOf(casts);
        }
    }

    /**
     * One cast.
     *
     * @param on when it was put on
     * @param off when it was taken off
     * @param degrees angle reached in degrees, as entered, -90 to 180
     * @param skin the skin as seen, at most 500 characters
     */
    public record Cast(LocalDate on, Optional<LocalDate> off, Optional<Integer> degrees, String skin) {}

    /** The next planned day: a change, or the last cast coming off; empty once the series is over. */
    public Optional<LocalDate> next() {
        return data.ended().isPresent()
                ? Optional.empty()
                : Optional.of(days().next(data.casts().stream().map(Cast::on).toList()));
    }

    /** Whether on the next planned day the last cast comes off. */
    public boolean nextIsLast() {
        return next().filter(days()::isLast).isPresent();
    }

    private CastDays days() {
        return new CastDays(data.from(), data.everyDays(), data.lastOff());
    }
}
