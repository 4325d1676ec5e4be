package coldseam.audit.engine;

import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.SideSummary;
import coldseam.envelope.Assembly;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Opening;
import coldseam.envelope.shell.Hole;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Side;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** The six sides of a house, each with its area and how much of it is insulated; party walls are left out of the shares. */
final class Sides {

    private Sides() {}

    /** All six, also those without a surface. */
    static ImmutableList<SideSummary> of(House house, Shell shell, ImmutableList<SurfaceHeat> heats) {
        ImmutableList<Hole> holes = Hole.of(shell);
        return Lists.immutable
                .of(Side.values())
                .collect(side -> summary(
                        side,
                        house,
                        heats.select(heat -> heat.surface().side() == side),
                        holes.select(hole -> hole.side() == side).sumOfDouble(Hole::area)));
    }

    private static SideSummary summary(Side side, House house, ImmutableList<SurfaceHeat> heats, double missing) {
        DimensionSystem system = house.site().dimensions();
        double area = heats.sumOfDouble(heat -> heat.grossArea(system));
        ImmutableList<SurfaceHeat> exposed = heats.reject(heat -> heat.surface().faces(Exposure.Kind.PARTY));
        double opaque = exposed.sumOfDouble(heat -> heat.opaqueArea(system));
        double insulated = exposed.select(Sides::insulated).sumOfDouble(heat -> heat.opaqueArea(system));
        ImmutableList<Opening> openings = house.openings()
                .select(opening -> heats.anySatisfy(heat -> heat.surface().holds(opening)));
        double loss = exposed.sumOfDouble(heat -> heat.transmittance() * heat.opaqueArea(system))
                + openings.sumOfDouble(
                        opening -> WindowTransmittance.transmittance(opening) * opening.width() * opening.height());
        double exposedArea = exposed.sumOfDouble(heat -> heat.grossArea(system));
        return new SideSummary(
                side,
                area,
                exposedArea,
                openings.sumOfDouble(opening -> opening.width() * opening.height()),
                missing,
                opaque + missing > 0 ? insulated / (opaque + missing) : heats.notEmpty() ? 1 : 0,
                exposedArea > 0 ? loss / exposedArea : 0);
    }

    private static boolean insulated(SurfaceHeat heat) {
        return heat.surface().assembly().map(Assembly::holdsHeat).orElse(false);
    }
}
