package org.hearthway.pump.engine;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Who gets a new dose, and what was done before.
 *
 * @param years age, 0 to 120
 * @param origin of the tone
 * @param phase whether the dose is being found or kept
 * @param begun when the pump began to give drug, if that is known
 * @param increases when the dose was raised before
 */
public record DoseContext(int years, Origin origin, Phase phase, Optional<Instant> begun, List<Instant> increases) {

    /** Where the tone comes from. */
    public enum Origin {
        /** The brain. */
        CEREBRAL,
        /** The spinal cord. */
        SPINAL
    }

    /** What the dose is changed for. */
    public enum Phase {
        /** To find it, after the implant. */
        FINDING,
        /** To keep it right, later. */
        UPKEEP
    }

    private static final int OLDEST = 120;

    /** @throws org.hearthway.base.Invalid when the age is out of bounds */
    public DoseContext {
        Bounds.whole("years", years, 0, OLDEST, Unit.YEARS);
        increases = List.copyOf(increases);
    }

    /** Of a child with tone of cerebral origin whose dose is being found, of whom no times are known. */
    public static DoseContext child(int years) {
        return new DoseContext(years, Origin.CEREBRAL, Phase.FINDING, Optional.empty(), List.of());
    }

    /** The same with what was done before. */
    public DoseContext since(Instant start, Instant... raised) {
        return new DoseContext(years, origin, phase, Optional.of(start), List.of(raised));
    }

    /** The same in another phase. */
    public DoseContext in(Phase other) {
        return new DoseContext(years, origin, other, begun, increases);
    }
}
