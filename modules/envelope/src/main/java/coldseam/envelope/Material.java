package coldseam.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
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
 * @param carries what a layer of it carries by itself
 * @param isAir whether it is air, whose resistance follows from the layer it fills (ISO 6946) and not from a conductivity: a layer
 *     of it is an air layer, whatever its role
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
        Carries carries,
        boolean isAir,
        OptionalDouble within,
        Provenance provenance) {

    /** One of which nothing says that it can control air, water or vapour, or bears ground, splash, load or rain. */
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
                Carries.SPANS,
                false,
                OptionalDouble.empty(),
                provenance);
    }

    /** One of which no more is said than how it conducts, W/(m·K), and whether it insulates. */
    public static Material conducting(String name, double conductivity, boolean insulates, String source) {
        OptionalDouble unsaid = OptionalDouble.empty();
        Provenance declared = new Provenance(source, Provenance.Sureness.DECLARED);
        return new Material(name, conductivity, unsaid, unsaid, unsaid, insulates, declared);
    }

    /** What a layer of a material carries by itself, by its kind; how thick it must be for that nobody asks here. */
    public enum Carries {
        /** Batts and loose fill: they carry nothing, and not so much as a coat or a sheet glued on holds on them. */
        FILL,
        /** Renders, plasters and sheets that are glued or torched on: they carry nothing, and want something firm along their whole face. */
        COAT,
        /** Linings, screeds, foils and tiles: something else carries them. */
        NOTHING,
        /** Masonry: it stands, and spans rooms only as a vault or with steel in it. */
        STANDS,
        /** Concrete and metal, and what says nothing. */
        SPANS,
        /** Wood that carries: joists bear on it, and wood spans its openings; concrete in its place loses more. */
        TIMBER;

        /** Whether it carries nothing else. */
        public boolean nothing() {
            return this == FILL || this == COAT || this == NOTHING;
        }
    }

    /** W/(m·K); nothing that air gets into conducts as little, aerogels included (common practice, no source). */
    private static final double VACUUM_UP_TO = 0.012;

    /** The same material with another conductivity, W/(m·K). */
    public Material conducting(double other) {
        return new Material(
                name,
                other,
                vapourResistanceFactor,
                density,
                compressiveStrength,
                insulates,
                insulatesSource,
                controls,
                bears,
                carries,
                isAir,
                within,
                provenance);
    }

    /** The conductivity, W/(m·K), up to which a material insulates unless it says otherwise; our own definition. */
    public static final double INSULATES_UP_TO = 0.065;

    /**
     * The conductivity, W/(m·K), up to which a source may say that a material counts as insulation: that of wood wool boards
     * and compacted fills; our own definition.
     */
    public static final double INSULATES_AT_MOST = 0.10;

    /** Whether a source says that a layer of it can control this. */
    public boolean canControl(Control control) {
        return controls.containsKey(control);
    }

    /** Whether a source says that it bears this as insulation. */
    public boolean canBear(Duty duty) {
        return bears.containsKey(duty);
    }

    /** Whether it is wood that carries. */
    public boolean timber() {
        return carries == Carries.TIMBER;
    }

    /** Whether it holds a vacuum, which a screw ends. */
    public boolean holdsVacuum() {
        return !isAir && conductivity < VACUUM_UP_TO;
    }
}
