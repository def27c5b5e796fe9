package org.hearthway.pump;

import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.AccountId;
import org.hearthway.pump.engine.Amount;
import org.hearthway.pump.engine.Catheter;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.Shown;
import org.hearthway.pump.engine.Unit;
import org.hearthway.pump.engine.Volume;

/**
 * A line of the book of a child's pump. None is altered: a wrong one is superseded by another that names it.
 *
 * @param number 1, 2, 3 … within the child
 * @param at when it was done
 * @param what was done
 * @param corrects the entry in whose place it stands, and why
 * @param emergency whether it was entered in an emergency, with no reason asked for
 * @param unusual the words of the one who entered it about what is out of the usual; empty when nothing was
 * @param check the second check; none counts without it
 * @param carried whether it was kept in the book of before, and counts as it did there
 */
public record PumpEntry(
        long number,
        Instant at,
        What what,
        Optional<Correction> corrects,
        boolean emergency,
        String unusual,
        AccountId by,
        Instant entered,
        Optional<Check> check,
        boolean carried) {

    /** What was done. */
    public sealed interface What permits Implant, Refill, Change {

        /** How the pump runs from then on; empty when that is not known, or nothing was programmed. */
        default Optional<Setting> setting() {
            return Optional.empty();
        }

        /** The alarm date of the print-out that was read with it. */
        default Optional<LocalDate> printedAlarm() {
            return Optional.empty();
        }

        /** What the second person types again. */
        Map<KeyFigure, Shown> keyFigures();
    }

    /**
     * The figures of the pump and its catheter, from their cards.
     *
     * @param kind which of the general kinds the figures began from
     */
    public record Implant(String kind, PumpModel model, Catheter catheter) implements What {
        @Override
        public Map<KeyFigure, Shown> keyFigures() {
            var figures = new EnumMap<KeyFigure, Shown>(KeyFigure.class);
            figures.put(KeyFigure.RESERVOIR, model.reservoir());
            figures.put(KeyFigure.ALARM_VOLUME, model.alarm());
            figures.put(KeyFigure.TUBING, model.tubing());
            catheter.implanted().ifPresent(length -> figures.put(KeyFigure.CATHETER_LENGTH, length));
            catheter.bore().ifPresent(bore -> figures.put(KeyFigure.PER_LENGTH, bore));
            return figures;
        }
    }

    /**
     * A refill.
     *
     * @param elsewhere whether somebody else did it, so that only what is known of it is written
     * @param details what is written of it for the chart
     * @param withdrawn what was drawn out before
     * @param left what cannot be drawn out of this pump and mixes with the new drug, by its label
     * @param injected what was filled in
     * @param measured what was measured right after the fill
     * @param beyondUse last day of a compounded drug
     * @param setting strength and dosing from then on
     * @param printedAlarm low-reservoir alarm date of the print-out
     * @param marginDays days kept before the alarm for this child
     */
    public record Refill(
            boolean elsewhere,
            RefillDetails details,
            Optional<Volume> withdrawn,
            Optional<Volume> left,
            Optional<Volume> injected,
            Optional<Volume> measured,
            Optional<LocalDate> beyondUse,
            Optional<Setting> setting,
            Optional<LocalDate> printedAlarm,
            int marginDays)
            implements What {
        @Override
        public Map<KeyFigure, Shown> keyFigures() {
            var figures = new EnumMap<KeyFigure, Shown>(KeyFigure.class);
            setting.ifPresent(set -> set.addTo(figures));
            withdrawn.ifPresent(volume -> figures.put(KeyFigure.WITHDRAWN, volume));
            injected.ifPresent(volume -> figures.put(KeyFigure.INJECTED, volume));
            printedAlarm.ifPresent(day -> figures.put(KeyFigure.PRINTED_ALARM, new Shown.Day(day)));
            return figures;
        }
    }

    /**
     * Another dosing, or another strength that the pump is told, with no refill.
     *
     * @param set what runs from then on
     * @param reason why
     * @param printedAlarm low-reservoir alarm date of the new print-out
     */
    public record Change(Setting set, String reason, Optional<LocalDate> printedAlarm) implements What {
        @Override
        public Optional<Setting> setting() {
            return Optional.of(set);
        }

        @Override
        public Map<KeyFigure, Shown> keyFigures() {
            var figures = new EnumMap<KeyFigure, Shown>(KeyFigure.class);
            set.addTo(figures);
            printedAlarm.ifPresent(day -> figures.put(KeyFigure.PRINTED_ALARM, new Shown.Day(day)));
            return figures;
        }
    }

    /** How a pump is set. */
    public record Setting(Concentration strength, Dosing dosing) {

        private static final int PLACES = 3;

        private void addTo(Map<KeyFigure, Shown> figures) {
            figures.put(KeyFigure.STRENGTH, strength);
            figures.put(KeyFigure.DOSE, perDay());
        }

        /** What it gives in 24 hours, in the mean of its days, as it is told: micrograms a day to {@value #PLACES} places. */
        public Amount perDay() {
            return Amount.of(dosing.perDay(strength).rounded(PLACES), Unit.MICROGRAMS_PER_DAY);
        }
    }

    /** A kind of entry. */
    public enum Kind {
        /** Figures of pump and catheter. */
        IMPLANT,
        /** A refill here. */
        REFILL,
        /** A refill that somebody else did. */
        ELSEWHERE,
        /** Another dosing or strength. */
        CHANGE
    }

    /** A number that the second person types again without seeing the first one's. */
    public enum KeyFigure {
        STRENGTH,
        /** Micrograms per day; of a schedule the total of a day. */
        DOSE,
        WITHDRAWN,
        INJECTED,
        PRINTED_ALARM,
        RESERVOIR,
        ALARM_VOLUME,
        TUBING,
        CATHETER_LENGTH,
        PER_LENGTH
    }

    /**
     * Stands in the place of another entry.
     *
     * @param entry number of the one that was wrong
     * @param reason why, 1 to 500 characters
     */
    public record Correction(long entry, String reason) {}

    /** The second check. */
    public record Check(AccountId by, Instant at) {}

    /** Whether it may be relied on. */
    public boolean isSure() {
        return carried || check.isPresent();
    }

    /** Whether it is about the reservoir being filled. */
    public boolean isRefill() {
        return what instanceof Refill;
    }

    /** What kind of entry it is, to be told without its figures. */
    public Kind kind() {
        if (what instanceof Implant) {
            return Kind.IMPLANT;
        }
        if (what instanceof Refill refill) {
            return refill.elsewhere() ? Kind.ELSEWHERE : Kind.REFILL;
        }
        return Kind.CHANGE;
    }
}
