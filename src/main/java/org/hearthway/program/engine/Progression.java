package org.hearthway.program.engine;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A therapist's rule for more: "when 3×10 is done with effort under 5 on 4 days, go to 3×12". It proposes and never
 * changes: a therapist decides. Common practice, no source.
 *
 * @param days on how many reported days in a row, 1 to 28
 * @param effortUnder each with an effort below this, 1 to 10
 * @param painUnder and with a pain below this, 1 to 10
 * @param next what is proposed then
 * @param nextLoad against what
 */
public record Progression(int days, int effortUnder, int painUnder, Dose next, Load nextLoad) {

    private static final int MOST_DAYS = 28;
    private static final int MOST_RATED = 10;

    public Progression {
        if (days < 1 || days > MOST_DAYS) {
            throw new IllegalArgumentException("1 to 28 days");
        }
        if (effortUnder < 1 || effortUnder > MOST_RATED || painUnder < 1 || painUnder > MOST_RATED) {
            throw new IllegalArgumentException("1 to 10");
        }
    }

    /**
     * What was said of the exercise.
     *
     * @param day the day it was for
     * @param whole done as prescribed, not in part
     * @param effort 0 to 10, if it was rated
     * @param pain 0 to 10, if it was rated
     */
    public record Told(LocalDate day, boolean whole, Optional<Integer> effort, Optional<Integer> pain) {}

    /**
     * More is proposed.
     *
     * @param next the dose
     * @param load against what
     * @param days the days that carry it, in order
     */
    public record Proposal(Dose next, Load load, List<LocalDate> days) {
        public Proposal {
            days = List.copyOf(days);
        }
    }

    /**
     * A proposal, when the last reported days all keep the rule. A day in part, not done, without a rating of effort, too
     * hard or too sore begins the count anew; a day on which nothing was said is passed over. Pain that nobody rated
     * does not count against a day.
     *
     * @param told about this exercise, in any order
     * @param since the first day of the dose that is done now; what was told of an earlier dose does not count
     */
    public Optional<Proposal> propose(Collection<Told> told, LocalDate since) {
        var kept = new TreeMap<LocalDate, Boolean>(Comparator.reverseOrder());
        told.stream()
                .filter(one -> !one.day().isBefore(since))
                .forEach(one -> kept.merge(one.day(), keeps(one), Boolean::logicalAnd));
        var last = kept.entrySet().stream().limit(days).toList();
        if (last.size() < days || last.stream().anyMatch(day -> !day.getValue())) {
            return Optional.empty();
        }
        var carry = last.stream().map(java.util.Map.Entry::getKey).sorted().toList();
        return Optional.of(new Proposal(next, nextLoad, carry));
    }

    private boolean keeps(Told one) {
        return one.whole()
                && one.effort().filter(effort -> effort < effortUnder).isPresent()
                && one.pain().map(pain -> pain < painUnder).orElse(true);
    }
}
