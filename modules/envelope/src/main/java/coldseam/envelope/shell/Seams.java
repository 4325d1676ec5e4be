package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point3;
import coldseam.envelope.Seam;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.SurfaceAxes;
import coldseam.files.quantity.Format;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.api.tuple.Pair;
import org.eclipse.collections.impl.tuple.Tuples;

/**
 * Seams the house file names. Their true place on the surface is not known: they are drawn through its middle, upright for
 * partitions and party walls, level for others, no longer than the surface allows.
 */
record Seams(House house, ImmutableList<Surface> surfaces, ShellFaults faults) {

    /** m between like seams of a surface, at least: partitions, canopies, balconies (judgement). */
    private static final double APART = 0.5;

    /** m between balconies, canopies, decks and stairs that lie level on a wall, one over the other, at least (judgement). */
    private static final double OVER = 2.1;

    public ImmutableList<Edge> edges() {
        MutableList<Edge> edges = Lists.mutable.empty();
        MutableMap<Pair<JunctionKind, String>, Double> lengths = Maps.mutable.empty();
        for (Seam seam : house.seams().reject(Porches::is)) {
            Surface surface = surfaces.detect(s -> s.name().equals(seam.surface()));
            if (surface == null) {
                faults.seam(
                        seam.name(),
                        ": the surface \"%s\" is not part of the shell. Name one of: \"%s\".",
                        seam.surface(),
                        surfaces.collect(Surface::name).makeString("\", \""));
            } else if (!seam.kind().faces().getFirst().isOf(surface.normal().z())) {
                faults.seam(
                        seam.name(),
                        ": a %s is not part of \"%s\", which looks another way. Name the surface it meets.",
                        seam.kind().label(),
                        surface.name());
            } else {
                double all = lengths.merge(Tuples.pair(seam.kind(), surface.name()), seam.length(), Double::sum);
                room(seam, surface, all);
                edges.add(edge(seam, surface));
            }
        }
        return edges.toImmutable();
    }

    /**
     * Refuses more of a kind than a surface has room for.
     *
     * @param all m, of all seams of this kind on it so far
     */
    private void room(Seam seam, Surface surface, double all) {
        boolean level = surface.use() == Body.Use.WALL && !seam.kind().uprightSeam();
        double up = reach(surface, Vectors.UP);
        double room = level
                ? Math.hypot(reach(surface, axes(surface).u()), up) * Math.max(1, Math.floor(up / OVER))
                : surface.externalArea() / APART;
        if (all > room) {
            faults.seam(
                    seam.name(),
                    ": %s %.2f m%s; \"%s\" has room for %.2f m, one %s the other %.1f m apart. Correct its length.",
                    all > seam.length() ? "with the others of its kind there it comes to" : "its length is",
                    all,
                    all > seam.length() ? Format.of(", its own are %.2f m", seam.length()) : "",
                    surface.name(),
                    room,
                    level ? "over" : "beside",
                    level ? OVER : APART);
        }
    }

    /** m, of a surface in a direction. */
    private static double reach(Surface surface, Point3 along) {
        return surface.outline().collectDouble(p -> Vectors.dot(p, along)).max()
                - surface.outline().collectDouble(p -> Vectors.dot(p, along)).min();
    }

    private static SurfaceAxes axes(Surface surface) {
        return SurfaceAxes.of(surface.normal(), Vectors.ZERO);
    }

    private static Edge edge(Seam seam, Surface surface) {
        SurfaceAxes axes = axes(surface);
        Point3 along = seam.kind().uprightSeam() ? axes.v() : axes.u();
        Point3 middle = Vectors.mean(surface.outline());
        double half = Math.min(seam.length(), reach(surface, along)) / 2;
        return Edge.on(
                surface,
                seam.name(),
                seam.kind(),
                Optional.empty(),
                Vectors.minus(middle, Vectors.times(along, half)),
                Vectors.plus(middle, Vectors.times(along, half)),
                seam.length(),
                Places.word(surface) + " side, " + surface.storey() + ", "
                        + seam.kind().label() + " \"" + seam.name() + "\" on " + surface.name());
    }
}
