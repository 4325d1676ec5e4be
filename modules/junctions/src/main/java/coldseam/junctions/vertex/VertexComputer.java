package coldseam.junctions.vertex;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.SectionException;
import coldseam.conduction.SurfaceTemperature;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.Place;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.BodySolving;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.Keeping;
import coldseam.junctions.Once;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.section.Surroundings;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;

/** Computes vertices and remembers what it has computed. */
public final class VertexComputer implements VertexComputing {

    /** What the solver says of its boxes is for who draws a corner; of edges' details nobody can see those. */
    private static final Phrase APART =
            Phrase.of("what its edges' details draw does not fit together there to one body that can be solved");

    /**
     * Relative width from which on refinement is aimed at the coldest place where ground is drawn: its couplings through metres of
     * soil, which converge slowly, are asked of nobody.
     */
    private static final double ON_GROUND = 0.01;

    private final Accuracy accuracy;
    private final BodySolving bodies;
    /** Of cut planes, most of which are several bodies'; their fields, which nobody asks for, are not remembered. */
    private final Once<Section, VertexChi.Plane> planes;

    private final Keeping keeping;
    private final Once<VertexSetup, VertexResult> answers = new Once<>(this::fitting);

    /**
     * @param sections solves their cut planes
     * @param keeping of whole answers
     */
    public VertexComputer(Accuracy accuracy, BodySolving bodies, SectionSolving sections, Keeping keeping) {
        this.accuracy = accuracy;
        this.bodies = bodies;
        Accuracy ofPlanes = new Accuracy(VertexChi.PLANES, accuracy.maximumUnknowns());
        this.planes = new Once<>(section -> VertexChi.Plane.of(sections.solve(section, ofPlanes)));
        this.keeping = keeping;
    }

    @Override
    public VertexResult compute(VertexSetup setup) {
        return answers.answer(setup);
    }

    private VertexResult fitting(VertexSetup setup) {
        try {
            return keeping.answer(Lists.immutable.of(setup, accuracy), () -> computed(setup));
        } catch (SectionException unsolvable) {
            throw new DetailDoesNotFit(
                    setup.corner().filter(CornerDetail::named).isPresent()
                            ? unsolvable.faults().collect(Phrase::of)
                            : Lists.immutable.of(APART));
        }
    }

    private VertexResult computed(VertexSetup setup) {
        VertexBody composed = VertexBody.of("Vertex", setup);
        Optional<VertexResult.Heat> heat = setup.countsHeat()
                ? Optional.of(new VertexChi(
                                setup,
                                composed,
                                bodies.solve(composed.heatFlow(), accuracy.ofHeatAlone()),
                                planes::answer)
                        .heat())
                : Optional.empty();
        double difference = setup.indoorTemperature() - setup.outdoorTemperature();
        Accuracy asked = setup.onGround()
                ? new Accuracy(Math.max(accuracy.relativeWidth(), ON_GROUND), accuracy.maximumUnknowns())
                : accuracy;
        BodySolution surface =
                bodies.solve(composed.surfaceTemperature(), BodySolving.aimed(asked, Surroundings.INDOOR, difference));
        SurfaceTemperature<Place> coldest = surface.surface(Surroundings.INDOOR);
        return new VertexResult(
                setup,
                composed.corner(),
                heat,
                surface,
                (coldest.lowest() - setup.outdoorTemperature()) / difference,
                coldest.at(),
                composed.notes()
                        .newWithAll(heat.map(each -> each.solution().notes()).orElse(surface.notes()))
                        .distinct(),
                composed.inDoubt());
    }
}
