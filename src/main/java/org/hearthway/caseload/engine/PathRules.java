package org.hearthway.caseload.engine;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthway.caseload.engine.OpenQuestions.Waits;
import org.hearthway.path.engine.Cause.NotYet;
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
    private final Progress progress;

    PathRules(RuleBook.OfPath bounds, Office office, Facts.OnPath path, LocalDate today) {
        this.bounds = bounds;
        this.office = office;
        this.path = path;
        this.today = today;
        stages = path.plan().stages();
        progress = new Progress(path);
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
        var waits = new OpenQuestions(progress, bounds.waitsDays(), today).waits();
        var late = late(waits);
        var unsure = Stream.of(
                        late.stream(),
                        waits.stream().map(Waits::front),
                        stages.stream().filter(this::isUndated))
                .flatMap(all -> all)
                .toList();
        var visits = path.unbooked().stream()
                .filter(visit ->
                        isNear(visit) && !otherKinds.contains(visit.window().kind()))
                .filter(visit -> path.plan()
                        .stage(visit.point())
                        .filter(stage -> !countsFromAny(stage, unsure))
                        .isPresent())
                .map(this::visit);
        return Stream.of(
                        waits.stream().map(this::waits),
                        noDay(late),
                        late.stream().map(this::late),
                        visits)
                .flatMap(all -> all)
                .toList();
    }

    /** Its day is for the clinic to name and nobody has: what the plan has instead slips on with today. */
    private boolean isUndated(Planned stage) {
        return stage.stage().timing().signal()
                && stage.why().origin() == Origin.RULE
                && stage.start().isAfter(today);
    }

    /**
     * The one stage that is asked about: a stage that waits for another, or counts from one that is late, is not told on
     * its own, and what is said of the last one answers for those before it.
     */
    private List<Planned> late(List<Waits> waits) {
        var late = stages.stream()
                .filter(this::isLate)
                .filter(stage -> waits.stream()
                        .noneMatch(w -> w.front().equals(stage)
                                || progress.behind(w.front()).contains(stage)))
                .toList();
        return late.stream()
                .filter(stage -> !countsFromAny(
                        stage,
                        late.stream().filter(other -> !other.equals(stage)).toList()))
                .reduce((first, second) -> second)
                .stream()
                .toList();
    }

    /** Only what somebody has to say, or what a visit would have shown; the rest follows by itself. */
    private boolean isLate(Planned stage) {
        boolean shows = stage.stage().timing().signal()
                || (stage.stage().outcomes().size() > 1 && !OpenQuestions.lastsUntil(stage))
                || path.unbooked().stream()
                        .anyMatch(visit -> visit.point().equals(stage.point())
                                && !visit.window().from().isBefore(stage.start())
                                && visit.window().until().isBefore(today));
        return shows
                && stage.round() == 1
                && stage.why().origin() == Origin.RULE
                && stage.latest().filter(today::isAfter).isPresent()
                && isFreeToBegin(stage)
                && !path.booked().contains(stage.stage().id())
                && !progress.hasBeen(progress.fromHereOn(stage));
    }

    /** That a stage has not begun yet is what clashes with its last day; any other clash is told as one. */
    private static boolean isFreeToBegin(Planned stage) {
        return stage.clash()
                .map(clash -> clash.causes().stream()
                        .anyMatch(rule -> rule instanceof NotYet
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
                        stage -> stage.stage().id(), stage -> stage, (first, again) -> first, TreeMap::new))
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
                                || (stage.point().equals(visit.point())
                                        && (stage.said() == Said.ENDED || stage.said() == Said.DONE_BEFORE)));
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
