package coldseam.audit.assumed;

import coldseam.audit.Audit;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Retrofit;
import coldseam.envelope.Seam;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import java.util.function.Function;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What several assumptions look for in a house. */
final class OfHouse {

    /** m, within which heights, and thicknesses, are one. */
    static final double HAIR = 1e-3;

    private OfHouse() {}

    static ImmutableList<Surface> surfaces(Audit audit, Predicate<Surface> which) {
        return audit.shell().surfaces().select(which);
    }

    /** m², gross, in the site's dimension system. */
    static double area(Audit audit, Predicate<Surface> which) {
        boolean external = audit.house().site().dimensions() == DimensionSystem.EXTERNAL;
        return surfaces(audit, which).sumOfDouble(external ? Surface::externalArea : Surface::internalArea);
    }

    /** Build-ups of some surfaces, each once, in the surfaces' order. */
    static ImmutableList<Assembly> assemblies(Audit audit, Predicate<Surface> where) {
        return surfaces(audit, where)
                .flatCollect(surface -> surface.assembly().stream().toList())
                .distinct();
    }

    /** What there is in a house that stands already; empty in a new one. */
    static <E> ImmutableList<E> old(Audit audit, Function<Retrofit, ImmutableList<E>> what) {
        return audit.house().retrofit().map(what).orElse(Lists.immutable.empty());
    }

    /** A value that is above what is usual. */
    static ImmutableList<Double> over(double usual, double value) {
        return value > usual ? Lists.immutable.of(value) : Lists.immutable.empty();
    }

    /** Whether a seam that the house file lists lies on a surface. */
    static boolean isOn(Seam seam, Surface surface) {
        return seam.surface().equals(surface.name());
    }

    /** Whether an edge runs level, to a millimetre. */
    static boolean isLevel(Edge edge) {
        return Math.abs(edge.from().z() - edge.to().z()) < HAIR;
    }

    /** Walls of a build-up. */
    static ImmutableList<Surface> walls(Audit audit, Assembly of) {
        return surfaces(
                audit,
                surface -> surface.use() == Body.Use.WALL
                        && surface.assembly().filter(of::equals).isPresent());
    }
}
