package coldseam.junctions.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Point;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.junctions.ControlLine;
import coldseam.junctions.ControlLine.Broken;
import coldseam.junctions.ControlLine.ChangesSide;
import coldseam.junctions.ControlLine.Continuous;
import coldseam.junctions.ControlLine.NotShown;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.Samples;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.junctions.plan.SectionPlan.Zone;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** The ways of control layers through sections of the catalogue, laid on walls whose layers are said here. */
class ControlLinesTest {

    private static Assembly wall(ImmutableList<Control> plaster, ImmutableList<Control> render) {
        return Samples.assembly(
                "wall",
                Samples.layer("gypsum plaster", 15, Role.FINISH, plaster.toArray(new Control[0])),
                Samples.layer("clay brick", 240, Role.STRUCTURE),
                Samples.layer("mineral wool board", 200, Role.INSULATION, Control.HEAT),
                Samples.layer("thin-coat render", 10, Role.CLADDING, render.toArray(new Control[0])));
    }

    private static final Assembly SOUND =
            wall(Lists.immutable.of(Control.AIR, Control.VAPOUR), Lists.immutable.of(Control.WATER));

    private static final Assembly AIR_OUTSIDE =
            wall(Lists.immutable.of(Control.VAPOUR), Lists.immutable.of(Control.AIR, Control.WATER));

    private static final Assembly ROOF = Samples.assembly(
            "roof",
            Samples.layer("gypsum plaster", 15, Role.FINISH),
            Samples.layer("reinforced concrete", 200, Role.STRUCTURE, Control.AIR),
            Samples.layer("bitumen sheet", 4, Role.MEMBRANE, Control.VAPOUR),
            Samples.layer("polyisocyanurate board", 200, Role.INSULATION, Control.HEAT),
            Samples.layer("bitumen sheet", 8, Role.MEMBRANE, Control.WATER));

    private static Detail detail(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    /** Air, water, vapour. */
    private static ImmutableList<ControlLine> lines(String id, JunctionSetup setup) {
        return lines(detail(id), composition(id, setup));
    }

    private static Composition composition(String id, JunctionSetup setup) {
        return Composer.compose(detail(id), setup);
    }

    private static ImmutableList<ControlLine> lines(Detail detail, Composition composition) {
        PenLine pen = PenLines.of(
                composition.insulation(),
                composition.ends().getFirst(),
                composition.ends().getLast(),
                0.2);
        return ControlLines.of(composition, detail, pen);
    }

    private static JunctionSetup corner(Assembly first, Assembly second) {
        return Samples.setup(JunctionKind.OUTSIDE_CORNER).between(first, Optional.of(second));
    }

    private static double length(ImmutableList<Point> line) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++) {
            sum += Math.hypot(
                    line.get(i).x() - line.get(i - 1).x(),
                    line.get(i).y() - line.get(i - 1).y());
        }
        return sum;
    }

    /** Plaster meets plaster and render meets render: no strip is needed, and every corner of the line lies in them. */
    @Test
    void layersThatTurnTheCornerTouch() {
        Composition composition = composition("outside-corner-unbroken", corner(SOUND, SOUND));
        ImmutableList<ControlLine> lines = lines(detail("outside-corner-unbroken"), composition);
        assertEquals(
                Lists.immutable.of(Control.AIR, Control.WATER, Control.VAPOUR), lines.collect(ControlLine::control));
        for (ControlLine line : lines) {
            assertTrue(assertInstanceOf(Continuous.class, line).strips().isEmpty());
            String material = line.control() == Control.WATER ? "thin-coat render" : "gypsum plaster";
            PlanarSubdivision seen = composition.plan().seen();
            for (int i = 1; i < line.path().size(); i++) {
                Point a = line.path().get(i - 1);
                Point b = line.path().get(i);
                int face = seen.faceAt((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
                assertEquals(
                        material,
                        composition
                                .plan()
                                .pieces()
                                .get(seen.faces().get(face).painted())
                                .material()
                                .name());
            }
        }
    }

    /** From plaster to render there is no way but through the wool, whatever the detail's word is. */
    @Test
    void aLayerThatChangesSideIsNotJoinedByAWord() {
        ImmutableList<ControlLine> lines = lines("outside-corner-unbroken", corner(SOUND, AIR_OUTSIDE));
        ChangesSide air = assertInstanceOf(ChangesSide.class, lines.get(0));
        assertEquals(Zone.INSIDE, air.first());
        assertEquals(Zone.OUTSIDE, air.second());
        assertInstanceOf(Continuous.class, lines.get(1));
        assertInstanceOf(Continuous.class, lines.get(2));
    }

    @Test
    void whatASurfaceDoesNotNameOrCannotDoIsNotShown() {
        Assembly wool = Samples.assembly(
                "wall",
                Samples.layer("gypsum plaster", 15, Role.FINISH),
                Samples.layer("clay brick", 240, Role.STRUCTURE),
                Samples.layer("mineral wool board", 200, Role.INSULATION, Control.HEAT, Control.AIR, Control.WATER),
                Samples.layer("thin-coat render", 10, Role.CLADDING));
        for (ControlLine line : lines("outside-corner-unbroken", corner(SOUND, wool))) {
            assertEquals(
                    NotShown.Reason.NO_LAYER,
                    assertInstanceOf(NotShown.class, line).why());
        }
    }

    /**
     * Tape from the plaster to the frame's inner face: the frame's outer face lies 90 mm into the boards (as the detail
     * says), so over 240 mm of brick, then 90 mm less the frame's depth.
     */
    @Test
    void aStripIsAsLongAsWhatItBridges() {
        JunctionSetup jamb = Samples.setup(JunctionKind.JAMB).between(SOUND, Optional.empty());
        double depth = jamb.opening().orElseThrow().frameDepth();
        ImmutableList<ControlLine> lines = lines("jamb-middle-lapped", jamb);
        Continuous air = assertInstanceOf(Continuous.class, lines.getFirst());
        assertEquals(1, air.strips().size());
        assertEquals(0.24 + 0.09 - depth, length(air.strips().getFirst()), 1e-6);
    }

    /** The membrane goes up a parapet as a strip while that is short; one of 2 m is a surface of its own. */
    @Test
    void aStripEndsWhereALayerMustBeDrawn() {
        JunctionSetup parapet = Samples.setup(JunctionKind.PARAPET).between(ROOF, Optional.of(SOUND));
        Continuous water = assertInstanceOf(
                Continuous.class, lines("parapet-bare", parapet).get(1));
        // Up to the capping, whose underside rises from 24 mm before the parapet to 24 mm past it, from its top to 8 %
        // of
        // what it covers and 4 mm over it: brick, boards and render.
        double covered = 0.24 + 0.2 + 0.01;
        double rise = (0.08 * covered + 0.004) * 0.024 / (covered + 2 * 0.024);
        assertEquals(parapet.upstand() + rise, length(water.strips().getFirst()), 1e-6);
        Broken high = assertInstanceOf(
                Broken.class, lines("parapet-bare", upstand(parapet, 2)).get(1));
        assertEquals(Broken.Reason.OUT_OF_REACH, high.why());
    }

    private static JunctionSetup upstand(JunctionSetup of, double upstand) {
        return new JunctionSetup(
                of.kind(),
                of.first(),
                of.second(),
                of.angle(),
                of.firstExposure(),
                of.secondExposure(),
                of.opening(),
                of.floorThickness(),
                upstand,
                of.ground(),
                of.indoorTemperature(),
                of.outdoorTemperature());
    }

    @Test
    void theDetailsWordStandsWhereItSaysNoOrNothing() {
        JunctionSetup parapet = Samples.setup(JunctionKind.PARAPET).between(ROOF, Optional.of(SOUND));
        NotShown air =
                assertInstanceOf(NotShown.class, lines("parapet-bare", parapet).getFirst());
        assertEquals(NotShown.Reason.DETAIL_SILENT, air.why());
    }
}
