package org.hearthway.child;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * A device in a child's body, part by part. The record stays while any part is in: leads that were left behind forbid
 * what the whole device forbids.
 *
 * @param id identifier
 * @param kind pump or stimulator
 * @param parts at least one, each with its own serial number and dates
 * @param version the version that was read
 */
public record Device(UUID id, Kind kind, List<Part> parts, long version) {

    /** What it is. */
    public enum Kind {
        /** An implanted pump with its catheter, for drugs into the spinal canal. */
        PUMP,
        /** An implanted generator with leads. */
        STIMULATOR;

        /** The parts that such a device can have. */
        public Set<What> parts() {
            return switch (this) {
                case PUMP -> EnumSet.of(What.RESERVOIR, What.CATHETER);
                case STIMULATOR -> EnumSet.of(What.GENERATOR, What.EXTENSION, What.LEAD);
            };
        }
    }

    /** A part of a device. */
    public enum What {
        /** The pump itself. */
        RESERVOIR,
        CATHETER,
        GENERATOR,
        EXTENSION,
        LEAD
    }

    /**
     * One part.
     *
     * @param what which
     * @param serial serial number, 1 to 60 characters, as it stands on the card
     * @param implanted when it came in; not in the future
     * @param removed when it came out; not before it came in
     */
    public record Part(What what, String serial, LocalDate implanted, Optional<LocalDate> removed) {

        /** Whether it is in the body. */
        public boolean isIn() {
            return removed.isEmpty();
        }
    }

    public Device {
        parts = List.copyOf(parts);
    }

    /** Whether any part is in the body. */
    public boolean isInPlace() {
        return parts.stream().anyMatch(Part::isIn);
    }

    /** The first implant date of the parts that are in; empty when none is. */
    public Optional<LocalDate> implanted() {
        return parts.stream().filter(Part::isIn).map(Part::implanted).min(Comparator.naturalOrder());
    }
}
