package org.hearthway.pump;

import java.util.Optional;
import java.util.Set;
import org.hearthway.pump.engine.AfterFill;
import org.hearthway.pump.engine.BridgePlan;
import org.hearthway.pump.engine.Conversion;
import org.hearthway.pump.engine.Deliverable;
import org.hearthway.pump.engine.DoseStep;
import org.hearthway.pump.engine.Mixture;
import org.hearthway.pump.engine.RefillForecast;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.Residual;
import org.hearthway.pump.engine.ScheduleTotal;

/**
 * All that can be reckoned of an entry before it is saved. What rests on a figure that nobody wrote down is empty.
 *
 * @param residual what was drawn out against what was expected
 * @param afterFill what was measured after the fill against what was filled in
 * @param step the new dose against the one before
 * @param total what a schedule gives in a day
 * @param conversion dose, strength and flow of a constant rate
 * @param deliverable whether the pump can do it
 * @param mixture what the new drug becomes with what was left of the old
 * @param bridge what a change of strength asks for
 * @param forecast from this entry on
 * @param window the refill that follows from it, print-out included
 * @param attention what is out of the usual
 */
public record PumpSums(
        Optional<Residual> residual,
        Optional<AfterFill> afterFill,
        Optional<DoseStep> step,
        Optional<ScheduleTotal> total,
        Optional<Conversion> conversion,
        Optional<Deliverable> deliverable,
        Optional<Mixture> mixture,
        Optional<BridgePlan> bridge,
        Optional<RefillForecast> forecast,
        Optional<RefillWindow> window,
        Set<Attention> attention) {

    public PumpSums {
        attention = Set.copyOf(attention);
    }

    /** What is out of the usual, and wants words of the one who enters it; nothing is refused for it. */
    public enum Attention {
        /** More or less was left than expected. */
        RESIDUAL,
        /** The volume after the fill does not match. */
        AFTER_FILL,
        /** The step of the dose. */
        STEP,
        /** The pump cannot deliver it. */
        NOT_DELIVERABLE,
        /** The strength changes: old drug stays in tubing and catheter. */
        STRENGTH,
        /** Our alarm date and the print-out are further apart than the clinic lets pass. */
        PRINT_OUT,
        /** The drug ends before it should be refilled: its own last day, or its expiry, has passed or is near. */
        DRUG_OUT_OF_DATE,
        /** The port was sought more than twice. */
        ATTEMPTS
    }

    /** Whether words are asked for. */
    public boolean wantsWords() {
        return !attention.isEmpty();
    }
}
