package coldseam.audit;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * One rule that is broken. The sentences about it are the documents'.
 *
 * @param rule its id, such as "open-edge"
 * @param evidence what it was found by: a record of the rule's own
 */
public record Breach(String rule, Evidence evidence) {

    /** What a rule found. */
    public interface Evidence {

        /** What was found and what it is held to, as far as it is numbers. */
        default ImmutableList<Value> values() {
            return Lists.immutable.empty();
        }
    }
}
