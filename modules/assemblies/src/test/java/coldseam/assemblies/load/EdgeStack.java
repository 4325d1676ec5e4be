package coldseam.assemblies.load;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * How far a build-up sticks out over a line, part by part: what trim, sills, nosings and gutters must bridge.
 *
 * @param parts from the line outwards
 */
public record EdgeStack(ImmutableList<Part> parts) {

    /**
     * A part of the stack.
     *
     * @param name of it
     * @param thickness m, zero or more, as built: a crushed board with what is left of it
     */
    public record Part(String name, double thickness) {

        /**
         * Checks the thickness.
         *
         * @throws IllegalArgumentException where it is negative
         */
        public Part {
            Arguments.notNegative("the thickness of " + name, thickness, "m");
        }
    }

    /** What an assembly puts outside its outermost layer of structure; all of it where nothing is structure. */
    public static EdgeStack outsideStructure(Assembly assembly) {
        int structure = assembly.layers().detectLastIndex(layer -> layer.role() == Role.STRUCTURE);
        ImmutableList<Layer> outside = assembly.layers().drop(structure + 1);
        return new EdgeStack(outside.collect(layer -> new Part(layer.material().name(), layer.thickness())));
    }

    /** m. */
    public double projection() {
        return parts.sumOfDouble(Part::thickness);
    }

    /**
     * How far the projection reaches past another edge, such as a sill; negative where it stays behind.
     *
     * @param other m, of the other edge from the same line
     */
    public double past(double other) {
        return projection() - other;
    }

    /** The same stack with another part outside. */
    public EdgeStack with(String name, double thickness) {
        return new EdgeStack(
                Lists.mutable.withAll(parts).with(new Part(name, thickness)).toImmutable());
    }
}
