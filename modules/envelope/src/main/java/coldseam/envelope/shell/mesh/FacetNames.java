package coldseam.envelope.shell.mesh;

import coldseam.envelope.Compass;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Readable names that stay the same from run to run. */
public final class FacetNames {

    private FacetNames() {}

    /**
     * Names like facets: the plain name where there is one, by side of the house where there are several ("roof, south
     * slope"), numbered where two lie on one side.
     */
    public static ImmutableList<Facet> apart(MutableList<Facet> facets, String name, Vertex centre) {
        if (facets.size() < 2) {
            return facets.collect(facet -> facet.withName(name)).toImmutable();
        }
        MutableList<String> names = facets.collect(facet -> {
            Vertex area = facet.doubleArea();
            boolean level = area.x() == 0 && area.y() == 0;
            Point3 middle = Vectors.mean(facet.outline().collect(Vertex::point));
            Point3 away = level ? Vectors.minus(middle, centre.point()) : facet.normal();
            return name + ", " + Compass.of(away.x(), away.y()).word() + (level ? " side" : " slope");
        });
        ImmutableList<String> numbered = numbered(names.toImmutable());
        return facets.collectWithIndex((facet, i) ->
                        facet.withName(name).partNamed(names.get(i)).pieceNamed(numbered.get(i)))
                .toImmutable();
    }

    /** One name for all, numbered from the second on. */
    public static ImmutableList<Facet> numbered(String name, MutableList<Facet> facets) {
        return numbered(facets.collect(facet -> facet.withName(name)));
    }

    /** Adds (2), (3) … to the names of what comes again. */
    public static ImmutableList<Facet> numbered(MutableList<Facet> facets) {
        ImmutableList<String> names = numbered(facets.collect(Facet::name).toImmutable());
        return facets.collectWithIndex((facet, i) -> facet.pieceNamed(names.get(i)))
                .toImmutable();
    }

    /** Adds (2), (3) … to names that come again. */
    public static ImmutableList<String> numbered(ImmutableList<String> names) {
        Map<String, Integer> seen = new TreeMap<>();
        MutableList<String> unique = Lists.mutable.empty();
        for (String name : names) {
            int times = seen.merge(name, 1, Integer::sum);
            unique.add(times == 1 ? name : name + " (" + times + ")");
        }
        return unique.toImmutable();
    }
}
