package coldseam.audit;

import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * One computed bridge, a junction or a point, for all the places it stands for.
 *
 * @param <R> what is computed of it: of a junction, or of a point
 * @param id such as "J3" or "P1", in the order of the report
 * @param result computed; for edges with an own psi too, where a detail is chosen
 * @param best the best option of the catalogue for the same setup, at an opening of those whose frame stands in one plane with the
 *     best of its other sides, with more of the lengths in it that insulate where it misses a limit without; empty where it is
 *     this one, or where none fits
 * @param options all of the catalogue that fit the same setup, from worst to best as it ranks them; those that are
 *     neither the result nor the best are solved to a wider interval
 * @param withheld those of the kind that ask for parts taken down which the house keeps, and take these layers, from worst
 *     to best; whether their drawings hold on them is not looked at
 * @param places names of the shell's edges, or of the house file's sets of points
 * @param size of all of them: m in the site's dimension system, or how many
 * @param chosen whether the house file chose the detail
 * @param humidity that its coldest point bears at the design temperatures
 * @param framesElsewhere m, from the wall's outer face to the frame's in the best of the other sides of its openings, where no
 *     option of this one fits that draws it there
 */
public record BridgeSheet<R extends BridgeResult>(
        String id,
        R result,
        Optional<R> best,
        ImmutableList<R> options,
        ImmutableList<Detail> withheld,
        ImmutableList<String> places,
        double size,
        boolean chosen,
        SurfaceHumidity humidity,
        OptionalDouble framesElsewhere)
        implements Sheet {

    /** m, that packers take up and that a wall of other layers below a threshold may shift a frame by (judgement). */
    private static final double ONE_PLANE = 0.01;

    /** Whether frames so far behind the outer face of a wall, m, are one. */
    public static boolean inOnePlane(double setBack, double other) {
        return Math.abs(setBack - other) <= ONE_PLANE;
    }

    @Override
    public String kind() {
        return result.detail().kind().label();
    }

    /** What is computed of a junction; empty of a point. */
    public Optional<JunctionResult> junction() {
        return result instanceof JunctionResult junction ? Optional.of(junction) : Optional.empty();
    }

    /** psi with external dimensions, W/(m·K), or chi, W/K. */
    public Interval external() {
        return result.psiOrChi(DimensionSystem.EXTERNAL);
    }

    @Override
    public double temperatureFactor() {
        return result.temperatureFactor();
    }

    /** Of psi, W/(m·K), or of chi, W/K. */
    public Dimension dimension() {
        return result.dimension();
    }
}
