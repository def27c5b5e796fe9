package org.hearthway.pump.engine;

/** What lies between a reservoir and the end of its catheter. */
final class DeadVolume {

    private DeadVolume() {}

    /** Tubing and catheter, of which both figures are known. */
    static Volume of(PumpModel pump, Catheter catheter, Derivation.Working working) {
        var length = catheter.implanted().orElseThrow();
        var bore = catheter.bore().orElseThrow();
        return working.line(
                Formula.DEAD_VOLUME,
                Symbol.DEAD_VOLUME,
                pump.tubing().plus(length.times(bore)),
                Symbol.TUBING.is(pump.tubing()),
                Symbol.LENGTH.is(length),
                Symbol.PER_LENGTH.is(bore));
    }
}
