package org.hearthway.pump;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.engine.PumpClock;
import org.hearthway.pump.engine.RefillForecast;
import org.hearthway.pump.engine.RefillWindow;
import org.hearthway.pump.engine.ReplacementPlan;
import org.hearthway.pump.engine.Reservoir;
import org.hearthway.pump.engine.Residual;

/**
 * A child's pump as its book tells it now, from entries that were checked. For the folder alone.
 *
 * @param implant the figures of pump and catheter
 * @param fill the last refill
 * @param setting how it runs
 * @param reservoir since the last refill, when its figures are known
 * @param forecast of that reservoir
 * @param window when to refill, print-out included
 * @param discrepancy print-out and forecast further apart than the clinic lets pass, until somebody explains it
 * @param explained what somebody said of it
 * @param shift since when steps run off in local time
 * @param replacement when to plan another pump
 * @param refills what was found at each refill, the last first
 */
public record PumpOutlook(
        Optional<PumpEntry.Implant> implant,
        Optional<PumpEntry> fill,
        Optional<Setting> setting,
        Optional<Reservoir> reservoir,
        Optional<RefillForecast> forecast,
        Optional<RefillWindow> window,
        boolean discrepancy,
        Optional<Explanation> explained,
        Optional<PumpClock.Shift> shift,
        Optional<ReplacementPlan> replacement,
        List<Found> refills) {

    public PumpOutlook {
        refills = List.copyOf(refills);
    }

    /** What was found at a refill. */
    public record Found(long entry, LocalDate day, Residual residual) {}

    /** Why a print-out and our forecast differ. */
    public record Explanation(String words, org.hearthway.base.AccountId by, java.time.Instant at) {}
}
