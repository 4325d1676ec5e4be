package coldseam.junctions;

import org.eclipse.collections.api.list.ImmutableList;

/** A detail asked for layers or angles outside its valid range. */
public final class DetailDoesNotFit extends RuntimeException {

    private final transient ImmutableList<String> reasons;

    /** @param reasons at least one: what was asked, the value with its unit, the allowed range, the next step */
    public DetailDoesNotFit(ImmutableList<String> reasons) {
        super(reasons.makeString("\n"));
        this.reasons = reasons;
    }

    /** Every reason. */
    public ImmutableList<String> reasons() {
        return reasons;
    }
}
