package org.hearthway.program.engine.trend;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hearthway.program.engine.Adherence;
import org.hearthway.program.engine.Adherence.Said;
import org.hearthway.program.engine.Adherence.Session;
import org.hearthway.program.engine.trend.RunChart.Point;

/**
 * What a record of sessions teaches. Children and grown-ups rate differently, so that a row of ratings is of one of them
 * and the two are never joined.
 */
public final class Trends {

    private Trends() {}

    /** Who rated. */
    public enum Rater {
        CHILD,
        ADULT
    }

    /**
     * One exercise on one day.
     *
     * @param exercise identifier
     * @param day the day it was for
     * @param planned whether it was planned
     * @param said what was said of it
     * @param reason why it was not done, in the clinic's key; empty when it was or nothing was said
     * @param effort 0 to 10, if it was rated
     * @param pain 0 to 10, if it was rated
     * @param rater who rated, if anybody did
     */
    public record Log(
            String exercise,
            LocalDate day,
            boolean planned,
            Said said,
            Optional<String> reason,
            Optional<Integer> effort,
            Optional<Integer> pain,
            Optional<Rater> rater) {

        /** What a log says as its reason when it hurt. */
        public static final String PAIN = "PAIN";

        /** Whether it could not be because of pain. */
        public boolean stoppedByPain() {
            return reason.filter(PAIN::equals).isPresent();
        }
    }

    /**
     * How much of a week was done.
     *
     * @param begins its first day
     * @param adherence the counts; what was not reported stands apart there
     */
    public record Week(LocalDate begins, Adherence adherence) {}

    /** A reason and how often it was given. */
    public record Given(String reason, int times) {}

    /**
     * So many weeks one after another, whether anything was planned in them or not.
     *
     * @param begins first day of the first week
     * @param count how many
     */
    public static List<Week> weeks(Collection<Log> logs, LocalDate begins, int count) {
        return IntStream.range(0, count)
                .mapToObj(begins::plusWeeks)
                .map(week -> new Week(
                        week,
                        adherence(logs.stream()
                                .filter(log ->
                                        !log.day().isBefore(week) && log.day().isBefore(week.plusWeeks(1)))
                                .toList())))
                .toList();
    }

    /** How much of all of it was done. */
    public static Adherence adherence(Collection<Log> logs) {
        return Adherence.of(
                logs.stream().map(log -> new Session(log.planned(), log.said())).toList());
    }

    /** The highest pain of each day on which that person rated it. */
    public static RunChart pain(Collection<Log> logs, Rater rater) {
        return chart(logs, rater, Log::pain);
    }

    /** The highest effort of each day on which that person rated it. */
    public static RunChart effort(Collection<Log> logs, Rater rater) {
        return chart(logs, rater, Log::effort);
    }

    private static RunChart chart(Collection<Log> logs, Rater rater, Function<Log, Optional<Integer>> number) {
        var highest = new TreeMap<LocalDate, Integer>();
        logs.stream()
                .filter(log -> log.rater().filter(who -> who == rater).isPresent())
                .forEach(log -> number.apply(log).ifPresent(rated -> highest.merge(log.day(), rated, Math::max)));
        return RunChart.of(highest.entrySet().stream()
                .map(day -> new Point(day.getKey(), day.getValue()))
                .toList());
    }

    /** Why sessions were not done, the most frequent first. */
    public static List<Given> reasons(Collection<Log> logs) {
        return logs.stream()
                .flatMap(log -> log.reason().stream())
                .collect(Collectors.groupingBy(reason -> reason, Collectors.summingInt(reason -> 1)))
                .entrySet()
                .stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(reason -> new Given(reason.getKey(), reason.getValue()))
                .toList();
    }
}
