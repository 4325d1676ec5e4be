package coldseam.audit.engine;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.KindForm;
import coldseam.envelope.Opening;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.section.Composer;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The least psi that the geometry of an edge allows, W/(m·K), whatever is built there.
 *
 * <p>psi = L2D − Σ b U l. Cut the section along an adiabatic line across each surface where its layers are undisturbed: that
 * cannot raise the coupling (a conductor taken away never helps the others), and beyond the cuts the section loses exactly
 * b U l. What stays between the cuts loses at least nothing. So
 *
 * <pre>psi ≥ −Σ b U (max(0, Δl) + r)</pre>
 *
 * with Δl the length that the dimension system counts beyond the shorter of the two (of a convex corner the external system
 * does, by what lies outside the inner faces; of a reentrant one the internal), and r the length of the surface, from the end of
 * the shorter one, that the detail may insulate better than its layers do.
 *
 * <ul>
 *   <li>r of a surface: half its thickness (judgement: an added piece as long as that is drawn as part of the detail; beyond it
 *       the surface has another assembly). Where one surface goes on on both sides of a floor or
 *       partition, twice that; where the walls of two storeys meet there, each has its own.
 *   <li>r of a floor on the ground or over a crawl space: half of B' = A/(P/2), so that U A + psi P is no less than nothing:
 *       U (ISO 13370) and psi share one flow through the ground, and no cut parts them.
 *   <li>r of a window's or door's frame: the width that sections draw of it.
 * </ul>
 *
 * <p>A surface without layers counts for nothing in the table, and nothing can be taken off it. Worked out apart.
 */
public final class LeastPsi {

    /** Of a surface's thickness, what a detail may insulate better on each side (judgement). */
    private static final double SHARE = 0.5;

    private final DimensionSystem system;
    private final GroundParts ground;
    private final ImmutableList<SurfaceHeat> heats;

    /** Of the edges of a house. */
    public LeastPsi(House house, Shell shell) {
        this.system = house.site().dimensions();
        this.ground = new GroundParts(house, shell);
        this.heats = new SurfaceHeats(house, shell, true).compute();
    }

    /** W/(m·K), in the site's dimension system, weighed as an own psi is; never above zero. */
    public double at(Edge edge) {
        double weight = ComputedJunctions.factorOfOwnPsi(edge);
        return weight > 0 ? weighed(edge) / weight : weighed(edge);
    }

    /** W/(m·K), with the temperature factors of what is beside the edge in it; never above zero. */
    public double weighed(Edge edge) {
        boolean goesOn = edge.kind().form().second() == KindForm.Second.THING
                && edge.second().isEmpty();
        double sides = goesOn ? 2 : 1;
        return -(part(edge.first(), edge.firstSetBack(), sides)
                + edge.second()
                        .map(second -> part(second, edge.secondSetBack(), 1))
                        .orElse(0.0)
                + frame(edge.opening()));
    }

    /** W/(m·K), at most, that where a surface ends may take off it, whatever it meets there. */
    double atAnEnd(Surface surface) {
        return part(surface, 0, 1);
    }

    private double part(Surface surface, double setBack, double sides) {
        SurfaceHeat heat = heats.detect(each -> each.surface().name().equals(surface.name()));
        double beyond = Math.max(0, system == DimensionSystem.EXTERNAL ? setBack : -setBack);
        return heat.transmittance() * heat.factor() * (beyond + sides * reach(surface));
    }

    /** m along a surface's outer face from an edge, past which its layers are undisturbed. */
    double disturbed(Edge edge, Surface surface) {
        if (edge.kind().form().second() == KindForm.Second.THING) {
            // How much of the surface the thing takes, the least psi does not say.
            return Double.POSITIVE_INFINITY;
        }
        double setBack = edge.first().name().equals(surface.name()) ? edge.firstSetBack() : edge.secondSetBack();
        return Math.max(0, setBack) + reach(surface);
    }

    private double reach(Surface surface) {
        Exposure.Kind kind = surface.exposure().kind();
        boolean overGround = kind == Exposure.Kind.GROUND || kind == Exposure.Kind.CRAWL_SPACE;
        if (overGround && surface.use() != Body.Use.WALL) {
            GroundParts.Part part = ground.part(surface);
            return part.known() ? part.area() / part.perimeter() : 0;
        }
        return SHARE * surface.assembly().map(Assembly::thickness).orElse(0.0);
    }

    private static double frame(Optional<Opening> opening) {
        return opening.map(each -> each.frameTransmittance() * Composer.FRAME_WIDTH)
                .orElse(0.0);
    }
}
