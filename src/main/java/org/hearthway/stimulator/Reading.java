package org.hearthway.stimulator;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.AccountId;
import org.hearthway.stimulator.engine.AmplitudeUnit;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.ImpedanceRule.Pair;

/**
 * What a stimulator showed, as somebody copied it. None is altered: a correction is a revision of its own.
 *
 * @param number 1, 2, 3 … within the child; a correction keeps it
 * @param revision counted up within the child over all that was recorded
 * @param data what was typed
 * @param reason why it was corrected; empty for the first revision
 * @param unusual fields outside of what is usual, taken as they are because of an emergency
 * @param by who typed it
 * @param at when
 * @param check who read the same figures again, and when
 */
public record Reading(
        long number,
        long revision,
        ReadingData data,
        String reason,
        Set<String> unusual,
        AccountId by,
        Instant at,
        Optional<Check> check) {

    public Reading {
        unusual = Set.copyOf(unusual);
    }

    /** The second check. */
    public record Check(AccountId by, Instant at) {}

    /** Whether the device was on when it was found. */
    public enum Found {
        ON,
        OFF,
        NOT_LOOKED
    }

    /** A side of the body whose lead stimulates. */
    public enum Side {
        LEFT,
        RIGHT
    }

    /**
     * How one side is set.
     *
     * @param side the side of the lead
     * @param contacts which contacts, as the device writes them, at most 60 characters
     * @param amplitude strength, see {@link AmplitudeUnit}
     * @param unit of the strength
     * @param pulseWidth microseconds, usually 10 to 500
     * @param rate pulses a second, usually 2 to 255
     */
    public record Setting(
            Side side, String contacts, BigDecimal amplitude, AmplitudeUnit unit, int pulseWidth, BigDecimal rate) {}

    /**
     * Anything else the device shows.
     *
     * @param name what, 1 to 40 characters
     * @param value 1 to 40 characters
     * @param unit at most 20 characters
     */
    public record Other(String name, String value, String unit) {}

    /**
     * What a person types.
     *
     * @param generator serial number of the generator; empty only in an emergency in which none is on record
     * @param taken day and time by the clinic's clock, not in the future and not before the implant
     * @param level what the battery showed; empty only in an emergency
     * @param unit per cent or volts, as the device gives it
     * @param estimate the day of elective replacement that the device itself estimates
     * @param found whether it was on
     * @param impedances at most 32, each pair once, 1 to 99999 ohms
     * @param settings at most one for each side
     * @param others at most 12
     * @param chargeEveryDays how often it is to be charged at home, as agreed, 1 to 31 days; of one that is charged
     * @param lastCharge the last charge that the family or the device tells of
     * @param note side effects and what else matters, at most 500 characters
     * @param emergency whether it was recorded in an emergency: then nothing that is missing or unusual holds it up
     */
    public record ReadingData(
            String generator,
            LocalDateTime taken,
            Optional<BigDecimal> level,
            BatteryUnit unit,
            Optional<LocalDate> estimate,
            Found found,
            List<Pair> impedances,
            List<Setting> settings,
            List<Other> others,
            Optional<Integer> chargeEveryDays,
            Optional<LocalDate> lastCharge,
            String note,
            boolean emergency) {

        public ReadingData {
            impedances = List.copyOf(impedances);
            settings = List.copyOf(settings);
            others = List.copyOf(others);
        }

        /** The day it was taken. */
        public LocalDate day() {
            return taken.toLocalDate();
        }
    }

    /**
     * The figures that a second person reads and types.
     *
     * @param level of the battery; empty where the first person had none
     * @param chargeEveryDays how often it is to be charged; empty where the first person said nothing
     * @param settings of each side that stimulates; contacts are not compared
     */
    public record Again(
            Optional<BigDecimal> level, BatteryUnit unit, Optional<Integer> chargeEveryDays, List<Setting> settings) {

        public Again {
            settings = List.copyOf(settings);
        }
    }
}
