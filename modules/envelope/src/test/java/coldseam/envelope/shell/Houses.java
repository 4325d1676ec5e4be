package coldseam.envelope.shell;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Layer;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Point2;
import coldseam.envelope.Prices;
import coldseam.envelope.Provenance;
import coldseam.envelope.Role;
import coldseam.envelope.Seam;
import coldseam.envelope.Site;
import coldseam.envelope.Submittal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** Small houses for tests: every assembly is one structure layer inside and one insulation layer outside. */
final class Houses {

    static final double INSIDE = 0.1;

    /** Thicknesses, m, by name; 0.1 m of each is structure. */
    static final ImmutableMap<String, Assembly> ASSEMBLIES = Maps.immutable
            .with("wall", 0.4, "thin", 0.3, "slab", 0.5, "deck", 0.35)
            .newWithKeyValue("roof", 0.45)
            .newWithKeyValue("other roof", 0.45)
            .newWithKeyValue("soffit", 0.55)
            .newWithKeyValue("thick", 0.9)
            .newWithKeyValue("wall again", 0.4)
            .collect((name, thickness) ->
                    org.eclipse.collections.impl.tuple.Tuples.pair(name, assembly(name, thickness)));

    private Houses() {}

    static Assembly assembly(String name, double thickness) {
        Material material = new Material(
                "stuff",
                0.04,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                true,
                new Provenance("invented for a test", Provenance.Sureness.DECLARED));
        return new Assembly(
                name,
                Lists.immutable.of(
                        layer(material, INSIDE, Role.STRUCTURE), layer(material, thickness - INSIDE, Role.INSULATION)),
                Optional.empty(),
                Assembly.AirGaps.NONE,
                Optional.empty());
    }

    private static Layer layer(Material material, double thickness, Role role) {
        return new Layer(
                material,
                thickness,
                role,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
    }

    static House house(Body body) {
        return house(body, Lists.immutable.empty(), Lists.immutable.empty());
    }

    private static final Site SITE = new Site(
            20,
            -10,
            0.5,
            OptionalDouble.empty(),
            "clay",
            1.5,
            DimensionSystem.EXTERNAL,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Sets.immutable.empty());

    static House house(Body body, ImmutableList<Opening> openings, ImmutableList<Seam> seams) {
        return new House(
                "test",
                Submittal.NONE,
                SITE,
                Optional.empty(),
                Maps.immutable.empty(),
                ASSEMBLIES,
                body,
                openings,
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                seams,
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Limits.defaults(SITE),
                new Prices(OptionalDouble.empty(), "EUR", 30, Maps.immutable.empty()));
    }

    static ImmutableList<Point2> rectangle(double x, double y, double width, double depth) {
        return points(x, y, x + width, y, x + width, y + depth, x, y + depth);
    }

    static ImmutableList<Point2> points(double... xy) {
        var points = Lists.mutable.<Point2>empty();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point2(xy[i], xy[i + 1]));
        }
        return points.toImmutable();
    }

    /** Walls named by side index, all of one assembly. */
    static Body.Storey storey(String name, ImmutableList<Point2> footprint, double height, String wall) {
        return storey(name, footprint, height, footprint.collect(p -> wall));
    }

    /** The same storey around courts, clockwise, its walls all as the first. */
    static Body.Storey around(Body.Storey s, ImmutableList<ImmutableList<Point2>> courts) {
        ImmutableList<Body.Wall> more = courts.flatCollect(court -> court)
                .collectWithIndex((corner, i) -> new Body.Wall(
                        s.name() + " wall " + (s.walls().size() + i),
                        s.walls().getFirst().assembly(),
                        Exposure.outdoors()));
        return outlined(s, s.footprint(), courts, s.walls().newWithAll(more));
    }

    /** The same storey with other outlines. */
    static Body.Storey outlined(
            Body.Storey s,
            ImmutableList<Point2> footprint,
            ImmutableList<ImmutableList<Point2>> courts,
            ImmutableList<Body.Wall> walls) {
        return new Body.Storey(
                s.name(),
                footprint,
                courts,
                s.height(),
                walls,
                s.terrace(),
                s.terraceIsWalkedOn(),
                s.overhang(),
                s.floorThickness(),
                s.floor(),
                s.lowerRoof(),
                s.base());
    }

    static Body.Storey storey(
            String name, ImmutableList<Point2> footprint, double height, ImmutableList<String> walls) {
        return storey(
                name,
                footprint,
                height,
                walls.collectWithIndex((wall, i) -> new Body.Wall(
                        name + " wall " + i,
                        wall.isEmpty() ? Optional.empty() : Optional.of(wall),
                        Exposure.outdoors())),
                Optional.of("deck"),
                true,
                Optional.of("soffit"),
                0.3);
    }

    static Body.Storey facing(Body.Storey storey, int side, Exposure exposure) {
        return storey(
                storey.name(),
                storey.footprint(),
                storey.height(),
                storey.walls()
                        .collectWithIndex(
                                (wall, i) -> i == side ? new Body.Wall(wall.name(), wall.assembly(), exposure) : wall),
                storey.terrace(),
                storey.terraceIsWalkedOn(),
                storey.overhang(),
                storey.floorThickness());
    }

    static Body.Base slab() {
        return base(Body.Base.Kind.SLAB_ON_GROUND, 0, Exposure.ground());
    }

    static Body.Base base(Body.Base.Kind kind, double depth, Exposure exposure) {
        Optional<Body.CrawlSpace> crawl = kind == Body.Base.Kind.SUSPENDED
                ? Optional.of(new Body.CrawlSpace(0.5, 1.5, 0.0015, 4, 0.05, 0))
                : Optional.empty();
        return new Body.Base(kind, Optional.of("slab"), Optional.empty(), depth, 0, crawl, exposure);
    }

    static Body.Roof flat() {
        return roof(Body.Roof.Form.FLAT, 0, 0, false);
    }

    static Body.Roof roof(Body.Roof.Form form, double pitch, int lowSide, boolean cold) {
        return new Body.Roof(
                form,
                cold,
                Optional.of("roof"),
                Optional.empty(),
                pitch,
                lowSide,
                0,
                OptionalDouble.of(0.9),
                Maps.immutable.empty(),
                Optional.empty(),
                Lists.immutable.empty());
    }

    static Body.Storeys body(Body.Roof roof, Body.Storey... storeys) {
        return storeys(Body.FootprintLine.OUTER_FACE, Lists.immutable.of(storeys), slab(), roof);
    }

    /** A main stack and its wings. */
    static Body.Storeys body(Body.FootprintLine line, Body.Stack main, ImmutableList<Body.Stack> wings) {
        return new Body.Storeys(line, main, wings);
    }

    /** One that stands on one base, in level ground. */
    static Body.Storeys storeys(
            Body.FootprintLine line, ImmutableList<Body.Storey> storeys, Body.Base base, Body.Roof roof) {
        return storeys(line, storeys, base, roof, Lists.immutable.empty(), Lists.immutable.empty());
    }

    /** One without wings. */
    static Body.Storeys storeys(
            Body.FootprintLine line,
            ImmutableList<Body.Storey> storeys,
            Body.Base base,
            Body.Roof roof,
            ImmutableList<Body.AreaBase> otherBases,
            ImmutableList<Double> ground) {
        return body(line, new Body.Stack("", storeys, base, roof, otherBases, ground), Lists.immutable.empty());
    }

    /** Storeys on one base, on level ground. */
    static Body.Stack stack(String name, Body.Base base, Body.Roof roof, Body.Storey... storeys) {
        return new Body.Stack(
                name, Lists.immutable.of(storeys), base, roof, Lists.immutable.empty(), Lists.immutable.empty());
    }

    /** One without courts whose open parts are all alike, and that projects into the open. */
    static Body.Storey storey(
            String name,
            ImmutableList<Point2> footprint,
            double height,
            ImmutableList<Body.Wall> walls,
            Optional<String> terrace,
            boolean terraceIsWalkedOn,
            Optional<String> overhang,
            double floorThickness) {
        return new Body.Storey(
                name,
                footprint,
                Lists.immutable.empty(),
                height,
                walls,
                terrace,
                terraceIsWalkedOn,
                overhang,
                floorThickness,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static Opening opening(
            String name, Opening.Kind kind, String surface, double width, double height, double left, double sill) {
        return new Opening(
                name,
                kind,
                surface,
                width,
                height,
                left < 0 ? OptionalDouble.empty() : OptionalDouble.of(left),
                sill,
                new Opening.Declared(0.9, 1.0),
                0.08,
                OptionalDouble.empty());
    }
}
