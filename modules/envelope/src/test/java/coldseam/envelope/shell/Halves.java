package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Point2;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;

/** Bodies without dormers whose every side is written as two in one line, of one build-up. */
final class Halves {

    private Halves() {}

    static Body.Storeys of(Body.Storeys body) {
        Body.Stack main = stack(body.stacks().getFirst());
        return Houses.body(body.line(), main, body.wings().collect(Halves::stack));
    }

    private static Body.Stack stack(Body.Stack s) {
        return new Body.Stack(
                s.name(),
                s.storeys().collect(Halves::storey),
                s.base(),
                roof(s.roof()),
                s.otherBases(),
                ground(s.ground(), s.storeys().getFirst()));
    }

    private static ImmutableList<Point2> outline(ImmutableList<Point2> outline) {
        MutableList<Point2> corners = Lists.mutable.empty();
        outline.forEachWithIndex((a, i) -> {
            Point2 b = outline.get((i + 1) % outline.size());
            corners.add(a);
            corners.add(new Point2((a.x() + b.x()) / 2, (a.y() + b.y()) / 2));
        });
        return corners.toImmutable();
    }

    private static Body.Storey storey(Body.Storey s) {
        return new Body.Storey(
                s.name(),
                outline(s.footprint()),
                s.courts().collect(Halves::outline),
                s.height(),
                s.walls()
                        .flatCollect(wall -> Lists.immutable.of(
                                wall, new Body.Wall(wall.name() + ", other half", wall.assembly(), wall.exposure()))),
                s.terrace(),
                s.terraceIsWalkedOn(),
                s.overhang(),
                s.floorThickness(),
                s.floor(),
                s.lowerRoof()
                        .map(roof -> new Body.LowerRoof(
                                roof.area(),
                                roof.assembly(),
                                roof.pitch(),
                                2 * roof.lowSide(),
                                roof.eaves(),
                                roof.wall(),
                                roof.exposure())),
                s.base());
    }

    private static ImmutableList<Double> ground(ImmutableList<Double> heights, Body.Storey s) {
        MutableList<Double> all = Lists.mutable.empty();
        int first = 0;
        for (ImmutableList<Point2> outline : s.outlines()) {
            int n = outline.size();
            for (int i = 0; i < n && first < heights.size(); i++) {
                double here = heights.get(first + i);
                all.add(here);
                all.add((here + heights.get(first + (i + 1) % n)) / 2);
            }
            first += n;
        }
        return all.toImmutable();
    }

    private static Body.Roof roof(Body.Roof r) {
        MutableMap<Integer, Body.RoofSide> sides = Maps.mutable.empty();
        r.sides().forEachKeyValue((side, rise) -> {
            sides.put(2 * side, rise);
            sides.put(2 * side + 1, rise);
        });
        return new Body.Roof(
                r.form(),
                r.insulatedAtCeiling(),
                r.assembly(),
                r.gableAssembly(),
                r.pitch(),
                2 * r.lowSide(),
                r.parapetHeight(),
                r.loftFactor(),
                sides.toImmutable(),
                r.collar(),
                r.dormers());
    }
}
