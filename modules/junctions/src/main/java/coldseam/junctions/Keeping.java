package coldseam.junctions;

import java.util.function.Supplier;
import org.eclipse.collections.api.list.ImmutableList;

/** What an earlier run computed, if it was kept. */
public interface Keeping {

    /** Keeps nothing. */
    Keeping NOTHING = new Keeping() {
        @Override
        public <R extends Record> R answer(ImmutableList<? extends Record> question, Supplier<R> computing) {
            return computing.get();
        }
    };

    /**
     * The answer of an earlier run, or a new one.
     *
     * @param question all that decides the answer beside the tool: such as a detail, a setup, and the accuracy
     * @param computing the new one
     * @throws DetailDoesNotFit where the question asks for a detail outside its valid range
     */
    <R extends Record> R answer(ImmutableList<? extends Record> question, Supplier<R> computing);
}
