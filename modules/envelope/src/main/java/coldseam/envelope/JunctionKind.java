package coldseam.envelope;

import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A kind of junction: all that it decides, read from its file.
 *
 * <p>The first band and the second are ordered: an edge of this kind lists its surfaces so. Where a kind has one surface
 * only (a jamb, a partition), the second name is what meets it.
 */
public final class JunctionKind extends BridgeKind implements Comparable<JunctionKind> {

    private static final ImmutableList<JunctionKind> ALL =
            KindFile.all("junctions", KindFile.OfJunction.class).collect(JunctionKind::new);

    // Those that the shell tells by its geometry; the others are known by their files alone.
    public static final JunctionKind SLAB_EDGE = of("slab edge");
    public static final JunctionKind EXISTING_SLAB_EDGE = of("existing slab edge");
    public static final JunctionKind SLAB_THRESHOLD = of("door threshold on a slab");
    public static final JunctionKind FOUNDATION_WALL_TOP = of("foundation wall to wall above");
    public static final JunctionKind CELLAR_SLAB_EDGE = of("cellar slab to wall");
    public static final JunctionKind UNHEATED_BELOW_EDGE = of("floor over an unheated space");
    public static final JunctionKind CRAWL_SPACE_EDGE = of("crawl space edge");
    public static final JunctionKind STEPPED_FOOTING = of("stepped footing");
    public static final JunctionKind OUTSIDE_CORNER = of("outside corner");
    public static final JunctionKind INSIDE_CORNER = of("inside corner");
    public static final JunctionKind INTERMEDIATE_FLOOR = of("intermediate floor");
    public static final JunctionKind BALLOON_FRAME_AT_FLOOR = of("balloon frame at a floor");
    public static final JunctionKind WALL_CHANGE_AT_FLOOR = of("change of wall at a floor");
    public static final JunctionKind PARTY_WALL = of("party wall");
    public static final JunctionKind WALL_THICKNESS_CHANGE = of("change of wall thickness");
    public static final JunctionKind FLOOR_CHANGE = of("change of floor");
    public static final JunctionKind OVERHANG_EDGE = of("overhang edge");
    public static final JunctionKind WALL_UNDER_OVERHANG = of("wall under an overhang");
    public static final JunctionKind FLOOR_OVER_NEIGHBOUR = of("floor over a neighbour");
    public static final JunctionKind WALL_PAST_NEIGHBOUR = of("wall past a neighbour");
    public static final JunctionKind UNHEATED_NEIGHBOUR = of("unheated neighbour");
    public static final JunctionKind JAMB = of("jamb");
    public static final JunctionKind HEAD = of("head");
    public static final JunctionKind SHUTTER_BOX = of("shutter box");
    public static final JunctionKind SILL = of("sill");
    public static final JunctionKind LIGHT_WELL = of("light well against the wall");
    public static final JunctionKind HEATED_THRESHOLD = of("door threshold over a heated room");
    public static final JunctionKind EAVES_COLD_LOFT = of("eaves under a cold loft");
    public static final JunctionKind EAVES = of("eaves of an insulated roof");
    public static final JunctionKind VERGE = of("verge");
    public static final JunctionKind GABLE_COLD_LOFT = of("gable under a cold loft");
    public static final JunctionKind RIDGE = of("ridge");
    public static final JunctionKind HIP = of("hip");
    public static final JunctionKind VALLEY = of("valley");
    public static final JunctionKind KNEE_WALL = of("knee wall");
    public static final JunctionKind KNEE_WALL_FOOT = of("foot of a knee wall");
    public static final JunctionKind HIGH_EAVES = of("high eaves of a mono-pitch");
    public static final JunctionKind COLLAR = of("slope to collar ceiling");
    public static final JunctionKind DORMER_CHEEK = of("dormer cheek");
    public static final JunctionKind ABUTMENT = of("abutment");
    public static final JunctionKind ROOFLIGHT = of("rooflight");
    public static final JunctionKind FLAT_ROOF_EDGE = of("flat roof edge");
    public static final JunctionKind PARAPET = of("parapet");
    public static final JunctionKind WALL_TO_TERRACE = of("wall to terrace");
    public static final JunctionKind TERRACE_EDGE = of("terrace edge over a room");
    public static final JunctionKind TERRACE_TO_ROOF = of("terrace to roof");
    public static final JunctionKind TERRACE_THRESHOLD = of("door threshold on a terrace");
    public static final JunctionKind ROOF_STEP = of("step between heights");

    private static final String WALL = "wall";

    private final KindFile.OfJunction file;
    private final ImmutableList<DefaultPsi> defaults;

    private JunctionKind(KindFile.OfJunction file) {
        super(file);
        this.file = file;
        this.defaults = file.defaults()
                .collect(row ->
                        new DefaultPsi(row.row(), this, row.wall(), row.passes(), row.external(), row.internal()));
    }

    /** How reports say where an edge of a kind is. */
    public enum Whereabouts {
        /** The side, and what meets what. */
        MEETING,
        /** The two surfaces it lies between. */
        BETWEEN,
        /** The corner of the house and the storey. */
        CORNER,
        /** The two surfaces and the storey. */
        INSIDE_CORNER,
        /** The side and the storeys above and below. */
        STOREYS
    }

    /** How a floor between two storeys meets its wall. */
    public enum StoreyFloor {
        /** It bears in the wall, or the wall of each storey stops at it. */
        BEARS_IN_THE_WALL,
        /** The studs run past it. */
        PASSED_BY_THE_STUDS
    }

    /**
     * A junction a builder would build, for looking at options before there is a house.
     *
     * @param first build-up, as the file of typical build-ups names it
     * @param second build-up; empty where the kind has one surface
     * @param angle degrees between the surfaces, measured indoors
     * @param beyond what lies behind the first surface; empty for open air, or the ground where the section stands in it
     * @param beyondSecond what lies behind the second
     * @param floor thickness of the internal floor that meets it, m; 0 without
     * @param upstand height of the parapet, m; 0 without
     */
    @Noun("a typical junction")
    public record Typical(
            String first,
            Optional<String> second,

            @Unit(Dimension.ANGLE) @Bounds(atLeast = "10 °", atMost = "350 °")
            double angle,

            Optional<Exposure> beyond,
            Optional<Exposure> beyondSecond,

            @Default("0 mm") @Unit(Dimension.THICKNESS) @Bounds(atLeast = "0 mm", atMost = "1 m")
            double floor,

            @Default("0 mm") @Unit(Dimension.THICKNESS) @Bounds(atLeast = "0 mm", atMost = "2 m")
            double upstand) {}

    /** Every kind, in its order. */
    public static ImmutableList<JunctionKind> all() {
        return ALL;
    }

    /**
     * The kind of this plain name.
     *
     * @throws IllegalArgumentException where there is none
     */
    public static JunctionKind of(String label) {
        return named(label, ALL, "junction");
    }

    /** Its place among the kinds, from 0. */
    public int ordinal() {
        return ALL.indexOf(this);
    }

    /** What the first band is called in a detail file. */
    public String first() {
        return file.first();
    }

    /** What the second band is called in a detail file. */
    public String second() {
        return file.second();
    }

    /** The bands whose layers a drawing may paint, by name: those with a build-up. */
    public ImmutableList<String> bands() {
        return form().twoBuildUps() ? Lists.immutable.of(first(), besideFirst()) : Lists.immutable.of(first());
    }

    /** The keys of ranges, first axis first. */
    public ImmutableList<String> axes() {
        return form().meeting() == KindForm.Meeting.END_TO_END
                ? Lists.immutable.of("across", "along")
                : Lists.immutable.of(first(), besideFirst());
    }

    /** What the second band's lines are called: a door stands in the place of a wall. */
    private String besideFirst() {
        return form().second() == KindForm.Second.DOOR ? WALL : second();
    }

    /** Which way the surfaces of {@link #bands()} look. */
    public ImmutableList<Facing> faces() {
        return file.faces();
    }

    public KindForm form() {
        return file.form();
    }

    public Whereabouts where() {
        return file.where();
    }

    public Typical typical() {
        return file.typical();
    }

    /** Whether a seam of this kind that a house file lists runs up its surface, not across. */
    public boolean uprightSeam() {
        return file.uprightSeam();
    }

    /** The length of a detail that is the height of a wall which no surface counts, so that psi holds all it loses. */
    public Optional<String> wallInPsi() {
        return file.wallInPsi();
    }

    /** Whether it is a door's threshold, whose section shows the seam as well that the door stands on. */
    public boolean threshold() {
        return file.threshold();
    }

    /** Whether it is a seam of what meets, indoors, a wall that is insulated inside. */
    public boolean atInsideInsulation() {
        return file.atInsideInsulation();
    }

    /** Whether the roof's parapet stands on it. */
    public boolean parapet() {
        return file.parapet();
    }

    /** Whether the wall beside its floor stands free, so that the ground ends at this floor however deep that lies elsewhere. */
    public boolean groundAtFloor() {
        return file.groundAtFloor();
    }

    /** How its floor between two storeys meets the wall; empty where there is none. */
    public Optional<StoreyFloor> storeyFloor() {
        return file.storeyFloor();
    }

    /** Its rows in the table of ISO 14683. */
    public ImmutableList<DefaultPsi> defaults() {
        return defaults;
    }

    /** In their order. */
    @Override
    public int compareTo(JunctionKind other) {
        return Integer.compare(ordinal(), other.ordinal());
    }
}
