package coldseam.junctions.point;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.conduction.SurfaceTemperature;
import coldseam.conduction.solid.BodyEnvironment;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BoxSide;
import coldseam.conduction.solid.Cuboid;
import coldseam.conduction.solid.PaintedBox;
import coldseam.conduction.solid.Place;
import coldseam.conduction.solid.SolidBody;
import coldseam.envelope.Material;
import coldseam.junctions.BodySolving;
import coldseam.junctions.PointSetup;
import coldseam.junctions.plan.SectionPlan.Fill;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A point whose bodies are not all round: boxes through a square of the surface. x runs sideways, y upwards, z outwards from the
 * inner face. It is the same on both sides of x = 0, so that half of it is solved, and a quarter where it is the same above and
 * below, too.
 *
 * @param sheets of the surface, inside → outside
 * @param blocks in painting order, whole
 * @param interiorResistance Rsi, m²·K/W
 * @param exteriorResistance Rse, m²·K/W
 * @param half m, half the side of the square
 * @param quarter whether it is the same above and below
 * @param indoorTemperature °C
 * @param outdoorTemperature °C
 */
public record PointBoxes(
        String name,
        ImmutableList<PointSection.Sheet> sheets,
        ImmutableList<Block> blocks,
        double interiorResistance,
        double exteriorResistance,
        double half,
        boolean quarter,
        double indoorTemperature,
        double outdoorTemperature) {

    /** The side of the square with the area of a circle of diameter 1. */
    private static final double SQUARE = Math.sqrt(Math.PI) / 2;

    /** m, of air past what is drawn. */
    private static final double MARGIN = 0.05;

    /** m², Rsi for surface temperatures as in {@link PointSolution}. */
    private static final double SURFACE_TEMPERATURE_RSI = 0.25;

    /** Relative width of the coupling that is asked first: chi of a good conductor is known from it. */
    private static final double FIRST = 3e-4;

    /** Relative width of the coupling that is asked where chi is small beside it. */
    private static final double FINE = 1e-4;

    /** Of chi, how wide its interval may be. */
    private static final double OF_CHI = 0.01;

    record Block(Material material, Cuboid box) {}

    /** What a block leaves in the plane through the axis. */
    record Crossed(Material material, PointSection.Body body) {}

    static PointBoxes of(String name, PointSetup setup, PointLaying laying) {
        double thickness = laying.sheets.sumOfDouble(PointSection.Sheet::thickness);
        MutableList<Block> blocks = Lists.mutable.empty();
        laying.bodies.select(PointLaying.Laid::solved).forEach(each -> blocks.addAllIterable(blocks(each)));
        if (laying.bodies.anySatisfy(PointLaying.Laid::round)) {
            laying.notes.add("Round pieces are drawn as squares of the same area.");
        }
        ImmutableList<Block> joined = joined(blocks.toImmutable(), thickness);
        ImmutableList<Block> free = blocks.reject(joined::contains).toImmutable();
        laying.refuseFloating(free.reject(each -> laying.inTheWind(each.box().low(2)))
                .collect(each -> each.material().name()));
        if (free.notEmpty()) {
            laying.noteInTheWind();
        }
        return new PointBoxes(
                name,
                laying.sheets.toImmutable(),
                joined,
                laying.band.rsi(),
                laying.band.rse(),
                laying.radius(),
                laying.bodies.allSatisfy(each -> each.upwards() == 0 || each.belowToo()),
                setup.indoorTemperature(),
                laying.farTemperature());
    }

    /** A body in each of its places; a ring in four pieces. */
    static ImmutableList<Block> blocks(PointLaying.Laid body) {
        double scale = body.round() ? SQUARE : 1;
        double w = scale * body.halfWidth();
        double h = scale * body.halfHeight();
        double hole = scale * body.hole();
        double[][] pieces = hole > 0
                ? new double[][] {{-w, hole, w, h}, {-w, -h, w, -hole}, {-w, -hole, -hole, hole}, {hole, -hole, w, hole}
                }
                : new double[][] {{-w, -h, w, h}};
        MutableList<Block> all = Lists.mutable.empty();
        for (double sideways :
                body.sideways() == 0 ? new double[] {0} : new double[] {body.sideways(), -body.sideways()}) {
            for (double upwards :
                    body.belowToo() ? new double[] {body.upwards(), -body.upwards()} : new double[] {body.upwards()}) {
                for (double[] p : pieces) {
                    all.add(new Block(
                            body.material(),
                            Cuboid.of(
                                    sideways + p[0],
                                    upwards + p[1],
                                    body.from(),
                                    sideways + p[2],
                                    upwards + p[3],
                                    body.to())));
                }
            }
        }
        return all.toImmutable();
    }

    /** Blocks that are joined to the surface, by others or by themselves. */
    private static ImmutableList<Block> joined(ImmutableList<Block> all, double thickness) {
        MutableSet<Block> found = all.select(each -> each.box().low(2) <= thickness + PointLaying.SLACK
                        && each.box().high(2) >= -PointLaying.SLACK)
                .toSet();
        int before;
        do {
            before = found.size();
            found.addAllIterable(all.select(each -> found.anySatisfy(other -> touch(each.box(), other.box()))));
        } while (found.size() > before);
        return all.select(found::contains);
    }

    private static boolean touch(Cuboid one, Cuboid other) {
        for (int d = 0; d < 3; d++) {
            if (one.low(d) > other.high(d) + PointLaying.SLACK || other.low(d) > one.high(d) + PointLaying.SLACK) {
                return false;
            }
        }
        return true;
    }

    /** What the plane through the axis that runs sideways and outwards cuts of what is solved, from the axis on. */
    ImmutableList<Crossed> inPlane() {
        return blocks.select(PointBoxes::isInPlane).collect(PointBoxes::crossed);
    }

    static boolean isInPlane(Block each) {
        return each.box().low(1) <= 0 && each.box().high(1) > 0 && each.box().high(0) > 0;
    }

    static Crossed crossed(Block each) {
        return new Crossed(
                each.material(),
                new PointSection.Body(
                        each.material().name(),
                        each.material().conductivity(),
                        Math.max(0, each.box().low(0)),
                        each.box().high(0),
                        each.box().low(2),
                        each.box().high(2)));
    }

    /** m², of the surface. */
    private double area() {
        return 4 * half * half;
    }

    /** The blocks cut to what is solved of the square, in painting order. */
    private ImmutableList<Block> solved() {
        double bottom = quarter ? 0 : -half;
        return blocks.select(each -> each.box().high(0) > Math.max(0, each.box().low(0))
                        && each.box().high(1) > Math.max(bottom, each.box().low(1)))
                .collect(each -> new Block(
                        each.material(),
                        Cuboid.of(
                                Math.max(0, each.box().low(0)),
                                Math.max(bottom, each.box().low(1)),
                                each.box().low(2),
                                each.box().high(0),
                                each.box().high(1),
                                each.box().high(2))));
    }

    /** What the body's boxes are: two of air, the sheets, the blocks. */
    ImmutableList<Optional<Fill>> fills(ImmutableList<Fill> ofSheets) {
        return Lists.immutable
                .of(Optional.<Fill>empty(), Optional.<Fill>empty())
                .newWithAll(
                        ofSheets.newWithAll(solved().collect(Block::material).collect(PointComposition::fill))
                                .collect(Optional::of));
    }

    /** What is solved. */
    SolidBody body(double interior, String suffix) {
        double thickness = sheets.sumOfDouble(PointSection.Sheet::thickness);
        double bottom = quarter ? 0 : -half;
        double inner =
                Math.min(0, blocks.collectDouble(each -> each.box().low(2)).minIfEmpty(0)) - MARGIN;
        double outer = Math.max(
                        thickness,
                        blocks.collectDouble(each -> each.box().high(2)).maxIfEmpty(0))
                + MARGIN;
        MutableList<PaintedBox> painted = Lists.mutable.empty();
        painted.add(new PaintedBox.Air(PointSection.INDOOR, Cuboid.of(0, bottom, inner, half, half, 0)));
        painted.add(new PaintedBox.Air(PointSection.OUTDOOR, Cuboid.of(0, bottom, thickness, half, half, outer)));
        double z = 0;
        for (PointSection.Sheet sheet : sheets) {
            painted.add(new PaintedBox.Solid(
                    sheet.material(),
                    sheet.conductivity(),
                    Cuboid.of(0, bottom, z, half, half, z + sheet.thickness())));
            z += sheet.thickness();
        }
        solved().forEach(block -> painted.add(
                new PaintedBox.Solid(block.material().name(), block.material().conductivity(), block.box())));
        return new SolidBody(
                name + suffix,
                Cuboid.of(0, bottom, inner, half, half, outer),
                quarter ? 4 : 2,
                Lists.immutable
                        .with(BoxSide.values())
                        .select(side -> side.direction() < 2)
                        .toImmutableSet(),
                painted.toImmutable(),
                Lists.immutable.of(
                        BodyEnvironment.of(PointSection.INDOOR, indoorTemperature, interior),
                        BodyEnvironment.of(PointSection.OUTDOOR, outdoorTemperature, exteriorResistance)),
                Lists.immutable.empty(),
                Lists.immutable.empty());
    }

    /**
     * A point of boxes, solved.
     *
     * @param shown the plane through the axis
     */
    public record Solved(BodySolution solution, PointSolution shown) {}

    /**
     * Solves it.
     *
     * @param section what the plane through the axis cuts
     * @param compared whether it is only compared with another
     */
    public Solved solve(PointSection section, int maximumUnknowns, boolean compared, BodySolving solving) {
        SolidBody body = body(interiorResistance, "");
        Accuracy first = new Accuracy(FIRST, maximumUnknowns);
        BodySolution solution = solving.solve(body, first);
        double plane = section.transmittance() * area();
        Interval coupling = solution.coupling(PointSection.INDOOR, PointSection.OUTDOOR);
        if (!compared && coupling.width() > OF_CHI * Math.abs(coupling.middle() - plane)) {
            solution = solving.solve(body, new Accuracy(FINE, maximumUnknowns));
            coupling = solution.coupling(PointSection.INDOOR, PointSection.OUTDOOR);
        }
        double difference = Math.abs(indoorTemperature - outdoorTemperature);
        BodySolution surface = solving.solve(
                body(SURFACE_TEMPERATURE_RSI, ", for surface temperatures"),
                BodySolving.aimed(first, PointSection.INDOOR, difference));
        SurfaceTemperature<Place> coldest = surface.surface(PointSection.INDOOR);
        return new Solved(
                solution,
                new PointSolution(
                        section,
                        inPlane(section, solution).with(surface.outcome()),
                        coupling,
                        coupling.plus(-plane),
                        (coldest.lowest() - outdoorTemperature) / (indoorTemperature - outdoorTemperature),
                        new Point(Math.abs(coldest.at().x()), coldest.at().z())));
    }

    /** The plane through the axis, with the body's temperatures and its evidence. */
    private static Solution inPlane(PointSection section, BodySolution solution) {
        return new Solution(
                section.section(),
                solution.couplings(),
                solution.heatFlows(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                new PlaneField(solution.field()),
                solution.accuracy(),
                solution.outcome(),
                solution.unknowns(),
                solution.seconds(),
                solution.notes());
    }
}
