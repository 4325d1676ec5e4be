package coldseam.audit.engine;

import coldseam.assemblies.Transmittance;
import coldseam.audit.HeatLoss;
import coldseam.conduction.Finite;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.shell.Surface;
import java.util.Optional;

/**
 * What one plane surface loses.
 *
 * @param surface of the shell
 * @param build its assembly by ISO 6946, in the direction of its heat flow; empty where it has no assembly
 * @param transmittance W/(m²·K), towards outdoors: by ISO 13370 where it meets the ground or a crawl space
 * @param factor temperature factor b
 * @param group of the heat-loss table
 */
record SurfaceHeat(
        Surface surface, Optional<Transmittance> build, double transmittance, double factor, HeatLoss.Group group) {

    /**
     * The place that every U passes on its way to the sums: what is no number leaves it nowhere.
     *
     * @throws IllegalStateException that names the surface, its layers and the value
     */
    SurfaceHeat {
        Finite.number(transmittance, "W/(m²·K)", () -> "U of " + named(surface));
        Finite.number(factor, "", () -> "the temperature factor of " + named(surface));
    }

    private static String named(Surface surface) {
        return "\"" + surface.name() + "\""
                + surface.assembly()
                        .map(assembly -> assembly.layers()
                                .collect(layer -> layer.material().name() + " " + layer.thickness() + " m of "
                                        + layer.material().conductivity() + " W/(m·K)")
                                .makeString(" (its layers are ", ", ", ")"))
                        .orElse("");
    }

    /** m², without openings, in a dimension system. */
    double opaqueArea(DimensionSystem system) {
        return grossArea(system) - surface.openingArea();
    }

    /** m², with openings, in a dimension system. */
    double grossArea(DimensionSystem system) {
        return system == DimensionSystem.EXTERNAL ? surface.externalArea() : surface.internalArea();
    }

    /** W/K, in a dimension system. */
    double loss(DimensionSystem system) {
        return transmittance * factor * opaqueArea(system);
    }
}
