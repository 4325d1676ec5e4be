package coldseam.junctions;

import coldseam.conduction.Point;
import coldseam.envelope.Control;
import coldseam.junctions.plan.SectionPlan.Zone;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The way of air, water or vapour control through a junction, from one surface's layer to the other's.
 *
 * <p>It runs in what can control, from piece to piece where they touch; over what cannot, only as a strip (a tape, a lap, a
 * bead) along the joints and faces of the drawing, if the detail says that the layer is carried across, and never through the
 * pen line: a layer that changes from one side of the insulation to the other is not joined by a word, but only by a strip
 * that the detail draws from the one to the other.
 */
public sealed interface ControlLine {

    /** What is controlled: air, water or vapour. */
    Control control();

    /** m, the line as far as it comes; empty where there is none. */
    ImmutableList<Point> path();

    /** One answer for each case. */
    default <T> T match(
            Function<Continuous, T> continuous,
            Function<Broken, T> broken,
            Function<ChangesSide, T> changesSide,
            Function<NotShown, T> notShown) {
        if (this instanceof Continuous it) {
            return continuous.apply(it);
        }
        if (this instanceof Broken it) {
            return broken.apply(it);
        }
        return this instanceof ChangesSide it ? changesSide.apply(it) : notShown.apply((NotShown) this);
    }

    /**
     * It reaches the other surface.
     *
     * @param path m, from the first surface's end to the second's
     * @param strips the parts of it that run over what cannot control, m
     * @param sheets the detail's own strips that it runs in, by name
     */
    record Continuous(
            Control control,
            ImmutableList<Point> path,
            ImmutableList<ImmutableList<Point>> strips,
            ImmutableList<String> sheets)
            implements ControlLine {

        /** m, of all strips together. */
        public double stripLength() {
            double sum = 0;
            for (ImmutableList<Point> strip : strips) {
                for (int i = 1; i < strip.size(); i++) {
                    sum += strip.get(i - 1).distance(strip.get(i));
                }
            }
            return sum;
        }
    }

    /**
     * It stops.
     *
     * @param path m, as far as it comes
     * @param why it stops
     */
    record Broken(Control control, ImmutableList<Point> path, Reason why) implements ControlLine {

        /** Why a layer stops. */
        public enum Reason {
            /** The detail says so. */
            SAID,
            /** No strip along the drawing's joints reaches the other layer. */
            OUT_OF_REACH
        }
    }

    /**
     * The two layers lie on the two sides of the insulation, and nothing that is drawn joins them.
     *
     * @param path m, as far as it comes
     * @param first where the first surface's layer lies
     * @param second where the second's lies
     */
    record ChangesSide(Control control, ImmutableList<Point> path, Zone first, Zone second) implements ControlLine {}

    /**
     * Nothing can be said.
     *
     * @param why not
     */
    record NotShown(Control control, Reason why) implements ControlLine {

        /** Why nothing can be said. */
        public enum Reason {
            /** One of the surfaces names no layer that can control it. */
            NO_LAYER,
            /** The detail does not say how the layer passes. */
            DETAIL_SILENT,
            /** The layers of a section drawn by hand are not known. */
            BY_HAND
        }

        @Override
        public ImmutableList<Point> path() {
            return Lists.immutable.empty();
        }
    }
}
