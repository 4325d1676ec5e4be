package coldseam.conduction.solid;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Coupling;
import coldseam.conduction.DrawingFault;
import coldseam.conduction.NetHeatFlow;
import coldseam.conduction.SurfaceTemperature;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;
import org.eclipse.collections.impl.factory.primitive.DoubleLists;

/**
 * A body as an image of the one form that all bodies have in common which conduct alike: cell by cell of its coarsest grid,
 * without names, and of it and its mirror image in the plane x = y the one whose bytes come first. So a left-handed corner and
 * its right-handed fellow are one body, and one solution to the last digit.
 *
 * <p>The other 46 symmetries of a cube are not tried: of the 103 different bodies of the fixture houses' corners the mirror makes
 * 99, and all of them make 99 as well.
 */
public final class BodyImage {

    private final SolidBody body;
    private final SolidBody common;
    private final boolean swapped;
    /** The painted box of each cell of the form in common, -1 where none is solid; none where the body is its own. */
    private final int[] pieces;

    private final ImmutableList<String> notes;

    private BodyImage(SolidBody body) {
        this.body = body;
        this.common = body;
        this.swapped = false;
        this.pieces = new int[0];
        this.notes = Lists.immutable.empty();
    }

    private BodyImage(Drawn drawn, ImmutableList<String> notes) {
        this.body = drawn.painted.body;
        this.common = drawn.body();
        this.swapped = drawn.swapped;
        this.pieces = drawn.pieces();
        this.notes = notes;
    }

    /**
     * A body as an image. One that has a fault, a patch, a probe, air outside its extent or a slab too thin to be a box is its own.
     */
    public static BodyImage of(SolidBody body) {
        MutableList<DrawingFault> faults = Lists.mutable.empty();
        MutableList<String> notes = Lists.mutable.empty();
        Optional<PaintedGrid> painted = BodySolver.painted(body, faults, notes)
                .filter(each -> faults.isEmpty()
                        && body.patches().isEmpty()
                        && body.probes().isEmpty()
                        && !each.reachesOut()
                        && !thin(each));
        if (painted.isEmpty()) {
            return new BodyImage(body);
        }
        Drawn straight = new Drawn(painted.get(), false);
        Drawn swapped = new Drawn(painted.get(), true);
        return new BodyImage(
                Arrays.compare(straight.content, swapped.content) <= 0 ? straight : swapped, notes.toImmutable());
    }

    private static boolean thin(PaintedGrid painted) {
        for (double[] plane : painted.plane) {
            for (int i = 1; i < plane.length; i++) {
                if (!(plane[i] - plane[i - 1] >= 2 * SolidBody.SNAP)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** What all bodies have in common that conduct alike. */
    public SolidBody common() {
        return common;
    }

    /** What is asked of {@link #common()} where this is asked of the body. */
    public Accuracy common(Accuracy accuracy) {
        return isItsOwn()
                ? accuracy
                : accuracy.aim()
                        .map(aim -> accuracy.aimedAt(common(aim.environment()), aim.kelvin()))
                        .orElse(accuracy);
    }

    /** Whether nothing was made of the body. */
    boolean isItsOwn() {
        return pieces.length == 0;
    }

    /**
     * The body's solution.
     *
     * @param solved of {@link #common()}
     * @param accuracy that was asked of the body
     */
    public BodySolution of(BodySolution solved, Accuracy accuracy) {
        if (isItsOwn()) {
            return solved;
        }
        ImmutableList<String> names = body.environments().collect(BodyEnvironment::name);
        MutableList<Coupling> couplings = Lists.mutable.empty();
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                couplings.add(new Coupling(
                        names.get(i), names.get(j), solved.coupling(common(names.get(i)), common(names.get(j)))));
            }
        }
        MutableList<NetHeatFlow> flows = Lists.mutable.empty();
        MutableList<SurfaceTemperature<Place>> surfaces = Lists.mutable.empty();
        for (String name : names) {
            String same = common(name);
            NetHeatFlow flow =
                    solved.heatFlows().detect(each -> each.environment().equals(same));
            flows.add(new NetHeatFlow(name, flow.value(), slopes(flow)));
            SurfaceTemperature<Place> lowest = solved.surface(same);
            surfaces.add(new SurfaceTemperature<>(name, lowest.lowest(), swap(lowest.at()), lowest.change()));
        }
        return new BodySolution(
                body,
                couplings.toImmutable(),
                flows.toImmutable(),
                surfaces.toImmutable(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                accuracy.temperatures()
                        ? new PackedBodyField(solved.field()::packed, body, swapped)
                        : new NoBodyField(),
                accuracy,
                solved.outcome(),
                solved.unknowns(),
                solved.seconds(),
                notes.newWithAll(solved.outcome().note().stream().toList()));
    }

    /** The number of an environment is its name in common. */
    private String common(String environment) {
        return String.valueOf(
                body.environments().detectIndex(each -> each.name().equals(environment)));
    }

    private Place swap(Place at) {
        return swapped ? new Place(at.y(), at.x(), at.z()) : at;
    }

    /** By the body's own boxes. */
    private ImmutableDoubleList slopes(NetHeatFlow solved) {
        if (solved.slopes().isEmpty()) {
            return solved.slopes();
        }
        double[] all = new double[body.painted().size()];
        for (int cell = 0; cell < pieces.length; cell++) {
            if (pieces[cell] >= 0) {
                all[pieces[cell]] += solved.slopes().get(cell);
            }
        }
        return DoubleLists.immutable.of(all);
    }

    /** A painted grid, or its mirror image, as a body of its own. */
    private static final class Drawn {

        private final PaintedGrid painted;
        private final boolean swapped;
        private final byte[] content;

        Drawn(PaintedGrid painted, boolean swapped) {
            this.painted = painted;
            this.swapped = swapped;
            this.content = content();
        }

        private int own(int direction) {
            return swapped && direction < 2 ? 1 - direction : direction;
        }

        private interface Cell {
            void at(int x, int y, int z, int own);
        }

        /** All cells, x fastest, each with its number in the painted grid. */
        private void each(Cell cell) {
            for (int z = 0; z < painted.n[2]; z++) {
                for (int y = 0; y < painted.n[own(1)]; y++) {
                    for (int x = 0; x < painted.n[own(0)]; x++) {
                        cell.at(x, y, z, swapped ? painted.cell(y, x, z) : painted.cell(x, y, z));
                    }
                }
            }
        }

        private BoxSide own(BoxSide side) {
            return BoxSide.values()[2 * own(side.direction()) + (side.high() ? 1 : 0)];
        }

        private ImmutableSet<BoxSide> cutPlanes() {
            EnumSet<BoxSide> cut = EnumSet.noneOf(BoxSide.class);
            painted.body.cutPlanes().forEach(side -> cut.add(own(side)));
            return Sets.immutable.ofAll(cut);
        }

        /** Planes, what cells and their sides are, environments: all that is solved, and no more. */
        private byte[] content() {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (DataOutputStream to = new DataOutputStream(bytes)) {
                for (int d = 0; d < 3; d++) {
                    double[] plane = painted.plane[own(d)];
                    to.writeInt(plane.length);
                    for (double each : plane) {
                        // No negative zero.
                        to.writeDouble(each + 0.0);
                    }
                }
                to.writeDouble(painted.body.multiplicity());
                for (BoxSide side : BoxSide.values()) {
                    to.writeBoolean(cutPlanes().contains(side));
                }
                to.writeInt(painted.body.environments().size());
                for (BodyEnvironment each : painted.body.environments()) {
                    to.writeDouble(each.temperature());
                }
                int[] airs = painted.airs();
                MutableList<IOException> torn = Lists.mutable.empty();
                each((x, y, z, cell) -> {
                    try {
                        write(to, cell, airs[cell]);
                    } catch (IOException impossible) {
                        torn.add(impossible);
                    }
                });
                if (torn.notEmpty()) {
                    throw torn.getFirst();
                }
            } catch (IOException impossible) {
                throw new UncheckedIOException(impossible);
            }
            return bytes.toByteArray();
        }

        /** The same as a body: a box for each cell. */
        SolidBody body() {
            int[] airs = painted.airs();
            MutableList<PaintedBox> boxes = Lists.mutable.empty();
            each((x, y, z, cell) -> {
                Cuboid box = box(x, y, z);
                boxes.add(
                        painted.piece[cell] >= 0
                                ? new PaintedBox.Solid("", painted.conductivity(cell), box)
                                : airs[cell] >= 0
                                        ? new PaintedBox.Air(
                                                String.valueOf(airs[cell]), box, Optional.of(faces(x, y, z)))
                                        : new PaintedBox.Adiabatic(box));
            });
            return new SolidBody(
                    "",
                    Cuboid.of(end(0, false), end(1, false), end(2, false), end(0, true), end(1, true), end(2, true)),
                    painted.body.multiplicity(),
                    cutPlanes(),
                    boxes.toImmutable(),
                    painted.body
                            .environments()
                            .collectWithIndex(
                                    (each, i) -> BodyEnvironment.of(String.valueOf(i), each.temperature(), 0)),
                    Lists.immutable.empty(),
                    Lists.immutable.empty());
        }

        private double end(int direction, boolean high) {
            return plane(direction, high ? painted.n[own(direction)] : 0);
        }

        private double plane(int direction, int i) {
            return painted.plane[own(direction)][i] + 0.0;
        }

        private Cuboid box(int x, int y, int z) {
            return Cuboid.of(plane(0, x), plane(1, y), plane(2, z), plane(0, x + 1), plane(1, y + 1), plane(2, z + 1));
        }

        /** The resistances of what is solid about a cell of air, on the sides that face it; 0 where nothing does. */
        private Faces faces(int x, int y, int z) {
            Faces faces = Faces.all(0);
            for (BoxSide side : BoxSide.values()) {
                int[] at = {x, y, z};
                int d = side.direction();
                at[d] += side.high() ? -1 : 1;
                boolean within = at[d] >= 0 && at[d] < painted.n[own(d)];
                int cell =
                        !within ? -1 : swapped ? painted.cell(at[1], at[0], at[2]) : painted.cell(at[0], at[1], at[2]);
                if (within && painted.piece[cell] >= 0) {
                    int surface = PaintedGrid.FIRST_SURFACE
                            - painted.side[6 * cell + own(side).ordinal()];
                    faces = faces.with(side, painted.resistance(surface));
                }
            }
            return faces;
        }

        /** The painted box of each cell, -1 where none is solid. */
        int[] pieces() {
            int[] all = new int[painted.piece.length];
            int[] count = {0};
            each((x, y, z, cell) -> all[count[0]++] = painted.piece[cell]);
            return all;
        }

        private void write(DataOutputStream to, int cell, int air) throws IOException {
            to.writeDouble(painted.conductivity(cell));
            to.writeByte(air);
            for (BoxSide side : BoxSide.values()) {
                int surface = painted.piece[cell] < 0
                        ? -1
                        : PaintedGrid.FIRST_SURFACE
                                - painted.side[6 * cell + own(side).ordinal()];
                to.writeDouble(surface < 0 ? -1 : painted.resistance(surface));
            }
        }
    }
}
