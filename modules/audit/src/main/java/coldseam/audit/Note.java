package coldseam.audit;

import coldseam.assemblies.Transmittance;
import coldseam.envelope.Body;
import coldseam.envelope.shell.Surface;
import java.util.function.Function;

/** What had to be assumed or left out for this house, and is said with the method. */
public sealed interface Note {

    /** A floor on the ground without an exposed edge: by ISO 13370 it loses nothing. */
    record FloorWithoutEdge(Surface floor) implements Note {}

    /** A wall in the ground that stands on no floor there, or reaches no deeper than it: it counts as if outdoors. */
    record WallInGroundAlone(Surface wall) implements Note {}

    /** Edge insulation of the slab is drawn in the sections of its edge and counts there, not again in the floor's transmittance. */
    record EdgeInsulationInSection() implements Note {}

    /** A crawl space that the house file does not describe. */
    record CrawlSpaceAssumed(Body.CrawlSpace as) implements Note {}

    /** What a transmittance by ISO 6946 warns of. */
    record OfTransmittance(Transmittance.Warning warning) implements Note {}

    /** A corner's detail that the house names, though no corner of it is what that is for. */
    record CornerNowhere(String detail) implements Note {}

    /** Light wells, whose own heat flow is left out. */
    record LightWells() implements Note {}

    /** What its alternative makes of it. */
    default <T> T match(
            Function<FloorWithoutEdge, T> floor,
            Function<WallInGroundAlone, T> wall,
            Function<EdgeInsulationInSection, T> edge,
            Function<CrawlSpaceAssumed, T> crawlSpace,
            Function<OfTransmittance, T> transmittance,
            Function<CornerNowhere, T> corner,
            Function<LightWells, T> lightWells) {
        if (this instanceof FloorWithoutEdge it) {
            return floor.apply(it);
        }
        if (this instanceof WallInGroundAlone it) {
            return wall.apply(it);
        }
        if (this instanceof EdgeInsulationInSection it) {
            return edge.apply(it);
        }
        if (this instanceof CornerNowhere it) {
            return corner.apply(it);
        }
        if (this instanceof LightWells it) {
            return lightWells.apply(it);
        }
        return this instanceof CrawlSpaceAssumed it
                ? crawlSpace.apply(it)
                : transmittance.apply((OfTransmittance) this);
    }
}
