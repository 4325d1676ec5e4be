package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What carries hangs together in a drawing, or the drawing is refused. */
class FloatingStructureTest {

    private static final JunctionSetup CORNER = TypicalBuild.MASONRY.setup(JunctionKind.OUTSIDE_CORNER);

    /** The same layers with the insulation inside the structure. */
    private static Assembly insulatedInside(Assembly assembly) {
        Layer insulation = assembly.layers().detect(layer -> layer.role() == Role.INSULATION);
        int at = assembly.layers().detectIndex(layer -> layer.role() == Role.STRUCTURE);
        var others = assembly.layers().reject(insulation::equals).toList();
        others.add(at, insulation);
        return new Assembly(
                "insulated inside", others.toImmutable(), assembly.fasteners(), assembly.gaps(), assembly.rain());
    }

    private static void compose(JunctionSetup setup) {
        Composer.compose(
                // As found, so that nobody asks first whether it is drawn for insulation on two sides.
                CatalogueFile.builtIn()
                        .find("outside-corner-unbroken")
                        .orElseThrow()
                        .asFound(),
                setup);
    }

    private static void slabEdge(String detail, Assembly floor, Assembly wall) {
        JunctionSetup setup = TypicalBuild.MASONRY.setup(JunctionKind.SLAB_EDGE);
        Composer.compose(CatalogueFile.builtIn().find(detail).orElseThrow(), setup.between(floor, Optional.of(wall)));
    }

    /** The soil joins all that stands in it, so nothing floats there; the words would not be those of the drawing. */
    @Test
    void insulationThatChangesSidesNeedsADrawingMadeForIt() {
        JunctionSetup setup = TypicalBuild.MASONRY.setup(JunctionKind.SLAB_EDGE);
        Assembly floor = setup.first();
        Assembly wall = setup.second().orElseThrow();
        assertDoesNotThrow(() -> slabEdge("slab-edge-raft", floor, wall));
        DetailDoesNotFit refused =
                assertThrows(DetailDoesNotFit.class, () -> slabEdge("slab-edge-raft", floor, insulatedInside(wall)));
        assertTrue(refused.getMessage().contains("that of the wall lies inside"), refused.getMessage());
        DetailDoesNotFit other =
                assertThrows(DetailDoesNotFit.class, () -> slabEdge("slab-edge-raft", insulatedInside(floor), wall));
        assertTrue(other.getMessage().contains("that of the floor lies inside"), other.getMessage());
    }

    @Test
    void aDrawingIsMadeForOneWayRound() {
        JunctionSetup setup = TypicalBuild.MASONRY.setup(JunctionKind.SLAB_EDGE);
        Assembly floor = setup.first();
        Assembly wall = setup.second().orElseThrow();
        assertDoesNotThrow(() -> slabEdge("slab-edge-in-old-walls-course", insulatedInside(floor), wall));
        assertThrows(
                DetailDoesNotFit.class, () -> slabEdge("slab-edge-in-old-walls-course", floor, insulatedInside(wall)));
    }

    @Test
    void theWorstOfAKindShowsWhatIsWrong() {
        JunctionSetup setup = TypicalBuild.MASONRY.setup(JunctionKind.SLAB_EDGE);
        Assembly wall = insulatedInside(setup.second().orElseThrow());
        assertDoesNotThrow(() -> slabEdge("slab-edge-bare", setup.first(), wall));
    }

    @Test
    void wallsInsulatedOnOneSideMeet() {
        Assembly inside = insulatedInside(CORNER.first());
        assertDoesNotThrow(() -> compose(CORNER));
        assertDoesNotThrow(() -> compose(CORNER.between(inside, Optional.of(inside))));
    }

    @Test
    void woolThatCutsThroughTheBrickIsRefused() {
        Assembly inside = insulatedInside(CORNER.first());
        for (JunctionSetup mixed : new JunctionSetup[] {
            CORNER.between(inside, CORNER.second()), CORNER.between(CORNER.first(), Optional.of(inside))
        }) {
            DetailDoesNotFit refused = assertThrows(DetailDoesNotFit.class, () -> compose(mixed));
            assertTrue(refused.getMessage().contains("float"), refused.getMessage());
        }
    }
}
