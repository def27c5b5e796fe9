package org.hearthway.pump.engine;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A bridge: the flow of the old strength goes on until the new drug has reached the end of the catheter. Drug of the old
 * strength that was left in the reservoir dilutes the new one besides; see {@link Mixture}.
 *
 * @param old strength in tubing and catheter
 * @param fresh strength of the new drug
 * @param dose that is wanted throughout
 * @param deadVolume what tubing and catheter hold
 * @param drug the bridge gives this much, all of it old drug
 * @param lasts how long it runs
 * @param during its flow
 * @param afterwards the flow when it is over
 * @param deliverable whether the pump can do both flows
 * @param without what the child would get without it
 * @param wrong what happens when tubing and catheter really hold less, and more
 */
public record Bridge(
        Concentration old,
        Concentration fresh,
        DailyDose dose,
        Volume deadVolume,
        Mass drug,
        Elapsed lasts,
        FlowRate during,
        FlowRate afterwards,
        boolean deliverable,
        Unbridged without,
        List<Wrong> wrong,
        Derivation how)
        implements BridgePlan {

    /**
     * An hour after the change.
     *
     * @param hour 0 is the first
     */
    public record Hour(int hour, Mass bridged, Mass unbridged) {}

    private static final int MOST_HOURS = 2400;

    public Bridge {
        wrong = List.copyOf(wrong);
    }

    static Bridge of(
            PumpModel pump,
            Catheter catheter,
            Concentration old,
            Concentration fresh,
            DailyDose dose,
            int deadVolumePercent) {
        var working = new Derivation.Working();
        var dead = DeadVolume.of(pump, catheter, working);
        var d = Symbol.DAILY_DOSE.is(dose);
        var c1 = Symbol.OLD_STRENGTH.is(old);
        var drug = working.line(Formula.BRIDGE_DOSE, Symbol.BRIDGE_DOSE, dead.at(old), Symbol.DEAD_VOLUME.is(dead), c1);
        var lasts =
                working.line(Formula.BRIDGE_HOURS, Symbol.HOURS, drug.at(dose.rate()), Symbol.BRIDGE_DOSE.is(drug), d);
        var during = dose.rate().in(old);
        working.line(Formula.BRIDGE_FLOW, Symbol.DAILY_VOLUME, during.perDay(), d, c1);
        var afterwards = dose.rate().in(fresh);
        var volume = working.line(
                Formula.FLOW_AFTERWARDS, Symbol.DAILY_VOLUME, afterwards.perDay(), d, Symbol.NEW_STRENGTH.is(fresh));
        var received = working.line(
                Formula.RECEIVED_UNBRIDGED, Symbol.RECEIVED, afterwards.at(old), d, c1, Symbol.NEW_STRENGTH.is(fresh));
        var without = unbridged(dead, received, dose.rate(), afterwards, volume, working);
        var share = BigFraction.of(deadVolumePercent, 100);
        var wrong = Stream.of(BigFraction.ONE.subtract(share), BigFraction.ONE.add(share))
                .map(part -> new Volume(dead.exact().multiply(part)))
                .map(really -> Wrong.of(
                        dead,
                        really,
                        really.compareTo(dead) < 0 ? fresh : old,
                        dose,
                        really.compareTo(dead) < 0 ? during : afterwards))
                .toList();
        var deliverable = pump.deliverable().holds(during) && pump.deliverable().holds(afterwards);
        return new Bridge(
                old, fresh, dose, dead, drug, lasts, during, afterwards, deliverable, without, wrong, working.done());
    }

    static NotProgrammable byFixedFlow(
            PumpModel pump, Catheter catheter, Concentration old, Concentration fresh, FlowRate flow) {
        var working = new Derivation.Working();
        var dead = DeadVolume.of(pump, catheter, working);
        return new NotProgrammable(
                unbridged(dead, flow.at(old), flow.at(fresh), flow, flow.perDay(), working), working.done());
    }

    private static Unbridged unbridged(
            Volume dead,
            DrugRate received,
            DrugRate wanted,
            FlowRate flow,
            Amount dailyVolume,
            Derivation.Working working) {
        var lasts = dead.at(flow);
        working.line(
                Formula.OLD_DRUG_DAYS,
                Symbol.DAYS,
                lasts.inDays(),
                Symbol.DEAD_VOLUME.is(dead),
                Symbol.DAILY_VOLUME.is(dailyVolume));
        var percent = Amount.percent(received.exact().divide(wanted.exact()).multiply(Exact.HUNDRED));
        return new Unbridged(received, percent, lasts);
    }

    /**
     * What reaches the child hour by hour from the change on, with the bridge and without, for a plot.
     *
     * @param hours how many, 1 to 2400
     * @throws org.hearthway.base.Invalid naming the bound that is broken
     */
    public List<Hour> hours(int hours) {
        return hours(hours, deadVolume, fresh);
    }

    /**
     * The same, when tubing and catheter really hold another volume, or the new drug is a mixture of another strength.
     */
    public List<Hour> hours(int hours, Volume really, Concentration mixture) {
        Bounds.whole("hours", hours, 1, MOST_HOURS, Unit.HOURS);
        var bridged = new Transit(really, old, mixture, lasts, during, afterwards);
        var unbridged = new Transit(really, old, mixture, Elapsed.NONE, during, afterwards);
        return IntStream.range(0, hours)
                .mapToObj(hour -> new Hour(hour, bridged.inHour(hour), unbridged.inHour(hour)))
                .toList();
    }

    /**
     * The bridge as two programmings for {@link Reservoir}: the flow of the old strength, and then what follows.
     *
     * @param from when it begins
     * @param zone where it is programmed
     * @param then what is given afterwards
     */
    public List<Program> programs(Instant from, ZoneId zone, Dosing then) {
        var end = lasts.after(from);
        return List.of(
                Program.set(from, zone, old, Dosing.constant(dose)),
                new Program(end, fresh, then, PumpClock.setAt(from, zone)));
    }
}
