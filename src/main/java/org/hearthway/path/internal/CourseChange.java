package org.hearthway.path.internal;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.Kind;
import org.hearthway.path.engine.Course;
import org.hearthway.path.engine.Course.Earlier;
import org.hearthway.path.engine.Course.Ended;
import org.hearthway.path.engine.Course.Given;
import org.hearthway.path.engine.Course.RuleAt;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Outcome;
import org.hearthway.path.internal.DecisionRecords.Row;

/** What one decision makes of a course. */
record CourseChange(Course course, Template template) {

    /** The course after a decision that was kept. */
    Course by(Row row) {
        if (row.kind() == Kind.CLOSED) {
            return course.closedOn(row.day().orElseThrow());
        }
        var stage = row.stage().orElseThrow();
        return switch (row.kind()) {
            case FIXED -> given(stage, Optional.of(new Given(row.day().orElseThrow(), Origin.ACTUAL)));
            case SET_BY_HAND -> given(stage, Optional.of(new Given(row.day().orElseThrow(), Origin.SET_BY_HAND)));
            case BACK_TO_RULE -> given(stage, Optional.empty());
            case ENDED -> ended(stage, row.outcome().orElseThrow(), row.day().orElseThrow());
            case ADDED -> onPlan(stage, true);
            case SKIPPED -> onPlan(stage, false);
            case OWN_RULE -> ruled(new RuleAt(stage, row.ruleAt().orElseThrow()), row.rule());
            case SHARED_RULE -> ruled(new RuleAt(stage, row.ruleAt().orElseThrow()), Optional.empty());
            case BEGUN, BESIDE, CLOSED, AWAY, UNDONE -> course;
        };
    }

    /** The course if a change were made. */
    Course by(Change change) {
        var stage = change.stage();
        if (change instanceof Change.Fix fix) {
            return given(stage, Optional.of(new Given(fix.day(), Origin.ACTUAL)));
        }
        if (change instanceof Change.SetByHand byHand) {
            return given(stage, Optional.of(new Given(byHand.day(), Origin.SET_BY_HAND)));
        }
        if (change instanceof Change.End end) {
            return ended(stage, end.outcome(), end.day());
        }
        if (change instanceof Change.OwnRule own) {
            return ruled(new RuleAt(stage, own.at()), Optional.of(own.rule()));
        }
        if (change instanceof Change.SharedRule shared) {
            return ruled(new RuleAt(stage, shared.at()), Optional.empty());
        }
        return change instanceof Change.ByRule
                ? given(stage, Optional.empty())
                : onPlan(stage, change instanceof Change.Add);
    }

    private Course given(String stage, Optional<Given> day) {
        var given = new HashMap<>(course.given());
        given.remove(stage);
        day.ifPresent(d -> given.put(stage, d));
        return course.withGiven(given);
    }

    private Course ended(String stage, String outcome, LocalDate day) {
        var back =
                template.stage(stage).flatMap(known -> known.outcome(outcome)).flatMap(Outcome::returnsTo);
        if (back.isPresent()) {
            return returned(back.get(), day);
        }
        var ended = new HashMap<>(course.ended());
        ended.put(stage, new Ended(outcome, day));
        return course.withEnded(ended);
    }

    /** The way goes back: what was said of that stage and of all behind it belongs to the round before. */
    private Course returned(String stage, LocalDate day) {
        var ids = template.stages().stream().map(Template.Stage::id).toList();
        var kept = Set.copyOf(ids.subList(0, ids.indexOf(stage)));
        var given = new HashMap<>(only(course.given(), kept));
        given.put(stage, new Given(day, Origin.ACTUAL));
        return course.withGiven(given)
                .withEarlier(earlier(kept, stage, day))
                .withEnded(only(course.ended(), kept))
                .withBefore(course.before().stream().filter(kept::contains).collect(Collectors.toSet()))
                .withStages(
                        course.added().stream().filter(kept::contains).collect(Collectors.toSet()),
                        course.skipped().stream().filter(kept::contains).collect(Collectors.toSet()));
    }

    /** Of each stage the last time that it began before the way went back. */
    private List<Earlier> earlier(Set<String> kept, String back, LocalDate day) {
        var begun = new LinkedHashMap<String, Earlier>();
        course.earlier().forEach(before -> begun.put(before.stage(), before));
        course.given().forEach((stage, date) -> {
            if (!kept.contains(stage) && !date.day().isAfter(day)) {
                begun.put(stage, new Earlier(stage, date.day(), back));
            }
        });
        return List.copyOf(begun.values());
    }

    private static <T> Map<String, T> only(Map<String, T> all, Set<String> kept) {
        return all.entrySet().stream()
                .filter(entry ->
                        kept.contains(List.of(entry.getKey().split("/")).get(0)))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private Course onPlan(String stage, boolean on) {
        var added = new HashSet<>(course.added());
        var skipped = new HashSet<>(course.skipped());
        (on ? added : skipped).add(stage);
        (on ? skipped : added).remove(stage);
        return course.withStages(added, skipped);
    }

    private Course ruled(RuleAt place, Optional<After> rule) {
        var gaps = new HashMap<>(course.gaps());
        gaps.remove(place);
        // the path may have another stage in that place since: the child's gaps count from where the path counts
        rule.flatMap(own -> inPlace(place, own)).ifPresent(own -> gaps.put(place, own));
        return course.withGaps(gaps);
    }

    private Optional<After> inPlace(RuleAt place, After own) {
        return template.stage(place.stage())
                .map(stage -> stage.timing().begins())
                .filter(rules -> place.at() < rules.size())
                .map(rules -> rules.get(place.at()))
                .map(rule -> new After(rule.stage(), rule.edge(), own.earliest(), own.usual(), own.latest()));
    }
}
