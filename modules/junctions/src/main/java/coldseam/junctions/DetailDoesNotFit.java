package coldseam.junctions;

import coldseam.files.quantity.Phrase;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A detail asked for layers or angles outside its valid range. */
public final class DetailDoesNotFit extends RuntimeException {

    private final transient ImmutableList<Phrase> reasons;

    /** @param reasons at least one: what was asked, the value with its unit, the allowed range, the next step */
    public DetailDoesNotFit(ImmutableList<Phrase> reasons) {
        super(reasons.makeString("\n"));
        this.reasons = reasons;
    }

    /** For one reason that has no value. */
    public static DetailDoesNotFit of(String reason) {
        return of(Phrase.of(reason));
    }

    public static DetailDoesNotFit of(Phrase reason) {
        return new DetailDoesNotFit(Lists.immutable.of(reason));
    }

    /** Every reason. */
    public ImmutableList<Phrase> reasons() {
        return reasons;
    }
}
