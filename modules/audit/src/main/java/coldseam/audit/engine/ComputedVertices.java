package coldseam.audit.engine;

import coldseam.audit.BridgeSource;
import coldseam.audit.JunctionRow;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexRow.Obstacle;
import coldseam.audit.VertexSheet;
import coldseam.envelope.House;
import coldseam.envelope.KindForm;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.corners.Corner;
import coldseam.envelope.shell.corners.CornerFrame;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.CornerDetail;
import coldseam.junctions.vertex.VertexComputing;
import coldseam.junctions.vertex.VertexResult;
import coldseam.junctions.vertex.VertexSetup;
import coldseam.junctions.vertex.VertexSetup.EdgeEnd;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The vertices of a house, computed from its edges' own details: a sheet for each different one and a row for each.
 *
 * @param sheets in the order of their first vertex
 * @param rows in the shell's order
 */
record ComputedVertices(ImmutableList<VertexSheet> sheets, ImmutableList<VertexRow> rows) {

    /** Degrees; angles that differ by less are one. */
    private static final double ALIKE = 0.05;

    /** The axis that is upright. */
    private static final int LEVEL = 2;

    /** The eighths of the space on the low side of the third axis. */
    private static final int BELOW = 0b1111;

    /** Quarters of a plan that are rooms where they go round an inside corner. */
    private static final int ROUND_A_CORNER = 3;

    /**
     * How an edge is built.
     *
     * @param known whether somebody chose its detail
     * @param sheet its id; empty before it is computed
     */
    private record Drawn(Detail detail, JunctionSetup setup, boolean known, String sheet) {

        static Optional<Drawn> of(JunctionRow row) {
            return row.source() instanceof BridgeSource.Own
                    ? Optional.empty()
                    : row.sheet()
                            .map(sheet -> new Drawn(
                                    sheet.result().detail(),
                                    sheet.result().setup(),
                                    row.source().known(),
                                    sheet.id()));
        }

        /** As if the first of its details fitted. */
        static Optional<Drawn> expected(PlannedEdge edge) {
            return edge.own().isPresent()
                    ? Optional.empty()
                    : edge.bridge()
                            .question()
                            .map(asked -> new Drawn(
                                    asked.details().getFirst(),
                                    asked.setup(),
                                    edge.bridge().chosen(),
                                    ""));
        }
    }

    /** A vertex with what is to be computed for it, or why nothing is. */
    private record Planned(
            Corner corner, ImmutableList<Drawn> edges, Optional<VertexSetup> setup, Optional<Obstacle> obstacle) {

        static Planned not(Corner corner, Obstacle obstacle) {
            return new Planned(corner, Lists.immutable.empty(), Optional.empty(), Optional.of(obstacle));
        }

        /** With the corner's own detail. */
        Planned with(Function<VertexSetup, Optional<CornerDetail>> own) {
            return new Planned(corner, edges, setup.map(each -> each.with(own.apply(each))), obstacle);
        }

        boolean chosen() {
            return edges.allSatisfy(Drawn::known);
        }
    }

    /** What makes two vertices one sheet: the setup and whether somebody chose all details. */
    private record Key(VertexSetup setup, boolean chosen) {}

    /** The corners' own details that some are built by. */
    ImmutableList<Detail> ownDetails() {
        return sheets.flatCollect(sheet -> sheet.result().corner().stream().toList())
                .collect(VertexResult.Own::detail)
                .distinct();
    }

    /** Names every vertex without computing any. */
    static ComputedVertices notAsked(ImmutableList<Corner> corners) {
        return new ComputedVertices(
                Lists.immutable.empty(),
                corners.collect(corner -> row(Planned.not(corner, Obstacle.NOT_ASKED), Answers.none(), Map.of())));
    }

    /**
     * Computes every vertex that its edges' details say. They are asked from the last on: what was begun ahead went from the first on,
     * and two cores at one vertex would be one core.
     */
    static ComputedVertices of(
            House house,
            ImmutableList<Corner> corners,
            ImmutableList<JunctionRow> junctions,
            Catalogue catalogue,
            VertexComputing computing,
            Progress progress) {
        ImmutableMap<String, JunctionRow> rows =
                junctions.toImmutableMap(row -> row.edge().name(), row -> row);
        ImmutableList<Planned> planned = plan(house, corners, catalogue, edge -> Drawn.of(rows.get(edge.name())));
        Answers<VertexSetup, VertexResult> answers = Answers.compute(
                "vertices",
                planned.flatCollect(each -> each.setup().stream().toList())
                        .distinct()
                        .toReversed(),
                computing::compute,
                progress);
        Map<Key, VertexSheet> sheets = new LinkedHashMap<>();
        planned.forEach(each -> each.setup()
                .flatMap(answers::result)
                .ifPresent(result -> sheets.computeIfAbsent(
                        new Key(result.setup(), each.chosen()),
                        key -> sheet("V" + (sheets.size() + 1), house, result, each, planned))));
        return new ComputedVertices(
                Lists.immutable.ofAll(sheets.values()), planned.collect(each -> row(each, answers, sheets)));
    }

    /**
     * What is to be computed, as long as nothing is: different ones no fewer than come of it but by chance.
     *
     * @param chosen whether only those count of whose edges' details somebody chose all
     */
    static ImmutableList<VertexSetup> expected(
            House house,
            ImmutableList<Corner> corners,
            ImmutableList<PlannedEdge> edges,
            Catalogue catalogue,
            boolean chosen) {
        ImmutableMap<String, PlannedEdge> planned =
                edges.toImmutableMap(each -> each.edge().name(), each -> each);
        return plan(house, corners, catalogue, edge -> Drawn.expected(planned.get(edge.name())))
                .select(each -> each.chosen() || !chosen)
                .flatCollect(each -> each.setup().stream().toList())
                .distinct();
    }

    private static ImmutableList<Planned> plan(
            House house, ImmutableList<Corner> corners, Catalogue catalogue, Function<Edge, Optional<Drawn>> drawn) {
        ImmutableList<Detail> named =
                house.corners().flatCollect(id -> catalogue.find(id).stream().toList());
        return corners.collect(corner -> plan(corner, drawn)
                .with(setup -> CornerDetail.find(setup, named, true)
                        .or(() -> CornerDetail.find(setup, catalogue.corners(), false))));
    }

    private static VertexRow row(
            Planned planned, Answers<VertexSetup, VertexResult> answers, Map<Key, VertexSheet> sheets) {
        Optional<VertexSheet> sheet = planned.setup().map(setup -> sheets.get(new Key(setup, planned.chosen())));
        boolean refused = planned.setup().isPresent() && sheet.isEmpty();
        Optional<Obstacle> misfit = planned.setup()
                .flatMap(VertexSetup::corner)
                .filter(CornerDetail::named)
                .map(corner -> Obstacle.MISFIT);
        return new VertexRow(
                planned.corner(),
                sheet,
                refused ? misfit.or(() -> Optional.of(Obstacle.NOT_SAID)) : planned.obstacle(),
                refused ? answers.reasons(planned.setup().get()) : Lists.immutable.empty());
    }

    private static VertexSheet sheet(
            String id, House house, VertexResult result, Planned first, ImmutableList<Planned> all) {
        return new VertexSheet(
                id,
                result,
                first.edges().collect(Drawn::sheet).distinct(),
                all.select(each -> each.setup().equals(first.setup()) && each.chosen() == first.chosen())
                        .collect(each -> each.corner().name()),
                first.chosen(),
                Moisture.atDesign(house.site(), result.temperatureFactor()));
    }

    private static Planned plan(Corner corner, Function<Edge, Optional<Drawn>> drawn) {
        Optional<CornerFrame> frame = CornerFrame.of(corner);
        if (frame.isEmpty()) {
            return Planned.not(corner, CornerFrame.aslant(corner) ? Obstacle.ASLANT : Obstacle.NO_CORNER);
        }
        if (floorEnds(corner, frame.get())) {
            return Planned.not(corner, Obstacle.FLOOR_ENDS);
        }
        MutableList<EdgeEnd> ends = Lists.mutable.empty();
        MutableList<Drawn> edges = Lists.mutable.empty();
        for (Corner.End end : corner.ends()) {
            Optional<Drawn> edge = drawn.apply(end.edge());
            if (edge.isEmpty()) {
                return Planned.not(corner, Obstacle.NO_DETAIL);
            }
            Optional<EdgeEnd> planned = end(end, frame.get(), edge.get());
            if (planned.isEmpty()) {
                return Planned.not(corner, Obstacle.IN_PLANE);
            }
            edges.add(edge.get());
            ends.add(planned.get());
        }
        ImmutableList<EdgeEnd> sorted =
                ends.toImmutableSortedListBy(each -> 2 * each.along() + (each.growing() ? 1 : 0));
        if (sorted.distinctBy(each -> 2 * each.along() + (each.growing() ? 1 : 0))
                        .size()
                < sorted.size()) {
            return Planned.not(corner, Obstacle.IN_PLANE);
        }
        return new Planned(
                corner,
                edges.toImmutable(),
                Optional.of(
                        new VertexSetup(frame.get().rooms(), sorted, frame.get().upwards())),
                Optional.empty());
    }

    /**
     * Whether a floor bears into one of the walls that pass by and not into another, and ends where no section shows. Where the
     * rooms go round an inside corner it ends among them, at the face of the wall that it does not bear into.
     */
    private static boolean floorEnds(Corner corner, CornerFrame frame) {
        int below = frame.rooms() & BELOW;
        if (Integer.bitCount(below) == ROUND_A_CORNER && frame.rooms() >> 4 == below) {
            return false;
        }
        boolean some = false;
        boolean all = true;
        for (int axis = 0; axis < 2; axis++) {
            for (int way = 0; way < 2; way++) {
                if (passes(frame.rooms(), way << axis, 1 - axis)) {
                    int along = axis;
                    boolean grows = way == 1;
                    boolean floor = corner.ends()
                            .anySatisfy(end -> end.edge().kind().storeyFloor().isPresent()
                                    && frame.axis(end.away()) == along
                                    && frame.grows(end.away()) == grows);
                    some |= floor;
                    all &= floor;
                }
            }
        }
        return some && !all;
    }

    /** Whether rooms lie above and below on one hand of a direction, and on the other none. */
    private static boolean passes(int rooms, int octant, int across) {
        int one = rooms >> octant & 1 | (rooms >> (octant | 4) & 1) << 1;
        int other = rooms >> (octant | 1 << across) & 1 | (rooms >> (octant | 1 << across | 4) & 1) << 1;
        return one == 3 && other == 0 || one == 0 && other == 3;
    }

    private static Optional<EdgeEnd> end(Corner.End end, CornerFrame frame, Drawn drawn) {
        KindForm form = end.edge().kind().form();
        int along = frame.axis(end.away());
        int first = frame.axis(end.edge().first().normal());
        if (form.meeting() == KindForm.Meeting.END_TO_END && goesUp(end.edge(), frame, along, first)) {
            return Optional.of(
                    new EdgeEnd(along, frame.grows(end.away()), first, LEVEL, drawn.detail(), square(drawn.setup())));
        }
        int second = form.second() == KindForm.Second.THING
                ? 3 - along - first
                : frame.axis(end.edge().second().orElseThrow().normal());
        boolean crosses =
                form.meeting() == KindForm.Meeting.CROSSING && along != first && along != second && first != second;
        return crosses
                ? Optional.of(new EdgeEnd(
                        along, frame.grows(end.away()), first, second, drawn.detail(), square(drawn.setup())))
                : Optional.empty();
    }

    /** Whether at a level edge one wall goes straight up from another. */
    private static boolean goesUp(Edge edge, CornerFrame frame, int along, int first) {
        return along < LEVEL
                && first == 1 - along
                && frame.upwards()
                && Math.abs(edge.angle() - Vectors.STRAIGHT) < ALIKE
                && edge.first().top() < edge.second().orElseThrow().top();
    }

    /** The setup at a right angle or straight, where it is that but for rounding. */
    private static JunctionSetup square(JunctionSetup setup) {
        double right = Math.abs(setup.angle() - Vectors.STRAIGHT) < ALIKE
                ? Vectors.STRAIGHT
                : setup.angle() < Vectors.STRAIGHT ? 90 : 270;
        return setup.angle() == right || Math.abs(setup.angle() - right) > ALIKE ? setup : setup.at(right);
    }
}
