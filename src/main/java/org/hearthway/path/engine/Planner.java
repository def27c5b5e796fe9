package org.hearthway.path.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.path.engine.Plan.Care;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.State;
import org.hearthway.path.engine.Plan.VisitWindow;
import org.hearthway.path.engine.Plan.Why;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.VisitNeed;

/**
 * Makes a child's plan: a pure function of the template, the dates that people gave, the clinic's open days and today.
 *
 * <p>Every gap is counted from the date it is anchored on, never from another computed gap, because months differ in
 * length. Stages keep their order: one that follows its rule never begins before the one in front of it. A stage whose
 * date the clinic must name has not happened until somebody says so of it or of a stage after it, and therefore does not
 * slip into the past by itself.
 */
public final class Planner {

    /** How far to look for an open day when a window holds none. */
    private static final int DAYS_TO_LOOK = 366;

    private final Template template;
    private final Course course;
    private final Predicate<LocalDate> open;
    private final LocalDate today;
    private final Map<String, LocalDate> starts = new HashMap<>();
    private final Map<String, Window> windows = new HashMap<>();
    private final Map<String, Why> whys = new HashMap<>();

    private Planner(Template template, Course course, Predicate<LocalDate> open, LocalDate today) {
        this.template = template;
        this.course = course;
        this.open = open;
        this.today = today;
    }

    /**
     * The plan.
     *
     * @param template a path whose stages count only from stages in front of them
     * @param open whether the clinic is open on a day
     * @param today the day the plan is made for
     */
    public static Plan plan(Template template, Course course, Predicate<LocalDate> open, LocalDate today) {
        return new Planner(template, course, open, today).made();
    }

    /** First and last day that a rule allows, and the day it prefers. */
    private record Window(Optional<Stage> from, LocalDate base, LocalDate first, LocalDate wanted, LocalDate last) {}

    /** A day that a rule gives, and what had to be done to find it. */
    private record Found(LocalDate day, Optional<LocalDate> shiftedFrom, boolean outside) {}

    private Plan made() {
        Optional<LocalDate> before = Optional.empty();
        for (var stage : template.stages()) {
            before = Optional.of(begin(stage, before));
        }
        var present = present();
        var stages = template.stages().stream()
                .map(stage -> planned(stage, state(stage, present)))
                .collect(Collectors.toList());
        return new Plan(template, today, stages);
    }

    private LocalDate begin(Stage stage, Optional<LocalDate> before) {
        var window = window(stage, before);
        var found = found(stage, window);
        var given = course.given(stage);
        var start = given.map(Course.Given::day).orElse(found.day());
        var outside =
                given.isPresent() ? start.isBefore(window.first()) || start.isAfter(window.last()) : found.outside();
        starts.put(stage.id(), start);
        windows.put(stage.id(), window);
        whys.put(
                stage.id(),
                new Why(
                        given.map(Course.Given::origin).orElse(Origin.RULE),
                        window.from(),
                        Optional.of(window.base()),
                        found.day(),
                        given.isPresent() ? Optional.empty() : found.shiftedFrom(),
                        outside));
        return start;
    }

    private Window window(Stage stage, Optional<LocalDate> before) {
        var rule = stage.begins();
        var from = rule.stage().flatMap(template::stage);
        var base = from.map(anchor -> rule.edge() == Edge.START ? start(anchor) : end(anchor))
                .orElse(course.begun());
        var floor = floor(stage, before);
        var first = later(base.plus(rule.earliest()), floor);
        return new Window(from, base, first, later(base.plus(rule.usual()), first), base.plus(rule.latest()));
    }

    private LocalDate floor(Stage stage, Optional<LocalDate> before) {
        var inOrder = before.orElse(LocalDate.MIN);
        return stage.signal() && !isBehind(stage) ? later(inOrder, today.plusDays(1)) : inOrder;
    }

    /** Whether somebody said when the stage was, or that a stage after it has been. */
    private boolean isBehind(Stage stage) {
        var onward = template.stages()
                .subList(template.stages().indexOf(stage), template.stages().size());
        return course.given(stage).isPresent()
                || onward.stream()
                        .flatMap(later -> course.given(later).stream())
                        .anyMatch(given -> !given.day().isAfter(today));
    }

    private Found found(Stage stage, Window window) {
        var missed = window.first().isAfter(window.last());
        var wanted = missed ? window.first() : earlier(window.wanted(), window.last());
        if (!stage.onOpenDays()) {
            return new Found(wanted, Optional.empty(), missed);
        }
        var end = missed ? wanted : window.last();
        return firstOpen(wanted, end)
                .or(() -> lastOpen(window.first(), wanted))
                .map(day -> new Found(day, shift(wanted, day), missed))
                .orElseGet(() -> {
                    var day = firstOpen(end, end.plusDays(DAYS_TO_LOOK)).orElse(wanted);
                    return new Found(day, shift(wanted, day), missed || day.isAfter(window.last()));
                });
    }

    private static Optional<LocalDate> shift(LocalDate wanted, LocalDate day) {
        return day.equals(wanted) ? Optional.empty() : Optional.of(wanted);
    }

    private Optional<LocalDate> firstOpen(LocalDate from, LocalDate until) {
        return from.datesUntil(until.plusDays(1)).filter(open).findFirst();
    }

    private Optional<LocalDate> lastOpen(LocalDate from, LocalDate until) {
        return Stream.iterate(until, day -> !day.isBefore(from), day -> day.minusDays(1))
                .filter(open)
                .findFirst();
    }

    private LocalDate start(Stage stage) {
        var start = starts.get(stage.id());
        if (start == null) {
            throw new IllegalArgumentException(
                    "a stage counts from " + stage.id() + ", which does not stand before it");
        }
        return start;
    }

    private LocalDate end(Stage stage) {
        var start = start(stage);
        var end = stage.until()
                .flatMap(template::stage)
                .map(next -> start(next).minusDays(1))
                .orElseGet(() -> start.plus(stage.lasts()));
        return later(start, end);
    }

    private Optional<Stage> present() {
        var stages = template.stages();
        return IntStream.range(0, stages.size())
                .boxed()
                .filter(i -> !start(stages.get(i)).isAfter(today))
                .max(Comparator.<Integer, LocalDate>comparing(i -> end(stages.get(i)))
                        .thenComparing(Comparator.naturalOrder()))
                .map(stages::get);
    }

    private State state(Stage stage, Optional<Stage> present) {
        if (present.filter(stage::equals).isPresent()) {
            return State.NOW;
        }
        return start(stage).isBefore(today) ? State.PAST : State.TO_COME;
    }

    private Planned planned(Stage stage, State state) {
        var window = Objects.requireNonNull(windows.get(stage.id()));
        var start = start(stage);
        return new Planned(
                stage,
                state,
                window.first(),
                start,
                window.last(),
                end(stage),
                Objects.requireNonNull(whys.get(stage.id())),
                stage.visits().stream()
                        .flatMap(visit -> visits(stage, visit, start))
                        .collect(Collectors.toList()),
                stage.precautions().stream()
                        .map(rule -> new Care(rule, start.plus(rule.from()), start.plus(rule.until())))
                        .collect(Collectors.toList()));
    }

    private Stream<VisitWindow> visits(Stage stage, VisitNeed visit, LocalDate start) {
        var purpose = template.id() + "/" + stage.id() + "/" + visit.id();
        return IntStream.range(0, visit.every().isPresent() ? visit.times() : 1).mapToObj(n -> {
            var again = visit.every().map(gap -> gap.multipliedBy(n)).orElse(Period.ZERO);
            var from = start.plus(visit.after().plus(again));
            return new VisitWindow(
                    n == 0 ? purpose : purpose + "/" + (n + 1), visit.kind(), from, from.plus(visit.before()));
        });
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }
}
