package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Digests;
import coldseam.audit.Finding;
import coldseam.audit.Finding.Severity;
import coldseam.audit.engine.Altered;
import coldseam.audit.engine.Auditor;
import coldseam.audit.engine.Progress;
import coldseam.audit.engine.Sample;
import coldseam.audit.rules.InsulationUnfitRule.Unfit;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.envelope.Assembly;
import coldseam.envelope.Duty;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Piece;
import coldseam.junctions.plan.SectionPlan.Zone;
import coldseam.junctions.section.Surroundings;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Test;

/** What insulates outside the structure of a section in the ground, whether its kind lays the ground or not. */
final class SplashZoneTest {

    private static final JunctionSetup STEP = TypicalBuild.MASONRY.setup(JunctionKind.STEPPED_FOOTING);

    private static final Assembly WOOL_OUTSIDE =
            TypicalBuild.MASONRY.setup(JunctionKind.OUTSIDE_CORNER).first();

    private static final Unfit WET = new Unfit(Duty.GROUND, "mineral wool board");
    private static final Unfit SPLASHED = new Unfit(Duty.SPLASH, "mineral wool board");

    /** Where its ground lies is where that of the rectangles lies. */
    private static final JunctionResult BARE =
            compute("slab-edge-bare", TypicalBuild.MASONRY.setup(JunctionKind.SLAB_EDGE));

    private static JunctionResult compute(String detail, JunctionSetup setup) {
        return BridgeComputers.computer(new Accuracy(1e-2, 60_000))
                .compute(
                        CatalogueFile.builtIn()
                                .details()
                                .detect(each -> each.id().equals(detail)),
                        setup);
    }

    private static ImmutableList<Unfit> unfit(String detail, JunctionSetup setup) {
        return SplashZone.of(compute(detail, setup), Maps.immutable.empty());
    }

    private static ImmutableList<Unfit> unfit(JunctionSetup setup) {
        return unfit("stepped-footing-boards-meet", setup);
    }

    @Test
    void woolDownToTheGroundIsSplashed() {
        JunctionSetup slab = TypicalBuild.MASONRY.setup(JunctionKind.SLAB_EDGE);
        assertEquals(Lists.immutable.of(SPLASHED), unfit("slab-edge-bare", slab));
        // Boards that bear it stand below the wool there.
        assertEquals(Lists.immutable.empty(), unfit("slab-edge-thin-edge-strip", slab));
    }

    @Test
    void woolAroundACellarIsWetAndSplashed() {
        JunctionSetup cellar = TypicalBuild.MASONRY.setup(JunctionKind.of("cellar slab to wall"));
        assertEquals(Lists.immutable.empty(), unfit("cellar-slab-tight-to-wall", cellar));
        assertEquals(
                Lists.immutable.of(WET, SPLASHED),
                unfit("cellar-slab-tight-to-wall", cellar.between(cellar.first(), Optional.of(WOOL_OUTSIDE))));
    }

    /** The box's own slab edges, drawn in earnest, are told with all their length. */
    @Test
    void theRuleTellsWhatTheDrawingsHave() {
        House house = Sample.house(Sample.yaml());
        BridgeComputer computer = Sample.computer((detail, setup) -> {
            JunctionResult made = Sample.computer().compute(detail, setup);
            if (setup.kind() != JunctionKind.SLAB_EDGE) {
                return made;
            }
            JunctionResult drawn = compute("slab-edge-bare", setup);
            return new Altered(made).drawn(drawn.solution(), drawn.plan());
        });
        Finding finding = new Auditor(Sample.catalogue(Sample.good()), computer, "test")
                .audit(house, ShellBuilder.build(house), Digests.of("digest"), Progress.SILENT)
                .findings()
                .getOnly();
        assertEquals(Severity.WEAK, finding.severity());
        assertEquals(
                new InsulationUnfitRule.Found("slab edge", true, Lists.immutable.of(SPLASHED)),
                finding.breaches().getOnly().evidence());
        assertEquals(28, finding.subject().length(), 1e-6);
    }

    @Test
    void boardsMadeForTheGroundPassAtAStepInIt() {
        assertEquals(Lists.immutable.empty(), unfit(STEP));
    }

    @Test
    void woolDoesNotBearTheGroundAtAStepInIt() {
        assertEquals(Lists.immutable.of(WET), unfit(STEP.between(STEP.first(), Optional.of(WOOL_OUTSIDE))));
    }

    /** The wall's structure is painted left of 0, its insulation from so far right and so far above the ground. */
    private static ImmutableList<Unfit> board(double beside, double above) {
        JunctionResult drawn = BARE;
        Layer wool = WOOL_OUTSIDE.layers().detect(Layer::insulates);
        Layer brick = WOOL_OUTSIDE.layers().detect(each -> each.role() == Role.STRUCTURE);
        double ground = drawn.solution()
                .section()
                .boundaries()
                .select(each -> each.environment().equals(Surroundings.OUTDOOR))
                .flatCollect(Boundary::path)
                .collectDouble(Point::y)
                .min();
        SectionPlan plan = SectionPlan.of(
                Lists.immutable.of(
                        piece(brick, Role.STRUCTURE, -0.24, 0, ground - 1),
                        piece(wool, Role.INSULATION, beside, 0.1 + beside, ground + above)),
                Lists.immutable.empty(),
                Lists.immutable.empty());
        return SplashZone.of(new Altered(drawn).drawn(drawn.solution(), plan), Maps.immutable.empty());
    }

    private static Piece piece(Layer layer, Role role, double left, double right, double low) {
        return new Piece(
                Polygon.rectangle(left, low, right, low + 1),
                layer.material(),
                role,
                true,
                new Origin.OfLayer(false, 0, layer, Zone.OUTSIDE));
    }

    /** Wet below the ground, splashed up to 0.3 m above it, each but for 20 mm that drawings round. */
    @Test
    void rainSplashesThirtyCentimetresUp() {
        assertEquals(Lists.immutable.of(WET, SPLASHED), board(0, -1));
        assertEquals(Lists.immutable.of(WET, SPLASHED), board(0, -0.0201));
        assertEquals(Lists.immutable.of(SPLASHED), board(0, -0.0199));
        assertEquals(Lists.immutable.of(SPLASHED), board(0, 0.2799));
        assertEquals(Lists.immutable.empty(), board(0, 0.2801));
        assertEquals(Lists.immutable.empty(), board(0, 0.5));
    }

    /** What lies on the rooms' side of the structure stays dry, but for 20 mm by which a coat may reach into it. */
    @Test
    void whatLiesInsideTheStructureIsNotSplashed() {
        assertEquals(Lists.immutable.of(SPLASHED), board(0.3, 0.1));
        assertEquals(Lists.immutable.of(SPLASHED), board(-0.0199, 0.1));
        assertEquals(Lists.immutable.empty(), board(-0.0201, 0.1));
        assertEquals(Lists.immutable.empty(), board(-0.34, 0.1));
    }
}
