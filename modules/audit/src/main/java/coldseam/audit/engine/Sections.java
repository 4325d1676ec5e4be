package coldseam.audit.engine;

import coldseam.junctions.BridgeComputer;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.detail.Detail;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * The sections that audits need, counted before they are solved.
 *
 * @param all each once
 */
public record Sections(ImmutableSet<Section> all) {

    /** A detail for a setup. */
    public record Section(Detail detail, BridgeSetup setup) {}

    /**
     * What audits ask for.
     *
     * @param audits runs them with a computer that notes every question and answers none
     */
    public static Sections of(Consumer<BridgeComputer> audits) {
        Set<Section> asked = ConcurrentHashMap.newKeySet();
        audits.accept(new Noting(asked));
        return new Sections(Sets.immutable.withAll(asked));
    }

    /**
     * Solves all of them on all cores; a computer that remembers answers the audits from memory then.
     *
     * @param progress hears how many are solved
     */
    public void solve(BridgeComputer computer, Progress progress) {
        Answers.compute(
                "sections",
                all.toImmutableList(),
                section -> computer.compute(section.detail(), section.setup()),
                progress);
    }

    private record Noting(Set<Section> asked) implements BridgeComputer {

        @Override
        public JunctionResult compute(Detail detail, JunctionSetup setup) {
            throw note(detail, setup);
        }

        @Override
        public PointResult compute(Detail detail, PointSetup setup) {
            throw note(detail, setup);
        }

        private DetailDoesNotFit note(Detail detail, BridgeSetup setup) {
            asked.add(new Section(detail, setup));
            return DetailDoesNotFit.of("not computed yet");
        }
    }
}
