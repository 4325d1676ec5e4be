package coldseam.envelope;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What stays of an old house: the structure of every surface that is not built new.
 *
 * @param builtNew names of the surfaces whose structure is new
 * @param takenDown parts that come down all the same, such as a parapet, in the words of the details that ask for it
 * @param order of building, where it is told: names of assemblies and of {@link #OTHER_MEASURES}, each once
 */
public record Retrofit(ImmutableSet<String> builtNew, ImmutableSet<String> takenDown, ImmutableList<String> order) {

    /** The measure of every window and door that becomes another. */
    public static final String OPENINGS = "windows and doors";

    /** The measure of every set of points that becomes another. */
    public static final String POINTS = "points";

    /** The measure of every detail that becomes another where nothing beside it does. */
    public static final String DETAILS = "details";

    /** Those that are no build-up. */
    public static final ImmutableList<String> OTHER_MEASURES = Lists.immutable.of(OPENINGS, POINTS, DETAILS);

    /** Whether a surface's old structure stays. */
    public boolean keeps(String surface) {
        return !builtNew.contains(surface);
    }
}
