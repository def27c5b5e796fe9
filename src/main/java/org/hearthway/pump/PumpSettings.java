package org.hearthway.pump;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DailyDose;

/**
 * How a child's pump is set: strength and daily dose, as a nurse or physician copied them from the device print-out.
 * They count as confirmed once a second human being has typed the same two numbers from the same print-out.
 */
public interface PumpSettings {

    /**
     * A setting as it was entered. Later ones supersede earlier ones; none is altered.
     *
     * @param number 1, 2, 3 … within the child
     * @param on the day of the print-out
     * @param check who typed the same numbers again, and when
     */
    record Setting(
            long number,
            Concentration strength,
            DailyDose dose,
            LocalDate on,
            AccountId by,
            Instant at,
            Optional<Check> check) {}

    /** The second check. */
    record Check(AccountId by, Instant at) {}

    /**
     * What a person types from the print-out.
     *
     * @param strength micrograms per millilitre, see {@link Concentration}
     * @param dose micrograms per day, see {@link DailyDose}
     * @param on day of the print-out, not in the future and at most 2 years back
     */
    record SettingData(BigDecimal strength, BigDecimal dose, LocalDate on) {}

    /** The setting that was entered last, confirmed or not; empty when none was. */
    Optional<Setting> current(Viewer viewer, ChildId child);

    /**
     * The same, but only while it is about the pump that is in: empty when its print-out is older than that pump, or when
     * the pump was taken out.
     */
    Optional<Setting> ofThisPump(Viewer viewer, ChildId child);

    /** All settings, newest first. */
    List<Setting> history(Viewer viewer, ChildId child);

    /**
     * Enters a setting; it waits for its second check.
     *
     * @param seen number of the setting that the person saw as current, 0 for none
     * @throws org.hearthway.base.Invalid naming field and bound
     * @throws org.hearthway.base.Overtaken when somebody else entered one in between
     */
    Setting enter(Viewer viewer, ChildId child, SettingData data, long seen);

    /**
     * Confirms the current setting by the numbers that a second person reads on the print-out.
     *
     * @param seen number of the setting that is confirmed
     * @throws org.hearthway.base.Invalid when the numbers differ, or the person is the one who entered it, also under
     *     another account
     * @throws org.hearthway.base.Overtaken when it is no longer current or confirmed already
     */
    void confirm(Viewer viewer, ChildId child, SettingData again, long seen);
}
