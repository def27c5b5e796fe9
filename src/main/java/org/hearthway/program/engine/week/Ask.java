package org.hearthway.program.engine.week;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.hearthway.program.engine.Priority;
import org.hearthway.program.engine.Rhythm;

/**
 * What an exercise asks of a week.
 *
 * @param exercise identifier; no two of one week alike
 * @param priority how much it matters, as the therapist says
 * @param minutes of one time, 1 to 240
 * @param timesADay 1 to 6, each in a time of its own
 * @param rhythm how many days, and how they lie
 * @param days the weekdays it may be on, at least one
 * @param muscles the groups that it makes stronger, which rest on the day after; empty when it is no strength work
 * @param phase its place within a time
 * @param equipment what is fetched for it; empty when nothing is
 * @param helpers whose hands it needs, any one of them; empty when nobody's
 */
public record Ask(
        String exercise,
        Priority priority,
        int minutes,
        int timesADay,
        Rhythm rhythm,
        Set<DayOfWeek> days,
        Set<String> muscles,
        Phase phase,
        String equipment,
        Set<String> helpers) {

    private static final int LONGEST = 240;
    private static final int MOST_TIMES = 6;

    public Ask {
        if (minutes < 1 || minutes > LONGEST || timesADay < 1 || timesADay > MOST_TIMES || days.isEmpty()) {
            throw new IllegalArgumentException("1 to 240 minutes, 1 to 6 times, on at least one day");
        }
        days = Collections.unmodifiableSet(EnumSet.copyOf(days));
        muscles = Set.copyOf(muscles);
        helpers = Set.copyOf(helpers);
    }

    /** Order within a time: what warms up comes first, stretching after strength. Common practice, no source. */
    public enum Phase {
        WARM_UP(0),
        SKILL(1),
        STRENGTH(2),
        STRETCH(3),
        POSITION(4);

        private final int rank;

        Phase(int rank) {
            this.rank = rank;
        }

        /** Its number, what comes first is 0. */
        int rank() {
            return rank;
        }
    }

    /** Minutes asked for in the whole week. */
    public int minutesAWeek() {
        return minutes * timesADay * rhythm.days();
    }

    /** Whether the days lie as they should: by the rhythm, and for strength never one after the other. */
    boolean allows(Set<DayOfWeek> chosen) {
        return days.containsAll(chosen) && rhythm.allows(chosen) && (muscles.isEmpty() || !Rhythm.touch(chosen));
    }

    /** Whether somebody is there in this time whose hands it needs. */
    boolean isHelpedIn(FamilyWeek.Slot slot) {
        return helpers.isEmpty() || helpers.stream().anyMatch(slot.helpers()::contains);
    }

    /** Whether it could be done in this time if nothing else were. */
    boolean fits(FamilyWeek.Slot slot) {
        return days.contains(slot.day()) && minutes <= slot.minutes() && isHelpedIn(slot);
    }
}
