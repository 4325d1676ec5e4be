package coldseam.envelope;

import coldseam.files.Bounds;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * One layer of an assembly.
 *
 * @param material what fills it (between the framing, where there is framing)
 * @param thickness m, greater than zero
 * @param framing what bridges it
 * @param air how an air layer is ventilated; empty for solid layers
 * @param taper how its thickness varies; empty where it is even
 * @param controls what it controls: its air, water and vapour duties, and heat for the continuous insulation
 */
public record Layer(
        Material material,
        double thickness,
        Role role,
        Optional<Framing> framing,
        Optional<AirLayer> air,
        Optional<Taper> taper,
        ImmutableSet<Control> controls) {

    /** The same layer at another thickness, m. */
    public Layer thick(double other) {
        return new Layer(material, other, role, framing, air, taper, controls);
    }

    /** Whether it is another's like on site: whatever both are named for, and whatever lining both have. */
    boolean isBuiltLike(Layer other) {
        boolean lining = role == Role.FINISH && other.role == Role.FINISH;
        return thickness == other.thickness
                && (lining
                        || role == other.role
                                && material.equals(other.material)
                                && framing.equals(other.framing)
                                && air.equals(other.air)
                                && taper.equals(other.taper));
    }

    /** m; one layer measured twice. */
    private static final double MEASURED_ALIKE = 0.001;

    /** Of members counted in one layer twice: plates and studs at openings are seldom all counted (judgement). */
    private static final double COUNTED_ALIKE = 0.8;

    private Material carrying() {
        return framing.map(Framing::material).orElse(material);
    }

    /** What carries in it: its members, where it has some. */
    public String carrier() {
        return carrying().name() + (framing.isPresent() ? " members" : "");
    }

    /**
     * Whether what carries in it is there still in another: members may be made deeper, and their bays filled, and none goes; a slab may
     * be topped; masonry stays as thick as it is.
     */
    boolean carriesOnIn(Layer planned) {
        double more = planned.thickness - thickness;
        return planned.carrier().equals(carrier())
                && planned.carrying().conductivity() == carrying().conductivity()
                && more > -MEASURED_ALIKE
                && planned.ofMembers() >= COUNTED_ALIKE * ofMembers()
                && (carrying().carries() != Material.Carries.STANDS || more < MEASURED_ALIKE);
    }

    /** m³ of members in each m² of it; none where nothing bridges it. */
    private double ofMembers() {
        return thickness * framing.map(Framing::share).orElse(0.0);
    }

    /** Whether outdoor air runs through it, so that what lies outside it holds neither heat nor vapour back (ISO 6946). */
    public boolean isWellVentilated() {
        return air.filter(each -> each.ventilation() == Ventilation.WELL_VENTILATED)
                .isPresent();
    }

    /** Whether it is an air layer with openings, from which water runs out. */
    boolean drains() {
        return air.filter(each -> each.ventilation() != Ventilation.UNVENTILATED)
                .isPresent();
    }

    /** W/(m·K); what conducts less and has no members carries nothing: straw bales conduct more (judgement). */
    public static final double CARRIES_NOTHING = 0.05;

    /**
     * Whether it is insulation: a solid layer of a material that insulates, whose thickness counts. What fills the cavity between
     * two leaves that carry is none: floors and lintels go through it.
     */
    public boolean insulates() {
        return air.isEmpty() && role != Role.MEMBRANE && material.insulates() && !fillsCavity();
    }

    /** Whether it lies between two leaves that carry, and is of the structure without carrying. */
    public boolean fillsCavity() {
        return role == Role.STRUCTURE && framing.isEmpty() && material.conductivity() <= CARRIES_NOTHING;
    }

    /**
     * Members that bridge a layer.
     *
     * @param material of the members
     * @param share of the area, 0 to 1, both excluded
     * @param spaced what the share follows from, where it is given so
     */
    public record Framing(Material material, double share, Optional<Spaced> spaced) {

        /** By their share alone. */
        public Framing(Material material, double share) {
            this(material, share, Optional.empty());
        }

        /** By how they stand. */
        public Framing(Material material, Spaced spaced) {
            this(material, spaced.share(), Optional.of(spaced));
        }
    }

    /**
     * How members stand.
     *
     * @param width m, of each, across the layer's area
     * @param spacing m, from one's middle to the next one's, more than the width
     * @param besides what plates, lintels, studs at openings and blocking take besides, a share of the layer's area, 0 to 1
     */
    public record Spaced(double width, double spacing, double besides) {

        /** Of the layer's area, 0 to 1. */
        public double share() {
            return width / spacing + besides;
        }
    }

    /**
     * How an air layer is ventilated, and how its faces radiate.
     *
     * @param ventilation by the openings' area (ISO 6946)
     * @param openings mm² per m length (or per m² where horizontal); only for slightly ventilated layers
     * @param lowEmissivity emissivity of its one bright face, 0 to 1; 0.9 where both are dull
     */
    public record AirLayer(Ventilation ventilation, double openings, double lowEmissivity) {}

    /** Ventilation of an air layer. */
    public enum Ventilation {
        UNVENTILATED,
        SLIGHTLY_VENTILATED,
        WELL_VENTILATED
    }

    /** A layer cut to falls; the layer's thickness is its thinnest, as drawn. */
    @Noun("a taper")
    @Doc("How the thickness of a layer cut to falls varies.")
    public record Taper(
            @Doc("Plan shape of the field.") Shape shape,

            @Doc("Thickness at the thickest place.") @Unit(Dimension.THICKNESS) @Bounds(above = "0 mm", atMost = "2 m")
            double thickest) {

        /** The plan shape of a tapered field. */
        public enum Shape {
            RECTANGLE,
            TRIANGLE_THICKEST_AT_APEX,
            TRIANGLE_THINNEST_AT_APEX
        }
    }
}
