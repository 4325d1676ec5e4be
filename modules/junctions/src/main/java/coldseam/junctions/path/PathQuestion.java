package coldseam.junctions.path;

import coldseam.conduction.Boundary;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Surroundings;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * All that decides a weakest path.
 *
 * @param faces what the ways lead through
 * @param boundaries of the heat flow's section
 * @param colder names of the environments a way may end at
 * @param neighbour m²·K/W, the smaller of the plane parts' resistances
 */
public record PathQuestion(
        ImmutableList<Composition.Face> faces,
        ImmutableList<Boundary> boundaries,
        ImmutableList<String> colder,
        double neighbour) {

    /** What a composition asks: from the rooms to whatever counts as colder than they. */
    public static PathQuestion of(Composition composition) {
        return new PathQuestion(
                composition.faces(),
                composition.heatFlow().boundaries(),
                composition
                        .surroundings()
                        .spaces()
                        .select(each -> each.factor() > 0)
                        .collect(Surroundings.Space::name),
                composition.weakestNeighbour());
    }
}
