package coldseam.report.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Side;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class SceneTest {

    private static final Viewpoint SOUTH_EAST = new Viewpoint("", -58, 28);

    private static Surface surface(String name, Point3 normal, double... xyz) {
        ImmutableList<Point3> outline = Lists.immutable.empty();
        for (int i = 0; i < xyz.length; i += 3) {
            outline = outline.newWith(new Point3(xyz[i], xyz[i + 1], xyz[i + 2]));
        }
        return new Surface(
                name,
                Side.ABOVE,
                Body.Use.WALL,
                Optional.empty(),
                Exposure.outdoors(),
                outline,
                outline,
                normal,
                1,
                1,
                0,
                "");
    }

    /** A high block with a lower one to its south: the high block's south wall rises behind the low roof. */
    private static final Surface LOW_ROOF =
            surface("low roof", new Point3(0, 0, 1), 0, 0, 3, 10, 0, 3, 10, 5, 3, 0, 5, 3);

    private static final Surface HIGH_WALL =
            surface("high wall", new Point3(0, -1, 0), 0, 5, 3, 10, 5, 3, 10, 5, 6, 0, 5, 6);
    private static final Surface LOW_WALL =
            surface("low wall", new Point3(0, -1, 0), 0, 0, 0, 10, 0, 0, 10, 0, 3, 0, 0, 3);
    private static final Surface NORTH_WALL =
            surface("north wall", new Point3(0, 1, 0), 10, 10, 0, 0, 10, 0, 0, 10, 6, 10, 10, 6);

    private static Scene scene(Surface... surfaces) {
        return new Scene(Lists.immutable.of(surfaces), SOUTH_EAST);
    }

    @Test
    void leavesOutWhatFacesAway() {
        assertEquals(
                Lists.immutable.of("low wall"),
                scene(NORTH_WALL, LOW_WALL).surfaces().collect(Surface::name));
    }

    @Test
    void drawsWhatMayHideLast() {
        // A separate, nearer block hides the wall behind it, in whatever order they are given.
        Surface near = surface("near", new Point3(0, -1, 0), 2, -8, 0, 8, -8, 0, 8, -8, 9, 2, -8, 9);
        assertEquals(
                "near", scene(near, LOW_WALL, LOW_ROOF).surfaces().getLast().name());
        assertEquals(
                "near", scene(LOW_ROOF, LOW_WALL, near).surfaces().getLast().name());
    }

    @Test
    void seesAPointOnlyWhereNothingIsInFront() {
        Surface near = surface("near", new Point3(0, -1, 0), -20, -8, 0, 40, -8, 0, 40, -8, 30, -20, -8, 30);
        Point3 onWall = new Point3(5, 5, 4.5);
        assertTrue(scene(HIGH_WALL, LOW_ROOF, LOW_WALL).sees(onWall));
        assertFalse(scene(HIGH_WALL, LOW_ROOF, LOW_WALL, near).sees(onWall));
        assertFalse(scene(NORTH_WALL, LOW_WALL).sees(new Point3(5, 10, 3)), "it faces away");
    }
}
