package org.hearthway.testing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpBook.Again;
import org.hearthway.pump.PumpBook.NewEntry;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Change;
import org.hearthway.pump.PumpEntry.Refill;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.engine.Dosing;

/** Writes into the books of pumps, for tests that are about something else. */
public final class PumpBooks {

    private static final int MARGIN = 5;
    private static final int DAYS_TO_ALARM = 112;
    private static final int AN_HOUR_IN_THE_MORNING = 8;

    private PumpBooks() {}

    /** A refill of which the alarm date of the print-out is known, and nothing else; it waits for its second check. */
    public static PumpEntry refill(
            PumpBook book, Viewer first, ChildId child, LocalDate filled, LocalDate alarm, String note) {
        var details =
                new RefillDetails("", "", Optional.empty(), "", 0, Optional.empty(), false, "another clinic", note);
        return write(
                book,
                first,
                child,
                filled,
                new Refill(
                        true,
                        details,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(alarm),
                        MARGIN));
    }

    /** The same, checked by a second person. */
    public static void refilled(
            PumpBook book, Viewer first, Viewer second, ChildId child, LocalDate filled, LocalDate alarm) {
        check(book, second, child, refill(book, first, child, filled, alarm, ""));
    }

    /** Strength and a constant dose from a day on; it waits for its second check. */
    public static PumpEntry set(
            PumpBook book, Viewer first, ChildId child, String strength, String dose, LocalDate on) {
        var set = new Setting(
                new Concentration(new BigDecimal(strength)), Dosing.constant(new DailyDose(new BigDecimal(dose))));
        return write(
                book,
                first,
                child,
                on,
                new Change(set, "as the print-out says", Optional.of(on.plusDays(DAYS_TO_ALARM))));
    }

    private static PumpEntry write(PumpBook book, Viewer first, ChildId child, LocalDate on, PumpEntry.What what) {
        return book.enter(
                first,
                child,
                new NewEntry(morning(on), what, Optional.empty(), false, "nothing else is known"),
                book.history(first, child).size());
    }

    /** Types the same figures again. */
    public static void check(PumpBook book, Viewer second, ChildId child, PumpEntry entry) {
        book.check(second, child, entry.number(), again(entry));
    }

    /** What a second person types who reads the same. */
    public static Again again(PumpEntry entry) {
        return new Again(entry.what().keyFigures(), entry.what().setting().map(Setting::dosing));
    }

    /** Early on a day, so that it is never in the future. */
    public static LocalDateTime morning(LocalDate day) {
        return day.atTime(AN_HOUR_IN_THE_MORNING, 0);
    }
}
