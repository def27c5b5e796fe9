package org.hearthway.path.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.path.engine.Plan.Care;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.Said;
import org.hearthway.path.engine.Plan.State;
import org.hearthway.path.engine.Plan.Why;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.network.Schedule;

/**
 * Makes a child's plan: a pure function of the template, what people said, the days that can be used, and today.
 *
 * <p>Every gap is counted from the date it is anchored on, never from another computed gap, because months differ in
 * length. Each stage gets the day nearest to its usual gap that keeps all rules and leaves every later stage a day of
 * its own. Stages keep their order. A stage whose date the clinic must name has not happened until somebody says so of
 * it or of a stage after it, and therefore does not slip into the past by itself.
 */
public final class Planner {

    private static final int YEARS_AHEAD = 10;

    private final Template template;
    private final Course course;
    private final Calendar calendar;
    private final LocalDate today;
    private final Presence presence;
    private final PathNetwork path;
    private final Resolved resolved;
    private final Schedule schedule;
    private final Map<String, LocalDate> ends = new HashMap<>();

    private Planner(Template template, Course course, Calendar calendar, LocalDate today) {
        this.template = template;
        this.course = course;
        this.calendar = calendar;
        this.today = today;
        presence = Presence.of(template, course);
        path = new PathNetwork(presence.stages(), course, calendar, today);
        resolved = Resolved.of(path, presence.stages());
        schedule = resolved.schedule();
    }

    /**
     * The plan.
     *
     * @param template a path whose stages count only from stages in front of them
     * @param course what was said for this child
     * @param calendar the days that can be used
     * @param today the day the plan is made for
     */
    public static Plan plan(Template template, Course course, Calendar calendar, LocalDate today) {
        return new Planner(template, course, calendar, today).made();
    }

    private Plan made() {
        var once = presence.stages();
        var visits = new VisitSeries(template, calendar, this::cut, over());
        var rounds = new Rounds(course, calendar, schedule, this::cut, over(), today, visits);
        for (var stage : once) {
            ends.put(stage.id(), end(stage));
        }
        var all = new ArrayList<Planned>();
        for (var stage : once) {
            all.add(planned(stage, visits));
            all.addAll(rounds.of(stage, path.counted(stage)));
        }
        return new Plan(template, today, withStates(untilClosed(all)), presence.over(), before());
    }

    private List<Stage> before() {
        return template.stages().stream()
                .filter(stage -> !stage.timing().optional() && course.isBeforeWithoutDay(stage))
                .toList();
    }

    /** Where the team ended the path, what would have begun later is not on it. */
    private List<Planned> untilClosed(List<Planned> all) {
        return course.closed()
                .map(day -> all.stream()
                        .filter(stage -> !stage.start().isAfter(day))
                        .toList())
                .orElse(all);
    }

    private LocalDate start(Stage stage) {
        return schedule.day(stage.id());
    }

    private LocalDate end(Stage stage) {
        var start = start(stage);
        if (stage.timing().until().isEmpty()) {
            return schedule.day(PathNetwork.end(stage));
        }
        return course.ended(stage)
                .map(Course.Ended::day)
                .or(() -> ending(stage).map(next -> start(next).minusDays(1)))
                .filter(day -> day.isAfter(start))
                .orElse(start);
    }

    /** The stage whose first day ends this one: the one named, or when that left the plan the one behind. */
    private Optional<Stage> ending(Stage stage) {
        var behind = presence.stages()
                .subList(presence.stages().indexOf(stage) + 1, presence.stages().size());
        return behind.stream()
                .filter(later ->
                        stage.timing().until().filter(later.id()::equals).isPresent())
                .findFirst()
                .or(() -> behind.stream().findFirst());
    }

    private Planned planned(Stage stage, VisitSeries visits) {
        var window = window(stage);
        var start = start(stage);
        // what was done before the path began here followed the rules of whoever did it
        var outside = !course.before().contains(stage.id())
                && (start.isBefore(window.first()) || start.isAfter(window.last()));
        return new Planned(
                stage,
                1,
                State.TO_COME,
                said(stage),
                window.first(),
                start,
                window.last().equals(LocalDate.MAX) ? Optional.empty() : Optional.of(window.last()),
                ends(stage),
                schedule.of(stage.id()).span(),
                why(stage, window, outside),
                visits.of(stage, start),
                Stream.concat(cares(stage, start, ends(stage)).stream(), earlier(stage))
                        .toList(),
                resolved.clash(stage)
                        .filter(clash -> course.given(stage).isEmpty()
                                && course.ended(stage).isEmpty()));
    }

    /** The path's first stage begins with the path, which somebody said. */
    private Said said(Stage stage) {
        if (course.ended(stage).isPresent()) {
            return Said.ENDED;
        }
        if (course.before().contains(stage.id())) {
            return Said.DONE_BEFORE;
        }
        var said = course.given(stage)
                .map(Course.Given::day)
                .or(() -> presence.stages().indexOf(stage) == 0 ? Optional.of(course.begun()) : Optional.empty());
        return said.filter(day -> !day.isAfter(today)).isPresent() ? Said.BEGUN : Said.NOTHING;
    }

    /** First and last day that the rules allow, counted from the dates in front, and the day they prefer. */
    private record Window(LocalDate base, LocalDate first, LocalDate wanted, LocalDate last) {}

    private Window window(Stage stage) {
        var counted = path.counted(stage);
        var base = schedule.day(counted.point());
        var first = base.plus(counted.rule().earliest());
        var last = counted.rule().latest().map(base::plus).orElse(LocalDate.MAX);
        for (var rule : course.rules(stage)) {
            var anchor = anchor(rule);
            if (anchor.isPresent()) {
                first = later(first, anchor.get().plus(rule.earliest()));
                last = earlier(last, rule.latest().map(anchor.get()::plus).orElse(LocalDate.MAX));
            }
        }
        first = later(first, floor(stage));
        var wanted = base.plus(counted.rule().usual().orElse(counted.rule().earliest()));
        return new Window(base, first, later(wanted, first), last);
    }

    private Optional<LocalDate> anchor(Template.After rule) {
        if (rule.stage().isEmpty()) {
            return Optional.of(course.begun());
        }
        return presence.stages().stream()
                .filter(stage -> rule.stage().get().equals(stage.id()))
                .findFirst()
                .map(stage -> rule.edge() == Edge.START ? start(stage) : ends(stage));
    }

    private LocalDate ends(Stage stage) {
        return Objects.requireNonNull(ends.get(stage.id()));
    }

    private LocalDate floor(Stage stage) {
        int at = presence.stages().indexOf(stage);
        var inOrder = at == 0 ? LocalDate.MIN : start(presence.stages().get(at - 1));
        return path.cause(stage.id() + " not yet").isPresent() ? later(inOrder, today.plusDays(1)) : inOrder;
    }

    private Why why(Stage stage, Window window, boolean outside) {
        var counted = path.counted(stage);
        var placed = schedule.of(stage.id());
        var given = course.given(stage);
        var rule =
                given.isPresent() && !course.before().contains(stage.id()) ? byRuleAlone(stage, window) : placed.day();
        var wanted = window.wanted();
        var open = OpenDays.of(stage, calendar, course);
        return new Why(
                given.map(Course.Given::origin).orElse(Origin.RULE),
                counted.from(),
                Optional.of(window.base()),
                rule,
                given.isEmpty() && !rule.equals(wanted) && !open.allow(wanted) ? Optional.of(wanted) : Optional.empty(),
                open.isAway(wanted),
                outside,
                counted.rule(),
                course.isOwn(stage, counted.rule()),
                given.isPresent() ? Optional.empty() : placed.pushed().flatMap(path::cause));
    }

    private LocalDate byRuleAlone(Stage stage, Window window) {
        return OpenDays.of(stage, calendar, course)
                .nearest(window.first(), window.wanted(), window.last())
                .orElse(window.wanted());
    }

    /** A stage's rules of care with their days. */
    static List<Care> cares(Stage stage, LocalDate start, LocalDate end) {
        return stage.precautions().stream()
                .map(rule -> new Care(
                        rule,
                        start.plus(rule.from()),
                        rule.until().map(start::plus).orElse(end.plusDays(1))))
                .toList();
    }

    /**
     * The rules of care of rounds before, with the stage to which the way went back: what was put into a body forbids the
     * same until the stage that put it there comes again.
     */
    private Stream<Care> earlier(Stage back) {
        return course.earlier().stream()
                .filter(before -> home(before).equals(back))
                .flatMap(before -> template.stage(before.stage()).stream()
                        .flatMap(stage -> cares(stage, before.day(), before.day()).stream()))
                .flatMap(care -> untilAgain(care).stream());
    }

    private Stage home(Course.Earlier before) {
        return presence.stages().stream()
                .filter(stage -> stage.id().equals(before.back()))
                .findFirst()
                .orElse(presence.stages().get(0));
    }

    private Optional<Care> untilAgain(Care care) {
        var until = presence.stages().stream()
                .filter(stage -> stage.precautions().contains(care.rule()))
                .map(this::start)
                .reduce(care.until(), Planner::earlier);
        return until.isAfter(care.from()) ? Optional.of(new Care(care.rule(), care.from(), until)) : Optional.empty();
    }

    /** The day before which something that goes on until a stage has its last time; ten years on if that is not known. */
    private LocalDate cut(String until) {
        return presence.stages().stream()
                .filter(stage -> stage.id().equals(until))
                .findFirst()
                .map(this::start)
                .orElseGet(this::over);
    }

    /** The day on which the path ended, or ten years on: nothing is laid out beyond it. */
    private LocalDate over() {
        return presence.over().map(Plan.Over::day).orElse(today.plusYears(YEARS_AHEAD));
    }

    private List<Planned> withStates(List<Planned> all) {
        var present = IntStream.range(0, all.size())
                .boxed()
                .filter(at -> !all.get(at).start().isAfter(today) && !isOver())
                .max(Comparator.<Integer, LocalDate>comparing(at -> all.get(at).end())
                        .thenComparing(Comparator.naturalOrder()));
        return IntStream.range(0, all.size())
                .mapToObj(at -> with(
                        all.get(at), present.filter(now -> now == at).isPresent() ? State.NOW : state(all.get(at))))
                .toList();
    }

    private boolean isOver() {
        return presence.over().filter(over -> over.day().isBefore(today)).isPresent();
    }

    private State state(Planned stage) {
        return stage.start().isBefore(today) ? State.PAST : State.TO_COME;
    }

    private static Planned with(Planned stage, State state) {
        return new Planned(
                stage.stage(),
                stage.round(),
                state,
                stage.said(),
                stage.earliest(),
                stage.start(),
                stage.latest(),
                stage.end(),
                stage.possible(),
                stage.why(),
                stage.visits(),
                stage.precautions(),
                stage.clash());
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }
}
