package coldseam.junctions;

import coldseam.envelope.Assembly;
import coldseam.envelope.Material;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** Everything of a house that a detail's section depends on; bridges with equal details and setups have equal results. */
public sealed interface BridgeSetup permits JunctionSetup, PointSetup {

    /** Build-ups it joins or goes through: one or two, that of the first band first. */
    ImmutableList<Assembly> assemblies();

    /** What the house's own file says of materials, by name, also of those that only details draw. */
    ImmutableMap<String, Material> materials();

    /** What the house says a material of this name is: a layer's of the build-ups, or its file's; empty where it says nothing. */
    default Optional<Material> material(String name) {
        return assemblies()
                .flatCollect(Assembly::materials)
                .detectOptional(material -> material.name().equals(name))
                .or(() -> Optional.ofNullable(materials().get(name)));
    }

    /** °C. */
    double indoorTemperature();

    /** °C. */
    double outdoorTemperature();
}
