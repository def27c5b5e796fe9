package org.hearthway.path.engine;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hearthway.path.engine.PathNetwork.Counted;
import org.hearthway.path.engine.Plan.Origin;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.Said;
import org.hearthway.path.engine.Plan.State;
import org.hearthway.path.engine.Plan.Why;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Repeat;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.network.Schedule;
import org.hearthway.path.engine.network.Span;

/** The second and later times of a stage that repeats, each counted from what the first is counted from. */
record Rounds(
        Course course,
        Calendar calendar,
        Schedule schedule,
        Function<String, LocalDate> cut,
        LocalDate over,
        LocalDate today,
        VisitSeries visits) {

    List<Planned> of(Stage stage, Counted counted) {
        var rounds = new ArrayList<Planned>();
        stage.timing().repeats().ifPresent(repeat -> {
            var until = repeat.until().map(cut).orElse(LocalDate.MAX);
            int times = repeat.times().orElse(VisitSeries.MOST_TIMES);
            for (int round = 2; round <= times; round++) {
                var planned = round(stage, counted, repeat, round);
                if (!planned.start().isBefore(until) || planned.start().isAfter(over)) {
                    break;
                }
                rounds.add(planned);
            }
        });
        return rounds;
    }

    private Planned round(Stage stage, Counted counted, Repeat repeat, int round) {
        var base = schedule.day(counted.point());
        var more = repeat.every().multipliedBy(round - 1);
        var rule = counted.rule();
        var first = base.plus(rule.earliest().plus(more));
        var wanted = base.plus(rule.usual().orElse(rule.earliest()).plus(more));
        var last = rule.latest()
                .map(latest -> base.plus(latest.plus(more)))
                .orElse(base.plus(repeat.every().multipliedBy(round)));
        var open = OpenDays.of(stage, calendar, course);
        var byRule = open.nearest(first, wanted, last);
        var given = Optional.ofNullable(course.given().get(stage.id() + "/" + round));
        var start = given.map(Course.Given::day).or(() -> byRule).orElse(last);
        var end = start.plus(length(stage));
        var why = new Why(
                given.map(Course.Given::origin).orElse(Origin.RULE),
                counted.from(),
                Optional.of(base),
                byRule.orElse(wanted),
                given.isEmpty() && !start.equals(wanted) ? Optional.of(wanted) : Optional.empty(),
                open.isAway(wanted),
                start.isBefore(first) || start.isAfter(last),
                later(rule, more),
                course.isOwn(stage, rule),
                Optional.empty());
        var clash = given.isPresent() || byRule.isPresent()
                ? Optional.<Clash>empty()
                : Optional.of(new Clash(
                        stage, List.of(new Cause.Begins(stage, 0, rule), new Cause.OpenDay(stage)), List.of()));
        return new Planned(
                stage,
                round,
                State.TO_COME,
                given.filter(said -> !said.day().isAfter(today)).isPresent() ? Said.BEGUN : Said.NOTHING,
                first,
                start,
                Optional.of(last),
                end,
                new Span(first, last),
                why,
                visits.of(stage, start, round),
                Planner.cares(stage, start, end),
                clash);
    }

    /** The rule as it is for this time: so much later from the same day. */
    private static After later(After rule, Period more) {
        return new After(
                rule.stage(),
                rule.edge(),
                rule.earliest().plus(more).normalized(),
                rule.usual().map(usual -> usual.plus(more).normalized()),
                rule.latest().map(latest -> latest.plus(more).normalized()));
    }

    private static Period length(Stage stage) {
        return stage.timing().lasts().usual();
    }
}
