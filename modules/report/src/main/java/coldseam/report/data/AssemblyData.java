package coldseam.report.data;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** An assembly. */
record AssemblyData(
        String name,
        double transmittance_W_per_m2K,
        double area_m2,

        @Says("of the heat, from indoors: horizontal, upwards or downwards")
        String heatFlow,

        @Says("inside to outside") ImmutableList<LayerData> layers,
        CondensationData condensation) {

    record LayerData(
            String material,
            double thickness_m,
            double conductivity_W_per_mK,
            String role,
            ImmutableList<String> controls,
            Optional<String> framing,
            @Says("of the area, 0 to 1") OptionalDouble framingShare) {}
}
