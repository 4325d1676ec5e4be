package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Finding;
import coldseam.audit.Finding.Severity;
import coldseam.audit.engine.Auditor;
import coldseam.audit.engine.Progress;
import coldseam.audit.engine.Sample;
import coldseam.audit.rules.InsulationUnfitRule.Unfit;
import coldseam.conduction.Accuracy;
import coldseam.envelope.Assembly;
import coldseam.envelope.Duty;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
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
            return new JunctionResult(
                    made.detail(),
                    made.setup(),
                    drawn.solution(),
                    drawn.plan(),
                    made.legs(),
                    made.coupling(),
                    made.psiExternal(),
                    made.psiInternal(),
                    made.temperatureFactor(),
                    made.coldest(),
                    made.penLine(),
                    made.weakestPath(),
                    made.controls(),
                    made.notes());
        });
        Finding finding = new Auditor(Sample.catalogue(Sample.good()), computer, "test")
                .audit(house, ShellBuilder.build(house), "digest", Progress.SILENT)
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
}
