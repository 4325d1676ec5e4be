package coldseam.junctions.store;

import java.util.Arrays;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What can become of an entry. */
final class Spoilt {

    private Spoilt() {}

    /** Emptied, torn at its beginning, torn in its middle, one bit turned. */
    static ImmutableList<byte[]> of(byte[] whole) {
        byte[] turned = whole.clone();
        turned[whole.length / 2] ^= 1;
        return Lists.immutable.of(
                new byte[0], Arrays.copyOf(whole, 20), Arrays.copyOf(whole, whole.length / 2), turned);
    }
}
