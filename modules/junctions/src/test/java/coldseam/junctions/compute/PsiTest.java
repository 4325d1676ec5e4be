package coldseam.junctions.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.BuildUps;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** psi keeps what must not change it. */
public class PsiTest {

    private static final Accuracy ACCURACY = new Accuracy(2e-4, 200_000);
    private static final BridgeComputer COMPUTER = Samples.ofHeat(ACCURACY);

    /** Two intervals of the same number: half of each one's width, and what rounding may do. */
    private static void assertSame(JunctionResult a, JunctionResult b) {
        double allowed = (a.psiExternal().width() + b.psiExternal().width()) / 2 + 1e-9;
        assertEquals(a.psiExternal().middle(), b.psiExternal().middle(), allowed);
        assertEquals(a.penLine().neck(), b.penLine().neck(), 1e-6);
        assertEquals(a.weakestPath().resistance(), b.weakestPath().resistance(), 1e-3);
    }

    private static Detail builtIn(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    public static JunctionSetup with(JunctionSetup setup, Assembly first, Optional<Assembly> second, double angle) {
        return new JunctionSetup(
                setup.kind(),
                first,
                second,
                angle,
                setup.firstExposure(),
                setup.secondExposure(),
                setup.opening(),
                setup.floorThickness(),
                setup.upstand(),
                setup.ground(),
                setup.indoorTemperature(),
                setup.outdoorTemperature());
    }

    /** Slivers beside its slit, whose coordinates multiplied say that they have no area, once lost heat without end. */
    @Test
    void whatMaterialsConductIsNoMoreThanWhatTheSectionLoses() {
        Detail detail = builtIn("outside-corner-in-blocks-round-a-post").lookedAtFor(JunctionKind.of("inside corner"));
        JunctionResult result = BridgeComputers.computer(new Accuracy(1e-5, 200_000))
                .compute(detail, TypicalBuild.MASONRY.setup(detail));
        JunctionSetup setup = result.setup();
        double difference = setup.indoorTemperature() - setup.outdoorTemperature();
        double conducted = result.solution().heatFlows().getFirst().slopes().sum() / difference;
        assertTrue(conducted <= result.coupling().upper(), conducted + " of " + result.coupling());
    }

    /** The lining stands before the party wall, not in it; where the section is cut through it, the pen line has arrived. */
    @Test
    void thePenLineRunsOnInALiningOfThePartyWall() {
        JunctionSetup typical = TypicalBuild.MASONRY.setup(JunctionKind.of("party wall"));
        Assembly wall = BuildUps.all().get("wall insulated inside").masonry();
        JunctionResult result = COMPUTER.compute(builtIn("party-wall-lined"), typical.between(wall, typical.second()));
        // m, of the detail's own strip.
        assertEquals(0.06, result.penLine().neck(), 1e-6);
    }

    @Test
    void aFloorOfNothingLosesNothing() {
        Detail nothing = DetailFile.read(
                "nothing.yaml",
                "detail: nothing\nkind: intermediate floor\nname: n\nrank: best\nlooks-like: l\norder: []\n"
                        + "connections: {}\nfailures: []\nphotographs: []\ndrawing:\n- band: wall\n");
        JunctionResult result = COMPUTER.compute(nothing, Samples.setup(JunctionKind.INTERMEDIATE_FLOOR));
        // One-dimensional heat flow is exact in quadratic elements: only rounding is left.
        assertEquals(0, result.psiExternal().lower(), 1e-8);
        assertEquals(0, result.psiExternal().upper(), 1e-8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "outside-corner-unbroken",
                "slab-edge-raft",
                "wall-to-terrace-kerb",
                "eaves-boards-meet",
                "ridge-mitred",
                "jamb-middle-lapped",
                "party-wall-insulation-passes",
                "gable-cold-loft-wall-insulated-above"
            })
    void dimensionSystemsDifferByTheLegs(String id) {
        Detail detail = builtIn(id);
        JunctionResult result = COMPUTER.compute(detail, Samples.setup(detail.junction()));
        double difference = 0;
        for (JunctionResult.Leg leg : result.legs()) {
            double factor = leg.name().equals("ceiling") ? 0.9 : leg.name().equals("party wall") ? 0 : 1;
            assertEquals(factor, result.factor(leg), leg.name());
            difference += factor * leg.transmittance() * (leg.externalLength() - leg.internalLength());
        }
        assertEquals(
                difference, result.psiInternal().middle() - result.psiExternal().middle(), 1e-12);
    }

    /** Ridge of 100°: each roof's outer face is longer by its thickness over tan 50°. */
    @Test
    void legsEndWhereThePlanesMeet() {
        Detail detail = builtIn("ridge-mitred");
        JunctionResult result = COMPUTER.compute(detail, Samples.setup(JunctionKind.RIDGE));
        double more = Samples.roof().thickness() / Math.tan(Math.toRadians(50));
        result.legs().each(leg -> assertEquals(more, leg.externalLength() - leg.internalLength(), 1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {70, 90, 120})
    void turningTheCornerOverChangesNothing(double angle) {
        Detail detail = builtIn("outside-corner-unbroken");
        JunctionSetup sample = Samples.setup(JunctionKind.OUTSIDE_CORNER);
        Assembly thick = Samples.assembly(
                "thick",
                Samples.layer("brick", 0.77, 300, Role.STRUCTURE),
                Samples.layer("mineral wool board", 0.036, 240, Role.INSULATION));
        Assembly thin = Samples.assembly(
                "thin",
                Samples.layer("brick", 0.77, 300, Role.STRUCTURE),
                Samples.layer("mineral wool board", 0.036, 120, Role.INSULATION));
        assertSame(
                COMPUTER.compute(detail, with(sample, thick, Optional.of(thin), angle)),
                COMPUTER.compute(detail, with(sample, thin, Optional.of(thick), angle)));
    }

    @Test
    void twoBoardsAreOneOfTheirSum() {
        Detail detail = builtIn("parapet-wrapped");
        JunctionSetup sample = Samples.setup(JunctionKind.PARAPET);
        Assembly halves = Samples.assembly(
                "halves",
                Samples.layer("plaster", 0.57, 15, Role.FINISH),
                Samples.layer("brick", 0.77, 215, Role.STRUCTURE),
                Samples.layer("mineral wool board", 0.036, 80, Role.INSULATION),
                Samples.layer("mineral wool board", 0.036, 80, Role.INSULATION),
                Samples.layer("render", 1.0, 10, Role.CLADDING));
        assertSame(
                COMPUTER.compute(detail, sample),
                COMPUTER.compute(detail, with(sample, sample.first(), Optional.of(halves), 90)));
    }

    /** A membrane has no resistance: it may move places by its own thickness, not the heat. */
    @Test
    void aMembraneDoesNotMatter() {
        Detail detail = builtIn("outside-corner-unbroken");
        JunctionSetup sample = Samples.setup(JunctionKind.OUTSIDE_CORNER);
        Assembly sheeted = Samples.assembly(
                "sheeted",
                Samples.layer("plaster", 0.57, 15, Role.FINISH),
                Samples.layer("brick", 0.77, 215, Role.STRUCTURE),
                Samples.layer("airtight membrane", 0.17, 0.2, Role.MEMBRANE),
                Samples.layer("mineral wool board", 0.036, 160, Role.INSULATION),
                Samples.layer("render", 1.0, 10, Role.CLADDING));
        JunctionResult plain = COMPUTER.compute(detail, sample);
        JunctionResult with = COMPUTER.compute(detail, with(sample, sheeted, Optional.of(sheeted), 90));
        assertEquals(
                plain.legs().getFirst().transmittance(), with.legs().getFirst().transmittance(), 1e-12);
        // 0.2 mm more of outer length on each side is 1e-4 W/(m·K) of U·l.
        assertEquals(plain.psiExternal().middle(), with.psiExternal().middle(), 3e-4);
        assertEquals(0.1602, with.penLine().neck(), 1e-6);
    }

    /** Outside a well-ventilated cavity nothing counts, whatever it is made of. */
    @Test
    void whatIsOutsideAVentilatedCavityDoesNotCount() {
        Detail detail = builtIn("outside-corner-unbroken");
        JunctionSetup sample = Samples.setup(JunctionKind.OUTSIDE_CORNER);
        JunctionResult boards = COMPUTER.compute(detail, with(sample, cavity(0.13), Optional.of(cavity(0.13)), 90));
        JunctionResult metal = COMPUTER.compute(detail, with(sample, cavity(50), Optional.of(cavity(50)), 90));
        assertSame(boards, metal);
        // Rse is Rsi behind the cavity (ISO 6946:2017 6.9.4, from memory).
        double resistance = 0.13 + 0.215 / 0.77 + 0.16 / 0.036 + 0.13;
        assertEquals(1 / resistance, boards.legs().getFirst().transmittance(), 1e-12);
        assertTrue(boards.plan().pieces().anySatisfy(piece -> !piece.solved()));
    }

    private static Assembly cavity(double conductivity) {
        Layer air = new Layer(
                Samples.material("air", 0.025),
                0.04,
                Role.AIR_LAYER,
                Optional.empty(),
                Optional.of(new Layer.AirLayer(Layer.Ventilation.WELL_VENTILATED, 0, 0.9)),
                Optional.empty(),
                Sets.immutable.empty());
        return new Assembly(
                "cavity",
                Lists.immutable.of(
                        Samples.layer("brick", 0.77, 215, Role.STRUCTURE),
                        Samples.layer("mineral wool board", 0.036, 160, Role.INSULATION),
                        air,
                        Samples.layer("cladding", conductivity, 20, Role.CLADDING)),
                Optional.empty(),
                Assembly.AirGaps.NONE,
                Optional.empty());
    }

    @Test
    void equalQuestionsAreAnsweredOnce() {
        Detail detail = builtIn("jamb-middle-lapped");
        JunctionSetup setup = Samples.setup(JunctionKind.JAMB);
        assertEquals(true, COMPUTER.compute(detail, setup) == COMPUTER.compute(detail, setup));
        assertEquals(Optional.empty(), detail.cost());
    }
}
