package coldseam.conduction.solve;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Coupling;
import coldseam.conduction.Environment;
import coldseam.conduction.HeatFlowForm;
import coldseam.conduction.Interval;
import coldseam.conduction.NetHeatFlow;
import coldseam.conduction.Outcome;
import coldseam.conduction.Point;
import coldseam.conduction.ProbeTemperature;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.SurfaceTemperature;
import coldseam.conduction.Symmetry;
import coldseam.conduction.Turn;
import coldseam.conduction.elements.AxisymmetricElements;
import coldseam.conduction.elements.Elements;
import coldseam.conduction.elements.PlanarElements;
import coldseam.conduction.field.MeshField;
import coldseam.conduction.field.TriangleField;
import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.mesh.MeshedSection;
import coldseam.conduction.mesh.Topology;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.primitive.DoubleLists;

/** Runs one section from its drawing to its solution. */
final class SectionSolver {

    private static final int MOST_LEVELS = 60;
    /** An interval this narrow comes from rounding alone. */
    private static final double EXACT = 1e-9;
    /** A round that leaves more than this share of the width was not worth its triangles. */
    private static final double WORTH = 0.9;

    private final Section section;
    private final Accuracy accuracy;
    private final MutableList<String> notes = Lists.mutable.empty();
    private Refinement refinement;
    private Mesh mesh;
    private MeshedSection drawing;
    private final int mostUnknowns;
    /** Whether the interval, and the temperature aimed at, are as narrow as asked. */
    private boolean met;

    private boolean steady = true;
    private ImmutableList<SurfaceTemperature<Point>> surfaces = Lists.immutable.empty();
    private ImmutableList<ProbeTemperature> probes = Lists.immutable.empty();
    /** K, of the temperature aimed at; 0 where none is, or it was not asked for yet. */
    private double aimError;
    /** What was proven when the coupling was as narrow as asked, from when on temperatures alone were solved for; else null. */
    private HeatFlowForm proven;

    /** @param allowed unknowns by the memory */
    SectionSolver(Section section, Accuracy accuracy, int allowed) {
        this.section = section;
        this.accuracy = accuracy.checked();
        this.mostUnknowns = Math.min(accuracy.maximumUnknowns(), allowed);
    }

    Solution solve() {
        try (Turn turn = Turn.ofSection()) {
            return solve(turn);
        }
    }

    private Solution solve(Turn turn) {
        long start = System.nanoTime();
        drawing = new MeshedSection(section);
        mesh = drawing.mesh;
        notes.addAll(drawing.notes);
        Topology topology = drawing.topology();
        Elements elements = section.symmetry() == Symmetry.PLANAR
                ? new PlanarElements(
                        mesh, drawing.lattice.step(), drawing.conductivity, drawing.environment, drawing.resistance)
                : new AxisymmetricElements(
                        mesh, drawing.lattice.step(), drawing.conductivity, drawing.environment, drawing.resistance);
        ImmutableList<Environment> environments = section.environments();
        refinement = new Refinement(drawing, topology, elements, environments.size());
        double[] temperatures =
                environments.collectDouble(Environment::temperature).toArray();
        MeshField field = new MeshField(section, drawing, temperatures);
        refinement.refineAtJumps();
        refine(turn, field, temperatures);
        Outcome outcome = outcome();
        outcome.note().ifPresent(notes::add);
        HeatFlowForm form = proven == null ? refinement.forms() : proven;
        ImmutableList<String> names = environments.collect(Environment::name);
        double[][] sets = HeatFlowForm.units(names.size());
        ImmutableList<Coupling> couplings = refinement.jumps() ? couplingsByDifferences() : form.couplings(names, sets);
        ImmutableList<NetHeatFlow> flows =
                refinement.jumps() ? sums(couplings) : form.heatFlows(names, sets, temperatures);
        TriangleField kept = field.kept(refinement.gap);
        return new Solution(
                section,
                couplings,
                accuracy.aim().isPresent() ? flows : flows.collectWithIndex((flow, e) -> flow.with(slopes(kept, e))),
                surfaces,
                probes,
                kept,
                accuracy,
                outcome,
                refinement.unknowns(),
                1e-9 * (System.nanoTime() - start),
                notes.toImmutable());
    }

    /** Solves and refines until all is as narrow as asked, or will not become so. */
    private void refine(Turn turn, MeshField field, double[] temperatures) {
        double widthBefore = Double.POSITIVE_INFINITY;
        double aimErrorBefore = Double.POSITIVE_INFINITY;
        for (int level = 0; level < MOST_LEVELS; level++) {
            turn.before(2.0 * mesh.nodes);
            if (proven == null) {
                refinement.solve();
                field.set(refinement.u);
            } else {
                refinement.solveTemperature();
                field.set(refinement.u);
                refinement.estimateGaps(field.temperature(), temperatures);
            }
            surfaces = field.surfaces(surfaces);
            probes = field.probes(probes);
            met = refinement.relativeWidth <= accuracy.relativeWidth();
            steady = !met || aimMet(field);
            if (met && steady && (level > 0 || refinement.relativeWidth <= EXACT)) {
                break;
            }
            // Once triangles are stuck at a corner, what is left around it falls no further by refining elsewhere;
            // but they may carry next to nothing of an error at a place.
            boolean narrower = refinement.relativeWidth <= WORTH * widthBefore;
            boolean steadier = !steady && aimError <= WORTH * aimErrorBefore;
            if (refinement.held() > 0 && !narrower && !steadier) {
                break;
            }
            widthBefore = refinement.relativeWidth;
            aimErrorBefore = steady ? Double.POSITIVE_INFINITY : aimError;
            int before = mesh.nodes;
            if (2 * mesh.nodes >= mostUnknowns || level + 1 == MOST_LEVELS) {
                break;
            }
            if (steady) {
                refinement.refine(0.95 * accuracy.relativeWidth(), mostUnknowns / 2);
            } else {
                if (proven == null && !refinement.jumps() && refinement.held() == 0) {
                    proven = refinement.forms();
                    refinement.compareGaps(field.temperature(), temperatures);
                }
                refinement.refineForLowest(accuracy.aim().orElseThrow().kelvin(), mostUnknowns / 2);
            }
            if (mesh.nodes == before) {
                break;
            }
        }
        if (!met) {
            steady = aimMet(field);
        }
    }

    /** How the heat flow of an environment follows the regions' conductivities. */
    private ImmutableDoubleList slopes(TriangleField field, int environment) {
        double[][] units = refinement.u;
        if (environment < units.length) {
            return DoubleLists.immutable.of(field.with(units[environment]));
        }
        double[] last = new double[mesh.nodes];
        for (double[] unit : units) {
            for (int v = 0; v < last.length; v++) {
                last[v] -= unit[v];
            }
        }
        return DoubleLists.immutable.of(field.with(last));
    }

    /** Whether the surface temperature aimed at, if any, is estimated to be as exact as asked. */
    private boolean aimMet(MeshField field) {
        if (accuracy.aim().isEmpty()) {
            return true;
        }
        Accuracy.Aim aim = accuracy.aim().get();
        ImmutableList<MeshField.Low> lows = field.lows(
                section.environments().detectIndex(each -> each.name().equals(aim.environment())));
        if (lows.isEmpty()) {
            return true;
        }
        double difference = section.environments()
                        .collectDouble(Environment::temperature)
                        .max()
                - section.environments().collectDouble(Environment::temperature).min();
        aimError = refinement.errorOfLowest(lows, aim.kelvin(), difference);
        return aimError <= aim.kelvin();
    }

    private Outcome outcome() {
        boolean byMemory = mostUnknowns < accuracy.maximumUnknowns();
        double asked = accuracy.relativeWidth();
        double got = refinement.relativeWidth;
        if (refinement.jumps()) {
            return new Outcome.Infinite(asked, place(refinement.firstJump()));
        }
        if (!steady && (met || byMemory)) {
            return new Outcome.ColdestUnsure(asked, got, aimError, end(byMemory));
        }
        if (met) {
            return new Outcome.Met(asked, got);
        }
        int stuck = refinement.worstStuck();
        if (stuck < 0) {
            return byMemory
                    ? new Outcome.MemorySpent(asked, got, refinement.unknowns())
                    : new Outcome.UnknownsSpent(asked, got, refinement.unknowns());
        }
        int corner = mesh.node[6 * stuck];
        for (int i = 1; i < 3; i++) {
            corner = Math.min(corner, mesh.node[6 * stuck + i]);
        }
        return new Outcome.SingularCorner(asked, got, place(corner));
    }

    private Outcome.ColdestUnsure.End end(boolean byMemory) {
        boolean spent = 2 * mesh.nodes >= mostUnknowns;
        if (refinement.held() > 0 && !spent) {
            return Outcome.ColdestUnsure.End.SINGULAR;
        }
        return byMemory ? Outcome.ColdestUnsure.End.MEMORY : Outcome.ColdestUnsure.End.ALLOWED;
    }

    private Point place(int node) {
        return new Point(drawing.lattice.metresX(mesh.x[node]), drawing.lattice.metresY(mesh.y[node]));
    }

    /**
     * Where temperatures jump, forms are infinite and only differences can be told: L of a pair is ½ (Q(i) + Q(j) − Q(i, j)),
     * from the forms of both alone and together.
     */
    private ImmutableList<Coupling> couplingsByDifferences() {
        MutableList<Coupling> all = Lists.mutable.empty();
        int n = section.environments().size();
        Interval[] alone = new Interval[n];
        for (int e = 0; e < n && n > 1; e++) {
            alone[e] = refinement.form(1L << e, false);
        }
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                Interval value = alone[i];
                if (n > 2) {
                    Interval both = refinement.form(1L << i | 1L << j, false);
                    double lower = Math.max(0, 0.5 * (alone[i].lower() + alone[j].lower() - both.upper()));
                    double upper = 0.5 * (alone[i].upper() + alone[j].upper() - both.lower());
                    // Q of one environment is the sum of its couplings, none of which is negative: so one stays finite
                    // where only another of the pair is infinite.
                    upper = Math.min(upper, Math.min(alone[i].upper(), alone[j].upper()));
                    value = new Interval(lower, Math.max(lower, upper));
                }
                all.add(new Coupling(
                        section.environments().get(i).name(),
                        section.environments().get(j).name(),
                        value));
            }
        }
        return all.toImmutable();
    }

    private ImmutableList<NetHeatFlow> sums(ImmutableList<Coupling> couplings) {
        return section.environments().collect(e -> {
            Interval sum = Interval.of(0);
            for (Coupling c : couplings) {
                String other =
                        c.first().equals(e.name()) ? c.second() : c.second().equals(e.name()) ? c.first() : null;
                if (other != null) {
                    double difference = e.temperature()
                            - section.environments()
                                    .detect(o -> o.name().equals(other))
                                    .temperature();
                    sum = difference == 0 ? sum : sum.plus(c.value().times(difference));
                }
            }
            return new NetHeatFlow(e.name(), sum);
        });
    }
}
