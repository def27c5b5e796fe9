package org.hearthway.pump;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * What is written of a refill for the chart; nothing is reckoned with it.
 *
 * @param drug as the label of the vial names it, at most 120 characters
 * @param lot at most 60 characters
 * @param expires the day on the label
 * @param look of what was drawn out, at most 200 characters
 * @param attempts how often the port was sought, 1 to 20; 0 when nobody knows
 * @param watched from when until when the child was watched afterwards
 * @param readAgain whether the pump was read again after it was programmed
 * @param doneBy who did it, at most 120 characters; of a refill elsewhere, where and by whom
 * @param note at most 500 characters
 */
public record RefillDetails(
        String drug,
        String lot,
        Optional<LocalDate> expires,
        String look,
        int attempts,
        Optional<Watch> watched,
        boolean readAgain,
        String doneBy,
        String note) {

    /** From when until when a child was watched, by the clinic's clock. */
    public record Watch(LocalDateTime from, LocalDateTime until) {}

    /** Nothing is known. */
    public static final RefillDetails NONE =
            new RefillDetails("", "", Optional.empty(), "", 0, Optional.empty(), false, "", "");
}
