package org.hearthway.stimulator;

import java.math.BigDecimal;
import org.hearthway.stimulator.engine.DropRule;
import org.hearthway.stimulator.engine.ImpedanceRule;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What the clinic keeps to for every stimulator ({@code hearthway.stimulator.*}). All but the first are common practice
 * without a source: the clinic confirms them, the device's manual decides.
 *
 * @param firstCheckMonths age from which a generator that is not charged is looked at with its end in mind, 6 to 13 months:
 *     the first were empty after 13 (Lumsden et al., Childs Nerv Syst 2012;28(7):1091-1097)
 * @param everyDays days between two readings from then on, 14 to 180
 * @param endPercent per cent that are taken as the end of a battery that is not charged, 0 to 50
 * @param dropTimes how many times the usual fall is sudden, 2 to 10
 * @param dropPercent the least fall in per cent that is sudden, 1 to 50
 * @param dropVolts the least fall in volts that is sudden, 0.01 to 1
 * @param leastOhms impedance below which a short circuit is possible, 1 to 2000
 * @param mostOhms impedance above which a broken lead is possible, 1000 to 100000
 * @param ohmsPercent change of an impedance in per cent that is named, 10 to 500
 */
@ConfigurationProperties("hearthway.stimulator")
public record StimulatorRules(
        @DefaultValue("13") int firstCheckMonths,
        @DefaultValue("90") int everyDays,
        @DefaultValue("10") int endPercent,
        @DefaultValue("3") int dropTimes,
        @DefaultValue("10") BigDecimal dropPercent,
        @DefaultValue("0.1") BigDecimal dropVolts,
        @DefaultValue("250") int leastOhms,
        @DefaultValue("4000") int mostOhms,
        @DefaultValue("50") int ohmsPercent) {

    public StimulatorRules {
        // never later than the first were empty: a single look at the mean life comes too late for many
        within("first-check-months", firstCheckMonths, 6, 13);
        within("every-days", everyDays, 14, 180);
        within("end-percent", endPercent, 0, 50);
        within("drop-times", dropTimes, 2, 10);
        within("drop-percent", dropPercent.doubleValue(), 1, 50);
        within("drop-volts", dropVolts.doubleValue(), 0.01, 1);
        within("least-ohms", leastOhms, 1, 2000);
        within("most-ohms", mostOhms, 1000, 100_000);
        within("ohms-percent", ohmsPercent, 10, 500);
        if (leastOhms >= mostOhms) {
            throw new IllegalArgumentException("hearthway.stimulator.least-ohms must be below most-ohms");
        }
    }

    private static void within(String name, double given, double least, double most) {
        if (given < least || given > most) {
            throw new IllegalArgumentException("hearthway.stimulator." + name + " must be "
                    + BigDecimal.valueOf(least).stripTrailingZeros().toPlainString() + " to "
                    + BigDecimal.valueOf(most).stripTrailingZeros().toPlainString());
        }
    }

    /** When a battery fell suddenly. */
    public DropRule drop() {
        return new DropRule(dropTimes, dropPercent, dropVolts);
    }

    /** Which impedances are usual. */
    public ImpedanceRule impedances() {
        return new ImpedanceRule(leastOhms, mostOhms, ohmsPercent);
    }
}
