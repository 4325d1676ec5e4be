package coldseam.audit;

import coldseam.assemblies.DecayLength;
import coldseam.assemblies.EquivalentLayers;
import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.envelope.Assembly;
import coldseam.envelope.Exposure;
import coldseam.envelope.KindForm;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.multimap.list.ImmutableListMultimap;

/**
 * Computed seams of one surface that run beside each other so near that each disturbs the other's heat flow: each is computed as
 * if it were alone, so the sum of their psi is not what they lose.
 *
 * <p>Two touch where they are nearer than {@link #REACH} of the surface's thickness, or indoors than {@link #CLOSE}, or where what
 * each does to the other is more than {@link #LIMIT}. A disturbance dies away along the surface as its {@link DecayLength} says; of
 * what a seam loses more, the other takes away no more than the share that {@link #share} has. A window's corner may come near a
 * slope that is aslant to its sides: they touch for as long as they are so near. The two sides of one window or door are one thing
 * and not held to it, nor is a threshold to the seam it stands on. In the ground no layers say how far a seam reaches: there the
 * thickness alone decides.
 *
 * @param surface that both are on
 * @param decay m, in which a disturbance falls to 1/e along it; zero in the ground
 * @param pairs of them, at least one
 */
public record Touching(Surface surface, double decay, ImmutableList<Pair> pairs) {

    /** Of the surface's thickness (judgement). */
    public static final double REACH = 0.6;

    /** m of inner face between two, under which neither is built as its detail draws it (judgement). */
    public static final double CLOSE = 0.05;

    /** W/(m·K), by which a pair's psi may be out untold: a tenth of a watt per kelvin is some 2 m of it (judgement). */
    public static final double LIMIT = 0.05;

    /** m; seams that run beside each other for less only meet at their ends. */
    public static final double BESIDE = 0.05;

    private static final double PARALLEL = 1e-3;

    /** Sine of an angle from which on two seams only meet at their ends. */
    private static final double SQUARE = 0.99;

    /** m beyond which no seam is sought that is aslant to another. */
    private static final double FAR = 4;

    /** m, to which it is found how far apart two such seams still touch. */
    private static final double STEP = 0.001;

    /**
     * Two seams.
     *
     * @param one a seam
     * @param other a seam beside it
     * @param distance m between them, on the outer face
     * @param length m, for which they run beside each other
     * @param parallel whether they run beside each other, or aslant
     */
    public record Pair(JunctionRow one, JunctionRow other, double distance, double length, boolean parallel) {}

    /** One for each surface that has some. */
    public static ImmutableList<Touching> of(Shell shell, ImmutableList<JunctionRow> rows) {
        ImmutableListMultimap<String, JunctionRow> beside = rows.select(
                        row -> row.source().computed())
                .groupByEach(row -> row.edge().surfaces().collect(Surface::name).distinct());
        return shell.surfaces().flatCollect(surface -> {
            double reach = REACH * surface.assembly().map(Assembly::thickness).orElse(0.0);
            double decay = decay(surface);
            Predicate<Pair> near = pair ->
                    pair.distance() < reach || clear(pair, surface) < CLOSE || estimate(pair, decay, surface) > LIMIT;
            ImmutableList<Pair> pairs =
                    pairs(beside.get(surface.name()), near).select(pair -> pair.length() > BESIDE && near.accept(pair));
            return pairs.isEmpty() ? Lists.immutable.empty() : Lists.immutable.of(new Touching(surface, decay, pairs));
        });
    }

    /** Those of some pairs of which nobody knows what they lose together, one for each surface. */
    public static ImmutableList<Touching> unknown(ImmutableList<PairRow> rows) {
        ImmutableList<PairRow> some = rows.select(PairRow::unknown);
        return some.distinctBy(row -> row.surface().name())
                .collect(first -> new Touching(
                        first.surface(),
                        first.decay(),
                        some.select(row -> row.surface()
                                        .name()
                                        .equals(first.surface().name()))
                                .collect(PairRow::pair)));
    }

    private static double decay(Surface surface) {
        Exposure.Kind kind = surface.exposure().kind();
        boolean soil = kind == Exposure.Kind.GROUND || kind == Exposure.Kind.CRAWL_SPACE;
        return soil
                ? 0
                : surface.assembly()
                        .map(assembly -> DecayLength.of(EquivalentLayers.of(
                                assembly, HeatFlow.through(surface.normal()), OuterSurface.of(surface.exposure()))))
                        .orElse(0.0);
    }

    /**
     * W/(m·K), of psi that two seams change together: what two fields do to each other goes by the product of both, so of a large
     * psi beside a small one by twice the root of that. Of two alike it is {@link #share} of both.
     *
     * <p>A corner or an edge begins to disturb a surface where the inner face ends, nearer than on the outer one. From there on
     * it is at most the root of the product: judged by sections drawn with both seams, where it came to nine tenths of that.
     */
    private static double estimate(Pair pair, double decay, Surface surface) {
        double root = Math.sqrt(size(pair.one()) * size(pair.other()));
        double clear = clear(pair, surface);
        return decay > 0
                ? Math.max(2 * share(pair.distance(), decay), clear < pair.distance() ? share(clear, decay) : 0) * root
                : 0;
    }

    /** m between the two on the inner face. */
    public static double clear(Pair pair, Surface surface) {
        Edge one = pair.one().edge();
        Edge other = pair.other().edge();
        return pair.distance() - setBack(one, other, surface) - setBack(other, one, surface);
    }

    /**
     * m, by which the upper face of a storey's floor lies above its edge's line: walls take over from one another lower where the
     * floor hangs over the air on another side, and at a deck's upper face where they do before a terrace. Zero of what is no storey's floor.
     */
    public static double floorAbove(Edge edge) {
        boolean storeys = !edge.upperStorey().isEmpty()
                && (edge.kind().form().second() == KindForm.Second.THING
                        || edge.kind().form().floorLines());
        if (!storeys) {
            return 0;
        }
        // Indoors the walls take over at the floor's upper face, but before a deck at the ceiling.
        double inside = -edge.firstSetBack();
        return inside >= 0 ? inside : inside + edge.floorThickness();
    }

    /**
     * m, by which the surface's inner face ends short of the outer at an edge, on the side where the other is: by what adjoins
     * there, or by the storey's floor that bears into it.
     */
    private static double setBack(Edge edge, Edge other, Surface surface) {
        double adjoining = edge.first().name().equals(surface.name()) ? edge.firstSetBack() : edge.secondSetBack();
        boolean below = other.from().z() < edge.from().z();
        boolean floor = edge.kind().form().second() == KindForm.Second.THING
                && !edge.upperStorey().isEmpty();
        double inside = !floor ? adjoining : below ? edge.floorThickness() - floorAbove(edge) : floorAbove(edge);
        return Math.max(0, inside);
    }

    private static double size(JunctionRow row) {
        return Math.abs(row.psi().middle()) * row.factor();
    }

    /**
     * The most of what a seam loses that another beside it can take away.
     *
     * <p>An adiabatic cut halfway between the two leaves no more than both lose together. D(s) is what a seam alone loses more than
     * it does with a cut past a length s of undisturbed layers. With N and Q the forms that the energies before and beyond the cut
     * are of the disturbance z on it, D = z (N⁻¹ + Q⁻¹)⁻¹ z. Of modes across the layers with μ₁ the least, Q is Σ μ z², N no more
     * than Σ μ coth(μ s) z² (carried to nothing within s), and D' = −Σ μ² z². So D' ≤ −μ₁ (1 + tanh(μ₁ s)) D, and
     *
     * <pre>D(s) ≤ D(0) · 2 / (1 + exp(2 s / λ)),  λ = 1/μ₁</pre>
     *
     * Worked out apart.
     *
     * @param between m of undisturbed layers between the two, 2 s
     * @param decay λ, m; zero where it is not known, and then all
     */
    public static double share(double between, double decay) {
        return decay > 0 ? 2 / (1 + Math.exp(Math.max(0, between) / decay)) : 1;
    }

    private static ImmutableList<Pair> pairs(ImmutableList<JunctionRow> rows, Predicate<Pair> near) {
        MutableList<Pair> pairs = Lists.mutable.empty();
        for (int i = 0; i < rows.size(); i++) {
            for (int j = i + 1; j < rows.size(); j++) {
                pair(rows.get(i), rows.get(j), near).ifPresent(pairs::add);
            }
        }
        return pairs.toImmutable();
    }

    /** Empty where the two are sides of one opening, or meet at their ends only. */
    private static Optional<Pair> pair(JunctionRow one, JunctionRow other, Predicate<Pair> near) {
        Edge a = one.edge();
        Edge b = other.edge();
        boolean ofOneOpening = a.opening().isPresent() && a.opening().equals(b.opening());
        // A threshold's section shows the seam that its door stands on, whose length is less by the door's.
        if (ofOneOpening || a.kind().threshold() || b.kind().threshold()) {
            return Optional.empty();
        }
        Point3 along = Vectors.minus(a.to(), a.from());
        double length = Vectors.length(along);
        Point3 second = Vectors.minus(b.to(), b.from());
        double sine = Vectors.length(Vectors.cross(along, second)) / (length * Vectors.length(second));
        if (sine > PARALLEL) {
            boolean cornerNear =
                    sine < SQUARE && (a.opening().isPresent() || b.opening().isPresent());
            return cornerNear ? aslant(one, other, sine, near) : Optional.empty();
        }
        Point3 between = Vectors.minus(b.from(), a.from());
        double distance = Vectors.length(Vectors.cross(along, between)) / length;
        double start = Vectors.dot(along, between) / length;
        double end = Vectors.dot(along, Vectors.minus(b.to(), a.from())) / length;
        double beside = Math.min(length, Math.max(start, end)) - Math.max(0, Math.min(start, end));
        return Optional.of(new Pair(one, other, distance, beside, true));
    }

    /**
     * Two that come nearest at an end, at their least distance, for as long as they are so near that they would touch if they were
     * parallel: from that end on the distance grows by the sine of the angle between them.
     */
    private static Optional<Pair> aslant(JunctionRow one, JunctionRow other, double sine, Predicate<Pair> near) {
        Edge a = one.edge();
        Edge b = other.edge();
        double nearest = Math.min(
                Math.min(distance(a.from(), b), distance(a.to(), b)),
                Math.min(distance(b.from(), a), distance(b.to(), a)));
        double apart = nearest;
        double beyond = Math.max(nearest, FAR);
        // What two do to each other only falls with their distance.
        while (beyond - apart > STEP) {
            double middle = (apart + beyond) / 2;
            if (near.accept(new Pair(one, other, middle, 0, false))) {
                apart = middle;
            } else {
                beyond = middle;
            }
        }
        return Optional.of(new Pair(
                one, other, nearest, Math.min((apart - nearest) / sine, Math.min(length(a), length(b))), false));
    }

    private static double length(Edge edge) {
        return Vectors.length(Vectors.minus(edge.to(), edge.from()));
    }

    /** m from a point to an edge. */
    private static double distance(Point3 point, Edge edge) {
        Point3 along = Vectors.minus(edge.to(), edge.from());
        Point3 to = Vectors.minus(point, edge.from());
        double at = Math.max(0, Math.min(1, Vectors.dot(to, along) / Vectors.dot(along, along)));
        return Vectors.length(Vectors.minus(to, Vectors.times(along, at)));
    }
}
