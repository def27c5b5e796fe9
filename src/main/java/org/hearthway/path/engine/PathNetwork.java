package org.hearthway.path.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.network.Condition;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Network;
import org.hearthway.path.engine.network.Point;
import org.hearthway.path.engine.network.Span;

/** Turns a child's stages into points and their rules into conditions, and keeps which condition is which rule. */
final class PathNetwork {

    /** The day on which the path begins. */
    static final String BEGUN = " begun";

    private final List<Stage> stages;
    private final Course course;
    private final Calendar calendar;
    private final LocalDate today;
    private final Span horizon;
    private final Optional<Days> notAway;
    private final List<Point> points = new ArrayList<>();
    private final List<Condition> conditions = new ArrayList<>();
    private final Map<String, Cause> causes = new HashMap<>();
    private final Map<String, Counted> counted = new HashMap<>();

    /** The rule that gives a stage the day aimed at, and the point it counts from. */
    record Counted(After rule, Optional<Stage> from, String point) {}

    PathNetwork(List<Stage> stages, Course course, Calendar calendar, LocalDate today) {
        this.stages = stages;
        this.course = course;
        this.calendar = calendar;
        this.today = today;
        horizon = calendar.known();
        notAway = course.away().isEmpty()
                ? Optional.empty()
                : Optional.of(Days.where(horizon.first(), horizon.last(), this::isHere));
        points.add(new Point(BEGUN, Optional.empty()));
        conditions.add(Condition.Between.on(BEGUN, BEGUN, course.begun()));
        for (int at = 0; at < stages.size(); at++) {
            enter(stages.get(at), before(at));
        }
    }

    /** The stage in front that is always there: what comes only if needed keeps nothing waiting and waits for nothing. */
    private Optional<Stage> before(int at) {
        return stages.subList(0, at).stream()
                .filter(stage -> !stage.timing().optional())
                .reduce((first, second) -> second);
    }

    private boolean isHere(LocalDate day) {
        return course.away().stream().noneMatch(span -> span.holds(day));
    }

    Network network() {
        return new Network(points, conditions, horizon);
    }

    /** The rule of this name; empty for the day on which the path begins. */
    Optional<Cause> cause(String rule) {
        return Optional.ofNullable(causes.get(rule));
    }

    /** The name of a stage's last day, where that is a point of its own. */
    static String end(Stage stage) {
        return stage.id() + " end";
    }

    /** The rule that gives the stage the day aimed at. */
    Counted counted(Stage stage) {
        return Objects.requireNonNull(counted.get(stage.id()));
    }

    private void enter(Stage stage, Optional<Stage> before) {
        var aim = aim(stage, before);
        counted.put(stage.id(), aim);
        points.add(new Point(
                stage.id(),
                Optional.of(new Point.Aim(
                        aim.point(), aim.rule().usual().orElse(aim.rule().earliest())))));
        given(stage);
        rules(stage);
        before.filter(front -> !stage.timing().optional()).ifPresent(front -> inOrder(stage, front));
        days(stage);
        apart(stage);
        visits(stage);
        if (stage.timing().until().isEmpty()) {
            lasts(stage);
        }
    }

    private Counted aim(Stage stage, Optional<Stage> before) {
        var rules = course.rules(stage).stream().filter(this::applies).toList();
        var rule = rules.stream().filter(r -> r.usual().isPresent()).findFirst();
        return rule.or(() -> rules.stream().findFirst())
                .map(this::counted)
                // what it counted from has left the plan
                .orElseGet(() -> counted(new After(
                        before.map(Stage::id),
                        before.filter(front -> front.timing().until().isEmpty()).isPresent() ? Edge.END : Edge.START,
                        Period.ZERO,
                        Optional.of(Period.ZERO),
                        Optional.empty())));
    }

    private Counted counted(After rule) {
        return new Counted(rule, rule.stage().flatMap(this::present), point(rule));
    }

    private boolean applies(After rule) {
        return rule.stage().isEmpty() || rule.stage().flatMap(this::present).isPresent();
    }

    private Optional<Stage> present(String id) {
        return stages.stream().filter(stage -> stage.id().equals(id)).findFirst();
    }

    private String point(After rule) {
        return rule.stage()
                .flatMap(this::present)
                .map(from -> rule.edge() == Edge.START ? from.id() : end(from))
                .orElse(BEGUN);
    }

    private void given(Stage stage) {
        course.given(stage).ifPresent(given -> {
            var rule = stage.id() + " dated";
            causes.put(rule, new Cause.Dated(stage, given.day(), given.origin()));
            conditions.add(Condition.Between.on(rule, stage.id(), given.day()));
        });
    }

    private void rules(Stage stage) {
        var rules = course.rules(stage);
        for (int at = 0; at < rules.size(); at++) {
            var rule = rules.get(at);
            if (applies(rule) && !isBehind(stage, rule)) {
                var name = stage.id() + " begins " + at;
                causes.put(name, new Cause.Begins(stage, at, rule));
                conditions.add(new Condition.Gap(
                        name, point(rule), stage.id(), Optional.of(rule.earliest()), Optional.empty()));
                if (rule.latest().isPresent()) {
                    conditions.add(new Condition.Gap(name, point(rule), stage.id(), Optional.empty(), rule.latest()));
                }
            }
        }
    }

    /** Both have been: what happened is not bound by a rule any more. */
    private boolean isBehind(Stage stage, After rule) {
        return isFact(stage)
                && rule.stage().flatMap(this::present).map(this::isFact).orElse(true);
    }

    private boolean isFact(Stage stage) {
        return course.ended(stage).isPresent()
                || course.given(stage)
                        .filter(given -> given.origin() == Origin.ACTUAL)
                        .isPresent();
    }

    private void inOrder(Stage stage, Stage before) {
        if (!(isFact(stage) && isFact(before))) {
            var rule = stage.id() + " in order";
            causes.put(rule, new Cause.InOrder(stage, before));
            conditions.add(
                    new Condition.Gap(rule, before.id(), stage.id(), Optional.of(Period.ZERO), Optional.empty()));
        }
    }

    private void days(Stage stage) {
        if (course.given(stage).isPresent()) {
            return;
        }
        if (stage.timing().onOpenDays()) {
            on(stage.id() + " open", new Cause.OpenDay(stage), stage.id(), calendar.clinic());
        }
        stage.timing().season().ifPresent(season -> {
            var rule = stage.id() + " season";
            causes.put(rule, new Cause.InSeason(stage, season));
            conditions.add(new Condition.On(rule, stage.id(), calendar.season(season)));
        });
        if (stage.timing().signal() && !hasBeen(stage)) {
            var rule = stage.id() + " not yet";
            causes.put(rule, new Cause.NotYet(stage, today.plusDays(1)));
            conditions.add(new Condition.Between(rule, stage.id(), today.plusDays(1), horizon.last()));
        }
    }

    private void on(String rule, Cause cause, String point, Days days) {
        causes.put(rule, cause);
        conditions.add(new Condition.On(rule, point, days));
        notAway.ifPresent(here -> conditions.add(new Condition.On(rule, point, here)));
    }

    /** Whether somebody said when the stage was, or that it or a stage after it has been. */
    private boolean hasBeen(Stage stage) {
        return hasBeen(stages.subList(stages.indexOf(stage), stages.size()));
    }

    private boolean hasBeen(List<Stage> any) {
        return any.stream()
                .anyMatch(later -> course.ended(later).isPresent()
                        || course.given(later)
                                .filter(given -> !given.day().isAfter(today))
                                .isPresent());
    }

    private void apart(Stage stage) {
        for (var apart : stage.timing().apart()) {
            present(apart.from())
                    .filter(other -> !(isFact(stage) && isFact(other)))
                    .ifPresent(other -> {
                        var rule = stage.id() + " apart " + other.id();
                        causes.put(rule, new Cause.KeptApart(stage, other, apart.days()));
                        conditions.add(new Condition.Apart(rule, stage.id(), other.id(), apart.days()));
                    });
        }
    }

    /** A stage gets no day from which one of its visits could not be had. */
    private void visits(Stage stage) {
        if (course.given(stage).isPresent()) {
            return;
        }
        for (var visit : stage.visits()) {
            var point = stage.id() + "/" + visit.id();
            points.add(new Point(point, Optional.of(new Point.Aim(stage.id(), visit.after()))));
            var asked = point + " asked";
            causes.put(asked, new Cause.Asked(stage, visit));
            conditions.add(new Condition.Gap(
                    asked,
                    stage.id(),
                    point,
                    Optional.of(visit.after()),
                    Optional.of(visit.after().plus(visit.within()))));
            on(point + " day", new Cause.VisitDay(stage, visit), point, calendar.visit(visit.kind()));
        }
    }

    private void lasts(Stage stage) {
        var usual = stage.timing().lasts();
        var end = end(stage);
        points.add(new Point(end, Optional.of(new Point.Aim(stage.id(), usual.usual()))));
        var rule = stage.id() + " lasts";
        causes.put(rule, new Cause.Lasts(stage));
        var ended = course.ended(stage);
        if (ended.isPresent()) {
            var dated = stage.id() + " ended";
            causes.put(dated, new Cause.Dated(stage, ended.get().day(), Origin.ACTUAL));
            conditions.add(Condition.Between.on(dated, end, ended.get().day()));
            // when the clinic names the day, the end says more about the start than the rule does
            var most = stage.timing().signal() && course.given(stage).isEmpty()
                    ? Optional.of(usual.usual())
                    : Optional.<Period>empty();
            conditions.add(new Condition.Gap(rule, stage.id(), end, Optional.of(Period.ZERO), most));
        } else {
            conditions.add(new Condition.Gap(rule, stage.id(), end, Optional.of(usual.least()), usual.most()));
            if (isWaiting(stage)) {
                var open = stage.id() + " open end";
                causes.put(open, new Cause.NotYet(stage, today));
                conditions.add(new Condition.Between(open, end, today, horizon.last()));
            }
        }
    }

    /** A stage that can end in several ways and has no bound, as a funding approval, goes on until somebody says how. */
    private boolean isWaiting(Stage stage) {
        return stage.outcomes().size() > 1
                && stage.timing().lasts().most().isEmpty()
                && !hasBeen(stages.subList(stages.indexOf(stage) + 1, stages.size()));
    }
}
