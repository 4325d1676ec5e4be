package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.BuildUps;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sheet on a cellar's wall, which takes no place where heat flows: soil lies against the wall as without it. */
final class SheetInTheGroundTest {
    /** W/(m·K), of the 4 mm by which floor and wall are measured farther out; outdoor air behind the sheet adds 0.10 to 0.18. */
    private static final double OF_ITS_THICKNESS = 0.001;

    @ParameterizedTest
    @CsvSource({
        "cellar-slab-inner-boards-meet, wall insulated inside",
        "cellar-slab-tight-to-wall, foundation wall",
        "cellar-slab-board-under-footing, foundation wall"
    })
    void noOutdoorAirStandsBehindIt(String detail, String buildUp) {
        Assembly wall = BuildUps.all().get(buildUp).masonry();
        assertEquals(psi(detail, wall), psi(detail, sheeted(wall)), OF_ITS_THICKNESS);
    }

    private static Assembly sheeted(Assembly wall) {
        Layer sheet = new Layer(
                MaterialLibrary.named("bitumen sheet").orElseThrow(),
                0.004,
                Role.MEMBRANE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
        return new Assembly(wall.name(), wall.layers().newWith(sheet), wall.fasteners(), wall.gaps(), wall.rain());
    }

    private static double psi(String detail, Assembly wall) {
        JunctionSetup typical = TypicalBuild.MASONRY.setup(JunctionKind.of("cellar slab to wall"));
        Assembly floor =
                detail.contains("inner") ? BuildUps.all().get("old slab").masonry() : typical.first();
        return CatalogueBreadthTest.psi(
                        CatalogueFile.builtIn().find(detail).orElseThrow(), typical.between(floor, Optional.of(wall)))
                .middle();
    }
}
