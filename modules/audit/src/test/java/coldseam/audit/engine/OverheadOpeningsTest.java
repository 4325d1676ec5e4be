package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.HeatLoss;
import coldseam.audit.PsiLimit;
import coldseam.conduction.Accuracy;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Limits;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A hatch closes a ceiling against the cold loft over it; a skylight stands at the top of a shaft and faces open air. */
class OverheadOpeningsTest {

    private House house;
    private Shell shell;

    /** The room in the roof with both in its collar's ceiling. */
    @BeforeEach
    void build() throws IOException {
        Path plain = Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes", "room-in-roof.yaml");
        house = Sample.house(Files.readString(plain).replace("\njunctions:\n", """

                openings:
                  hatch: {kind: door, surface: collar ceiling, width: 0.6 m, height: 0.8 m, left: 2 m, sill: 0.5 m, transmittance: 0.8 W/(m²·K)}
                  skylight: {kind: window, surface: collar ceiling, width: 0.8 m, height: 1 m, left: 6 m, sill: 0.4 m, transmittance: 1.1 W/(m²·K), frame-transmittance: 1.3 W/(m²·K)}

                junctions:
                """));
        shell = ShellBuilder.build(house);
    }

    private double factor(String opening) {
        return new HeatLossTable(
                        house,
                        new SurfaceHeats(house, shell, true).compute(),
                        Lists.immutable.empty(),
                        Lists.immutable.empty(),
                        Lists.immutable.empty(),
                        Lists.immutable.empty())
                .compute()
                .lines()
                .detect(line -> line.part() instanceof HeatLoss.Part.OfOpening of
                        && of.opening().name().equals(opening))
                .factor();
    }

    private JunctionSetup setup(String edge) {
        return new JunctionPlan(house, shell, CatalogueFile.builtIn())
                .plan()
                .detect(planned -> planned.edge().name().equals(edge))
                .bridge()
                .setup()
                .orElseThrow();
    }

    @Test
    void aSkylightLosesItsHeatToOpenAirAndAHatchToTheLoft() {
        assertEquals(
                Lists.immutable.of(4, 4),
                Lists.immutable
                        .of("attic hatch", "skylight shaft")
                        .collect(kind ->
                                shell.edges().count(edge -> edge.kind().label().equals(kind))));
        double loft = setup("head: hatch").firstExposure().factor();
        assertEquals(loft, factor("hatch"));
        assertEquals(1, factor("skylight"));
        assertEquals(Exposure.outdoors(), setup("head: skylight").secondExposure());
        assertEquals(setup("head: hatch").firstExposure(), setup("head: hatch").secondExposure());
        assertEquals(0.9, loft);
    }

    /** No surface counts a shaft's wall: psi may be larger by what it loses at the limit of walls, and no more by anything else. */
    @Test
    void aShaftsPsiMayHoldItsWall() {
        Limits limits = house.limits();
        double shaft = 0.6 * limits.surfaces().wall().transmittance();
        assertEquals(limits.openingPsi() + shaft, limit("skylight-shaft-wrapped", "head: skylight"), 1e-12);
        assertEquals(limits.openingPsi(), limit("attic-hatch-lid-on-wrapped-rim", "head: hatch"), 1e-12);
        assertTrue(psi("skylight-shaft-wrapped") < limit("skylight-shaft-wrapped", "head: skylight"));
        assertTrue(psi("skylight-shaft-bare") > limit("skylight-shaft-bare", "head: skylight"));
    }

    private double psi(String detail) {
        return result(detail, "head: skylight").psiExternal().upper();
    }

    private double limit(String detail, String edge) {
        return PsiLimit.of(result(detail, edge), house.limits());
    }

    private JunctionResult result(String detail, String edge) {
        return BridgeComputers.computer(new Accuracy(1e-2, 60_000))
                .compute(CatalogueFile.builtIn().find(detail).orElseThrow(), setup(edge));
    }
}
