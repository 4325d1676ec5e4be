package coldseam.audit.assumed;

import coldseam.audit.Audit;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Something that is taken on the house file's word: where it is a slip of the pen or a trick, the house loses more than is computed.
 *
 * @param <E> what it is taken of, and how much of it
 */
@FunctionalInterface
public interface Assumption<E> {

    /** What it is taken of in one house; empty where nobody has to take it. */
    ImmutableList<E> in(Audit audit);
}
