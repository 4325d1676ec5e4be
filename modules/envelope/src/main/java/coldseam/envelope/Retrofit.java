package coldseam.envelope;

import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What stays of an old house: the structure of every surface that is not built new.
 *
 * @param builtNew names of the surfaces whose structure is new
 * @param takenDown parts that come down all the same, such as a parapet, in the words of the details that ask for it
 */
public record Retrofit(ImmutableSet<String> builtNew, ImmutableSet<String> takenDown) {

    /** Whether a surface's old structure stays. */
    public boolean keeps(String surface) {
        return !builtNew.contains(surface);
    }
}
