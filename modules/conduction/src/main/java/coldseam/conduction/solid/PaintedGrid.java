package coldseam.conduction.solid;

import coldseam.conduction.Figures;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.MutableDoubleList;
import org.eclipse.collections.impl.factory.primitive.DoubleLists;

/**
 * The coarsest grid of a body: one plane wherever a box begins or ends, and what fills each cell and each face between.
 *
 * <p>A <em>part</em> is what surfaces are counted to: the environments first, then the patches, each a part of its own
 * although it faces its environment's air. A <em>surface</em> is a part together with the way heat takes, and has one
 * resistance.
 *
 * <p>Of a cell's side: the neighbouring cell where that is solid, {@link #ADIABATIC}, or {@code FIRST_SURFACE − s} for
 * surface s.
 */
final class PaintedGrid {

    static final int ADIABATIC = -1;
    static final int FIRST_SURFACE = -2;
    private static final int NOTHING = -1;
    private static final int MANY_PLANES = 30;

    final SolidBody body;
    /** m, ascending, of each direction; from face to face of the extent. */
    final double[][] plane = new double[3][];
    /** How many slabs there are in each direction. */
    final int[] n = new int[3];
    /** The painted box that fills a cell, x fastest; -1 where none is solid. */
    final int[] piece;
    /** W/(m·K) of each cell, 0 where it is not solid. */
    private final double[] conductivity;
    /** Six sides of each cell. */
    final int[] side;
    /** How many environments and patches there are. */
    final int parts;

    /** m²·K/W of each way a surface may have: three of its environment's, then each that some air has of its own. */
    private final double[] resistance;
    /** Resistances that some air has of its own, distinct. */
    private final double[] own;

    private final MutableList<String> notes;
    /** All planes, also those outside the extent. */
    private final double[][] all = new double[3][];

    private final int[] first = new int[3];
    private final int[] allSlabs = new int[3];
    private final int[] code;
    private boolean airPastCut;

    /** (Output) what was made one or left out. Faults are found by {@link PaintedFaults}. */
    PaintedGrid(SolidBody body, MutableList<String> notes) {
        this.body = body;
        this.notes = notes;
        for (int d = 0; d < 3; d++) {
            planes(d);
        }
        parts = body.environments().size() + body.patches().size();
        own = own();
        resistance = resistances();
        code = new int[allSlabs[0] * allSlabs[1] * allSlabs[2]];
        Arrays.fill(code, NOTHING);
        for (int i = 0; i < body.painted().size(); i++) {
            fill(body.painted().get(i).box(), i, NOTHING);
        }
        for (int i = 0; i < body.patches().size(); i++) {
            Patch patch = body.patches().get(i);
            fill(patch.box(), body.painted().size() + i, environment(patch.environment()));
        }
        piece = new int[n[0] * n[1] * n[2]];
        side = new int[6 * piece.length];
        classify();
        conductivity = new double[piece.length];
        for (int cell = 0; cell < piece.length; cell++) {
            if (piece[cell] >= 0 && body.painted().get(piece[cell]) instanceof PaintedBox.Solid solid) {
                conductivity[cell] = solid.conductivity();
            }
        }
        if (airPastCut) {
            notes.add("air is painted past a cut plane; the body's face there is adiabatic all the same");
        }
    }

    private void planes(int d) {
        MutableDoubleList at =
                DoubleLists.mutable.of(body.extent().low(d), body.extent().high(d));
        for (PaintedBox each : body.painted()) {
            at.addAll(each.box().low(d), each.box().high(d));
        }
        for (Patch each : body.patches()) {
            at.addAll(each.box().low(d), each.box().high(d));
        }
        at.sortThis();
        MutableDoubleList distinct = DoubleLists.mutable.empty();
        for (int i = 0; i < at.size(); i++) {
            double here = at.get(i);
            double last = distinct.isEmpty() ? Double.NEGATIVE_INFINITY : distinct.getLast();
            if (here - last > SolidBody.SNAP) {
                distinct.add(here);
            } else if (here != last) {
                if (here - last > 1e-9) {
                    notes.add(String.format(
                            Locale.ROOT,
                            "planes at %s = %.7f and %.7f m are closer than %s mm and were made one",
                            "xyz".charAt(d),
                            last,
                            here,
                            Figures.number(1e3 * SolidBody.SNAP)));
                }
                if (here == body.extent().low(d) || here == body.extent().high(d)) {
                    distinct.set(distinct.size() - 1, here);
                }
            }
        }
        all[d] = distinct.toArray();
        allSlabs[d] = all[d].length - 1;
        first[d] = nearest(d, body.extent().low(d));
        n[d] = nearest(d, body.extent().high(d)) - first[d];
        plane[d] = Arrays.copyOfRange(all[d], first[d], first[d] + n[d] + 1);
        if (n[d] > MANY_PLANES) {
            notes.add((n[d] + 1) + " planes in " + "xyz".charAt(d)
                    + ": every plane runs through the whole drawing; draw one piece and use symmetry or multiplicity");
        }
    }

    private int nearest(int d, double at) {
        int found = Arrays.binarySearch(all[d], at);
        if (found >= 0) {
            return found;
        }
        int after = Math.min(-found - 1, all[d].length - 1);
        return after > 0 && at - all[d][after - 1] < all[d][after] - at ? after - 1 : after;
    }

    private double[] own() {
        MutableDoubleList all = DoubleLists.mutable.empty();
        for (PaintedBox each : body.painted()) {
            ownOf(each).ifPresent(faces -> {
                for (BoxSide side : BoxSide.values()) {
                    if (!all.contains(faces.of(side))) {
                        all.add(faces.of(side));
                    }
                }
            });
        }
        return all.toArray();
    }

    private static Optional<Faces> ownOf(PaintedBox painted) {
        return painted instanceof PaintedBox.Air air ? air.own() : Optional.empty();
    }

    private double[] resistances() {
        double coldest =
                body.environments().collectDouble(BodyEnvironment::temperature).minIfEmpty(0);
        int ways = 3 + own.length;
        double[] all = new double[ways * parts];
        for (int p = 0; p < parts; p++) {
            BodyEnvironment faced = body.environments().get(environmentOf(p));
            boolean receives = faced.temperature() == coldest;
            for (int way = 0; way < 3; way++) {
                BoxSide outward = way == 0 ? BoxSide.X0 : way == 1 ? BoxSide.Z0 : BoxSide.Z1;
                all[ways * p + way] = faced.resistance(outward, receives);
            }
            System.arraycopy(own, 0, all, ways * p + 3, own.length);
        }
        return all;
    }

    /** Fills a box; where only the air of one environment is to be covered, all else stays. */
    private void fill(Cuboid box, int with, int onlyAirOf) {
        int[] from = new int[3];
        int[] to = new int[3];
        for (int d = 0; d < 3; d++) {
            from[d] = nearest(d, box.low(d));
            to[d] = nearest(d, box.high(d));
        }
        for (int z = from[2]; z < to[2]; z++) {
            for (int y = from[1]; y < to[1]; y++) {
                for (int x = from[0]; x < to[0]; x++) {
                    int at = (z * allSlabs[1] + y) * allSlabs[0] + x;
                    if (onlyAirOf == NOTHING || code[at] >= 0 && airOf(code[at]) == onlyAirOf) {
                        code[at] = with;
                    }
                }
            }
        }
    }

    private void classify() {
        int[] at = new int[3];
        for (at[2] = 0; at[2] < n[2]; at[2]++) {
            for (at[1] = 0; at[1] < n[1]; at[1]++) {
                for (at[0] = 0; at[0] < n[0]; at[0]++) {
                    int cell = cell(at[0], at[1], at[2]);
                    int filled = codeAt(at);
                    piece[cell] = solid(filled) ? filled : NOTHING;
                    for (int s = 0; s < 6 && piece[cell] >= 0; s++) {
                        side[6 * cell + s] = classify(at, s);
                    }
                }
            }
        }
    }

    private int classify(int[] at, int s) {
        int d = s / 2;
        boolean atFace = at[d] == (s % 2 == 0 ? 0 : n[d] - 1);
        at[d] += s % 2 == 0 ? -1 : 1;
        int beyond = codeAt(at);
        int there = atFace ? NOTHING : cell(at[0], at[1], at[2]);
        at[d] -= s % 2 == 0 ? -1 : 1;
        int part = beyond < 0 ? NOTHING : partOf(beyond);
        if (atFace && body.cutPlanes().contains(BoxSide.values()[s])) {
            airPastCut |= part >= 0;
            return ADIABATIC;
        }
        if (beyond >= 0 && solid(beyond)) {
            return there;
        }
        return part < 0 ? ADIABATIC : FIRST_SURFACE - ((3 + own.length) * part + way(beyond, s));
    }

    /** Which of a part's resistances a cell's side has towards the air beyond. */
    private int way(int beyond, int s) {
        Optional<Faces> faces = beyond >= body.painted().size()
                ? Optional.empty()
                : ownOf(body.painted().get(beyond));
        if (faces.isEmpty()) {
            return s < 4 ? 0 : s - 3;
        }
        double wanted = faces.get().of(BoxSide.values()[s]);
        int i = 0;
        while (own[i] != wanted) {
            i++;
        }
        return 3 + i;
    }

    /** Whether two pieces are of one material, so that no seam shows between them. */
    boolean alike(int one, int other) {
        return one == other
                || one >= 0
                        && other >= 0
                        && body.painted().get(one) instanceof PaintedBox.Solid a
                        && body.painted().get(other) instanceof PaintedBox.Solid b
                        && a.material().equals(b.material())
                        && a.conductivity() == b.conductivity();
    }

    /** Whether a side that is adiabatic faces neither a cut plane nor an adiabatic box. */
    boolean exposed(int x, int y, int z, int s) {
        int[] at = {x, y, z};
        int d = s / 2;
        boolean atFace = at[d] == (s % 2 == 0 ? 0 : n[d] - 1);
        at[d] += s % 2 == 0 ? -1 : 1;
        return side[6 * cell(x, y, z) + s] == ADIABATIC
                && codeAt(at) == NOTHING
                && !(atFace && body.cutPlanes().contains(BoxSide.values()[s]));
    }

    private int codeAt(int[] at) {
        int[] whole = new int[3];
        for (int d = 0; d < 3; d++) {
            whole[d] = at[d] + first[d];
            if (whole[d] < 0 || whole[d] >= allSlabs[d]) {
                return NOTHING;
            }
        }
        return code[(whole[2] * allSlabs[1] + whole[1]) * allSlabs[0] + whole[0]];
    }

    /** Whether something is painted past a face of the extent. */
    boolean reachesOut() {
        return allSlabs[0] > n[0] || allSlabs[1] > n[1] || allSlabs[2] > n[2];
    }

    /** The environment whose air each cell is, -1 where it is none. */
    int[] airs() {
        int[] airs = new int[piece.length];
        int[] at = new int[3];
        for (at[2] = 0; at[2] < n[2]; at[2]++) {
            for (at[1] = 0; at[1] < n[1]; at[1]++) {
                for (at[0] = 0; at[0] < n[0]; at[0]++) {
                    int filled = codeAt(at);
                    airs[cell(at[0], at[1], at[2])] = filled < 0 ? NOTHING : airOf(filled);
                }
            }
        }
        return airs;
    }

    int cell(int x, int y, int z) {
        return (z * n[1] + y) * n[0] + x;
    }

    /** W/(m·K) of a cell, 0 where it is not solid. */
    double conductivity(int cell) {
        return conductivity[cell];
    }

    private boolean solid(int filled) {
        return filled >= 0
                && filled < body.painted().size()
                && body.painted().get(filled).match(solid -> true, air -> false, none -> false);
    }

    private int airOf(int filled) {
        return filled >= body.painted().size()
                ? NOTHING
                : body.painted()
                        .get(filled)
                        .match(solid -> NOTHING, air -> environment(air.environment()), none -> NOTHING);
    }

    /** The part whose air a cell is, -1 where it is none. */
    private int partOf(int filled) {
        return filled >= body.painted().size()
                ? body.environments().size() + filled - body.painted().size()
                : airOf(filled);
    }

    private int environment(String name) {
        return body.environments().detectIndex(each -> each.name().equals(name));
    }

    /** The name of the environment that a surface faces. */
    String environmentAt(int surface) {
        return body.environments().get(environmentOf(partOfSurface(surface))).name();
    }

    /** The environment a part faces. */
    int environmentOf(int part) {
        int environments = body.environments().size();
        return part < environments
                ? part
                : environment(body.patches().get(part - environments).environment());
    }

    /** m²·K/W of a surface. */
    double resistance(int surface) {
        return resistance[surface];
    }

    /** The part a surface belongs to. */
    int partOfSurface(int surface) {
        return surface / (3 + own.length);
    }
}
