package coldseam.files;

import static org.junit.jupiter.api.Assertions.fail;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Compares two sets of names for a test; what it prints can be acted on. */
public final class SameNames {

    private SameNames() {}

    /**
     * Fails where a name is in one and not in the other, with both differences sorted.
     *
     * @param wanted names that should be there
     * @param found names that are
     * @param remedy the command or the change that mends it
     */
    public static void check(Iterable<String> wanted, Iterable<String> found, String remedy) {
        ImmutableList<String> missing = less(wanted, found);
        ImmutableList<String> left = less(found, wanted);
        if (missing.notEmpty() || left.notEmpty()) {
            fail((missing.isEmpty() ? "" : "missing: " + missing.makeString(", ") + "; ")
                    + (left.isEmpty() ? "" : "too many: " + left.makeString(", ") + "; ")
                    + remedy);
        }
    }

    private static ImmutableList<String> less(Iterable<String> some, Iterable<String> others) {
        return Lists.mutable
                .withAll(some)
                .withoutAll(Lists.mutable.withAll(others))
                .distinct()
                .sortThis()
                .toImmutable();
    }
}
