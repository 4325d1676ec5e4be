package coldseam.envelope.shell.surfaces;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Body;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.junit.jupiter.api.Test;

/** Ground round a house of 10 m by 4 m: 0 m high in the south, 2 m in the north, even between them. */
class TerrainTest {

    private static final double ROUND_OFF = 1e-6;

    private static final ImmutableMap<String, Point3> POINTS = Maps.immutable.of(
            "a", new Point3(0, 0, 0), "b", new Point3(10, 0, 0), "c", new Point3(10, 4, 2), "d", new Point3(0, 4, 2));

    private static Terrain terrain(String... ground) {
        return Terrain.of(new Body.Explicit(
                POINTS,
                Lists.immutable.empty(),
                0.3,
                Lists.immutable.of(ground),
                Lists.immutable.of(new Body.Level("floor", 0, 0, Optional.empty()))));
    }

    private static Vertex at(double x, double y) {
        return Vertex.of(new Point3(x, y, 1));
    }

    private static final ImmutableList<Vertex> OUTLINE = Lists.immutable.of(at(0, 0), at(10, 0), at(10, 4), at(0, 4));

    @Test
    void withoutPointsItIsLevel() {
        Terrain level = terrain();
        assertEquals(0.3, level.at(at(3, 3)), ROUND_OFF);
        assertEquals(0.3, level.mean(Lists.immutable.of(OUTLINE)), ROUND_OFF);
        assertEquals(0.3, level.highest(), ROUND_OFF);
        assertEquals(0.3, level.mean(Lists.immutable.empty()), ROUND_OFF);
    }

    @Test
    void besideTheHouseItRunsEven() {
        Terrain slope = terrain("a", "b", "c", "d");
        assertEquals(0, slope.at(at(4, -1)), ROUND_OFF);
        assertEquals(0.5, slope.at(at(11, 1)), ROUND_OFF);
        assertEquals(1.5, slope.at(at(-2, 3)), ROUND_OFF);
        assertEquals(2, slope.highest(), ROUND_OFF);
        assertEquals(2, terrain("c", "d", "a", "b").highest(), ROUND_OFF);
    }

    /** By length: 10 m at 0 m, 10 m at 2 m, twice 4 m at 1 m between; of a room in the north 8 m less. */
    @Test
    void itsMeanIsByLength() {
        Terrain slope = terrain("a", "b", "c", "d");
        assertEquals((10 * 0 + 10 * 2 + 8 * 1) / 28.0, slope.mean(Lists.immutable.of(OUTLINE)), ROUND_OFF);
        // 4 m at 0 m, 3 m at 0 m to 1.5 m, 5 m at 1.5 m to 0 m.
        ImmutableList<Vertex> west = Lists.immutable.of(at(-4, 0), at(0, 0), at(0, 3));
        double foot = slope.at(at(-4, 0));
        assertEquals(
                (4 * (foot + 0) / 2 + 3 * 0.75 + 5 * (1.5 + foot) / 2) / 12,
                slope.mean(Lists.immutable.of(west)),
                ROUND_OFF);
        assertEquals(
                (20 + 8 + (4 * (foot + 0) / 2 + 3 * 0.75 + 5 * (1.5 + foot) / 2)) / 40,
                slope.mean(Lists.immutable.of(OUTLINE, west)),
                ROUND_OFF);
    }
}
