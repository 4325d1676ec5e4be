package coldseam.conduction.solid;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Budget;
import coldseam.conduction.Coupling;
import coldseam.conduction.DrawingFault;
import coldseam.conduction.HeatFlowForm;
import coldseam.conduction.Interval;
import coldseam.conduction.NetHeatFlow;
import coldseam.conduction.Outcome;
import coldseam.conduction.ProbeTemperature;
import coldseam.conduction.SectionException;
import coldseam.conduction.SurfaceTemperature;
import coldseam.conduction.Turn;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.DoubleList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.primitive.DoubleLists;

/**
 * Solves bodies.
 *
 * <p>The adaptive loop: solve for temperature and flux, each from what the level before left, bound, cut slabs, until the
 * interval is as narrow as asked.
 */
public final class BodySolver {

    /** 3e-4 of the coupling, at most 800,000 unknowns of both systems: finer than any input of a corner gives. */
    public static final Accuracy STANDARD = new Accuracy(3e-4, 800_000);

    private static final int MOST_LEVELS = 40;
    /** An interval this narrow comes from rounding alone. */
    private static final double EXACT = 1e-9;

    /**
     * How many times a level may be narrower than the one before: the last, which most is spent on, from a field that shows well
     * where its gap is; those before it are cheap.
     */
    private static final double LAST_STEP = 5;

    private static final double STEP = 8;
    /** A step that misses by little is no better than one from farther off: how many times it may be more, and is at least. */
    private static final double HARDLY_MORE = 1.4;
    /** Of what is asked, where cuts are to lead: they are chosen by what slabs are expected to keep. */
    private static final double SAFE = 0.9;

    /**
     * How many times as wide as is asked the coupling may be proven where a temperature is aimed at: the level of that width is then as
     * good as its cuts let expect, and is solved for its temperature alone.
     */
    private static final double AIMED_PROOF = 10;

    /** m, to which slabs are cut beside a place whose temperature is asked for. */
    private static final double THINNEST = 0.0005;

    /** Of both systems, at most: a cell's corners, middles of its edges and faces as far as they are its own, and its fluxes. */
    private static final int UNKNOWNS_A_CELL = 16;

    private final SolidBody body;
    private final Accuracy accuracy;
    private final MutableList<String> notes = Lists.mutable.empty();
    private final PaintedGrid painted;
    private final int mostUnknowns;
    private boolean aimedBefore;
    /** K, by which the temperature aimed at may be off where nothing more could be cut; 0 where it is known. */
    private double unsure;

    private BodySolver(SolidBody body, Accuracy accuracy, int allowed) {
        this.body = body;
        this.accuracy = accuracy.checked();
        this.mostUnknowns = Math.min(accuracy.maximumUnknowns(), allowed);
        MutableList<DrawingFault> faults = Lists.mutable.empty();
        painted = painted(body, faults, notes)
                .filter(any -> faults.isEmpty())
                .orElseThrow(() -> new SectionException(faults.toImmutable().collect(DrawingFault::text)));
    }

    /** Every fault of a body; one that has none can be solved. */
    public static ImmutableList<DrawingFault> faults(SolidBody body) {
        MutableList<DrawingFault> faults = Lists.mutable.empty();
        painted(body, faults, Lists.mutable.empty());
        return faults.toImmutable();
    }

    /** (Output) faults, and what was made one or left out; empty where a body cannot even be painted. */
    static Optional<PaintedGrid> painted(SolidBody body, MutableList<DrawingFault> faults, MutableList<String> notes) {
        BodyCheck.run(body, faults);
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        PaintedGrid painted = new PaintedGrid(body, notes);
        PaintedFaults.find(painted, faults);
        return Optional.of(painted);
    }

    /**
     * Solves a body to the accuracy asked for.
     *
     * <p>Both energies are computed from the fields as they stand in memory, so the interval holds however well the linear
     * systems were solved. Where it cannot be made as narrow as asked within the unknowns allowed, or the memory that this
     * JVM may take, the best one is given, {@code met} is false and a note says so.
     *
     * @throws SectionException with every fault of the body at once
     */
    public static BodySolution solve(SolidBody body, Accuracy accuracy) {
        return solve(body, accuracy, Budget.ofThisJvm());
    }

    /**
     * The same, within a budget.
     *
     * @throws SectionException likewise, and where the coarsest solution needs more memory than there is
     */
    public static BodySolution solve(SolidBody body, Accuracy accuracy, Budget budget) {
        return Budget.halving(
                Math.min(budget.body(), accuracy.maximumUnknowns()),
                allowed -> {
                    try (Turn turn = Turn.ofBody()) {
                        try {
                            return new BodySolver(body, accuracy, allowed).solve(turn);
                        } finally {
                            if (turn.isLarge()) {
                                Room.giveUp();
                            }
                        }
                    }
                },
                () -> {});
    }

    private BodySolution solve(Turn turn) {
        long start = System.nanoTime();
        double asked = accuracy.relativeWidth();
        Grid grid = new Grid(painted);
        turn.before((double) UNKNOWNS_A_CELL * grid.cells);
        BodyLevel level = BodyLevel.bounded(grid, Optional.empty(), asked, Integer.MAX_VALUE);
        ImmutableList<SurfaceTemperature<Place>> lowest = Lists.immutable.empty();
        ImmutableList<ProbeTemperature> probes = Lists.immutable.empty();
        for (int step = 1; ; step++) {
            double width = level.relativeWidth();
            boolean enough =
                    level.bounds().isEmpty() || width <= asked && (step > 1 || width <= EXACT) || step == MOST_LEVELS;
            Optional<Cuts> cuts = enough ? Optional.empty() : cuts(level, width);
            boolean narrow = cuts.isEmpty();
            boolean spent = !enough && narrow;
            if (narrow && accuracy.temperatures()) {
                level.polish();
            }
            GridField field = level.field(ambient());
            lowest = field.lowest(lowest);
            probes = field.probes(probes);
            boolean warmer = narrow || accuracy.aim().isPresent() && width <= proof();
            if (warmer && step < MOST_LEVELS) {
                cuts = aimed(level, cuts, lowest, step);
            }
            if (cuts.isEmpty()) {
                if (spent && accuracy.aim().isPresent() && unsure == 0) {
                    unsure = step > 1 ? change(lowest) : difference();
                }
                return solution(level, field, lowest, probes, start);
            }
            BodyLevel.Before before = level.before(cuts.get());
            // The memory of its bounds and solvers is the next level's, which is larger.
            level = null;
            turn.before((double) UNKNOWNS_A_CELL * cuts.get().cells());
            level = warmer
                    ? BodyLevel.warmer(before)
                    : BodyLevel.bounded(cuts.get().grid(), Optional.of(before), asked, Integer.MAX_VALUE);
        }
    }

    private BodySolution solution(
            BodyLevel level,
            GridField field,
            ImmutableList<SurfaceTemperature<Place>> lowest,
            ImmutableList<ProbeTemperature> probes,
            long start) {
        Outcome outcome = outcome(level);
        outcome.note().ifPresent(notes::add);
        ImmutableList<String> names = body.environments().collect(BodyEnvironment::name);
        return new BodySolution(
                body,
                level.form
                        .couplings(names, sets())
                        .collect(each -> new Coupling(
                                each.first(), each.second(), each.value().times(body.multiplicity()))),
                level.form
                        .heatFlows(names, sets(), ambient())
                        .collectWithIndex((each, i) -> new NetHeatFlow(
                                each.environment(), each.value().times(body.multiplicity()), slopes(level, field, i))),
                lowest,
                probes,
                patches(level.form, field),
                accuracy.temperatures() ? new PackedBodyField(field, body) : new NoBodyField(),
                accuracy,
                outcome,
                level.unknowns(),
                1e-9 * (System.nanoTime() - start),
                notes.toImmutable());
    }

    private ImmutableDoubleList slopes(BodyLevel level, GridField field, int environment) {
        return accuracy.aim().isPresent()
                ? DoubleLists.immutable.empty()
                : DoubleLists.immutable.of(field.with(level.field(sets()[environment])));
    }

    /** The width that the coupling is proven to. */
    private double proof() {
        return accuracy.aim().isPresent() ? AIMED_PROOF * accuracy.relativeWidth() : accuracy.relativeWidth();
    }

    private Outcome outcome(BodyLevel level) {
        double asked = proof();
        boolean met = level.relativeWidth() <= asked;
        boolean byMemory = mostUnknowns < accuracy.maximumUnknowns();
        if (unsure > 0 && (met || byMemory)) {
            return new Outcome.ColdestUnsure(
                    asked,
                    level.relativeWidth(),
                    unsure,
                    byMemory ? Outcome.ColdestUnsure.End.MEMORY : Outcome.ColdestUnsure.End.ALLOWED);
        }
        if (met) {
            return new Outcome.Met(asked, level.relativeWidth());
        }
        return byMemory
                ? new Outcome.MemorySpent(asked, level.relativeWidth(), level.unknowns())
                : new Outcome.UnknownsSpent(asked, level.relativeWidth(), level.unknowns());
    }

    /** The cuts that lead to the width asked for, as far as one level may; empty where the grid may not grow. */
    private Optional<Cuts> cuts(BodyLevel level, double width) {
        boolean proven = width <= proof();
        double wanted = Math.max(HARDLY_MORE, width / (SAFE * (proven ? accuracy.relativeWidth() : proof())));
        boolean atOnce = wanted <= HARDLY_MORE * LAST_STEP || accuracy.aim().isPresent() && proven;
        double narrowing = atOnce ? wanted : Math.min(STEP, wanted / LAST_STEP);
        Cuts cuts = SlabRefinement.choose(
                level.grid, level.bounds().orElseThrow(), narrowing, mostUnknowns / UNKNOWNS_A_CELL);
        return cuts.cells() > level.grid.cells ? Optional.of(cuts) : Optional.empty();
    }

    /**
     * The cuts beside the coldest place of the surface that is aimed at, with those that lead there; none but those where nothing is aimed
     * at, or the last cuts moved its temperature by less than was asked. Each round cuts to a quarter, and the temperature of a
     * corner closes in by half or more, so that what is left is no more than what the last round changed.
     */
    private Optional<Cuts> aimed(
            BodyLevel level, Optional<Cuts> leading, ImmutableList<SurfaceTemperature<Place>> lowest, int rounds) {
        SurfaceTemperature<Place> coldest = aimedAt(lowest).orElse(null);
        boolean known = coldest == null
                || aimedBefore
                        && coldest.change() <= accuracy.aim().orElseThrow().kelvin();
        aimedBefore = true;
        if (known) {
            return leading;
        }
        Cuts from = leading.orElseGet(() -> new Cuts(level.grid));
        Cuts cuts = SlabRefinement.beside(level.grid, from, coldest.at(), THINNEST, mostUnknowns / UNKNOWNS_A_CELL);
        if (cuts.cells() > level.grid.cells) {
            return Optional.of(cuts);
        }
        if (SlabRefinement.beside(level.grid, from, coldest.at(), THINNEST, Integer.MAX_VALUE)
                        .cells()
                > level.grid.cells) {
            unsure = rounds > 1 ? change(lowest) : difference();
        }
        return Optional.empty();
    }

    /** K, by which the last cuts moved the temperature aimed at; 0 where no surface faces what is aimed at. */
    private double change(ImmutableList<SurfaceTemperature<Place>> lowest) {
        return aimedAt(lowest).map(each -> Math.abs(each.change())).orElse(0.0);
    }

    private Optional<SurfaceTemperature<Place>> aimedAt(ImmutableList<SurfaceTemperature<Place>> lowest) {
        return accuracy.aim()
                .map(aim -> lowest.detect(each -> each.environment().equals(aim.environment())));
    }

    /** K, between the warmest environment and the coldest: no temperature is off by more. */
    private double difference() {
        DoubleList all = body.environments().collectDouble(BodyEnvironment::temperature);
        return all.max() - all.min();
    }

    /** °C of each part. */
    private double[] ambient() {
        double[] all = new double[painted.parts];
        for (int p = 0; p < all.length; p++) {
            all[p] = body.environments().get(painted.environmentOf(p)).temperature();
        }
        return all;
    }

    /** For each environment 1 for itself and its patches, 0 for the others. */
    private double[][] sets() {
        double[][] all = new double[body.environments().size()][painted.parts];
        for (int p = 0; p < painted.parts; p++) {
            all[painted.environmentOf(p)][p] = 1;
        }
        return all;
    }

    /** The mean surface temperature is the air's less the flow's density times the resistance. */
    private ImmutableList<BodySolution.PatchTemperature> patches(HeatFlowForm form, GridField field) {
        int environments = body.environments().size();
        return body.patches().collectWithIndex((patch, i) -> {
            double[] alone = new double[painted.parts];
            alone[environments + i] = 1;
            Interval flow = form.between(alone, ambient());
            GridField.Surfaces surfaces = field.surfaces(environments + i);
            return new BodySolution.PatchTemperature(
                    patch.name(),
                    flow.times(-surfaces.resistance() / surfaces.area()).plus(ambient()[environments + i]),
                    surfaces.area());
        });
    }
}
