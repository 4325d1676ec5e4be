package coldseam.conduction.solid;

import coldseam.conduction.HeatFlowForm;
import coldseam.conduction.Interval;
import java.util.Optional;

/**
 * A body solved on one grid: unit solutions of temperature and flux, and their bounds.
 *
 * <p>Unit solution r has part r + 1 at 1 and the others at 0; any other follows by adding.
 */
final class BodyLevel {

    final Grid grid;
    final TemperatureSystem3 temperature;
    final FluxSystem flux;
    final BodyBounds bounds;
    final HeatFlowForm form;

    private final double[][] u;
    private final FlexibleCg warmth;

    /** How the level before hands its solution on. */
    record Before(BodyLevel level, Cuts cuts) {}

    /**
     * @param width relative width of the total coupling's interval that is asked for
     * @param mostSteps of the linear solver; the bounds are true whatever it is
     */
    BodyLevel(Grid grid, Optional<Before> before, double width, int mostSteps) {
        this.grid = grid;
        int units = grid.painted.parts - 1;
        temperature = new TemperatureSystem3(grid);
        flux = new FluxSystem(grid);
        warmth = new FlexibleCg(temperature.n, temperature, temperature.preconditioner());
        FlexibleCg flow = new FlexibleCg(flux.n, flux, flux.preconditioner());
        ConservationTree tree = new ConservationTree(flux);
        u = new double[units][];
        double[][][] q = new double[units][][];
        double[] left = new double[temperature.n];
        double[] surplus = new double[flux.n];
        for (int r = 0; r < units; r++) {
            int unit = r;
            u[r] = before.map(each -> temperature.from(each.level.temperature, each.level.u[unit], each.cuts))
                    .orElseGet(() -> new double[temperature.n]);
            temperature.hold(r + 1, u[r]);
            double energy = temperature.residual(r + 1, u[r], left);
            double tolerance =
                    before.map(each -> each.level.tolerance(unit, width)).orElse(FIRST * energy);
            warmth.solve(u[r], left, tolerance, mostSteps);
            double[] potential = flux.potentials(temperature, u[r]);
            q[r] = flux.fluxes();
            flux.flux(potential, r + 1, q[r], surplus);
            flow.solve(potential, surplus, tolerance, mostSteps);
            flux.flux(potential, r + 1, q[r], surplus);
            tree.push(q[r], surplus);
        }
        bounds = new BodyBounds(grid, temperature, u, flux, q);
        form = new HeatFlowForm(bounds.upper, bounds.lower);
    }

    /** Of the energy before anything is known: that of a body as cold as one environment, in the air of another. */
    private static final double FIRST = 1e-6;

    /** Energy that the next level's linear solver may leave: little beside what is asked and what its grid can give. */
    private double tolerance(int unit, double width) {
        double[] alone = new double[u.length + 1];
        alone[unit + 1] = 1;
        Interval q = form.between(alone, alone);
        return Math.max(0.002 * width * q.upper(), Math.min(0.001 * q.width(), 1e-3 * q.upper()));
    }

    /** The width of the total coupling's interval over its middle. */
    double relativeWidth() {
        Interval total = form.total();
        return total.upper() > 0 ? total.width() / total.middle() : 0;
    }

    /** How many unknowns the two systems have together. */
    int unknowns() {
        return temperature.n + flux.n;
    }

    /** Takes as many more steps as make the temperatures as good as their grid; the bounds stay those of before. */
    void polish(int steps) {
        double[] left = new double[temperature.n];
        for (int r = 0; r < u.length; r++) {
            temperature.residual(r + 1, u[r], left);
            warmth.solve(u[r], left, 0, steps);
        }
    }

    /** @param ambient °C of each part */
    BodyField field(double[] ambient) {
        double[] values = new double[temperature.n];
        java.util.Arrays.fill(values, ambient[0]);
        for (int r = 0; r < u.length; r++) {
            for (int i = 0; i < values.length; i++) {
                values[i] += (ambient[r + 1] - ambient[0]) * u[r][i];
            }
        }
        return new BodyField(grid, temperature, values);
    }
}
