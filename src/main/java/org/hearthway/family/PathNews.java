package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.parts.Tags;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.VisitWindow;

/**
 * What is new on a path: the plan as it is beside the one that the decisions of before would give today. So every stage
 * that moved is told, whichever was decided on, and what was taken back leaves nothing.
 *
 * @param reader for whom; the dates are compared in the words that this reader gets
 * @param since what is decided later is new
 * @param before the plans as they would be without what is new
 */
record PathNews(Reader reader, Instant since, List<Plan> before) {

    /** Where the news come from. */
    @org.springframework.stereotype.Component
    static class Source {

        private final FamilyPlans plans;
        private final LastSeen lastSeen;

        Source(FamilyPlans plans, LastSeen lastSeen) {
            this.plans = plans;
            this.lastSeen = lastSeen;
        }

        /** What is new to the person. */
        PathNews of(Reader reader) {
            var since = lastSeen.pointedOut(reader);
            var before = plans.asDecidedBy(reader, since);
            var seen = lastSeen.newSince(reader).filter(since::isBefore).stream()
                    .flatMap(later -> plans.asDecidedBy(reader, later).stream())
                    // a path that began in between is new as a whole, until the person has seen it
                    .filter(plan -> before.stream().noneMatch(old -> isSame(old, plan)));
            return new PathNews(
                    reader, since, Stream.concat(before.stream(), seen).toList());
        }
    }

    private Optional<Plan> before(Plan plan) {
        return before.stream().filter(old -> isSame(old, plan)).findFirst();
    }

    private static boolean isSame(Plan old, Plan plan) {
        return old.template().id().equals(plan.template().id());
    }

    /** When the stage was to be; empty when that did not change or it was on no plan. */
    Optional<String> was(Plan plan, Planned stage) {
        return before(plan)
                .flatMap(old -> old.stage(stage.point()))
                .map(old -> PathWords.when(reader, old, PathWords.lies(reader, stage)))
                .filter(words -> !words.equals(PathWords.when(reader, stage)));
    }

    /** Whether the stage came on a plan that was there before. */
    boolean isNew(Plan plan, Planned stage) {
        return before(plan).filter(old -> !isOn(old, stage)).isPresent();
    }

    /** The stages that left a plan which goes on. */
    List<String> gone(Plan plan) {
        return before(plan).filter(old -> plan.over().isEmpty()).map(Plan::next).orElse(List.of()).stream()
                .filter(stage -> !isOn(plan, stage))
                .map(stage -> reader.text(stage.stage().name()))
                .distinct()
                .toList();
    }

    private static boolean isOn(Plan plan, Planned stage) {
        return plan.stages().stream()
                .anyMatch(one -> one.stage().id().equals(stage.stage().id()));
    }

    /** Words that no longer hold: struck, and for who hears the page named as the old ones. */
    static Component struck(Reader reader, String words) {
        return Bits.el("s", "hw-was", Tags.span("hw-vh", reader.say("family.path.was") + " "), Tags.span("", words));
    }

    /** The days in which a visit without a day was to be, as before. */
    Optional<VisitWindow> was(VisitWindow window) {
        return windows().filter(old -> old.purpose().equals(window.purpose())).findFirst();
    }

    private Stream<VisitWindow> windows() {
        return before.stream().flatMap(plan -> plan.stages().stream()).flatMap(stage -> stage.visits().stream());
    }
}
