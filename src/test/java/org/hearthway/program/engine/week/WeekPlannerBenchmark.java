package org.hearthway.program.engine.week;

import java.lang.management.ManagementFactory;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
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
 * How long a week of fifteen exercises takes, the first time and again after a day fell out. Started by {@code mvn
 * test-compile exec:exec@bench-week}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class WeekPlannerBenchmark {

    private final Weeks.Case first = Weeks.family();
    private final List<Weeks.Case> again = again();
    private int turn;
    private int consumed;

    private List<Weeks.Case> again() {
        var last = first.plan().placed();
        var cases = new ArrayList<Weeks.Case>();
        for (var day : DayOfWeek.values()) {
            cases.add(new Weeks.Case(first.week().withoutDays(Set.of(day)), first.asks(), last));
        }
        return cases;
    }

    /** A first week. */
    @Benchmark
    public WeekPlan plan() {
        return first.plan();
    }

    /** The week after, with one day taken away, each time another. */
    @Benchmark
    public WeekPlan planAgain() {
        turn = (turn + 1) % again.size();
        return again.get(turn).plan();
    }

    /** Runs both, by the clock and by the processor. */
    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(WeekPlannerBenchmark.class.getSimpleName())
                        .build())
                .run();
        var here = new WeekPlannerBenchmark();
        here.cpuTime(here::plan);
        here.cpuTime(here::planAgain);
        System.out.printf(
                "Of a processor: a first week %.1f ms, again after a day fell out %.1f ms; load %.1f.%n",
                here.cpuTime(here::plan),
                here.cpuTime(here::planAgain),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    /** Milliseconds of a processor for one time of it, which other work on the machine lengthens little. */
    private double cpuTime(Supplier<WeekPlan> work) {
        var times = 10 * again.size();
        var threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        for (int n = 0; n < times; n++) {
            consumed ^= work.get().proved();
        }
        return (threads.getCurrentThreadCpuTime() - before) / 1e6 / times;
    }
}
