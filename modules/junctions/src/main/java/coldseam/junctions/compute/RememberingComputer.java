package coldseam.junctions.compute;

import coldseam.conduction.Accuracy;
import coldseam.junctions.BodySolving;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Keeping;
import coldseam.junctions.Once;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.PointDrawing;
import coldseam.junctions.path.PathFinding;
import org.eclipse.collections.api.factory.Lists;

/** Answers equal questions once. Equal means equal content: two files with the same text are one detail. */
final class RememberingComputer implements BridgeComputer {

    private final Accuracy accuracy;
    private final SectionSolving solving;
    private final BodySolving bodies;
    private final PathFinding paths;
    private final Keeping keeping;
    private final Once<Question, BridgeResult> answers = new Once<>(this::computed);
    private final BridgeComputer comparing;

    private record Question(Detail detail, BridgeSetup setup) {}

    RememberingComputer(
            Accuracy accuracy, SectionSolving solving, BodySolving bodies, PathFinding paths, Keeping keeping) {
        this.accuracy = accuracy;
        this.solving = solving;
        this.bodies = bodies;
        this.paths = paths;
        this.keeping = keeping;
        Accuracy wider = BridgeComputers.comparing(accuracy);
        this.comparing =
                wider.equals(accuracy) ? this : new RememberingComputer(wider, solving, bodies, paths, keeping);
    }

    @Override
    public BridgeComputer comparing() {
        return comparing;
    }

    @Override
    public JunctionResult compute(Detail detail, JunctionSetup setup) {
        // A setup's sort decides the result's.
        return (JunctionResult) answers.answer(new Question(detail, setup));
    }

    @Override
    public PointResult compute(Detail detail, PointSetup setup) {
        return (PointResult) answers.answer(new Question(detail, setup));
    }

    private BridgeResult computed(Question question) {
        // The picture of a point of boxes is a cut through its body, which is kept.
        return question.detail.drawing() instanceof PointDrawing point && !point.isRound()
                ? fromTheStart(question)
                : (BridgeResult)
                        keeping.answer(Lists.immutable.of(question.detail, (Record) question.setup, accuracy), () ->
                                (Record) fromTheStart(question));
    }

    private BridgeResult fromTheStart(Question question) {
        return question.setup instanceof JunctionSetup junction
                ? BridgeComputers.compute(question.detail, junction, accuracy, solving, paths)
                : BridgeComputers.compute(question.detail, (PointSetup) question.setup, accuracy, solving, bodies);
    }
}
