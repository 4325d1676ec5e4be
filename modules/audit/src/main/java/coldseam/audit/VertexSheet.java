package coldseam.audit;

import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.junctions.vertex.VertexResult;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * One computed vertex, for all the places it stands for.
 *
 * @param id such as "V1", in the order of the report
 * @param result computed
 * @param edges ids of its edges' sheets, in its edges' order
 * @param places names of the shell's vertices
 * @param chosen whether the house file chose the details of all its edges
 * @param humidity that its coldest point bears at the design temperatures
 */
public record VertexSheet(
        String id,
        VertexResult result,
        ImmutableList<String> edges,
        ImmutableList<String> places,
        boolean chosen,
        SurfaceHumidity humidity)
        implements Sheet {

    /** chi in a dimension system, W/K. */
    public Interval chi(DimensionSystem system) {
        return result.chi(system);
    }

    /** "corner of" and the kinds of edges that meet, each once with how many. */
    @Override
    public String kind() {
        ImmutableList<String> labels =
                result.setup().edges().collect(end -> end.setup().kind().label());
        return "corner of " + counted(labels);
    }

    /** Each word once, with how many times it stands there. */
    public static String counted(ImmutableList<String> words) {
        return words.distinct()
                .collect(word -> {
                    int times = words.count(word::equals);
                    return times == 1 ? word : times + " × " + word;
                })
                .makeString(", ");
    }

    @Override
    public double temperatureFactor() {
        return result.temperatureFactor();
    }
}
