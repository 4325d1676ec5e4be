package coldseam.junctions.compute;

import coldseam.conduction.Accuracy;
import coldseam.envelope.Material;
import coldseam.junctions.JunctionComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.detail.Detail;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** Answers equal questions once. Equal means equal content: two files with the same text are one detail. */
final class RememberingComputer implements JunctionComputer {

    private final Accuracy accuracy;
    private final SectionSolving solving;
    private final Function<String, Optional<Material>> library;
    private final Map<Question, JunctionResult> answers = new ConcurrentHashMap<>();

    private record Question(Detail detail, JunctionSetup setup) {}

    RememberingComputer(Accuracy accuracy, SectionSolving solving, Function<String, Optional<Material>> library) {
        this.accuracy = accuracy;
        this.solving = solving;
        this.library = library;
    }

    @Override
    public JunctionResult compute(Detail detail, JunctionSetup setup) {
        // Computed inside the map, so that of two threads with one question the second waits for the first.
        return answers.computeIfAbsent(
                new Question(detail, setup),
                question -> JunctionComputers.compute(detail, setup, accuracy, solving, library));
    }
}
