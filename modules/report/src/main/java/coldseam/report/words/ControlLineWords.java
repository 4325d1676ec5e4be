package coldseam.report.words;

import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.ControlLine;
import coldseam.junctions.detail.Connection;
import java.util.Optional;

/**
 * How a control layer passes a junction, in a few words.
 *
 * @param text what the detail says, and what its line in the section shows
 * @param passes whether it is carried across, as far as both show
 */
public record ControlLineWords(String text, boolean passes) {

    /** Strips shorter than this, m, only close a joint. */
    private static final double JOINT = 0.005;

    /**
     * The words.
     *
     * @param how as the detail says
     * @param line in the section; empty where none was followed
     */
    public static ControlLineWords of(Connection how, Optional<ControlLine> line, UnitSystem units) {
        String word = Words.word(how);
        String said = word + line.map(ControlLineWords::sheets).orElse("");
        ControlLineWords asSaid = new ControlLineWords(said, how.carriesAcross());
        if (line.isEmpty() || !how.carriesAcross()) {
            return asSaid;
        }
        return line.get()
                .match(
                        continuous -> continuous.stripLength() < JOINT
                                ? asSaid
                                : new ControlLineWords(
                                        said + ", over " + units.format(continuous.stripLength(), Dimension.THICKNESS)
                                                + " of what cannot control it",
                                        true),
                        broken -> new ControlLineWords(said + ", yet its line does not reach across", false),
                        changesSide -> new ControlLineWords(said + ", yet it changes sides of the insulation", false),
                        notShown -> asSaid);
    }

    /** What became of a line, for data and tables. */
    public static String state(ControlLine line) {
        return line.match(
                continuous -> "continuous", broken -> "broken", changesSide -> "changes side", notShown -> "not shown");
    }

    private static String sheets(ControlLine line) {
        return line instanceof ControlLine.Continuous continuous
                        && continuous.sheets().notEmpty()
                ? " by " + continuous.sheets().makeString(" and ")
                : "";
    }
}
