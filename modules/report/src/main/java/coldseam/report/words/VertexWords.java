package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.Mould;
import coldseam.audit.OpeningCorners;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexRow.Obstacle;
import coldseam.audit.VertexSheet;
import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.vertex.VertexResult;
import coldseam.junctions.vertex.VertexSetup;
import org.eclipse.collections.api.list.ImmutableList;

/** What is said of corners where three or more edges meet. */
public final class VertexWords {

    private VertexWords() {}

    /** The name of a sheet: its edges' kinds. */
    public static String name(VertexSheet sheet) {
        return sheet.id() + " " + sheet.kind() + (sheet.chosen() ? "" : ", not all chosen");
    }

    /** Whether a vertex is computed, and if not, why; and whether it is warm enough. */
    public static String status(VertexRow row, Mould mould, UnitSystem units) {
        return row.sheet()
                .map(sheet -> sheet.temperatureFactor() < mould.need() ? "computed, too cold" : "computed")
                .orElseGet(() -> "not computed: " + why(row, row.obstacle().orElseThrow(), units));
    }

    /** Why a corner that is computed for its temperature alone has no chi. */
    public static String uncounted(VertexSetup setup) {
        return setup.besideGround() ? "in the U of the floor, ISO 13370" : "not counted where layers change";
    }

    private static String why(VertexRow row, Obstacle obstacle, UnitSystem units) {
        return switch (obstacle) {
            case ASLANT -> "something about it is aslant";
            case NO_CORNER -> "its surfaces go on in one plane, or stand a little before one another: no single corner";
            case NO_DETAIL -> "an edge of it has no computed detail";
            case IN_PLANE -> "layers change in the plane of one of its surfaces";
            case FLOOR_ENDS -> "a floor ends in it, and no section shows how";
            case NOT_SAID, MISFIT ->
                row.reasons().collect(each -> each.in(units)).makeString("; ");
            case NOT_ASKED -> "vertices were not asked for";
        };
    }

    /**
     * How many vertices there are and how many are computed, with what stood in the way of the others; and that those of windows
     * and doors are none of them: their frames are drawn in their edges' sections alone.
     */
    public static String count(Audit audit) {
        ImmutableList<VertexRow> rows = audit.vertices();
        int computed = rows.count(row -> row.sheet().isPresent());
        ImmutableList<VertexSetup> cold = rows.flatCollect(
                        row -> row.sheet().stream().toList())
                .collect(VertexSheet::result)
                .select(result -> result.heat().isEmpty())
                .collect(VertexResult::setup);
        int onGround = cold.count(VertexSetup::besideGround);
        int changing = cold.size() - onGround;
        String all = computed + " of " + rows.size() + (rows.size() == 1 ? " corner" : " corners")
                + " where edges meet are computed"
                + (onGround == 0 ? "" : ", " + onGround + " on the ground")
                + (changing == 0 ? "" : ", " + changing + " where walls change")
                + (cold.isEmpty() ? "" : " for their temperature alone");
        ImmutableList<String> others =
                Phrases.counted(rows.collect(VertexRow::obstacle), obstacle -> " " + brief(obstacle));
        int openings = audit.house().openings().size();
        ImmutableList<String> left = openings == 0
                ? others
                : others.newWith("those of " + openings + (openings == 1 ? " window or door" : " windows and doors"));
        return left.isEmpty() ? all : all + "; not: " + left.makeString(", ");
    }

    /** What the corners of windows and doors may add to H_T, of which it has nothing: by cases that were worked out, not by bounds. */
    public static String ofOpenings(Audit audit, UnitSystem units) {
        OpeningCorners corners = OpeningCorners.of(audit);
        return "H_T has nothing of these " + corners.number() + " corners; by " + OpeningCorners.CASES
                + " cases worked out in walls, they would add " + range(corners.lapped(), units)
                + " where boards lap every frame, " + range(corners.unlapped(), units)
                + " where they lap none, the most in bare reveals of concrete.";
    }

    private static String range(Interval heat, UnitSystem units) {
        return units.number(heat.lower(), Dimension.HEAT_LOSS_COEFFICIENT) + " to "
                + units.format(heat.upper(), Dimension.HEAT_LOSS_COEFFICIENT);
    }

    private static String brief(Obstacle obstacle) {
        return switch (obstacle) {
            case ASLANT -> "aslant";
            case NO_CORNER -> "that are no single corner";
            case NO_DETAIL -> "with an edge of no detail";
            case IN_PLANE -> "where layers change in a plane";
            case FLOOR_ENDS -> "where a floor ends";
            case NOT_SAID -> "that the details do not define";
            case MISFIT -> "that the house's own detail does not fit";
            case NOT_ASKED -> "not asked for";
        };
    }
}
