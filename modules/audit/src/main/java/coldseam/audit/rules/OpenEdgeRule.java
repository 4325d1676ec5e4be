package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.OpenEdge;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Edges that are not shared by two surfaces; those that touch at their ends surround one hole. */
final class OpenEdgeRule implements Rule {

    /** m; ends nearer than this are one corner of the hole. */
    private static final double SAME_CORNER = 1e-6;

    @Override
    public String id() {
        return "open-edge";
    }

    @Override
    public String says() {
        return "Every edge of the shell is shared by exactly two surfaces.";
    }

    @Override
    public String closing() {
        return "Give the surface that is missing, with its assembly.";
    }

    @Override
    public int gravity() {
        return 0;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return holes(facts.shell().openEdges()).collect(hole -> draft(facts, hole));
    }

    private Draft draft(Facts facts, ImmutableList<OpenEdge> hole) {
        double length = hole.sumOfDouble(OpenEdge::length);
        ImmutableList<String> surfaces = hole.flatCollect(OpenEdge::surfaces).distinct();
        String what = String.format(
                "the shell is open along %s (%s in all), beside %s",
                hole.size() == 1 ? "one edge" : hole.size() + " edges",
                facts.say(length, Dimension.LENGTH),
                surfaces.makeString(", "));
        return new Draft(
                this,
                "hole " + hole.getFirst().place(),
                Severity.GAP,
                "a surface is missing",
                what,
                new Subject.Hole(hole),
                Lists.immutable.empty(),
                Optional.empty(),
                Optional.empty(),
                "give the missing surface an assembly in the house file, or say what closes the envelope there");
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
