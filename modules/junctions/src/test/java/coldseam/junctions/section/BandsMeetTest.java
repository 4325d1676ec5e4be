package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.PenLines;
import java.util.Optional;
import java.util.Random;
import java.util.random.RandomGenerator;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where two bands turn a corner, each layer meets its like: whatever the frame's build-up, boards join boards over their
 * whole thickness, and neither sheathing, a void nor a membrane cuts them.
 */
@Tag("slow")
final class BandsMeetTest {

    private static final Material AIR = MaterialLibrary.named("air").orElseThrow();

    /** m: the outline's corners give the neck, but at an oblique corner they lie on a lattice of {@link Shapes#STEP}. */
    private static final double LATTICE = 1e-6;

    private static final int BUILD_UPS = 120;

    private static Layer framed(double millimetres, Role role) {
        return new Layer(
                Samples.material("wool", 0.038),
                millimetres / 1000,
                role,
                Optional.of(new Layer.Framing(Samples.material("softwood", 0.13), 0.15)),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
    }

    private static Layer air(Layer.Ventilation ventilation) {
        return new Layer(
                AIR,
                0.03,
                Role.AIR_LAYER,
                Optional.empty(),
                Optional.of(new Layer.AirLayer(ventilation, 0, 0.9)),
                Optional.empty(),
                Sets.immutable.empty());
    }

    /** A sheet of 0.2 mm, or none. */
    private static void membrane(RandomGenerator random, MutableList<Layer> layers) {
        if (random.nextBoolean()) {
            layers.add(Samples.layer("membrane", 0.3, 0.2, Role.MEMBRANE));
        }
    }

    private static void sheathing(RandomGenerator random, MutableList<Layer> layers) {
        if (random.nextBoolean()) {
            layers.add(Samples.layer("oriented strand board", 0.13, 15, Role.STRUCTURE));
            membrane(random, layers);
        }
    }

    private static Role either(RandomGenerator random) {
        return random.nextBoolean() ? Role.INSULATION : Role.STRUCTURE;
    }

    private static Assembly wall(RandomGenerator random) {
        MutableList<Layer> layers = Lists.mutable.of(Samples.layer("gypsum board", 0.25, 12.5, Role.FINISH));
        switch (random.nextInt(3)) {
            case 0 -> layers.add(framed(50, either(random)));
            case 1 -> layers.add(air(Layer.Ventilation.UNVENTILATED));
            default -> {}
        }
        membrane(random, layers);
        sheathing(random, layers);
        layers.add(framed(140, either(random)));
        membrane(random, layers);
        sheathing(random, layers);
        if (random.nextInt(4) > 0) {
            layers.add(Samples.layer("mineral wool board", 0.036, 150, Role.INSULATION));
            membrane(random, layers);
        }
        switch (random.nextInt(3)) {
            case 0 -> layers.add(Samples.layer("render", 1, 10, Role.CLADDING));
            case 1 -> {
                layers.add(air(Layer.Ventilation.WELL_VENTILATED));
                layers.add(Samples.layer("boards", 0.13, 22, Role.CLADDING));
            }
            default -> {
                layers.add(air(Layer.Ventilation.UNVENTILATED));
                layers.add(Samples.layer("boards", 0.13, 22, Role.CLADDING));
            }
        }
        return Samples.assembly("frame wall", layers.toArray(new Layer[0]));
    }

    private static JunctionSetup corner(JunctionKind kind, double angle, Assembly first, Assembly second) {
        JunctionSetup like = Samples.setup(kind);
        return new JunctionSetup(
                kind,
                first,
                Optional.of(second),
                angle,
                like.firstExposure(),
                like.secondExposure(),
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                20,
                -5);
    }

    private static double neck(JunctionSetup setup) {
        Detail best = CatalogueFile.builtIn()
                .options(setup.kind())
                .select(TypicalSetups::usual)
                .getLast();
        Composition section = BuiltIn.composed(best, setup);
        return PenLines.of(
                        section.insulation(),
                        section.ends().getFirst(),
                        section.ends().getLast(),
                        thinner(section))
                .neck();
    }

    private static double thinner(Composition section) {
        return section.legs()
                .collectDouble(JunctionResult.Leg::insulationThickness)
                .min();
    }

    private static String shown(JunctionSetup setup) {
        return setup.angle() + " degrees: "
                + setup.first().layers().makeString(", ")
                + " | "
                + setup.second().orElseThrow().layers().makeString(", ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"inside corner", "outside corner"})
    void boardsJoinBoardsWhateverTheBuildUp(JunctionKind kind) {
        RandomGenerator random = new Random(20261125);
        MutableList<String> faults = Lists.mutable.empty();
        for (int i = 0; i < BUILD_UPS; i++) {
            Assembly first = wall(random);
            Assembly second = random.nextInt(3) == 0 ? wall(random) : first;
            double angle = (random.nextInt(3) > 0 ? 90 : 60) + (kind == JunctionKind.INSIDE_CORNER ? 180 : 0);
            JunctionSetup setup = corner(kind, angle, first, second);
            Optional<String> fault = fault(setup);
            fault.ifPresent(faults::add);
        }
        assertEquals(0, faults.size(), faults.makeString("\n"));
    }

    private static Optional<String> fault(JunctionSetup setup) {
        Detail best = CatalogueFile.builtIn()
                .options(setup.kind())
                .select(TypicalSetups::usual)
                .getLast();
        double thinner;
        try {
            thinner = thinner(BuiltIn.composed(best, setup));
        } catch (DetailDoesNotFit frameWithoutBoards) {
            return Optional.empty();
        }
        double neck = neck(setup);
        return neck >= thinner - LATTICE
                ? Optional.empty()
                : Optional.of(neck + " of " + thinner + " at " + shown(setup));
    }

    /** Service void, sheet, sheathing, studs, sheathing, boards, sheet, ventilated air, cladding. */
    @Test
    void aServiceVoidIsNotTheAirBehindTheCladding() {
        Assembly wall = Samples.assembly(
                "frame wall",
                Samples.layer("gypsum board", 0.25, 12.5, Role.FINISH),
                air(Layer.Ventilation.UNVENTILATED),
                Samples.layer("membrane", 0.3, 0.2, Role.MEMBRANE),
                Samples.layer("oriented strand board", 0.13, 15, Role.STRUCTURE),
                framed(140, Role.STRUCTURE),
                Samples.layer("oriented strand board", 0.13, 15, Role.STRUCTURE),
                Samples.layer("mineral wool board", 0.036, 150, Role.INSULATION),
                Samples.layer("membrane", 0.3, 0.2, Role.MEMBRANE),
                air(Layer.Ventilation.WELL_VENTILATED),
                Samples.layer("boards", 0.13, 22, Role.CLADDING));
        assertEquals(0.15, neck(corner(JunctionKind.INSIDE_CORNER, 270, wall, wall)), LATTICE);
        assertEquals(0.15, neck(corner(JunctionKind.OUTSIDE_CORNER, 90, wall, wall)), LATTICE);
    }
}
