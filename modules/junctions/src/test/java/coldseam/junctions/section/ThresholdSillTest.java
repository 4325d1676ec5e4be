package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Point;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.plan.SectionPlan;
import java.util.OptionalDouble;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A door stands over a deck as high as the house has it, or the detail says that it cannot. */
final class ThresholdSillTest {

    private static final JunctionKind THRESHOLD = JunctionKind.TERRACE_THRESHOLD;

    private static final double MILLIMETRES = 1e-3;

    private static final JunctionSetup TYPICAL = TypicalBuild.MASONRY.setup(THRESHOLD);

    /** With the sill so far above the deck, m. */
    private static JunctionSetup sillAt(JunctionSetup of, double metres) {
        return new JunctionSetup(
                of.kind(),
                of.first(),
                of.second(),
                of.angle(),
                0,
                of.firstExposure(),
                of.secondExposure(),
                of.opening(),
                0,
                0,
                false,
                0,
                OptionalDouble.of(metres),
                of.ground(),
                of.indoorTemperature(),
                of.outdoorTemperature(),
                of.firstUse(),
                of.materials());
    }

    private static Detail builtIn(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    /** m, of the door's foot above the deck's outer face. */
    private static double drawn(Detail detail, JunctionSetup setup) {
        return Composer.compose(detail, setup)
                        .plan()
                        .pieces()
                        .detect(piece -> piece.origin() instanceof SectionPlan.Origin.OfFrame)
                        .outline()
                        .corners()
                        .collectDouble(Point::y)
                        .min()
                - setup.first().thickness();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"terrace-threshold-on-block", "terrace-threshold-timber-on-kerb", "terrace-threshold-on-deck"})
    void theSillIsDrawnWhereTheHouseHasIt(String id) {
        for (double high : new double[] {23, 56, 150, 290}) {
            assertEquals(high * MILLIMETRES, drawn(builtIn(id), sillAt(TYPICAL, high * MILLIMETRES)), 1e-9, id);
        }
        double own = builtIn(id)
                .parameters()
                .detect(each -> each.name().equals("upturn"))
                .value();
        assertEquals(own, drawn(builtIn(id), TYPICAL), 1e-9, id);
    }

    private static String refused(Detail detail, JunctionSetup setup) {
        return assertThrows(DetailDoesNotFit.class, () -> drawn(detail, setup))
                .reasons()
                .collect(Phrase::toString)
                .makeString("\n");
    }

    /** The membrane of the typical deck lies under 50 mm of paving. */
    @Test
    void aSillBelowTheWaterLayerIsRefused() {
        Detail block = builtIn("terrace-threshold-on-block");
        String low = refused(block, sillAt(TYPICAL, -40 * MILLIMETRES));
        assertTrue(
                low.contains("fits where the sill of the door")
                        && low.endsWith("Raise the opening's sill, lay less on the deck, or choose another detail."),
                low);
        assertEquals(-30 * MILLIMETRES, drawn(block, sillAt(TYPICAL, -30 * MILLIMETRES)), 1e-9);
    }

    @Test
    void aHeightThatWasSetIsNotPassedOver() {
        String contradicted = refused(
                builtIn("terrace-threshold-on-block").with(Maps.immutable.of("upturn", 0.15)),
                sillAt(TYPICAL, 23 * MILLIMETRES));
        assertTrue(contradicted.contains("was given upturn 150 mm, but the house itself says 23 mm"), contradicted);
    }

    /** A copy whose sill hangs on no such parameter stands for doors that lie so alone. */
    @Test
    void aSillDrawnElsewhereIsRefused() {
        String text = """
                detail: flat-sill
                kind: door threshold on a terrace
                name: A sill on the deck
                rank: middle
                looks-like: A door on the deck.
                drawing:
                - {band: deck, to: wall.structure.outside, ends: {structure: beyond, finish: wall.inside}}
                - block: upstand
                  material: softwood
                  deck: [deck.structure.outside, deck.outside + 60 mm]
                  wall: [wall.structure.inside, wall.structure.outside]
                - {frame: wall.structure.inside + 110 mm, sill: deck.outside + 60 mm}
                order: [Set the door.]
                connections: {air: taped, water: lapped, vapour: taped}
                failures: [Water over it.]
                photographs: [The sill.]
                """;
        Detail flat = DetailFile.read("flat-sill.yaml", text);
        assertEquals(60 * MILLIMETRES, drawn(flat, sillAt(TYPICAL, 60 * MILLIMETRES)), 1e-9);
        assertEquals(
                "\"A sill on the deck\" (flat-sill) draws the door's sill 60 mm above the deck; the house has it 23 mm above"
                        + " it. Draw the sill on deck.outside + upturn, or give the opening a sill that lies so.",
                refused(flat, sillAt(TYPICAL, 23 * MILLIMETRES)));
    }
}
