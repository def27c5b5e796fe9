package org.hearthway.caseload.engine;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.Said;

/**
 * Finds what one path of a child waits for. Each trouble is told once, where it begins: nothing is said of a stage that
 * counts from one that is told already, and nothing of the visits of a stage that did not begin.
 */
final class PathRules {

    private final RuleBook.OfPath bounds;
    private final Office office;
    private final Facts.OnPath path;
    private final LocalDate today;
    private final List<Planned> stages;

    PathRules(RuleBook.OfPath bounds, Office office, Facts.OnPath path, LocalDate today) {
        this.bounds = bounds;
        this.office = office;
        this.path = path;
        this.today = today;
        stages = path.plan().stages();
    }

    /**
     * The causes that stand today.
     *
     * @param otherKinds kinds of visit that another rule asks for already
     */
    List<Cause> causes(Set<String> otherKinds) {
        if (path.plan().over().isPresent()) {
            return List.of();
        }
        var waits = stages.stream().flatMap(front -> waits(front).stream()).toList();
        var late = late(waits);
        var unsure = Stream.of(late.stream(), waits.stream().map(Waits::front), stages.stream().filter(this::isUndated))
                .flatMap(all -> all)
                .toList();
        var visits = path.unbooked().stream()
                .filter(visit -> isNear(visit) && !otherKinds.contains(visit.window().kind()))
                .filter(visit -> path.plan()
                        .stage(visit.point())
                        .filter(stage -> !countsFromAny(stage, unsure))
                        .isPresent())
                .map(this::visit);
        return Stream.of(waits.stream().map(this::waits), noDay(late), late.stream().map(this::late), visits)
                .flatMap(all -> all)
                .toList();
    }

    /** Its day is for the clinic to name and nobody has: what the plan has instead slips on with today. */
    private boolean isUndated(Planned stage) {
        return stage.stage().timing().signal()
                && stage.why().origin() == Origin.RULE
                && stage.start().isAfter(today);
    }

    /** A stage that has not ended, and the one that it keeps waiting. */
    private record Waits(Planned front, Planned behind) {}

    /**
     * A stage with several ways to end is a question; nothing behind it is sure before it is answered. A day that
     * people named is looked at ahead of time; one that only a rule gives, when the answer is overdue.
     */
    private Optional<Waits> waits(Planned front) {
        boolean open = front.stage().outcomes().size() > 1
                && front.round() == 1
                && front.clash().isEmpty()
                && !front.start().isAfter(today)
                && front.said() != Said.ENDED
                && !hasBeen(behind(front));
        if (!open) {
            return Optional.empty();
        }
        boolean overdue = usualEnd(front).isBefore(today);
        var near = behind(front).stream()
                .filter(stage -> stage.round() == 1
                        && !stage.start().isAfter(today.plusDays(bounds.waitsDays()))
                        && !stage.start().isBefore(front.start()))
                .toList();
        var named = near.stream()
                .filter(stage -> stage.why().origin() != Origin.RULE)
                .filter(stage -> overdue || !front.end().isBefore(stage.start()) || isUnbounded(front))
                .findFirst();
        return named.or(() -> near.stream().filter(stage -> overdue).findFirst())
                .map(behind -> new Waits(front, behind));
    }

    private static boolean isUnbounded(Planned stage) {
        var timing = stage.stage().timing();
        return timing.until().isEmpty() && timing.lasts().most().isEmpty();
    }

    /** The day on which a stage usually ends; the plan itself puts the end of an open question off from day to day. */
    private static LocalDate usualEnd(Planned stage) {
        var timing = stage.stage().timing();
        return timing.until().isPresent()
                ? stage.end()
                : stage.start().plus(timing.lasts().usual());
    }

    private List<Planned> behind(Planned stage) {
        return stages.subList(stages.indexOf(stage) + 1, stages.size());
    }

    private boolean hasBeen(List<Planned> any) {
        return any.stream().anyMatch(stage -> stage.said() != Said.NOTHING || wasSeen(stage));
    }

    private boolean wasSeen(Planned stage) {
        return Optional.ofNullable(path.seen().get(stage.stage().id()))
                .filter(day -> !day.isBefore(stage.earliest()))
                .isPresent();
    }

    /** Where it begins: a stage that waits for another, or counts from one that is late, is not told on its own. */
    private List<Planned> late(List<Waits> waits) {
        var late = stages.stream()
                .filter(this::isLate)
                .filter(stage -> waits.stream()
                        .noneMatch(w -> w.front().equals(stage) || behind(w.front()).contains(stage)))
                .toList();
        return late.stream()
                .filter(stage -> !countsFromAny(
                        stage, late.stream().filter(other -> !other.equals(stage)).toList()))
                .toList();
    }

    /** Only what somebody has to say, or what a visit would show; the rest follows by itself. */
    private boolean isLate(Planned stage) {
        boolean shows = stage.stage().timing().signal()
                || stage.stage().outcomes().size() > 1
                || !stage.stage().visits().isEmpty();
        return shows
                && stage.round() == 1
                && stage.why().origin() == Origin.RULE
                && stage.latest().filter(today::isAfter).isPresent()
                && isFreeToBegin(stage)
                && !path.booked().contains(stage.stage().id())
                && !path.plan().hasBeen(stage)
                && !wasSeen(stage)
                && !hasBeen(behind(stage).stream()
                        .filter(later -> !later.start().isBefore(stage.start()))
                        .toList());
    }

    /** That a stage has not begun yet is what clashes with its last day; any other clash is told as one. */
    private static boolean isFreeToBegin(Planned stage) {
        return stage.clash()
                .map(clash -> clash.causes().stream()
                        .anyMatch(rule -> rule instanceof org.hearthway.path.engine.Cause.NotYet
                                && rule.stage().id().equals(stage.stage().id())))
                .orElse(true);
    }

    private boolean countsFromAny(Planned stage, List<Planned> others) {
        return others.stream().anyMatch(other -> countsFrom(stage, other));
    }

    private boolean countsFrom(Planned stage, Planned other) {
        return stage.stage().id().equals(other.stage().id())
                || stage.why()
                        .from()
                        .flatMap(from -> path.plan().stage(from.id()))
                        .filter(from -> countsFrom(from, other))
                        .isPresent();
    }

    private Stream<Cause> noDay(List<Planned> late) {
        return stages.stream()
                .filter(stage -> stage.clash().isPresent() && !countsFromAny(stage, late))
                .collect(Collectors.toMap(
                        stage -> stage.stage().id(), stage -> stage, (first, again) -> first, java.util.TreeMap::new))
                .values()
                .stream()
                .map(stage -> cause(Rule.STAGE_NO_DAY, stage.point(), name(stage), today, today));
    }

    private Cause waits(Waits waits) {
        var behind = waits.behind();
        boolean named = behind.why().origin() != Origin.RULE;
        // a day that slips on with the answer is the same trouble
        var key = waits.front().point() + "/" + waits.front().start() + "/" + behind.point()
                + (named ? "/" + behind.start() : "");
        return cause(
                Rule.STAGE_WAITS,
                key,
                name(waits.front()) + "/" + behind.point(),
                named ? behind.start() : later(today, behind.start()),
                behind.start());
    }

    private Cause late(Planned stage) {
        var latest = stage.latest().orElseThrow();
        return cause(
                Rule.STAGE_LATE,
                stage.point() + "/" + latest,
                name(stage),
                office.openDay(latest.plusDays(1), 0),
                latest);
    }

    private boolean isNear(Facts.Unbooked visit) {
        var until = visit.window().until();
        return !today.plusDays(bounds.visitDays()).isBefore(until)
                && !today.isAfter(until.plusDays(bounds.visitPastDays()))
                && !(until.isBefore(today) && isSettled(visit, until));
    }

    /** A window that is past says nothing once its stage ended, or the child was seen for what came later. */
    private boolean isSettled(Facts.Unbooked visit, LocalDate until) {
        return path.seen().values().stream().anyMatch(until::isBefore)
                || stages.stream()
                        .filter(stage -> stage.said() != Said.NOTHING)
                        .anyMatch(stage -> stage.start().isAfter(until)
                                || (stage.point().equals(visit.point()) && stage.said() == Said.ENDED));
    }

    private Cause visit(Facts.Unbooked visit) {
        var purpose = visit.window().purpose();
        var until = visit.window().until();
        return cause(Rule.STAGE_VISIT, purpose, purpose, later(today, until), until);
    }

    private Cause cause(Rule rule, String key, String subject, LocalDate due, LocalDate day) {
        var path = this.path.plan().template().id();
        var whole = rule == Rule.STAGE_VISIT ? key : path + "/" + key;
        return new Cause(rule, rule.name() + "/" + whole, due, Optional.empty(), day, 0, subject, Optional.empty());
    }

    private String name(Planned stage) {
        return path.plan().template().id() + "/" + stage.point();
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }
}
