package coldseam.envelope.shell.surfaces;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.BodyFacets;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetMesh;
import coldseam.envelope.shell.plan.StepZones;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Facets of a body of explicit surfaces: taken as given, on the lattice. */
public final class ExplicitFacets {

    /** m, how far a corner may lie off its surface's plane. */
    private static final double OFF_PLANE = 0.001;

    private ExplicitFacets() {}

    /** The facets, or none where faults were added. */
    public static Optional<BodyFacets> of(House house, Body.Explicit body, ShellFaults faults) {
        MutableList<Facet> facets = Lists.mutable.empty();
        body.surfaces().forEach(surface -> facet(house, body, surface, faults).ifPresent(facets::add));
        if (faults.isEmpty()) {
            turnedInsideOut(facets.toImmutable(), faults);
        }
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        Terrain terrain = Terrain.of(body);
        Levels levels = new Levels(
                body.levels(),
                facets.select(facet -> facet.use() == Body.Use.FLOOR).toImmutable(),
                terrain);
        new SolidChecks(facets.toImmutable(), terrain, faults).check();
        levels.check(facets.toImmutable(), faults);
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new BodyFacets(
                levels.applied(facets.toImmutable()),
                body.levels()
                        .collect(
                                level -> new BodyFacets.Above(level.name(), level.height(), level.floorThickness(), 0)),
                Double.NaN,
                StepZones.HAIR,
                true));
    }

    /**
     * A surface whose every shared edge runs the same way round as its neighbours' was given clockwise.
     */
    private static void turnedInsideOut(ImmutableList<Facet> facets, ShellFaults faults) {
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
                faults.surface(
                        facets.get(f).name(),
                        ": its points run clockwise, its neighbours' run counterclockwise seen from outdoors."
                                + " Reverse them.");
            }
        }
    }

    private static Optional<Facet> facet(
            House house, Body.Explicit body, Body.ExplicitSurface surface, ShellFaults faults) {
        ImmutableList<Vertex> outline = Ring.tidy(
                surface.points().collect(name -> Vertex.measured(body.points().get(name))));
        Optional<Assembly> assembly = house.assembly(surface.assembly());
        Facet.Mark mark = surface.gable()
                ? Facet.Mark.UNDER_GABLE
                : surface.parapetHeight() > 0 ? Facet.Mark.PARAPET : Facet.Mark.NONE;
        Facet facet = new Facet(
                surface.name(),
                surface.use(),
                assembly,
                surface.exposure(),
                outline,
                new Facet.Traits(surface.name(), -1, Double.NaN, mark));
        if (outline.size() < 3 || facet.doubleArea().length() == 0) {
            faults.surface(surface.name(), ": its points lie on one line; at least three that do not are needed.");
            return Optional.empty();
        }
        Vertex area = facet.doubleArea();
        Vertex origin = outline.get(0);
        Vertex worst = outline.maxBy(corner -> Math.abs(corner.minus(origin).dot(area)));
        double off = Vertex.metres(1) * Math.abs(worst.minus(origin).dot(area)) / area.length();
        if (off > OFF_PLANE) {
            faults.surface(
                    surface.name(),
                    ": its corners do not lie in one plane; the one at (%.3f, %.3f, %.3f) m is %.1f mm off, %.0f mm are"
                            + " allowed. Move it, or split the surface into triangles.",
                    worst.point().x(),
                    worst.point().y(),
                    worst.point().z(),
                    off * 1000,
                    OFF_PLANE * 1000);
        }
        return Optional.of(facet);
    }
}
