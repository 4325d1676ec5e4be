package coldseam.audit.engine;

import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.JunctionRow;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexRow.Obstacle;
import coldseam.audit.VertexSheet;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.KindForm;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.corners.Corner;
import coldseam.envelope.shell.corners.CornerFrame;
import coldseam.envelope.shell.corners.Corners;
import coldseam.junctions.JunctionResult;
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

    /** A vertex with what is to be computed for it, or why nothing is. */
    private record Planned(
            Corner corner, ImmutableList<JunctionRow> edges, Optional<VertexSetup> setup, Optional<Obstacle> obstacle) {

        static Planned not(Corner corner, Obstacle obstacle) {
            return new Planned(corner, Lists.immutable.empty(), Optional.empty(), Optional.of(obstacle));
        }

        /** With the corner's own detail. */
        Planned with(Function<VertexSetup, Optional<CornerDetail>> own) {
            return new Planned(corner, edges, setup.map(each -> each.with(own.apply(each))), obstacle);
        }

        boolean chosen() {
            return edges.allSatisfy(row -> row.source().known());
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
    static ComputedVertices notAsked(Shell shell) {
        return new ComputedVertices(
                Lists.immutable.empty(),
                Corners.of(shell).collect(corner -> row(Planned.not(corner, Obstacle.NOT_ASKED), Optional.empty())));
    }

    /** Computes every vertex that its edges' details say. */
    static ComputedVertices of(
            House house,
            Shell shell,
            ImmutableList<JunctionRow> junctions,
            Catalogue catalogue,
            VertexComputing computing,
            Progress progress) {
        ImmutableList<Detail> named =
                house.corners().flatCollect(id -> catalogue.find(id).stream().toList());
        ImmutableList<Planned> planned = Corners.of(shell)
                .collect(corner -> plan(corner, junctions)
                        .with(setup -> CornerDetail.find(setup, named, true)
                                .or(() -> CornerDetail.find(setup, catalogue.corners(), false))));
        Answers<VertexSetup, VertexResult> answers = Answers.compute(
                "vertices", planned.flatCollect(each -> each.setup().stream().toList()), computing::compute, progress);
        Map<Key, VertexSheet> sheets = new LinkedHashMap<>();
        planned.forEach(each -> each.setup()
                .flatMap(answers::result)
                .ifPresent(result -> sheets.computeIfAbsent(
                        new Key(result.setup(), each.chosen()),
                        key -> sheet("V" + (sheets.size() + 1), house, result, each, planned))));
        return new ComputedVertices(
                Lists.immutable.ofAll(sheets.values()), planned.collect(each -> row(each, answers, sheets)));
    }

    private static VertexRow row(
            Planned planned, Answers<VertexSetup, VertexResult> answers, Map<Key, VertexSheet> sheets) {
        Optional<VertexSheet> sheet = planned.setup().map(setup -> sheets.get(new Key(setup, planned.chosen())));
        boolean refused = planned.setup().isPresent() && sheet.isEmpty();
        return new VertexRow(
                planned.corner(),
                sheet,
                refused ? Optional.of(Obstacle.NOT_SAID) : planned.obstacle(),
                refused ? answers.reasons(planned.setup().get()) : Lists.immutable.empty());
    }

    private static VertexRow row(Planned planned, Optional<VertexSheet> sheet) {
        return new VertexRow(planned.corner(), sheet, planned.obstacle(), Lists.immutable.empty());
    }

    private static VertexSheet sheet(
            String id, House house, VertexResult result, Planned first, ImmutableList<Planned> all) {
        SurfaceHumidity humidity = SurfaceHumidity.of(
                Math.min(1, result.temperatureFactor()),
                house.site().indoorTemperature(),
                house.site().outdoorTemperature());
        return new VertexSheet(
                id,
                result,
                first.edges()
                        .flatCollect(
                                row -> row.sheet().map(BridgeSheet::id).stream().toList())
                        .distinct(),
                all.select(each -> each.setup().equals(first.setup()) && each.chosen() == first.chosen())
                        .collect(each -> each.corner().name()),
                first.chosen(),
                Math.min(1, humidity.humidityAtDewPoint()),
                Math.min(1, humidity.humidityAtMouldLimit()));
    }

    private static Planned plan(Corner corner, ImmutableList<JunctionRow> junctions) {
        Optional<CornerFrame> frame = CornerFrame.of(corner);
        if (frame.isEmpty()) {
            return Planned.not(corner, Obstacle.ASLANT);
        }
        if (corner.surfaces()
                .anySatisfy(each -> each.exposure().kind() == Exposure.Kind.GROUND && each.use() == Body.Use.WALL)) {
            return Planned.not(corner, Obstacle.GROUND);
        }
        if (corner.surfaces()
                .anySatisfy(each -> each.exposure().kind() != Exposure.Kind.OUTDOORS
                        && each.exposure().kind() != Exposure.Kind.GROUND)) {
            return Planned.not(corner, Obstacle.NEIGHBOUR);
        }
        MutableList<EdgeEnd> ends = Lists.mutable.empty();
        MutableList<JunctionRow> edges = Lists.mutable.empty();
        for (Corner.End end : corner.ends()) {
            JunctionRow row = junctions.detect(
                    each -> each.edge().name().equals(end.edge().name()));
            if (row.sheet().isEmpty() || row.source() instanceof BridgeSource.Own) {
                return Planned.not(corner, Obstacle.NO_DETAIL);
            }
            Optional<EdgeEnd> planned = end(end, frame.get(), row.sheet().get().result());
            if (planned.isEmpty()) {
                return Planned.not(corner, Obstacle.IN_PLANE);
            }
            edges.add(row);
            ends.add(planned.get());
        }
        ImmutableList<EdgeEnd> sorted = ends.toSortedListBy(each -> 2 * each.along() + (each.growing() ? 1 : 0))
                .toImmutable();
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

    private static Optional<EdgeEnd> end(Corner.End end, CornerFrame frame, JunctionResult result) {
        KindForm form = end.edge().kind().form();
        int along = frame.axis(end.away());
        int first = frame.axis(end.edge().first().normal());
        int second = form.second() == KindForm.Second.THING
                ? 3 - along - first
                : frame.axis(end.edge().second().orElseThrow().normal());
        boolean crosses =
                form.meeting() == KindForm.Meeting.CROSSING && along != first && along != second && first != second;
        return crosses
                ? Optional.of(new EdgeEnd(
                        along, frame.grows(end.away()), first, second, result.detail(), square(result.setup())))
                : Optional.empty();
    }

    /** The setup at a right angle, where it is one but for rounding. */
    private static JunctionSetup square(JunctionSetup setup) {
        double right = setup.angle() < 180 ? 90 : 270;
        return setup.angle() == right || Math.abs(setup.angle() - right) > ALIKE ? setup : setup.at(right);
    }
}
