package org.hearthway.caseload.engine;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.program.engine.trend.RunChart;
import org.hearthway.program.engine.trend.Trends;
import org.hearthway.program.engine.trend.Trends.Log;
import org.hearthway.program.engine.trend.Trends.Rater;

/**
 * Finds what the record of a home program asks the team to look at. A rule is a function of the record up to a day; the
 * item is due from the day since which it holds. What the team has answered starts the record anew for that rule. What
 * the rule found stands in the subject of its cause, so that the item says the numbers by which it was found.
 */
final class HomeRules {

    /** How far back the first day of a finding is looked for; one that holds longer is as old as this. */
    private static final int SINCE_DAYS = 28;

    private static final int HUNDRED = 100;

    /** Stands in the subject of a rise that shares of both halves showed. */
    private static final String SHARE = "share";

    private final RuleBook book;
    private final Office office;
    private final Facts.OfHome home;
    private final LocalDate today;

    HomeRules(RuleBook book, Office office, Facts.OfHome home, LocalDate today) {
        this.book = book;
        this.office = office;
        this.home = home;
        this.today = today;
    }

    /**
     * What a rule found.
     *
     * @param count the number that the item begins with
     * @param says the other numbers, in an order that the words of the rule know
     */
    private record Found(int count, String says) {}

    private interface Finder {
        Optional<Found> find(List<Log> logs, LocalDate day);
    }

    List<Cause> causes() {
        var causes = new ArrayList<Cause>();
        for (var rater : Rater.values()) {
            // whoever looked at a rise has looked at the sore days, too
            cause(Rule.PAIN_RISING, "/" + rater, (logs, day) -> rising(logs, rater, day))
                    .or(() -> cause(Rule.PAIN_OFTEN, "/" + rater, (logs, day) -> often(logs, rater, day)))
                    .ifPresent(causes::add);
            cause(Rule.TOO_HARD, "/" + rater, (logs, day) -> hard(logs, rater, day))
                    .ifPresent(causes::add);
        }
        cause(Rule.STOPPED, "", this::stopped).ifPresent(causes::add);
        cause(Rule.FEW_DONE, "", this::few).ifPresent(causes::add);
        home.more().forEach(more -> causes.add(more(more)));
        home.turns().forEach(turn -> causes.add(turn(turn)));
        return causes;
    }

    private Optional<Cause> cause(Rule rule, String which, Finder finder) {
        var answered = answered(rule);
        var logs = home.logs().stream()
                .filter(log -> answered.map(log.day()::isAfter).orElse(true))
                .toList();
        Function<LocalDate, Optional<Found>> on = day ->
                finder.find(logs.stream().filter(log -> !log.day().isAfter(day)).toList(), day);
        return on.apply(today).map(found -> {
            var since = today;
            while (since.isAfter(today.minusDays(SINCE_DAYS))
                    && on.apply(since.minusDays(1)).isPresent()) {
                since = since.minusDays(1);
            }
            return new Cause(
                    rule,
                    key(rule) + which + answered.map(day -> "/" + day).orElse(""),
                    office.openDay(since, book.openDays().getOrDefault(rule, 0)),
                    Optional.empty(),
                    since,
                    found.count(),
                    found.says(),
                    Optional.empty());
        });
    }

    private Optional<LocalDate> answered(Rule rule) {
        var own = home.answered(rule);
        var other = rule == Rule.PAIN_OFTEN ? home.answered(Rule.PAIN_RISING) : Optional.<LocalDate>empty();
        return Stream.of(own, other).flatMap(Optional::stream).max(Comparator.naturalOrder());
    }

    private static String key(Rule rule) {
        return rule.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A run chart's signal upward, by as much as the clinic asks for. */
    private Optional<Found> rising(List<Log> logs, Rater rater, LocalDate day) {
        var chart = Trends.pain(within(logs, day, 7 * book.figure(Figure.RISING_WEEKS)), rater);
        return chart.change() == RunChart.Change.RISING
                        && chart.rise().compareTo(BigDecimal.valueOf(book.figure(Figure.RISING_BY))) >= 0
                ? Optional.of(risen(rater, chart))
                : Optional.empty();
    }

    /** What the words say of the rule: its runs and crossings, or where the median is an extreme its shares. */
    private static Found risen(Rater rater, RunChart chart) {
        return chart.isOneSided()
                ? new Found(chart.useful(), says(rater, SHARE, chart.offInLaterHalf(), chart.median(), chart.rise()))
                : new Found(
                        chart.longestRun(),
                        says(
                                rater,
                                chart.longestUsual(),
                                chart.median(),
                                chart.crossings(),
                                chart.fewestUsual(),
                                chart.rise()));
    }

    private Optional<Found> often(List<Log> logs, Rater rater, LocalDate day) {
        var from = book.figure(Figure.SORE_FROM);
        var within = book.figure(Figure.SORE_WITHIN);
        var wanted = book.figure(Figure.SORE_DAYS);
        return days(Trends.pain(within(logs, day, within), rater), from, wanted, rater, within);
    }

    private Optional<Found> hard(List<Log> logs, Rater rater, LocalDate day) {
        var from = book.figure(Figure.HARD_FROM);
        var within = book.figure(Figure.HARD_WITHIN);
        var wanted = book.figure(Figure.HARD_DAYS);
        return days(Trends.effort(within(logs, day, within), rater), from, wanted, rater, within);
    }

    private static Optional<Found> days(RunChart chart, int from, int wanted, Rater rater, int within) {
        var days = (int)
                chart.points().stream().filter(point -> point.number() >= from).count();
        return days >= wanted ? Optional.of(new Found(days, says(rater, from, wanted, within))) : Optional.empty();
    }

    private Optional<Found> stopped(List<Log> logs, LocalDate day) {
        var within = book.figure(Figure.STOPPED_WITHIN);
        var wanted = book.figure(Figure.STOPPED_TIMES);
        var times = (int)
                within(logs, day, within).stream().filter(Log::stoppedByPain).count();
        return times >= wanted ? Optional.of(new Found(times, says(wanted, within))) : Optional.empty();
    }

    /** Whole weeks before the one at hand; one of which the team has answered is not whole. */
    private Optional<Found> few(List<Log> logs, LocalDate day) {
        var count = book.figure(Figure.DONE_WEEKS);
        var until = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        var from = until.minusWeeks(count);
        if (answered(Rule.FEW_DONE).filter(answered -> !answered.isBefore(from)).isPresent()) {
            return Optional.empty();
        }
        var weeks = logs.stream()
                .filter(log -> !log.day().isBefore(from) && log.day().isBefore(until))
                .toList();
        var whole = Trends.adherence(weeks);
        var everyWeek = IntStream.range(0, count)
                .allMatch(week -> weeks.stream()
                        .anyMatch(log -> log.planned()
                                && !log.day().isBefore(from.plusWeeks(week))
                                && log.day().isBefore(from.plusWeeks(week + 1L))));
        if (!everyWeek) {
            return Optional.empty();
        }
        var reported = HUNDRED * (whole.planned() - whole.notReported()) / whole.planned();
        return below(whole.percent())
                .filter(done -> reported >= book.figure(Figure.DONE_REPORTED))
                .map(done -> new Found(done, says(book.figure(Figure.DONE_PERCENT), count, reported)));
    }

    private Optional<Integer> below(OptionalDouble percent) {
        return percent.isPresent() && percent.getAsDouble() < book.figure(Figure.DONE_PERCENT)
                ? Optional.of((int) Math.round(percent.getAsDouble()))
                : Optional.empty();
    }

    private Cause more(Facts.MoreProposed more) {
        var last = more.days().get(more.days().size() - 1);
        return new Cause(
                Rule.MORE,
                key(Rule.MORE) + "/" + more.exercise() + "/" + more.version(),
                office.openDay(last, book.openDays().getOrDefault(Rule.MORE, 0)),
                Optional.empty(),
                last,
                more.days().size(),
                more.exercise(),
                Optional.empty());
    }

    private Cause turn(Facts.CareTurn turn) {
        var way = turn.forbids() ? "shut" : "open";
        return new Cause(
                Rule.CARE_TURN,
                key(Rule.CARE_TURN) + "/" + turn.day() + "/" + way,
                office.openDay(turn.day(), book.openDays().getOrDefault(Rule.CARE_TURN, 0)),
                Optional.empty(),
                turn.day(),
                turn.exercises().size(),
                way,
                Optional.empty());
    }

    private static List<Log> within(List<Log> logs, LocalDate day, int days) {
        return logs.stream()
                .filter(log -> log.day().isAfter(day.minusDays(days)))
                .toList();
    }

    private static String says(Object... numbers) {
        return String.join("/", Stream.of(numbers).map(String::valueOf).toList());
    }
}
