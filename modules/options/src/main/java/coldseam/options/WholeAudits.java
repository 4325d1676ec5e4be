package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.engine.Progress;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;

/**
 * Audits of sets with their corners. What a corner loses follows from the details of all edges that meet there, so it is no
 * part of any one decision and does not add up with others; it is solved for the few sets that are told of.
 */
final class WholeAudits {

    private final Variants variants;
    private final Progress progress;
    private final Map<ImmutableIntList, Audit> audits = new HashMap<>();

    WholeAudits(Variants variants, Progress progress) {
        this.variants = variants;
        this.progress = progress;
    }

    /** The audit that the house file of this set would have. */
    Audit of(ImmutableIntList set) {
        return audits.computeIfAbsent(set, none -> variants.house(set).compute(progress));
    }
}
