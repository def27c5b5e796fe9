package org.hearthway.caseload.engine;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.Said;

/**
 * Finds the questions of a path that keep a stage waiting: an approval, a consent, a trial. A stage with several ways to
 * end is a question; nothing that counts from it is sure before somebody has said how it ended.
 *
 * @param progress how far the path has come
 * @param days how many days before a stage whose day people named its questions are looked at
 * @param today the clinic's day
 */
record OpenQuestions(Progress progress, int days, LocalDate today) {

    /** A stage that has not ended, and the one that it keeps waiting. */
    record Waits(Planned front, Planned behind) {}

    /** In the order of the path; the answer to a later question answers the one that it came from. */
    List<Waits> waits() {
        var open = progress.stages().stream()
                .flatMap(front -> waits(front).stream())
                .toList();
        return open.stream()
                .filter(one -> open.stream()
                        .noneMatch(other -> progress.countingFrom(one.front()).contains(other.front())))
                .toList();
    }

    private Optional<Waits> waits(Planned front) {
        boolean open = front.stage().outcomes().size() > 1
                && front.round() == 1
                && front.clash().isEmpty()
                && !front.start().isAfter(today)
                && front.said() != Said.ENDED
                && front.said() != Said.DONE_BEFORE;
        if (!open) {
            return Optional.empty();
        }
        var waiting = progress.countingFrom(front);
        var near = waiting.stream()
                .filter(stage -> !stage.start().isAfter(today.plusDays(days)))
                .toList();
        return named(front, waiting, near).or(() -> byRule(front, near)).map(behind -> new Waits(front, behind));
    }

    /** A day that people named is looked at ahead of time, when the answer is overdue or may come too late. */
    private Optional<Planned> named(Planned front, List<Planned> waiting, List<Planned> near) {
        return near.stream()
                .filter(stage -> stage.why().origin() != Origin.RULE && !progress.hasBeen(waiting))
                .filter(stage -> isOverdue(front) || !front.end().isBefore(stage.start()) || isUnbounded(front))
                .findFirst();
    }

    /** A day that only a rule gives, once the answer is overdue; what the next stage ends, the plan expects to go well. */
    private Optional<Planned> byRule(Planned front, List<Planned> near) {
        return isOverdue(front) && !lastsUntil(front) && !progress.hasBeen(progress.behind(front))
                ? near.stream().findFirst()
                : Optional.empty();
    }

    /** Past the day on which it usually ends; the plan itself puts the end of an open question off from day to day. */
    private boolean isOverdue(Planned stage) {
        var end = lastsUntil(stage)
                ? stage.end()
                : stage.start().plus(stage.stage().timing().lasts().usual());
        return end.isBefore(today);
    }

    /** Whether another stage's first day ends it. */
    static boolean lastsUntil(Planned stage) {
        return stage.stage().timing().until().isPresent();
    }

    private static boolean isUnbounded(Planned stage) {
        return !lastsUntil(stage) && stage.stage().timing().lasts().most().isEmpty();
    }
}
