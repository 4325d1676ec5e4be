package coldseam.audit;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * SHA-256 of the files that an audit was made from, hexadecimal, so that a rerun can be shown to be the same.
 *
 * @param details of each detail's file that the house brings along
 */
public record Digests(String house, ImmutableList<OfDetail> details) {

    /**
     * Of one detail's file.
     *
     * @param file as the house names it
     * @param digest SHA-256, hexadecimal
     */
    public record OfDetail(String file, String digest) {}

    /** Of a house whose details are all of the catalogue. */
    public static Digests of(String house) {
        return new Digests(house, Lists.immutable.empty());
    }
}
