package coldseam.report.pages;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Outcome;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.BridgeSetup;
import coldseam.junctions.detail.Detail;

/**
 * All that decides how a result is drawn: what was asked, and how it came out, which a limit of memory decides, too.
 *
 * @param units of its labels
 */
record DrawnResult(
        Detail detail, BridgeSetup setup, Accuracy accuracy, Outcome outcome, int unknowns, UnitSystem units) {

    static DrawnResult of(BridgeResult result, UnitSystem units) {
        return new DrawnResult(
                result.detail(),
                result.setup(),
                result.solution().accuracy(),
                result.solution().outcome(),
                result.solution().unknowns(),
                units);
    }
}
