package org.hearthway.path.engine.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.hearthway.path.engine.network.Condition.Apart;
import org.hearthway.path.engine.network.Condition.Between;
import org.hearthway.path.engine.network.Condition.Gap;
import org.hearthway.path.engine.network.Condition.On;
import org.hearthway.path.engine.network.Point.Aim;
import org.jgrapht.alg.shortestpath.FloydWarshallShortestPaths;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/** What holds for every network, measured against counting through all days and against a general graph library. */
class NetworkProperties {

    /** A month end lies within the small calendars, so that months of different length are counted through. */
    private static final LocalDate ZERO = LocalDate.of(2027, 1, 20);

    private static final int DAYS = 60;
    private static final Span HORIZON = new Span(ZERO, ZERO.plusDays(DAYS));

    /** A small network made of one number, so that a failing one can be made again. */
    @Provide
    Arbitrary<Network> small() {
        return Arbitraries.longs().map(seed -> small(new Random(seed)));
    }

    private static Network small(Random random) {
        int size = 2 + random.nextInt(3);
        var points = new ArrayList<Point>();
        var conditions = new ArrayList<Condition>();
        for (int i = 0; i < size; i++) {
            var aim = i == 0
                    ? Optional.<Aim>empty()
                    : Optional.of(new Aim("p" + random.nextInt(i), gap(random, random.nextInt(30))));
            points.add(new Point("p" + i, aim));
        }
        conditions.add(Between.on("start", "p0", ZERO.plusDays(random.nextInt(12))));
        int rules = 1 + random.nextInt(4);
        for (int i = 0; i < rules; i++) {
            int from = random.nextInt(size);
            int to = (from + 1 + random.nextInt(size - 1)) % size;
            int least = random.nextInt(40) - 12;
            conditions.add(new Gap(
                    "gap" + i,
                    "p" + from,
                    "p" + to,
                    random.nextInt(4) == 0 ? Optional.empty() : Optional.of(gap(random, least)),
                    random.nextInt(3) == 0
                            ? Optional.empty()
                            : Optional.of(gap(random, least + 5 + random.nextInt(12)))));
        }
        for (int i = 1; i < size; i++) {
            if (random.nextBoolean()) {
                conditions.add(new On("days" + i, "p" + i, days(random)));
            }
        }
        int pairs = random.nextInt(3);
        for (int i = 0; i < pairs; i++) {
            int one = random.nextInt(size);
            int other = (one + 1 + random.nextInt(size - 1)) % size;
            conditions.add(new Apart("apart" + i, "p" + one, "p" + other, 1 + random.nextInt(14)));
        }
        return new Network(points, conditions, HORIZON);
    }

    private static Period gap(Random random, int days) {
        return days >= 28 && random.nextBoolean() ? Period.ofMonths(1).plusDays(days - 30L) : Period.ofDays(days);
    }

    private static Days days(Random random) {
        var closed = new BitSet();
        int share = 1 + random.nextInt(6);
        for (int i = 0; i <= DAYS; i++) {
            closed.set(i, random.nextInt(7) < share);
        }
        return Days.where(ZERO, HORIZON.last(), day -> !closed.get((int) ChronoUnit.DAYS.between(ZERO, day)));
    }

    /** Every schedule there is, found by trying each day for each point. */
    private static final class Every {

        private final Network network;
        private final List<String> ids;
        private final Map<String, LocalDate> days = new HashMap<>();
        private final Map<String, Span> spans = new HashMap<>();

        Every(Network network, List<String> ids) {
            this.network = network;
            this.ids = ids;
            tryAll(0);
        }

        private void tryAll(int at) {
            if (at == ids.size()) {
                days.forEach((id, day) -> spans.merge(id, new Span(day, day), Span::and));
                return;
            }
            for (int i = 0; i <= DAYS; i++) {
                days.put(ids.get(at), ZERO.plusDays(i));
                if (network.conditions().stream().allMatch(this::holds)) {
                    tryAll(at + 1);
                }
            }
            days.remove(ids.get(at));
        }

        private boolean holds(Condition condition) {
            if (condition instanceof Between between) {
                var day = days.get(between.point());
                return day == null || !day.isBefore(between.first()) && !day.isAfter(between.last());
            }
            if (condition instanceof On on) {
                var day = days.get(on.point());
                return day == null || on.days().allow(day);
            }
            if (condition instanceof Apart apart) {
                var one = days.get(apart.one());
                var other = days.get(apart.other());
                return one == null || other == null || Math.abs(ChronoUnit.DAYS.between(one, other)) >= apart.days();
            }
            var gap = (Gap) condition;
            var from = days.get(gap.from());
            var to = days.get(gap.to());
            return from == null
                    || to == null
                    || gap.least().map(least -> !to.isBefore(from.plus(least))).orElse(true)
                            && gap.most()
                                    .map(most -> !to.isAfter(from.plus(most)))
                                    .orElse(true);
        }
    }

    private static List<String> ids(Network network) {
        return network.points().stream().map(Point::id).toList();
    }

    @Property(tries = 500)
    void agreesWithTryingEveryDay(@ForAll("small") Network network) {
        var every = new Every(network, ids(network));

        assertThat(network.isPossible()).isEqualTo(!every.spans.isEmpty());
        assertThat(network.bounds().orElse(Map.of())).isEqualTo(every.spans);
    }

    @Property(tries = 300)
    void placesEachPointAsNearToItsAimAsThePointsBeforeItAllow(@ForAll("small") Network network) {
        var schedule = network.schedule();

        assertThat(schedule.isPresent()).isEqualTo(network.isPossible());
        schedule.ifPresent(found -> {
            var narrowed = network;
            for (var point : network.points()) {
                var placed = found.of(point.id());
                var wanted = point.aim()
                        .map(aim -> found.day(aim.from()).plus(aim.usual()))
                        .orElse(HORIZON.first());
                assertThat(nearer(narrowed, point.id(), placed.day(), wanted)).isEmpty();
                narrowed = narrowed.with(Between.on("placed " + point.id(), point.id(), placed.day()));
            }
            assertThat(narrowed.isPossible()).isTrue();
        });
    }

    /** A day that is nearer to the wanted one than the day chosen, or as near and later, and would have worked. */
    private static Optional<LocalDate> nearer(Network network, String point, LocalDate chosen, LocalDate wanted) {
        long distance = Math.abs(ChronoUnit.DAYS.between(wanted, chosen));
        return HORIZON.first()
                .datesUntil(HORIZON.last().plusDays(1))
                .filter(day -> {
                    long other = Math.abs(ChronoUnit.DAYS.between(wanted, day));
                    return other < distance || other == distance && day.isAfter(chosen);
                })
                .filter(day -> network.with(Between.on("tried", point, day)).isPossible())
                .findFirst();
    }

    @Property(tries = 500)
    void aConflictIsGoneWithoutAnyOneOfItsRules(@ForAll("small") Network network) {
        var conflict = network.conflict();

        assertThat(conflict.isEmpty()).isEqualTo(network.isPossible());
        var only = network;
        for (var condition : network.conditions()) {
            if (!conflict.contains(condition.rule())) {
                only = only.without(condition.rule());
            }
        }
        for (var rule : conflict) {
            assertThat(only.isPossible()).isFalse();
            assertThat(only.without(rule).isPossible()).isTrue();
        }
    }

    @Property(tries = 300)
    void aWayOutLeadsOut(@ForAll("small") Network network) {
        for (var way : WaysOut.of(network, network.conflict(), rule -> true)) {
            assertThat(way.days()).isPositive();
            if (way instanceof WayOut.Move move) {
                assertThat(network.without(move.rule())
                                .with(Between.on(move.rule(), move.point(), move.to()))
                                .isPossible())
                        .isTrue();
            }
        }
    }

    @Property(tries = 300)
    void doesNotDependOnTheOrderOfTheRules(@ForAll("small") Network network, @ForAll long seed) {
        var shuffled = new ArrayList<>(network.conditions());
        Collections.shuffle(shuffled, new Random(seed));
        var other = new Network(network.points(), shuffled, HORIZON);

        assertThat(other.bounds()).isEqualTo(network.bounds());
        assertThat(other.schedule().map(NetworkProperties::dates))
                .isEqualTo(network.schedule().map(NetworkProperties::dates));
    }

    private static Map<String, LocalDate> dates(Schedule schedule) {
        var dates = new HashMap<String, LocalDate>();
        schedule.placed().forEach((id, placed) -> dates.put(id, placed.day()));
        return dates;
    }

    /** Gaps in days alone: the bounds are shortest paths, reckoned here by the Floyd-Warshall of JGraphT. */
    @Property(tries = 300)
    void agreesWithShortestPathsWhereAllGapsAreDays(@ForAll long seed) {
        var random = new Random(seed);
        int size = 3 + random.nextInt(10);
        var points = new ArrayList<Point>();
        var conditions = new ArrayList<Condition>();
        var graph = new SimpleDirectedWeightedGraph<String, DefaultWeightedEdge>(DefaultWeightedEdge.class);
        for (int i = 0; i < size; i++) {
            points.add(new Point("p" + i, Optional.empty()));
            graph.addVertex("p" + i);
        }
        conditions.add(Between.on("start", "p0", ZERO));
        for (int to = 1; to < size; to++) {
            int from = random.nextInt(to);
            gap(graph, conditions, from, to, random.nextInt(60), random.nextInt(60));
        }
        for (int i = 0; i < size; i++) {
            int from = random.nextInt(size);
            int to = (from + 1 + random.nextInt(size - 1)) % size;
            if (graph.getEdge("p" + from, "p" + to) == null && graph.getEdge("p" + to, "p" + from) == null) {
                gap(graph, conditions, from, to, random.nextInt(120) - 60, random.nextInt(90));
            }
        }
        var network = new Network(points, conditions, new Span(ZERO.minusDays(3000), ZERO.plusDays(3000)));

        var paths = new FloydWarshallShortestPaths<>(graph);
        boolean negative = graph.vertexSet().stream()
                .anyMatch(v -> graph.vertexSet().stream()
                        .anyMatch(w -> paths.getPathWeight(v, w) + paths.getPathWeight(w, v) < 0));

        assertThat(network.isPossible()).isEqualTo(!negative);
        network.bounds()
                .ifPresent(bounds -> bounds.forEach((id, span) -> {
                    assertThat(span.last()).isEqualTo(ZERO.plusDays((long) paths.getPathWeight("p0", id)));
                    assertThat(span.first()).isEqualTo(ZERO.minusDays((long) paths.getPathWeight(id, "p0")));
                }));
    }

    private static void gap(
            SimpleDirectedWeightedGraph<String, DefaultWeightedEdge> graph,
            List<Condition> conditions,
            int from,
            int to,
            int least,
            int more) {
        conditions.add(new Gap(
                "gap " + from + " " + to,
                "p" + from,
                "p" + to,
                Optional.of(Period.ofDays(least)),
                Optional.of(Period.ofDays(least + more))));
        graph.setEdgeWeight(graph.addEdge("p" + from, "p" + to), least + more);
        graph.setEdgeWeight(graph.addEdge("p" + to, "p" + from), -least);
    }

    @Property
    void goingBackByAPeriodIsTheExactOppositeOfGoingOn(
            @ForAll @IntRange(max = 1500) int day,
            @ForAll @IntRange(min = -30, max = 30) int months,
            @ForAll @IntRange(min = -60, max = 60) int days) {
        var bound = LocalDate.of(2024, 1, 1).plusDays(day);
        var period = Period.ofMonths(months).plusDays(days);

        var last = Gaps.lastLeadingTo(bound, period);
        var first = Gaps.firstLeadingTo(bound, period);

        assertThat(last.plus(period)).isBeforeOrEqualTo(bound);
        assertThat(last.plusDays(1).plus(period)).isAfter(bound);
        assertThat(first.plus(period)).isAfterOrEqualTo(bound);
        assertThat(first.minusDays(1).plus(period)).isBefore(bound);
    }

    @Property
    void aLooseGapHoldsTheCalendarsOwn(
            @ForAll @IntRange(max = 3000) int day,
            @ForAll @IntRange(min = -130, max = 130) int months,
            @ForAll @IntRange(min = -60, max = 60) int days) {
        var from = LocalDate.of(2024, 1, 1).plusDays(day);
        var period = Period.ofMonths(months).plusDays(days);

        assertThat(ChronoUnit.DAYS.between(from, from.plus(period)))
                .isBetween(Loosened.shortest(period), Loosened.longest(period));
    }
}
