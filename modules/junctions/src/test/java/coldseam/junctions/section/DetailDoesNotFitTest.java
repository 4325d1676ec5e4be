package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.PsiTest;
import coldseam.junctions.detail.Detail;
import java.util.List;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Test;

/** Outside its valid range a detail is refused, with every reason. */
class DetailDoesNotFitTest {

    private static final Assembly BARE =
            Samples.assembly("bare wall", Samples.layer("brick", 0.77, 215, Role.STRUCTURE));

    private static DetailDoesNotFit refused(String id, JunctionSetup setup) {
        Detail detail = CatalogueFile.builtIn().find(id).orElseThrow();
        return assertThrows(DetailDoesNotFit.class, () -> Composer.compose(detail, setup));
    }

    /** Corners given to the millimetre turn a wall by some hundredths of a degree, which no message shows. */
    @Test
    void anAngleIsMeasuredToHalfATenthOfADegree() {
        JunctionSetup typical = Samples.setup(JunctionKind.OUTSIDE_CORNER);
        for (double angle : new double[] {59.96, 59.94}) {
            boolean refused = refused("outside-corner-unbroken", PsiTest.with(typical, BARE, Optional.of(BARE), angle))
                    .reasons()
                    .collect(Phrase::toString)
                    .anySatisfy(reason -> reason.contains("is drawn for angles"));
            assertEquals(angle < 59.95, refused, () -> angle + "°");
        }
    }

    @Test
    void withoutTheLayersItNeedsAndAtAnotherAngle() {
        JunctionSetup setup = PsiTest.with(Samples.setup(JunctionKind.OUTSIDE_CORNER), BARE, Optional.of(BARE), 40);
        DetailDoesNotFit refused = refused("outside-corner-unbroken", setup);
        assertEquals(3, refused.reasons().collect(Phrase::toString).size());
        assertEquals(
                "\"Boards run round the corner\" (outside-corner-unbroken) is drawn for angles of 60° to 168° between the"
                        + " surfaces, measured indoors; here it is 40.0°. Choose another detail, or draw the section by hand.",
                refused.reasons().collect(Phrase::toString).getFirst());
        assertEquals(
                "\"Boards run round the corner\" (outside-corner-unbroken) needs insulation in the other wall; its assembly"
                        + " has none. Choose another detail or give that layer its role.",
                refused.reasons().collect(Phrase::toString).getLast());
    }

    /** A ceiling as it is found may have nothing on it that thins to a wedge: the wedge is not there, and the rest is. */
    @Test
    void aShapeInALayerThatIsNotThereVanishes() {
        Detail pinched = CatalogueFile.builtIn().find("eaves-cold-loft-pinched").orElseThrow();
        JunctionSetup bare =
                Samples.setup(JunctionKind.of("eaves under a cold loft")).between(BARE, Optional.of(BARE));
        Composition found = Composer.compose(pinched.asFound(), bare);
        assertTrue(found.faces().notEmpty(), found::toString);
        assertThrows(DetailDoesNotFit.class, () -> Composer.compose(pinched, bare));
    }

    /** Of a double wall, on either side of the corner, both rows of studs cannot carry: the message says what to write instead. */
    @Test
    void withStructureOnBothSidesOfTheInsulation() {
        JunctionSetup typical = Samples.setup(JunctionKind.OUTSIDE_CORNER);
        Assembly doubled = Samples.assembly(
                "double wall",
                Samples.layer("plaster", 0.57, 15, Role.FINISH),
                Samples.layer("inner boards", 0.13, 100, Role.STRUCTURE),
                Samples.layer("mineral wool board", 0.036, 160, Role.INSULATION),
                Samples.layer("outer boards", 0.13, 100, Role.STRUCTURE));
        for (JunctionSetup setup : List.of(
                typical.between(doubled, typical.second()), typical.between(typical.first(), Optional.of(doubled)))) {
            String told = refused("outside-corner-unbroken", setup).getMessage();
            assertTrue(
                    told.contains(
                            "lie on both sides of the insulation: give those that do not carry the role cladding"),
                    told);
            assertTrue(told.contains("Of a panel whose two boards carry with its core"), told);
        }
    }

    /** Of a wall that is open to the wind inside all that insulates it nothing conducts where the section is cut. */
    @Test
    void withNothingThatConductsAtACut() {
        JunctionSetup gable = Samples.setup(JunctionKind.of("gable under a cold loft"));
        Layer wind = new Layer(
                MaterialLibrary.named("air").orElseThrow(),
                0.04,
                Role.AIR_LAYER,
                Optional.empty(),
                Optional.of(new Layer.AirLayer(Layer.Ventilation.WELL_VENTILATED, 0, 0.9)),
                Optional.empty(),
                Sets.immutable.empty());
        Assembly open = Samples.assembly(
                "open wall",
                Samples.layer("plaster", 0.57, 15, Role.FINISH),
                wind,
                Samples.layer("outer boards", 0.13, 100, Role.STRUCTURE),
                Samples.layer("mineral wool board", 0.036, 160, Role.INSULATION));
        JunctionSetup setup = gable.between(gable.first(), Optional.of(open));
        CatalogueFile.builtIn().options(gable.kind()).forEach(detail -> {
            try {
                Composer.compose(detail, setup);
            } catch (DetailDoesNotFit misfit) {
                assertTrue(misfit.reasons().notEmpty());
            }
        });
    }

    @Test
    void forAnotherKind() {
        String told = refused("outside-corner-unbroken", Samples.setup(JunctionKind.JAMB))
                .getMessage();
        assertEquals(
                "\"Boards run round the corner\" (outside-corner-unbroken) is for: outside corner; the junction is: jamb."
                        + " Choose a detail of that kind.",
                told);
    }

    @Test
    void whereAConditionFails() {
        String told = refused("parapet-bare", parapet(0.02)).getMessage();
        assertTrue(told.contains("fits where the upstand is at least 50 mm; here it is 20 mm."), told);
        assertTrue(told.endsWith(". Choose another detail, or correct the roof's parapet-height."), told);
        // Digits until the two sides differ: what is printed does not contradict what is said.
        String near = refused("parapet-bare", parapet(0.0496)).getMessage();
        assertTrue(near.contains("at least 50.0 mm; here it is 49.6 mm"), near);
    }

    @Test
    void namesALengthThatTheHouseFileMaySet() {
        JunctionSetup bare = Samples.setup(JunctionKind.SLAB_EDGE).between(BARE, Optional.of(BARE));
        String told = refused("slab-edge-thin-edge-strip", bare).getMessage();
        assertTrue(
                told.contains(
                        "is at least the strip; here it is 0 mm, the other 50 mm. Choose another detail, or set another \"strip\" under its parameters."),
                told);
    }

    private static JunctionSetup parapet(double upstand) {
        JunctionSetup sample = Samples.setup(JunctionKind.PARAPET);
        return new JunctionSetup(
                sample.kind(),
                sample.first(),
                sample.second(),
                90,
                sample.firstExposure(),
                sample.secondExposure(),
                Optional.empty(),
                0,
                upstand,
                Optional.empty(),
                20,
                -5);
    }

    @Test
    void whereTheHouseGivesNoOpening() {
        JunctionSetup sample = Samples.setup(JunctionKind.JAMB);
        JunctionSetup without = new JunctionSetup(
                sample.kind(),
                sample.first(),
                sample.second(),
                90,
                sample.firstExposure(),
                sample.secondExposure(),
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                20,
                -5);
        assertTrue(refused("jamb-middle-lapped", without).getMessage().contains("needs a window or door"));
    }

    /** Lengths of reasons are values, said in whichever units the reader has; what the detail's file says is quoted. */
    @Test
    void measuresInTheReadersUnits() {
        String told =
                refused("parapet-bare", parapet(0.02)).reasons().getFirst().in(UnitSystem.US);
        assertTrue(told.contains("fits where the upstand is at least 1 15/16 in; here it is 13/16 in."), told);
    }
}
