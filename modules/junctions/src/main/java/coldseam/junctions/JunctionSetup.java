package coldseam.junctions;

import coldseam.assemblies.ground.GroundFloor;
import coldseam.assemblies.ground.SlabOnGround;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * Everything of a house that a detail's section depends on; two junctions with equal setups have equal results.
 *
 * @param first build-up of the first band
 * @param second build-up of the second band; empty where the kind has one surface
 * @param angle degrees between the surfaces, measured indoors
 * @param innerStep m, by which the second's inner face lies farther out than the first's, where they go straight on from one
 *     another; negative where it lies farther in, zero where they meet otherwise
 * @param firstExposure what the first surface faces
 * @param secondExposure what the second faces, or the frame; the first's where nothing else does
 * @param opening for heads, sills, jambs and thresholds
 * @param floorThickness m, of an internal floor that meets the junction; zero where none does
 * @param floorRise m, by which that floor's underside lies above the first band's inner face, where a deck or a roof lies before it;
 *     zero where what carries the deck goes on as the floor
 * @param joists whether that floor is of joists where it bears in masonry
 * @param upstand m, height of a parapet above the roof's outer face; zero without
 * @param sill m, of a door's sill above the outer face of the deck before it; empty elsewhere, and where no house says
 * @param ground what lies under a floor on the ground
 * @param indoorTemperature °C
 * @param outdoorTemperature °C
 * @param firstUse what the first surface is, where the kind leaves that open: a party wall meets walls, roofs and floors; a wall
 *     elsewhere
 * @param materials what the house's own file says of materials, by name
 */
public record JunctionSetup(
        JunctionKind kind,
        Assembly first,
        Optional<Assembly> second,
        double angle,
        double innerStep,
        Exposure firstExposure,
        Exposure secondExposure,
        Optional<Opening> opening,
        double floorThickness,
        double floorRise,
        boolean joists,
        double upstand,
        OptionalDouble sill,
        Optional<GroundBlock> ground,
        double indoorTemperature,
        double outdoorTemperature,
        Body.Use firstUse,
        ImmutableMap<String, Material> materials)
        implements BridgeSetup {

    /** Of surfaces whose inner faces meet, without a house that says where a door's sill lies or what materials are. */
    public JunctionSetup(
            JunctionKind kind,
            Assembly first,
            Optional<Assembly> second,
            double angle,
            Exposure firstExposure,
            Exposure secondExposure,
            Optional<Opening> opening,
            double floorThickness,
            double upstand,
            Optional<GroundBlock> ground,
            double indoorTemperature,
            double outdoorTemperature) {
        this(
                kind,
                first,
                second,
                angle,
                0,
                firstExposure,
                secondExposure,
                opening,
                floorThickness,
                0,
                false,
                upstand,
                OptionalDouble.empty(),
                ground,
                indoorTemperature,
                outdoorTemperature,
                Body.Use.WALL,
                Maps.immutable.empty());
    }

    /** The form of its kind, as it lies on the page: whatever its kind, a floor has the rooms above it. */
    public KindForm form() {
        KindForm form = kind.form();
        return isFloor()
                ? new KindForm(form.meeting(), form.second(), KindForm.Page.SECOND_UP, form.floorLines(), form.ground())
                : form;
    }

    /** What the first surface is called: as its kind does, but for a roof's or a floor's of a kind that leaves open which it is. */
    public String firstName() {
        return firstUse == Body.Use.WALL ? kind.first() : isFloor() ? "floor" : "roof";
    }

    private boolean isFloor() {
        return firstUse == Body.Use.FLOOR || firstUse == Body.Use.OVERHANG;
    }

    @Override
    public ImmutableList<Assembly> assemblies() {
        return Lists.immutable.of(first).newWithAll(second.stream().toList());
    }

    /** The same junction at another angle, degrees. */
    public JunctionSetup at(double degrees) {
        return with(first, second, degrees, innerStep);
    }

    /** The same junction with the second's inner face so much farther out than the first's, m. */
    public JunctionSetup stepped(double metres) {
        return with(first, second, angle, metres);
    }

    /** The same junction between other build-ups. */
    public JunctionSetup between(Assembly newFirst, Optional<Assembly> newSecond) {
        return with(newFirst, newSecond, angle, innerStep);
    }

    private JunctionSetup with(Assembly newFirst, Optional<Assembly> newSecond, double newAngle, double newStep) {
        return new JunctionSetup(
                kind,
                newFirst,
                newSecond,
                newAngle,
                newStep,
                firstExposure,
                secondExposure,
                opening,
                floorThickness,
                floorRise,
                joists,
                upstand,
                sill,
                ground,
                indoorTemperature,
                outdoorTemperature,
                firstUse,
                materials);
    }

    /**
     * The ground of a slab edge (ISO 10211).
     *
     * <p>B' counts from outer face to outer face, as the house's own floor does: half of it is drawn from the wall's outer face,
     * so a long strip's section is half its whole cross-section.
     *
     * @param conductivity W/(m·K)
     * @param floorWidth m, the characteristic dimension B' of the floor, of the walls' outer faces; the ground reaches 2.5 of it
     *     out and down
     * @param wallThickness m, w of ISO 13370: mean of the walls on the floor, whichever of them the section shows
     * @param depth m, of the floor's upper face below the ground outdoors; empty where the floor is no cellar's or it is
     *     not known
     * @param edge insulation along the rim, drawn at every rim
     */
    public record GroundBlock(
            double conductivity,
            double floorWidth,
            double wallThickness,
            OptionalDouble depth,
            Optional<Body.EdgeInsulation> edge) {

        /** Half a strip of the house's B', one metre long. */
        public GroundFloor strip() {
            return new GroundFloor(floorWidth / 2, 1, wallThickness, conductivity);
        }

        /**
         * U of a floor on it by ISO 13370, without edge insulation, W/(m²·K).
         *
         * @param resistance m²·K/W, of its layers
         */
        public double transmittance(double resistance) {
            return SlabOnGround.of(strip(), resistance, Lists.immutable.empty()).transmittance();
        }

        /** Of a strip of this inner width, m, without edge insulation, that is no cellar. */
        public static GroundBlock ofStrip(double conductivity, double innerWidth, double wallThickness) {
            return new GroundBlock(
                    conductivity,
                    innerWidth + 2 * wallThickness,
                    wallThickness,
                    OptionalDouble.empty(),
                    Optional.empty());
        }
    }
}
