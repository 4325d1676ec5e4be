package coldseam.envelope.shell;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.lattice.SurfaceAxes;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;

/**
 * A plane surface of the shell.
 *
 * @param name unique
 * @param partOf name of the roof or wall it is a part of; its own where of none
 * @param assembly its build-up; empty where none is given
 * @param outline corners on the outer plane, counterclockwise seen from outdoors, with every junction's end on it; a corner comes twice
 *     where the inner outline steps while the outer runs straight on
 * @param innerOutline the same corners on the inner plane
 * @param normal unit vector, outwards
 * @param externalArea m², gross, on the outer plane
 * @param internalArea m², gross, on the inner plane
 * @param openingArea m²
 * @param openings names of the windows and doors in it
 * @param storey the storey it belongs to, or what it is part of; for places a person can walk to
 */
public record Surface(
        String name,
        String partOf,
        Side side,
        Body.Use use,
        Optional<Assembly> assembly,
        Exposure exposure,
        ImmutableList<Point3> outline,
        ImmutableList<Point3> innerOutline,
        Point3 normal,
        double externalArea,
        double internalArea,
        double openingArea,
        ImmutableList<String> openings,
        String storey) {

    /** Whether what carries it stands or lies apart, as studs do. */
    public boolean isFramed() {
        return assembly.filter(built ->
                        built.structure().anySatisfy(layer -> layer.framing().isPresent()))
                .isPresent();
    }

    /** m², on the outer plane, windows and doors taken off. */
    public double netArea() {
        return externalArea - openingArea;
    }

    public boolean faces(Exposure.Kind kind) {
        return exposure.kind() == kind;
    }

    /** Whether it is built as an assembly of a name. */
    public boolean isBuiltAs(String name) {
        return assembly.filter(built -> built.name().equals(name)).isPresent();
    }

    /** Whether a place lies within its outline, seen along its normal. */
    public boolean covers(Point3 place) {
        Coordinate[] ring = SurfaceAxes.of(normal, place).polygon(outline).getCoordinates();
        return PointLocation.isInRing(new Coordinate(0, 0), ring);
    }

    /** m, the height of its highest corner. */
    public double top() {
        return outline.collectDouble(Point3::z).max();
    }

    /** m, the height of its lowest. */
    public double foot() {
        return outline.collectDouble(Point3::z).min();
    }

    /** Whether its structure stays in an old house. */
    public boolean staysIn(Retrofit old) {
        return names().noneSatisfy(old.builtNew()::contains);
    }

    /** Whether what carries it stays in an old house, and does not come down with the roof either. */
    public boolean keepsStructureIn(Retrofit old) {
        boolean under = use == Body.Use.WALL || use == Body.Use.FLOOR;
        return staysIn(old) && (under || !old.takesDown(Retrofit.ROOF));
    }

    /** What a file may call it by: its own name, that of the roof or wall it is a part of, and its storey's. */
    public ImmutableList<String> names() {
        return Lists.immutable.of(name, partOf, storey);
    }

    /** Whether a window or door lies in it, whatever the file calls the surface by. */
    public boolean holds(Opening opening) {
        return openings.contains(opening.name());
    }

    /** Whether an opening in it is a skylight at the top of a shaft through the cold loft over it: its pane faces open air. */
    public boolean underSkylight(Opening opening) {
        return use == Body.Use.CEILING && opening.kind() == Opening.Kind.WINDOW;
    }
}
