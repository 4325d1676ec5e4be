package coldseam.junctions.vertex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.DrawingFault;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.Cuboid;
import coldseam.conduction.solid.PaintedBox;
import coldseam.conduction.solid.SolidBody;
import coldseam.envelope.CornerKind;
import coldseam.envelope.Material;
import coldseam.files.Fault;
import coldseam.files.FileFaultException;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Corners' own details: their files, and where they lie. */
class CornerFileTest {

    private static final String HEAD =
            "corner: own\nkind: parapet corner\nname: n\nrank: best\nlooks-like: l\norder: []\n"
                    + "connections: {}\nfailures: []\nphotographs: []\n";

    private static Detail read(String rest) {
        return DetailFile.read("own.yaml", HEAD + rest);
    }

    @Test
    void tellsEveryFaultAtItsPlace() {
        FileFaultException refused = assertThrows(FileFaultException.class, () -> read("""
                meets:
                - {kind: slab edge, details: [slab-edge-bare]}
                needs: [deck.insulation]
                drawing:
                - {box: one, material: steel}
                - {box: two, material: same as floor.structure, only-open: true}
                - {box: three, material: steel, between: {deck: [wall.inside, wall.outside]}}
                - {box: four, material: steel, between: {roof: [wall.inside, roof.outside]}}
                - {box: five, material: steel, between: {wall: [wall.inside + roof.outside, wall.outside]}}
                - {box: six, material: steel, only-open: true, where: wall of straw}
                """));
        assertEquals(
                Lists.immutable.of(
                        "11: an edge of a parapet corner is needed",
                        "12: a layer of a surface is needed",
                        "14: a box needs lines",
                        "15: a layer of a surface is needed",
                        "16: a box lies between lines of the corner's surfaces",
                        "17: a line of the roof is needed",
                        "18: a line, a length or a number is needed",
                        "19: a surface's build is needed"),
                refused.faults().collect(CornerFileTest::brief));
    }

    private static String brief(Fault fault) {
        return fault.place().line() + ": " + fault.asked();
    }

    private static VertexSetup parapet(Detail own) {
        VertexSetup bare = TypicalCorner.of(TypicalBuild.MASONRY, own, CatalogueFile.builtIn());
        return bare.with(CornerDetail.find(bare, Lists.immutable.of(own), true));
    }

    @Test
    void refusesABoxThatChangesWhatGoesOn() {
        Detail within = read("drawing:\n- {box: b, material: steel, between: {wall: [wall.inside, wall.outside],"
                + " other wall: [other wall.inside, other wall.outside], roof: [roof.inside, roof.outside]}}\n");
        VertexBody.of("v", parapet(within));
        Detail without = read("drawing:\n- {box: b, material: steel, between: {roof: [roof.inside, roof.outside]}}\n");
        DetailDoesNotFit refused = assertThrows(DetailDoesNotFit.class, () -> VertexBody.of("v", parapet(without)));
        assertTrue(refused.getMessage().contains("let its boxes end before that"), refused.getMessage());
    }

    /** Two bars in the boards that meet in an upright line alone: what CatalogueCornersTest finds none of. */
    @Test
    void barsThatTouchAlongALineCannotBeSolved() {
        String bar = "- {box: bar, material: steel, between: {wall: [wall.insulation.inside + %1$s mm,"
                + " wall.insulation.inside + %2$s mm], other wall: [other wall.insulation.inside + %1$s mm,"
                + " other wall.insulation.inside + %2$s mm], roof: [roof.structure.inside, roof.structure.outside]}}\n";
        String one = String.format(bar, 40, 80);
        String both = one + String.format(bar, 80, 120);
        assertEquals(Lists.immutable.empty(), BodySolver.faults(body("drawing:\n" + one)));
        ImmutableList<DrawingFault> faults = BodySolver.faults(body("drawing:\n" + both));
        assertTrue(faults.anySatisfy(fault -> fault.text().contains("touch along a line only")), faults::toString);
    }

    private static SolidBody body(String drawing) {
        return VertexBody.of("v", parapet(read(drawing))).heatFlow();
    }

    @Test
    void refusesLayersThatItDoesNotFit() {
        Detail own = read("needs: [wall.air layer]\nrequires: [\"roof.outside >= roof.inside + 3 m\"]\nparameters:\n"
                + "  side: {value: 20 mm, from: 10 mm, to: 30 mm, says: s}\ndrawing:\n"
                + "- {box: b, material: unobtainable, between: {wall: [wall.inside, wall.inside + side]}}\n");
        DetailDoesNotFit refused = assertThrows(DetailDoesNotFit.class, () -> VertexBody.of("v", parapet(own)));
        assertEquals(3, refused.reasons().size(), refused.getMessage());
    }

    /** The floor's edge is of concrete in brick walls, of wood in framed ones. */
    @ParameterizedTest
    @EnumSource(TypicalBuild.class)
    void drawsWhatTheHouseIsBuiltOf(TypicalBuild build) {
        Detail own =
                CatalogueFile.builtIn().find("floor-at-corner-cast-through").orElseThrow();
        VertexSetup bare = TypicalCorner.of(build, own, CatalogueFile.builtIn());
        VertexBody body = VertexBody.of("v", bare.with(CornerDetail.find(bare, Lists.immutable.of(own), true)));
        assertEquals(
                Lists.immutable.of(build == TypicalBuild.MASONRY ? "reinforced concrete" : "softwood"),
                body.corner().orElseThrow().materials().collect(Material::name));
    }

    /** A corner that is not the same about its middle may lie the other way round in a house; then its boxes do, too. */
    @Test
    void fitsTurnedOver() {
        Detail own = DetailFile.read(
                "own.yaml",
                HEAD.replace("parapet corner", "parapet at a wall")
                        + "drawing:\n- {box: rest, material: softwood, only-open: true}\n- {box: b, material: steel, between: {wall above: [wall above.inside, wall above.outside],"
                        + " wall: [wall.inside, wall.inside + 20 mm], roof: [roof.inside, roof.outside]}}\n");
        VertexSetup setup = parapet(own);
        VertexSetup turned = new VertexSetup(
                0b0001_0101,
                setup.edges()
                        .collect(end -> new VertexSetup.EdgeEnd(
                                over(end.along()),
                                end.growing(),
                                over(end.first()),
                                over(end.second()),
                                end.detail(),
                                end.setup())),
                true);
        Optional<CornerDetail> found = CornerDetail.find(turned, Lists.immutable.of(own), true);
        assertEquals(Lists.immutable.of(0, 1, 2), setup.corner().orElseThrow().axes());
        assertEquals(Lists.immutable.of(1, 0, 2), found.orElseThrow().axes());
        Cuboid straight = steel(setup);
        Cuboid over = steel(turned.with(found));
        for (int axis = 0; axis < 3; axis++) {
            assertEquals(straight.low(axis), over.low(over(axis)), 1e-12);
            assertEquals(straight.high(axis), over.high(over(axis)), 1e-12);
        }
        assertTrue(CornerDetail.find(new VertexSetup(1, setup.edges(), true), Lists.immutable.of(own), true)
                .isEmpty());
    }

    private static int over(int axis) {
        return axis == 2 ? 2 : 1 - axis;
    }

    private static Cuboid steel(VertexSetup setup) {
        return VertexBody.of("v", setup)
                .heatFlow()
                .painted()
                .selectInstancesOf(PaintedBox.Solid.class)
                .detect(each -> each.material().equals("steel"))
                .box();
    }

    /** It is for edges with the details it meets, and for no others. */
    @Test
    void meetsTheDetailsItNames() {
        VertexSetup setup = parapet(read("drawing:\n- {box: b, material: steel, only-open: true}\n"));
        String id = setup.edges().getFirst().detail().id();
        for (String met : new String[] {id, "another"}) {
            Detail choosy = read("meets: [{kind: parapet, details: [" + met + "]}]\ndrawing:\n"
                    + "- {box: b, material: steel, only-open: true}\n");
            assertEquals(
                    met.equals(id),
                    CornerDetail.find(setup, Lists.immutable.of(choosy), true).isPresent());
        }
    }

    @Test
    void everyKindIsSaidInTheGuide() {
        for (CornerKind kind : CornerKind.all()) {
            assertTrue(CatalogueFile.cornerGuide().contains(kind.label()), kind::label);
        }
    }
}
