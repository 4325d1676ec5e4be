package coldseam.junctions.compute;

import coldseam.conduction.Accuracy;
import coldseam.envelope.Material;
import coldseam.junctions.BodySolving;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.PathFinding;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;

/** Answers equal questions once. Equal means equal content: two files with the same text are one detail. */
final class RememberingComputer implements BridgeComputer {

    private final Accuracy accuracy;
    private final SectionSolving solving;
    private final BodySolving bodies;
    private final PathFinding paths;
    private final Function<String, Optional<Material>> library;
    private final Map<Question, BridgeResult> answers = new ConcurrentHashMap<>();
    private final BridgeComputer comparing;

    private record Question(Detail detail, BridgeSetup setup) {}

    RememberingComputer(
            Accuracy accuracy,
            SectionSolving solving,
            BodySolving bodies,
            PathFinding paths,
            Function<String, Optional<Material>> library) {
        this.accuracy = accuracy;
        this.solving = solving;
        this.bodies = bodies;
        this.paths = paths;
        this.library = library;
        Accuracy wider = BridgeComputers.comparing(accuracy);
        this.comparing =
                wider.equals(accuracy) ? this : new RememberingComputer(wider, solving, bodies, paths, library);
    }

    @Override
    public BridgeComputer comparing() {
        return comparing;
    }

    @Override
    public JunctionResult compute(Detail detail, JunctionSetup setup) {
        return answer(detail, setup, () -> BridgeComputers.compute(detail, setup, accuracy, solving, paths, library));
    }

    @Override
    public PointResult compute(Detail detail, PointSetup setup) {
        return answer(detail, setup, () -> BridgeComputers.compute(detail, setup, accuracy, solving, bodies));
    }

    /** Computed inside the map, so that of two threads with one question the second waits for the first. */
    @SuppressWarnings("unchecked")
    private <R extends BridgeResult> R answer(Detail detail, BridgeSetup setup, Supplier<R> computed) {
        // A setup's sort decides the result's.
        return (R) answers.computeIfAbsent(new Question(detail, setup), question -> computed.get());
    }
}
