package coldseam.envelope.shell;

import coldseam.envelope.Alternatives.About;
import coldseam.envelope.Alternatives.Change;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.Alternatives.Option;
import coldseam.envelope.Body;
import coldseam.envelope.Compass;
import coldseam.envelope.House;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.files.Words;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.MutableMap;

/**
 * The shell of a house and its take-off.
 *
 * @param surfaces in a stable order: below, walls storey by storey, above
 * @param edges every junction, in a stable order
 * @param openEdges edges that are not shared by exactly two surfaces; empty where the shell is closed
 * @param areaVectorSum m², sum of area times outward normal, steps included; zero where the shell is closed
 * @param externalVolume m³, of the outer shell
 * @param internalVolume m³, of the inner shell
 * @param floorArea m², of all heated storeys, inner faces
 * @param groundFloorArea m², of floors on the ground, outer faces
 * @param exposedPerimeter m, of those floors where a wall to outdoors, to the ground or to an unheated space outside the
 *     insulated fabric stands on them (ISO 13370, its exposed perimeter; from memory); a party wall does not count
 * @param steps narrow strips between the outer planes of two walls (or the ends of such strips) that close the outer shell
 *     but have no build-up of their own: what they lose belongs to the junction of the walls beside them, a change of
 *     wall thickness; for drawings
 */
public record Shell(
        ImmutableList<Surface> surfaces,
        ImmutableList<Edge> edges,
        ImmutableList<OpenEdge> openEdges,
        Point3 areaVectorSum,
        double externalVolume,
        double internalVolume,
        double floorArea,
        double groundFloorArea,
        double exposedPerimeter,
        ImmutableList<Surface> steps) {

    /** The same shell with its edges told apart otherwise. */
    Shell with(ImmutableList<Edge> others) {
        return new Shell(
                surfaces,
                others,
                openEdges,
                areaVectorSum,
                externalVolume,
                internalVolume,
                floorArea,
                groundFloorArea,
                exposedPerimeter,
                steps);
    }

    /** Whether every edge is shared by exactly two surfaces. */
    public boolean closed() {
        return openEdges.isEmpty();
    }

    /**
     * What a side is called: by the one of eight ways of the compass that its walls face together, so that a turned house has a
     * north-east side as its seams have; by its own name where two sides would be called alike, or no wall is there.
     */
    public String nameOf(Side side) {
        MutableMap<Side, String> words = Maps.mutable.empty();
        for (Side each : Side.values()) {
            words.put(each, Words.word(each));
            ImmutableList<Surface> walls =
                    surfaces.select(surface -> surface.side() == each && surface.use() == Body.Use.WALL);
            double east = walls.sumOfDouble(
                    wall -> wall.externalArea() * wall.normal().x());
            double north = walls.sumOfDouble(
                    wall -> wall.externalArea() * wall.normal().y());
            boolean level = each == Side.ABOVE || each == Side.BELOW;
            if (!level && Math.hypot(east, north) > 0) {
                words.put(each, Compass.of(east, north).word());
            }
        }
        boolean apart = words.toSet().size() == Side.values().length;
        return apart ? words.get(side) : Words.word(side);
    }

    /**
     * Whether an option is what a house of this shell has there already, as it is once somebody has chosen it; another source
     * alone makes no other window.
     */
    public boolean isDescribed(House house, Decision decision, Option option) {
        if (!(decision.about() instanceof About.Junctions junctions)) {
            return unsourced(decision.applied(house, option)).equals(unsourced(house));
        }
        ImmutableList<Edge> meant = edges.select(edge -> edge.isMeantBy(junctions.which()));
        return meant.notEmpty()
                && meant.allSatisfy(edge -> house.choices()
                        .detectOptional(choice -> edge.isMeantBy(choice.which()))
                        .filter(choice ->
                                option.change().equals(new Change.Detail(choice.detail(), choice.parameters())))
                        .isPresent());
    }

    private static House unsourced(House house) {
        return house.withOpenings(house.openings().collect(Opening::unsourced));
    }
}
