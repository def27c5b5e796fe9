package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.time.LocalTime;

/**
 * An exercise in one of the family's times.
 *
 * @param exercise identifier
 * @param day weekday
 * @param start when that time begins
 */
public record Placed(String exercise, DayOfWeek day, LocalTime start) {

    /** The same exercise in another time. */
    Placed to(FamilyWeek.Slot slot) {
        return new Placed(exercise, slot.day(), slot.start());
    }
}
