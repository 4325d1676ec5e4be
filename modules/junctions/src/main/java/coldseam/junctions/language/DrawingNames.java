package coldseam.junctions.language;

import coldseam.envelope.Control;
import coldseam.envelope.CornerKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Role;
import coldseam.files.Words;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;

/**
 * The names a drawing of a kind may use, and their values in a junction.
 *
 * <p>{@code B.inside}, {@code B.outside}, {@code B.ROLE.inside} and {@code B.ROLE.outside} for each band B and role;
 * {@code B.air.inside} and so on for the layer that it names for air, water or vapour control;
 * {@code storey floor.near} and {@code .far} where an internal floor lies behind the first band; near and far faces of
 * what meets a single surface; the faces, edge and glass of a frame; {@code ground.top} where the section stands in the
 * ground; {@code upstand}; end to end {@code seam} and {@code bend}, and {@code lean}
 * where two surfaces cross.
 */
public final class DrawingNames {

    public static final String STOREY_FLOOR = "storey floor";
    public static final String UPSTAND = "upstand";

    /** What floors bear on: a band's structure, of a cavity wall its inner leaf. */
    public static final String BEARING = "bearing";

    /** What the drawing of a point calls the surface it goes through. */
    public static final String SURFACE = "surface";

    /** The line across the first band at which the ground lies outdoors. */
    public static final String GROUND_TOP = "ground.top";

    public static final String SEAM = "seam";
    public static final String BEND = "bend";
    public static final String LEAN = "lean";

    /** The key of the parameter that gives a thing's thickness where the house does not. */
    public static final String THICKNESS = "thickness";

    /** The key of the parameter that gives a cellar floor's depth below the ground where the house does not. */
    public static final String DEPTH = "depth";

    /** The key of the parameter that gives the height of a door's sill above the deck where the house does not. */
    public static final String UPTURN = "upturn";

    private DrawingNames() {}

    public static String word(Role role) {
        return Words.word(role);
    }

    /** Every name of a kind with what it measures. */
    public static MutableMap<String, Measured> of(JunctionKind kind) {
        MutableMap<String, Measured> names = Maps.mutable.empty();
        KindForm form = kind.form();
        boolean crossing = form.meeting() == KindForm.Meeting.CROSSING;
        band(names, kind.first(), Measured.FIRST);
        if (form.twoSurfaces()) {
            band(names, kind.second(), crossing ? Measured.SECOND : Measured.FIRST);
        }
        if (form.second() == KindForm.Second.DOOR) {
            band(names, kind.bands().getLast(), Measured.SECOND);
            names.put("door.inside", Measured.SECOND);
            names.put("door.outside", Measured.SECOND);
            names.put("door.sill", Measured.FIRST);
        }
        if (form.second() == KindForm.Second.FRAME) {
            names.put("frame.inside", Measured.FIRST);
            names.put("frame.outside", Measured.FIRST);
            names.put("frame.edge", Measured.SECOND);
            names.put("frame.glass", Measured.SECOND);
        }
        if (form.second() == KindForm.Second.THING) {
            names.put(kind.second() + ".near", Measured.SECOND);
            names.put(kind.second() + ".far", Measured.SECOND);
        }
        if (form.floorLines()) {
            names.put(STOREY_FLOOR + ".near", crossing ? Measured.FIRST : Measured.SECOND);
            names.put(STOREY_FLOOR + ".far", crossing ? Measured.FIRST : Measured.SECOND);
        }
        if (form.ground()) {
            names.put(GROUND_TOP, Measured.FIRST);
        }
        names.put(UPSTAND, Measured.LENGTH);
        if (!crossing) {
            names.put(SEAM, Measured.SECOND);
            names.put(BEND, Measured.NUMBER);
        } else if (form.twoSurfaces()) {
            names.put(LEAN, Measured.NUMBER);
        }
        return names;
    }

    /** Every name of a surface that something goes through, with what it measures; its lines go without the band's name. */
    public static MutableMap<String, Measured> ofSurface() {
        MutableMap<String, Measured> names = Maps.mutable.empty();
        names.put("inside", Measured.DEPTH);
        names.put("outside", Measured.DEPTH);
        for (Role role : Role.values()) {
            names.put(word(role) + ".inside", Measured.DEPTH);
            names.put(word(role) + ".outside", Measured.DEPTH);
        }
        return names;
    }

    /** What lines of a corner's three surfaces measure. */
    public static final ImmutableList<Measured> AXES =
            Lists.immutable.of(Measured.FIRST, Measured.SECOND, Measured.THIRD);

    /** Every name of a kind of corner with what it measures: the lines of its three surfaces. */
    public static MutableMap<String, Measured> of(CornerKind kind) {
        MutableMap<String, Measured> names = Maps.mutable.empty();
        kind.surfaces().forEachWithIndex((surface, axis) -> band(names, surface, AXES.get(axis)));
        return names;
    }

    /** Layers that a surface names some layer for, besides heat. */
    public static final ImmutableList<Control> CONTROLS =
            Lists.immutable.of(Control.AIR, Control.WATER, Control.VAPOUR);

    public static String word(Control control) {
        return Words.word(control);
    }

    private static void band(MutableMap<String, Measured> names, String band, Measured axis) {
        names.put(band + ".inside", axis);
        names.put(band + ".outside", axis);
        names.put(band + "." + BEARING + ".outside", axis);
        for (Role role : Role.values()) {
            names.put(band + "." + word(role) + ".inside", axis);
            names.put(band + "." + word(role) + ".outside", axis);
        }
        for (Control control : CONTROLS) {
            names.put(band + "." + word(control) + ".inside", axis);
            names.put(band + "." + word(control) + ".outside", axis);
        }
    }
}
