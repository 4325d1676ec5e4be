package coldseam.report.words;

import coldseam.audit.HeatLoss;
import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What lines of the heat-loss table lose, as it is printed in either unit system: each line is rounded in the unit that it is
 * printed in, exact values to the nearest and intervals outwards, and then added. A line that was rounded in W/K first would
 * leave its size times its transmittance outside its bounds in another unit.
 *
 * @param lower bound, in the printed unit
 * @param upper bound, in the printed unit
 */
public record PrintedLoss(BigDecimal lower, BigDecimal upper) {

    private static final BigDecimal ZERO = BigDecimal.ZERO.setScale(HeatLoss.DECIMALS);

    /** The step that lines are rounded to. */
    public static final BigDecimal STEP = BigDecimal.ONE.movePointLeft(HeatLoss.DECIMALS);

    public static PrintedLoss of(HeatLoss.Line line, UnitSystem units) {
        Interval loss = line.unrounded();
        boolean exact = loss.width() == 0;
        return new PrintedLoss(
                rounded(loss.lower(), units, exact ? RoundingMode.HALF_EVEN : RoundingMode.FLOOR),
                rounded(loss.upper(), units, exact ? RoundingMode.HALF_EVEN : RoundingMode.CEILING));
    }

    /** Of lines together. */
    public static PrintedLoss of(ImmutableList<HeatLoss.Line> lines, UnitSystem units) {
        return lines.injectInto(new PrintedLoss(ZERO, ZERO), (sum, line) -> sum.plus(of(line, units)));
    }

    private static BigDecimal rounded(double loss, UnitSystem units, RoundingMode mode) {
        return new BigDecimal(Double.toString(units.value(loss, Dimension.HEAT_LOSS_COEFFICIENT)))
                .setScale(HeatLoss.DECIMALS, mode);
    }

    private PrintedLoss plus(PrintedLoss other) {
        return new PrintedLoss(lower.add(other.lower), upper.add(other.upper));
    }
}
