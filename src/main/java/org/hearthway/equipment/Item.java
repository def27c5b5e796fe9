package org.hearthway.equipment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.equipment.engine.CheckDays;

/**
 * A splint or a piece of equipment that a child has, or had.
 *
 * @param id identifier
 * @param kind what it is
 * @param data as it was entered last
 * @param version the version that was read
 */
public record Item(UUID id, Kind kind, Data data, long version) {

    /**
     * What a person types.
     *
     * @param kind identifier of the kind
     * @param place where it is worn
     * @param side on which side
     * @param given fitted or given on; not in the future
     * @param lentUntil when it must come back
     * @param wear when it is worn
     * @param skinEvery days from one look at the skin to the next, 1 to 400; empty for none
     * @param growthEvery days from one look at the fit to the next, 1 to 400; empty for none
     * @param back when it was given back; not in the future
     * @param looks in the order they were entered
     */
    public record Data(
            String kind,
            Optional<Place> place,
            Optional<Place.Side> side,
            LocalDate given,
            Optional<LocalDate> lentUntil,
            Wear wear,
            Optional<Integer> skinEvery,
            Optional<Integer> growthEvery,
            Optional<LocalDate> back,
            List<Look> looks) {
        public Data {
            looks = List.copyOf(looks);
        }

        /** The day since which it is known not to fit or to harm the skin; empty when the last look of each found it well. */
        public Optional<LocalDate> mendSince() {
            return back.isPresent()
                    ? Optional.empty()
                    : Arrays.stream(What.values())
                            .flatMap(what -> last(what).stream())
                            .filter(look -> look.outcome() != Outcome.FITS)
                            .map(Look::day)
                            .min(Comparator.naturalOrder());
        }

        /** Of several looks of one day the one entered last counts. */
        private Optional<Look> last(What what) {
            return looks.stream()
                    .filter(look -> look.what() == what)
                    .reduce((one, other) -> other.day().isBefore(one.day()) ? one : other);
        }
    }

    /** The data with a look more. */
    public Data with(Look look) {
        var looks = new ArrayList<>(data.looks());
        looks.add(look);
        return new Data(
                data.kind(),
                data.place(),
                data.side(),
                data.given(),
                data.lentUntil(),
                data.wear(),
                data.skinEvery(),
                data.growthEvery(),
                data.back(),
                looks);
    }

    /**
     * When it is worn or used, as the clinician says it. Nothing of it is computed.
     *
     * @param byDay hours by day, 0 to 24
     * @param byNight hours at night, 0 to 24
     * @param schedule in words, at most 500 characters
     * @param buildUp how to get used to it, a step a line, at most 500 characters
     */
    public record Wear(Optional<Integer> byDay, Optional<Integer> byNight, String schedule, String buildUp) {

        /** Nothing said. */
        public static final Wear NOT_SAID = new Wear(Optional.empty(), Optional.empty(), "", "");
    }

    /** What is looked at. */
    public enum What {
        /** The skin where it touches. */
        SKIN,
        /** Whether the child has grown out of it. */
        GROWTH
    }

    /** What came of a look. */
    public enum Outcome {
        FITS,
        ADJUST,
        REPLACE
    }

    /**
     * A look that took place.
     *
     * @param what skin or fit
     * @param day when; not in the future
     * @param outcome what came of it
     * @param next the day named for the next one; empty for the usual interval
     * @param note at most 500 characters
     */
    public record Look(What what, LocalDate day, Outcome outcome, Optional<LocalDate> next, String note) {}

    /** Whether the child has it now. */
    public boolean isInUse() {
        return data.back().isEmpty();
    }

    /** When it is looked at next; empty when it was given back or nobody looks at that. */
    public Optional<LocalDate> due(What what) {
        var every = what == What.SKIN ? data.skinEvery() : data.growthEvery();
        return every.filter(days -> isInUse())
                .map(days -> new CheckDays(data.given(), days)
                        .next(data.looks().stream()
                                .filter(look -> look.what() == what)
                                .map(look -> new CheckDays.Look(look.day(), look.next()))
                                .toList()));
    }
}
