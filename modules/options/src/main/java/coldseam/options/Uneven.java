package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSource;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.assumed.Carrying;
import coldseam.envelope.Assembly;
import coldseam.envelope.Material;
import coldseam.envelope.PointKind;
import coldseam.envelope.shell.Surface;
import coldseam.options.Renovation.Unlike;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What one of two files has and the other has not, or says otherwise, so that it counts as saved though nothing is built for it.
 *
 * @param before audit of the first
 * @param after audit of the second
 */
public record Uneven(Audit before, Audit after) {

    /** m²; windows measured anew differ by less. */
    private static final double OPENING = 0.01;

    /** What of it there is. */
    ImmutableList<Unlike> unlike() {
        MutableList<Unlike> unlike = Lists.mutable.empty();
        if (conductivities().notEmpty()) {
            unlike.add(Unlike.CONDUCTIVITIES);
        }
        if (fewerPoints().notEmpty()) {
            unlike.add(Unlike.POINTS_LEFT_OUT);
        }
        if (unfastened().notEmpty()) {
            unlike.add(Unlike.FASTENERS_LEFT_OUT);
        }
        if (openings(after) < openings(before) - OPENING) {
            unlike.add(Unlike.OPENINGS_LEFT_OUT);
        }
        if (ownPsi(before).notEmpty() || ownPsi(after).notEmpty()) {
            unlike.add(Unlike.OWN_PSI);
        }
        if (notChosen(before).notEmpty() || notChosen(after).notEmpty()) {
            unlike.add(Unlike.NOT_CHOSEN);
        }
        return unlike.toImmutable();
    }

    /**
     * A material of one name in both files.
     *
     * @param before W/(m·K), in the first
     * @param after W/(m·K), in the second
     */
    public record Conducts(String material, double before, double after) {}

    /** Materials of one name that conduct another amount. */
    public ImmutableList<Conducts> conductivities() {
        ImmutableMap<String, Material> fresh =
                materials(after).groupByUniqueKey(Material::name).toImmutable();
        return materials(before)
                .select(old ->
                        fresh.containsKey(old.name()) && fresh.get(old.name()).conductivity() != old.conductivity())
                .collect(old -> new Conducts(
                        old.name(), old.conductivity(), fresh.get(old.name()).conductivity()));
    }

    private static ImmutableList<Material> materials(Audit audit) {
        return audit.shell()
                .surfaces()
                .flatCollect(surface -> surface.assembly().stream().toList())
                .flatCollect(Assembly::materials)
                .distinct()
                .toImmutableSortedListBy(Material::name);
    }

    /** Kinds of points of which the second has fewer than the first. */
    public ImmutableList<PointKind> fewerPoints() {
        return before.points()
                .collect(PointRow::kind)
                .distinct()
                .select(kind -> count(after, kind) < count(before, kind));
    }

    /** Build-ups of the second whose boards hang on nothing that it lists, on surfaces that the first has fasteners for. */
    public ImmutableList<Assembly> unfastened() {
        ImmutableSet<String> fastened = before.shell()
                .surfaces()
                .select(surface ->
                        surface.assembly().flatMap(Assembly::fasteners).isPresent())
                .collect(Surface::name)
                .toImmutableSet();
        return Carrying.UNFASTENED
                .in(after)
                .select(assembly -> after.shell()
                        .surfaces()
                        .anySatisfy(surface -> fastened.contains(surface.name())
                                && surface.assembly().filter(assembly::equals).isPresent()));
    }

    /** How many points of a kind a house has. */
    public static int count(Audit audit, PointKind kind) {
        return (int) audit.points().select(row -> row.kind() == kind).sumOfInt(PointRow::number);
    }

    /** m², of all windows and doors of a house. */
    public static double openings(Audit audit) {
        return audit.house().openings().sumOfDouble(opening -> opening.width() * opening.height());
    }

    /** Seams of one of the houses whose psi is its file's own, and is not the same one in the other's. */
    public ImmutableList<JunctionRow> ownPsi(Audit audit) {
        ImmutableSet<String> other = ownPsis(audit == before ? after : before)
                .collect(Uneven::psiAtItsPlace)
                .toImmutableSet();
        return ownPsis(audit).reject(row -> other.contains(psiAtItsPlace(row)));
    }

    private static ImmutableList<JunctionRow> ownPsis(Audit audit) {
        return audit.junctions().select(row -> row.source() instanceof BridgeSource.Own);
    }

    private static String psiAtItsPlace(JunctionRow row) {
        return row.name() + " " + row.psi().middle();
    }

    /** Seams and points of a house for which the worst option stands in. */
    public static ImmutableList<BridgeRow> notChosen(Audit audit) {
        return audit.bridges().select(row -> row.source() instanceof BridgeSource.StandIn);
    }
}
