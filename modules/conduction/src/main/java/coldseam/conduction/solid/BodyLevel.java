package coldseam.conduction.solid;

import coldseam.conduction.HeatFlowForm;
import coldseam.conduction.Interval;
import java.util.Optional;

/**
 * A body solved on one grid: unit solutions of temperature and flux, and their bounds; or of temperature alone, with the bounds
 * of the level before, which are as true of the body.
 *
 * <p>Unit solution r has part r + 1 at 1 and the others at 0; any other follows by adding.
 */
final class BodyLevel {

    final Grid grid;
    final TemperatureSystem3 temperature;
    final HeatFlowForm form;

    /**
     * Of the difference, what the last steps may still move: a tenth of what a surface temperature is asked to. Of 18 bodies none was
     * then farther than 1.3e-5 from where it came to rest.
     */
    private static final double STILL = 1e-4;
    /** Steps that make the temperatures as good as their grid, at most. */
    private static final int POLISH = 12;
    /** The same, from those of a coarser grid. */
    private static final int WARM = 24;

    private final Optional<BodyBounds> bounds;
    private final int fluxes;
    private final double[][] u;
    private final Room room;

    /** How the level before hands its solution on; what else it took is given up. */
    record Before(TemperatureSystem3 temperature, double[][] u, HeatFlowForm form, Room room, Cuts cuts) {

        /** Energy that the next level's linear solver may leave: little beside what is asked and what its grid can give. */
        private double tolerance(int unit, double width) {
            double[] alone = new double[u.length + 1];
            alone[unit + 1] = 1;
            Interval q = form.between(alone, alone);
            return Math.max(0.002 * width * q.upper(), Math.min(0.001 * q.width(), 1e-3 * q.upper()));
        }
    }

    private BodyLevel(Grid grid, Optional<Before> before, double width, int mostSteps, boolean bounded) {
        this.grid = grid;
        int units = grid.painted.parts - 1;
        room = before.map(Before::room).orElseGet(Room::ofThisThread);
        temperature = new TemperatureSystem3(grid);
        u = new double[units][];
        double[] tolerance = warm(before, width, mostSteps, bounded);
        if (bounded) {
            FluxSystem flux = new FluxSystem(grid);
            BodyBounds both = new BodyBounds(grid, temperature, u, flux, flows(flux, tolerance, mostSteps));
            fluxes = flux.n;
            bounds = Optional.of(both);
            form = new HeatFlowForm(both.upper, both.lower);
        } else {
            fluxes = 0;
            bounds = Optional.empty();
            form = before.orElseThrow().form;
        }
    }

    /**
     * Solves for both.
     *
     * @param width relative width of the total coupling's interval that is asked for
     * @param mostSteps of the linear solver; the bounds are true whatever it is
     */
    static BodyLevel bounded(Grid grid, Optional<Before> before, double width, int mostSteps) {
        return new BodyLevel(grid, before, width, mostSteps, true);
    }

    /**
     * Solves for temperature alone on the grid that a level was cut into, as well as the grid gives it: less than half the work, where no
     * narrower bounds are asked for.
     */
    static BodyLevel warmer(Before before) {
        return new BodyLevel(before.cuts.grid(), Optional.of(before), 0, 0, false);
    }

    /** (Output) the temperatures; returns each unit's tolerance. Their solver is given up before the fluxes get theirs. */
    private double[] warm(Optional<Before> before, double width, int mostSteps, boolean bounded) {
        FlexibleCg warmth = warmth();
        double[] tolerance = new double[u.length];
        double[] left = new double[temperature.n];
        for (int r = 0; r < u.length; r++) {
            int unit = r;
            u[r] = before.map(each -> temperature.from(each.temperature, each.u[unit], each.cuts))
                    .orElseGet(() -> new double[temperature.n]);
            temperature.hold(r + 1, u[r]);
            double energy = temperature.residual(r + 1, u[r], left);
            if (bounded) {
                tolerance[r] = before.map(each -> each.tolerance(unit, width)).orElse(FIRST * energy);
                warmth.solve(u[r], left, tolerance[r], mostSteps);
            } else {
                warmth.still(u[r], left, STILL, WARM);
            }
        }
        return tolerance;
    }

    private FlexibleCg warmth() {
        return new FlexibleCg(temperature.n, temperature, temperature.preconditioner(room), room);
    }

    /** Fluxes of each unit that no cell makes heat in or loses. */
    private double[][][] flows(FluxSystem flux, double[] tolerance, int mostSteps) {
        ConservationTree tree = new ConservationTree(flux, room);
        FlexibleCg flow = new FlexibleCg(flux.n, flux, flux.preconditioner(room), room);
        double[][][] q = new double[u.length][][];
        double[] surplus = new double[flux.n];
        for (int r = 0; r < u.length; r++) {
            double[] potential = flux.potentials(temperature, u[r]);
            q[r] = flux.fluxes();
            flux.flux(potential, r + 1, q[r], surplus);
            flow.solve(potential, surplus, tolerance[r], mostSteps);
            flux.flux(potential, r + 1, q[r], surplus);
            tree.push(q[r], surplus);
        }
        return q;
    }

    /** Of the energy before anything is known: that of a body as cold as one environment, in the air of another. */
    private static final double FIRST = 1e-6;

    /** The width of the total coupling's interval over its middle. */
    double relativeWidth() {
        Interval total = form.total();
        return total.upper() > 0 ? total.width() / total.middle() : 0;
    }

    /** What the next level begins with. */
    Before before(Cuts cuts) {
        return new Before(temperature, u, form, room, cuts);
    }

    /** How many unknowns the two systems have together. */
    int unknowns() {
        return temperature.n + fluxes;
    }

    /** The bounds of its own fields, by which its grid is cut; none where it was solved for temperature alone. */
    Optional<BodyBounds> bounds() {
        return bounds;
    }

    /** Takes as many more steps as make the temperatures as good as their grid; the bounds stay those of before. */
    void polish() {
        if (bounds.isEmpty()) {
            return;
        }
        FlexibleCg warmth = warmth();
        double[] left = new double[temperature.n];
        for (int r = 0; r < u.length; r++) {
            temperature.residual(r + 1, u[r], left);
            warmth.still(u[r], left, STILL, POLISH);
        }
    }

    /** @param ambient °C of each part */
    GridField field(double[] ambient) {
        double[] values = new double[temperature.n];
        java.util.Arrays.fill(values, ambient[0]);
        for (int r = 0; r < u.length; r++) {
            for (int i = 0; i < values.length; i++) {
                values[i] += (ambient[r + 1] - ambient[0]) * u[r][i];
            }
        }
        return new GridField(grid, temperature, values);
    }
}
