package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.OpenEdge;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Every edge of the shell is shared by exactly two surfaces; open ones that touch at their ends surround one hole. */
public final class OpenEdgeRule implements Rule {

    /** m; ends nearer than this are one corner of the hole. */
    private static final double SAME_CORNER = 1e-6;

    /** A hole in the shell. */
    public record Found(ImmutableList<OpenEdge> hole) implements Evidence {
        /** m, along it. */
        public double length() {
            return hole.sumOfDouble(OpenEdge::length);
        }

        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(Value.of("length", length(), Dimension.LENGTH));
        }
    }

    @Override
    public int gravity() {
        return 0;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return holes(facts.shell().openEdges())
                .collect(hole -> new Draft(
                        this,
                        "hole " + hole.getFirst().place(),
                        Severity.GAP,
                        new Found(hole),
                        new Subject.Hole(hole)));
    }

    private static ImmutableList<ImmutableList<OpenEdge>> holes(ImmutableList<OpenEdge> edges) {
        MutableList<OpenEdge> left = edges.toList();
        MutableList<ImmutableList<OpenEdge>> holes = Lists.mutable.empty();
        while (left.notEmpty()) {
            MutableList<OpenEdge> hole = Lists.mutable.of(left.remove(0));
            for (int i = 0; i < hole.size(); i++) {
                OpenEdge edge = hole.get(i);
                MutableList<OpenEdge> touching = left.select(other -> touch(edge, other));
                hole.addAll(touching);
                left.removeAll(touching);
            }
            holes.add(hole.toImmutable());
        }
        return holes.toImmutable();
    }

    private static boolean touch(OpenEdge a, OpenEdge b) {
        return near(a.from(), b.from()) || near(a.from(), b.to()) || near(a.to(), b.from()) || near(a.to(), b.to());
    }

    private static boolean near(Point3 a, Point3 b) {
        return Math.abs(a.x() - b.x()) < SAME_CORNER
                && Math.abs(a.y() - b.y()) < SAME_CORNER
                && Math.abs(a.z() - b.z()) < SAME_CORNER;
    }
}
