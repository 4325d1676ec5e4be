package coldseam.report.drawing;

import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.eclipse.collections.impl.factory.primitive.DoubleLists;

/**
 * How a line is drawn.
 *
 * @param width points
 * @param dash lengths of strokes and gaps in turn, points; empty for an unbroken line
 * @param round whether its ends and joints are round
 */
public record Pen(double width, Ink ink, ImmutableDoubleList dash, boolean round) {

    /** An unbroken line. */
    public static Pen of(double width, Ink ink) {
        return new Pen(width, ink, DoubleLists.immutable.empty(), false);
    }

    /** The same with strokes and gaps. */
    public Pen dashed(double... lengths) {
        return new Pen(width, ink, DoubleLists.immutable.of(lengths), round);
    }

    /** The same with round ends and joints. */
    public Pen rounded() {
        return new Pen(width, ink, dash, true);
    }
}
