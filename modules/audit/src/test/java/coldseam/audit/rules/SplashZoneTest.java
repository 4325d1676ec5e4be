package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.rules.InsulationUnfitRule.Unfit;
import coldseam.conduction.Accuracy;
import coldseam.envelope.Assembly;
import coldseam.envelope.Duty;
import coldseam.envelope.JunctionKind;
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

    private static ImmutableList<Unfit> unfit(JunctionSetup setup) {
        return SplashZone.of(
                BridgeComputers.computer(new Accuracy(1e-2, 60_000))
                        .compute(
                                CatalogueFile.builtIn()
                                        .details()
                                        .detect(each -> each.id().equals("stepped-footing-boards-meet")),
                                setup),
                Maps.immutable.empty());
    }

    @Test
    void boardsMadeForTheGroundPassAtAStepInIt() {
        assertEquals(Lists.immutable.empty(), unfit(STEP));
    }

    @Test
    void woolDoesNotBearTheGroundAtAStepInIt() {
        Assembly woolOutside =
                TypicalBuild.MASONRY.setup(JunctionKind.OUTSIDE_CORNER).first();
        assertEquals(
                Lists.immutable.of(new Unfit(Duty.GROUND, "mineral wool board")),
                unfit(STEP.between(STEP.first(), Optional.of(woolOutside))));
    }
}
