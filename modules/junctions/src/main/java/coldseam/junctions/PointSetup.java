package coldseam.junctions;

import coldseam.assemblies.HeatFlow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Exposure;
import coldseam.envelope.Material;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * Everything of a house that a point's section depends on; points with equal setups have equal results.
 *
 * @param host build-up of the surface it goes through
 * @param exposure what the surface faces
 * @param ground what lies under a floor on the ground
 * @param indoorTemperature °C
 * @param outdoorTemperature °C
 * @param materials what the house's own file says of materials, by name
 */
public record PointSetup(
        Assembly host,
        Exposure exposure,
        HeatFlow flow,
        Optional<GroundBelow> ground,
        double indoorTemperature,
        double outdoorTemperature,
        ImmutableMap<String, Material> materials)
        implements BridgeSetup {

    /** A surface towards outdoors with the detail's own lengths. */
    public static PointSetup outdoors(
            Assembly host, HeatFlow flow, double indoorTemperature, double outdoorTemperature) {
        return new PointSetup(
                host,
                Exposure.outdoors(),
                flow,
                Optional.empty(),
                indoorTemperature,
                outdoorTemperature,
                Maps.immutable.empty());
    }

    @Override
    public ImmutableList<Assembly> assemblies() {
        return Lists.immutable.of(host);
    }

    /**
     * Ground in one dimension: so thick that the floor with it has its U of ISO 13370, and at the outdoor temperature below.
     *
     * @param conductivity W/(m·K)
     * @param transmittance W/(m²·K), of the floor with the ground
     */
    public record GroundBelow(double conductivity, double transmittance) {}
}
