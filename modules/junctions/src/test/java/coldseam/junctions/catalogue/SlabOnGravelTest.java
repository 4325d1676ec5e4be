package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.ControlLine;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.ControlLines;
import coldseam.junctions.path.PenLines;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import java.util.Optional;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A slab on foam glass gravel, its sheet between the two: nobody stands gravel up at the edge. */
class SlabOnGravelTest {

    /** The usual slab with other insulation, and a sheet over that which keeps out water. */
    private static Assembly slab(Assembly usual, String insulation) {
        MutableList<Layer> layers = usual.layers()
                .collect(layer -> layer.role() == Role.INSULATION ? of(insulation, 0.3, Role.INSULATION) : layer)
                .toList();
        layers.add(
                layers.detectIndex(layer -> layer.role() == Role.INSULATION),
                of("bitumen sheet", 0.004, Role.MEMBRANE));
        return new Assembly(usual.name(), layers.toImmutable(), usual.fasteners(), usual.gaps(), usual.rain());
    }

    private static Layer of(String material, double thickness, Role role) {
        return new Layer(
                MaterialLibrary.named(material).orElseThrow(),
                thickness,
                role,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.of(role == Role.MEMBRANE ? Control.WATER : Control.HEAT));
    }

    private static Composition composed(Detail detail, String insulation) {
        JunctionSetup usual = TypicalBuild.MASONRY.setup(detail);
        return Composer.compose(detail, usual.between(slab(usual.first(), insulation), usual.second()));
    }

    private static ImmutableList<String> edge(Composition composition) {
        return composition
                .plan()
                .pieces()
                .select(piece -> piece.origin() instanceof Origin.OfDetail of
                        && of.what().startsWith("edge board"))
                .collect(piece -> piece.material().name())
                .distinct();
    }

    @ParameterizedTest
    @ValueSource(strings = {"slab-edge-raft", "slab-threshold-on-block"})
    void theEdgeIsOfBoardsThatRainMaySplash(String id) {
        Detail detail = CatalogueFile.builtIn().find(id).orElseThrow();
        Composition onGravel = composed(detail, "foam glass gravel");
        assertEquals(Lists.immutable.of("extruded polystyrene board"), edge(onGravel));
        assertEquals(
                Lists.immutable.of("cellular glass board"), edge(composed(detail, "cellular glass board")), "bears it");

        PenLine line = PenLines.of(
                onGravel.insulation(),
                onGravel.ends().getFirst(),
                onGravel.ends().getLast(),
                0);
        assertInstanceOf(
                ControlLine.Continuous.class,
                ControlLines.of(onGravel, detail, line).detect(each -> each.control() == Control.WATER));
    }
}
