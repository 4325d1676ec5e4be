package coldseam.benchmarks;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.solve.Conduction;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time to a proven interval of 1e-4 on each of the eight sections, drawing included, one thread. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 3)
public class SectionBenchmark {

    /** Which section. */
    @Param({
        "slab-through-insulation",
        "roof-edge",
        "steel-plates",
        "iso-10211-case-2",
        "flashing",
        "window-jamb",
        "slab-on-ground",
        "parapet"
    })
    public String name;

    private Section section;

    /** Builds the section. */
    @Setup
    public void build() {
        section = Sections.of(name);
    }

    /** Solves it; the solution is returned so that nothing of it can be left out. */
    @Benchmark
    public Solution solve() {
        return Conduction.solve(section, Accuracy.standard());
    }
}
