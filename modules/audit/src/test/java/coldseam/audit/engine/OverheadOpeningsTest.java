package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.HeatLoss;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.file.house.HouseFile;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.catalogue.CatalogueFile;
import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;

/** A hatch closes a ceiling against the cold loft over it; a skylight stands at the top of a shaft and faces open air. */
class OverheadOpeningsTest {

    private final House house;
    private final Shell shell;

    OverheadOpeningsTest() throws IOException {
        house = HouseFile.read(Path.of(
                        System.getProperty("coldseam.root"), "fixtures", "houses", "shapes", "room-in-roof.yaml"))
                .house();
        shell = ShellBuilder.build(house);
    }

    private double factor(String opening) {
        return new HeatLossTable(
                        house,
                        new SurfaceHeats(house, shell, true).compute(),
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
                .setup()
                .orElseThrow();
    }

    @Test
    void aSkylightLosesItsHeatToOpenAirAndAHatchToTheLoft() {
        double loft = setup("head: hatch").firstExposure().factor();
        assertEquals(loft, factor("hatch"));
        assertEquals(1, factor("skylight"));
        assertEquals(Exposure.outdoors(), setup("head: skylight").secondExposure());
        assertEquals(setup("head: hatch").firstExposure(), setup("head: hatch").secondExposure());
        assertEquals(0.9, loft);
    }
}
