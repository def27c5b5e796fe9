package org.hearthway.caseload.ui;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs.Handed;
import org.hearthway.caseload.Needs.Item;
import org.hearthway.caseload.Needs.Turn;
import org.hearthway.caseload.engine.Rule;

/** Which items are shown. */
enum Show {
    EVERYONE,
    MINE,
    SIGNS,
    PUMP,
    STIMULATOR,
    PROGRAMS,
    PATHS,
    TASKS,
    ASIDE,
    LEFT;

    /** As it stands in an address. */
    String inAddress() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Show of(Optional<String> inAddress) {
        return Arrays.stream(values())
                .filter(show -> inAddress.filter(show.inAddress()::equals).isPresent())
                .findFirst()
                .orElse(EVERYONE);
    }

    /** Whether an open item is shown; what is set aside is shown only there. */
    boolean shows(Item item, Viewer.Person viewer) {
        var rule = item.cause().rule();
        var up = item.aside().isEmpty();
        return switch (this) {
            case EVERYONE -> up;
            case MINE ->
                up
                        && item.owner()
                                .or(() -> item.handed().flatMap(Handed::at).map(Turn::with))
                                .filter(holder -> holder.account().equals(viewer.account()))
                                .isPresent();
            case SIGNS -> up && rule == Rule.SIGN;
            case PUMP ->
                up
                        && (rule == Rule.REFILL
                                || rule == Rule.FIRST_FILL
                                || rule == Rule.PUMP_CONCERN
                                || SecondCheckWords.isOfPump(item));
            case STIMULATOR ->
                up && (rule == Rule.GENERATOR || rule == Rule.DEVICE_WARNING || SecondCheckWords.isOfStimulator(item));
            case PROGRAMS ->
                up && (rule == Rule.PAIN || rule == Rule.MORE || rule == Rule.CARE_TURN || rule.isOfHomeRecord());
            case PATHS -> up && (rule.isOfPath() || rule == Rule.DEVICE_BEHIND);
            case ASIDE -> !up;
            // the person's own list stands there, late or not
            case TASKS, LEFT -> false;
        };
    }
}
