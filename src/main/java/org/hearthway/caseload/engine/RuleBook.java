package org.hearthway.caseload.engine;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import org.hearthway.base.Role;

/**
 * The clinic's bounds, from {@code content/needs}.
 *
 * @param figures the numbers of the rules about the home program, all of them
 * @param refillDays days before the refill-by date from which a missing visit needs a look
 * @param checkDays days before a check of hips or spine from which a missing visit needs a look
 * @param generatorDays days before a generator is to be read or a new one planned from which a missing visit needs a look
 * @param missedInARow visits of one kind, that must not be missed, missed in a row that need a look
 * @param taskDays days past its day from which a task of the team needs a look, at least 1
 * @param familyTaskDays the same for a task of the family
 * @param path the bounds for what a path asks for
 * @param reportWithin time in which a report with a clock should be read
 * @param openDays for the others, how many open days after the working day at hand a look is due
 * @param reportOpenDays the same for reports without a clock
 * @param conduct how each rule's items may be worked
 */
public record RuleBook(
        Map<Figure, Integer> figures,
        int refillDays,
        int checkDays,
        int generatorDays,
        int missedInARow,
        int taskDays,
        int familyTaskDays,
        OfPath path,
        Map<Urgency, Duration> reportWithin,
        Map<Urgency, Integer> reportOpenDays,
        Map<Rule, Integer> openDays,
        Map<Rule, Conduct> conduct) {

    public RuleBook {
        figures = Map.copyOf(figures);
        reportWithin = Map.copyOf(reportWithin);
        reportOpenDays = Map.copyOf(reportOpenDays);
        openDays = Map.copyOf(openDays);
        conduct = Map.copyOf(conduct);
    }

    /**
     * When what a child's path asks for needs a look.
     *
     * @param waitsDays days before a stage from which what must end before it and has not needs a look
     * @param visitDays days before the end of a visit's window from which a missing visit needs a look
     * @param visitPastDays days after the end of the window until which it is still asked for
     */
    public record OfPath(int waitsDays, int visitDays, int visitPastDays) {}

    /**
     * How items of a rule may be worked.
     *
     * @param with the role that usually takes it up
     * @param asideDays how many days ahead it may be set aside at most; 0 when it may not
     * @param outcomeCloses whether an outcome closes it; if not, only the end of its cause does
     */
    public record Conduct(Role with, int asideDays, boolean outcomeCloses) {}

    /** A number of a rule about the home program. */
    public int figure(Figure figure) {
        var number = figures.get(figure);
        if (number == null) {
            throw new IllegalStateException("no number for " + figure);
        }
        return number;
    }

    /** The same with other numbers, for those that a clinic has set for itself. */
    public RuleBook with(Map<Figure, Integer> own) {
        var all = new HashMap<>(figures);
        all.putAll(own);
        return new RuleBook(
                all,
                refillDays,
                checkDays,
                generatorDays,
                missedInARow,
                taskDays,
                familyTaskDays,
                path,
                reportWithin,
                reportOpenDays,
                openDays,
                conduct);
    }

    /** How items of this rule may be worked. */
    public Conduct conduct(Rule rule) {
        var found = conduct.get(rule);
        if (found == null) {
            throw new IllegalStateException("no conduct for " + rule);
        }
        return found;
    }
}
