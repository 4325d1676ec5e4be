package coldseam.audit.engine;

import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.HeatLoss;
import coldseam.audit.HeatLoss.Group;
import coldseam.audit.HeatLoss.Line;
import coldseam.audit.HeatLoss.Part;
import coldseam.audit.JunctionRow;
import coldseam.audit.PairSheet;
import coldseam.audit.PointRow;
import coldseam.audit.VertexRow;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Site;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import coldseam.junctions.JunctionResult;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The heat-loss coefficient by transmission (ISO 13789), line by line.
 *
 * <p>Each line is rounded before it is added, to {@link HeatLoss#DECIMALS} decimals of a W/K: exact values to the nearest,
 * intervals outwards. So the table adds up exactly as it is printed.
 */
record HeatLossTable(
        House house,
        ImmutableList<SurfaceHeat> heats,
        ImmutableList<JunctionRow> rows,
        ImmutableList<PairSheet> pairs,
        ImmutableList<PointRow> points,
        ImmutableList<VertexRow> vertices) {

    /** The table with its totals. */
    HeatLoss compute() {
        MutableList<Line> lines = Lists.mutable.empty();
        lines.addAllIterable(surfaceLines(Group.SURFACES));
        lines.addAllIterable(openingLines());
        lines.addAllIterable(surfaceLines(Group.GROUND));
        lines.addAllIterable(surfaceLines(Group.UNHEATED));
        lines.addAllIterable(junctionLines());
        lines.addAllIterable(pairLines());
        lines.addAllIterable(pointLines());
        lines.addAllIterable(vertexLines());
        ImmutableList<Line> all = lines.toImmutable();
        Interval total = sum(all);
        Interval positive = sum(all.select(line -> line.group() == Group.JUNCTIONS && positive(line)));
        Interval negative = sum(all.select(line -> line.group() == Group.JUNCTIONS && !positive(line)));
        Interval remainder = vertexRemainder();
        Interval other = exactTotal(system().other());
        Site site = house.site();
        double ventilation = site.ventilationHeatLoss().orElse(0);
        Interval designLoad = total.plus(ventilation).times(site.indoorTemperature() - site.outdoorTemperature());
        return new HeatLoss(
                system(),
                all,
                total,
                exact(all, Group.SURFACES) + exact(all, Group.OPENINGS),
                exact(all, Group.GROUND),
                exact(all, Group.UNHEATED),
                positive,
                negative,
                sum(all.select(line -> line.group() == Group.PAIRS)),
                sum(all.select(line -> line.group() == Group.POINTS)),
                sum(all.select(line -> line.group() == Group.VERTICES)),
                share(positive.plus(negative), total),
                other,
                remainder,
                correctionRemainder(),
                site.ventilationHeatLoss(),
                designLoad,
                site.yearly(total.middle() + ventilation));
    }

    private ImmutableList<Line> surfaceLines(Group group) {
        return heats.select(heat -> heat.group() == group)
                .collect(heat -> new Line(
                        group,
                        new Part.OfSurface(heat.surface()),
                        heat.opaqueArea(system()),
                        Interval.of(heat.transmittance()),
                        heat.factor(),
                        rounded(Interval.of(heat.loss(system())))));
    }

    private ImmutableList<Line> openingLines() {
        return house.openings()
                .select(opening -> surfaceOf(opening).isPresent())
                .collect(opening -> {
                    Surface surface = surfaceOf(opening).orElseThrow().surface();
                    double factor = surface.underSkylight(opening)
                            ? 1
                            : surface.exposure().factor();
                    double area = opening.width() * opening.height();
                    double u = WindowTransmittance.transmittance(opening);
                    return new Line(
                            Group.OPENINGS,
                            new Part.OfOpening(opening),
                            area,
                            Interval.of(u),
                            factor,
                            rounded(Interval.of(area * u * factor)));
                });
    }

    private Optional<SurfaceHeat> surfaceOf(Opening opening) {
        return heats.detectOptional(heat -> heat.surface().holds(opening));
    }

    /** What makes several edges one line: an own psi is one whatever sheet shows how the edges are built. */
    private record Key(JunctionKind kind, Optional<String> sheet, BridgeSource source, Interval psi, double factor) {
        static Key of(JunctionRow row) {
            return new Key(
                    row.edge().kind(),
                    row.sheet().filter(sheet -> row.source().computed()).map(BridgeSheet::id),
                    row.source(),
                    row.psi(),
                    row.factor());
        }
    }

    private ImmutableList<Line> junctionLines() {
        return Groups.by(rows, Key::of).collect(edges -> {
            Key key = Key.of(edges.getFirst());
            double length = edges.sumOfDouble(JunctionRow::length);
            return new Line(
                    Group.JUNCTIONS,
                    new Part.OfJunction(edges),
                    length,
                    key.psi(),
                    key.factor(),
                    rounded(key.psi().times(length * key.factor())));
        });
    }

    private ImmutableList<Line> pairLines() {
        return pairs.collect(sheet -> new Line(
                Group.PAIRS,
                new Part.OfPairs(sheet),
                sheet.length(),
                sheet.interaction(),
                1,
                rounded(sheet.interaction().times(sheet.length()))));
    }

    private ImmutableList<Line> pointLines() {
        return points.collect(row -> new Line(
                Group.POINTS, new Part.OfPoints(row), row.number(), row.chi(), row.factor(), rounded(row.loss())));
    }

    /** Of those whose temperature alone is computed there is none: their heat is counted elsewhere, and is not nothing. */
    private ImmutableList<Line> vertexLines() {
        return vertices.flatCollect(row -> row.sheet().stream().toList())
                .select(sheet -> sheet.result().heat().isPresent())
                .distinct()
                .collect(sheet -> {
                    int count = sheet.places().size();
                    return new Line(
                            Group.VERTICES,
                            new Part.OfVertices(sheet),
                            count,
                            sheet.chi(system()),
                            1,
                            rounded(sheet.chi(system()).times(count)));
                });
    }

    private static boolean positive(Line line) {
        return line.transmittance().middle() >= 0;
    }

    private static Interval sum(ImmutableList<Line> lines) {
        // Sums of thousandths, rounded again, so that no binary dust shows where a column is added up by hand.
        return nearest(lines.injectInto(Interval.of(0), (sum, line) -> sum.plus(line.loss())));
    }

    private static double exact(ImmutableList<Line> lines, Group group) {
        return sum(lines.select(line -> line.group() == group)).middle();
    }

    private static Interval share(Interval part, Interval whole) {
        if (!(whole.lower() > 0)) {
            return Interval.of(0);
        }
        double lower = part.lower() / (part.lower() >= 0 ? whole.upper() : whole.lower());
        double upper = part.upper() / (part.upper() >= 0 ? whole.lower() : whole.upper());
        return new Interval(lower, upper);
    }

    /** W/K in a dimension system, not rounded. */
    Interval exactTotal(DimensionSystem asked) {
        double planes = heats.sumOfDouble(heat -> heat.loss(asked));
        double openings = openingLines()
                .sumOfDouble(line -> line.size() * line.transmittance().middle() * line.factor());
        Interval ofPairs = pairs.injectInto(
                Interval.of(planes + openings),
                (sum, sheet) -> sum.plus(sheet.interaction().times(sheet.length())));
        Interval atPoints = points.injectInto(ofPairs, (sum, row) -> sum.plus(row.loss()));
        Interval atVertices = vertices.injectInto(atPoints, (sum, row) -> sum.plus(row.chi(asked)));
        return rows.injectInto(
                atVertices,
                (sum, row) ->
                        sum.plus(psi(row, asked).times(ComputedJunctions.length(row.edge(), asked) * row.factor())));
    }

    /**
     * The part of vertices that are not computed in the site's total minus the other system's, W/K: as if every section had its
     * surfaces' U.
     *
     * <p>Both totals hold the same psi intervals, so their difference is much narrower than their widths say: it is summed
     * edge by edge, psi·(L − L') − shift·L', with shift the difference of psi between the systems. The chi of a vertex in
     * the two systems is of one coupling, so that they differ by lengths and areas alone.
     */
    Interval vertexRemainder() {
        DimensionSystem that = system().other();
        double planes = heats.sumOfDouble(heat -> heat.loss(system()) - heat.loss(that))
                + vertices.sumOfDouble(
                        row -> row.chi(system()).middle() - row.chi(that).middle());
        return rows.injectInto(Interval.of(planes), (sum, row) -> {
            double here = ComputedJunctions.length(row.edge(), system());
            double there = ComputedJunctions.length(row.edge(), that);
            Interval part = row.psi().times((here - there) * row.factor());
            return sum.plus(part).plus(-shiftOfSurfaces(row) * there);
        });
    }

    /**
     * The rest of the difference of the totals, W/K: a section's U lacks what fasteners, gaps and rain add to its
     * surfaces', and what the ground takes off them where no soil is drawn.
     */
    double correctionRemainder() {
        DimensionSystem that = system().other();
        return rows.select(row -> computed(row).isPresent())
                .sumOfDouble(row -> (shiftOfSurfaces(row) - shift(row) * row.factor())
                        * ComputedJunctions.length(row.edge(), that));
    }

    private Interval psi(JunctionRow row, DimensionSystem asked) {
        return asked == system() ? row.psi() : row.psi().plus(shift(row));
    }

    private Optional<JunctionResult> computed(JunctionRow row) {
        return row.sheet().map(BridgeSheet::result);
    }

    /** W/(m·K): psi in the other system minus psi in the site's, exactly Σ U·Δl of the section. */
    private double shift(JunctionRow row) {
        Optional<JunctionResult> computed = computed(row);
        if (computed.isPresent()) {
            double toInternal = computed.get().psiInternal().middle()
                    - computed.get().psiExternal().middle();
            return system() == DimensionSystem.EXTERNAL ? toInternal : -toInternal;
        }
        // The row's factor weighs the whole of psi; the surfaces' own factors are in the parts.
        return row.factor() > 0 ? shiftOfSurfaces(row) / row.factor() : 0;
    }

    /** W/(m·K): the same with the U of the surfaces beside the edge, weighed by their factors. */
    private double shiftOfSurfaces(JunctionRow row) {
        Edge edge = row.edge();
        double toInternal = part(edge.first(), edge.firstSetBack())
                + edge.second()
                        .map(second -> part(second, edge.secondSetBack()))
                        .orElse(0.0);
        return system() == DimensionSystem.EXTERNAL ? toInternal : -toInternal;
    }

    private double part(Surface surface, double setBack) {
        SurfaceHeat heat = heats.detect(each -> each.surface().name().equals(surface.name()));
        return heat.transmittance() * heat.factor() * setBack;
    }

    private static final double SCALE = Math.pow(10, HeatLoss.DECIMALS);

    private static Interval rounded(Interval value) {
        if (value.width() == 0) {
            return nearest(value);
        }
        return new Interval(Math.floor(value.lower() * SCALE) / SCALE, Math.ceil(value.upper() * SCALE) / SCALE);
    }

    private static Interval nearest(Interval value) {
        return new Interval(Math.rint(value.lower() * SCALE) / SCALE, Math.rint(value.upper() * SCALE) / SCALE);
    }

    private DimensionSystem system() {
        return house.site().dimensions();
    }
}
