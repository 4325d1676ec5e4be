package coldseam.envelope;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Maps;

/**
 * A homogeneous material.
 *
 * @param name unique in its library
 * @param conductivity design thermal conductivity, W/(m·K), greater than zero
 * @param vapourResistanceFactor mu, 1 or more; infinite for metals and glass
 * @param density kg/m³
 * @param compressiveStrength Pa, at 10 % strain
 * @param insulates whether it counts as insulation for the pen line
 * @param insulatesSource the source by which it counts as insulation though it conducts more than {@link #INSULATES_UP_TO};
 *     empty where the conductivity decides
 * @param controls what a layer of it can control if it is joined up, each with the source that says so; never heat
 * @param bears what places it bears as insulation, each with the source that says so
 * @param within share of the conductivity by which it may be off to either side; empty where nothing is said
 * @param provenance where the conductivity comes from
 */
public record Material(
        String name,
        double conductivity,
        OptionalDouble vapourResistanceFactor,
        OptionalDouble density,
        OptionalDouble compressiveStrength,
        boolean insulates,
        Optional<String> insulatesSource,
        ImmutableMap<Control, String> controls,
        ImmutableMap<Duty, String> bears,
        OptionalDouble within,
        Provenance provenance) {

    /** One of which nothing says that it can control air, water or vapour, or bears ground, splash or load. */
    public Material(
            String name,
            double conductivity,
            OptionalDouble vapourResistanceFactor,
            OptionalDouble density,
            OptionalDouble compressiveStrength,
            boolean insulates,
            Provenance provenance) {
        this(
                name,
                conductivity,
                vapourResistanceFactor,
                density,
                compressiveStrength,
                insulates,
                Optional.empty(),
                Maps.immutable.empty(),
                Maps.immutable.empty(),
                OptionalDouble.empty(),
                provenance);
    }

    /** The conductivity, W/(m·K), up to which a material insulates unless it says otherwise; our own definition. */
    public static final double INSULATES_UP_TO = 0.065;

    /**
     * The conductivity, W/(m·K), up to which a source may say that a material counts as insulation: that of wood wool boards
     * and compacted fills; our own definition.
     */
    public static final double INSULATES_AT_MOST = 0.10;

    /** The built-in material that is no solid: a layer of it is an air layer, whatever its role. */
    private static final String AIR = "air";

    /** Whether it is air, whose resistance follows from the layer it fills (ISO 6946) and not from a conductivity. */
    public boolean isAir() {
        return name.equals(AIR);
    }

    /** Words in the names of wood that carries. */
    private static final Pattern TIMBER =
            Pattern.compile("\\b(softwood|hardwood|timber|glulam|logs?|spruce|pine|fir|larch|oak|beech)\\b");

    /** W/(m·K); hardwood has 0.18, and what conducts more is none, whatever it is called (judgement). */
    private static final double TIMBER_AT_MOST = 0.25;

    /** Whether its name says that it is timber, and it conducts no more than that; boards of fibres or chips are none. */
    public boolean isTimber() {
        return TIMBER.matcher(name.toLowerCase(Locale.ROOT)).find() && !insulates && conductivity <= TIMBER_AT_MOST;
    }

    /** Whether a source says that a layer of it can control this. */
    public boolean canControl(Control control) {
        return controls.containsKey(control);
    }

    /** Whether a source says that it bears this as insulation. */
    public boolean canBear(Duty duty) {
        return bears.containsKey(duty);
    }

    /** This with what another material can control and bears, where nothing is said of this one. */
    public Material ableLike(Material other) {
        return new Material(
                name,
                conductivity,
                vapourResistanceFactor,
                density,
                compressiveStrength,
                insulates,
                insulatesSource,
                controls.notEmpty() ? controls : other.controls,
                bears.notEmpty() ? bears : other.bears,
                within,
                provenance);
    }
}
