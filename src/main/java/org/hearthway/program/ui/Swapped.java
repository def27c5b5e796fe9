package org.hearthway.program.ui;

import java.util.Optional;
import java.util.function.ToIntFunction;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Span;
import org.hearthway.program.engine.UsualDose;

/** The dose of a variant that takes an exercise's place. */
final class Swapped {

    private Swapped() {}

    /**
     * The dose as it was where that is usual for the variant, and the nearest usual number where it is not. A number of
     * which nothing is said stays, but a hold that the variant has not goes. Times and minutes are not turned into each
     * other: then the variant's own dose stands.
     *
     * @param own the variant's own dose
     * @param usual what is usual of the variant at the child's age
     */
    static Dose dose(Dose was, Dose own, UsualDose usual) {
        if (was.minutes() > 0 != own.minutes() > 0) {
            return own;
        }
        var hold =
                usual.holdSeconds().isPresent() ? near(was, Dose::holdSeconds, usual.holdSeconds()) : own.holdSeconds();
        var timed = was.minutes() > 0;
        return new Dose(
                near(was, Dose::sets, usual.sets()),
                timed ? 0 : near(was, Dose::repetitions, usual.repetitions()),
                timed ? 0 : hold,
                timed ? near(was, Dose::minutes, usual.minutes()) : 0,
                near(was, Dose::timesADay, usual.timesADay()));
    }

    private static int near(Dose was, ToIntFunction<Dose> number, Optional<Span> usual) {
        var is = number.applyAsInt(was);
        return usual.map(span -> span.nearest(is)).orElse(is);
    }
}
