package coldseam.envelope;

import coldseam.files.OneOf;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What kind of thermal bridge something is: a junction along an edge, something at a point of a surface, or a corner where edges
 * meet.
 *
 * <p>All a kind decides stands in its own file in the folder {@code kinds} of this module. There is one object of each kind.
 */
public abstract sealed class BridgeKind implements OneOf permits JunctionKind, PointKind, CornerKind {

    private final KindFile file;

    BridgeKind(KindFile file) {
        this.file = file;
    }

    /** Which way a surface looks from indoors. */
    public enum Facing {
        UP,
        SIDE,
        DOWN;

        /** Of a unit normal's height: level enough that nothing stands beside it (judgement). */
        private static final double LEVEL = 0.95;

        /**
         * Whether a surface looks this way; what is aslant may look either.
         *
         * @param up height of its outward unit normal, -1 to 1
         */
        public boolean isOf(double up) {
            return switch (this) {
                case SIDE -> Math.abs(up) < LEVEL;
                case UP -> up > 1 - LEVEL;
                case DOWN -> up < LEVEL - 1;
            };
        }
    }

    /** Every kind, junctions first, corners last. */
    public static ImmutableList<BridgeKind> every() {
        return Lists.immutable
                .<BridgeKind>withAll(JunctionKind.all())
                .newWithAll(PointKind.all())
                .newWithAll(CornerKind.all());
    }

    /** The one of this name, or a refusal that lists all there are. */
    static <K extends BridgeKind> K named(String label, ImmutableList<K> all, String sort) {
        return all.detectOptional(each -> each.label().equals(label))
                .orElseThrow(() -> new IllegalArgumentException("no kind of " + sort + " is called \"" + label
                        + "\"; there are: " + all.collect(BridgeKind::label).makeString(", ")));
    }

    /** The plain name, as files and reports write it. */
    @Override
    public final String label() {
        return file.label();
    }

    /** The hold points it belongs to. */
    public final ImmutableList<Stop> holdPoints() {
        return file.holdPoints();
    }

    /** From the name, so that no order of a set changes from run to run; there is one object of each name. */
    @Override
    public final int hashCode() {
        return label().hashCode();
    }

    @Override
    public final boolean equals(Object other) {
        return this == other;
    }

    @Override
    public final String toString() {
        return label();
    }
}
