package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.conduction.Point;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A party wall meets walls, roofs and floors: each is called what it is, and a floor lies under the rooms. */
final class PartyWallFloorTest {

    private static Composition composed(Body.Use use, Exposure exposure) {
        Detail detail = CatalogueFile.builtIn()
                .find("party-wall-insulation-passes", JunctionKind.PARTY_WALL)
                .orElseThrow();
        JunctionSetup typical = Samples.setup(detail);
        JunctionSetup setup = new JunctionSetup(
                typical.kind(),
                typical.first(),
                typical.second(),
                typical.angle(),
                typical.innerStep(),
                exposure,
                typical.secondExposure(),
                typical.opening(),
                typical.floorThickness(),
                typical.floorRise(),
                typical.joists(),
                typical.upstand(),
                typical.sill(),
                typical.ground(),
                typical.indoorTemperature(),
                typical.outdoorTemperature(),
                use,
                typical.materials());
        return BuiltIn.composed(detail, setup);
    }

    @ParameterizedTest
    @CsvSource({
        "WALL, wall, true",
        "ROOF, roof, true",
        "CEILING, roof, true",
        "FLOOR, floor, false",
        "OVERHANG, floor, false"
    })
    void isCalledWhatItIsAndLiesWhereItDoes(Body.Use use, String name, boolean above) {
        Composition drawn = composed(use, Exposure.outdoors());

        assertEquals(name, drawn.legs().getFirst().name());
        assertEquals("party wall", drawn.legs().getLast().name());
        // The inner faces meet at the origin; the party wall goes farther from there than the surface is thick.
        ImmutableList<Double> heights = drawn.heatFlow()
                .regions()
                .flatCollect(region -> region.outline().corners())
                .collect(Point::y);
        assertEquals(above, heights.max() < -heights.min());
    }

    @ParameterizedTest
    @EnumSource(
            value = Body.Use.class,
            names = {"FLOOR", "WALL"})
    void saysThatTheGroundIsLeftOut(Body.Use use) {
        assertEquals(1, composed(use, Exposure.ground()).notes().count(PartyWallFloorTest::isOfTheGround));
        assertEquals(0, composed(use, Exposure.outdoors()).notes().count(PartyWallFloorTest::isOfTheGround));
    }

    private static boolean isOfTheGround(String note) {
        return note.startsWith("The ground is left out");
    }
}
