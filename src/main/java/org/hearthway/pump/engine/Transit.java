package org.hearthway.pump.engine;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What reaches a child while one drug pushes another out of tubing and catheter, as a plug, without mixing.
 *
 * @param dead what tubing and catheter really hold
 * @param old strength in them
 * @param fresh strength that follows
 * @param bridge how long the flow of the bridge runs; nothing without one
 * @param during flow of the bridge
 * @param afterwards flow that follows
 */
record Transit(
        Volume dead, Concentration old, Concentration fresh, Elapsed bridge, FlowRate during, FlowRate afterwards) {

    /** What has reached the child since the change. */
    Mass received(Elapsed time) {
        var bridged = Exact.least(time.exact(), bridge.exact());
        var flowed = during.exact()
                .multiply(bridged)
                .add(afterwards.exact().multiply(time.exact().subtract(bridged)));
        var oldVolume = Exact.least(flowed, dead.exact());
        var freshVolume = flowed.subtract(oldVolume);
        return new Mass(oldVolume.multiply(old.exact()).add(freshVolume.multiply(fresh.exact())));
    }

    /** What reaches the child in an hour; 0 is the first one. */
    Mass inHour(int hour) {
        var to = received(Elapsed.hours(BigFraction.of(hour + 1)));
        return new Mass(to.exact()
                .subtract(received(Elapsed.hours(BigFraction.of(hour))).exact()));
    }
}
