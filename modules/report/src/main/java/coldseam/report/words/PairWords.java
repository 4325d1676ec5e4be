package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.Mould;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.pair.PairObstacle;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** What is said of two seams that touch. */
public final class PairWords {

    private static final double MILLIMETRES = 1000;

    private PairWords() {}

    /** m between both seams, at the least, as the table of pairs has it; a section's own distance is from a floor's upper face. */
    public static double apart(Audit audit, PairSheet sheet) {
        return audit.pairs()
                .select(row -> row.sheet().filter(sheet::equals).isPresent())
                .collectDouble(row -> row.pair().distance())
                .min();
    }

    /** The name of a sheet: both seams, and how far apart. */
    public static String name(PairSheet sheet) {
        return sheet.id() + " " + sheet.one().id() + " beside " + sheet.other().id()
                + ": what both lose more than apart" + (sheet.chosen() ? "" : ", not all chosen");
    }

    /** Whether two are computed in one section, and if not, why; and whether they are warm enough. */
    public static String status(PairRow row, Mould mould, UnitSystem units) {
        return row.sheet()
                .map(sheet -> sheet.temperatureFactor() < mould.need() ? "computed, too cold" : "computed")
                .orElseGet(() -> "not computed: " + why(row.obstacle().orElseThrow()) + lacking(row.lacking(), units));
    }

    /** Why two are not computed in one section. */
    static String why(PairObstacle obstacle) {
        return switch (obstacle) {
            case ASLANT -> "they are aslant to each other";
            case PLACE -> "where one of them lies is not known";
            case GROUND -> "the surface is in the ground";
            case NARROW -> "so little lies between them that neither can be built as it is drawn";
            case NOT_BETWEEN -> "the surface does not go on between them";
            case THRESHOLD -> "a door stands on one of them";
            case THREE -> "a third seam touches one of them at the same place";
            case BY_HAND -> "one of them is drawn by hand";
            case REACHES -> "what one draws reaches into what the other does";
            case FAR -> "they are farther apart than their sections reach";
            case OTHER_LAYERS -> "their sections show other layers of the surface, or other air before it";
            case UNSOLVABLE -> "the section of both cannot be solved";
            case NOT_ASKED -> "pairs of seams were not asked for";
        };
    }

    /** m, to the whole millimetre: nobody measures finer on site. */
    static double measured(double metres) {
        return Math.rint(metres * MILLIMETRES) / MILLIMETRES;
    }

    /** m, of what must be at least as much. */
    static double enough(double metres) {
        return Math.ceil(metres * MILLIMETRES) / MILLIMETRES;
    }

    private static String lacking(double metres, UnitSystem units) {
        return metres > 0 ? ", by " + units.format(enough(metres), Dimension.LENGTH) : "";
    }

    /** How many pairs are solved together, and what they come to; empty where none touches, or nobody asked. */
    public static Optional<String> count(Audit audit, UnitSystem units) {
        ImmutableList<PairRow> rows = audit.pairs()
                .reject(row -> row.obstacle()
                        .filter(each -> each == PairObstacle.NOT_ASKED)
                        .isPresent());
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        int computed = rows.count(row -> row.sheet().isPresent());
        Interval more = audit.heatLoss().pairs();
        ImmutableList<String> others =
                Phrases.counted(rows.collect(PairRow::obstacle), obstacle -> ", since " + why(obstacle));
        return Optional.of(computed + " of "
                + Phrases.count(rows.size(), "pair of seams that touches", "pairs of seams that touch")
                + (computed == 1 || rows.size() == 1 ? " is" : " are") + " solved in one section"
                + (computed == 0
                        ? ""
                        : ", which adds " + units.readable(more.lower(), more.upper(), Dimension.HEAT_LOSS_COEFFICIENT)
                                + " to H_T")
                + (others.isEmpty() ? "" : "; not: " + others.makeString("; ")));
    }
}
