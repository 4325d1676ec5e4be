package coldseam.conduction.solid;

import coldseam.conduction.DrawingFault;
import coldseam.conduction.Figures;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.eclipse.collections.api.list.MutableList;

/** What is wrong with a body once it is painted: each fault by name and place. */
record PaintedFaults(PaintedGrid grid, MutableList<DrawingFault> faults) {

    /** Of one kind as many are told; the rest are counted. */
    private static final int MOST = 8;

    /** Good conductors that touch along a line only: with a ratio above this the gap would not close. */
    private static final double ALTERNATING = 100;

    /** (Output) every fault. */
    static void find(PaintedGrid grid, MutableList<DrawingFault> faults) {
        PaintedFaults find = new PaintedFaults(grid, faults);
        find.exposedFaces();
        find.touchingLines();
        find.partsWithoutEnvironment();
        find.meetingTemperatures();
        find.unusedParts();
    }

    /** A rectangle or line that grows to hold all of one fault. */
    private static final class Extent {
        private final int piece;
        private final double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
        private final double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};

        Extent(int piece) {
            this.piece = piece;
        }

        void add(int d, double from, double to) {
            low[d] = Math.min(low[d], from);
            high[d] = Math.max(high[d], to);
        }

        @Override
        public String toString() {
            return "from " + BodyCheck.place(low[0], low[1], low[2]) + " to "
                    + BodyCheck.place(high[0], high[1], high[2]);
        }
    }

    private void add(DrawingFault.About about, int index, String text) {
        faults.add(new DrawingFault(about, index, text));
    }

    private void exposedFaces() {
        Map<String, Extent> found = new LinkedHashMap<>();
        for (int z = 0; z < grid.n[2]; z++) {
            for (int y = 0; y < grid.n[1]; y++) {
                for (int x = 0; x < grid.n[0]; x++) {
                    int cell = grid.cell(x, y, z);
                    for (int s = 0; s < 6 && grid.piece[cell] >= 0; s++) {
                        if (grid.exposed(x, y, z, s)) {
                            int[] at = {x, y, z};
                            int piece = grid.piece[cell];
                            String key = "the " + BoxSide.values()[s] + " face of "
                                    + BodyCheck.piece(grid.body, grid.piece[cell]) + " at " + "xyz".charAt(s / 2)
                                    + " = " + Figures.number(grid.plane[s / 2][at[s / 2] + s % 2]) + " m";
                            Extent extent = found.computeIfAbsent(key, any -> new Extent(piece));
                            for (int d = 0; d < 3; d++) {
                                double low = grid.plane[d][at[d] + (d == s / 2 ? s % 2 : 0)];
                                extent.add(d, low, d == s / 2 ? low : grid.plane[d][at[d] + 1]);
                            }
                        }
                    }
                }
            }
        }
        tell(
                found,
                " faces nothing; paint air of an environment or an adiabatic box there, or name the face among the"
                        + " cut-planes");
    }

    private void tell(Map<String, Extent> found, String what) {
        int told = 0;
        for (Map.Entry<String, Extent> each : found.entrySet()) {
            if (++told > MOST) {
                add(
                        DrawingFault.About.PAINTED,
                        each.getValue().piece,
                        (found.size() - MOST) + " more of the same kind");
                break;
            }
            add(DrawingFault.About.PAINTED, each.getValue().piece, each.getKey() + ", " + each.getValue() + "," + what);
        }
    }

    /** Edges of the grid around which good and poor conductors alternate. */
    private void touchingLines() {
        Map<String, Extent> found = new LinkedHashMap<>();
        for (int d = 0; d < 3; d++) {
            int e = (d + 1) % 3;
            int f = (d + 2) % 3;
            int[] at = new int[3];
            for (at[f] = 1; at[f] < grid.n[f]; at[f]++) {
                for (at[e] = 1; at[e] < grid.n[e]; at[e]++) {
                    for (at[d] = 0; at[d] < grid.n[d]; at[d]++) {
                        int[] four = around(at, e, f);
                        if (alternates(four)) {
                            double[] line = new double[3];
                            line[e] = grid.plane[e][at[e]];
                            line[f] = grid.plane[f][at[f]];
                            int good = grid.conductivity(four[0]) > grid.conductivity(four[1]) ? 0 : 1;
                            String key = BodyCheck.piece(grid.body, grid.piece[four[good]]) + " and "
                                    + BodyCheck.piece(grid.body, grid.piece[four[good + 2]])
                                    + " touch along a line only, at " + "xyz".charAt(e) + " = "
                                    + Figures.number(line[e]) + " m, " + "xyz".charAt(f) + " = "
                                    + Figures.number(line[f]) + " m";
                            int piece = grid.piece[four[good]];
                            Extent extent = found.computeIfAbsent(key, any -> new Extent(piece));
                            extent.add(e, line[e], line[e]);
                            extent.add(f, line[f], line[f]);
                            extent.add(d, grid.plane[d][at[d]], grid.plane[d][at[d] + 1]);
                        }
                    }
                }
            }
        }
        tell(found, " with poor conductors or air between; overlap them or part them");
    }

    /** The four cells around an edge, in order. */
    private int[] around(int[] at, int e, int f) {
        int[] four = new int[4];
        for (int i = 0; i < 4; i++) {
            int[] cell = at.clone();
            cell[e] -= i == 0 || i == 3 ? 1 : 0;
            cell[f] -= i < 2 ? 1 : 0;
            four[i] = grid.cell(cell[0], cell[1], cell[2]);
        }
        return four;
    }

    private boolean alternates(int[] four) {
        double a = Math.min(grid.conductivity(four[0]), grid.conductivity(four[2]));
        double b = Math.min(grid.conductivity(four[1]), grid.conductivity(four[3]));
        double mostOfA = Math.max(grid.conductivity(four[0]), grid.conductivity(four[2]));
        double mostOfB = Math.max(grid.conductivity(four[1]), grid.conductivity(four[3]));
        return a > ALTERNATING * mostOfB || b > ALTERNATING * mostOfA;
    }

    private void partsWithoutEnvironment() {
        BitSet seen = new BitSet(grid.piece.length);
        for (int start = 0; start < grid.piece.length; start++) {
            if (grid.piece[start] < 0 || seen.get(start)) {
                continue;
            }
            boolean open = false;
            ArrayDeque<Integer> next = new ArrayDeque<>();
            next.add(start);
            seen.set(start);
            while (!next.isEmpty()) {
                int cell = next.removeFirst();
                for (int s = 0; s < 6; s++) {
                    int beyond = grid.side[6 * cell + s];
                    open |= beyond <= PaintedGrid.FIRST_SURFACE;
                    if (beyond >= 0 && !seen.get(beyond)) {
                        seen.set(beyond);
                        next.add(beyond);
                    }
                }
            }
            if (!open) {
                add(
                        DrawingFault.About.PAINTED,
                        grid.piece[start],
                        BodyCheck.piece(grid.body, grid.piece[start]) + " at " + middle(start)
                                + " and what it touches face no environment at all, so their temperature is not defined; join"
                                + " them to the rest or remove them");
            }
        }
    }

    private String middle(int cell) {
        int x = cell % grid.n[0];
        int y = cell / grid.n[0] % grid.n[1];
        int z = cell / (grid.n[0] * grid.n[1]);
        return BodyCheck.place(
                (grid.plane[0][x] + grid.plane[0][x + 1]) / 2,
                (grid.plane[1][y] + grid.plane[1][y + 1]) / 2,
                (grid.plane[2][z] + grid.plane[2][z + 1]) / 2);
    }

    /** Corners of the grid where two environments prescribe their temperatures. */
    private void meetingTemperatures() {
        int[] m = {grid.n[0] + 1, grid.n[1] + 1, grid.n[2] + 1};
        int[] held = new int[m[0] * m[1] * m[2]];
        java.util.Arrays.fill(held, -1);
        Map<String, String> found = new LinkedHashMap<>();
        for (int cell = 0; cell < grid.piece.length; cell++) {
            for (int s = 0; s < 6 && grid.piece[cell] >= 0; s++) {
                int surface = PaintedGrid.FIRST_SURFACE - grid.side[6 * cell + s];
                if (surface < 0 || grid.resistance(surface) > 0) {
                    continue;
                }
                int faced = grid.environmentOf(grid.partOfSurface(surface));
                for (int corner = 0; corner < 4; corner++) {
                    int[] at = {cell % grid.n[0], cell / grid.n[0] % grid.n[1], cell / (grid.n[0] * grid.n[1])};
                    at[s / 2] += s % 2;
                    at[(s / 2 + 1) % 3] += corner % 2;
                    at[(s / 2 + 2) % 3] += corner / 2;
                    int node = (at[2] * m[1] + at[1]) * m[0] + at[0];
                    if (held[node] >= 0 && held[node] != faced) {
                        String place =
                                BodyCheck.place(grid.plane[0][at[0]], grid.plane[1][at[1]], grid.plane[2][at[2]]);
                        found.putIfAbsent(
                                name(Math.min(held[node], faced)) + " and " + name(Math.max(held[node], faced)), place);
                    }
                    held[node] = faced;
                }
            }
        }
        found.forEach((pair, place) -> add(
                DrawingFault.About.WHOLE,
                0,
                "the surfaces of " + pair + " have no surface resistance and meet at " + place
                        + ": the heat flow there is infinite; give one of them a resistance or part them"));
    }

    private String name(int environment) {
        return grid.body.environments().get(environment).name();
    }

    /** Parts that no surface belongs to, and patches whose surfaces differ in resistance: their mean is not the flow's. */
    private void unusedParts() {
        BitSet used = new BitSet(grid.parts);
        double[] resistance = new double[grid.parts];
        BitSet differ = new BitSet(grid.parts);
        for (int cell = 0; cell < grid.piece.length; cell++) {
            for (int s = 0; s < 6 && grid.piece[cell] >= 0; s++) {
                int surface = PaintedGrid.FIRST_SURFACE - grid.side[6 * cell + s];
                if (surface >= 0) {
                    int part = grid.partOfSurface(surface);
                    differ.set(
                            part, differ.get(part) || used.get(part) && resistance[part] != grid.resistance(surface));
                    resistance[part] = grid.resistance(surface);
                    used.set(part);
                    used.set(grid.environmentOf(part));
                }
            }
        }
        int environments = grid.body.environments().size();
        for (int part = 0; part < grid.parts; part++) {
            if (!used.get(part)) {
                add(
                        part < environments ? DrawingFault.About.ENVIRONMENT : DrawingFault.About.PATCH,
                        part < environments ? part : part - environments,
                        String.format(
                                Locale.ROOT,
                                part < environments
                                        ? "the air of environment %s touches no solid; paint a box of it against a surface, or"
                                                + " leave the environment out"
                                        : "patch %s holds no surface that faces its environment's air; move its box there",
                                part < environments
                                        ? name(part)
                                        : grid.body
                                                .patches()
                                                .get(part - environments)
                                                .name()));
            } else if (part >= environments && differ.get(part)) {
                add(
                        DrawingFault.About.PATCH,
                        part - environments,
                        "patch " + grid.body.patches().get(part - environments).name()
                                + " holds surfaces of more than one surface resistance; draw one patch for each");
            }
        }
    }
}
