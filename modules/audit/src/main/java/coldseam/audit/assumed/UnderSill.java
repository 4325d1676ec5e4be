package coldseam.audit.assumed;

import coldseam.audit.Audit;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A deck, roof or wall in the ground that ends outdoors under an opening of a wall.
 *
 * @param surface of it
 * @param width m, of the opening that it lies under
 * @param height m, of the opening's sill over the highest place of it there, in whole millimetres but over a deck that it stands on
 */
record UnderSill(Surface surface, double width, double height) {

    /** A line, and where along an opening it lies. */
    private record Line(Point3 from, Point3 to, double start, double end) {

        /** z, at a place along the opening. */
        double height(double at) {
            return from.z() + (to.z() - from.z()) * (at - start) / (end - start);
        }
    }

    /** What an opening of a wall has before it. */
    static ImmutableList<UnderSill> of(Audit audit, Opening opening, Surface wall) {
        ImmutableList<Edge> sides = audit.shell().edges().select(edge -> edge.isOf(opening));
        ImmutableList<UnderSill> stoodOn = sides.select(edge -> edge.kind() == JunctionKind.TERRACE_THRESHOLD)
                .collect(edge -> new UnderSill(edge.first(), edge.externalLength(), edge.sillHeight()));
        Edge head = sides.maxBy(edge -> edge.from().z() + edge.to().z());
        double sill = sides.collectDouble(
                        edge -> Math.min(edge.from().z(), edge.to().z()))
                .min();
        ImmutableList<UnderSill> met = audit.shell()
                .edges()
                .select(edge -> edge.opening().isEmpty() && edge.isAt(wall))
                .flatCollect(edge -> edge.surfaces()
                        .select(other -> other.use() == Body.Use.TERRACE || other.use() == Body.Use.ROOF)
                        .flatCollect(other -> under(other, edge.from(), edge.to(), head, sill)))
                .reject(each -> stoodOn.anySatisfy(on -> on.surface().equals(each.surface())));
        return stoodOn.newWithAll(met)
                .newWithAll(OfHouse.surfaces(audit, other -> goesDown(wall, other))
                        .flatCollect(other -> other.outline()
                                .zip(other.outline()
                                        .drop(1)
                                        .newWith(other.outline().getFirst()))
                                .flatCollect(side -> under(other, side.getOne(), side.getTwo(), head, sill))));
    }

    /** Whether a wall goes on below as another, in the ground. */
    private static boolean goesDown(Surface wall, Surface other) {
        return other.use() == Body.Use.WALL
                && other.faces(Exposure.Kind.GROUND)
                && Vectors.dot(wall.normal(), other.normal()) > 1 - OfHouse.HAIR
                && Math.abs(Vectors.dot(
                                wall.normal(),
                                Vectors.minus(
                                        wall.outline().getFirst(),
                                        other.outline().getFirst())))
                        < OfHouse.HAIR;
    }

    private static ImmutableList<UnderSill> under(Surface surface, Point3 from, Point3 to, Edge head, double sill) {
        Point3 along = Vectors.unit(Vectors.minus(head.to(), head.from()));
        Line line = new Line(
                from,
                to,
                Vectors.dot(along, Vectors.minus(from, head.from())),
                Vectors.dot(along, Vectors.minus(to, head.from())));
        double first = Math.max(0, Math.min(line.start(), line.end()));
        double last =
                Math.min(Vectors.length(Vectors.minus(head.to(), head.from())), Math.max(line.start(), line.end()));
        if (last - first < OfHouse.HAIR) {
            return Lists.immutable.empty();
        }
        double height = Math.rint(1000 * (sill - Math.max(line.height(first), line.height(last)))) / 1000;
        return height < -OfHouse.HAIR
                ? Lists.immutable.empty()
                : Lists.immutable.of(new UnderSill(surface, last - first, height));
    }
}
