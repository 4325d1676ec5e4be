package coldseam.report.data;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** The heat-loss coefficient by transmission. */
record HeatLossData(
        @Says("H_T") BoundsData total_W_per_K,

        @Says("why the total is a least value only; missing where it is known")
        Optional<String> notKnown,

        @Says("H_T where each input is off by its share, independently, to first order")
        BoundsData totalAsInputsAreKnown_W_per_K,

        @Says("each input's effect on H_T, the largest first")
        ImmutableList<InputData> inputs,

        double surfaces_W_per_K,
        double ground_W_per_K,
        double unheated_W_per_K,
        BoundsData positiveJunctions_W_per_K,
        BoundsData negativeJunctions_W_per_K,

        @Says("what seams that touch lose more than each alone, as far as they are computed in one section")
        BoundsData pairs_W_per_K,

        BoundsData points_W_per_K,

        @Says("corners where three or more edges meet, as far as they are computed")
        BoundsData vertices_W_per_K,

        @Says("0 to 1; may be negative") BoundsData junctionShare,
        BoundsData otherDimensionsTotal_W_per_K,

        @Says("of this system minus the other: corners that are not computed")
        BoundsData vertexRemainder_W_per_K,

        @Says("the rest of that difference: corrections of U that no section holds")
        double correctionRemainder_W_per_K,

        OptionalDouble ventilation_W_per_K,
        BoundsData designLoad_W,
        OptionalDouble annualLoss_kWh,
        @Says("their sum is the total") ImmutableList<LineData> lines) {

    record InputData(
            String material,

            @Says("share of the input that it may be off by, to either side")
            double within,

            @Says("what H_T moves by then") double effect_W_per_K,

            @Says("0 to 1, of the variance of H_T") double share) {}

    record LineData(
            String group,
            String name,
            double size,
            @Says("m2, m or empty for a count") String sizeUnit,

            @Says("W/(m2K), W/(mK) or W/K, by the size's unit")
            BoundsData transmittance,

            double temperatureFactor,
            BoundsData loss_W_per_K) {}
}
