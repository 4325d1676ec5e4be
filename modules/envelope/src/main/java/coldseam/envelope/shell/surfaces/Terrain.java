package coldseam.envelope.shell.surfaces;

import coldseam.envelope.Body;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.GroundLine;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The ground beside a body of explicit surfaces.
 *
 * @param level m, where it is level
 * @param line round the house, where it is not
 */
record Terrain(double level, Optional<GroundLine> line) {

    /** Of a body whose points are all there. */
    static Terrain of(Body.Explicit body) {
        if (body.ground().isEmpty()) {
            return new Terrain(body.groundLevel(), Optional.empty());
        }
        ImmutableList<Vertex> points =
                body.ground().collect(name -> Vertex.measured(body.points().get(name)));
        return new Terrain(body.groundLevel(), Optional.of(new GroundLine(points.collectWithIndex((from, i) -> {
            Vertex to = points.get((i + 1) % points.size());
            return new GroundLine.Stretch(from.at(0), to.at(0), from.z(), to.z());
        }))));
    }

    /** m, z of the ground beside a point. */
    double at(Vertex point) {
        return line.map(each -> Vertex.metres(each.at(point))).orElse(level);
    }

    /** m, z of the ground along outlines, mean by their length. */
    double mean(ImmutableList<ImmutableList<Vertex>> outlines) {
        double length = 0;
        double sum = 0;
        for (ImmutableList<Vertex> outline : outlines) {
            for (int i = 0; i < outline.size(); i++) {
                Vertex from = outline.get(i);
                Vertex to = outline.get((i + 1) % outline.size());
                double side = to.minus(from).length();
                length += side;
                sum += side * (at(from) + at(to)) / 2;
            }
        }
        return length > 0 ? sum / length : level;
    }

    /** m, the highest that it is given. */
    double highest() {
        return line.map(each -> Vertex.metres(
                        each.stretches().collectLong(GroundLine.Stretch::atFrom).max()))
                .orElse(level);
    }
}
