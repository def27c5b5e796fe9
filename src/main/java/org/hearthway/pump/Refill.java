package org.hearthway.pump;

import java.time.LocalDate;
import java.util.Optional;
import org.hearthway.pump.engine.RefillWindow;

/**
 * What may be told of a child's next refill.
 *
 * @param filled the last refill
 * @param window when the next one is due; empty while the last refill waits for its second check, and when neither our
 *     figures nor a print-out tell it
 * @param beingChecked whether the last refill waits for its second check
 */
public record Refill(LocalDate filled, Optional<RefillWindow> window, boolean beingChecked) {

    /** The last day of the window. */
    public Optional<LocalDate> day() {
        return window.map(RefillWindow::day);
    }
}
