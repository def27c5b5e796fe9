package org.hearthway.pump.engine;

import java.time.Instant;
import java.time.LocalDate;

/** What can stand in a line of a {@link Derivation}: a quantity, a day or a moment. */
public sealed interface Shown permits Quantity, Shown.Day, Shown.Moment {

    /** A calendar day. */
    record Day(LocalDate date) implements Shown {}

    /** A moment; the local time is the screen's business. */
    record Moment(Instant instant) implements Shown {}
}
