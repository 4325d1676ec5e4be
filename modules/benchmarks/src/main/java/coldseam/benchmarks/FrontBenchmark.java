package coldseam.benchmarks;

import coldseam.options.front.Front;
import coldseam.options.front.Item;
import coldseam.options.front.Scenario;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of the front of 40 decisions of 6 options in 20 combinations of build-ups, once their sections are solved. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 3)
public class FrontBenchmark {

    private static final int COMBINATIONS = 20;
    private static final int GROUPS = 40;
    private static final int OPTIONS = 6;

    private ImmutableList<Scenario> house;

    /** Dearer options lose less, more or less; intervals of some 0.0003 W/K, as solved sections have. */
    @Setup
    public void build() {
        Random random = new Random(11);
        house = Lists.immutable.fromStream(IntStream.range(0, COMBINATIONS).mapToObj(s -> {
            long plane = 150_000_000 - 2_000_000L * s;
            return new Scenario(
                    new Item(s, 700L * s, plane, plane),
                    Lists.immutable.fromStream(IntStream.range(0, GROUPS).mapToObj(g -> group(random))));
        }));
    }

    private static ImmutableList<Item> group(Random random) {
        double size = 0.5 + 3 * random.nextDouble();
        return Lists.immutable.fromStream(IntStream.range(0, OPTIONS).mapToObj(k -> {
            long low = Math.round(1e6 * size * Math.exp(-0.5 * k) * (0.7 + 0.6 * random.nextDouble()));
            long cost = k == 0 ? 0 : Math.round(200 * k * (0.5 + random.nextDouble()));
            return new Item(k, cost, low, low + Math.round(600 * random.nextDouble()));
        }));
    }

    /** Finds the front, cold. */
    @Benchmark
    public Front front() {
        return Front.of(house);
    }
}
