package coldseam.junctions.atlas;

import coldseam.envelope.Assembly;
import coldseam.junctions.InsulationThickness;
import coldseam.junctions.JunctionSetup;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A junction whose insulation is made thicker on one surface, or on both where both are one build-up.
 *
 * @param setup as given
 * @param which surfaces change
 */
public record Sweep(JunctionSetup setup, Which which) {

    /** The surfaces whose insulation changes. */
    public enum Which {
        FIRST,
        SECOND,
        BOTH
    }

    /** m; 0 to 400 mm, closer where curves bend. */
    public static final ImmutableList<Double> THICKNESSES = Lists.immutable.of(0.0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4);

    /** The sweeps of a junction; a surface without an insulation layer has none. */
    public static ImmutableList<Sweep> of(JunctionSetup setup) {
        if (setup.second().isPresent() && setup.second().get().equals(setup.first())) {
            return insulated(setup.first())
                    ? Lists.immutable.of(new Sweep(setup, Which.BOTH))
                    : Lists.immutable.empty();
        }
        MutableList<Sweep> sweeps = Lists.mutable.empty();
        if (insulated(setup.first())) {
            sweeps.add(new Sweep(setup, Which.FIRST));
        }
        if (setup.second().map(Sweep::insulated).orElse(false)) {
            sweeps.add(new Sweep(setup, Which.SECOND));
        }
        return sweeps.toImmutable();
    }

    private static boolean insulated(Assembly assembly) {
        return InsulationThickness.of(assembly) > 0;
    }

    /** The build-up that changes. */
    public Assembly changed() {
        return which == Which.SECOND ? setup.second().orElseThrow() : setup.first();
    }

    /** What the changing surface is called, such as "wall". */
    public String surface() {
        return switch (which) {
            case FIRST -> setup.kind().first();
            case SECOND ->
                setup.kind().second().equals("door") ? "wall" : setup.kind().second();
            case BOTH -> setup.kind().first() + " and " + setup.kind().second();
        };
    }

    /** m, as given. */
    public double given() {
        return InsulationThickness.of(changed());
    }

    /** The junction with so much insulation, m; empty where nothing would be left of a surface. */
    public Optional<JunctionSetup> at(double thickness) {
        Optional<Assembly> changed = InsulationThickness.with(changed(), thickness);
        return changed.map(assembly -> new JunctionSetup(
                setup.kind(),
                which == Which.SECOND ? setup.first() : assembly,
                which == Which.FIRST ? setup.second() : Optional.of(assembly),
                setup.angle(),
                setup.firstExposure(),
                setup.secondExposure(),
                setup.opening(),
                setup.floorThickness(),
                setup.upstand(),
                setup.ground(),
                setup.indoorTemperature(),
                setup.outdoorTemperature()));
    }
}
