package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Point2;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;

/** Bodies mirrored from east to west: outlines run the other way round, and their sides are counted so. */
final class Mirror {

    private Mirror() {}

    /** A body whose footprints are outer faces, or one without dormers. */
    static Body.Storeys of(Body.Storeys body) {
        Body.Storey lowest = body.main().storeys().getFirst();
        return Houses.body(
                body.line(),
                new Body.Stack(
                        "",
                        body.main().storeys().collect(Mirror::storey),
                        body.main().base(),
                        roof(body.main().roof(), body.main().storeys().getLast()),
                        body.main().otherBases().collect(Mirror::base),
                        corners(body.main().ground(), lowest)),
                body.wings().collect(Mirror::stack));
    }

    private static Body.Stack stack(Body.Stack wing) {
        return new Body.Stack(
                wing.name(),
                wing.storeys().collect(Mirror::storey),
                wing.base(),
                roof(wing.roof(), wing.storeys().getLast()),
                wing.otherBases().collect(Mirror::base),
                corners(wing.ground(), wing.storeys().getFirst()));
    }

    private static Body.AreaBase base(Body.AreaBase base) {
        return new Body.AreaBase(outline(base.area()), base.base());
    }

    static ImmutableList<Point2> outline(ImmutableList<Point2> outline) {
        return outline.toReversed().collect(p -> new Point2(-p.x(), p.y()));
    }

    static Body.Storey storey(Body.Storey s) {
        MutableList<Body.Wall> walls = Lists.mutable.empty();
        for (int side = 0; side < s.walls().size(); side++) {
            walls.add(s.walls().get(side(side, s)));
        }
        return new Body.Storey(
                s.name(),
                outline(s.footprint()),
                s.courts().collect(Mirror::outline),
                s.height(),
                walls.toImmutable(),
                s.terrace(),
                s.terraceIsWalkedOn(),
                s.overhang(),
                s.floorThickness(),
                s.floor(),
                s.lowerRoof()
                        .map(roof -> new Body.LowerRoof(
                                roof.area().map(Mirror::outline),
                                roof.assembly(),
                                roof.pitch(),
                                side(roof.lowSide(), s),
                                roof.eaves(),
                                roof.wall(),
                                roof.exposure())),
                s.base());
    }

    /** The number of a side in the mirrored storey, and back. */
    private static int side(int side, Body.Storey s) {
        int first = 0;
        for (ImmutableList<Point2> outline : s.outlines()) {
            int n = outline.size();
            if (side < first + n) {
                return first + Math.floorMod(n - 2 - (side - first), n);
            }
            first += n;
        }
        throw new IllegalArgumentException("no side " + side);
    }

    private static ImmutableList<Double> corners(ImmutableList<Double> heights, Body.Storey s) {
        MutableList<Double> mirrored = Lists.mutable.empty();
        int first = 0;
        for (ImmutableList<Point2> outline : s.outlines()) {
            if (first < heights.size()) {
                mirrored.addAllIterable(heights.drop(first).take(outline.size()).toReversed());
            }
            first += outline.size();
        }
        return mirrored.toImmutable();
    }

    private static Body.Roof roof(Body.Roof roof, Body.Storey top) {
        MutableMap<Integer, Body.RoofSide> sides = Maps.mutable.empty();
        roof.sides().forEachKeyValue((side, rise) -> sides.put(side(side, top), rise));
        return new Body.Roof(
                roof.form(),
                roof.insulatedAtCeiling(),
                roof.assembly(),
                roof.gableAssembly(),
                roof.pitch(),
                side(roof.lowSide(), top),
                roof.parapetHeight(),
                roof.loftFactor(),
                sides.toImmutable(),
                roof.collar(),
                roof.dormers().collect(dormer -> dormer(dormer, top)));
    }

    private static Body.Dormer dormer(Body.Dormer d, Body.Storey top) {
        Point2 from = top.footprint().get(d.side());
        Point2 to = top.footprint().get((d.side() + 1) % top.footprint().size());
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        return new Body.Dormer(
                d.name(),
                side(d.side(), top),
                d.gabled(),
                d.left().isPresent() ? OptionalDouble.of(length - d.left().getAsDouble() - d.width()) : d.left(),
                -d.offMiddle(),
                d.width(),
                d.setBack(),
                d.height(),
                d.pitch(),
                d.wall(),
                d.roof());
    }
}
