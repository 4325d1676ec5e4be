package coldseam.envelope;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * A row of the default psi table of ISO 14683 (2007 table A.2, 2017 annex C) that is remembered with confidence.
 *
 * <p>All values are from memory, rounded to 0.05 W/(m·K) in the table itself and deliberately on the safe side; the
 * standard's drawings were not at hand. They stand beside a computed psi as an order of magnitude and prove nothing of it.
 *
 * @param code of the row
 * @param kind of junction, in whose file the row stands
 * @param wall where the wall's insulation lies
 * @param passes whether the insulation goes on unbroken past the junction
 * @param external psi, W/(m·K), external dimensions
 * @param internal psi, W/(m·K), overall internal dimensions: internal floors and partitions counted in, as computed psi is
 */
public record DefaultPsi(
        String code, JunctionKind kind, WallType wall, boolean passes, double external, double internal) {

    /** What to say beside every value. */
    public static final String CAUTION = "tabulated default, rounded to 0.05, from memory";

    /** Where a wall's insulation lies. */
    public enum WallType {
        OUTSIDE,
        MIDDLE,
        INSIDE,
        /** One material that insulates a little throughout, without an insulation layer. */
        LIGHT
    }

    /** All rows, by kind. */
    public static ImmutableList<DefaultPsi> rows() {
        return JunctionKind.all().flatCollect(JunctionKind::defaults);
    }
}
