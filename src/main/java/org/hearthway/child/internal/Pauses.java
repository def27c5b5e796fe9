package org.hearthway.child.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.child.Standing;
import org.hearthway.child.Standings.Pause;
import org.jspecify.annotations.Nullable;

/** Works out the days on which nothing was asked of a family. */
final class Pauses {

    private Pauses() {}

    /**
     * The pauses, oldest first. The day on which a pause is said belongs to it, the day on which it ends does not.
     *
     * @param said everything that was said, oldest first
     * @param dayOf the clinic's day of an instant
     */
    static List<Pause> of(List<Standing> said, Function<Instant, LocalDate> dayOf) {
        var undone = new HashSet<Long>();
        said.forEach(standing -> standing.undoes().ifPresent(number -> {
            undone.add(number);
            undone.add(standing.number());
        }));
        var pauses = new ArrayList<Pause>();
        @Nullable LocalDate from = null;
        for (var standing : said) {
            if (undone.contains(standing.number())) {
                continue;
            }
            var day = dayOf.apply(standing.since());
            if (!standing.status().asksTheFamily() && from == null) {
                from = day;
            } else if (standing.status().asksTheFamily() && from != null) {
                pauses.add(new Pause(from, Optional.of(day)));
                from = null;
            }
        }
        if (from != null) {
            pauses.add(new Pause(from, Optional.empty()));
        }
        return List.copyOf(pauses);
    }
}
