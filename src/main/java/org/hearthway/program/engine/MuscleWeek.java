package org.hearthway.program.engine;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * What a week asks of each muscle group: rounds of work, and minutes of being stretched or held. An exercise for several
 * groups counts whole for each. What is done with one side after the other counts once: it is one round for each side's
 * muscle.
 */
public final class MuscleWeek {

    private MuscleWeek() {}

    /**
     * An exercise of the week.
     *
     * @param groups identifiers of its muscle groups
     * @param held whether it stretches or holds them rather than lets them work
     * @param prescription how much, on how many days
     * @param minutes of one day
     */
    public record Part(Set<String> groups, boolean held, Prescription prescription, int minutes) {
        public Part {
            groups = Set.copyOf(groups);
        }
    }

    /**
     * What one group has.
     *
     * @param rounds of work a week
     * @param minutes a week of being stretched or held, or of work that is told in minutes
     */
    public record Sum(int rounds, int minutes) {

        private Sum plus(Sum other) {
            return new Sum(rounds + other.rounds, minutes + other.minutes);
        }
    }

    /** The sums, by group; a group that nothing is for is not in it. */
    public static Map<String, Sum> of(Collection<Part> parts) {
        var sums = new LinkedHashMap<String, Sum>();
        for (var part : parts) {
            var dose = part.prescription().dose();
            var days = part.prescription().rhythm().days();
            var sum = part.held() || dose.minutes() > 0
                    ? new Sum(0, part.minutes() * days)
                    : new Sum(dose.sets() * dose.timesADay() * days, 0);
            part.groups().stream().sorted().forEach(group -> sums.merge(group, sum, Sum::plus));
        }
        return sums;
    }
}
