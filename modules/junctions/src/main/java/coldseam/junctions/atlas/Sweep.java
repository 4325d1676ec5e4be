package coldseam.junctions.atlas;

import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.files.quantity.UnitSystem;
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
 * @param origin where in a house the junction is, in words; empty without a house
 */
public record Sweep(JunctionSetup setup, Which which, String origin) {

    /** The surfaces whose insulation changes. */
    public enum Which {
        FIRST,
        SECOND,
        BOTH
    }

    /** Millimetres, closer where curves bend. */
    private static final ImmutableList<Double> MILLIMETRES =
            Lists.immutable.of(0.0, 50.0, 100.0, 150.0, 200.0, 300.0, 400.0);

    /** Inches, likewise. */
    private static final ImmutableList<Double> INCHES = Lists.immutable.of(0.0, 2.0, 4.0, 6.0, 8.0, 12.0, 16.0);

    private static final double METRES_PER_INCH = 0.0254;

    /** m, the steps of a sweep: 0 to 400 mm, or for US units whole inches, 0 to 16. */
    public static ImmutableList<Double> thicknesses(UnitSystem units) {
        return units == UnitSystem.US
                ? INCHES.collect(each -> each * METRES_PER_INCH)
                : MILLIMETRES.collect(each -> each / 1000);
    }

    /** The sweeps of a junction; a surface without an insulation layer has none. */
    public static ImmutableList<Sweep> of(JunctionSetup setup, String origin) {
        if (setup.second().isPresent() && setup.second().get().equals(setup.first())) {
            return insulated(setup.first())
                    ? Lists.immutable.of(new Sweep(setup, Which.BOTH, origin))
                    : Lists.immutable.empty();
        }
        MutableList<Sweep> sweeps = Lists.mutable.empty();
        if (insulated(setup.first())) {
            sweeps.add(new Sweep(setup, Which.FIRST, origin));
        }
        if (setup.second().map(Sweep::insulated).orElse(false)) {
            sweeps.add(new Sweep(setup, Which.SECOND, origin));
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
            case SECOND -> setup.kind().bands().getLast();
            case BOTH -> setup.kind().first() + " and " + setup.kind().second();
        };
    }

    /** m, as given. */
    public double given() {
        return InsulationThickness.of(changed());
    }

    /**
     * The junction with so much insulation, m; empty where nothing would be left of a surface. Boards inside a wall grow into the
     * room: what carries stays where it stands on the other wall.
     */
    public Optional<JunctionSetup> at(double thickness) {
        return InsulationThickness.with(changed(), thickness).map(assembly -> {
            JunctionSetup changed = setup.between(
                    which == Which.SECOND ? setup.first() : assembly,
                    which == Which.FIRST ? setup.second() : Optional.of(assembly));
            KindForm form = setup.kind().form();
            boolean goOn = form.twoSurfaces()
                    && form.meeting() == KindForm.Meeting.END_TO_END
                    && setup.kind().faces().allSatisfy(BridgeKind.Facing.SIDE::equals);
            double inwards = insideStructure(assembly) - insideStructure(changed());
            return goOn && which != Which.BOTH
                    ? changed.stepped(setup.innerStep() + (which == Which.FIRST ? inwards : -inwards))
                    : changed;
        });
    }

    /** m, of the layers inside all that carries. */
    private static double insideStructure(Assembly assembly) {
        return assembly.layers()
                .take(Math.max(0, assembly.layers().detectIndex(layer -> layer.role() == Role.STRUCTURE)))
                .sumOfDouble(Layer::thickness);
    }
}
