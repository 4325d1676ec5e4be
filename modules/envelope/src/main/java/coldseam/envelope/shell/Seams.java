package coldseam.envelope.shell;

import coldseam.envelope.House;
import coldseam.envelope.Point3;
import coldseam.envelope.Seam;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellFaults;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Seams the house file names. Their true place on the surface is not known: they are drawn through its middle, upright for
 * partitions and party walls, level for others, no longer than the surface allows.
 */
final class Seams {

    /** m between like seams of a surface, at least: partitions, canopies, balconies (judgement). */
    private static final double APART = 0.5;

    private final House house;
    private final ImmutableList<Surface> surfaces;
    private final ShellFaults faults;

    Seams(House house, ImmutableList<Surface> surfaces, ShellFaults faults) {
        this.house = house;
        this.surfaces = surfaces;
        this.faults = faults;
    }

    public ImmutableList<Edge> edges() {
        MutableList<Edge> edges = Lists.mutable.empty();
        for (Seam seam : house.seams().reject(Porches::is)) {
            Surface surface = surfaces.detect(s -> s.name().equals(seam.surface()));
            if (surface == null) {
                faults.seam(
                        seam.name(),
                        ": the surface \"%s\" is not part of the shell. Name one of: \"%s\".",
                        seam.surface(),
                        surfaces.collect(Surface::name).makeString("\", \""));
            } else if (!(seam.length() > 0)) {
                faults.seam(seam.name(), ": its length is %.3f m; it must be more than 0 m.", seam.length());
            } else if (!seam.kind().faces().getFirst().isOf(surface.normal().z())) {
                faults.seam(
                        seam.name(),
                        ": a %s is not part of \"%s\", which looks another way. Name the surface it meets.",
                        seam.kind().label(),
                        surface.name());
            } else if (seam.length() * APART > surface.externalArea()) {
                faults.seam(
                        seam.name(),
                        ": its length is %.2f m; \"%s\" has room for %.2f m, one beside the other %.1f m apart."
                                + " Correct its length.",
                        seam.length(),
                        surface.name(),
                        surface.externalArea() / APART,
                        APART);
            } else {
                edges.add(edge(seam, surface));
            }
        }
        return edges.toImmutable();
    }

    private static Edge edge(Seam seam, Surface surface) {
        Point3 normal = surface.normal();
        Point3 across = Math.hypot(normal.x(), normal.y()) < 0.01
                ? new Point3(1, 0, 0)
                : Vectors.unit(Vectors.cross(Vectors.UP, normal));
        Point3 along = seam.kind().uprightSeam() ? Vectors.cross(normal, across) : across;
        Point3 middle = Vectors.mean(surface.outline());
        double low = surface.outline().collectDouble(p -> Vectors.dot(p, along)).min();
        double high =
                surface.outline().collectDouble(p -> Vectors.dot(p, along)).max();
        double half = Math.min(seam.length(), high - low) / 2;
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
