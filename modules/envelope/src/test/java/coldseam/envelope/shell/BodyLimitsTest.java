package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Point2;
import coldseam.envelope.shell.fault.ShellException;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** What a body by storeys may be: at each limit that a message names it is built, beyond it refused. */
class BodyLimitsTest {

    private static final ImmutableList<Point2> PLAN = Houses.rectangle(0, 0, 10, 8);

    private static void builds(Body body) {
        assertTrue(ShellBuilder.build(Houses.house(body)).closed());
    }

    private static ImmutableList<String> faults(Body body) {
        return assertThrows(ShellException.class, () -> ShellBuilder.build(Houses.house(body)))
                .faults();
    }

    private static void refused(Body body, String message) {
        assertEquals(Lists.immutable.of(message), faults(body));
    }

    private static Body.Storey storey(String name, double height, double floor) {
        Body.Storey s = Houses.storey(name, PLAN, height, "wall");
        return Houses.storey(name, PLAN, height, s.walls(), s.terrace(), true, s.overhang(), floor);
    }

    private static Body one(Body.Roof roof) {
        return Houses.body(roof, storey("house", 3, 0));
    }

    /** Whatever pitch stands over it, a cold loft's ceiling is level, and so is a flat roof. */
    @Test
    void pitchesThatCountForNothing() {
        builds(Houses.body(Houses.roof(Body.Roof.Form.GABLE, 89, 0, true), storey("house", 3, 0)));
        builds(Houses.body(Houses.roof(Body.Roof.Form.FLAT, 89, 0, false), storey("house", 3, 0)));
    }

    /** A name of the file's own may be that which another storey's wall has without one. */
    @Test
    void wallsOfOneName() {
        Body.Storey house = storey("house", 3, 0);
        Body.Storey upper = Houses.outlined(storey("upper", 3, 0.3), PLAN, Lists.immutable.empty(), house.walls());
        ImmutableList<String> twice = faults(Houses.body(Houses.flat(), house, upper));
        assertEquals("Wall \"house wall 0\": the name is given twice. Give each wall its own name.", twice.getFirst());
        assertEquals(4, twice.size());
    }

    /** Ground up to a hair below the roof's edge is built, as high as the walls it is not. */
    @Test
    void groundBesideTheWalls() {
        builds(grounded(2.9));
        assertEquals(
                Lists.immutable.of(
                        "Ground: beside corner 2 of the lowest storey it is 3.000 m high; the walls end at 3.000 m. A roof in the"
                                + " ground is not known: give a lower height, or the wall there as facing the ground."),
                faults(grounded(3)));
    }

    /** Its underside lies 0.5 m under its floor; fill of up to 1.2 m bears it. */
    @Test
    void aSlabOverTheGround() {
        builds(grounded(-1.7));
        refused(
                grounded(-1.71),
                "Floor \"lowest floor\": it lies on the ground, but its underside is at -0.500 m and the ground beside [10.000 m,"
                        + " 0.000 m] at -1.710 m; up to 1.2 m of fill are known. Correct the heights, or say what is below it: a"
                        + " crawl space, a cellar, or an overhang over the open air.");
    }

    private static Body grounded(double height) {
        return Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                Lists.immutable.of(storey("house", 3, 0)),
                Houses.slab(),
                Houses.flat(),
                Lists.immutable.empty(),
                Lists.immutable.of(0.0, height, 0.0, 0.0));
    }

    /** A wall stands in ground that falls below its floor only up to where it does: beyond that its slab's edge does. */
    @Test
    void groundThatFallsBelowTheFloor() {
        Shell shell = ShellBuilder.build(Houses.house(Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                Lists.immutable.of(storey("house", 3, 0)),
                Houses.slab(),
                Houses.flat(),
                Lists.immutable.empty(),
                Lists.immutable.of(0.2, -0.2, -0.2, 0.2))));
        Surface below = ShellBuilderTest.surface(shell, "house wall 0, below ground");
        // 5 m over the slab's 0.5 m; indoors from the western wall's inner face at 0.4 m on, as high there as beside
        // the corner.
        assertEquals(5 * (0.5 + 0.2 / 2), below.externalArea(), 1e-3);
        assertEquals(4.6 * 0.2 / 2, below.internalArea(), 1e-3);
    }

    /** It may rise half a metre out of the ground. */
    @Test
    void wallsInTheGround() {
        Body.Storey buried = Houses.facing(storey("house", 3, 0), 1, Exposure.ground());
        builds(beside(buried, 2.5));
        refused(
                beside(buried, 2.49),
                "Wall \"house wall 1\": it faces the ground, but rises to 3.000 m, and the ground beside it lies at 2.490 m. Let"
                        + " it face outdoors: it is parted where the ground ends, at the heights that the key ground gives.");
    }

    private static Body beside(Body.Storey storey, double ground) {
        return Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                Lists.immutable.of(storey),
                Houses.slab(),
                Houses.flat(),
                Lists.immutable.empty(),
                Lists.immutable.of(0.0, ground, 2.9, 0.0));
    }

    /** A wall beside a crawl space begins below a suspended floor: under one beside it, or under a part of its own. */
    @Test
    void wallsBesideACrawlSpace() {
        Exposure crawl = new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1);
        Body.Storey wall = Houses.facing(storey("house", 3, 0), 1, crawl);
        String why =
                "Wall \"house wall 1\": it faces a crawl space, but no suspended floor lies higher than its foot at ";
        refused(Houses.body(Houses.flat(), wall), why + "0.000 m. Say what it faces.");
        Body.Base suspended = Houses.base(Body.Base.Kind.SUSPENDED, 0, crawl);
        refused(
                Houses.storeys(Body.FootprintLine.OUTER_FACE, Lists.immutable.of(wall), suspended, Houses.flat()),
                why + "0.500 m. Say what it faces.");
        Body.Storeys beside = winged(wall, suspended, 0);
        builds(beside);
        // A suspended floor that lies as high as the wall's foot is not over it.
        refused(winged(wall, suspended, 0.5), why + "0.500 m. Say what it faces.");
        Body.AreaBase part = new Body.AreaBase(Houses.rectangle(5, -1, 6, 10), suspended);
        builds(Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                Lists.immutable.of(wall),
                Houses.slab(),
                Houses.flat(),
                Lists.immutable.of(part),
                Lists.immutable.empty()));
        Body.AreaBase solid = new Body.AreaBase(Houses.rectangle(5, -1, 6, 10), Houses.slab());
        refused(
                Houses.storeys(
                        Body.FootprintLine.OUTER_FACE,
                        Lists.immutable.of(wall),
                        Houses.slab(),
                        Houses.flat(),
                        Lists.immutable.of(solid),
                        Lists.immutable.empty()),
                why + "0.000 m. Say what it faces.");
    }

    /** Whoever measures the walls' structure measures the floors' areas there, too, and means what lies under the whole wall. */
    @Test
    void anAreaDrawnAlongTheFootprintsLineGoesOnToTheOuterFace() {
        for (Body.FootprintLine line : Body.FootprintLine.values()) {
            assertEquals(
                    surfaces(line, Houses.rectangle(4, -1, 7, 10)),
                    surfaces(line, Houses.rectangle(4, 0, 6, 8)),
                    line::name);
        }
    }

    private static ImmutableList<Surface> surfaces(Body.FootprintLine line, ImmutableList<Point2> area) {
        Exposure crawl = new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1);
        return ShellBuilder.build(Houses.house(Houses.storeys(
                        line,
                        Lists.immutable.of(storey("house", 3, 0)),
                        Houses.slab(),
                        Houses.flat(),
                        Lists.immutable.of(new Body.AreaBase(area, Houses.base(Body.Base.Kind.SUSPENDED, 0, crawl))),
                        Lists.immutable.empty())))
                .surfaces();
    }

    /** The wall's house on a slab at a level, and beside it a wing over a crawl space, its floor at 0.5 m. */
    private static Body.Storeys winged(Body.Storey storey, Body.Base suspended, double level) {
        Body.Base slab = Houses.slab();
        Body.Storey beside = Houses.storey("wing", Houses.rectangle(10, 2, 5, 4), 3, "wall");
        return Houses.body(
                Body.FootprintLine.OUTER_FACE,
                Houses.stack(
                        "",
                        new Body.Base(
                                slab.kind(),
                                slab.assembly(),
                                slab.edge(),
                                0,
                                level,
                                slab.crawlSpace(),
                                slab.exposure()),
                        Houses.flat(),
                        storey),
                Lists.immutable.of(Houses.stack("wing", suspended, Houses.flat(), beside)));
    }

    /** Where it projects, a storey of 1 m has 0.55 m of overhang under its floor; under the next one's floor of 1.9 m its deck ends there. */
    @Test
    void aStoreyOfNothing() {
        refused(
                Houses.body(
                        Houses.flat(),
                        storey("house", 3, 0),
                        Houses.storey("middle", Houses.rectangle(0, 0, 12, 8), 1, "wall"),
                        withFloor(Houses.storey("top", PLAN, 3, "wall"), 1.9)),
                "Storey \"middle\": nothing is left between its floor and what lies above it: the outer faces would lie at"
                        + " 2.4500 m and 2.4500 m. Check its height and the assemblies below and above.");
    }

    private static Body.Storey withFloor(Body.Storey s, double floor) {
        return Houses.storey(s.name(), s.footprint(), s.height(), s.walls(), s.terrace(), true, s.overhang(), floor);
    }
}
