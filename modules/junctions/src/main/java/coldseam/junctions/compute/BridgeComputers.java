package coldseam.junctions.compute;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.SectionException;
import coldseam.conduction.Solution;
import coldseam.conduction.SurfaceTemperature;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solve.Conduction;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.BodySolving;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionMeasures;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Keeping;
import coldseam.junctions.Measuring;
import coldseam.junctions.Once;
import coldseam.junctions.PenLine;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.hand.HandDrawing;
import coldseam.junctions.path.ControlLines;
import coldseam.junctions.path.PathFinding;
import coldseam.junctions.path.PathQuestion;
import coldseam.junctions.path.PenLines;
import coldseam.junctions.path.WeakestPaths;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.point.PointBoxes;
import coldseam.junctions.point.PointComposition;
import coldseam.junctions.point.PointSolution;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Surroundings;
import coldseam.junctions.store.KeptFolder;
import coldseam.junctions.store.PathStore;
import coldseam.junctions.store.SolutionStore;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Makes computers of details.
 *
 * <p>chi is a small difference of two larger numbers, so a point's coupling is solved ten times as narrowly as that of a line
 * junction: 1e-5 of a disc of 3 m² at U 0.2 W/(m²·K) is 0.000006 W/K.
 */
public final class BridgeComputers {

    private BridgeComputers() {}

    /** How many times as narrowly points are solved as junctions. */
    private static final double POINTS_NARROWER = 10;

    /**
     * The relative width for details that are only compared: a coupling of 1 W/(m·K) within 0.0005, where options of one kind
     * differ by hundredths.
     */
    private static final double COMPARED = 1e-3;

    /** What details that another is only compared with are solved to: a coupling within 1e-3, a point's within 1e-4. */
    static Accuracy comparing(Accuracy accuracy) {
        return accuracy.relativeWidth() < COMPARED ? new Accuracy(COMPARED, accuracy.maximumUnknowns()) : accuracy;
    }

    /** A computer that solves to an accuracy and remembers what it has solved; safe to use from several threads. */
    public static BridgeComputer computer(Accuracy accuracy) {
        return computer(accuracy, Conduction::solve, BodySolver::solve, WeakestPaths::of, Keeping.NOTHING);
    }

    /** Measures, and keeps the numbers of what it has solved in a folder, for later runs. */
    public static Measuring measuring(Accuracy accuracy, KeptFolder folder) {
        return measuring(
                accuracy, SolutionStore.ofNumbers(folder, Conduction::solve), new PathStore(folder, WeakestPaths::of));
    }

    /** Measures with a solver and a search. */
    public static Measuring measuring(Accuracy accuracy, SectionSolving sections, PathFinding paths) {
        record Question(Detail detail, JunctionSetup setup) {}
        Once<Question, JunctionMeasures> answers =
                new Once<>(question -> measured(question.detail, question.setup, accuracy, sections, paths)
                        .measures());
        return (detail, setup) -> answers.answer(new Question(detail, setup));
    }

    /** A computer that remembers what some solvers have solved and a search has found, and what was kept of both together. */
    public static BridgeComputer computer(
            Accuracy accuracy, SectionSolving sections, BodySolving bodies, PathFinding paths, Keeping keeping) {
        return new RememberingComputer(accuracy, sections, bodies, paths, keeping);
    }

    /** Computes a point's detail from the start. */
    static PointResult compute(
            Detail detail, PointSetup setup, Accuracy accuracy, SectionSolving sections, BodySolving bodies) {
        try {
            return solved(detail, setup, accuracy, sections, bodies);
        } catch (SectionException unsolvable) {
            throw cannotBeDrawn(detail, unsolvable);
        }
    }

    private static DetailDoesNotFit cannotBeDrawn(Detail detail, SectionException unsolvable) {
        return DetailDoesNotFit.of(detail.who() + " cannot be computed of these layers: " + unsolvable.getMessage());
    }

    private static PointResult solved(
            Detail detail, PointSetup setup, Accuracy accuracy, SectionSolving sections, BodySolving bodies) {
        PointComposition composition = PointComposition.compose(detail, setup);
        Optional<PointBoxes.Solved> ofBoxes = composition
                .boxes()
                .map(boxes -> boxes.solve(
                        composition.section(),
                        BodySolver.STANDARD.maximumUnknowns(),
                        accuracy.relativeWidth() >= COMPARED,
                        bodies));
        PointSolution solved = ofBoxes.map(PointBoxes.Solved::shown)
                .orElseGet(() -> PointSolution.of(
                        composition.section(),
                        new Accuracy(accuracy.relativeWidth() / POINTS_NARROWER, accuracy.maximumUnknowns()),
                        sections));
        if (detail.own() && solved.chi().upper() < 0 && insulates(composition)) {
            throw DetailDoesNotFit.of(
                    Phrase.of(detail.who() + " would take ")
                            .and(-solved.chi().middle(), Dimension.POINT_TRANSMITTANCE)
                            .and(
                                    " off what \"" + setup.host().name()
                                            + "\" loses; what goes through it takes nothing off."
                                            + " Insulation that goes on beside it is a layer of the surface: leave it out of the point."));
        }
        double factor = setup.exposure().factor() > 0 ? setup.exposure().factor() : 1;
        return new PointResult(
                detail,
                setup,
                solved.solution(),
                ofBoxes.map(PointBoxes.Solved::solution),
                composition.pieces(),
                composition.fills(),
                solved.section().radius(),
                solved.section().transmittance(),
                solved.coupling(),
                solved.chi(),
                1 - factor * (1 - solved.temperatureFactor()),
                solved.coldest(),
                Lists.immutable
                        .withAll(composition.notes())
                        .newWithAll(solved.solution().notes())
                        .distinct());
    }

    /** Whether a point draws insulation of its own. Without it, wood in brick may still lose a little less than the brick. */
    private static boolean insulates(PointComposition composition) {
        return composition
                .fills()
                .anySatisfy(fill -> fill.filter(each -> each.origin() instanceof Origin.OfDetail
                                && each.material().insulates())
                        .isPresent());
    }

    /** Computes a junction's detail from the start. */
    public static JunctionResult compute(
            Detail detail, JunctionSetup setup, Accuracy accuracy, SectionSolving solving, PathFinding paths) {
        return measured(detail, setup, accuracy, solving, paths).result(detail, setup);
    }

    private static Measured measured(
            Detail detail, JunctionSetup setup, Accuracy accuracy, SectionSolving solving, PathFinding paths) {
        Composition composition = detail.drawing() instanceof HandDrawing byHand
                ? byHand.composition(detail.who(), setup)
                : Composer.compose(detail, setup);
        try {
            Solution heatFlow = solving.solve(composition.heatFlow(), accuracy);
            Solution surface = surfaceTemperature(composition, accuracy, solving);
            WeakestPath weakest = paths.find(PathQuestion.of(composition));
            return measured(detail, composition, heatFlow.with(surface.outcome()), surface, weakest);
        } catch (SectionException unsolvable) {
            // Layers in an order that the detail does not reckon with can leave a piece without a way to any air.
            throw cannotBeDrawn(detail, unsolvable);
        }
    }

    /**
     * The solution the lowest surface temperature is read from. A coupling within 1e-4 leaves a corner's temperature off by
     * some hundredths of the difference, since the error of a point goes with the root of the energy's; so the refinement is
     * aimed at the coldest point, until its error is estimated at no more than a thousandth of the difference.
     */
    private static Solution surfaceTemperature(Composition composition, Accuracy accuracy, SectionSolving solving) {
        Section section = composition.surfaceTemperature();
        double highest =
                section.environments().collectDouble(each -> each.temperature()).max();
        double lowest =
                section.environments().collectDouble(each -> each.temperature()).min();
        return solving.solve(section, SectionSolving.aimed(accuracy, Surroundings.INDOOR, highest - lowest));
    }

    private static Measured measured(
            Detail detail, Composition composition, Solution heatFlow, Solution surface, WeakestPath weakest) {
        Interval coupling =
                Surroundings.coupling(heatFlow, composition.surroundings().spaces());
        SurfaceTemperature<Point> coldest = surface.surface(Surroundings.INDOOR);
        double thinner = composition
                .legs()
                .zip(composition.factors())
                .select(each -> each.getTwo() > 0)
                .collectDouble(each -> each.getOne().insulationThickness())
                .minIfEmpty(0);
        PenLine penLine = PenLines.of(
                composition.insulation(),
                composition.ends().getFirst(),
                composition.ends().getLast(),
                thinner);
        return new Measured(
                composition,
                heatFlow,
                coupling,
                new JunctionMeasures(
                        detail.id(),
                        coupling.plus(-composition.ofLegs(JunctionResult.Leg::externalLength)),
                        coupling.plus(-composition.ofLegs(JunctionResult.Leg::internalLength)),
                        Surroundings.temperatureFactor(surface, coldest.lowest()),
                        penLine,
                        weakest,
                        heatFlow.outcome()),
                coldest.at());
    }

    /** What was measured, with all that its drawing is made of. */
    private record Measured(
            Composition composition, Solution heatFlow, Interval coupling, JunctionMeasures measures, Point coldest) {

        JunctionResult result(Detail detail, JunctionSetup setup) {
            return new JunctionResult(
                    detail,
                    setup,
                    heatFlow,
                    composition.plan(),
                    composition.legs(),
                    coupling,
                    measures.psiExternal(),
                    measures.psiInternal(),
                    measures.temperatureFactor(),
                    coldest,
                    measures.penLine(),
                    measures.weakestPath(),
                    ControlLines.of(composition, detail, measures.penLine()),
                    composition.frameSetBack(),
                    composition.notes().newWithAll(heatFlow.notes()).distinct());
        }
    }
}
