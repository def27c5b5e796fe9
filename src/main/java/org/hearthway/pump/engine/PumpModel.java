package org.hearthway.pump.engine;

import java.time.Period;
import java.util.Optional;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;

/**
 * A kind of pump, by its figures.
 *
 * @param reservoir what it holds, 5 to 60 mL
 * @param alarm volume at which it sounds for a refill, less than the reservoir, at most 10 mL; for a pump that sounds
 *     nothing, the volume that refills are planned by
 * @param tubing what its inner tubing holds, at most 2 mL; no part of the reservoir
 * @param deliverable the flows it can be set to
 * @param life from implant to its elective replacement, 1 to 20 years
 * @param fixedFlow its flow when that was set at manufacture, 0.001 to 2 mL an hour; empty when it can be programmed
 */
public record PumpModel(
        Volume reservoir,
        Volume alarm,
        Volume tubing,
        FlowRange deliverable,
        Period life,
        Optional<FlowRate> fixedFlow) {

    private static final Bounds RESERVOIR = Bounds.of("reservoir", "5", "60", 4, Unit.MILLILITRES);
    private static final Bounds ALARM = Bounds.of("alarm", "0", "10", 4, Unit.MILLILITRES);
    private static final Bounds TUBING = Bounds.of("tubing", "0", "2", 4, Unit.MILLILITRES);
    private static final Bounds FIXED_FLOW = Bounds.of("flow", "0.001", "2", 6, Unit.MILLILITRES_PER_HOUR);
    private static final int MONTHS_A_YEAR = 12;
    private static final int MOST_MONTHS = 240;

    /** @throws Invalid naming field and bounds */
    public PumpModel {
        RESERVOIR.computed(reservoir.exact());
        ALARM.computed(alarm.exact());
        TUBING.computed(tubing.exact());
        if (alarm.compareTo(reservoir) >= 0) {
            throw new Invalid(Problem.at("alarm", "pump.problem.alarm-volume"));
        }
        fixedFlow.ifPresent(flow -> FIXED_FLOW.computed(flow.exact()));
        Bounds.whole("life", Math.toIntExact(life.toTotalMonths()), MONTHS_A_YEAR, MOST_MONTHS, Unit.MONTHS);
    }

    /** A pump that can be programmed. */
    public static PumpModel programmable(
            Volume reservoir, Volume alarm, Volume tubing, FlowRange deliverable, Period life) {
        return new PumpModel(reservoir, alarm, tubing, deliverable, life, Optional.empty());
    }

    /** A pump whose flow was set at manufacture. */
    public static PumpModel fixedRate(Volume reservoir, Volume alarm, Volume tubing, FlowRate flow, Period life) {
        return new PumpModel(reservoir, alarm, tubing, new FlowRange(flow, flow), life, Optional.of(flow));
    }

    /** The same pump with its alarm set to another volume. */
    public PumpModel withAlarm(Volume volume) {
        return new PumpModel(reservoir, volume, tubing, deliverable, life, fixedFlow);
    }
}
