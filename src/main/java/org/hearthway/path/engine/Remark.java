package org.hearthway.path.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;

/**
 * One advice held against one child. All of a path's advice is told, in the order of its file, and nothing is counted
 * or ranked.
 *
 * @param advice the advice
 * @param answer how the child stands to it
 * @param own the child's age in completed years or GMFCS level; empty when unknown or when the team has to judge
 * @param on the day on which the age counts, if the advice is about age
 * @param at the stage that begins on that day; empty when it is not on the plan and today counts
 */
public record Remark(
        Advice advice, Answer answer, Optional<Integer> own, Optional<LocalDate> on, Optional<Template.Stage> at) {

    /** How a child stands to an advice. */
    public enum Answer {
        /** Within what the source calls usual. */
        USUAL,
        /** Outside of it: a reason to talk, not a no. */
        OUTSIDE,
        /** What the advice asks about was not recorded. */
        NOT_RECORDED,
        /** No record answers it; the team judges. */
        TEAM_JUDGES
    }

    /**
     * Holds the advice of a plan's path against a child.
     *
     * @param plan the plan, which says when the stage comes whose day counts
     * @param born birth date
     * @param level GMFCS level, 1 to 5, if recorded
     */
    public static List<Remark> on(Plan plan, LocalDate born, Optional<Integer> level) {
        return plan.template().advice().stream()
                .map(advice -> of(advice, plan, born, level))
                .toList();
    }

    private static Remark of(Advice advice, Plan plan, LocalDate born, Optional<Integer> level) {
        if (advice.ages().isPresent()) {
            return age(advice, advice.ages().get(), plan, born);
        }
        if (advice.levels().isEmpty()) {
            return new Remark(advice, Answer.TEAM_JUDGES, Optional.empty(), Optional.empty(), Optional.empty());
        }
        var answer = level.map(own -> advice.levels().contains(own) ? Answer.USUAL : Answer.OUTSIDE)
                .orElse(Answer.NOT_RECORDED);
        return new Remark(advice, answer, level, Optional.empty(), Optional.empty());
    }

    private static Remark age(Advice advice, Advice.Ages ages, Plan plan, LocalDate born) {
        var stage = plan.stage(ages.stage());
        var day = stage.map(Plan.Planned::start).orElse(plan.today());
        var years = Period.between(born, day).getYears();
        var answer = ages.include(years) ? Answer.USUAL : Answer.OUTSIDE;
        return new Remark(advice, answer, Optional.of(years), Optional.of(day), stage.map(Plan.Planned::stage));
    }
}
