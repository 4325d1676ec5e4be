package coldseam.envelope.shell.mesh;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.function.IntUnaryOperator;

/**
 * A junction between two facets before it is named.
 *
 * @param first facet of the first band, index
 * @param second facet of the second band, index
 * @param from one end; from → to runs with the first facet's outline
 * @param to the other end
 * @param externalLength m
 * @param internalLength m, along the edge; negative where a surface ends inside its neighbours' thickness
 * @param angle degrees, measured indoors
 * @param firstSetBack m
 * @param secondSetBack m
 */
public record Joint(
        JunctionKind kind,
        int first,
        int second,
        Vertex from,
        Vertex to,
        double externalLength,
        double internalLength,
        double angle,
        double firstSetBack,
        double secondSetBack) {

    /**
     * Whether {@code next} is the same junction's next piece.
     *
     * @param whole for each facet the first of those it makes one surface with
     */
    public boolean continues(Joint next, IntUnaryOperator whole) {
        return kind == next.kind
                && whole.applyAsInt(first) == whole.applyAsInt(next.first)
                && whole.applyAsInt(second) == whole.applyAsInt(next.second)
                && to.equals(next.from)
                && from.goesStraight(to, next.to);
    }

    /** Both pieces as one, which goes by the facets of the longer. */
    Joint joined(Joint next) {
        Joint named = next.externalLength > externalLength ? next : this;
        return new Joint(
                kind,
                named.first,
                named.second,
                from,
                next.to,
                externalLength + next.externalLength,
                internalLength + next.internalLength,
                angle,
                firstSetBack,
                secondSetBack);
    }

    /** The same with another second facet. */
    public Joint across(int other) {
        return new Joint(
                kind, first, other, from, to, externalLength, internalLength, angle, firstSetBack, secondSetBack);
    }

    /** The same without lengths that an opening takes out. */
    public Joint shortened(double length) {
        return new Joint(
                kind,
                first,
                second,
                from,
                to,
                externalLength - length,
                internalLength - length,
                angle,
                firstSetBack,
                secondSetBack);
    }
}
