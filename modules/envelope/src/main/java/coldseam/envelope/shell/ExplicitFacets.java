package coldseam.envelope.shell;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Sets;

/** Facets of a body of explicit surfaces: taken as given, on the lattice. */
final class ExplicitFacets {

    /** m, how far a corner may lie off its surface's plane. */
    private static final double OFF_PLANE = 0.001;

    private ExplicitFacets() {}

    /** The facets, or none where faults were added. */
    static Optional<BodyFacets> of(House house, Body.Explicit body, MutableList<String> faults) {
        MutableList<Facet> facets = Lists.mutable.empty();
        MutableSet<String> names = Sets.mutable.empty();
        for (Body.ExplicitSurface surface : body.surfaces()) {
            String place = "Surface \"" + surface.name() + "\"";
            if (!names.add(surface.name())) {
                faults.add(place + ": the name is given twice. Give each surface its own name.");
            }
            surface.points()
                    .reject(body.points()::containsKey)
                    .forEach(point -> faults.add(place + ": the point \"" + point
                            + "\" is not among the body's points. Define it, or name one that is."));
            if (surface.assembly().isPresent()
                    && !house.assemblies().containsKey(surface.assembly().get())) {
                faults.add(place + ": the assembly \"" + surface.assembly().get()
                        + "\" is not among the house's assemblies. Define it, or name one that is.");
            }
            if (surface.points().allSatisfy(body.points()::containsKey)) {
                facet(house, body, surface, place, faults).ifPresent(facets::add);
            }
        }
        if (facets.isEmpty() && faults.isEmpty()) {
            faults.add("Body: no surface is given. Add the surfaces of the shell, or describe it by storeys.");
        }
        if (faults.isEmpty()) {
            turnedInsideOut(facets.toImmutable(), faults);
        }
        return faults.isEmpty()
                ? Optional.of(new BodyFacets(facets.toImmutable(), Lists.immutable.empty(), Double.NaN, StepZones.HAIR))
                : Optional.empty();
    }

    /**
     * A surface whose every shared edge runs the same way round as its neighbours' was given clockwise. Where most are
     * clockwise, all are, and the shell's volume is negative.
     */
    private static void turnedInsideOut(ImmutableList<Facet> facets, MutableList<String> faults) {
        FacetMesh mesh = FacetMesh.of(facets, Vertex.ONE);
        for (int f = 0; f < facets.size(); f++) {
            int facet = f;
            ImmutableList<FacetMesh.Line> shared = mesh.lines()
                    .select(line ->
                            line.facets().contains(facet) && line.facets().size() == 2);
            boolean alone = shared.noneSatisfy(FacetMesh.Line::shared);
            boolean othersAgree = shared.allSatisfy(line -> mesh.lines()
                    .anySatisfy(other -> other.shared()
                            && other.facets()
                                    .containsAny(line.facets()
                                            .reject(g -> g == facet)
                                            .castToCollection())));
            if (shared.size() >= 2 && alone && othersAgree) {
                faults.add(
                        "Surface \"" + facets.get(f).name()
                                + "\": its points run clockwise, its neighbours' run counterclockwise seen from outdoors. Reverse them.");
            }
        }
        double volume = 0;
        for (Facet facet : facets) {
            Vertex a = facet.outline().get(0);
            for (int i = 1; i + 1 < facet.outline().size(); i++) {
                volume += a.dot(facet.outline().get(i).cross(facet.outline().get(i + 1)));
            }
        }
        if (faults.isEmpty() && volume < 0 && mesh.lines().allSatisfy(FacetMesh.Line::shared)) {
            faults.add("Body: all surfaces' points run clockwise seen from outdoors. Reverse every surface's points.");
        }
    }

    private static Optional<Facet> facet(
            House house, Body.Explicit body, Body.ExplicitSurface surface, String place, MutableList<String> faults) {
        ImmutableList<Vertex> outline = Facet.tidy(
                surface.points().collect(name -> Vertex.measured(body.points().get(name))));
        Optional<Assembly> assembly = surface.assembly().map(house.assemblies()::get);
        boolean cellar = surface.use() == Body.Use.FLOOR
                && outline.allSatisfy(v -> Vertex.metres(v.z()) < body.groundLevel() - 1.0);
        Facet facet = new Facet(
                surface.name(),
                surface.use(),
                assembly,
                surface.exposure(),
                outline,
                Footprint.thickness(assembly),
                assembly.isEmpty(),
                new Facet.Traits(surface.name(), -1, Double.NaN, cellar ? Facet.Mark.CELLAR : Facet.Mark.NONE));
        if (outline.size() < 3 || facet.doubleArea().length() == 0) {
            faults.add(place + ": its points lie on one line; at least three that do not are needed.");
            return Optional.empty();
        }
        Vertex area = facet.doubleArea();
        Vertex origin = outline.get(0);
        Vertex worst = outline.maxBy(corner -> Math.abs(corner.minus(origin).dot(area)));
        double off = Vertex.metres(1) * Math.abs(worst.minus(origin).dot(area)) / area.length();
        if (off > OFF_PLANE) {
            faults.add(String.format(
                    Locale.ROOT,
                    "%s: its corners do not lie in one plane; the one at (%.3f, %.3f, %.3f) m is %.1f mm off, %.0f mm are"
                            + " allowed. Move it, or split the surface into triangles.",
                    place,
                    worst.point().x(),
                    worst.point().y(),
                    worst.point().z(),
                    off * 1000,
                    OFF_PLANE * 1000));
        }
        return Optional.of(facet);
    }
}
