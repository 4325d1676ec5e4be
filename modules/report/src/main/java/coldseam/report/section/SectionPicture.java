package coldseam.report.section;

import coldseam.conduction.Point;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.ControlLine;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.PointResult;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.pair.PairResult;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.junctions.plan.SectionEnd;
import coldseam.junctions.plan.SectionPlan;
import coldseam.report.drawing.Look;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.list.Interval;

/**
 * What is shown of a solved section.
 *
 * @param parts in painting order
 * @param own those of them that the detail draws itself and whose size it says, by index
 * @param seen of their outlines
 * @param ends where the section stops and the house goes on
 * @param section that was solved
 * @param isotherms lines of a temperature, °C, asked when they are drawn
 * @param system units of its labels
 * @param limits temperatures whose isotherms are marked by name
 * @param wanted what is to be seen; empty for what the lines and the coldest point say, or for all
 * @param penLine inside the insulation
 * @param weakestPath through everything
 * @param controls the ways of air, water and vapour control; none where the layers are not known
 * @param coldest the coldest point of the indoor surface
 */
public record SectionPicture(
        ImmutableList<PaintedPart> parts,
        ImmutableList<Integer> own,
        PlanarSubdivision seen,
        ImmutableList<SectionEnd> ends,
        Section section,
        DoubleFunction<ImmutableList<ImmutableList<Point>>> isotherms,
        UnitSystem system,
        ImmutableList<Limit> limits,
        ImmutableList<Point> wanted,
        Optional<PenLine> penLine,
        Optional<WeakestPath> weakestPath,
        ImmutableList<ControlLine> controls,
        Optional<Coldest> coldest) {

    /**
     * A temperature that matters.
     *
     * @param name such as "dew point"
     * @param temperature °C
     */
    public record Limit(String name, double temperature) {}

    /**
     * The coldest point of the indoor surface.
     *
     * @param at m
     * @param temperature °C
     */
    public record Coldest(Point at, double temperature) {}

    /**
     * A key of the drawing.
     *
     * @param number that stands on the material
     * @param conductivity W/(m·K); empty of an air layer, which has a resistance
     * @param look how it is drawn
     * @param solved whether heat flow was computed in some part of it
     */
    public record Key(int number, String material, OptionalDouble conductivity, Look look, boolean solved) {

        /** Its conductivity as a legend writes it. */
        public String says(DoubleFunction<String> written) {
            return conductivity.isPresent() ? written.apply(conductivity.getAsDouble()) : "air layer";
        }
    }

    PaintedParts painted() {
        return new PaintedParts(parts, seen);
    }

    /** The picture of a detail: a junction's section, or a point's half with its mirror image. */
    public static SectionPicture of(BridgeResult result, ImmutableList<Limit> limits, UnitSystem system) {
        return result instanceof PointResult point
                ? PointPictures.of(point, limits, system)
                : of((JunctionResult) result, limits, system);
    }

    private static SectionPicture of(JunctionResult result, ImmutableList<Limit> limits, UnitSystem system) {
        return new SectionPicture(
                result.plan()
                        .pieces()
                        .collect(piece ->
                                PaintedPart.of(piece.outline(), piece.material(), piece.role(), piece.solved())),
                own(result),
                result.plan().seen(),
                result.plan().ends(),
                result.solution().section(),
                temperature -> result.solution().field().isotherm(temperature),
                system,
                limits,
                Lists.immutable.empty(),
                Optional.of(result.penLine()),
                Optional.of(result.weakestPath()),
                result.controls().select(line -> line.path().size() > 1),
                Optional.of(coldest(result.setup(), result.coldest(), result.temperatureFactor())));
    }

    private static ImmutableList<Integer> own(JunctionResult result) {
        ImmutableList<SectionPlan.Piece> pieces = result.plan().pieces();
        return Interval.zeroTo(pieces.size() - 1)
                .select(i -> pieces.get(i).origin() instanceof SectionPlan.Origin.OfDetail)
                .toImmutableList();
    }

    /** The picture of a section drawn by hand. */
    public static SectionPicture of(Solution solution, UnitSystem system) {
        return bare(
                solution,
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                system,
                warmest(solution.section())
                        .map(solution::surface)
                        .map(surface -> new Coldest(surface.at(), surface.lowest())));
    }

    /** The picture of two seams in one section. */
    public static SectionPicture of(PairResult pair, ImmutableList<Limit> limits, UnitSystem system) {
        return bare(
                pair.solution(),
                limits,
                pair.seams().newWith(pair.coldest()),
                system,
                Optional.of(coldest(pair.setup().one().setup(), pair.coldest(), pair.temperatureFactor())));
    }

    private static Coldest coldest(JunctionSetup setup, Point at, double temperatureFactor) {
        double outdoor = setup.outdoorTemperature();
        return new Coldest(at, outdoor + temperatureFactor * (setup.indoorTemperature() - outdoor));
    }

    /** Of a section's regions alone. */
    private static SectionPicture bare(
            Solution solution,
            ImmutableList<Limit> limits,
            ImmutableList<Point> wanted,
            UnitSystem system,
            Optional<Coldest> coldest) {
        Section section = solution.section();
        return new SectionPicture(
                section.regions()
                        .collect(region -> new PaintedPart(
                                region.outline(),
                                region.material(),
                                OptionalDouble.of(region.conductivity()),
                                Looks.of(region.material(), region.conductivity()),
                                true)),
                Lists.immutable.empty(),
                PlanarSubdivision.of(section.regions().collect(Region::outline)),
                SectionEnd.of(section),
                section,
                temperature -> solution.field().isotherm(temperature),
                system,
                limits,
                wanted,
                Optional.empty(),
                Optional.empty(),
                Lists.immutable.empty(),
                coldest);
    }

    private static Optional<String> warmest(Section section) {
        return section.environments()
                .select(e ->
                        section.boundaries().anySatisfy(b -> b.environment().equals(e.name())))
                .maxByOptional(e -> e.temperature())
                .map(e -> e.name());
    }
}
