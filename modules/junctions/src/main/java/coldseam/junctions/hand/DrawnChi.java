package coldseam.junctions.hand;

import coldseam.assemblies.DecayLength;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Coupling;
import coldseam.conduction.Interval;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BoxSide;
import coldseam.conduction.solid.CutPlanes;
import coldseam.conduction.solid.Place;
import coldseam.conduction.solid.SolidBody;
import coldseam.conduction.solve.Conduction;
import coldseam.files.quantity.Format;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The point thermal transmittance of what is drawn, W/K: its coupling less what its surfaces and edges would lose without
 * it (ISO 10211:2017, 3.4: chi = L3D − Σ U A − Σ psi l). Everything is read off the drawing: a cut plane at right angles to
 * an edge is that edge's section, the line where two meet a surface's layers.
 */
public sealed interface DrawnChi {

    /**
     * One term of the sum.
     *
     * @param what it is, in words
     * @param value W/K, with its sign
     */
    record Term(String what, Interval value) {}

    /**
     * What the sum comes to.
     *
     * @param terms that add up to it
     * @param chi W/K
     */
    record Sum(ImmutableList<Term> terms, Interval chi) {}

    /** Relative width of the sections' intervals: small beside the body's own. */
    Accuracy SECTIONS = new Accuracy(2e-5, 400_000);

    /** What is left of a disturbance that comes back from a cut so many times its decay length away is e^−4, a fiftieth. */
    double DECAYS = 2;

    /**
     * The same of a point on a plane, whose disturbance spreads to all sides: a bracket through boards on concrete is 1 % off
     * at 1.3, 0.1 % at 2 (our own solutions).
     */
    double DECAYS_OF_A_POINT = 1.5;

    /** m; twice that is the metre of ISO 10211:2017, 5.2 (from memory), where no layers at the cut lead from air to air. */
    double UNKNOWN_DECAY = 0.5;

    /** What stands in the way of it, in words; empty where nothing does. */
    ImmutableList<String> faults(SolidBody body);

    /** What is taken from the coupling, and added where it was taken twice. */
    ImmutableList<Term> taken(SolidBody body);

    /** The sum for a solved body. */
    default Sum of(BodySolution solution) {
        Coupling whole = solution.couplings().getOnly();
        MutableList<Term> terms =
                Lists.mutable.of(new Term("coupling " + whole.first() + " – " + whole.second(), whole.value()));
        taken(solution.body())
                .forEach(each -> terms.add(
                        new Term(each.what(), each.value().times(solution.body().multiplicity()))));
        return new Sum(terms.toImmutable(), terms.collect(Term::value).injectInto(Interval.of(0), Interval::plus));
    }

    private static void twoEnvironments(SolidBody body, MutableList<String> faults) {
        if (body.environments().size() != 2) {
            faults.add("chi is the share of one coupling, and needs exactly two environments; there are "
                    + body.environments().size());
        }
    }

    private static void stack(SolidBody body, BoxSide one, BoxSide other, MutableList<String> faults) {
        if (!body.cutPlanes().contains(one)
                || !body.cutPlanes().contains(other)
                || one.direction() == other.direction()) {
            faults.add("chi needs two cut planes at right angles, whose common line is a surface's layers; got " + one
                    + " and " + other + ", and the cut planes are "
                    + body.cutPlanes().toSortedList().makeString(", "));
        } else if (CutPlanes.stack(body, one, other).isEmpty()) {
            faults.add("along the line where the cut planes " + one + " and " + other
                    + " meet, layers must lead from one environment into the other; cut the drawing where nothing but the"
                    + " plane surface is left");
        }
    }

    /**
     * What is drawn near a cut bends the heat's way, which the cut holds straight: chi of it would be that of things which
     * stand side by side. The face opposite is such a cut where it shows the same, else the drawing is halved there.
     */
    private static void undisturbed(SolidBody body, BoxSide cut, double decays, MutableList<String> faults) {
        double needed = decays * decay(body, cut).orElse(UNKNOWN_DECAY);
        BoxSide opposite = opposite(cut);
        Lists.immutable
                .of(cut, opposite)
                .select(side ->
                        side == cut || body.cutPlanes().contains(side) && CutPlanes.showsAlike(body, cut.direction()))
                .reject(side -> CutPlanes.undisturbed(body, side) >= needed - SolidBody.SNAP)
                .forEach(side -> faults.add(Format.of(
                        "chi needs a cut that lies so far away that it bends no heat's way (ISO 10211); got %.0f mm from"
                                + " %s to whatever is drawn otherwise; allowed: at least %.0f mm, %s times the way in"
                                + " which a disturbance of these layers falls to 1/e; draw more, or write repeated: true where such things"
                                + " stand so near to one another",
                        1e3 * CutPlanes.undisturbed(body, side),
                        side,
                        1e3 * needed,
                        BigDecimal.valueOf(decays).stripTrailingZeros())));
    }

    private static BoxSide opposite(BoxSide cut) {
        return BoxSide.values()[cut.ordinal() ^ 1];
    }

    /** A half or a quarter of a thing is counted as the whole where the drawing is cut through it. */
    private static void whole(SolidBody body, ImmutableList<BoxSide> cuts, MutableList<String> faults) {
        ImmutableList<BoxSide> through = cuts.collect(DrawnChi::opposite)
                .select(side -> body.cutPlanes().contains(side) && !CutPlanes.showsAlike(body, side.direction()));
        int times = 1 << through.size();
        if (body.multiplicity() < times) {
            faults.add(Format.of(
                    "chi is that of all of a thing, which the drawing cuts through at %s; got a multiplicity of %s; allowed: at"
                            + " least %d; correct multiplicity, or draw all of the thing",
                    through.makeString(" and "),
                    BigDecimal.valueOf(body.multiplicity()).stripTrailingZeros().toPlainString(),
                    times));
        }
    }

    /** m, the longest way in which a disturbance of what lies along a cut plane's edges falls to 1/e. */
    private static OptionalDouble decay(SolidBody body, BoxSide cut) {
        return body.cutPlanes()
                .select(each -> each.direction() != cut.direction())
                .toList()
                .flatCollect(each -> CutPlanes.stack(body, cut, each).stream().toList())
                .collectDouble(stack -> DecayLength.of(
                        stack.low().resistance(),
                        stack.sheets().collect(sheet -> new DecayLength.Sheet(sheet.thickness(), sheet.conductivity())),
                        stack.high().resistance()))
                .primitiveStream()
                .max();
    }

    private static Term section(SolidBody body, BoxSide side, double length) {
        return new Term(
                Format.of("section at %s × %.4g m", side, length),
                Conduction.solve(CutPlanes.section(body, side), SECTIONS)
                        .couplings()
                        .getOnly()
                        .value()
                        .times(-length));
    }

    private static Term surface(SolidBody body, BoxSide one, BoxSide other, double area, double sign) {
        double u = CutPlanes.stack(body, one, other).orElseThrow().transmittance();
        return new Term(
                Format.of("layers at %s and %s, U %.5g W/(m²·K) × %.4g m²", one, other, u, area),
                Interval.of(sign * u * area));
    }

    /**
     * Of a corner where three surfaces and three edges meet: since each surface is counted by two edges, chi = L3D − Σ L2D l
     * + Σ U A.
     *
     * @param corner its inner or outer vertex
     * @param internal whether it is the inner one
     */
    record OfCorner(Place corner, boolean internal) implements DrawnChi {

        private ImmutableList<BoxSide> cuts(SolidBody body) {
            return body.cutPlanes()
                    .select(side -> length(body, side) > SolidBody.SNAP)
                    .toImmutableSortedList();
        }

        private double length(SolidBody body, BoxSide side) {
            return Math.abs(side.of(body.extent()) - corner.along(side.direction()));
        }

        @Override
        public ImmutableList<String> faults(SolidBody body) {
            MutableList<String> faults = Lists.mutable.empty();
            twoEnvironments(body, faults);
            ImmutableList<BoxSide> cuts = cuts(body);
            if (cuts.size() != 3 || cuts.collect(BoxSide::direction).distinct().size() != 3) {
                faults.add("a corner where three edges meet is cut three times, once in each direction; the cut planes"
                        + " away from it are " + cuts.makeString(", "));
            } else {
                for (int i = 0; i < 3; i++) {
                    stack(body, cuts.get(i), cuts.get((i + 1) % 3), faults);
                }
                if (faults.isEmpty()) {
                    vertex(body, cuts, faults);
                    cuts.forEach(cut -> undisturbed(body, cut, DECAYS, faults));
                }
            }
            return faults.toImmutable();
        }

        /** Lengths run to where the three surfaces' warm faces meet, or their cold ones. */
        private void vertex(SolidBody body, ImmutableList<BoxSide> cuts, MutableList<String> faults) {
            for (int i = 0; i < 3; i++) {
                BoxSide across = cuts.get((i + 2) % 3);
                CutPlanes.Stack stack = CutPlanes.stack(body, cuts.get(i), cuts.get((i + 1) % 3))
                        .orElseThrow();
                double said = corner.along(across.direction());
                double drawn = (warm(body, stack.low()) > warm(body, stack.high()) == internal
                                ? stack.low()
                                : stack.high())
                        .at();
                if (Math.abs(said - drawn) > SolidBody.SNAP) {
                    faults.add(Format.of(
                            "the corner lies where the surfaces' %s faces meet; got %c = %.4g m; allowed: %.4g m; correct"
                                    + " it, or dimensions",
                            internal ? "warm" : "cold", "xyz".charAt(across.direction()), said, drawn));
                }
            }
        }

        private static double warm(SolidBody body, CutPlanes.Face face) {
            return body.environments()
                    .detect(each -> each.name().equals(face.environment()))
                    .temperature();
        }

        @Override
        public ImmutableList<Term> taken(SolidBody body) {
            ImmutableList<BoxSide> cuts = cuts(body);
            MutableList<Term> terms = Lists.mutable.empty();
            cuts.forEach(each -> terms.add(section(body, each, length(body, each))));
            for (int i = 0; i < 3; i++) {
                BoxSide one = cuts.get(i);
                BoxSide other = cuts.get((i + 1) % 3);
                terms.add(surface(body, one, other, length(body, one) * length(body, other), 1));
            }
            return terms.toImmutable();
        }
    }

    /**
     * Of a point on a plane: chi = L3D − U A.
     *
     * @param one cut plane
     * @param other cut plane; where the two meet lies the undisturbed surface
     * @param repeated whether the next one stands as near as the cuts say, so that they are no mistake
     */
    record OnSurface(BoxSide one, BoxSide other, boolean repeated) implements DrawnChi {

        @Override
        public ImmutableList<String> faults(SolidBody body) {
            MutableList<String> faults = Lists.mutable.empty();
            twoEnvironments(body, faults);
            stack(body, one, other, faults);
            if (faults.isEmpty()) {
                whole(body, Lists.immutable.of(one, other), faults);
            }
            if (faults.isEmpty() && !repeated) {
                undisturbed(body, one, DECAYS_OF_A_POINT, faults);
                undisturbed(body, other, DECAYS_OF_A_POINT, faults);
            }
            return faults.toImmutable();
        }

        @Override
        public ImmutableList<Term> taken(SolidBody body) {
            double area = body.extent().size(one.direction()) * body.extent().size(other.direction());
            return Lists.immutable.of(surface(body, one, other, area, -1));
        }
    }

    /**
     * Of a point on an edge: chi = L3D − L2D l.
     *
     * @param cut plane that shows the undisturbed edge
     * @param repeated whether the next one stands as near as the cut says, so that it is no mistake
     */
    record OnEdge(BoxSide cut, boolean repeated) implements DrawnChi {

        @Override
        public ImmutableList<String> faults(SolidBody body) {
            MutableList<String> faults = Lists.mutable.empty();
            twoEnvironments(body, faults);
            if (!body.cutPlanes().contains(cut)) {
                faults.add("chi of a point on an edge needs a cut plane that shows the edge; got " + cut
                        + ", and the cut planes are "
                        + body.cutPlanes().toSortedList().makeString(", "));
            } else {
                whole(body, Lists.immutable.of(cut), faults);
                if (!repeated) {
                    undisturbed(body, cut, DECAYS, faults);
                }
            }
            return faults.toImmutable();
        }

        @Override
        public ImmutableList<Term> taken(SolidBody body) {
            return Lists.immutable.of(section(body, cut, body.extent().size(cut.direction())));
        }
    }
}
