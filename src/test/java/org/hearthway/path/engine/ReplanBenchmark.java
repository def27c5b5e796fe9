package org.hearthway.path.engine;

import java.lang.management.ManagementFactory;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.hearthway.path.engine.Course.Given;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Apart;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Length;
import org.hearthway.path.engine.Template.Repeat;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.Timing;
import org.hearthway.path.engine.Template.VisitNeed;
import org.hearthway.path.engine.network.Days;
import org.hearthway.path.engine.network.Span;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * How long it takes to plan anew a path of 60 stages with ten years of repeats after the clinic moved the operation, and
 * how that compares with the plain shortest-path run over the same network. Started by {@code mvn test-compile
 * exec:exec@bench}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
public class ReplanBenchmark {

    private static final int STAGES = 60;
    private static final LocalDate BEGUN = LocalDate.of(2026, 1, 5);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);

    private final Template path = Paths.path(stages());
    private final Calendar calendar = calendar();
    private final PlainRun plain = PlainRun.of(new PathNetwork(path.stages(), moved(0), calendar, TODAY).network());
    private int turn;
    private int consumed;

    /** A chain with bounds back to earlier stages: every fourth on open days, every sixth comes again for ten years. */
    private static Stage[] stages() {
        var stages = new Stage[STAGES];
        for (int at = 0; at < STAGES; at++) {
            stages[at] = stage(at);
        }
        return stages;
    }

    private static Stage stage(int at) {
        var begins = new ArrayList<After>();
        begins.add(at == 0 ? Paths.begins() : Paths.after(name(at - 1), Edge.START, "P1W", "P3W", "P3M"));
        if (at > 4) {
            begins.add(new After(
                    Optional.of(name(at - 4)),
                    Edge.END,
                    Period.ofDays(1),
                    Optional.empty(),
                    Optional.of(Period.ofYears(1))));
        }
        var timing = new Timing(
                begins,
                new Length(Period.ZERO, Period.ofDays(5), Optional.of(Period.ofMonths(2))),
                Optional.empty(),
                at % 4 == 0,
                Optional.empty(),
                at == 6,
                false,
                at % 6 == 5
                        ? Optional.of(new Repeat(Period.ofMonths(3), Optional.of(40), Optional.empty()))
                        : Optional.empty(),
                at == 12 || at == 30 ? List.of(new Apart(name(at - 3), 14)) : List.of());
        var visits = at % 3 == 0
                ? List.of(Paths.visit("check", "review", "P0D", "P10D"))
                : List.of(new VisitNeed(
                        "again",
                        "review",
                        Period.ofDays(2),
                        Period.ofDays(12),
                        Optional.of(Period.ofMonths(6)),
                        at % 6 == 1 ? 20 : 1,
                        Optional.empty(),
                        Optional.empty()));
        return Paths.with(Paths.stage(name(at), timing), visits, List.of());
    }

    private static String name(int at) {
        return "stage-" + at;
    }

    /** Weekdays, and reviews on three of them, over the sixty years that the program knows. */
    private static Calendar calendar() {
        var known = new Span(TODAY.minusYears(25), TODAY.plusYears(35));
        var open = Days.where(known.first(), known.last(), Paths.WEEKDAYS);
        var reviews = Days.where(
                known.first(),
                known.last(),
                day -> Paths.WEEKDAYS.test(day)
                        && day.getDayOfWeek() != DayOfWeek.MONDAY
                        && day.getDayOfMonth() % 7 != 3);
        return new Calendar(open, Map.of("review", reviews), Map.of(), known);
    }

    private static Course moved(int days) {
        return Course.begun(BEGUN)
                .withGiven(Map.of(name(6), new Given(BEGUN.plusDays(130 + days), Plan.Origin.ACTUAL)));
    }

    /** The whole plan, with its dates, their reasons, all repeats and visits; the operation on another day each time. */
    @Benchmark
    public Plan replan() {
        turn = (turn + 1) % 20;
        return Planner.plan(path, moved(turn), calendar, TODAY);
    }

    /** Earliest and latest days by whole days, on arrays that were made before. */
    @Benchmark
    public long plainShortestPaths() {
        turn = (turn + 1) % 20;
        return plain.run(turn);
    }

    /** Runs both and says how many times longer the whole plan takes. */
    public static void main(String[] arguments) throws RunnerException {
        var options = new OptionsBuilder()
                .include(ReplanBenchmark.class.getSimpleName())
                .jvmArgsAppend("-Xmx512m")
                .build();
        var scores = new HashMap<String, Double>();
        for (var result : new Runner(options).run()) {
            scores.put(
                    result.getPrimaryResult().getLabel(),
                    result.getPrimaryResult().getScore());
        }
        tell("By the clock", scores.getOrDefault("replan", 0.0), scores.getOrDefault("plainShortestPaths", 0.0));
        var here = new ReplanBenchmark();
        here.cpuTime(here::replan, 500);
        here.cpuTime(here::plainShortestPaths, 20_000);
        tell("Of a processor", here.cpuTime(here::replan, 500), here.cpuTime(here::plainShortestPaths, 20_000));
        System.out.printf(
                "%d stages, %d with their repeats; %d processors, load %.1f.%n",
                STAGES,
                here.replan().stages().size(),
                Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    /** Microseconds of a processor for one time of it, which other work on the machine lengthens little. */
    private double cpuTime(Supplier<?> work, int times) {
        var threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        for (int n = 0; n < times; n++) {
            consumed ^= System.identityHashCode(work.get());
        }
        return (threads.getCurrentThreadCpuTime() - before) / 1000.0 / times;
    }

    private static void tell(String by, double replan, double plain) {
        System.out.printf(
                "%s: planning anew %.2f ms, the plain shortest-path run %.1f microseconds, ratio %.0f.%n",
                by, replan / 1000, plain, replan / plain);
    }
}
