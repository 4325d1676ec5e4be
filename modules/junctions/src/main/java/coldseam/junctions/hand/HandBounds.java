package coldseam.junctions.hand;

import coldseam.assemblies.AirLayers;
import coldseam.assemblies.HeatFlow;
import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
import coldseam.envelope.file.house.MaterialChecks;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.files.Faults;
import coldseam.files.Position;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Shapes;
import coldseam.junctions.section.Surroundings;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.DoubleList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.linemerge.LineMerger;

/**
 * What of a drawing by hand would let a seam lose less than it can: a face that no air touches, air that hardly touches it, and
 * materials that there are not.
 */
final class HandBounds {

    /** m; what is as near to a boundary or to a cut lies on it. */
    static final double NEAR = 0.001;

    /** m; less of an outline may be left to no environment, by rounding of its corners. */
    private static final double LEFT = 0.005;

    /** m past its end, where the room goes on beside a face but not beside the end of a floor. */
    private static final double PAST = 0.02;

    /** m²·K/W; no surface has more in still air (ISO 13788:2012 takes 0.25 for corners and behind furniture; from memory). */
    private static final double STILL = 0.25;

    /** Of a conductivity: what rounding to two digits does. */
    static final double SHARE = 0.03;

    /** m²·K/W; what a boundary may resist more than the legs' faces beside the same air: what rounding to two digits does. */
    private static final double ROUNDED = 0.005;

    /** m; circles in a space of air are found as exactly as this. */
    private static final double CIRCLE = 1e-5;

    /** W/(m·K); what conducts less holds a vacuum or is an aerogel (common practice, no source). */
    private static final double LEAST = 0.018;

    private final Section section;
    private final JunctionKind kind;
    private final Position place;
    private final ImmutableList<Composition.Face> faces;
    private final ImmutableList<Geometry> cuts;
    private final ImmutableList<Position> regions;
    private final ImmutableSet<String> outdoors;

    HandBounds(DrawnSection drawn, ImmutableList<Composition.Face> faces) {
        FileDrawnSection.FileJunction junction = drawn.file().junction().orElseThrow();
        this.section = drawn.section();
        this.kind = junction.kind();
        this.place = drawn.file().place();
        this.faces = faces;
        this.cuts = junction.legs().collect(drawn::cut);
        this.regions = drawn.file().regions().collect(FileDrawnSection.FileRegion::place);
        this.outdoors = junction.legs()
                .select(leg -> leg.factor() == 1)
                .collect(drawn::cut)
                .flatCollect(cut ->
                        section.boundaries().select(each -> lines(each).anySatisfy(line -> line.distance(cut) <= NEAR)))
                .collect(Boundary::environment)
                .reject(Surroundings.INDOOR::equals)
                .toImmutableSet();
    }

    /** Adds whatever makes the drawing lose less than what it stands for. */
    void check(Faults faults) {
        resistances(faults);
        materials(faults);
        airs(faults);
        outline(faults);
    }

    private void resistances(Faults faults) {
        section.environments()
                .collectDouble(Environment::surfaceResistance)
                .toList()
                .withAll(section.boundaries()
                        .select(each -> each.surfaceResistance().isPresent())
                        .collectDouble(each -> each.surfaceResistance().getAsDouble()))
                .select(each -> each > STILL)
                .distinct()
                .forEach(each -> faults.add(
                        place,
                        "air at a surface resists no more than still air does",
                        said("%.3g m²·K/W", each, Dimension.RESISTANCE),
                        Phrase.of("at most ").and(said("%.2f m²·K/W", STILL, Dimension.RESISTANCE)),
                        "correct surface-resistance"));
        section.environments().select(air -> outdoors.contains(air.name())).forEach(air -> outside(air, faults));
    }

    /**
     * Before the seam a face is as near to the wind as the legs' own: it may resist no more than the most of them does. In a loft or a
     * cellar no wind blows, and air resists by the way that the heat goes.
     */
    private void outside(Environment air, Faults faults) {
        ImmutableList<Boundary> beside =
                section.boundaries().select(each -> each.environment().equals(air.name()));
        DoubleList atCuts = beside.select(this::atACut).collectDouble(each -> resistance(each, air));
        double most = atCuts.max();
        beside.collectDouble(each -> resistance(each, air))
                .select(each -> each > most + ROUNDED && each <= STILL)
                .distinct()
                .forEach(each -> faults.add(
                        place,
                        "air before an outer face resists no more than at the legs' cuts",
                        said("%.3g m²·K/W", each, Dimension.RESISTANCE).and(" of \"" + air.name() + "\""),
                        Phrase.of("at most ").and(said("%.3g m²·K/W", most, Dimension.RESISTANCE)),
                        "correct surface-resistance of that boundary"));
    }

    private boolean atACut(Boundary boundary) {
        return lines(boundary).anySatisfy(line -> cuts.anySatisfy(cut -> cut.distance(line) <= NEAR));
    }

    private static double resistance(Boundary boundary, Environment air) {
        return boundary.surfaceResistance().orElse(air.surfaceResistance());
    }

    /** Adds a fault where a solid only borrows a built-in material's name. */
    static void material(String name, double conductivity, Position at, Faults faults) {
        if (!MaterialLibrary.isAir(name)) {
            MaterialChecks.like(name, conductivity, at, faults);
        }
    }

    private void materials(Faults faults) {
        Geometry spaces = spaces();
        section.regions().forEachWithIndex((region, index) -> {
            Position at = regions.get(index);
            if (MaterialLibrary.isAir(region.material())) {
                air(index, spaces, at, faults);
            } else if (MaterialLibrary.named(region.material())
                    .filter(Material::insulates)
                    .isEmpty()) {
                unknown(region, at, faults);
            }
        });
    }

    /** The spaces of air that are no layers of a leg: strips of it side by side are one. */
    private Geometry spaces() {
        MutableList<Geometry> spaces = Lists.mutable.empty();
        section.regions().forEachWithIndex((region, index) -> {
            if (MaterialLibrary.isAir(region.material()) && !alongACut(region)) {
                spaces.add(seen(index));
            }
        });
        return Shapes.union(spaces);
    }

    /** What of a region no later one is painted over. */
    private Geometry seen(int index) {
        ImmutableList<Geometry> painted = section.regions()
                .drop(index)
                .collect(each -> Shapes.of(each.outline().corners()));
        return Shapes.difference(painted.getFirst(), Shapes.union(painted.drop(1)));
    }

    /** In a space of air heat is carried by its turning and by radiation as well: it conducts the more the wider it is. */
    private void air(int index, Geometry spaces, Position at, Faults faults) {
        Region region = section.regions().get(index);
        Geometry seen = seen(index);
        double wide = 0;
        for (Geometry space : Shapes.parts(spaces)) {
            if (Shapes.intersection(space, seen).getArea() > NEAR * NEAR) {
                double radius =
                        MaximumInscribedCircle.getRadiusLine(space, CIRCLE).getLength();
                wide = Math.max(wide, 2 * radius);
            }
        }
        double least = wide > 0 ? wide / AirLayers.resistance(wide, HeatFlow.DOWNWARDS, AirLayers.DULL) : 0;
        if (region.conductivity() < (1 - SHARE) * least && !alongACut(region)) {
            faults.add(
                    at,
                    "a space of air conducts what an air layer as wide does (ISO 6946)",
                    conductivity(region)
                            .and(Phrase.of(", ").andMillimetres(wide).and(" wide")),
                    Phrase.of("at least ").and(said("%.3g W/(m·K)", least, Dimension.CONDUCTIVITY)),
                    "correct it, or give that face a boundary to the air before it");
        }
    }

    /** What no leg faces counts for none of them; rooms on the far side of the insulation would warm it. */
    private void airs(Faults faults) {
        section.environments().forEach(air -> {
            Geometry beside = Shapes.FACTORY
                    .buildGeometry(section.boundaries()
                            .select(each -> each.environment().equals(air.name()))
                            .flatCollect(HandBounds::lines)
                            .toList())
                    .buffer(NEAR);
            ImmutableList<Geometry> stretches = Shapes.parts(beside);
            boolean all = air.name().equals(Surroundings.INDOOR);
            Predicate<Geometry> met = stretch -> cuts.anySatisfy(cut -> cut.distance(stretch) <= NEAR);
            if (all ? !stretches.allSatisfy(met) : stretches.noneSatisfy(met)) {
                faults.add(
                        place,
                        all
                                ? "rooms lie on one side of what is drawn, from a leg's cut on"
                                : "what a drawing faces, a leg's cut faces as well",
                        "\"" + air.name() + "\" where no leg is cut",
                        "give that stretch the environment of the leg beside it");
            }
        });
    }

    /** What the legs are of is held to the house's layers; all else must be a material that there is. */
    private void unknown(Region region, Position at, Faults faults) {
        if (region.conductivity() < LEAST && !alongACut(region)) {
            faults.add(
                    at,
                    "only what a leg's cut shows may conduct less than boards do",
                    conductivity(region),
                    Phrase.of("at least ").and(said("%.3f W/(m·K)", LEAST, Dimension.CONDUCTIVITY)),
                    "correct it, or draw it as a layer of a leg, which is held to the house's");
        }
    }

    private boolean alongACut(Region region) {
        return HandDrawing.alongACut(region, section, faces, cuts);
    }

    private void outline(Faults faults) {
        Geometry free = free(faces, cuts.newWithAll(section.boundaries().flatCollect(HandBounds::lines)), NEAR);
        Geometry rim = Shapes.union(faces.collect(Composition.Face::area))
                .convexHull()
                .getBoundary()
                .buffer(NEAR);
        if (kind.form().ground()) {
            free = free.difference(rim);
        }
        double length = merged(free).reject(line -> isEnd(line, rim)).sumOfDouble(Geometry::getLength);
        if (length > LEFT) {
            faults.add(
                    place,
                    "every face of a drawing meets an environment; only the legs' cuts, the ends of floors and"
                            + " walls that go on, and the soil's sides, meet none",
                    Phrase.millimetres(length).and(" of its outline without one"),
                    "add boundaries, or draw it to the legs' cuts");
        }
    }

    /** The outline of what is drawn, but for what lies as near to some lines, m. */
    static Geometry free(ImmutableList<Composition.Face> faces, ImmutableList<Geometry> touched, double near) {
        Geometry free = Shapes.union(faces.collect(Composition.Face::area)).getBoundary();
        for (Geometry each : touched) {
            free = free.difference(each.buffer(near));
        }
        return free;
    }

    /** Its pieces from end to end, m; what is shorter than rounding of its corners is left out. */
    static ImmutableList<ImmutableList<Point>> pieces(Geometry free) {
        return merged(free)
                .select(line -> line.getLength() > LEFT)
                .collect(line -> Lists.immutable.with(line.getCoordinates()).collect(Shapes::point));
    }

    private static ImmutableList<Geometry> merged(Geometry lines) {
        LineMerger merger = new LineMerger();
        merger.add(lines);
        MutableList<Geometry> merged = Lists.mutable.empty();
        for (Object line : merger.getMergedLineStrings()) {
            merged.add((Geometry) line);
        }
        return merged.toImmutable();
    }

    /**
     * Whether a third limb ends there, such as a floor between two rooms or a wall that goes on down: at the drawing's rim,
     * straight, and with the air turning away at both its ends.
     */
    private boolean isEnd(Geometry line, Geometry rim) {
        if (!rim.covers(line) || standsOut(line)) {
            return false;
        }
        Coordinate[] ends = line.getCoordinates();
        Coordinate from = ends[0];
        Coordinate to = ends[ends.length - 1];
        double apart = from.distance(to);
        return apart > line.getLength() - NEAR && turns(from, to, apart) && turns(to, from, apart);
    }

    /** Whether the outdoor air is on both sides of it: what stands out there ends in that air. */
    private boolean standsOut(Geometry line) {
        Coordinate[] ends = line.getCoordinates();
        return isOutdoors(ends[0]) && isOutdoors(ends[ends.length - 1]);
    }

    /** Whether air lies there that a leg faces as outdoors, and no other. */
    private boolean isOutdoors(Coordinate end) {
        Geometry point = Shapes.FACTORY.createPoint(end);
        return section.boundaries()
                .select(each -> lines(each).anySatisfy(line -> line.distance(point) <= 3 * NEAR))
                .collect(Boundary::environment)
                .allSatisfy(outdoors::contains);
    }

    /** Whether air is at the end of a line and does not go on along it, as it would beside a face. */
    private boolean turns(Coordinate end, Coordinate other, double apart) {
        double past = PAST / apart;
        Coordinate beyond = new Coordinate(end.x + past * (end.x - other.x), end.y + past * (end.y - other.y));
        Geometry air = Shapes.FACTORY.buildGeometry(
                section.boundaries().flatCollect(HandBounds::lines).toList());
        return air.distance(Shapes.FACTORY.createPoint(end)) <= 3 * NEAR
                && air.distance(Shapes.FACTORY.createPoint(beyond)) > PAST / 2;
    }

    static ImmutableList<Geometry> lines(Boundary boundary) {
        ImmutableList<Point> path = boundary.path();
        MutableList<Geometry> lines = Lists.mutable.empty();
        for (int i = 1; i < path.size(); i++) {
            lines.add(Shapes.line(path.get(i - 1), path.get(i)));
        }
        return lines.toImmutable();
    }

    private static Phrase conductivity(Region region) {
        return said("%.3g W/(m·K)", region.conductivity(), Dimension.CONDUCTIVITY)
                .and(" of \"" + region.material() + "\"");
    }

    private static Phrase said(String format, double value, Dimension dimension) {
        return Phrase.of(Format.of(format, value), value, dimension);
    }
}
