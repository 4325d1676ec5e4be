package coldseam.conduction.solve;

import coldseam.conduction.HeatFlowForm;
import coldseam.conduction.Interval;
import coldseam.conduction.elements.Elements;
import coldseam.conduction.field.MeshField;
import coldseam.conduction.mesh.Mesh;
import coldseam.conduction.mesh.MeshedSection;
import coldseam.conduction.mesh.Topology;
import java.util.Arrays;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.MutableIntList;
import org.eclipse.collections.impl.factory.primitive.IntLists;

/**
 * The adaptive loop: solve for temperature and stream function, bound, mark, refine, until the interval is as narrow as
 * asked.
 *
 * <p>Unit solutions: for each environment but the last, the solution where it is at 1 and the others at 0; any other
 * follows by adding. The heat flow form of a set M of environments at 1 and the rest at 0 is Q(M), bounded by the two
 * energies of the added fields; Q(M) is Q of the complement.
 */
final class Refinement {

    private static final double ROUNDING = 0x1p-53;

    private final MeshedSection drawing;
    private final Mesh mesh;
    private final Elements elements;
    private final int environments;
    private final int units;
    private final Unknowns unknowns;
    private final Dissection dissection;
    private final Fronts fronts;
    /** Of the stream function while that is solved, from then on of the temperature. */
    private final FrontalSolver solver;

    private final Residuals residuals;

    private final TemperatureSystem temperatureSystem;
    private final StreamSystem streamSystem;

    /** Unit solutions: nodal temperatures, and stream unknowns. */
    final double[][] u;

    private final double[][] s;

    /** Each triangle's share of the gap; estimated where the last solve was for the temperature alone. */
    double[] gap = new double[0];

    /** Sum over the environments of the bounds of Q({i}), half of it: the total coupling. */
    double lower;

    double upper;

    /** The width of the total coupling over its middle; where the coupling is infinite, of what lies off the jumps. */
    double relativeWidth;

    /** Of the conductance of a square of the best conductor: no drawing's coupling is smaller but by having none. */
    private static final double NOTHING = 1e-14;

    /** W/(m·K), or W/K if axisymmetric: the conductance of a square, or of a ring as large as the drawing. */
    private final double best;

    /** The response of the temperatures to sources at the lowest places, and what each triangle adds to their error, K. */
    private double[] response = new double[0];

    private double[] product = new double[0];

    /** What a residual's energy comes to as a gap; 0 while gaps are computed. */
    private double gapOfResidual;

    private double counted;
    private double zone;
    private final MutableIntList zones = IntLists.mutable.empty();
    private final double[] ambient;
    private final double[] u6 = new double[6];
    private final double[] s6 = new double[6];
    private final double[] add6 = new double[6];
    private final double[] energy = new double[5];

    Refinement(MeshedSection drawing, Topology topology, Elements elements, int environments) {
        this.drawing = drawing;
        this.mesh = drawing.mesh;
        this.elements = elements;
        this.environments = environments;
        this.units = Math.max(0, environments - 1);
        this.unknowns = new Unknowns(drawing, topology, elements.form() != 1);
        Workspace workspace = Workspace.ofThread();
        this.dissection = workspace.dissection;
        dissection.restart();
        this.fronts = workspace.fronts;
        this.solver = workspace.solver;
        this.residuals = workspace.residuals;
        this.temperatureSystem = new TemperatureSystem(mesh, elements, unknowns);
        this.streamSystem = new StreamSystem(mesh, drawing, elements, unknowns, topology.cuts);
        this.u = new double[units][0];
        this.s = new double[units][0];
        this.ambient = new double[environments];
        double most = 0;
        for (double k : drawing.conductivity) {
            most = Math.max(most, k);
        }
        this.best = elements.form() == 1 ? most : most * drawing.lattice.size();
    }

    int unknowns() {
        return unknowns.total;
    }

    boolean jumps() {
        return unknowns.jumps > 0;
    }

    /** Where temperatures jump the gap never closes: a zone around is left out, and made fine beforehand. */
    void refineAtJumps() {
        unknowns.number();
        if (unknowns.jumps == 0) {
            return;
        }
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int v = 0; v < mesh.nodes; v++) {
            left = Math.min(left, mesh.x[v]);
            right = Math.max(right, mesh.x[v]);
            low = Math.min(low, mesh.y[v]);
            high = Math.max(high, mesh.y[v]);
        }
        zone = Math.min(right - left, high - low) / 32;
        for (int round = 0; round < ROUNDS_AT_JUMPS; round++) {
            unknowns.number();
            findZones();
            for (int t = 0; t < mesh.triangles; t++) {
                mesh.error[t] = nearJump(t) && mesh.area(t) > zone * zone / 64 ? 1 : 0;
            }
            mesh.refine(0.7, Integer.MAX_VALUE);
        }
    }

    /** Each round halves the area of the triangles near a jump, down to 1/64 of the zone's square. */
    private static final int ROUNDS_AT_JUMPS = 18;

    private void findZones() {
        zones.clear();
        for (int v = 0; v < mesh.nodes && unknowns.jumps > 0; v++) {
            if (unknowns.jumps(v)) {
                zones.add(v);
            }
        }
    }

    /** Solves on the mesh as it is and computes bounds and gaps. */
    void solve() {
        int size = prepare();
        findZones();
        if (units > 0) {
            solver.factor(dissection, streamSystem);
        }
        for (int r = 0; r < units; r++) {
            if (s[r].length < size) {
                s[r] = new double[size + size / 2];
            }
            Arrays.fill(s[r], 0, size, 0);
            streamSystem.load(r, s[r]);
            solver.solve(s[r]);
        }
        temperature(size);
        bound();
    }

    /** Solves for the temperature alone: bounds stay those of the last whole solve. */
    void solveTemperature() {
        temperature(prepare());
    }

    /** Numbers, dissects and sorts into fronts; returns how many numbers are in use. */
    private int prepare() {
        unknowns.number();
        dissection.run(mesh);
        fronts.build(mesh, unknowns, dissection);
        return unknowns.all();
    }

    private void temperature(int size) {
        if (units > 0) {
            solver.factor(dissection, temperatureSystem);
        }
        for (int r = 0; r < units; r++) {
            if (u[r].length < size) {
                u[r] = new double[size + size / 2];
            }
            ambientOf(1L << r);
            Arrays.fill(u[r], 0, size, 0);
            temperatureSystem.load(r, ambient, u[r]);
            solver.solve(u[r]);
            temperatureSystem.prescribe(ambient, u[r]);
        }
    }

    /**
     * Compares the gaps of the last whole solve with what the temperature leaves of its equation, which is to stand for them
     * from then on: both fall alike where a mesh is refined.
     *
     * @param temperature at each node
     * @param environments of each, °C
     */
    void compareGaps(double[] temperature, double[] environments) {
        residuals.compute(drawing, elements.form() != 1, temperature, environments);
        double total = 0;
        for (int t = 0; t < mesh.triangles; t++) {
            total += gap[t];
        }
        double left = residuals.sum();
        double span = 0;
        for (double each : environments) {
            for (double other : environments) {
                span = Math.max(span, each - other);
            }
        }
        gapOfResidual =
                Math.min(total / Math.max(left, Double.MIN_NORMAL), MOST_OF_RESIDUAL * elements.form() / (span * span));
    }

    /** The same arguments; the gaps that the last solve would have, were it a whole one, into {@link #gap}. */
    void estimateGaps(double[] temperature, double[] environments) {
        residuals.compute(drawing, elements.form() != 1, temperature, environments);
        if (gap.length < mesh.triangles) {
            gap = new double[mesh.triangles + mesh.triangles / 2];
        }
        for (int t = 0; t < mesh.triangles; t++) {
            gap[t] = gapOfResidual * residuals.energy[t];
        }
    }

    private void ambientOf(long set) {
        for (int e = 0; e < environments; e++) {
            ambient[e] = set >>> e & 1;
        }
    }

    /** The total over the environments, and every triangle's gap. */
    private void bound() {
        if (gap.length < mesh.triangles) {
            gap = new double[mesh.triangles + mesh.triangles / 2];
        }
        Arrays.fill(gap, 0, mesh.triangles, 0);
        lower = 0;
        upper = 0;
        counted = 0;
        double times = environments == 2 ? 1 : 0.5;
        for (int e = 0; e < (environments == 2 ? 1 : environments) && units > 0; e++) {
            Interval q = form(1L << e, true);
            lower += times * q.lower();
            upper += times * q.upper();
        }
        double total = 0;
        for (int t = 0; t < mesh.triangles; t++) {
            gap[t] *= times * elements.form();
            total += gap[t];
        }
        counted *= times * elements.form();
        relativeWidth = unknowns.jumps > 0 ? total / counted : 2 * (upper - lower) / (upper + lower);
        // Where nothing joins the environments all that is left is rounding.
        if (!(upper > NOTHING * best)) {
            relativeWidth = 0;
        }
    }

    /**
     * Bounds of the heat flow form where a set of environments is at 1 and the rest at 0.
     *
     * <p>Upper bound: the sum of all computed upper energies, plus what each may be off by rounding, plus one rounding of
     * the sum for every term added. Lower bound: with F = −Σ T ∫ ∂s/∂t and E the lower energy, 2F − E of the best
     * multiple of s is F²/E; E is rounded up and F down in the same way.
     */
    Interval form(long set, boolean addGaps) {
        long base = (set >>> units & 1) == 0 ? set : ~set & (1L << units) - 1;
        if (base == 0) {
            return Interval.of(0);
        }
        sums(base, addGaps);
        double flow = Math.abs(sum[FLOW]) - sum[FLOW_OFF];
        double low = sum[LOW] + sum[LOW_OFF];
        double bound = flow > 0 && low > 0 ? flow * flow / low * (1 - 8 * ROUNDING) : 0;
        double scale = elements.form();
        double up = scale * (sum[UP] + sum[UP_OFF]) * (1 + 4 * ROUNDING);
        return new Interval(Math.min(scale * bound, up), splits(base) ? Double.POSITIVE_INFINITY : up);
    }

    private static final int UP = 0;
    private static final int UP_OFF = 1;
    private static final int LOW = 2;
    private static final int LOW_OFF = 3;
    private static final int FLOW = 4;
    private static final int FLOW_OFF = 5;

    private final double[] sum = new double[6];

    /** The two energies of the added fields and the flow, each with what rounding may have done to it, into {@code sum}. */
    private void sums(long base, boolean addGaps) {
        ambientOf(base);
        Arrays.fill(sum, 0);
        for (int t = 0; t < mesh.triangles; t++) {
            local(t, base);
            elements.energies(t, u6, s6, ambient, energy);
            sum[UP] += energy[Elements.UPPER];
            sum[LOW] += energy[Elements.LOWER];
            sum[UP_OFF] += energy[Elements.UPPER_ALLOWANCE];
            sum[LOW_OFF] += energy[Elements.LOWER_ALLOWANCE];
            if (addGaps && !(unknowns.jumps > 0 && nearJump(t))) {
                gap[t] += energy[Elements.GAP];
                counted += energy[Elements.UPPER];
            }
        }
        double flowSize = 0;
        for (int t = 0; t < mesh.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int tag = mesh.boundary(t, i);
                if (tag >= 0 && ambient[drawing.environment[tag]] != 0) {
                    local(t, base);
                    double a = s6[(i + 1) % 3];
                    double b = s6[(i + 2) % 3];
                    sum[FLOW] += a - b;
                    flowSize += Math.abs(a - b);
                }
            }
        }
        double count = mesh.triangles + 8;
        sum[UP_OFF] += count * ROUNDING * sum[UP];
        sum[LOW_OFF] += count * ROUNDING * sum[LOW];
        sum[FLOW_OFF] = count * ROUNDING * flowSize;
    }

    /**
     * Both energies as forms of the environments' temperatures. With two environments the lower one is of the best multiple
     * of s; with more it must be 2F − E, since only that is a form. An entry may be off by ε of the values it is made of,
     * and then the form of n temperatures by n ε Σ T².
     */
    HeatFlowForm forms() {
        int n = environments - 1;
        if (n == 1) {
            return new HeatFlowForm(new double[][] {{upper}}, new double[][] {{lower}});
        }
        double[][] up = new double[n][n];
        double[][] low = new double[n][n];
        double off = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i; j >= 0; j--) {
                long set = 1L << i + 1 | 1L << j + 1;
                long base = (set >>> units & 1) == 0 ? set : ~set & (1L << units) - 1;
                double scale = elements.form();
                double upper = 0;
                double lower = 0;
                if (base != 0) {
                    sums(base, false);
                    upper = splits(base) ? Double.POSITIVE_INFINITY : scale * sum[UP];
                    lower = scale * (2 * sum[FLOW] - sum[LOW]);
                    off = Math.max(off, 2 * scale * Math.max(sum[UP_OFF], sum[LOW_OFF] + 2 * sum[FLOW_OFF]));
                }
                up[i][j] = i == j ? upper : 0.5 * (upper - up[i][i] - up[j][j]);
                low[i][j] = i == j ? lower : 0.5 * (lower - low[i][i] - low[j][j]);
                up[j][i] = up[i][j];
                low[j][i] = low[i][j];
            }
        }
        for (int i = 0; i < n; i++) {
            up[i][i] += 2 * n * off;
            low[i][i] -= 2 * n * off;
        }
        return new HeatFlowForm(up, low);
    }

    /** Whether a set puts two environments apart whose prescribed temperatures meet in a point. */
    private boolean splits(long base) {
        for (int v = 0; v < mesh.nodes && unknowns.jumps > 0; v++) {
            if (unknowns.jumps(v) && unknowns.splits(v, base)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a corner of a triangle lies in the zone around a jump. */
    private boolean nearJump(int t) {
        for (int z = 0; z < zones.size(); z++) {
            int j = zones.get(z);
            for (int i = 6 * t; i < 6 * t + 3; i++) {
                double dx = mesh.x[mesh.node[i]] - mesh.x[j];
                double dy = mesh.y[mesh.node[i]] - mesh.y[j];
                if (dx * dx + dy * dy <= zone * zone) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A node where two prescribed temperatures meet, or -1. */
    int firstJump() {
        for (int v = 0; v < mesh.nodes && unknowns.jumps > 0; v++) {
            if (unknowns.jumps(v)) {
                return v;
            }
        }
        return -1;
    }

    private void local(int t, long base) {
        boolean first = true;
        for (int r = 0; r < units; r++) {
            if ((base >>> r & 1) == 0) {
                continue;
            }
            streamSystem.values(t, s[r], first ? s6 : add6);
            for (int i = 0; i < 6; i++) {
                double value = u[r][mesh.node[6 * t + i]];
                u6[i] = first ? value : u6[i] + value;
            }
            for (int i = 0; i < 6 && !first; i++) {
                s6[i] += add6[i];
            }
            first = false;
        }
    }

    /**
     * Refines towards a gap in as few steps as predictions allow: each narrows it {@link #STEP} times at most, and the last
     * by as much as it can, since the mesh before it is solved in vain.
     *
     * <p>Triangles expected to carry more than a level are bisected, and the level is lowered until the expected gaps add up
     * to the goal. In a smooth field the sum falls as the power ⅔ of the level, elsewhere more slowly. What stuck triangles
     * carry stays; the others' goal is what they leave of the target, or a share {@link #BESIDE_STUCK} of what they carry
     * where they leave nothing.
     */
    void refine(double relativeTarget, int mostNodes) {
        double total = sum(gap, false);
        double held = held();
        double goal = Math.max(relativeTarget * counted - held, BESIDE_STUCK * held);
        if (held > 0 && total <= goal) {
            return;
        }
        double step = held > 0 ? STEP_AROUND_STUCK : STEP;
        while (goal * step < total) {
            goal *= step;
        }
        refine(gap, total, goal, mostNodes);
    }

    private void refine(double[] carried, double total, double asked, int mostNodes) {
        double goal = Math.min(asked, 0.5 * total);
        System.arraycopy(carried, 0, mesh.error, 0, mesh.triangles);
        double level = 0;
        for (int t = 0; t < mesh.triangles; t++) {
            level = Math.max(level, mesh.stuck[t] ? 0 : carried[t]);
        }
        for (double left = total; left > goal && mesh.nodes < mostNodes; left = sum(mesh.error, false)) {
            level *= Math.max(0.1, Math.min(0.93, Math.pow(goal / left, 1.5)));
            mesh.refine(level, mostNodes);
        }
    }

    /**
     * How far the lowest temperature of an environment's surfaces may be off, estimated: with z the response to a source at a
     * place, the temperature's error there is the energy product of the errors of u and z, so no more than the sum over the
     * triangles of the root of the gap times the energy error of z (R. Becker and R. Rannacher, An optimal control approach to
     * a posteriori error estimation in finite element methods, Acta Numerica 10, 2001, pp. 1–102). Of z the
     * cubic part stands for its error: as much smaller than the quadratic part as that is than the linear one, and never larger.
     *
     * <p>Where the gap is an estimate, a share of it is taken: it is made of u's error and the stream function's, which are of like size,
     * and what is compared is no longer the whole that is proven.
     *
     * <p>A place that is warmer than the coldest may be off by as much more before it is colder, so all places are sources of
     * one response, each as strong as what is asked is of what it may be off by. {@link #refineForLowest} refines by these
     * products.
     *
     * @param lows the places
     * @param kelvin what is asked, K
     * @param difference the largest difference of environments' temperatures, K
     * @return K
     */
    double errorOfLowest(ImmutableList<MeshField.Low> lows, double kelvin, double difference) {
        int size = unknowns.all();
        if (response.length < size) {
            response = new double[size + size / 2];
        }
        if (product.length < mesh.triangles) {
            product = new double[mesh.triangles + mesh.triangles / 2];
        }
        Arrays.fill(response, 0, size, 0);
        for (MeshField.Low low : lows) {
            double strength = kelvin / (kelvin + low.above());
            double at = low.along();
            int corners = 6 * low.triangle();
            source(mesh.node[corners + (low.side() + 1) % 3], strength * (1 - at) * (1 - 2 * at));
            source(mesh.node[corners + (low.side() + 2) % 3], strength * at * (2 * at - 1));
            source(mesh.node[corners + 3 + low.side()], strength * 4 * at * (1 - at));
        }
        solver.solve(response);
        double share = (gapOfResidual > 0 ? SHARE_OF_TEMPERATURE : 1) / elements.form();
        double sum = 0;
        double[] matrix = new double[36];
        double[] linear = new double[6];
        double[] quadratic = new double[6];
        for (int e = 0; e < mesh.triangles; e++) {
            int o = 6 * e;
            double a = value(mesh.node[o]);
            double b = value(mesh.node[o + 1]);
            double c = value(mesh.node[o + 2]);
            double mean = (a + b + c) / 3;
            linear[0] = a - mean;
            linear[1] = b - mean;
            linear[2] = c - mean;
            for (int i = 0; i < 3; i++) {
                linear[3 + i] = -0.5 * linear[i];
                quadratic[3 + i] = value(mesh.node[o + 3 + i]) - mean - linear[3 + i];
            }
            elements.temperatureMatrix(e, matrix);
            // The corners have nothing of it.
            double bent = energy(matrix, quadratic, 3);
            double straight = energy(matrix, linear, 0);
            double off = bent * Math.min(1, bent / Math.max(straight, Double.MIN_NORMAL));
            product[e] = difference * Math.sqrt(off * gap[e] * share);
            sum += product[e];
        }
        return sum;
    }

    private void source(int node, double strength) {
        response[node] += unknowns.prescribed(node) ? 0 : strength;
    }

    private static double energy(double[] matrix, double[] values, int from) {
        double sum = 0;
        for (int i = from; i < 6; i++) {
            for (int j = from; j < 6; j++) {
                sum += values[i] * matrix[6 * i + j] * values[j];
            }
        }
        return Math.max(0, sum);
    }

    private double value(int node) {
        return unknowns.prescribed(node) ? 0 : response[node];
    }

    /**
     * Refines where the lowest temperature gets its error from, down to {@link #SHARE_AT_PLACE} of what is asked, in equal steps
     * of {@link #STEP_AT_PLACE} times at most.
     */
    void refineForLowest(double kelvin, int mostNodes) {
        double total = sum(product, false);
        if (total > 0) {
            double least = SHARE_AT_PLACE * kelvin;
            double steps = Math.max(1, Math.ceil(Math.log(total / least) / Math.log(STEP_AT_PLACE)));
            refine(product, total, least * Math.pow(total / least, 1 - 1 / steps), mostNodes);
        }
    }

    /** The gap of the triangles that are stuck. */
    double held() {
        return sum(gap, true);
    }

    /** What the triangles carry that are stuck, or the others. */
    private double sum(double[] carried, boolean stuck) {
        double sum = 0;
        for (int t = 0; t < mesh.triangles; t++) {
            sum += mesh.stuck[t] == stuck ? carried[t] : 0;
        }
        return sum;
    }

    /** The stuck triangle with the largest gap, or -1. */
    int worstStuck() {
        int worst = -1;
        for (int t = 0; t < mesh.triangles; t++) {
            worst = mesh.stuck[t] && (worst < 0 || gap[t] > gap[worst]) ? t : worst;
        }
        return worst;
    }

    /** Of an estimated gap, what u's error has of it; with a half the catalogue's temperatures were off by a twentieth more on average. */
    private static final double SHARE_OF_TEMPERATURE = 0.6;
    /**
     * What a residual's energy comes to as a gap at most; 0.05 to 2.4 in the catalogue, 0.2 by the median. Where temperatures are
     * exact but for rounding, and those with one environment alone at 1 are not, it would be without bounds.
     */
    private static final double MOST_OF_RESIDUAL = 4;

    private static final double STEP = 16;
    private static final double STEP_AROUND_STUCK = 4;
    private static final double STEP_AT_PLACE = 256;
    /** Of what is asked at a place: a step that misses it costs a level more. */
    private static final double SHARE_AT_PLACE = 0.5;

    private static final double BESIDE_STUCK = 0.05;
}
