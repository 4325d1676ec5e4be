package coldseam.junctions.vertex;

import coldseam.conduction.solid.BodyEnvironment;
import coldseam.conduction.solid.BoxSide;
import coldseam.conduction.solid.Cuboid;
import coldseam.conduction.solid.Faces;
import coldseam.conduction.solid.PaintedBox;
import coldseam.conduction.solid.SolidBody;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.HeatInput;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.SectionLayout;
import coldseam.junctions.section.Surroundings;
import coldseam.junctions.section.WarmFaces;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/**
 * A vertex as a body: x, y and z are its axes, z upright, with the inner faces' meeting at the origin.
 *
 * <p>Surface resistances are the sections' own: in the plane of a surface that surface's, elsewhere 0.13 m²·K/W indoors and
 * 0.04 outdoors.
 */
public final class VertexBody {

    /** m; a face this near to a surface's outer face is that face. */
    private static final double SAME_FACE = 1e-4;

    private final VertexSetup setup;
    private final VertexSections sections;
    private final VertexCells cells;
    private final VertexAir air;
    private final VertexSpaces spaces;
    private final String name;

    private VertexBody(
            String name,
            VertexSetup setup,
            Optional<CornerDetail> corner,
            BiFunction<Detail, JunctionSetup, SectionLayout> laying) {
        this.name = corner.map(each -> each.detail().name()).orElse(name);
        this.setup = setup;
        this.sections = new VertexSections(setup, corner, laying);
        this.cells = new VertexCells(setup, sections);
        this.air = new VertexAir(setup, cells);
        this.spaces = new VertexSpaces(setup, sections);
    }

    /**
     * Composes a vertex.
     *
     * @throws DetailDoesNotFit where neither its edges' sections nor its own detail say how it is built, with the reason
     */
    public static VertexBody of(String name, VertexSetup setup) {
        return of(name, setup, (detail, edge) -> SectionLayout.of(detail, edge));
    }

    /**
     * The same.
     *
     * @param laying lays a detail out on an edge's layers; may remember what it laid
     */
    static VertexBody of(String name, VertexSetup setup, BiFunction<Detail, JunctionSetup, SectionLayout> laying) {
        Optional<CornerDetail> corner = setup.corner();
        if (corner.filter(each -> !each.named()).isEmpty()) {
            return new VertexBody(name, setup, corner, laying);
        }
        try {
            VertexBody bare = new VertexBody(name, setup, Optional.empty(), laying);
            return bare.inDoubt().notEmpty() ? new VertexBody(name, setup, corner, laying) : bare;
        } catch (DetailDoesNotFit open) {
            return new VertexBody(name, setup, corner, laying);
        }
    }

    /** The corner's own detail that it is built by; empty where the sections say it all. */
    public Optional<VertexResult.Own> corner() {
        return sections.corner.map(CornerBoxes::own);
    }

    /** Of blocks of its edges that meet where nothing says which goes on, which was taken, in plain words. */
    ImmutableList<String> inDoubt() {
        return cells.inDoubt()
                .collect(each -> "The details leave open whether " + each.taken() + " or " + each.other()
                        + " goes on here; counted: " + each.taken() + ", which conducts better.");
    }

    /** What was simplified, in plain words. */
    public ImmutableList<String> notes() {
        return sections.notes().newWithAll(air.notes()).newWithAll(spaces.notes(cells, air));
    }

    /** What lies outside the rooms. */
    ImmutableList<Surroundings.Space> spaces() {
        return spaces.all();
    }

    /** Temperature factor of what an axis' surface faces. */
    double factor(int axis) {
        return sections.space(axis).map(Surroundings.Space::factor).orElse(0.0);
    }

    /** With the surface resistances of ISO 6946. */
    public SolidBody heatFlow() {
        return body(name, indoors());
    }

    /** With 0.25 m²·K/W indoors (ISO 13788). */
    public SolidBody surfaceTemperature() {
        return body(name + ", for surface temperatures", Faces.all(WarmFaces.WALL_RSI));
    }

    /** The layers of an axis' surface; empty where there is none. */
    Optional<Band> band(int axis) {
        return sections.band(axis);
    }

    /** Whether the body is cut at an axis' end, 1 for growing coordinates. */
    boolean isCut(int axis, int side) {
        return sections.cut[axis][side];
    }

    /** m from where the inner or the outer faces meet to an axis' end. */
    double length(int axis, int side, boolean internal) {
        double corner = internal ? 0 : sections.outside[axis];
        double[] line = sections.line[axis];
        return side == 0 ? corner - line[0] : line[line.length - 1] - corner;
    }

    /** The face of the body at an axis' end. */
    BoxSide side(int axis, int side) {
        boolean high = axis < 2 || setup.upwards() ? side == 1 : side == 0;
        return BoxSide.values()[2 * axis + (high ? 1 : 0)];
    }

    private Faces indoors() {
        Faces faces = Faces.all(Surroundings.STILL_AIR);
        for (int axis = 0; axis < 3; axis++) {
            Optional<Band> band = sections.band(axis);
            faces = band.isPresent() ? faces.with(side(axis, 0), band.get().rsi()) : faces;
        }
        return faces;
    }

    /** Air outside the rooms with the resistances of what faces it. */
    private record Outside(Surroundings.Space space, Faces faces) {}

    private Outside outside(int[] cell) {
        Surroundings.Space space = spaces.at(cell);
        Faces faces = Faces.all(space.surfaceResistance());
        for (int axis = 0; axis < 3; axis++) {
            Band band =
                    sections.band(axis, sections.middle(2, cell[2]) < 0 ? 0 : 1).orElse(null);
            if (band != null && Math.abs(sections.line[axis][cell[axis]] - band.solvedOutside()) < SAME_FACE) {
                faces = faces.with(side(axis, 1), band.rse());
            }
        }
        return new Outside(space, faces);
    }

    /** What each box of {@link #heatFlow()} follows, in painting order; empty where none is solid. */
    ImmutableList<Optional<HeatInput>> inputs() {
        return parts(indoors()).collect(Part::input);
    }

    /** A painted box, and what its conductivity follows. */
    private record Part(PaintedBox box, Optional<HeatInput> input) {}

    private ImmutableList<Part> parts(Faces indoors) {
        MutableList<Part> painted = Lists.mutable.empty();
        Object[] fill = new Object[cells.size(0) * cells.size(1) * cells.size(2)];
        cells.each(cell -> fill[cells.index(cell)] = switch (air.at(cell)) {
            case VertexAir.INDOOR -> indoors;
            case VertexAir.OUTSIDE -> outside(cell);
            case VertexAir.ENCLOSED -> VertexAir.ENCLOSED;
            default -> substance(cells.at(cell));
        });
        boolean[] done = new boolean[fill.length];
        cells.each(cell -> {
            if (!done[cells.index(cell)]) {
                int kind = air.at(cell);
                Cuboid box = grown(cell, kind, fill, done);
                painted.add(new Part(
                        painted(cell, kind, fill[cells.index(cell)], box),
                        Optional.of(cells.at(cell))
                                .filter(each -> kind == VertexAir.SOLID)
                                .map(Filling::input)));
            }
        });
        return painted.toImmutable();
    }

    private SolidBody body(String title, Faces indoors) {
        return new SolidBody(
                title,
                box(new int[3], new int[] {cells.size(0), cells.size(1), cells.size(2)}),
                1,
                cutPlanes().toImmutable(),
                parts(indoors).collect(Part::box),
                environments(),
                Lists.immutable.empty(),
                Lists.immutable.empty());
    }

    private PaintedBox painted(int[] cell, int kind, Object filling, Cuboid box) {
        return switch (kind) {
            case VertexAir.SOLID -> solid(cells.at(cell), box);
            case VertexAir.ENCLOSED -> new PaintedBox.Adiabatic(box);
            case VertexAir.INDOOR -> new PaintedBox.Air(Surroundings.INDOOR, box, Optional.of((Faces) filling));
            default -> {
                Outside outside = (Outside) filling;
                yield new PaintedBox.Air(outside.space().name(), box, Optional.of(outside.faces()));
            }
        };
    }

    private ImmutableList<BodyEnvironment> environments() {
        double indoor = setup.indoorTemperature();
        return Lists.immutable
                .of(BodyEnvironment.of(Surroundings.INDOOR, indoor, Surroundings.STILL_AIR))
                .newWithAll(spaces.all()
                        .collect(each -> BodyEnvironment.of(
                                each.name(),
                                indoor - each.factor() * (indoor - setup.outdoorTemperature()),
                                each.surfaceResistance())));
    }

    private MutableSet<BoxSide> cutPlanes() {
        MutableSet<BoxSide> planes = Sets.mutable.empty();
        for (int axis = 0; axis < 3; axis++) {
            for (int side = 0; side < 2; side++) {
                if (isCut(axis, side) || side == 1 && sections.earth[axis]) {
                    planes.add(side(axis, side));
                }
            }
        }
        return planes;
    }

    private record Substance(String material, HeatInput input, double conductivity) {}

    private static Substance substance(Filling filling) {
        return new Substance(filling.material(), filling.input(), filling.conductivity());
    }

    private static PaintedBox.Solid solid(Filling filling, Cuboid box) {
        return new PaintedBox.Solid(filling.material(), filling.conductivity(), box);
    }

    /** The largest box of one filling from a cell on: first along axis 0, then 1, then 2. */
    private Cuboid grown(int[] from, int kind, Object[] fill, boolean[] done) {
        Object wanted = fill[cells.index(from)];
        int[] to = {from[0] + 1, from[1] + 1, from[2] + 1};
        for (int axis = 0; axis < 3; axis++) {
            while (to[axis] < cells.size(axis) && alike(from, to, axis, kind, wanted, fill, done)) {
                to[axis]++;
            }
        }
        visit(from, to, cell -> done[cells.index(cell)] = true);
        return box(from, to);
    }

    private boolean alike(int[] from, int[] to, int axis, int kind, Object wanted, Object[] fill, boolean[] done) {
        int[] low = from.clone();
        int[] high = to.clone();
        low[axis] = to[axis];
        high[axis] = to[axis] + 1;
        boolean[] all = {true};
        visit(
                low,
                high,
                cell -> all[0] &= !done[cells.index(cell)]
                        && air.at(cell) == kind
                        && Objects.equals(fill[cells.index(cell)], wanted));
        return all[0];
    }

    private static void visit(int[] from, int[] to, VertexCells.Cell visitor) {
        int[] cell = new int[3];
        for (cell[2] = from[2]; cell[2] < to[2]; cell[2]++) {
            for (cell[1] = from[1]; cell[1] < to[1]; cell[1]++) {
                for (cell[0] = from[0]; cell[0] < to[0]; cell[0]++) {
                    visitor.at(cell);
                }
            }
        }
    }

    private Cuboid box(int[] from, int[] to) {
        double up = setup.upwards() ? 1 : -1;
        return Cuboid.of(
                sections.line[0][from[0]],
                sections.line[1][from[1]],
                up * sections.line[2][from[2]],
                sections.line[0][to[0]],
                sections.line[1][to[1]],
                up * sections.line[2][to[2]]);
    }
}
