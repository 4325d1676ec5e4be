package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Retrofit;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.junit.jupiter.api.Test;

/** What stays of an old house tells its edges from a new one's. */
class RetrofitEdgesTest {

    private static final Body BODY = Houses.body(
            Houses.flat(),
            Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall"),
            Houses.storey("upper floor", Houses.rectangle(0, 0, 10, 8), 2.8, "wall"));

    private static Shell old(boolean balloon, boolean framed, String... builtNew) {
        House plain = Houses.house(BODY);
        Assembly wall = plain.assemblies().get("wall");
        Layer first = wall.layers().getFirst();
        Layer studs = new Layer(
                first.material(),
                first.thickness(),
                first.role(),
                Optional.of(new Layer.Framing(first.material(), 0.1)),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
        Assembly studded = new Assembly(
                "wall",
                Lists.immutable.of(studs).newWithAll(wall.layers().drop(1)),
                Optional.empty(),
                Assembly.AirGaps.NONE,
                Optional.empty());
        House house = framed ? plain.withAssemblies(plain.assemblies().newWithKeyValue("wall", studded)) : plain;
        return ShellBuilder.build(new House(
                house.name(),
                house.submittal(),
                house.site(),
                Optional.of(new Retrofit(
                        Sets.immutable.of(builtNew),
                        balloon,
                        Sets.immutable.empty(),
                        Optional.empty(),
                        Lists.immutable.empty())),
                house.materials(),
                house.assemblies(),
                house.body(),
                house.openings(),
                house.choices(),
                house.ownPsi(),
                house.seams(),
                house.points(),
                house.corners(),
                house.limits(),
                house.prices()));
    }

    private static void assertKinds(Shell shell, double existing, double slab, double balloon, double floor) {
        assertEquals(existing, ShellBuilderTest.length(shell, JunctionKind.EXISTING_SLAB_EDGE), 1e-9);
        assertEquals(slab, ShellBuilderTest.length(shell, JunctionKind.SLAB_EDGE), 1e-9);
        assertEquals(balloon, ShellBuilderTest.length(shell, JunctionKind.BALLOON_FRAME_AT_FLOOR), 1e-9);
        assertEquals(floor, ShellBuilderTest.length(shell, JunctionKind.INTERMEDIATE_FLOOR), 1e-9);
        assertEquals(36, ShellBuilderTest.length(shell, JunctionKind.FLAT_ROOF_EDGE), 1e-9);
    }

    @Test
    void aFloorThatStaysIsNoNewSlab() {
        assertKinds(ShellBuilder.build(Houses.house(BODY)), 0, 36, 0, 36);
        assertKinds(old(false, false), 36, 0, 0, 36);
        assertKinds(old(false, false, "lowest floor"), 0, 36, 0, 36);
        Edge edge = old(false, false).edges().detect(each -> each.kind() == JunctionKind.EXISTING_SLAB_EDGE);
        assertEquals(
                "existing slab edge: lowest floor / "
                        + edge.second().orElseThrow().name(),
                edge.name());
    }

    /** Bays run past a floor where studs do: those of walls that stay, and have studs. */
    @Test
    void studsThatStayRunPastTheFloor() {
        assertKinds(old(true, true), 36, 0, 36, 0);
        assertKinds(old(true, false), 36, 0, 0, 36);
        assertKinds(old(false, true), 36, 0, 0, 36);
        assertKinds(old(true, true, "ground floor wall 0"), 36, 0, 26, 10);
        // A storey's name stands for all of its surfaces, the floor under it too.
        assertKinds(old(true, true, "ground floor"), 0, 36, 0, 36);
    }

    /** Where a floor bears in behind a balloon frame is a corner of the walls as behind any other. */
    @Test
    void cornersAreTheSame() {
        assertEquals(
                coldseam.envelope.shell.corners.Corners.of(old(false, true)).size(),
                coldseam.envelope.shell.corners.Corners.of(old(true, true)).size());
    }
}
