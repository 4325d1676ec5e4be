package coldseam.envelope.shell;

import coldseam.envelope.Alternatives.About;
import coldseam.envelope.Alternatives.Change;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.Alternatives.Option;
import coldseam.envelope.Body;
import coldseam.envelope.Compass;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.files.Words;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

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
        ImmutableList<Surface> steps) {

    /** The same shell with its edges told apart otherwise. */
    Shell with(ImmutableList<Edge> others) {
        return new Shell(surfaces, others, openEdges, areaVectorSum, externalVolume, internalVolume, floorArea, steps);
    }

    /** Floors on the ground and over crawl spaces. */
    public ImmutableList<Surface> floorsOnGround() {
        return surfaces.select(surface -> surface.use() == Body.Use.FLOOR && onGround(surface));
    }

    /** m², of them, outer faces. */
    public double groundFloorArea() {
        return floorsOnGround().sumOfDouble(Surface::externalArea);
    }

    private static boolean onGround(Surface floor) {
        return floor.faces(Exposure.Kind.GROUND) || floor.faces(Exposure.Kind.CRAWL_SPACE);
    }

    /**
     * Where a wall stands on a floor on the ground.
     *
     * @param exposed m, without what has another such floor at the wall's head
     */
    public record Rim(Edge edge, double exposed) {

        /** The wall. */
        public Surface wall() {
            return edge.surfaces().detect(Shell::isWall);
        }

        /** The floor. */
        public Surface floor() {
            return edge.surfaces().detect(each -> !isWall(each));
        }
    }

    private static boolean isWall(Surface surface) {
        return surface.use() == Body.Use.WALL;
    }

    /**
     * Rims of some of the floors on the ground, but those at party walls. A wall between two such floors, one at its foot and one at its
     * head, is exposed to neither (ISO 13370:2017 clause 3.1, from memory); under a floor over an unheated space or open air it faces
     * that, and is.
     */
    public ImmutableList<Rim> rims(ImmutableList<Surface> floors) {
        ImmutableSet<String> those = floors.collect(Surface::name).toImmutableSet();
        ImmutableList<Edge> heads = edges.select(edge -> edge.angle() > Vectors.STRAIGHT
                && edge.surfaces().anySatisfy(each -> each.use() == Body.Use.FLOOR && onGround(each)));
        return edges.select(edge -> edge.angle() < Vectors.STRAIGHT
                        && edge.surfaces().anySatisfy(each -> those.contains(each.name()))
                        && edge.surfaces().anySatisfy(each -> isWall(each) && !each.faces(Exposure.Kind.PARTY)))
                .collect(edge -> new Rim(edge, edge.externalLength() * open(edge, heads)))
                .select(rim -> rim.exposed() > 0);
    }

    /** What share of a wall's foot has none of these edges at its head, all level. */
    private static double open(Edge foot, ImmutableList<Edge> heads) {
        Point3 run = Vectors.minus(foot.to(), foot.from());
        double square = Vectors.dot(run, run);
        return Math.max(
                0,
                1
                        - heads.select(head -> head.surfaces().anySatisfy(each -> isWall(each) && foot.isAt(each)))
                                .sumOfDouble(head -> {
                                    double one = Vectors.dot(Vectors.minus(head.from(), foot.from()), run) / square;
                                    double other = Vectors.dot(Vectors.minus(head.to(), foot.from()), run) / square;
                                    return Math.max(
                                            0, Math.min(1, Math.max(one, other)) - Math.max(0, Math.min(one, other)));
                                }));
    }

    /** m, of all of them. */
    public double exposedPerimeter() {
        return exposedPerimeter(floorsOnGround());
    }

    /** m, exposed perimeter of some of the floors on the ground: their rims, and where nothing meets them. */
    public double exposedPerimeter(ImmutableList<Surface> floors) {
        ImmutableSet<String> those = floors.collect(Surface::name).toImmutableSet();
        return rims(floors).sumOfDouble(Rim::exposed)
                + openEdges
                        .select(edge -> edge.surfaces().anySatisfy(those::contains))
                        .sumOfDouble(OpenEdge::length);
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
