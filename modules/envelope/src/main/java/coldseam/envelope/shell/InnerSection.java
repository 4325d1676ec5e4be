package coldseam.envelope.shell;

import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** A level section through the rooms that inner outlines enclose. */
final class InnerSection {

    private InnerSection() {}

    /**
     * m², of the rooms at a height: half the sum of x dy − y dx along all that the height passes through, counterclockwise
     * around the rooms.
     *
     * @param outlines counterclockwise seen from outdoors
     * @param z m
     */
    static double area(ImmutableList<ImmutableList<Point3>> outlines, double z) {
        Point3 origin = outlines.getFirst().getFirst();
        double twice = 0;
        for (ImmutableList<Point3> outline : outlines) {
            Point3 normal = Vectors.areaVector(outline);
            Point3 along = Vectors.cross(Vectors.UP, normal);
            MutableList<Point3> passed = Lists.mutable.empty();
            for (int i = 0; i < outline.size(); i++) {
                Point3 a = outline.get(i);
                Point3 b = outline.get((i + 1) % outline.size());
                if (a.z() < z != b.z() < z) {
                    double share = (z - a.z()) / (b.z() - a.z());
                    passed.add(Vectors.minus(Vectors.plus(a, Vectors.times(Vectors.minus(b, a), share)), origin));
                }
            }
            passed.sortThisByDouble(point -> Vectors.dot(point, along));
            for (int i = 0; i + 1 < passed.size(); i += 2) {
                twice += passed.get(i).x() * passed.get(i + 1).y()
                        - passed.get(i).y() * passed.get(i + 1).x();
            }
        }
        return twice / 2;
    }
}
