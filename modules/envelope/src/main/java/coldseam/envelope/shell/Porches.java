package coldseam.envelope.shell;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point3;
import coldseam.envelope.Seam;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.mesh.Joint;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Porches and steps that the house file names as seams on a wall: each takes its length out of the edge of the floor on the
 * ground at that wall's foot. Where along the wall it lies is not known; it is drawn in the middle.
 *
 * @param surfaces by facet; empty where one is left out
 * @param joints of the shell, which are shortened
 */
record Porches(
        ImmutableList<Seam> seams,
        ImmutableList<Optional<Surface>> surfaces,
        MutableList<Joint> joints,
        ShellFaults faults) {

    private static final JunctionKind PORCH = JunctionKind.of("porch slab against the house");

    Porches {
        seams = seams.select(Porches::is);
    }

    /** Whether a seam is one of these. */
    static boolean is(Seam seam) {
        return seam.kind() == PORCH;
    }

    ImmutableList<Edge> edges() {
        MutableList<Edge> edges = Lists.mutable.empty();
        for (Seam seam : seams) {
            int widest = -1;
            for (int i = 0; i < joints.size(); i++) {
                if (foot(joints.get(i), seam)
                        && (widest < 0
                                || joints.get(i).externalLength()
                                        > joints.get(widest).externalLength())) {
                    widest = i;
                }
            }
            double room = widest < 0 ? 0 : joints.get(widest).externalLength();
            if (!(seam.length() <= room)) {
                faults.seam(
                        seam.name(),
                        ": it is %.3f m long; the edge of a floor on the ground at the foot of \"%s\" leaves %.3f"
                                + " m beside its doors. Name a wall that stands on such a floor, or make it shorter.",
                        seam.length(),
                        seam.surface(),
                        room);
                continue;
            }
            edges.add(edge(seam, joints.get(widest)));
            joints.set(widest, joints.get(widest).shortened(seam.length()));
        }
        return edges.toImmutable();
    }

    private boolean foot(Joint joint, Seam seam) {
        return joint.kind() == JunctionKind.SLAB_EDGE
                && surfaces.get(joint.first()).isPresent()
                && surfaces.get(joint.second())
                        .filter(wall -> wall.name().equals(seam.surface()))
                        .isPresent();
    }

    private Edge edge(Seam seam, Joint joint) {
        Surface wall = surfaces.get(joint.second()).orElseThrow();
        Point3 from = joint.from().point();
        Point3 to = joint.to().point();
        Point3 along = Vectors.unit(Vectors.minus(to, from));
        Point3 middle = Vectors.times(Vectors.plus(from, to), 0.5);
        Point3 half = Vectors.times(along, seam.length() / 2);
        return new Edge(
                seam.name(),
                seam.kind(),
                surfaces.get(joint.first()).orElseThrow(),
                Optional.of(wall),
                Optional.empty(),
                Vectors.minus(middle, half),
                Vectors.plus(middle, half),
                seam.length(),
                seam.length(),
                joint.angle(),
                joint.firstSetBack(),
                joint.secondSetBack(),
                "",
                0,
                0,
                Places.word(wall) + " side, " + wall.storey() + ", "
                        + seam.kind().label() + " \"" + seam.name() + "\" at " + wall.name());
    }
}
