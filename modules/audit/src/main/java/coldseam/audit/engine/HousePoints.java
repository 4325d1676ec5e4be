package coldseam.audit.engine;

import coldseam.assemblies.HeatFlow;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.PointBridges;
import coldseam.envelope.PointBridges.Count;
import coldseam.envelope.PointKind;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.PointSetup;
import coldseam.junctions.catalogue.Catalogue;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A set of points of a house with what it depends on, before any detail is chosen or computed.
 *
 * @param points as the house file has it
 * @param surface they go through
 * @param setup what a detail depends on; empty where the surface has no assembly
 * @param number of them
 */
public record HousePoints(PointBridges points, Surface surface, Optional<PointSetup> setup, int number) {

    /** Numbers that differ from a whole one by no more than this are that one. */
    private static final double WHOLE = 1e-6;

    /** What goes through; of the chosen detail, where the house file does not say. */
    public PointKind kind(Catalogue catalogue) {
        return points.kind()
                .orElseGet(() -> catalogue
                        .find(points.detail().orElseThrow())
                        .orElseThrow()
                        .point());
    }

    /** In the house file's order; those on a surface that the shell has not are left out. */
    public static ImmutableList<HousePoints> of(House house, Shell shell) {
        SurfaceHeats heats = new SurfaceHeats(house, shell, true);
        return of(house, shell, heats, heats.compute());
    }

    static ImmutableList<HousePoints> of(
            House house, Shell shell, SurfaceHeats heats, ImmutableList<SurfaceHeat> computed) {
        ImmutableMap<String, Material> materials = MaterialLibrary.ownOf(house);
        return house.points()
                .select(points -> surface(points, shell).isPresent())
                .collect(points -> {
                    Surface surface = surface(points, shell).orElseThrow();
                    SurfaceHeat heat =
                            computed.detect(each -> each.surface().name().equals(surface.name()));
                    return new HousePoints(
                            points,
                            surface,
                            surface.assembly()
                                    .map(assembly -> new PointSetup(
                                            assembly,
                                            heats.exposure(surface),
                                            HeatFlow.through(surface.normal()),
                                            ground(house, heat),
                                            house.site().indoorTemperature(),
                                            house.site().outdoorTemperature(),
                                            materials)),
                            number(points, surface, shell));
                });
    }

    private static Optional<PointSetup.GroundBelow> ground(House house, SurfaceHeat heat) {
        boolean inGround = heat.surface().faces(Exposure.Kind.GROUND) && heat.transmittance() > 0;
        return inGround
                ? Optional.of(new PointSetup.GroundBelow(house.site().groundConductivity(), heat.transmittance()))
                : Optional.empty();
    }

    private static Optional<Surface> surface(PointBridges points, Shell shell) {
        return shell.surfaces().detectOptional(each -> each.name().equals(points.surface()));
    }

    /** How many points there are: areas and rows give the next whole number. */
    private static int number(PointBridges points, Surface surface, Shell shell) {
        if (points.count() instanceof Count.Number counted) {
            return counted.number();
        }
        if (points.count() instanceof Count.PerArea spread) {
            return up(spread.perSquareMetre() * surface.netArea());
        }
        Count.InRow row = (Count.InRow) points.count();
        double length = row.length()
                .orElseGet(() -> edgesAlong(row.along().orElseThrow(), surface.name(), shell)
                        .sumOfDouble(Edge::externalLength));
        return length > 0 ? up(length / row.spacing()) + 1 : 0;
    }

    private static int up(double count) {
        return (int) Math.ceil(count - WHOLE);
    }

    /** The edges that a surface shares with a neighbour, another surface or an opening, by its name. */
    public static ImmutableList<Edge> edgesAlong(String neighbour, String surface, Shell shell) {
        return shell.edges().select(edge -> {
            ImmutableList<String> beside = edge.surfaces().collect(Surface::name);
            return beside.contains(surface)
                    && (beside.reject(surface::equals).contains(neighbour)
                            || edge.opening().map(Opening::name).equals(Optional.of(neighbour)));
        });
    }
}
