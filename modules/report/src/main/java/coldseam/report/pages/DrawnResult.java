package coldseam.report.pages;

import coldseam.conduction.Solved;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * All that decides how a result is drawn: what was asked, and how it came out, which a limit of memory decides, too.
 *
 * @param units of its labels
 */
record DrawnResult(ImmutableList<Record> asked, int unknowns, UnitSystem units) {

    static DrawnResult of(BridgeResult result, UnitSystem units) {
        return of(result.solution(), units, result.detail(), (Record) result.setup());
    }

    /** @param question that was solved */
    static DrawnResult of(Solved<?> solution, UnitSystem units, Record... question) {
        return new DrawnResult(
                Lists.immutable.of(question).newWith(solution.accuracy()).newWith((Record) solution.outcome()),
                solution.unknowns(),
                units);
    }
}
