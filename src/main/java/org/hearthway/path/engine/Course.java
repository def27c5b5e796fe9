package org.hearthway.path.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.path.engine.network.Span;

/**
 * What people have said about one child's way along a path.
 *
 * @param begun the day the path begins
 * @param given dates by stage, {@code stage/2} for the second time of one that repeats; what is not there follows its
 *     rule
 * @param ended how stages ended
 * @param added optional stages that somebody put on the plan
 * @param skipped stages that somebody took from it
 * @param gaps rules of this child's own, in the place of the path's
 * @param away days on which the family cannot come
 * @param closed the day on which the team ended the path, if it did
 * @param before stages that were done before the path began here, elsewhere or in this clinic; on the plan where a day of
 *     them is known
 * @param earlier stages that had begun before the way went back: what they forbid goes on holding
 */
public record Course(
        LocalDate begun,
        Map<String, Given> given,
        Map<String, Ended> ended,
        Set<String> added,
        Set<String> skipped,
        Map<RuleAt, Template.After> gaps,
        List<Span> away,
        Optional<LocalDate> closed,
        Set<String> before,
        List<Earlier> earlier) {

    public Course {
        given = Map.copyOf(given);
        ended = Map.copyOf(ended);
        added = Set.copyOf(added);
        skipped = Set.copyOf(skipped);
        gaps = Map.copyOf(gaps);
        away = List.copyOf(away);
        before = Set.copyOf(before);
        earlier = List.copyOf(earlier);
    }

    /** A path that begins on a day, and nothing more was said. */
    public static Course begun(LocalDate day) {
        return new Course(
                day,
                Map.of(),
                Map.of(),
                Set.of(),
                Set.of(),
                Map.of(),
                List.of(),
                Optional.empty(),
                Set.of(),
                List.of());
    }

    /** The same with other dates given. */
    public Course withGiven(Map<String, Given> dates) {
        return new Course(begun, dates, ended, added, skipped, gaps, away, closed, before, earlier);
    }

    /** The same with stages ended otherwise. */
    public Course withEnded(Map<String, Ended> ends) {
        return new Course(begun, given, ends, added, skipped, gaps, away, closed, before, earlier);
    }

    /** The same with other stages put on the plan and taken from it. */
    public Course withStages(Set<String> on, Set<String> off) {
        return new Course(begun, given, ended, on, off, gaps, away, closed, before, earlier);
    }

    /** The same with other rules of the child's own. */
    public Course withGaps(Map<RuleAt, Template.After> rules) {
        return new Course(begun, given, ended, added, skipped, rules, away, closed, before, earlier);
    }

    /** The same with other days on which the family cannot come. */
    public Course withAway(List<Span> days) {
        return new Course(begun, given, ended, added, skipped, gaps, days, closed, before, earlier);
    }

    /** The same with other stages of earlier rounds. */
    public Course withEarlier(List<Earlier> stages) {
        return new Course(begun, given, ended, added, skipped, gaps, away, closed, before, stages);
    }

    /** The same with other stages that were done before the path began here. */
    public Course withBefore(Set<String> stages) {
        return new Course(begun, given, ended, added, skipped, gaps, away, closed, stages, earlier);
    }

    /** The same, ended by the team on a day. */
    public Course closedOn(LocalDate day) {
        return new Course(begun, given, ended, added, skipped, gaps, away, Optional.of(day), before, earlier);
    }

    /**
     * The same without what the team chose for this child alone: what happened stays.
     *
     * @param first the course as it was when the path was begun
     */
    public Course asItHappened(Course first) {
        var happened = given.entrySet().stream()
                .filter(date -> date.getValue().origin() == Plan.Origin.ACTUAL)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return new Course(
                begun, happened, ended, first.added, first.skipped, Map.of(), List.of(), closed, before, earlier);
    }

    /** The date a person gave to a stage, if any. */
    public Optional<Given> given(Template.Stage stage) {
        return Optional.ofNullable(given.get(stage.id()));
    }

    /** How a stage ended, if it was said. */
    public Optional<Ended> ended(Template.Stage stage) {
        return Optional.ofNullable(ended.get(stage.id()));
    }

    /** Whether a stage was done before the path began here and nobody said when, or put it on the plan all the same. */
    public boolean isBeforeWithoutDay(Template.Stage stage) {
        return before.contains(stage.id())
                && given(stage).isEmpty()
                && ended(stage).isEmpty()
                && !added.contains(stage.id());
    }

    /** A stage's rules, with the child's own in their places. */
    List<Template.After> rules(Template.Stage stage) {
        var rules = new ArrayList<Template.After>();
        for (int at = 0; at < stage.timing().begins().size(); at++) {
            rules.add(gaps.getOrDefault(
                    new RuleAt(stage.id(), at), stage.timing().begins().get(at)));
        }
        return rules;
    }

    /** Whether a rule of a stage is the child's own. */
    boolean isOwn(Template.Stage stage, Template.After rule) {
        return gaps.entrySet().stream()
                .anyMatch(own -> own.getKey().stage().equals(stage.id())
                        && own.getValue().equals(rule));
    }

    /** A rule's place: the stage, and which of its rules, from 0. */
    public record RuleAt(String stage, int at) {}

    /**
     * A stage's first day as a person gave it.
     *
     * @param day the day; stands whatever the rule says
     * @param origin {@code ACTUAL} or {@code SET_BY_HAND}
     */
    public record Given(LocalDate day, Plan.Origin origin) {

        public Given {
            if (origin == Plan.Origin.RULE) {
                throw new IllegalArgumentException("a rule gives its dates itself");
            }
        }
    }

    /** How a stage ended, by the outcome's identifier, and its last day. */
    public record Ended(String outcome, LocalDate day) {}

    /**
     * A stage of a round before.
     *
     * @param stage which
     * @param day on which it began
     * @param back the stage to which the way went back since
     */
    public record Earlier(String stage, LocalDate day, String back) {}
}
