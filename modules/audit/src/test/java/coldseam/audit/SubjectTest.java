package coldseam.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.engine.Sample;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Edge;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Where the drawing points for each sort of finding: the largest first, in the middle of it. */
class SubjectTest {

    /** m: the shell's points lie on a lattice of a micrometre. */
    private static final double LATTICE = 1e-5;

    private static final Audit BOX = Sample.audit(Sample.yaml(), Sample.good());
    private static final double HEIGHT = BOX.shell().externalVolume() / 48;

    private static Subject only(String yaml, ImmutableList<Made> details) {
        return Sample.audit(yaml, details).findings().getOnly().subject();
    }

    private static void at(double x, double y, double z, Point3 point) {
        assertEquals(x, point.x(), LATTICE);
        assertEquals(y, point.y(), LATTICE);
        assertEquals(z, point.z(), LATTICE);
    }

    private static double lowest() {
        return BOX.shell()
                .edges()
                .flatCollect(edge -> Lists.immutable.of(edge.from(), edge.to()))
                .collectDouble(Point3::z)
                .min();
    }

    @Test
    void surfacesArePointedAtInTheirMiddleTheLargestFirst() {
        Subject walls = only(
                Sample.yaml().replace("finish, controls: [air, vapour]", "finish, controls: [vapour]"), Sample.good());
        assertEquals(4, walls.places().size());
        assertEquals(8 * HEIGHT, walls.surface().orElseThrow().externalArea(), 1e-3);
        assertEquals(walls.at(), walls.places().getFirst());
        // The long walls run along x = 4, the short ones along y = 3.
        walls.places().take(2).forEach(point -> assertEquals(4, point.x(), LATTICE));
        walls.places().drop(2).forEach(point -> assertEquals(3, point.y(), LATTICE));
        walls.places().forEach(point -> assertEquals(lowest() + HEIGHT / 2, point.z(), LATTICE));
        assertEquals(0, walls.length());
        assertTrue(BOX.shell().edges().noneSatisfy(walls::isAbout));
        assertTrue(BOX.junctions().noneSatisfy(walls::isAbout));
    }

    @Test
    void seamsArePointedAtInTheirMiddleTheLongestFirst() {
        Made edge = Made.good("edge-good", JunctionKind.FLAT_ROOF_EDGE).psi(0.5);
        Subject edges = only(Sample.yaml(), Sample.goodBut(edge));
        assertEquals(28, edges.length(), LATTICE);
        assertEquals(Optional.empty(), edges.surface());
        assertEquals(4, edges.places().size());
        edges.places().take(2).forEach(point -> assertEquals(4, point.x(), LATTICE));
        edges.places().drop(2).forEach(point -> assertEquals(3, point.y(), LATTICE));
        edges.places().forEach(point -> assertEquals(lowest() + HEIGHT, point.z(), LATTICE));
        for (Edge each : BOX.shell().edges()) {
            assertEquals(each.kind() == JunctionKind.FLAT_ROOF_EDGE, edges.isAbout(each), each::name);
        }
        for (JunctionRow row : BOX.junctions()) {
            assertEquals(row.edge().kind() == JunctionKind.FLAT_ROOF_EDGE, edges.isAbout(row), row::name);
        }
        Subject.Bridges bridges = (Subject.Bridges) edges;
        assertEquals(Lists.immutable.of(8.0, 8.0, 6.0, 6.0), bridges.edges().collect(name -> (double) Math.round(
                BOX.junctions().detect(row -> row.name().equals(name)).length())));
    }

    @Test
    void aHoleIsPointedAtInItsMiddle() {
        Subject hole = only(Sample.yaml().replace("{all: wall}", "{all: wall, south: none}"), Sample.good());
        assertEquals(1, hole.places().size());
        at(4, 0, lowest() + HEIGHT / 2, hole.at());
        assertEquals(Optional.empty(), hole.surface());
        assertTrue(BOX.junctions().noneSatisfy(hole::isAbout));
    }

    @Test
    void cornersArePointedAt() {
        Audit audit = Sample.audit(Sample.yaml(), Sample.good(), 0.69);
        Subject corners = audit.findings().getFirst().subject();
        assertEquals(4, corners.places().size());
        assertEquals(0, corners.length());
        assertEquals(Optional.empty(), corners.surface());
        assertTrue(audit.junctions().noneSatisfy(corners::isAbout));
        corners.places().forEach(point -> {
            assertTrue(Math.abs(point.x() - 4) > 4 - LATTICE, point::toString);
            assertTrue(Math.abs(point.y() - 3) > 3 - LATTICE, point::toString);
        });
    }

    @Test
    void pointsAreOfTheSurfaceTheyPierce() {
        String rail = "points:\n  few: {surface: ground floor east wall, detail: bracket-stainless, number: 2}\n"
                + "  many: {surface: ground floor north wall, detail: bracket-stainless, number: 9}\n";
        Audit audit = Sample.audit(Sample.yaml() + rail, Sample.good());
        Subject brackets = audit.findings().getOnly().subject();
        assertEquals("ground floor north wall", brackets.surface().orElseThrow().name());
        assertEquals(0, brackets.length());
        assertTrue(audit.points().allSatisfy(brackets::isAbout));
        assertFalse(brackets.isAbout(audit.shell().edges().getFirst()));
        assertEquals(Lists.immutable.empty(), ((Subject.Bridges) brackets).edges());
        at(4, 6, lowest() + HEIGHT / 2, brackets.at());
    }
}
